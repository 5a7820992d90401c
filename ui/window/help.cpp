#include <QApplication>
#include <QClipboard>
#include <QDialog>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "derive/results.h"
#include "main_window.h"
#include "words/values.h"

namespace fayline {
namespace {

using Rows = std::vector<std::pair<QString, QString>>;

void menuRows(const QMenu& menu, Rows& rows) {
    for (const QAction* action : menu.actions()) {
        if (action->menu() != nullptr) menuRows(*action->menu(), rows);
        if (action->shortcuts().isEmpty()) continue;
        QStringList keys;
        for (const QKeySequence& key : action->shortcuts())
            keys.append(key.toString(QKeySequence::NativeText));
        const QString words = action->data().toString().isEmpty()
                                  ? action->text()
                                  : action->text().section(QLatin1Char(':'), 0, 0);
        rows.emplace_back(QString(words).remove(QLatin1Char('&')), keys.join(QStringLiteral(", ")));
    }
}

Rows gridRows() {
    const auto tr = [](const char* words) { return MainWindow::tr(words); };
    return {
        {tr("Edit the cell"), QStringLiteral("F2")},
        {tr("Take the entry and go down; up"), tr("Enter; Shift+Enter")},
        {tr("Take the entry and go on; back"), tr("Tab; Shift+Tab")},
        {tr("Drop the entry"), tr("Esc")},
        {tr("The entry for every selected cell"), tr("Ctrl+Enter")},
        {tr("List what can be chosen"), tr("Alt+Down")},
        {tr("Back to the rule"), tr("Del")},
        {tr("To the edge of what is filled in"), tr("Ctrl+arrow")},
        {tr("Leave the grid; the other way"), tr("F6 or Ctrl+Tab; Shift+F6")},
        {tr("In the sketch: next frame; other row; take up"), tr("Left, Right; Up, Down; Enter")},
        {tr("In “What holds here”: show the working"), tr("Enter")},
        {tr("Switches above grid and charts: next, previous"), tr("Right, Left")},
        {tr("Port and starboard apart"), tr("two figures with | between")},
        {tr("In the margins: unfold; fold; to the frame; to the chart"),
         tr("Right; Left; Enter; F6")},
        {tr("In a chart: next place; first, last; choose"), tr("Left, Right; Home, End; Enter")},
        {tr("In a sheet: next page, previous page"), tr("Page Down, Page Up")}};
}

QDialog* dialogFor(QWidget* parent, const QString& title) {
    auto* dialog = new QDialog(parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(title);
    (new QVBoxLayout(dialog))->setSpacing(10);
    return dialog;
}

QDialogButtonBox* closeBox(QDialog* dialog) {
    auto* box = new QDialogButtonBox(QDialogButtonBox::Close);
    QObject::connect(box, &QDialogButtonBox::rejected, dialog, &QDialog::reject);
    return box;
}

}  // namespace

void MainWindow::showShortcuts() {
    Rows rows;
    for (const QAction* top : menuBar()->actions()) {
        if (top->menu() != nullptr) menuRows(*top->menu(), rows);
    }
    const Rows inGrid = gridRows();
    rows.insert(rows.end(), inGrid.begin(), inGrid.end());

    QDialog* dialog = dialogFor(this, tr("Keyboard shortcuts"));
    auto* table = new QTableWidget(static_cast<int>(rows.size()), 2);
    table->setHorizontalHeaderLabels({tr("What"), tr("Keys")});
    table->verticalHeader()->hide();
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setTabKeyNavigation(false);
    table->setShowGrid(false);
    for (int i = 0; i < table->rowCount(); ++i) {
        table->setItem(i, 0, new QTableWidgetItem(rows[static_cast<std::size_t>(i)].first));
        table->setItem(i, 1, new QTableWidgetItem(rows[static_cast<std::size_t>(i)].second));
    }
    table->setCurrentCell(0, 0);
    table->resizeColumnsToContents();
    table->horizontalHeader()->setStretchLastSection(true);
    dialog->layout()->addWidget(table);
    dialog->layout()->addWidget(closeBox(dialog));
    table->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 8);
    dialog->resize(
        table->columnWidth(0) + table->columnWidth(1) + fontMetrics().averageCharWidth() * 12, 620);
    dialog->show();
}

void MainWindow::showCautions() {
    QDialog* dialog = dialogFor(this, tr("Cautions"));
    for (const std::string& caution : standingCautions()) {
        auto* label = new QLabel(asText(caution));
        label->setWordWrap(true);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
        dialog->layout()->addWidget(label);
    }
    dialog->layout()->addWidget(closeBox(dialog));
    const int wide = fontMetrics().averageCharWidth() * 90;
    dialog->setMinimumWidth(wide);
    dialog->resize(wide, dialog->layout()->heightForWidth(wide));
    dialog->show();
}

void MainWindow::showAbout() {
    QDialog* dialog = dialogFor(this, tr("About Fayline"));
    const QString facts = tr("%1\nQt %2, under the LGPL version 3; its charts under the GPL "
                             "version 3\nDejaVu Sans, under the Bitstream Vera licence")
                              .arg(asText(services_.program), QString::fromLatin1(qVersion()));
    auto* label = new QLabel(facts);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    auto* words =
        new QLabel(tr("Plans, proves and prints what holds a plank-on-frame hull "
                      "together.\nResults guide, they do not certify."));
    auto* box = closeBox(dialog);
    auto* copy = box->addButton(tr("&Copy"), QDialogButtonBox::ActionRole);
    connect(copy, &QPushButton::clicked, dialog,
            [facts] { QApplication::clipboard()->setText(facts); });
    dialog->layout()->addWidget(words);
    dialog->layout()->addWidget(label);
    dialog->layout()->addWidget(box);
    dialog->show();
}

}  // namespace fayline
