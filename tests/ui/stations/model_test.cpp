#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include "grid_fixture.h"
#include "words/checks.h"

namespace fayline {
namespace {

using Grid = test::GridTest;

TEST_F(Grid, keepsTheRulesOfModelsThroughEditsAndResets) {
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_TRUE(desk.decide({{"K.6.diameter", "1 in"}}));
    ASSERT_TRUE(desk.decide({{"frames.count", "20"}}));
    EXPECT_EQ(model.rowCount(), 20);
    ASSERT_TRUE(desk.undo());
    ASSERT_TRUE(desk.decide({{"hull.units", "millimetres"}}));
    desk.close();
    EXPECT_EQ(model.rowCount(), 0);
    ASSERT_TRUE(desk.open(file.path()));
    EXPECT_EQ(model.rowCount(), 37);
}

TEST_F(Grid, aRowPerFrameWithWhatStandsThere) {
    EXPECT_EQ(model.rowCount(), static_cast<int>(frameIds(desk.project()).size()));
    EXPECT_EQ(shown("F20", Column::floor), QStringLiteral("sawn"));
    EXPECT_EQ(shown("F20", Column::bolt), QStringLiteral("K.6"));
    EXPECT_EQ(shown("F20", Column::diameter), QStringLiteral("5/8"));
    EXPECT_EQ(shown("F20", Column::wood), QStringLiteral("White oak"));
    EXPECT_EQ(shown("F1", Column::diameter), QString());
}

TEST_F(Grid, theWorstOfARowIsTheWorstOfItsChecks) {
    for (int row = 0; row < model.rowCount(); ++row) {
        const Check* worst = worstAtFrame(*desk.results(), model.row(row).frame, Basis::us);
        const QString cell =
            model.index(row, static_cast<int>(Column::worst)).data(Qt::DisplayRole).toString();
        if (worst == nullptr) {
            EXPECT_TRUE(cell.isEmpty());
            continue;
        }
        EXPECT_TRUE(cell.startsWith(marginWords(*worst))) << cell.toStdString();
        EXPECT_EQ(model.index(row, static_cast<int>(Column::worst))
                      .data(StationsModel::statusRole)
                      .toInt(),
                  static_cast<int>(worst->status));
        EXPECT_EQ(model.headerData(row, Qt::Vertical, StationsModel::statusRole).toInt(),
                  static_cast<int>(worst->status));
    }
}

TEST_F(Grid, thinningABoltLowersThatRowsMarginAndTellsOfItsCells) {
    ASSERT_TRUE(desk.decide({{"K.6.diameter", "7/8 in"}}));
    const double before = *worstAtFrame(*desk.results(), "F20", Basis::us)->margin;
    QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    ASSERT_TRUE(model.setData(at("F20", Column::diameter), QStringLiteral("5/8"), Qt::EditRole));
    EXPECT_LT(*worstAtFrame(*desk.results(), "F20", Basis::us)->margin, before);
    EXPECT_EQ(test::decided(desk, "K.6.diameter"), QStringLiteral("5/8 in"));
    bool diameter = false;
    for (const auto& one : changed) {
        const auto from = one[0].toModelIndex();
        EXPECT_EQ(from, one[1].toModelIndex()) << "cells are told of one by one";
        EXPECT_TRUE(from.column() == static_cast<int>(Column::worst) ||
                    from.row() == model.rowOf(QStringLiteral("F20")));
        diameter = diameter || from == at("F20", Column::diameter);
    }
    EXPECT_TRUE(diameter);
}

TEST_F(Grid, aTextThatIsNotTakenStaysBesideItsCell) {
    const QModelIndex cell = at("F20", Column::diameter);
    const auto tip = desk.journal().tip();
    const QString worst = shown("F20", Column::worst);
    EXPECT_FALSE(model.setData(cell, QStringLiteral("5/8 furlongs"), Qt::EditRole));
    EXPECT_EQ(desk.journal().tip(), tip);
    EXPECT_EQ(cell.data(Qt::DisplayRole).toString(), QStringLiteral("5/8 furlongs"));
    EXPECT_TRUE(cell.data(StationsModel::refusedRole).isValid());
    EXPECT_TRUE(
        cell.data(Qt::ToolTipRole).toString().contains(QStringLiteral("Still in force: 5/8 in")))
        << cell.data(Qt::ToolTipRole).toString().toStdString();
    EXPECT_TRUE(cell.data(Qt::AccessibleTextRole).toString().contains(QStringLiteral("not taken")));
    EXPECT_EQ(shown("F20", Column::worst), worst);
    EXPECT_EQ(model.firstRefused(), cell);

    // A change elsewhere does not take it away; a good entry does.
    ASSERT_TRUE(desk.decide({{"K.1.diameter", "1 in"}}));
    EXPECT_EQ(model.refusedCount(), 1U);
    EXPECT_TRUE(model.setData(cell, QStringLiteral("3/4"), Qt::EditRole));
    EXPECT_EQ(model.refusedCount(), 0U);
    EXPECT_EQ(shown("F20", Column::diameter), QStringLiteral("3/4"));
}

TEST_F(Grid, manyCellsAreOneStepOrNone) {
    const int first = model.rowOf(QStringLiteral("F14"));
    const auto tip = desk.journal().tip();
    const int column = static_cast<int>(Column::throat);
    EXPECT_TRUE(model
                    .decideAll({{first, column, QStringLiteral("8")},
                                {first + 1, column, QStringLiteral("8 1/2")}})
                    .empty());
    EXPECT_EQ(desk.journal().tip(), tip + 1);
    const auto bad =
        model.decideAll({{first, column, QStringLiteral("9")},
                         {first + 1, column, QStringLiteral("deep")},
                         {first, static_cast<int>(Column::worst), QStringLiteral("ok")}});
    ASSERT_EQ(bad.size(), 2U);
    EXPECT_EQ(bad[0].text, QStringLiteral("deep"));
    EXPECT_EQ(bad[1].says, QStringLiteral("Worst is worked out, not decided."));
    EXPECT_EQ(desk.journal().tip(), tip + 1);
    EXPECT_EQ(shown("F14", Column::throat), QStringLiteral("8"));
}

TEST_F(Grid, cellsSpeakHeaderValueUnitAndStatus) {
    EXPECT_EQ(at("F20", Column::diameter).data(Qt::AccessibleTextRole).toString(),
              QStringLiteral("F20, Bolt ⌀, 5/8 in"));
    EXPECT_EQ(at("F14", Column::diameter).data(Qt::AccessibleTextRole).toString(),
              QStringLiteral("F14, Bolt ⌀, 7/8 in, by rule"));
    EXPECT_TRUE(at("F18", Column::worst)
                    .data(Qt::AccessibleTextRole)
                    .toString()
                    .endsWith(QStringLiteral(", short")));
    EXPECT_FALSE(at("F1", Column::diameter).data(Qt::AccessibleTextRole).toString().isEmpty());
}

TEST_F(Grid, unitsSwitchThereAndBackWithoutDrift) {
    std::vector<QString> before;
    for (int r = 0; r < model.rowCount(); ++r) {
        for (int c = 0; c < model.columnCount(); ++c)
            before.push_back(model.index(r, c).data(Qt::EditRole).toString());
    }
    const Project project = desk.project();
    ASSERT_TRUE(desk.decide({{"hull.units", "millimetres"}}));
    EXPECT_EQ(model.headerData(static_cast<int>(Column::diameter), Qt::Horizontal, Qt::DisplayRole)
                  .toString(),
              QStringLiteral("Bolt ⌀, mm"));
    EXPECT_EQ(shown("F14", Column::diameter), QStringLiteral("22"));
    ASSERT_TRUE(desk.decide({{"hull.units", "inches"}}));
    EXPECT_EQ(desk.project(), project);
    std::size_t i = 0;
    for (int r = 0; r < model.rowCount(); ++r) {
        for (int c = 0; c < model.columnCount(); ++c)
            EXPECT_EQ(model.index(r, c).data(Qt::EditRole).toString(), before[i++]);
    }
}

TEST_F(Grid, twoBoltsAtOneFrameAreDecidedTogether) {
    ASSERT_TRUE(desk.decide(
        {{"K.5.x", test::decided(desk, "K.6.x").toStdString()}, {"F15-F19.floor.kind", "none"}}));
    int row = -1;
    for (int r = 0; r < model.rowCount(); ++r) {
        if (model.row(r).bolts.size() > 1) row = r;
    }
    ASSERT_GE(row, 0) << "the bolts crowd onto the floors that are left";
    const std::size_t bolts = model.row(row).bolts.size();
    const auto tip = desk.journal().tip();
    ASSERT_TRUE(model.setData(model.index(row, static_cast<int>(Column::diameter)),
                              QStringLiteral("1"), Qt::EditRole));
    EXPECT_EQ(desk.journal().tip(), tip + 1);
    EXPECT_EQ(desk.journal().steps().back().changes.size(), bolts);
}

}  // namespace
}  // namespace fayline
