#include <QClipboard>
#include <QGuiApplication>
#include <algorithm>

#include "clipboard.h"
#include "stations_view.h"
#include "words/values.h"

namespace fayline {
namespace {

constexpr int mostDetails = 40;

}  // namespace

QModelIndexList StationsView::selectedCells() const {
    QModelIndexList cells = selectionModel()->selectedIndexes();
    if (cells.isEmpty() && currentIndex().isValid()) cells.append(currentIndex());
    cells.removeIf([this](const QModelIndex& cell) { return isColumnHidden(cell.column()); });
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
            details.append(tr("and %1 more").arg(static_cast<int>(bad.size()) - mostDetails));
            break;
        }
        details.append(tr("%1 %2, “%3”: %4")
                           .arg(QString::fromStdString(model_.row(cell.row).frame),
                                titleOf(static_cast<Column>(cell.column)), cell.text, cell.says));
    }
    emit stopped(refusal + QStringLiteral(": ") +
                     counted(static_cast<int>(bad.size()), tr("1 cell cannot be taken."),
                             tr("%1 cells cannot be taken.")),
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
    QGuiApplication::clipboard()->setMimeData(
        copyCells(model_, selection, shownColumns(), headings).release());
}

void StationsView::paste() {
    QItemSelection selection = selectionModel()->selection();
    if (selection.isEmpty() && currentIndex().isValid())
        selection.select(currentIndex(), currentIndex());
    const PastePlan plan = planPaste(model_, selection, shownColumns(),
                                     readBlock(QGuiApplication::clipboard()->text()));
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
        const bool unclear = !source.editable || (source.decided && source.typed.isEmpty());
        if (unclear || !index.flags().testFlag(Qt::ItemIsEditable)) {
            ++passed;
            continue;
        }
        texts.push_back({index.row(), index.column(), source.typed});
    }
    decideAll(texts, tr("Nothing filled"));
    if (passed > 0)
        emit said(counted(passed, tr("1 cell passed over: it cannot be filled."),
                          tr("%1 cells passed over: they cannot be filled.")));
}

}  // namespace fayline
