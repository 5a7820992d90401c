#include "stations/stations_page.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QLabel>
#include <QSignalSpy>
#include <QTest>
#include <QTextBrowser>
#include <set>

#include "desk/desk.h"
#include "holds.h"
#include "holds_list.h"
#include "printing.h"
#include "services.h"
#include "sketch/sketch_view.h"
#include "stations/pictures.h"
#include "stations_view.h"
#include "words/checks.h"
#include "working/working_panel.h"

namespace fayline {
namespace {

class PageTest : public testing::Test {
  protected:
    PageTest() : desk(test::deskSetup()), page(desk) {
        EXPECT_TRUE(desk.open(file.path()));
        page.resize(1280, 800);
        page.show();
        page.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
    }

    test::DemoFile file;
    Desk desk;
    StationsPage page;
};

TEST_F(PageTest, sketchAndGridChooseTogether) {
    page.setFrame(QStringLiteral("F18"));
    EXPECT_EQ(page.profile().selectedId(), QStringLiteral("F18"));
    emit page.profile().selected(QStringLiteral("F22"));
    EXPECT_EQ(page.frame(), QStringLiteral("F22"));
    emit page.profile().selected(QStringLiteral("K.6"));
    EXPECT_EQ(page.frame(), QStringLiteral("F20")) << "a bolt's frame";
    emit page.profile().activated(QStringLiteral("K.6"));
    EXPECT_EQ(page.grid().currentIndex().column(), static_cast<int>(Column::diameter));
    EXPECT_TRUE(page.grid().hasFocus());
}

TEST_F(PageTest, theSketchFollowsAnEdit) {
    const auto signsOf = [&](const std::string& id) {
        std::multiset<Role> roles;
        for (const DrawItem& item : page.profile().drawing().items) {
            if (item.id == id) roles.insert(item.role);
        }
        return roles;
    };
    ASSERT_TRUE(desk.decide({{"K.6.diameter", "7/8 in"}}));
    const auto before = signsOf("K.6");
    ASSERT_TRUE(desk.decide({{"K.6.diameter", "3/8 in"}}));
    EXPECT_EQ(statusCounts(*desk.results(), Basis::us).count(Status::isShort), 1U);
    EXPECT_NE(signsOf("K.6"), before);
    EXPECT_TRUE(signsOf("K.6").count(Role::boltShort) > 0);
}

TEST_F(PageTest, pictureHasEveryFrameAndBoltThatIsPlaced) {
    const ProfileInput profile = profileOf(desk);
    EXPECT_EQ(profile.frames.size(), desk.results()->structure->frames.size());
    EXPECT_EQ(profile.bolts.size(), desk.results()->ballastBolts->holes.size());
    EXPECT_GE(profile.keel.size(), 4U);
    EXPECT_FALSE(profile.ballast.empty());
    const SectionInput section = sectionOf(desk, "F20");
    ASSERT_EQ(section.bolts.size(), 1U);
    EXPECT_EQ(section.bolts.front().id, "K.6");
    EXPECT_FALSE(section.side.empty());
    EXPECT_TRUE(section.floorTop);
    EXPECT_TRUE(sectionOf(desk, "F99").side.empty());
}

TEST_F(PageTest, whatHoldsHereNamesSizeWorstAndWhy) {
    const auto holds = holdsAt(desk, "F18");
    ASSERT_FALSE(holds.empty());
    EXPECT_EQ(holds.front().title, QStringLiteral("Ballast bolt K.4"));
    EXPECT_TRUE(holds.front().verdict.endsWith(QStringLiteral("short")));
    EXPECT_TRUE(holds.front().why.startsWith(QStringLiteral("washer")));
    EXPECT_TRUE(holds.front().size.contains(QStringLiteral("7/8\"")));
    EXPECT_EQ(holds.front().check, worstOf(*desk.results(), {"K.4"}, Basis::us));
    bool finding = false;
    for (const Hold& hold : holds)
        finding = finding || (hold.title == QStringLiteral("Class rule") &&
                              hold.why.contains(QStringLiteral("narrower than")));
    EXPECT_TRUE(finding);
}

TEST_F(PageTest, aFindingIsPutRightFromTheList) {
    page.setFrame(QStringLiteral("F18"));
    HoldsModel& model = page.holds().holds();
    for (int row = 0; row < model.rowCount(); ++row) {
        if (model.hold(row).cure.empty()) continue;
        const Typed cure = model.hold(row).cure;
        page.holds().setCurrentIndex(model.index(row));
        QTest::keyClick(&page.holds(), Qt::Key_Return);
        EXPECT_EQ(test::decided(desk, cure.front().first.c_str()).toStdString(),
                  cure.front().second);
        return;
    }
    FAIL() << "the narrow washer has a cure";
}

TEST_F(PageTest, enterOnAFasteningShowsItsWorkingAndEscComesBack) {
    page.setFrame(QStringLiteral("F18"));
    page.holds().setCurrentIndex(page.holds().holds().index(0));
    QTest::keyClick(&page.holds(), Qt::Key_Return);
    EXPECT_TRUE(page.working().isVisible());
    EXPECT_TRUE(page.working().plainText().startsWith(QStringLiteral("Ballast bolt K.4: washer")));
    QTest::keyClick(page.working().findChild<QTextBrowser*>(), Qt::Key_Escape);
    EXPECT_FALSE(page.working().isVisible());
    EXPECT_TRUE(page.holds().hasFocus());
}

TEST_F(PageTest, f6GoesRoundOutOfTheGrid) {
    page.grid().setFocus();
    QTest::keyClick(&page.grid(), Qt::Key_F6);
    EXPECT_TRUE(page.section().hasFocus());
    page.grid().setFocus();
    QTest::keyClick(&page.grid(), Qt::Key_F6, Qt::ShiftModifier);
    EXPECT_TRUE(page.profile().hasFocus());
}

TEST_F(PageTest, withoutFramesItSaysWhatIsMissing) {
    ASSERT_TRUE(desk.create(file.folder() + QStringLiteral("/new.fayline"), {}));
    EXPECT_FALSE(page.grid().isVisible());
    EXPECT_FALSE(page.does(PageCommand::paste));
    QSignalSpy wanted(&page, &StationsPage::hullWanted);
    for (auto* label : page.findChildren<QLabel*>()) {
        if (label->isVisible() && label->text().contains(QStringLiteral("No frames yet")))
            emit label->linkActivated(QStringLiteral("frames.count"));
    }
    ASSERT_EQ(wanted.size(), 1);
    EXPECT_EQ(wanted.front().front().toString(), QStringLiteral("frames.count"));
    EXPECT_FALSE(page.showWorking());
}

TEST_F(PageTest, theCautionStandsAtItsFoot) {
    const QString caution = QString::fromStdString(standingCautions().front());
    bool found = false;
    for (auto* label : page.findChildren<QLabel*>())
        found = found || (label->isVisible() && label->text().startsWith(caution));
    EXPECT_TRUE(found);
}

TEST_F(PageTest, onlyTouchedCellsArePaintedAnew) {
    ASSERT_TRUE(desk.decide({{"K.6.diameter", "7/8 in"}}));
    page.setFrame(QStringLiteral("F20"));
    page.grid().grab();
    class Watch : public QObject {
      public:
        bool eventFilter(QObject*, QEvent* event) override {
            if (event->type() == QEvent::Paint)
                region += static_cast<QPaintEvent*>(event)->region();
            return false;
        }
        QRegion region;
    } watch;
    QCoreApplication::processEvents();
    page.grid().viewport()->installEventFilter(&watch);
    ASSERT_TRUE(desk.decide({{"F20.floor.reason", "knot at the throat"}}));
    QCoreApplication::processEvents();
    EXPECT_TRUE(watch.region.isEmpty()) << "no cell shows a reason";
    ASSERT_TRUE(desk.decide({{"F20.floor.sided", "4 in"}}));
    QCoreApplication::processEvents();
    ASSERT_FALSE(watch.region.isEmpty());
    const QRect untouched = page.grid().visualRect(page.grid().model()->index(
        page.grid().currentIndex().row() - 1, static_cast<int>(Column::wood)));
    EXPECT_FALSE(watch.region.intersects(untouched));
}

}  // namespace
}  // namespace fayline
