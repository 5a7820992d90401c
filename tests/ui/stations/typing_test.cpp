#include <QSignalSpy>

#include "grid_fixture.h"

namespace fayline {
namespace {

using Grid = test::GridTest;

TEST_F(Grid, enterTakesTheEntryAndGoesDown) {
    go("F14", Column::throat);
    type(QStringLiteral("8 1/4"));
    press(Qt::Key_Return);
    EXPECT_EQ(view.openEditor(), nullptr);
    EXPECT_EQ(test::decided(desk, "F14.floor.throat"), QStringLiteral("8 1/4 in"));
    EXPECT_EQ(view.currentIndex(), at("F15", Column::throat));
    type(QStringLiteral("9"));
    press(Qt::Key_Return, Qt::ShiftModifier);
    EXPECT_EQ(view.currentIndex(), at("F14", Column::throat));
}

TEST_F(Grid, tabGoesOnAndBackAndWrapsToTheNextRow) {
    go("F14", Column::throat);
    type(QStringLiteral("8"));
    press(Qt::Key_Tab);
    EXPECT_EQ(test::decided(desk, "F14.floor.throat"), QStringLiteral("8 in"));
    EXPECT_EQ(view.currentIndex(), at("F14", Column::wood));
    press(Qt::Key_Backtab, Qt::ShiftModifier);
    EXPECT_EQ(view.currentIndex(), at("F14", Column::throat));
    go("F14", Column::worst);
    press(Qt::Key_Tab);
    EXPECT_EQ(view.currentIndex(), at("F15", Column::place));
}

TEST_F(Grid, enterAloneMovesDownAndStopsAtTheLast) {
    go("F36", Column::floor);
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    EXPECT_EQ(view.frame(), QStringLiteral("F37"));
    EXPECT_TRUE(view.currentIndex().isValid());
}

TEST_F(Grid, f2KeepsTheTextAndLeavingItDecidesNothing) {
    const auto tip = desk.journal().tip();
    go("F20", Column::diameter);
    press(Qt::Key_F2);
    ASSERT_NE(view.openEditor(), nullptr);
    EXPECT_EQ(view.openEditor()->text(), QStringLiteral("5/8 in"));
    press(Qt::Key_Return);
    EXPECT_EQ(desk.journal().tip(), tip);
    EXPECT_EQ(view.frame(), QStringLiteral("F21"));

    // Nor does opening a cell where the rule stands.
    go("F14", Column::diameter);
    press(Qt::Key_F2);
    press(Qt::Key_Return);
    EXPECT_EQ(desk.journal().tip(), tip);
}

TEST_F(Grid, longFiguresSurviveEditing) {
    ASSERT_TRUE(desk.decide({{"F14.frame.x", "3710.12345 mm"}}));
    go("F14", Column::place);
    press(Qt::Key_F2);
    EXPECT_EQ(view.openEditor()->text(), QStringLiteral("3710.12345 mm"));
    press(Qt::Key_Return);
    EXPECT_EQ(test::decided(desk, "F14.frame.x"), QStringLiteral("3710.12345 mm"));
}

TEST_F(Grid, escDropsTheEntry) {
    go("F20", Column::diameter);
    type(QStringLiteral("1"));
    press(Qt::Key_Escape);
    EXPECT_EQ(view.openEditor(), nullptr);
    EXPECT_EQ(test::decided(desk, "K.6.diameter"), QStringLiteral("5/8 in"));
    EXPECT_EQ(shown("F20", Column::diameter), QStringLiteral("5/8"));
}

TEST_F(Grid, aBadEntryKeepsTheEditorOpenOnEnter) {
    QSignalSpy said(&view, &StationsView::said);
    go("F20", Column::diameter);
    type(QStringLiteral("5/8x"));
    press(Qt::Key_Return);
    ASSERT_NE(view.openEditor(), nullptr);
    EXPECT_EQ(view.openEditor()->text(), QStringLiteral("5/8x"));
    EXPECT_FALSE(view.openEditor()->objection().isEmpty());
    EXPECT_EQ(said.back().front().toString(), view.openEditor()->objection());
    EXPECT_EQ(test::decided(desk, "K.6.diameter"), QStringLiteral("5/8 in"));
    EXPECT_EQ(view.frame(), QStringLiteral("F20"));

    press(Qt::Key_Backspace);
    EXPECT_TRUE(view.openEditor()->objection().isEmpty());
    press(Qt::Key_Return);
    EXPECT_EQ(view.openEditor(), nullptr);
}

TEST_F(Grid, aBadEntryLeftBehindIsStillSeen) {
    go("F20", Column::diameter);
    type(QStringLiteral("thin"));
    view.settleEditor();
    EXPECT_EQ(view.openEditor(), nullptr);
    EXPECT_EQ(shown("F20", Column::diameter), QStringLiteral("thin"));
    EXPECT_EQ(test::decided(desk, "K.6.diameter"), QStringLiteral("5/8 in"));
    press(Qt::Key_F2);
    EXPECT_EQ(view.openEditor()->text(), QStringLiteral("thin"));
    press(Qt::Key_Escape);
    EXPECT_EQ(shown("F20", Column::diameter), QStringLiteral("5/8"));
}

TEST_F(Grid, derivingDoesNotWipeAnOpenEditor) {
    go("F20", Column::diameter);
    type(QStringLiteral("3/"));
    ASSERT_TRUE(desk.decide({{"K.6.diameter", "1 in"}}));
    ASSERT_NE(view.openEditor(), nullptr);
    EXPECT_EQ(view.openEditor()->text(), QStringLiteral("3/"));
    type(QStringLiteral("4"));
    press(Qt::Key_Return);
    EXPECT_EQ(test::decided(desk, "K.6.diameter"), QStringLiteral("3/4 in"));
}

TEST_F(Grid, framesGoneWhileTypingLoseNoEntry) {
    go("F14", Column::throat);
    type(QStringLiteral("8"));
    ASSERT_TRUE(desk.decide({{"frames.count", "30"}}));
    EXPECT_EQ(view.openEditor(), nullptr);
    EXPECT_EQ(test::decided(desk, "F14.floor.throat"), QStringLiteral("8 in"));
    EXPECT_EQ(view.frame(), QStringLiteral("F14"));
}

TEST_F(Grid, choicesCompleteAsTheyAreTyped) {
    go("F14", Column::floor);
    type(QStringLiteral("gr"));
    EXPECT_EQ(view.openEditor()->text(), QStringLiteral("grown"));
    press(Qt::Key_Return);
    EXPECT_EQ(test::decided(desk, "F14.floor.kind"), QStringLiteral("grown"));
    go("F14", Column::wood);
    type(QStringLiteral("irok"));
    press(Qt::Key_Return);
    EXPECT_EQ(test::decided(desk, "F14.floor.wood"), QStringLiteral("iroko"));
}

TEST_F(Grid, deleteGoesBackToTheRule) {
    select(at("F20", Column::diameter), at("F20", Column::diameter));
    press(Qt::Key_Delete);
    EXPECT_TRUE(test::decided(desk, "K.6.diameter").isEmpty());
    EXPECT_EQ(shown("F20", Column::diameter), QStringLiteral("7/8"));
}

TEST_F(Grid, ctrlEnterSetsEverythingSelectedInOneStep) {
    select(at("F14", Column::throat), at("F16", Column::throat));
    const auto tip = desk.journal().tip();
    type(QStringLiteral("8"));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(view.openEditor(), nullptr);
    EXPECT_EQ(desk.journal().tip(), tip + 1);
    for (const char* what : {"F14.floor.throat", "F15.floor.throat", "F16.floor.throat"})
        EXPECT_EQ(test::decided(desk, what), QStringLiteral("8 in")) << what;
    EXPECT_EQ(desk.undoTitle(), QStringLiteral("F14 floor throat to 8 in and 2 more"));
}

TEST_F(Grid, ctrlArrowsGoToTheEdgesOfWhatIsFilled) {
    go("F14", Column::bolt);
    press(Qt::Key_Down, Qt::ControlModifier);
    EXPECT_EQ(view.frame(), QStringLiteral("F15")) << "F16 has no bolt";
    press(Qt::Key_Down, Qt::ControlModifier);
    EXPECT_EQ(view.frame(), QStringLiteral("F17"));
    go("F14", Column::place);
    press(Qt::Key_Down, Qt::ControlModifier);
    EXPECT_EQ(view.frame(), QStringLiteral("F37"));
    press(Qt::Key_Up, Qt::ControlModifier);
    EXPECT_EQ(view.frame(), QStringLiteral("F1"));
    press(Qt::Key_Up, Qt::ControlModifier);
    EXPECT_EQ(view.frame(), QStringLiteral("F1"));
}

TEST_F(Grid, theKeyboardLeavesTheGrid) {
    QSignalSpy leaving(&view, &StationsView::leaving);
    press(Qt::Key_F6);
    press(Qt::Key_Tab, Qt::ControlModifier);
    press(Qt::Key_F6, Qt::ShiftModifier);
    ASSERT_EQ(leaving.size(), 3);
    EXPECT_TRUE(leaving[0].front().toBool());
    EXPECT_FALSE(leaving[2].front().toBool());
}

TEST_F(Grid, thereIsAlwaysAChosenCell) {
    EXPECT_TRUE(view.currentIndex().isValid());
    go("F37", Column::floor);
    ASSERT_TRUE(desk.decide({{"frames.count", "10"}}));
    EXPECT_TRUE(view.currentIndex().isValid());
    desk.close();
    ASSERT_TRUE(desk.open(file.path()));
    EXPECT_TRUE(view.currentIndex().isValid());
}

TEST_F(Grid, findGoesRoundAndSaysSo) {
    go("F14", Column::place);
    EXPECT_TRUE(view.find(QStringLiteral("k.6"), true).found);
    EXPECT_EQ(view.currentIndex(), at("F20", Column::bolt));
    EXPECT_TRUE(view.find(QStringLiteral("f3"), true).found) << "a frame by its name";
    EXPECT_EQ(view.frame(), QStringLiteral("F3"));
    EXPECT_FALSE(view.find(QStringLiteral("treenail"), true).found);
    go("F37", Column::worst);
    EXPECT_EQ(view.find(QStringLiteral("K.1"), true).says, QStringLiteral("from the top again"));
}

}  // namespace
}  // namespace fayline
