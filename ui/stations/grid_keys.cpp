#include <QKeyEvent>
#include <algorithm>
#include <vector>

#include "stations_view.h"

namespace fayline {
namespace {

bool isEmpty(const StationsModel& model, int row, int column) {
    return model.row(row).cells[static_cast<std::size_t>(column)].shown.isEmpty();
}

int placeIn(const std::vector<int>& columns, int column) {
    const auto found = std::find(columns.begin(), columns.end(), column);
    return found == columns.end() ? 0 : static_cast<int>(found - columns.begin());
}

}  // namespace

void StationsView::move(CellDelegate::Move move) {
    setFocus();
    QModelIndex at = currentIndex();
    if (!at.isValid()) return;
    const std::vector<int> columns = shownColumns();
    int row = at.row();
    int column = placeIn(columns, at.column());
    const int lastRow = model_.rowCount() - 1;
    const int lastColumn = static_cast<int>(columns.size()) - 1;
    switch (move) {
        case CellDelegate::Move::stay:
            return;
        case CellDelegate::Move::down:
            row = std::min(row + 1, lastRow);
            break;
        case CellDelegate::Move::up:
            row = std::max(row - 1, 0);
            break;
        case CellDelegate::Move::next:
            if (column < lastColumn) {
                ++column;
            } else if (row < lastRow) {
                ++row;
                column = 0;
            }
            break;
        case CellDelegate::Move::previous:
            if (column > 0) {
                --column;
            } else if (row > 0) {
                --row;
                column = lastColumn;
            }
            break;
    }
    setCurrentIndex(model_.index(row, columns[static_cast<std::size_t>(column)]));
}

/// To the edge of what is filled in, as spreadsheets do.
void StationsView::jump(Qt::Key key, bool extend) {
    const QModelIndex at = currentIndex();
    if (!at.isValid()) return;
    const int down = key == Qt::Key_Down ? 1 : key == Qt::Key_Up ? -1 : 0;
    const int across = key == Qt::Key_Right ? 1 : key == Qt::Key_Left ? -1 : 0;
    const std::vector<int> columns = shownColumns();
    const auto inside = [&](int row, int place) {
        return row >= 0 && place >= 0 && row < model_.rowCount() &&
               place < static_cast<int>(columns.size());
    };
    const auto empty = [&](int row, int place) {
        return isEmpty(model_, row, columns[static_cast<std::size_t>(place)]);
    };
    int row = at.row();
    int place = placeIn(columns, at.column());
    if (!inside(row + down, place + across)) return;
    const bool seekFilled = empty(row, place) || empty(row + down, place + across);
    do {
        row += down;
        place += across;
        if (seekFilled && !empty(row, place)) break;
        if (!seekFilled &&
            (!inside(row + down, place + across) || empty(row + down, place + across)))
            break;
    } while (inside(row + down, place + across));
    const QModelIndex to = model_.index(row, columns[static_cast<std::size_t>(place)]);
    if (!extend) {
        setCurrentIndex(to);
        return;
    }
    selectionModel()->select(QItemSelection(to, at), QItemSelectionModel::Select);
    selectionModel()->setCurrentIndex(to, QItemSelectionModel::NoUpdate);
}

void StationsView::keyPressEvent(QKeyEvent* event) {
    const bool control = event->modifiers().testFlag(Qt::ControlModifier);
    const bool shift = event->modifiers().testFlag(Qt::ShiftModifier);
    switch (event->key()) {
        case Qt::Key_Enter:
        case Qt::Key_Return:
            move(shift ? CellDelegate::Move::up : CellDelegate::Move::down);
            return;
        case Qt::Key_Delete:
            backToRule();
            return;
        case Qt::Key_Escape:
            model_.refuse(currentIndex(), {}, {});
            emit said({});
            return;
        case Qt::Key_F6:
            emit leaving(!shift);
            return;
        case Qt::Key_Tab:
            if (control) {
                emit leaving(true);
                return;
            }
            move(CellDelegate::Move::next);
            return;
        case Qt::Key_Backtab:
            if (control) {
                emit leaving(false);
                return;
            }
            move(CellDelegate::Move::previous);
            return;
        case Qt::Key_Up:
        case Qt::Key_Down:
        case Qt::Key_Left:
        case Qt::Key_Right:
            if (control) {
                jump(static_cast<Qt::Key>(event->key()), shift);
                return;
            }
            break;
        default:
            break;
    }
    QTableView::keyPressEvent(event);
}

StationsView::Found StationsView::find(const QString& text, bool forward) {
    const int cells = model_.rowCount() * model_.columnCount();
    if (text.isEmpty() || cells == 0) return {};
    const int first = shownColumns().front();
    const int at = currentIndex().row() * model_.columnCount() + currentIndex().column();
    for (int i = 1; i <= cells; ++i) {
        const int raw = forward ? at + i : at - i;
        const int there = (raw % cells + cells) % cells;
        const int row = there / model_.columnCount();
        const int column = there % model_.columnCount();
        if (isColumnHidden(column)) continue;
        const bool inFrame =
            column == first &&
            QString::fromStdString(model_.row(row).frame).compare(text, Qt::CaseInsensitive) == 0;
        const QModelIndex index = model_.index(row, column);
        if (!inFrame && !index.data(Qt::DisplayRole).toString().contains(text, Qt::CaseInsensitive))
            continue;
        setCurrentIndex(index);
        if (raw >= 0 && raw < cells) return {true, {}};
        return {true, forward ? tr("from the top again") : tr("from the bottom again")};
    }
    return {false, tr("not found")};
}

}  // namespace fayline
