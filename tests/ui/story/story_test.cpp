// From nothing to printed sheets, with the keyboard alone.
#include <QAbstractItemView>
#include <QComboBox>
#include <QCompleter>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <QTableView>
#include <QTimer>
#include <iostream>
#include <set>

#include "forms/field_row.h"
#include "margins/margins_page.h"
#include "margins_model.h"
#include "margins_view.h"
#include "sheets/sheets_page.h"
#include "theme/segments.h"
#include "window_fixture.h"

namespace fayline {
namespace {

/// Answers the next file dialog from the keyboard: the path is typed, then Enter until the dialog
/// is gone. It reads folders in the background and says of a file it has not come to yet that there
/// is none; that box is closed with Enter too.
void answerDialog(const QString& path) {
    static constexpr int most = 200;
    auto* timer = new QTimer;
    timer->setInterval(30);
    QObject::connect(
        timer, &QTimer::timeout, timer,
        [timer, path, turn = 0, mine = QPointer<QFileDialog>(), typed = false]() mutable {
            QWidget* modal = QApplication::activeModalWidget();
            if (++turn > most || (typed && (mine.isNull() || !mine->isVisible()))) {
                const auto* edit = modal == nullptr ? nullptr : modal->findChild<QLineEdit*>();
                EXPECT_LE(turn, most)
                    << "no end of the dialog for " << path.toStdString()
                    << "; in it: " << (edit == nullptr ? "" : edit->text().toStdString());
                if (auto* open = qobject_cast<QDialog*>(modal)) open->reject();
                timer->deleteLater();
                return;
            }
            if (modal == nullptr) return;
            auto* dialog = qobject_cast<QFileDialog*>(modal);
            if (dialog == nullptr) {
                QTest::keyClick(modal, Qt::Key_Return);
                return;
            }
            auto* name = dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
            ASSERT_NE(name, nullptr);
            // While it comes to know the folder the dialog may empty its field.
            mine = dialog;
            if (name->text() != path) {
                name->setFocus();
                name->selectAll();
                QTest::keyClicks(name, path);
                typed = true;
            }
            if (name->completer() != nullptr) name->completer()->popup()->hide();
            QTest::keyClick(name, Qt::Key_Return);
        });
    timer->start();
}

class Story : public test::WindowTest {
  protected:
    Story() {
        QApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
        clock_.start();
    }

    [[nodiscard]] static QWidget* focus() { return QApplication::focusWidget(); }

    /// Tabs on until a widget has the focus; false when Tab never gets there.
    bool tabTo(const QWidget* wanted) {
        constexpr int most = 600;
        for (int i = 0; i < most; ++i) {
            if (focus() == wanted) return true;
            if (focus() == nullptr) return false;
            QTest::keyClick(focus(), Qt::Key_Tab);
        }
        return false;
    }
    /// Goes to a field with Tab, types, and takes the entry with Enter.
    void decide(const char* what, const char* text) {
        FieldRow* row = window.hull().row(what);
        ASSERT_NE(row, nullptr) << what;
        auto* box = qobject_cast<QComboBox*>(row->entry()->parentWidget());
        ASSERT_TRUE(tabTo(box != nullptr ? static_cast<QWidget*>(box) : row->entry()))
            << what << " is not reached with Tab";
        row->entry()->selectAll();
        QTest::keyClicks(row->entry(), QString::fromUtf8(text));
        QTest::keyClick(row->entry(), Qt::Key_Return);
        EXPECT_TRUE(row->objection().isEmpty()) << what << ": " << row->objection().toStdString();
        EXPECT_FALSE(test::decided(window.desk(), what).isEmpty()) << what;
    }
    /// Without a window manager nothing brings the window back when a dialog has gone.
    void comeBack() {
        window.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
        ASSERT_NE(focus(), nullptr) << "the focus is where it was before the dialog";
    }
    /// Says how long the step before took.
    void step(const char* did) { std::cout << "  " << did << ": " << clock_.restart() << " ms\n"; }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers) {
        QTest::keyClick(focus() != nullptr ? focus() : &window, key, modifiers);
    }

  private:
    QElapsedTimer clock_;
};

TEST_F(Story, aNewHullFromNothingToPrintedSheets) {
    const QString project = file.folder() + QStringLiteral("/own.fayline");
    answerDialog(project);
    press(Qt::Key_N, Qt::ControlModifier);
    ASSERT_TRUE(window.desk().isOpen()) << window.notice().says().toStdString();
    EXPECT_TRUE(window.hull().isVisible()) << "what is missing comes first";
    comeBack();

    step("a new project is made");

    // Offsets.
    QPushButton* import = nullptr;
    for (auto* button : window.hull().findChildren<QPushButton*>()) {
        if (button->text().contains(QStringLiteral("mport offsets"))) import = button;
    }
    ASSERT_NE(import, nullptr);
    ASSERT_TRUE(tabTo(import));
    answerDialog(QString::fromUtf8(FAYLINE_SOURCE_DIR "/resources/demo/hollin-offsets.csv"));
    QTest::keyClick(import, Qt::Key_Space);
    EXPECT_NE(window.desk().results()->hull->surface, nullptr);
    comeBack();
    EXPECT_EQ(focus(), import);

    step("offsets are in");

    // Timbers, ballast and bolts.
    const std::vector<std::pair<const char*, const char*>> timbers = {
        {"hull.displacement", "7200 kg"},
        {"keel.wood", "White oak"},
        {"keel.from", "2350 mm"},
        {"keel.to", "7450 mm"},
        {"keel.underside_fore", "715 mm"},
        {"keel.underside_aft", "510 mm"},
        {"keel.sided", "8 1/4"},
        {"keel.moulded", "6"},
        {"frames.first", "2' 6\""},
        {"frames.spacing", "9"},
        {"frames.count", "37"},
        {"frames.wood", "White oak"},
        {"frames.sided", "1 3/4"},
        {"frames.moulded", "2 1/2"},
        {"frames.heel_detail", "socketed"},
        {"floors.kind", "sawn"},
        {"floors.sided", "3"},
        {"floors.throat", "7"},
        {"floors.wood", "White oak"},
        {"ballast.metal", "Lead with 3 % antimony (ballast)"},
        {"ballast.from", "3400 mm"},
        {"ballast.to", "6600 mm"},
        {"ballast.breadth_middle", "210 mm"},
        {"ballast.depth_middle", "570 mm"},
        {"bolts.count", "9"},
        {"bolts.diameter", "7/8"},
        {"bolts.metal", "C65500_H02"},
    };
    for (const auto& [what, text] : timbers) decide(what, text);
    EXPECT_EQ(window.desk().results()->ballastBolts->placed.size(), 9U);
    EXPECT_FALSE(window.desk().results()->worstFirst.empty());
    step("timbers, ballast and bolts are decided");

    // Every group of fastenings, in the second part of the page.
    auto* segments = window.hull().findChild<Segments*>();
    ASSERT_NE(segments, nullptr);
    ASSERT_TRUE(tabTo(segments->focusProxy()));
    QTest::keyClick(focus(), Qt::Key_Right);
    EXPECT_EQ(window.hull().part(), HullPage::fastenings);
    const std::vector<std::pair<const char*, const char*>> fastenings = {
        {"planking.wood", "Iroko"},   {"planking.thickness", "1 1/8"},
        {"planking.strakes", "14"},   {"heel.kind", "wood screw"},
        {"heel.count", "2"},          {"heel.gauge", "14"},
        {"heel.length", "3"},         {"heel.metal", "C65500_H02"},
        {"arm.kind", "bolt"},         {"arm.count", "3"},
        {"arm.diameter", "3/8"},      {"arm.metal", "C65500_H02"},
        {"plank.kind", "wood screw"}, {"plank.count", "2"},
        {"plank.gauge", "12"},        {"plank.length", "2 1/4"},
        {"plank.metal", "C65500_H02"}};
    for (const auto& [what, text] : fastenings) decide(what, text);
    EXPECT_GT(allHoles(*window.desk().results()).size(), 2000U);
    step("fastenings are decided for the whole hull");

    // One frame differs, on the grid.
    press(Qt::Key_2, Qt::ControlModifier);
    ASSERT_TRUE(window.stations().isVisible());
    StationsView& grid = window.stations().grid();
    EXPECT_TRUE(grid.hasFocus());
    press(Qt::Key_Home, Qt::ControlModifier);
    while (window.stations().frame() != QStringLiteral("F20")) QTest::keyClick(&grid, Qt::Key_Down);
    while (grid.currentIndex().column() != static_cast<int>(Column::heel))
        QTest::keyClick(&grid, Qt::Key_Right);
    QTest::keyClicks(&grid, QStringLiteral("3"));
    ASSERT_NE(grid.openEditor(), nullptr);
    QTest::keyClicks(grid.openEditor(), QStringLiteral(" x 16 x 3 1/2"));
    QTest::keyClick(grid.openEditor(), Qt::Key_Return);
    EXPECT_EQ(test::decided(window.desk(), "F20.heel.gauge"), QStringLiteral("16"));

    step("one frame is decided on the grid");

    // The margins, the worst joint unfolded.
    press(Qt::Key_3, Qt::ControlModifier);
    ASSERT_TRUE(window.margins().isVisible());
    MarginsView& margins = window.margins().table();
    EXPECT_TRUE(margins.hasFocus());
    QTest::keyClick(&margins, Qt::Key_Right);
    EXPECT_TRUE(margins.isExpanded(window.margins().model().index(0, 0)));
    QTest::keyClick(&margins, Qt::Key_Down);
    EXPECT_TRUE(margins.currentIndex().parent().isValid());
    step("the worst joint is looked into");

    // The frame's sheet as PDF.
    press(Qt::Key_4, Qt::ControlModifier);
    ASSERT_TRUE(window.sheets().isVisible());
    EXPECT_TRUE(window.sheets().list().hasFocus());
    press(Qt::Key_Home, Qt::ControlModifier);
    const auto chosen = [&] {
        return window.sheets().list().currentIndex().siblingAtColumn(0).data().toString();
    };
    for (int i = 0; i < 200 && !chosen().startsWith(QStringLiteral("Frame F20")); ++i)
        press(Qt::Key_Down, Qt::NoModifier);
    ASSERT_TRUE(chosen().startsWith(QStringLiteral("Frame F20"))) << chosen().toStdString();
    const QString pdf = file.folder() + QStringLiteral("/F20.pdf");
    answerDialog(pdf);
    press(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_TRUE(QFile::exists(pdf)) << window.notice().says().toStdString();
    EXPECT_GT(QFile(pdf).size(), 5000);
    EXPECT_TRUE(window.notice().says().contains(QStringLiteral("F20.pdf")));
    comeBack();
    step("the frame's sheet stands as PDF");

    // All of them.
    QDir().mkpath(file.folder() + QStringLiteral("/sheets"));
    QPushButton* saveAll = nullptr;
    for (auto* button : window.sheets().findChildren<QPushButton*>()) {
        if (button->text().contains(QStringLiteral("all as PDF"))) saveAll = button;
    }
    ASSERT_NE(saveAll, nullptr);
    window.sheets().list().setFocus();
    ASSERT_TRUE(tabTo(saveAll));
    answerDialog(file.folder() + QStringLiteral("/sheets"));
    QTest::keyClick(saveAll, Qt::Key_Space);
    comeBack();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !window.sheets().isSaving(); }, 60000));
    EXPECT_TRUE(QFile::exists(file.folder() + QStringLiteral("/sheets/F20.pdf")));
    EXPECT_TRUE(QFile::exists(file.folder() + QStringLiteral("/sheets/keel.pdf")));
    step("all sheets stand as PDF");

    // And nothing was lost on the way.
    press(Qt::Key_5, Qt::ControlModifier);
    EXPECT_TRUE(window.close());
    Desk again(test::deskSetup());
    ASSERT_TRUE(again.open(project));
    EXPECT_EQ(test::decided(again, "F20.heel.length"), QStringLiteral("3 1/2 in"));
}

/// Whether Tab should stop at a widget: of buttons that exclude each other only one.
bool isStop(const QWidget& widget) {
    const auto* button = qobject_cast<const QAbstractButton*>(&widget);
    const bool oneOfMany = button != nullptr && button->isCheckable() && !button->isChecked();
    return widget.isVisible() && widget.isEnabled() && (widget.focusPolicy() & Qt::TabFocus) != 0 &&
           widget.focusProxy() == nullptr && !oneOfMany && !widget.inherits("QScrollArea") &&
           !widget.inherits("QMenuBar") && !widget.inherits("QSplitter");
}

TEST_F(Story, everyPageIsReachedAndNamedForScreenReaders) {
    openDemo();
    for (const char* page : {"Hull", "Stations", "Margins", "Sheets", "Metal"}) {
        action(QString::fromLatin1(page))->trigger();
        QCoreApplication::processEvents();
        std::set<const QWidget*> reached;
        for (int i = 0; i < 200; ++i) {
            reached.insert(focus());
            // In the grid Tab goes from cell to cell, and F6 leaves it.
            const bool grid = qobject_cast<StationsView*>(focus()) != nullptr;
            QTest::keyClick(focus(), grid ? Qt::Key_F6 : Qt::Key_Tab);
        }
        int stops = 0;
        for (const QWidget* widget : window.findChildren<QWidget*>()) {
            if (!isStop(*widget)) continue;
            ++stops;
            const auto* button = qobject_cast<const QAbstractButton*>(widget);
            const bool named = !widget->accessibleName().isEmpty() ||
                               (button != nullptr && !button->text().isEmpty()) ||
                               widget->inherits("QLabel");
            const std::string says = std::string(page) + ": " + widget->metaObject()->className() +
                                     " " + widget->accessibleName().toStdString();
            EXPECT_TRUE(named) << says;
            EXPECT_EQ(reached.count(widget), 1U) << says << " is not reached with Tab";
        }
        EXPECT_GE(stops, 5) << page;
    }
}

}  // namespace
}  // namespace fayline
