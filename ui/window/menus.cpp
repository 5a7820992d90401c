#include <QAction>
#include <QActionGroup>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>

#include <QUndoStack>

#include "bench/bench_page.h"
#include "main_window.h"
#include "notice_bar.h"
#include "sheets/sheets_page.h"
#include "start_page.h"
#include "stations/stations_page.h"
#include "words/values.h"

namespace fayline {
namespace {

/// The desktop's keys for a command; our own where it has none.
QList<QKeySequence> keys(QKeySequence::StandardKey standard, const char* otherwise) {
    const QList<QKeySequence> known = QKeySequence::keyBindings(standard);
    return known.isEmpty() ? QList<QKeySequence>{QKeySequence(QString::fromLatin1(otherwise))}
                           : known;
}
QList<QKeySequence> key(const char* text) {
    return {QKeySequence(QString::fromLatin1(text))};
}

QString asMenuText(QString words) {
    return words.replace(QLatin1Char('&'), QStringLiteral("&&"));
}

constexpr int textSizes[] = {8, 9, 10, 12, 14, 18};

}  // namespace

QAction* MainWindow::add(QMenu* menu, const QString& words, const QList<QKeySequence>& shortcuts,
                         std::function<void()> deed) {
    auto* action = new QAction(words, this);
    action->setShortcuts(shortcuts);
    connect(action, &QAction::triggered, this, [this, run = std::move(deed)] {
        settlePages();
        run();
    });
    menu->addAction(action);
    return action;
}

QAction* MainWindow::addPageCommand(QMenu* menu, const QString& words,
                                    const QList<QKeySequence>& shortcuts, PageCommand command) {
    QAction* action = add(menu, words, shortcuts, [this, command] {
        if (Page* front = page(); front != nullptr && front->does(command)) front->run(command);
    });
    pageCommands_.emplace_back(action, command);
    return action;
}

void MainWindow::makeMenus() {
    makeFileMenu();
    makeEditMenu();
    makeViewMenu();
    makeHelpMenu();
}

void MainWindow::makeFileMenu() {
    QMenu* menu = menuBar()->addMenu(tr("&File"));
    add(menu, tr("&New…"), keys(QKeySequence::New, "Ctrl+N"), [this] { newProject(); });
    add(menu, tr("New from o&ffsets…"), {}, [this] { newFromOffsets(); });
    add(menu, tr("&Open…"), keys(QKeySequence::Open, "Ctrl+O"), [this] { open(); });
    recent_ = menu->addMenu(tr("Open &recent"));
    recent_->setToolTipsVisible(true);
    add(menu, tr("De&mo hull…"), {}, [this] { demo(); });
    menu->addSeparator();
    needProject_.append(add(menu, tr("Save a &copy…"), keys(QKeySequence::SaveAs, "Ctrl+Shift+S"),
                            [this] { saveCopy(); }));
    menu->addSeparator();
    needProject_.append(add(menu, tr("&Print sheet…"), keys(QKeySequence::Print, "Ctrl+P"), [this] {
        showPage(sheetsPage);
        sheets_->askAndPrint();
    }));
    needProject_.append(add(menu, tr("Save sheet as P&DF…"), key("Ctrl+Shift+P"), [this] {
        showPage(sheetsPage);
        sheets_->askAndSave();
    }));
    needProject_.append(add(menu, tr("Save &all sheets as PDF…"), {}, [this] {
        showPage(sheetsPage);
        sheets_->askAndSaveAll();
    }));
    needProject_.append(
        add(menu, tr("Save calculat&ion record…"), {}, [this] { askAndSaveRecord({}); }));
    menu->addSeparator();
    needProject_.append(add(menu, tr("C&lose"), key("Ctrl+W"), [this] { closeProject(); }));
    menu->addSeparator();
    add(menu, tr("&Quit"), keys(QKeySequence::Quit, "Ctrl+Q"), [this] {
        close();
    })->setMenuRole(QAction::QuitRole);
    fillRecent();
}

void MainWindow::fillRecent() {
    recent_->clear();
    const QStringList paths = settings_.recent();
    for (const QString& path : paths) {
        QAction* action = add(recent_, asMenuText(QFileInfo(path).fileName()), {},
                              [this, path] { openRecent(path); });
        action->setToolTip(path);
    }
    if (!paths.isEmpty()) {
        recent_->addSeparator();
        add(recent_, tr("&Clear this list"), {}, [this] {
            settings_.clearRecent();
            fillRecent();
        });
    }
    recent_->setEnabled(!paths.isEmpty());
    if (!desk_.isOpen()) start_->setRecent(paths);
}

void MainWindow::makeEditMenu() {
    QMenu* menu = menuBar()->addMenu(tr("&Edit"));
    menu->addAction(undo_);
    menu->addAction(redo_);
    undo_->setShortcuts(keys(QKeySequence::Undo, "Ctrl+Z"));
    redo_->setShortcuts(
        {QKeySequence(QStringLiteral("Ctrl+Shift+Z")), QKeySequence(QStringLiteral("Ctrl+Y"))});
    connect(undo_, &QAction::triggered, this, &MainWindow::undo);
    connect(redo_, &QAction::triggered, this, &MainWindow::redo);
    menu->addSeparator();
    addPageCommand(menu, tr("&Copy"), keys(QKeySequence::Copy, "Ctrl+C"), PageCommand::copy);
    addPageCommand(menu, tr("Copy with &headings"), key("Ctrl+Shift+C"),
                   PageCommand::copyWithHeadings);
    addPageCommand(menu, tr("&Paste"), keys(QKeySequence::Paste, "Ctrl+V"), PageCommand::paste);
    addPageCommand(menu, tr("Fill &down"), key("Ctrl+D"), PageCommand::fillDown);
    menu->addSeparator();
    addPageCommand(menu, tr("&Find…"), keys(QKeySequence::Find, "Ctrl+F"), PageCommand::find);
    addPageCommand(menu, tr("Find &next"), keys(QKeySequence::FindNext, "F3"),
                   PageCommand::findNext);
    addPageCommand(menu, tr("Find pre&vious"), keys(QKeySequence::FindPrevious, "Shift+F3"),
                   PageCommand::findPrevious);
}

/// The columns of the grid: for the keyboard as well as the switch above it.
void MainWindow::makeColumnsMenu(QMenu* menu) {
    QMenu* columns = menu->addMenu(tr("&Columns of the grid"));
    for (int i = 0; i < StationsPage::setCount(); ++i) {
        const QString keys = QStringLiteral("Ctrl+Alt+%1").arg(i + 1);
        needProject_.append(
            add(columns, StationsPage::setTitle(i), {QKeySequence(keys)}, [this, i] {
                showPage(stationsPage);
                stations_->showSet(static_cast<ColumnSet>(i));
            }));
    }
}

void MainWindow::makeViewMenu() {
    QMenu* menu = menuBar()->addMenu(tr("&View"));
    needProject_.append(add(menu, tr("&Hull"), key("Ctrl+1"), [this] { showPage(hullPage); }));
    needProject_.append(
        add(menu, tr("&Stations"), key("Ctrl+2"), [this] { showPage(stationsPage); }));
    needProject_.append(
        add(menu, tr("&Margins"), key("Ctrl+3"), [this] { showPage(marginsPage); }));
    needProject_.append(add(menu, tr("Sh&eets"), key("Ctrl+4"), [this] { showPage(sheetsPage); }));
    needProject_.append(add(menu, tr("Met&al"), key("Ctrl+5"), [this] { showPage(metalPage); }));
    add(menu, tr("One &joint"), key("Ctrl+6"), [this] { showPage(benchPage); });
    menu->addSeparator();
    makeColumnsMenu(menu);
    menu->addSeparator();
    auto* looks = new QActionGroup(this);
    const auto look = [&](const QString& words, Look wanted) {
        QAction* action = add(menu, words, {}, [this, wanted] {
            theme_.setLook(wanted);
            settings_.setLook(wanted);
        });
        action->setCheckable(true);
        action->setChecked(theme_.look() == wanted);
        looks->addAction(action);
    };
    look(tr("&Light"), Look::light);
    look(tr("&Dark"), Look::dark);
    look(tr("As the s&ystem"), Look::system);
    QMenu* text = menu->addMenu(tr("&Text size"));
    auto* sizes = new QActionGroup(this);
    for (const int size : textSizes) {
        QAction* action = add(text, tr("%1 points").arg(size), {}, [this, size] {
            theme_.setTextSize(size);
            settings_.setTextSize(size);
        });
        action->setCheckable(true);
        action->setChecked(theme_.textSize() == size);
        sizes->addAction(action);
    }
    menu->addSeparator();
    QList<QKeySequence> in = keys(QKeySequence::ZoomIn, "Ctrl++");
    if (!in.contains(QKeySequence(QStringLiteral("Ctrl+="))))
        in.append(QKeySequence(QStringLiteral("Ctrl+=")));
    addPageCommand(menu, tr("Zoom sketch &in"), in, PageCommand::zoomIn);
    addPageCommand(menu, tr("Zoom sketch &out"), keys(QKeySequence::ZoomOut, "Ctrl+-"),
                   PageCommand::zoomOut);
    addPageCommand(menu, tr("&Fit sketch"), key("Ctrl+0"), PageCommand::zoomToFit);
}

void MainWindow::makeHelpMenu() {
    QMenu* menu = menuBar()->addMenu(tr("&Help"));
    add(menu, tr("&Keyboard shortcuts"),
        {QKeySequence(QStringLiteral("Ctrl+?")), QKeySequence(QStringLiteral("F1"))},
        [this] { showShortcuts(); });
    add(menu, tr("&Cautions"), {}, [this] { showCautions(); });
    add(menu, tr("&About Fayline"), {}, [this] { showAbout(); })->setMenuRole(QAction::AboutRole);
}

void MainWindow::undo() {
    settlePages();
    if (page() == bench_) {
        bench_->history().undo();
        return;
    }
    if (const auto done = desk_.undo(); !done) notice_->showNotice(asText(done.error().line()));
}

void MainWindow::redo() {
    settlePages();
    if (page() == bench_) {
        bench_->history().redo();
        return;
    }
    if (const auto done = desk_.redo(); !done) notice_->showNotice(asText(done.error().line()));
}

void MainWindow::refreshActions() {
    const bool open = desk_.isOpen();
    const bool editable = open && !desk_.isReadOnly();
    const auto name = [&](QAction* action, const QString& verb, const QString& title) {
        const QString words = title.isEmpty() ? verb : tr("%1: %2").arg(verb, title);
        action->setText(QLatin1Char('&') + asMenuText(words));
        action->setData(title.isEmpty() ? QString() : words);
        action->setToolTip(words + QStringLiteral(" (%1)").arg(
                                       action->shortcut().toString(QKeySequence::NativeText)));
        action->setEnabled((editable || page() == bench_) && !title.isEmpty());
    };
    // One joint has a history of its own; nothing done to it is a decision.
    const bool joint = page() == bench_;
    const auto titleOf = [](const QString& text, bool possible, const QString& otherwise) {
        return !possible ? QString() : text.isEmpty() ? otherwise : text;
    };
    const QUndoStack& history = bench_->history();
    name(
        undo_, tr("Undo"),
        joint ? titleOf(history.undoText(), history.canUndo(), tr("a change")) : desk_.undoTitle());
    name(
        redo_, tr("Redo"),
        joint ? titleOf(history.redoText(), history.canRedo(), tr("a change")) : desk_.redoTitle());
    for (QAction* action : needProject_) action->setEnabled(open);
    const Page* front = page();
    for (const auto& [action, command] : pageCommands_)
        action->setEnabled(front != nullptr && front->does(command));
}

}  // namespace fayline
