#include "metal_model.h"

#include <QLocale>
#include <QStringList>
#include <cmath>

#include "quantity/csv.h"
#include "quantity/printing.h"
#include "words/things.h"

namespace fayline {
namespace {

bool isNumber(int column) {
    return column == MetalModel::length || column == MetalModel::needed ||
           column == MetalModel::spare || column == MetalModel::order || column == MetalModel::mass;
}

}  // namespace

int MetalModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(takeOff_.lines.size());
}
int MetalModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columnCount_;
}

QString MetalModel::text(const TakeOffLine& line, int column) const {
    switch (column) {
        case kind:
            return kindWords(line.kind);
        case metal:
            return line.metal.empty() ? tr("not decided") : asText(line.metalName);
        case size:
            return asText(line.size);
        case length:
            return line.length ? showSize(*line.length, units_) : QString();
        case needed:
            return QString::number(line.count);
        case spare:
            return QString::number(line.spare);
        case order:
            return QString::number(line.order);
        case mass:
            return line.mass ? asText(displayMass(*line.mass, units_)) : tr("not known");
        case use: {
            QStringList groups;
            for (const std::string& group : line.groups) groups.append(groupWords(group));
            return groups.join(QStringLiteral(", "));
        }
        default:
            return {};
    }
}

QVariant MetalModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const TakeOffLine& line = takeOff_.lines[static_cast<std::size_t>(index.row())];
    switch (role) {
        case Qt::DisplayRole:
            return text(line, index.column());
        case Qt::TextAlignmentRole:
            return QVariant((isNumber(index.column()) ? Qt::AlignRight : Qt::AlignLeft) |
                            Qt::AlignVCenter);
        case Qt::ToolTipRole:
            return index.column() == mass && !line.mass ? asText(line.why) : QString();
        case Qt::AccessibleTextRole:
            return headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString() +
                   QLatin1Char(' ') + text(line, index.column());
        default:
            return {};
    }
}

QVariant MetalModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant((isNumber(section) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case kind:
            return tr("What");
        case metal:
            return tr("Metal");
        case size:
            return tr("Size");
        case length:
            return tr("Length");
        case needed:
            return tr("Needed");
        case spare:
            return tr("Spare");
        case order:
            return tr("Order");
        case mass:
            return tr("Weight");
        case use:
            return tr("For");
        default:
            return {};
    }
}

void MetalModel::show(TakeOff takeOff, UnitSystem units) {
    beginResetModel();
    takeOff_ = std::move(takeOff);
    units_ = units;
    endResetModel();
}

std::string metalCsv(const TakeOff& takeOff) {
    std::string text = csvLine({"stock", "kind", "metal", "size", "length_mm", "count", "spare",
                                "shelf", "order", "mass_kg", "price", "currency"});
    // A whole number keeps its point, so that every reader takes the column for what it is.
    const auto number = [](double value) {
        const QString digits = QString::number(value, 'g', QLocale::FloatingPointShortest);
        return (digits.contains(QLatin1Char('.')) ? digits : digits + QStringLiteral(".0"))
            .toStdString();
    };
    for (const TakeOffLine& line : takeOff.lines) {
        text += csvLine(
            {line.stock, line.kind, line.metal, line.size,
             line.length ? number(numberIn(*line.length, LengthUnit::mm)) : std::string(),
             std::to_string(line.count), std::to_string(line.spare),
             line.shelf ? std::to_string(*line.shelf) : std::string(), std::to_string(line.order),
             line.mass ? number(std::round(inKilograms(*line.mass) * 1000.0) / 1000.0)
                       : std::string(),
             "", ""});
    }
    return text;
}

}  // namespace fayline
