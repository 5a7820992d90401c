#include <QClipboard>
#include <QComboBox>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFile>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QTableWidget>
#include <QWheelEvent>
#include <map>
#include <set>

#include "deed_button.h"
#include "store/project_file.h"
#include "window_fixture.h"

namespace fayline {
namespace {

constexpr int patience_ms = 5000;

using Window = test::WindowTest;

TEST_F(Window, startsWithAWayInAndNothingElse) {
    EXPECT_EQ(window.windowTitle(), QStringLiteral("Fayline"));
    EXPECT_FALSE(window.topBar().isVisible());
    for (const char* words : {"New…", "New from offsets…", "Open…", "Demo hull…", "Quit"}) {
        ASSERT_NE(action(QString::fromUtf8(words)), nullptr) << words;
        EXPECT_TRUE(action(QString::fromUtf8(words))->isEnabled()) << words;
    }
    for (const char* words :
         {"Undo", "Redo", "Copy", "Paste", "Fill down", "Find…", "Close", "Stations"}) {
        ASSERT_NE(action(QString::fromUtf8(words)), nullptr) << words;
        EXPECT_FALSE(action(QString::fromUtf8(words))->isEnabled()) << words;
    }
}

TEST_F(Window, openingShowsBoatFileAndCounts) {
    openDemo();
    EXPECT_TRUE(window.windowTitle().startsWith(QStringLiteral("hollin.fayline")));
    EXPECT_TRUE(window.topBar().isVisible());
    EXPECT_EQ(settings.recent(), QStringList{file.path()});
    EXPECT_TRUE(window.topBar().settledText().startsWith(QStringLiteral("settled")));
    EXPECT_TRUE(window.topBar().countsText().contains(QStringLiteral("1 short")))
        << window.topBar().countsText().toStdString();
    EXPECT_TRUE(window.stations().isVisible()) << "there are margins, so they come first";
}

TEST_F(Window, undoAndRedoAreNamed) {
    openDemo();
    ASSERT_TRUE(window.desk().decide({{"K.5.diameter", "5/8 in"}}));
    QAction* undo = action(QStringLiteral("Undo"));
    EXPECT_EQ(undo->text(), QStringLiteral("&Undo: ballast bolt K.5 diameter to 5/8 in"));
    undo->trigger();
    EXPECT_TRUE(test::decided(window.desk(), "K.5.diameter").isEmpty());
    QAction* redo = action(QStringLiteral("Redo"));
    EXPECT_EQ(redo->text(), QStringLiteral("&Redo: ballast bolt K.5 diameter to 5/8 in"));
    EXPECT_TRUE(redo->shortcuts().contains(QKeySequence(QStringLiteral("Ctrl+Y"))));
    EXPECT_TRUE(redo->shortcuts().contains(QKeySequence(QStringLiteral("Ctrl+Shift+Z"))));
    QTest::keyClick(&window.stations().grid(), Qt::Key_Y, Qt::ControlModifier);
    EXPECT_EQ(test::decided(window.desk(), "K.5.diameter"), QStringLiteral("5/8 in"));
    QTest::keyClick(&window.stations().grid(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(test::decided(window.desk(), "K.5.diameter").isEmpty());
}

TEST_F(Window, whatIsTypedInACellSurvivesAnyCommand) {
    openDemo();
    StationsView& grid = window.stations().grid();
    const std::vector<const char*> commands = {"Hull", "Fill down", "Light", "Cautions",
                                               "Zoom sketch in"};
    int size = 60;
    for (const char* command : commands) {
        window.showPage(MainWindow::stationsPage);
        window.stations().showSet(ColumnSet::floor);
        grid.setCurrentIndex(at("F14", Column::throat));
        const QString typed = QString::number(size++) + QStringLiteral("/8");
        QTest::keyClick(&grid, typed[0].toLatin1());
        ASSERT_NE(grid.openEditor(), nullptr);
        for (const QChar letter : typed.mid(1))
            QTest::keyClick(grid.openEditor(), letter.toLatin1());
        action(QString::fromLatin1(command))->trigger();
        EXPECT_EQ(grid.openEditor(), nullptr) << command;
        if (QLatin1String(command) != QLatin1String("Fill down")) {
            EXPECT_EQ(test::decided(window.desk(), "F14.floor.throat"),
                      typed + QStringLiteral(" in"))
                << command;
        }
    }
    for (QWidget* other : QApplication::topLevelWidgets()) {
        if (other->inherits("QDialog")) other->close();
    }
}

TEST_F(Window, whatIsTypedInAFieldSurvivesAnyCommand) {
    openDemo();
    window.showPage(MainWindow::hullPage);
    FieldRow* row = window.hull().row("keel.sided");
    row->entry()->setFocus();
    row->entry()->selectAll();
    QTest::keyClicks(row->entry(), QStringLiteral("8 3/8"));
    action(QStringLiteral("Stations"))->trigger();
    EXPECT_EQ(test::decided(window.desk(), "keel.sided"), QStringLiteral("8 3/8 in"));
}

TEST_F(Window, closingAsksNothingAndKeepsEverything) {
    openDemo();
    StationsView& grid = window.stations().grid();
    window.stations().showSet(ColumnSet::floor);
    grid.setCurrentIndex(at("F14", Column::throat));
    QTest::keyClick(&grid, '9');
    EXPECT_TRUE(window.close());
    Desk again(test::deskSetup());
    ASSERT_TRUE(again.open(file.path()));
    EXPECT_FALSE(again.isReadOnly()) << "the file was let go";
    EXPECT_EQ(test::decided(again, "F14.floor.throat"), QStringLiteral("9 in"));
}

TEST_F(Window, unitsAndBasisAreDecisions) {
    openDemo();
    QComboBox* units = window.topBar().units();
    units->setCurrentIndex(1);
    emit units->activated(1);
    EXPECT_EQ(test::decided(window.desk(), "hull.units"), QStringLiteral("millimetres"));
    EXPECT_TRUE(action(QStringLiteral("Undo"))
                    ->text()
                    .contains(QStringLiteral("hull units to millimetres")));
    action(QStringLiteral("Undo"))->trigger();
    EXPECT_EQ(units->currentIndex(), 0);
    const QString us = window.topBar().countsText();
    QComboBox* basis = window.topBar().basis();
    basis->setCurrentIndex(1);
    emit basis->activated(1);
    EXPECT_EQ(test::decided(window.desk(), "hull.basis"), QStringLiteral("ec5"));
    EXPECT_NE(window.topBar().countsText(), us);
}

TEST_F(Window, theWheelTurnsNoList) {
    openDemo();
    for (QComboBox* box : window.findChildren<QComboBox*>()) {
        const QString before = box->currentText();
        box->setFocus();
        QWheelEvent turn(QPointF(5, 5), box->mapToGlobal(QPointF(5, 5)), {}, QPoint(0, -120),
                         Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(box, &turn);
        EXPECT_EQ(box->currentText(), before);
    }
}

TEST_F(Window, aFileInUseElsewhereIsOpenForReading) {
    Desk other(test::deskSetup());
    ASSERT_TRUE(other.open(file.path()));
    openDemo();
    EXPECT_TRUE(window.desk().isReadOnly());
    EXPECT_FALSE(window.notice().says().isEmpty());
    EXPECT_EQ(window.topBar().settledText(), QStringLiteral("reading only"));
    EXPECT_FALSE(action(QStringLiteral("Undo"))->isEnabled());
    EXPECT_FALSE(window.topBar().units()->isEnabled());
    StationsModel& model = window.stations().model();
    EXPECT_FALSE(model.setData(at("F14", Column::throat), QStringLiteral("8"), Qt::EditRole));
    EXPECT_EQ(test::decided(window.desk(), "F14.floor.throat"), QString());
}

TEST_F(Window, aDamagedFileIsRefusedInWords) {
    const QString bad = file.folder() + QStringLiteral("/bad.fayline");
    QFile made(bad);
    ASSERT_TRUE(made.open(QIODevice::WriteOnly));
    made.write("this is no database at all, not even nearly, whatever its name may say about it");
    made.close();
    EXPECT_FALSE(window.openFile(bad));
    EXPECT_TRUE(window.notice().says().contains(QStringLiteral("bad.fayline")))
        << window.notice().says().toStdString();
    EXPECT_FALSE(window.desk().isOpen());
    openDemo();
    EXPECT_TRUE(window.notice().says().isEmpty());
    EXPECT_FALSE(window.openFile(bad));
    EXPECT_EQ(window.desk().boatName(), QStringLiteral("Hollin")) << "the open one stays open";
}

TEST_F(Window, savingThatFailsIsANoticeUntilItWorks) {
    openDemo();
    const QString moved = file.folder() + QStringLiteral("/moved.fayline");
    ASSERT_TRUE(QFile::rename(file.path(), moved));
    ASSERT_TRUE(window.desk().decide({{"hull.name", "Hollin II"}}));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !window.notice().says().isEmpty(); }, patience_ms));
    EXPECT_EQ(window.topBar().settledText(), QStringLiteral("not settled"));
    ASSERT_TRUE(QFile::rename(moved, file.path()));
    for (auto* button : window.notice().findChildren<QPushButton*>()) {
        if (button->text() == QStringLiteral("Try again")) button->click();
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.notice().says().isEmpty(); }, patience_ms));
    EXPECT_TRUE(window.topBar().settledText().startsWith(QStringLiteral("settled ")));
}

TEST_F(Window, aRefusalGoesAwayWithTheNextThingDone) {
    openDemo();
    StationsView& grid = window.stations().grid();
    window.stations().showSet(ColumnSet::floor);
    grid.setCurrentIndex(at("F14", Column::throat));
    QGuiApplication::clipboard()->setText(QStringLiteral("deep"));
    QAction* paste = action(QStringLiteral("Paste"));
    paste->trigger();
    EXPECT_EQ(window.notice().says(), QStringLiteral("Nothing pasted: 1 cell cannot be taken."));
    ASSERT_EQ(window.notice().details().size(), 1);
    QGuiApplication::clipboard()->setText(QStringLiteral("8"));
    paste->trigger();
    EXPECT_TRUE(window.notice().says().isEmpty());
}

TEST_F(Window, newAndDemoProjectsAreMadeWhereAsked) {
    const QString fresh = file.folder() + QStringLiteral("/fresh.fayline");
    ASSERT_TRUE(window.createFile(fresh, window.services().blank()));
    EXPECT_TRUE(window.hull().isVisible()) << "a new hull begins with what is missing";
    EXPECT_EQ(window.desk().boatName(), QStringLiteral("fresh"));
    const QString demo = file.folder() + QStringLiteral("/demo.fayline");
    ASSERT_TRUE(window.createFile(demo, window.services().demo()));
    EXPECT_TRUE(window.stations().isVisible());
    EXPECT_FALSE(window.createFile(fresh, window.services().blank()))
        << "a file that is there is never replaced";
    EXPECT_FALSE(window.notice().says().isEmpty());
    EXPECT_TRUE(ProjectFile::verify(fresh.toStdString())->outcome == FileOutcome::ok);
}

TEST_F(Window, projectsAreDroppedOnItAndNothingElse) {
    const auto enters = [&](const QList<QUrl>& urls) {
        QMimeData data;
        data.setUrls(urls);
        QDragEnterEvent enter(QPoint(50, 50), Qt::CopyAction, &data, Qt::LeftButton,
                              Qt::NoModifier);
        enter.setAccepted(false);
        QCoreApplication::sendEvent(&window, &enter);
        return enter.isAccepted();
    };
    const QUrl project = QUrl::fromLocalFile(file.path());
    EXPECT_TRUE(enters({project}));
    EXPECT_FALSE(enters({QUrl::fromLocalFile(QStringLiteral("/etc/hostname"))}));
    EXPECT_FALSE(enters({project, project}));
    EXPECT_FALSE(enters({QUrl(QStringLiteral("https://example.org/a.fayline"))}));
    QMimeData data;
    data.setUrls({project});
    QDropEvent drop(QPointF(50, 50), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&window, &drop);
    EXPECT_EQ(window.desk().path(), file.path());
}

TEST_F(Window, recentFilesAreKeptNewestFirstAndMissingOnesCanGo) {
    openDemo();
    for (int i = 0; i < 12; ++i) {
        ASSERT_TRUE(window.createFile(file.folder() + QStringLiteral("/boat%1.fayline").arg(i),
                                      window.services().blank()));
    }
    EXPECT_EQ(settings.recent().size(), Settings::mostRecent);
    EXPECT_TRUE(settings.recent().front().endsWith(QStringLiteral("boat11.fayline")));
    const QString gone = settings.recent()[3];
    ASSERT_TRUE(QFile::remove(gone));
    QAction* entry = action(gone.section(QLatin1Char('/'), -1));
    ASSERT_NE(entry, nullptr);
    EXPECT_EQ(entry->toolTip(), gone);
    entry->trigger();
    EXPECT_TRUE(window.notice().says().contains(gone));
    window.notice().findChild<QPushButton*>()->click();
    EXPECT_FALSE(settings.recent().contains(gone));
    action(QStringLiteral("Clear this list"))->trigger();
    EXPECT_TRUE(settings.recent().isEmpty());
}

TEST_F(Window, theCountLeadsToTheWorst) {
    openDemo();
    window.showPage(MainWindow::hullPage);
    emit window.topBar().countsClicked();
    EXPECT_TRUE(window.stations().isVisible());
    EXPECT_EQ(window.stations().frame(), QStringLiteral("F18")) << "K.4 with its small washer";
}

TEST_F(Window, everyMenuItemHasItsOwnKeyAndNoShortcutIsTaken) {
    openDemo();
    std::map<QString, QString> shortcuts;
    for (QAction* top : window.menuBar()->actions()) {
        std::set<QChar> keys;
        for (QAction* each : top->menu()->actions()) {
            if (each->isSeparator()) continue;
            const qsizetype at = QString(each->text())
                                     .replace(QStringLiteral("&&"), QStringLiteral("  "))
                                     .indexOf(QLatin1Char('&'));
            ASSERT_GE(at, 0) << each->text().toStdString();
            EXPECT_TRUE(keys.insert(each->text()[at + 1].toLower()).second)
                << each->text().toStdString();
        }
    }
    for (QAction* each : actions()) {
        for (const QKeySequence& key : each->shortcuts()) {
            EXPECT_TRUE(shortcuts.emplace(key.toString(), each->text()).second)
                << key.toString().toStdString() << ": " << each->text().toStdString();
        }
    }
    for (const char* words :
         {"Quit", "New…", "Open…", "Save a copy", "Undo", "Copy", "Paste", "Find"}) {
        EXPECT_FALSE(action(QString::fromUtf8(words))->shortcut().isEmpty()) << words;
    }
}

TEST_F(Window, openingChoosesTheFrameWithTheWorstMargin) {
    openDemo();
    EXPECT_EQ(window.stations().frame(), QStringLiteral("F18")) << "K.4 with its small washer";
}

/// The dialog of that title among all windows of the program; null when it is not open.
QWidget* dialogNamed(const QString& title) {
    for (QWidget* each : QApplication::topLevelWidgets()) {
        if (each->inherits("QDialog") && each->isVisible() && each->windowTitle() == title)
            return each;
    }
    return nullptr;
}

TEST_F(Window, helpListsEveryShortcut) {
    openDemo();
    action(QStringLiteral("Keyboard shortcuts"))->trigger();
    QWidget* dialog = dialogNamed(QStringLiteral("Keyboard shortcuts"));
    ASSERT_NE(dialog, nullptr);
    const auto* table = dialog->findChild<QTableWidget*>();
    ASSERT_NE(table, nullptr);
    QString listed;
    for (int row = 0; row < table->rowCount(); ++row)
        listed += table->item(row, 1)->text() + QStringLiteral(", ");
    int shortcuts = 0;
    for (QAction* each : actions()) {
        for (const QKeySequence& key : each->shortcuts()) {
            ++shortcuts;
            EXPECT_TRUE(
                listed.contains(key.toString(QKeySequence::NativeText) + QStringLiteral(", ")))
                << each->text().toStdString();
        }
    }
    EXPECT_GT(shortcuts, 20);
    QTest::keyClick(dialog, Qt::Key_Escape);
    EXPECT_FALSE(dialog->isVisible());
}

}  // namespace
}  // namespace fayline
