#include "margins_view.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMimeData>
#include <QPainter>
#include <algorithm>
#include <string>
#include <vector>

#include "quantity/csv.h"
#include "theme/row_delegate.h"
#include "theme/status.h"

namespace fayline {
namespace {

constexpr int pad = 6;

/// Status and margin in their own ink, with the sign of the status.
class MarginDelegate : public RowDelegate {
  public:
    using RowDelegate::RowDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        if (index.column() != MarginsModel::status && index.column() != MarginsModel::margin) {
            RowDelegate::paint(painter, option, index);
            return;
        }
        const auto status = static_cast<Status>(index.data(MarginsModel::statusRole).toInt());
        painter->save();
        QRect area = paintGround(*painter, option, index);
        if (index.column() == MarginsModel::status) {
            const int side = option.fontMetrics.ascent();
            paintStatusMark(*painter, QRect(area.left(), area.center().y() - side / 2, side, side),
                            status, option.palette);
            area.setLeft(area.left() + side + pad);
        }
        QFont font = option.font;
        if (status != Status::ok && status != Status::unloaded) {
            font.setBold(true);
            painter->setPen(statusInk(status, option.palette).ink);
        }
        painter->setFont(font);
        painter->drawText(area, index.data(Qt::TextAlignmentRole).toInt(),
                          index.data(Qt::DisplayRole).toString());
        painter->restore();
    }
};

}  // namespace

MarginsView::MarginsView(MarginsModel& model, QWidget* parent) : QTableView(parent), model_(model) {
    setModel(&model);
    setItemDelegate(new MarginDelegate(this));
    makeReadingTable(*this);
    setAccessibleName(tr("Margins, worst first"));
    connect(this, &QTableView::doubleClicked, this,
            [this](const QModelIndex& index) { emit opened(index.row()); });
    fitColumns();
}

void MarginsView::fitColumns() {
    QFont bold = font();
    bold.setBold(true);
    const QFontMetrics metrics(bold);
    const QFontMetrics plain(font());
    const auto wide = [&](const QString& words) {
        return plain.horizontalAdvance(words) + 2 * pad;
    };
    verticalHeader()->setDefaultSectionSize(metrics.height() + 10);
    setColumnWidth(MarginsModel::status,
                   wide(QStringLiteral("not loaded")) + metrics.ascent() + pad);
    setColumnWidth(MarginsModel::margin, wide(QStringLiteral("×1000.00")));
    setColumnWidth(MarginsModel::state, wide(QStringLiteral("rod, pull and shear")));
    setColumnWidth(MarginsModel::basis, wide(QStringLiteral("Eurocode 5")));
    setColumnWidth(MarginsModel::demand, wide(QStringLiteral("Must carry ")));
    setColumnWidth(MarginsModel::working, wide(QStringLiteral("Can carry  ")));
    int others = 0;
    for (const int column : {MarginsModel::status, MarginsModel::margin, MarginsModel::state,
                             MarginsModel::basis, MarginsModel::demand, MarginsModel::working})
        others += columnWidth(column);
    const int forCase = wide(QStringLiteral("grounding forward"));
    const int forThing = wide(QStringLiteral("Ballast bolt K.10"));
    const int left = std::max(forCase + forThing, viewport()->width() - others);
    setColumnWidth(MarginsModel::loadCase, forCase);
    setColumnWidth(MarginsModel::thing, left - forCase);
}

void MarginsView::copy(bool headings) {
    std::vector<int> rows;
    for (const QModelIndex& index : selectionModel()->selectedRows()) rows.push_back(index.row());
    std::sort(rows.begin(), rows.end());
    QString tabbed;
    std::string csv;
    const auto add = [&](auto cell) {
        std::vector<std::string> cells;
        QStringList texts;
        for (int column = 0; column < model_.columnCount(); ++column) {
            const QString text = cell(column);
            texts.append(text);
            cells.push_back(text.toStdString());
        }
        tabbed += texts.join(QLatin1Char('\t')) + QLatin1Char('\n');
        csv += csvLine(cells);
    };
    if (headings)
        add([&](int c) {
            return model_.headerData(c, Qt::Horizontal, Qt::DisplayRole).toString();
        });
    for (const int row : rows)
        add([&](int c) { return model_.index(row, c).data(Qt::DisplayRole).toString(); });
    auto* mime = new QMimeData;
    mime->setText(tabbed);
    mime->setData(QStringLiteral("text/csv"), QByteArray::fromStdString(csv));
    QGuiApplication::clipboard()->setMimeData(mime);
}

void MarginsView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    if (current.isValid() && current.row() != previous.row()) emit rowChosen(current.row());
}

void MarginsView::keyPressEvent(QKeyEvent* event) {
    const bool back = event->modifiers().testFlag(Qt::ShiftModifier);
    if (event->key() == Qt::Key_F6) {
        emit leaving(!back);
        return;
    }
    if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) &&
        currentIndex().isValid()) {
        emit opened(currentIndex().row());
        return;
    }
    QTableView::keyPressEvent(event);
}

void MarginsView::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange) fitColumns();
}

void MarginsView::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    fitColumns();
}

}  // namespace fayline
