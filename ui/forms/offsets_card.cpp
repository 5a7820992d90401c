#include "offsets_card.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "desk/when_seen.h"
#include "offsets_model.h"
#include "words/values.h"

namespace fayline {

OffsetsCard::OffsetsCard(Desk& desk, QWidget* parent)
    : Card(tr("Offsets"), parent),
      desk_(desk),
      model_(new OffsetsModel(desk, this)),
      count_(new QLabel),
      import_(new QPushButton(tr("&Import offsets…"))),
      table_(new QTableView) {
    count_->setWordWrap(true);
    auto* head = new QHBoxLayout;
    head->addWidget(count_, 1);
    head->addWidget(import_);
    contents()->addLayout(head);
    table_->setModel(model_);
    table_->setFrameShape(QFrame::NoFrame);
    table_->setSelectionMode(QAbstractItemView::NoSelection);
    table_->setTabKeyNavigation(false);
    table_->setAccessibleName(tr("Lofting stations"));
    table_->verticalHeader()->hide();
    table_->setShowGrid(false);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 8);
    table_->setMinimumHeight(8 * (fontMetrics().height() + 8));
    contents()->addWidget(table_, 1);
    import_->setToolTip(
        tr("A table of comma separated text: a line “# unit: mm”, then "
           "station,x,half_breadth,height"));
    connect(import_, &QPushButton::clicked, this, &OffsetsCard::askForFile);
    new WhenSeen(desk_, this, [this] {
        model_->refresh();
        refresh();
    });
    refresh();
}

void OffsetsCard::refresh() {
    import_->setEnabled(desk_.isOpen() && !desk_.isReadOnly());
    const int stations = model_->rowCount();
    table_->setVisible(stations > 0);
    if (stations == 0) {
        count_->setText(tr("No offsets yet. Bring in a table of them to begin."));
        return;
    }
    if (!table_->currentIndex().isValid()) table_->setCurrentIndex(model_->index(0, 0));
    count_->setText(counted(stations, tr("1 station"), tr("%1 stations")) + QStringLiteral(", ") +
                    counted(model_->pointCount(), tr("1 point"), tr("%1 points")));
}

void OffsetsCard::focusImport() {
    import_->setFocus(Qt::OtherFocusReason);
}

void OffsetsCard::askForFile() {
    const QString file = QFileDialog::getOpenFileName(
        window(), tr("Import offsets"), QFileInfo(desk_.path()).absolutePath(),
        tr("Tables of offsets (*.csv *.txt);;All files (*)"));
    if (!file.isEmpty()) importFrom(file);
}

bool OffsetsCard::importFrom(const QString& file) {
    const auto typed = offsetDecisions(file, desk_.project());
    if (!typed) {
        QStringList details;
        for (const Problem& problem : typed.error()) details.append(asText(problem.line()));
        emit stopped(tr("The offsets of %1 were not taken; those in the project stand.")
                         .arg(QFileInfo(file).fileName()),
                     details);
        return false;
    }
    if (const auto done =
            desk_.decide(*typed, tr("offsets from %1").arg(QFileInfo(file).fileName()));
        !done) {
        emit stopped(tr("The offsets were not taken; those in the project stand."),
                     {namedSentence(done.error())});
        return false;
    }
    return true;
}

}  // namespace fayline
