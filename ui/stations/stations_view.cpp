#include "stations_view.h"

#include <QDataStream>
#include <QGuiApplication>
#include <QIODevice>
#include <QLabel>
#include <algorithm>

#include "frame_header.h"

namespace fayline {
namespace {

/// A cell's words stand this far from its edges, both together, with a pixel for what rounds up.
constexpr int pad = 14;
/// No column is wider than so many letters of its own accord.
constexpr int mostLetters = 34;

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
    showSet(ColumnSet::all);
    keepCurrent();

    connect(delegate_, &CellDelegate::moved, this, &StationsView::move);
    connect(delegate_, &CellDelegate::objected, this, &StationsView::said);
    connect(delegate_, &CellDelegate::wantedEverywhere, this, &StationsView::decideSelected);
    connect(&model_, &QAbstractItemModel::modelAboutToBeReset, this,
            [this] { delegate_->settleEditor(); });
    connect(&model_, &QAbstractItemModel::modelReset, this, &StationsView::keepCurrent);
    connect(&model_, &QAbstractItemModel::headerDataChanged, this, [this](Qt::Orientation across) {
        if (across == Qt::Horizontal && !ownWidths_) resetWidths();  // other units
    });
    connect(horizontalHeader(), &QHeaderView::sectionResized, this, [this](int column) {
        if (column == columnCount - 1) return;
        if (QGuiApplication::mouseButtons() != Qt::NoButton) ownWidths_ = true;
        fitLast();
    });
    connect(horizontalHeader(), &QHeaderView::geometriesChanged, this, &StationsView::placeCorner);
}

/// Headers and editors speak up while they go, when this is no longer a grid.
StationsView::~StationsView() {
    delegate_->abandonEditor();
    for (QObject* part :
         {static_cast<QObject*>(horizontalHeader()), static_cast<QObject*>(verticalHeader()),
          static_cast<QObject*>(delegate_)}) {
        part->disconnect(this);
    }
    if (model() == &model_) model_.disconnect(this);  // it may have gone before
}

/// Every column as wide as its heading's longest word and what stands in it, within reason; the
/// last takes what is left.
void StationsView::resetWidths() {
    constexpr int leastLetters = 5;
    const QFontMetrics metrics(font());
    QFont bold = font();
    bold.setBold(true);
    const QFontMetrics heads(bold);
    for (const int i : shownColumns()) {
        if (i == columnCount - 1) continue;
        int wide = leastLetters * metrics.averageCharWidth();
        for (int row = 0; row < model_.rowCount(); ++row) {
            wide = std::max(wide, metrics.horizontalAdvance(
                                      model_.row(row).cells[static_cast<std::size_t>(i)].shown));
        }
        wide = std::min(wide, mostLetters * metrics.averageCharWidth());
        for (const QString& word : titleOf(static_cast<Column>(i)).split(QLatin1Char(' '))) {
            wide = std::max(wide, heads.horizontalAdvance(word));
        }
        const auto column = static_cast<Column>(i);
        const std::vector<int> shown = shownColumns();
        const auto inGroup = std::count_if(shown.begin(), shown.end(), [&](int other) {
            return groupOf(static_cast<Column>(other)) == groupOf(column);
        });
        if (inGroup == 1)
            wide = std::max(wide, metrics.horizontalAdvance(titleOf(groupOf(column))));
        setColumnWidth(i, wide + pad);
    }
    verticalHeader()->setDefaultSectionSize(metrics.height() + 12);
    fitLast();
}

/// A column that became too narrow for what was decided in it grows.
void StationsView::dataChanged(const QModelIndex& from, const QModelIndex& to,
                               const QList<int>& roles) {
    QTableView::dataChanged(from, to, roles);
    if (ownWidths_ || !from.isValid()) return;
    const QFontMetrics metrics(font());
    for (int i = from.column(); i <= to.column() && i < columnCount - 1; ++i) {
        int wide = 0;
        for (int row = from.row(); row <= to.row(); ++row) {
            wide = std::max(wide, metrics.horizontalAdvance(
                                      model_.row(row).cells[static_cast<std::size_t>(i)].shown));
        }
        wide = std::min(wide, mostLetters * metrics.averageCharWidth()) + pad;
        if (!isColumnHidden(i) && wide > columnWidth(i)) setColumnWidth(i, wide);
    }
}

QByteArray StationsView::widths() const {
    QByteArray state;
    QDataStream stream(&state, QIODevice::WriteOnly);
    stream << static_cast<int>(set_) << font().pointSize() << ownWidths_
           << horizontalHeader()->saveState();
    return state;
}

void StationsView::setWidths(const QByteArray& state) {
    int set = 0;
    int size = 0;
    bool own = false;
    QByteArray header;
    QDataStream stream(state);
    stream >> set >> size >> own >> header;
    if (stream.status() != QDataStream::Ok || set < 0 || set >= columnSetCount) return;
    showSet(static_cast<ColumnSet>(set));
    if (!own || size != font().pointSize()) return;
    ownWidths_ = horizontalHeader()->restoreState(header);
    showSet(set_);
}

void StationsView::showSet(ColumnSet set) {
    settleEditor();
    set_ = set;
    for (int i = 0; i < columnCount; ++i) setColumnHidden(i, !isShown(static_cast<Column>(i), set));
    if (const QModelIndex at = currentIndex(); at.isValid() && isColumnHidden(at.column()))
        setCurrentIndex(model_.index(at.row(), shownColumns().front()));
    if (!ownWidths_) resetWidths();
    fitLast();
}

std::vector<int> StationsView::shownColumns() const {
    std::vector<int> columns;
    for (int i = 0; i < columnCount; ++i) {
        if (!isColumnHidden(i)) columns.push_back(i);
    }
    return columns;
}

void StationsView::keepCurrent() {
    if (!ownWidths_) resetWidths();
    if (model_.rowCount() == 0) return;
    const int column = currentIndex().isValid() ? currentIndex().column() : shownColumns().front();
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
    const QModelIndex index = model_.index(
        row, currentIndex().isValid() ? currentIndex().column() : shownColumns().front());
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

void StationsView::placeCorner() {
    corner_->setGeometry(0, 0, verticalHeader()->width(), horizontalHeader()->height());
}

/// The last column takes the room that is left, but no less than its words need.
void StationsView::fitLast() {
    int others = 0;
    for (const int i : shownColumns()) others += i == columnCount - 1 ? 0 : columnWidth(i);
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
