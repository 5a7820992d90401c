// What a screen reader is told of the grid.
#include <QAccessible>

#include "grid_fixture.h"

namespace fayline {
namespace {

using Grid = test::GridTest;

TEST_F(Grid, cellsAreNamedForScreenReaders) {
    go("F18", Column::worst);
    QAccessibleInterface* grid = QAccessible::queryAccessibleInterface(&view);
    ASSERT_NE(grid, nullptr);
    EXPECT_EQ(grid->text(QAccessible::Name), QStringLiteral("Stations, a row per frame"));
    QAccessibleTableInterface* table = grid->tableInterface();
    ASSERT_NE(table, nullptr);
    EXPECT_EQ(table->rowCount(), model.rowCount());
    QAccessibleInterface* cell =
        table->cellAt(model.rowOf(QStringLiteral("F18")), static_cast<int>(Column::worst));
    ASSERT_NE(cell, nullptr);
    EXPECT_TRUE(cell->text(QAccessible::Name).startsWith(QStringLiteral("F18, Worst, ×")))
        << cell->text(QAccessible::Name).toStdString();
    EXPECT_TRUE(cell->text(QAccessible::Name).endsWith(QStringLiteral("short")));
    QAccessibleInterface* focus = grid->focusChild();
    ASSERT_NE(focus, nullptr) << "the bridge to screen readers does not look before it leaps";
    EXPECT_EQ(focus->text(QAccessible::Name), cell->text(QAccessible::Name));
}

TEST_F(Grid, someCellIsAlwaysInFocusForScreenReaders) {
    QAccessibleInterface* grid = QAccessible::queryAccessibleInterface(&view);
    ASSERT_TRUE(desk.decide({{"frames.count", "5"}}));
    EXPECT_NE(grid->focusChild(), nullptr);
    view.clearSelection();
    EXPECT_NE(grid->focusChild(), nullptr);
    go("F20", Column::place);
    desk.close();
    ASSERT_TRUE(desk.open(file.path()));
    EXPECT_NE(QAccessible::queryAccessibleInterface(&view)->focusChild(), nullptr);
}

TEST_F(Grid, theOpenEditorSaysWhichCellItIsAndWhatIsWrong) {
    go("F20", Column::diameter);
    type(QStringLiteral("5/8x"));
    press(Qt::Key_Return);
    ASSERT_NE(view.openEditor(), nullptr);
    QAccessibleInterface* editor = QAccessible::queryAccessibleInterface(view.openEditor());
    EXPECT_TRUE(editor->text(QAccessible::Name).startsWith(QStringLiteral("F20, Bolt ⌀")));
    EXPECT_EQ(editor->text(QAccessible::Description), view.openEditor()->objection());
    EXPECT_GT(view.openEditor()->width(), view.columnWidth(static_cast<int>(Column::diameter)) - 1);
}

TEST_F(Grid, theEditorGrowsWithItsText) {
    go("F20", Column::diameter);
    type(QStringLiteral("five eighths of an inch"));
    const QFontMetrics metrics(view.openEditor()->font());
    EXPECT_GE(view.openEditor()->width(), metrics.horizontalAdvance(view.openEditor()->text()));
}

}  // namespace
}  // namespace fayline
