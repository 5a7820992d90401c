#include "desk/desk.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "printing.h"
#include "services.h"

namespace fayline {
namespace {

constexpr int patience_ms = 5000;

class DeskTest : public testing::Test {
  protected:
    DeskTest() : desk(test::deskSetup()) {}
    void openDemo() { ASSERT_TRUE(desk.open(file.path())); }

    test::DemoFile file;
    Desk desk;
};

double marginOf(const Desk& desk, const char* id) {
    const auto checks = checksOf(*desk.results(), id);
    return checks.empty() ? -1.0 : checks.front()->margin.value_or(-1.0);
}

TEST_F(DeskTest, startsWithNothingOpenAndSaysSo) {
    EXPECT_FALSE(desk.isOpen());
    EXPECT_TRUE(desk.settledMark().isEmpty());
    const auto done = desk.decide({{"hull.name", "Hollin"}});
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, "desk.empty");
}

TEST_F(DeskTest, openingWorksEverythingOut) {
    QSignalSpy arrived(&desk, &Desk::projectArrived);
    openDemo();
    EXPECT_EQ(arrived.size(), 1);
    EXPECT_EQ(desk.boatName(), QStringLiteral("Hollin"));
    EXPECT_FALSE(desk.isReadOnly());
    EXPECT_FALSE(desk.results()->worstFirst.empty());
    EXPECT_TRUE(desk.settledMark().startsWith(QStringLiteral("settled")));
}

TEST_F(DeskTest, aDecisionIsDerivedToldAndSettled) {
    openDemo();
    const double before = marginOf(desk, "K.5");
    QSignalSpy told(&desk, &Desk::decisionsChanged);
    QSignalSpy results(&desk, &Desk::resultsChanged);
    ASSERT_TRUE(desk.decide({{"K.5.diameter", "5/8 in"}}, QStringLiteral("what is in the shed")));
    ASSERT_EQ(told.size(), 1);
    EXPECT_EQ(told.front().front().toStringList(), QStringList{QStringLiteral("K.5.diameter")});
    EXPECT_EQ(results.size(), 1);
    EXPECT_LT(marginOf(desk, "K.5"), before);
    EXPECT_EQ(desk.journal().steps().back().why, "what is in the shed");
    EXPECT_EQ(desk.journal().steps().back().who, "the builder");
    EXPECT_EQ(desk.settledMark(), QStringLiteral("settling…"));
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return desk.settledMark().startsWith(QStringLiteral("settled ")); }, patience_ms));
}

TEST_F(DeskTest, whatIsRefusedChangesNothing) {
    openDemo();
    const auto tip = desk.journal().tip();
    const auto before = desk.results();
    for (const char* text : {"5/8 furlongs", "700 in", "five", "1.2.3 mm"}) {
        const auto done = desk.decide({{"K.5.diameter", text}});
        ASSERT_FALSE(done) << text;
        EXPECT_FALSE(done.error().what.empty());
    }
    EXPECT_EQ(desk.journal().tip(), tip);
    EXPECT_EQ(desk.results(), before);
}

TEST_F(DeskTest, theSameAgainIsNoStep) {
    openDemo();
    const auto tip = desk.journal().tip();
    EXPECT_TRUE(desk.decide({{"hull.name", "Hollin"}}));
    EXPECT_EQ(desk.journal().tip(), tip);
}

TEST_F(DeskTest, wouldTakeChangesNothing) {
    openDemo();
    const auto tip = desk.journal().tip();
    EXPECT_TRUE(desk.wouldTake({{"K.5.diameter", "5/8 in"}}));
    EXPECT_FALSE(desk.wouldTake({{"K.5.diameter", "5/8"}}));
    EXPECT_EQ(desk.journal().tip(), tip);
}

TEST_F(DeskTest, undoAndRedoWorkAfterReopening) {
    openDemo();
    const double before = marginOf(desk, "K.5");
    ASSERT_TRUE(desk.decide({{"K.5.diameter", "5/8 in"}}));
    const double thin = marginOf(desk, "K.5");
    ASSERT_TRUE(desk.waitUntilSettled(patience_ms));
    EXPECT_EQ(desk.close(), 0);

    Desk again(test::deskSetup());
    ASSERT_TRUE(again.open(file.path()));
    EXPECT_EQ(marginOf(again, "K.5"), thin);
    EXPECT_EQ(again.undoTitle(), QStringLiteral("ballast bolt K.5 diameter to 5/8 in"));
    ASSERT_TRUE(again.undo());
    EXPECT_EQ(marginOf(again, "K.5"), before);
    ASSERT_TRUE(again.waitUntilSettled(patience_ms));
    again.close();

    ASSERT_TRUE(again.open(file.path()));
    EXPECT_EQ(marginOf(again, "K.5"), before);
    ASSERT_TRUE(again.redo());
    EXPECT_EQ(marginOf(again, "K.5"), thin);
}

TEST_F(DeskTest, aSecondDeskMayReadButNotWrite) {
    openDemo();
    Desk second(test::deskSetup());
    ASSERT_TRUE(second.open(file.path()));
    EXPECT_EQ(second.outcome(), FileOutcome::inUse);
    EXPECT_TRUE(second.isReadOnly());
    EXPECT_FALSE(second.says().isEmpty());
    EXPECT_EQ(second.settledMark(), QStringLiteral("reading only"));
    const auto done = second.decide({{"hull.name", "Other"}});
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, "file.read_only");
    EXPECT_EQ(second.boatName(), QStringLiteral("Hollin"));
}

TEST_F(DeskTest, openingTheSameFileAgainKeepsIt) {
    openDemo();
    ASSERT_TRUE(desk.decide({{"hull.name", "Second"}}));
    ASSERT_TRUE(desk.open(file.path()));
    EXPECT_FALSE(desk.isReadOnly());
    EXPECT_EQ(desk.boatName(), QStringLiteral("Second"));
}

TEST_F(DeskTest, aFileThatCannotBeOpenedLeavesTheOpenOne) {
    openDemo();
    const auto done = desk.open(file.folder() + QStringLiteral("/none.fayline"));
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, "file.missing");
    EXPECT_TRUE(desk.isOpen());
    EXPECT_EQ(desk.boatName(), QStringLiteral("Hollin"));
}

TEST_F(DeskTest, neverReplacesAFile) {
    openDemo();
    const auto copied = desk.saveCopy(file.path());
    ASSERT_FALSE(copied);
    EXPECT_EQ(copied.error().code, "file.exists");
    const QString copy = file.folder() + QStringLiteral("/copy.fayline");
    ASSERT_TRUE(desk.saveCopy(copy));
    Desk other(test::deskSetup());
    ASSERT_TRUE(other.open(copy));
    EXPECT_EQ(other.journal().steps(), desk.journal().steps());
    EXPECT_FALSE(other.create(copy, {}));
}

TEST_F(DeskTest, savingThatFailsIsSaidAndTriedAgain) {
    openDemo();
    QSignalSpy trouble(&desk, &Desk::troubleChanged);
    const QString elsewhere = file.folder() + QStringLiteral("/moved.fayline");
    ASSERT_TRUE(QFile::rename(file.path(), elsewhere));
    ASSERT_TRUE(desk.decide({{"hull.name", "Renamed"}}));
    ASSERT_TRUE(QTest::qWaitFor([&] { return desk.trouble().has_value(); }, patience_ms));
    EXPECT_EQ(desk.trouble()->code, "file.moved");
    EXPECT_EQ(desk.settledMark(), QStringLiteral("not settled"));
    EXPECT_EQ(desk.boatName(), QStringLiteral("Renamed"))
        << "what was decided stands, saved or not";

    ASSERT_TRUE(QFile::rename(elsewhere, file.path()));
    desk.retrySaving();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !desk.trouble().has_value(); }, patience_ms));
    EXPECT_TRUE(desk.settledMark().startsWith(QStringLiteral("settled ")));
    EXPECT_EQ(trouble.size(), 2);
}

TEST_F(DeskTest, lateNewsOfAClosedProjectIsNotTakenForTheNewOne) {
    openDemo();
    ASSERT_TRUE(desk.decide({{"hull.name", "First"}}));
    const QString other = file.folder() + QStringLiteral("/other.fayline");
    ASSERT_TRUE(desk.create(other, {}));
    QTest::qWait(50);
    EXPECT_FALSE(desk.trouble().has_value());
    EXPECT_EQ(desk.settledMark(), QStringLiteral("settled"));
    ASSERT_TRUE(desk.decide({{"hull.name", "Second"}}));
    EXPECT_EQ(desk.settledMark(), QStringLiteral("settling…"))
        << "the first project had more steps";
}

TEST_F(DeskTest, troubleOfAClosedProjectIsNotTheNewOnes) {
    openDemo();
    const QString moved = file.folder() + QStringLiteral("/moved.fayline");
    ASSERT_TRUE(QFile::rename(file.path(), moved));
    ASSERT_TRUE(desk.decide({{"hull.name", "First"}}));
    ASSERT_TRUE(desk.create(file.folder() + QStringLiteral("/other.fayline"), {}));
    QTest::qWait(50);
    EXPECT_FALSE(desk.trouble().has_value());
}

TEST_F(DeskTest, importedOffsetsReplaceTheOldOnesInOneStep) {
    openDemo();
    const QString csv = file.folder() + QStringLiteral("/box.csv");
    QFile table(csv);
    ASSERT_TRUE(table.open(QIODevice::WriteOnly));
    table.write("# unit: mm\n# waterline: 500\nstation,x,half_breadth,height\n");
    for (const char* row : {"A,0,500,0\n", "A,0,500,1000\n", "B,4000,500,0\n", "B,4000,500,1000\n"})
        table.write(row);
    table.close();
    const auto typed = offsetDecisions(csv, desk.project());
    ASSERT_TRUE(typed);
    const auto tip = desk.journal().tip();
    ASSERT_TRUE(desk.decide(*typed));
    EXPECT_EQ(desk.journal().tip(), tip + 1);
    ASSERT_EQ(desk.project().offsets.size(), 2U);
    ASSERT_TRUE(desk.results()->afloat->body);
    EXPECT_NEAR(inCubicMetres(desk.results()->afloat->body->volume), 4.0 * 1.0 * 0.5, 1e-9);
    ASSERT_TRUE(desk.undo());
    EXPECT_GT(desk.project().offsets.size(), 2U);
}

TEST(OffsetDecisions, saysEveryThingWrongWithAFile) {
    const QTemporaryDir folder;
    QFile table(folder.filePath(QStringLiteral("bad.csv")));
    ASSERT_TRUE(table.open(QIODevice::WriteOnly));
    table.write("# unit: mm\nstation,x,half_breadth,height\nA,0,y,0\nA,0,x,5\n");
    table.close();
    const auto typed = offsetDecisions(table.fileName(), {});
    ASSERT_FALSE(typed);
    EXPECT_GE(typed.error().size(), 2U) << typed.error().front().line();
    EXPECT_EQ(typed.error().front().where.rfind("bad.csv:3", 0), 0U);
    EXPECT_FALSE(offsetDecisions(folder.filePath(QStringLiteral("none.csv")), {}));
}

TEST(ClockText, namesTheDayOnlyWhenItIsAnother) {
    qputenv("TZ", "UTC");
    EXPECT_EQ(clockText("2026-11-25T10:42:07Z", "2026-11-25T23:00:00Z"), QStringLiteral("10:42"));
    EXPECT_EQ(clockText("2026-11-24T10:42:07Z", "2026-11-25T23:00:00Z"),
              QStringLiteral("24 Nov 2026 10:42"));
    EXPECT_EQ(clockText("soon", "2026-11-25T23:00:00Z"), QString());
}

}  // namespace
}  // namespace fayline
