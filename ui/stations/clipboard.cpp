#include "clipboard.h"

#include <algorithm>
#include <optional>

#include "quantity/printing.h"
#include "words/values.h"

namespace fayline {
namespace {

struct Rectangle {
    int top = 0, left = 0, bottom = -1, right = -1;
    [[nodiscard]] int rows() const { return bottom - top + 1; }
    [[nodiscard]] int columns() const { return right - left + 1; }
};

/// The rectangle round a selection; its columns are counted among those in sight.
Rectangle around(const QItemSelection& selection, const std::vector<int>& shown) {
    Rectangle all;
    for (const QItemSelectionRange& range : selection) {
        const auto from = std::lower_bound(shown.begin(), shown.end(), range.left());
        const auto to = std::upper_bound(shown.begin(), shown.end(), range.right());
        if (from >= to) continue;
        const Rectangle one{range.top(), static_cast<int>(from - shown.begin()), range.bottom(),
                            static_cast<int>(to - shown.begin()) - 1};
        if (all.rows() <= 0) {
            all = one;
            continue;
        }
        all.top = std::min(all.top, one.top);
        all.left = std::min(all.left, one.left);
        all.bottom = std::max(all.bottom, one.bottom);
        all.right = std::max(all.right, one.right);
    }
    return all;
}

int columnAt(const std::vector<int>& shown, int place) {
    return shown[static_cast<std::size_t>(place)];
}

/// A cell's text that reads back to the same value anywhere.
QString cellText(const StationsModel& model, int row, int column) {
    const Cell& cell = model.row(row).cells[static_cast<std::size_t>(column)];
    if (!cell.typed.isEmpty()) return cell.typed;
    const Field* field = fieldOf(static_cast<Column>(column));
    if (field == nullptr || cell.shown.isEmpty() ||
        partOf(static_cast<Column>(column)) == ColumnPart::size)
        return cell.shown;
    return QString::fromStdString(withUnit(*field, cell.shown.toStdString(), model.units()));
}

/// The number in the column's unit, where the column is a length.
std::optional<double> cellNumber(const StationsModel& model, int column, const QString& text) {
    const Field* field = fieldOf(static_cast<Column>(column));
    if (field == nullptr || field->kind != ValueKind::length) return std::nullopt;
    const auto value = readValue(*field, text.toStdString(), "");
    if (!value) return std::nullopt;
    return numberIn(std::get<Length>(*value),
                    model.units() == UnitSystem::inches ? LengthUnit::in : LengthUnit::mm);
}

QString htmlCell(const QString& text, const std::optional<double>& number, const QString& tag) {
    const QString exact =
        number ? QStringLiteral(" sdval=\"%1\" sdnum=\"1033;\"").arg(*number, 0, 'g', 15)
               : QString();
    return QStringLiteral("<%1%2>%3</%1>").arg(tag, exact, text.toHtmlEscaped());
}

}  // namespace

std::unique_ptr<QMimeData> copyCells(const StationsModel& model, const QItemSelection& selection,
                                     const std::vector<int>& shown, bool headings) {
    const Rectangle area = around(selection, shown);
    Block block;
    QString html = QStringLiteral("<meta charset=\"utf-8\"><table>");
    const auto header = [&](int place) {
        return model.headerData(columnAt(shown, place), Qt::Horizontal, StationsModel::headingRole)
            .toString();
    };
    if (headings) {
        QStringList row{StationsModel::tr("Frame")};
        html += QStringLiteral("<tr>") + htmlCell(row[0], {}, QStringLiteral("th"));
        for (int c = area.left; c <= area.right; ++c) {
            row.append(header(c));
            html += htmlCell(header(c), {}, QStringLiteral("th"));
        }
        html += QStringLiteral("</tr>");
        block.push_back(row);
    }
    for (int r = area.top; r <= area.bottom; ++r) {
        QStringList row;
        html += QStringLiteral("<tr>");
        if (headings) {
            row.append(asText(model.row(r).frame));
            html += htmlCell(row[0], {}, QStringLiteral("th"));
        }
        for (int c = area.left; c <= area.right; ++c) {
            const int column = columnAt(shown, c);
            const QString text = cellText(model, r, column);
            row.append(text);
            html += htmlCell(text, cellNumber(model, column, text), QStringLiteral("td"));
        }
        html += QStringLiteral("</tr>");
        block.push_back(row);
    }
    auto data = std::make_unique<QMimeData>();
    data->setText(writeBlock(block));
    data->setHtml(html + QStringLiteral("</table>"));
    return data;
}

PastePlan planPaste(const StationsModel& model, const QItemSelection& selection,
                    const std::vector<int>& shown, const Block& block) {
    PastePlan plan;
    if (block.empty() || selection.isEmpty()) {
        plan.refusal = StationsModel::tr("There is nothing to paste.");
        return plan;
    }
    int wide = 0;
    for (const QStringList& row : block) wide = std::max(wide, static_cast<int>(row.size()));
    const int tall = static_cast<int>(block.size());

    Rectangle area = around(selection, shown);
    const bool tiles = area.rows() % tall == 0 && area.columns() % wide == 0;
    if (!tiles) area = {area.top, area.left, area.top + tall - 1, area.left + wide - 1};
    if (area.bottom >= model.rowCount()) {
        plan.refusal =
            counted(area.bottom - model.rowCount() + 1,
                    StationsModel::tr("Nothing pasted: 1 row would fall below the last frame."),
                    StationsModel::tr("Nothing pasted: %1 rows would fall below the last frame."));
        return plan;
    }
    const int columns = static_cast<int>(shown.size());
    if (area.right >= columns) {
        plan.refusal =
            counted(area.right - columns + 1,
                    StationsModel::tr("Nothing pasted: 1 column would fall beyond the last."),
                    StationsModel::tr("Nothing pasted: %1 columns would fall beyond the last."));
        return plan;
    }
    for (int r = area.top; r <= area.bottom; ++r) {
        const QStringList& row = block[static_cast<std::size_t>((r - area.top) % tall)];
        for (int c = area.left; c <= area.right; ++c) {
            const int in = (c - area.left) % wide;
            if (in >= row.size()) continue;
            const QString text = row[in].trimmed();
            const int column = columnAt(shown, c);
            const Cell& cell = model.row(r).cells[static_cast<std::size_t>(column)];
            if (!cell.editable && (text.isEmpty() || text == cell.shown)) continue;
            plan.texts.push_back({r, column, text});
        }
    }
    return plan;
}

}  // namespace fayline
