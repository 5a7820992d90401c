#include "stations_view.h"

#include <QApplication>
#include <QClipboard>
#include <QDataStream>
#include <QIODevice>
#include <QKeyEvent>
#include <QLabel>
#include <algorithm>

#include "clipboard.h"
#include "frame_header.h"

namespace fayline {
namespace {

constexpr int mostDetails = 40;

bool isEmpty(const StationsModel& model, int row, int column) {
    return model.row(row).cells[static_cast<std::size_t>(column)].shown.isEmpty();
}

}  // namespace

StationsView::StationsView(StationsModel& model, QWidget* parent)
    : QTableView(parent),
      model_(model),
      delegate_(new CellDelegate(model, this)),
      corner_(new QLabel(tr("Frame"), this)) {
    setVerticalHeader(new FrameHeader(this));
    setHorizontalHeader(new ColumnHeader(this));
    setModel(&model);
    setItemDelegate(delegate_);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::EditKeyPressed |
                    QAbstractItemView::DoubleClicked);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setShowGrid(false);
    setCornerButtonEnabled(false);
    setWordWrap(false);
    setFrameShape(QFrame::NoFrame);
    setAccessibleName(tr("Stations, a row per frame"));
    corner_->setContentsMargins(8, 0, 0, 0);
    corner_->setAutoFillBackground(true);
    corner_->setBackgroundRole(QPalette::AlternateBase);
    QFont bold = corner_->font();
    bold.setBold(true);
    corner_->setFont(bold);
    corner_->setAttribute(Qt::WA_TransparentForMouseEvents);
    resetWidths();
    keepCurrent();

    connect(delegate_, &CellDelegate::moved, this, &StationsView::move);
    connect(delegate_, &CellDelegate::objected, this, &StationsView::said);
    connect(delegate_, &CellDelegate::wantedEverywhere, this, &StationsView::decideSelected);
    connect(&model_, &QAbstractItemModel::modelAboutToBeReset, this,
            [this] { delegate_->settleEditor(); });
    connect(&model_, &QAbstractItemModel::modelReset, this, &StationsView::keepCurrent);
    connect(horizontalHeader(), &QHeaderView::sectionResized, this, [this](int column) {
        if (column == columnCount - 1) return;
        if (QGuiApplication::mouseButtons() != Qt::NoButton) ownWidths_ = true;
        fitLast();
    });
    connect(horizontalHeader(), &QHeaderView::geometriesChanged, this, &StationsView::placeCorner);
}

/// Every column as wide as its heading's longest word and what stands in it, within reason; the
/// last takes what is left.
void StationsView::resetWidths() {
    constexpr int mostLetters = 18;
    constexpr int leastLetters = 5;
    constexpr int pad = 14;
    const QFontMetrics metrics(font());
    QFont bold = font();
    bold.setBold(true);
    const QFontMetrics heads(bold);
    for (int i = 0; i < columnCount - 1; ++i) {
        int wide = leastLetters * metrics.averageCharWidth();
        for (int row = 0; row < model_.rowCount(); ++row) {
            wide = std::max(wide, metrics.horizontalAdvance(
                                      model_.row(row).cells[static_cast<std::size_t>(i)].shown));
        }
        wide = std::min(wide, mostLetters * metrics.averageCharWidth());
        for (const QString& word : titleOf(static_cast<Column>(i)).split(QLatin1Char(' '))) {
            wide = std::max(wide, heads.horizontalAdvance(word));
        }
        setColumnWidth(i, wide + pad);
    }
    verticalHeader()->setDefaultSectionSize(metrics.height() + 12);
    fitLast();
}

QByteArray StationsView::widths() const {
    QByteArray state;
    QDataStream stream(&state, QIODevice::WriteOnly);
    stream << font().pointSize() << ownWidths_ << horizontalHeader()->saveState();
    return state;
}

void StationsView::setWidths(const QByteArray& state) {
    int size = 0;
    bool own = false;
    QByteArray header;
    QDataStream stream(state);
    stream >> size >> own >> header;
    if (stream.status() != QDataStream::Ok || !own || size != font().pointSize()) return;
    ownWidths_ = horizontalHeader()->restoreState(header);
    fitLast();
}

void StationsView::keepCurrent() {
    if (!ownWidths_) resetWidths();
    if (model_.rowCount() == 0) return;
    const int column = currentIndex().isValid() ? currentIndex().column() : 0;
    const int row = std::max(0, model_.rowOf(frame_));
    setCurrentIndex(model_.index(row, column));
}

QString StationsView::frame() const {
    return currentIndex().isValid() ? QString::fromStdString(model_.row(currentIndex().row()).frame)
                                    : QString();
}

void StationsView::setFrame(const QString& frame) {
    const int row = model_.rowOf(frame);
    if (row < 0 || row == currentIndex().row()) return;
    const QModelIndex index = model_.index(row, std::max(0, currentIndex().column()));
    const bool inView =
        viewport()->rect().contains(0, visualRect(index).bottom()) && visualRect(index).top() >= 0;
    setCurrentIndex(index);
    if (!inView) scrollTo(index, QAbstractItemView::PositionAtCenter);
}

void StationsView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    if (current.row() != previous.row()) {
        for (const int row : {current.row(), previous.row()}) {
            if (row < 0) continue;
            viewport()->update(0, rowViewportPosition(row), viewport()->width(), rowHeight(row));
            verticalHeader()->viewport()->update(0, rowViewportPosition(row),
                                                 verticalHeader()->width(), rowHeight(row));
        }
    }
    if (!current.isValid()) return;
    frame_ = frame();
    if (current.row() != previous.row()) emit frameChosen(frame_);
    const QVariant refused = current.data(StationsModel::refusedRole);
    emit said(refused.toString());
}

void StationsView::move(CellDelegate::Move move) {
    setFocus();
    QModelIndex at = currentIndex();
    if (!at.isValid()) return;
    int row = at.row();
    int column = at.column();
    const int lastRow = model_.rowCount() - 1;
    const int lastColumn = model_.columnCount() - 1;
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
    setCurrentIndex(model_.index(row, column));
}

/// To the edge of what is filled in, as spreadsheets do.
void StationsView::jump(Qt::Key key, bool extend) {
    const QModelIndex at = currentIndex();
    if (!at.isValid()) return;
    const int down = key == Qt::Key_Down ? 1 : key == Qt::Key_Up ? -1 : 0;
    const int across = key == Qt::Key_Right ? 1 : key == Qt::Key_Left ? -1 : 0;
    const auto inside = [&](int row, int column) {
        return row >= 0 && column >= 0 && row < model_.rowCount() && column < model_.columnCount();
    };
    int row = at.row();
    int column = at.column();
    if (!inside(row + down, column + across)) return;
    const bool seekFilled =
        isEmpty(model_, row, column) || isEmpty(model_, row + down, column + across);
    do {
        row += down;
        column += across;
        if (seekFilled && !isEmpty(model_, row, column)) break;
        if (!seekFilled &&
            (!inside(row + down, column + across) || isEmpty(model_, row + down, column + across)))
            break;
    } while (inside(row + down, column + across));
    const QModelIndex to = model_.index(row, column);
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

QModelIndexList StationsView::selectedCells() const {
    QModelIndexList cells = selectionModel()->selectedIndexes();
    if (cells.isEmpty() && currentIndex().isValid()) cells.append(currentIndex());
    std::sort(cells.begin(), cells.end());
    return cells;
}

void StationsView::decideAll(const std::vector<CellText>& texts, const QString& refusal) {
    const std::vector<BadCell> bad = model_.decideAll(texts);
    if (bad.empty()) {
        emit said({});
        return;
    }
    QStringList details;
    for (const BadCell& cell : bad) {
        if (details.size() == mostDetails) {
            details.append(tr("and %n more", nullptr, static_cast<int>(bad.size()) - mostDetails));
            break;
        }
        details.append(tr("%1 %2, “%3”: %4")
                           .arg(QString::fromStdString(model_.row(cell.row).frame),
                                titleOf(static_cast<Column>(cell.column)), cell.text, cell.says));
    }
    emit stopped(
        tr("%1: %n cell(s) cannot be taken.", nullptr, static_cast<int>(bad.size())).arg(refusal),
        details);
}

void StationsView::decideSelected(const QString& text) {
    std::vector<CellText> texts;
    for (const QModelIndex& index : selectedCells()) {
        if (index.flags().testFlag(Qt::ItemIsEditable))
            texts.push_back({index.row(), index.column(), text});
    }
    if (CellEditor* editor = delegate_->editor()) {
        const QString says = model_.objection(delegate_->editedIndex(), text);
        editor->showObjection(says);
        emit said(says);
        if (!says.isEmpty()) return;
        delegate_->abandonEditor();
    }
    decideAll(texts, tr("Nothing changed"));
    setFocus();
}

void StationsView::backToRule() {
    std::vector<CellText> texts;
    for (const QModelIndex& index : selectedCells()) {
        model_.refuse(index, {}, {});
        if (index.flags().testFlag(Qt::ItemIsEditable))
            texts.push_back({index.row(), index.column(), {}});
    }
    decideAll(texts, tr("Nothing changed"));
}

void StationsView::copy(bool headings) {
    QItemSelection selection = selectionModel()->selection();
    if (selection.isEmpty()) {
        if (!currentIndex().isValid()) return;
        selection.select(currentIndex(), currentIndex());
    }
    QGuiApplication::clipboard()->setMimeData(copyCells(model_, selection, headings).release());
}

void StationsView::paste() {
    QItemSelection selection = selectionModel()->selection();
    if (selection.isEmpty() && currentIndex().isValid())
        selection.select(currentIndex(), currentIndex());
    const PastePlan plan =
        planPaste(model_, selection, readBlock(QGuiApplication::clipboard()->text()));
    if (!plan.refusal.isEmpty()) {
        emit stopped(plan.refusal, {});
        return;
    }
    decideAll(plan.texts, tr("Nothing pasted"));
}

void StationsView::fillDown() {
    const QModelIndexList cells = selectedCells();
    if (cells.isEmpty()) return;
    int top = cells.front().row();
    int bottom = top;
    for (const QModelIndex& index : cells) {
        top = std::min(top, index.row());
        bottom = std::max(bottom, index.row());
    }
    const int from = top == bottom ? top - 1 : top;
    if (from < 0) {
        emit said(tr("There is no frame above to fill from."));
        return;
    }
    std::vector<CellText> texts;
    int passed = 0;
    for (const QModelIndex& index : cells) {
        if (index.row() == from) continue;
        const Cell& source = model_.row(from).cells[static_cast<std::size_t>(index.column())];
        const bool unclear = source.whats.empty() || (source.decided && source.typed.isEmpty());
        if (unclear || !index.flags().testFlag(Qt::ItemIsEditable)) {
            ++passed;
            continue;
        }
        texts.push_back({index.row(), index.column(), source.typed});
    }
    decideAll(texts, tr("Nothing filled"));
    if (passed > 0)
        emit said(tr("%n cell(s) passed over: they cannot be filled.", nullptr, passed));
}

StationsView::Found StationsView::find(const QString& text, bool forward) {
    const int cells = model_.rowCount() * model_.columnCount();
    if (text.isEmpty() || cells == 0) return {};
    const int at = currentIndex().row() * model_.columnCount() + currentIndex().column();
    for (int i = 1; i <= cells; ++i) {
        const int raw = forward ? at + i : at - i;
        const int there = (raw % cells + cells) % cells;
        const int row = there / model_.columnCount();
        const int column = there % model_.columnCount();
        const bool inFrame =
            column == 0 &&
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

void StationsView::placeCorner() {
    corner_->setGeometry(0, 0, verticalHeader()->width(), horizontalHeader()->height());
}

/// The last column takes the room that is left, but no less than its words need.
void StationsView::fitLast() {
    int others = 0;
    for (int i = 0; i < columnCount - 1; ++i) others += columnWidth(i);
    const int least = fontMetrics().averageCharWidth() * 22;
    setColumnWidth(columnCount - 1, std::max(least, viewport()->width() - others));
}

void StationsView::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    fitLast();
    placeCorner();
}

void StationsView::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        QFont bold = font();
        bold.setBold(true);
        corner_->setFont(bold);
        ownWidths_ = false;
        resetWidths();
    }
}

}  // namespace fayline
