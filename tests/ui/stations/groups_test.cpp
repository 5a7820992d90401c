// Columns of every group of fastenings: what they show, what typing, filling and pasting decide.
#include <QSignalSpy>

#include "grid_fixture.h"

namespace fayline {
namespace {

using Grid = test::GridTest;

class Groups : public test::GridTest {
  protected:
    Groups() {
        EXPECT_TRUE(desk.decide({{"heel.kind", "wood_screw"},
                                 {"heel.count", "2"},
                                 {"heel.gauge", "No. 14"},
                                 {"heel.length", "3 in"},
                                 {"heel.metal", "c65100_h02"},
                                 {"arm.kind", "bolt"},
                                 {"arm.count", "3"},
                                 {"arm.diameter", "3/8 in"}}));
    }
};

TEST_F(Groups, showWhatStandsForTheWholeHull) {
    EXPECT_EQ(shown("F14", Column::heel), QStringLiteral("2 × No. 14 × 3\""));
    EXPECT_EQ(shown("F14", Column::heelKind), QStringLiteral("wood screw"));
    EXPECT_EQ(shown("F14", Column::heelSize), QStringLiteral("No. 14"));
    EXPECT_EQ(shown("F14", Column::heelLength), QStringLiteral("3"));
    EXPECT_EQ(shown("F14", Column::arm), QStringLiteral("3 × 3/8\""));
    EXPECT_FALSE(at("F14", Column::heelSize).data(StationsModel::decidedRole).toBool())
        << "the rule's value is greyed";
    EXPECT_FALSE(at("F14", Column::armLength).flags().testFlag(Qt::ItemIsEditable))
        << "a bolt's length follows from what it goes through";
    EXPECT_EQ(at("F14", Column::heelSize).data(Qt::AccessibleTextRole).toString(),
              QStringLiteral("F14, Heels Gauge or ⌀, No. 14, by rule"));
}

TEST_F(Groups, everyColumnIsDecidedUnderItsName) {
    const std::vector<std::tuple<Column, const char*, const char*, const char*>> cells = {
        {Column::frameSided, "4", "F14.frame.sided", "4 in"},
        {Column::frameMoulded, "5", "F14.frame.moulded", "5 in"},
        {Column::heelDetail, "on top", "F14.frame.heel_detail", "on_top"},
        {Column::topology, "across", "F14.floor.topology", "across"},
        {Column::heelKind, "wood screw", "F14.heel.kind", "wood_screw"},
        {Column::heelCount, "3", "F14.heel.count", "3"},
        {Column::heelSize, "16", "F14.heel.gauge", "16"},
        {Column::heelLength, "3 1/2", "F14.heel.length", "3 1/2 in"},
        {Column::heelMetal, "C65100_H02", "F14.heel.metal", "C65100_H02"},
        {Column::armSize, "7/16", "F14.arm.diameter", "7/16 in"},
        {Column::keelBoltKind, "drift", "F14.floor_bolt.kind", "drift"},
        {Column::keelBoltSize, "1/2", "F14.floor_bolt.diameter", "1/2 in"},
        {Column::keelBoltLength, "12", "F14.floor_bolt.length", "12 in"},
        {Column::plankKind, "rivet", "F14.plank.kind", "rivet"},
        {Column::plankCount, "2", "F14.plank.count", "2"},
        {Column::plankSize, "3/16", "F14.plank.diameter", "3/16 in"},
    };
    for (const auto& [column, typed, what, text] : cells) {
        ASSERT_TRUE(model.setData(at("F14", column), QString::fromUtf8(typed), Qt::EditRole))
            << what << ": "
            << at("F14", column).data(StationsModel::refusedRole).toString().toStdString();
        EXPECT_EQ(test::decided(desk, what), QString::fromLatin1(text)) << what;
        EXPECT_TRUE(at("F14", column).data(StationsModel::decidedRole).toBool()) << what;
        ASSERT_TRUE(model.setData(at("F14", column), QString(), Qt::EditRole)) << what;
        if (column != Column::keelBoltKind && column != Column::plankKind)
            EXPECT_TRUE(test::decided(desk, what).isEmpty()) << what;
        else
            ASSERT_TRUE(desk.undo());
    }
}

TEST_F(Groups, sidesMayDifferAndComeTogetherAgain) {
    ASSERT_TRUE(model.setData(at("F14", Column::heelCount), QStringLiteral("2 | 3"), Qt::EditRole));
    EXPECT_EQ(test::decided(desk, "F14.P.heel.count"), QStringLiteral("2"));
    EXPECT_EQ(test::decided(desk, "F14.S.heel.count"), QStringLiteral("3"));
    EXPECT_EQ(shown("F14", Column::heelCount), QStringLiteral("2 | 3"));
    EXPECT_EQ(shown("F14", Column::heel), QStringLiteral("2 × No. 14 × 3\" | 3 × No. 14 × 3\""));
    const auto tip = desk.journal().tip();
    ASSERT_TRUE(model.setData(at("F14", Column::heelCount), QStringLiteral("4"), Qt::EditRole));
    EXPECT_EQ(desk.journal().tip(), tip + 1) << "one step";
    EXPECT_TRUE(test::decided(desk, "F14.P.heel.count").isEmpty());
    EXPECT_EQ(shown("F14", Column::heelCount), QStringLiteral("4"));
    ASSERT_TRUE(model.setData(at("F14", Column::heelCount), QString(), Qt::EditRole));
    EXPECT_EQ(shown("F14", Column::heelCount), QStringLiteral("2"));
    EXPECT_FALSE(
        model.setData(at("F14", Column::plankCount), QStringLiteral("2 | 3"), Qt::EditRole))
        << "planks are the same on both sides";
}

TEST_F(Groups, aSummaryIsTypedAsItIsRead) {
    ASSERT_TRUE(
        model.setData(at("F14", Column::heel), QStringLiteral("3 x 16 x 3 1/2"), Qt::EditRole));
    EXPECT_EQ(test::decided(desk, "F14.heel.count"), QStringLiteral("3"));
    EXPECT_EQ(test::decided(desk, "F14.heel.gauge"), QStringLiteral("16"));
    EXPECT_EQ(test::decided(desk, "F14.heel.length"), QStringLiteral("3 1/2 in"));
    const QString text = at("F14", Column::heel).data(Qt::EditRole).toString();
    EXPECT_EQ(text, QStringLiteral("3 × No. 16 × 3-1/2\""));
    ASSERT_TRUE(model.setData(at("F15", Column::heel), text, Qt::EditRole)) << "reads back";
    EXPECT_EQ(shown("F15", Column::heel), text);
    EXPECT_FALSE(model.setData(at("F16", Column::heel), QStringLiteral("3 × × 2"), Qt::EditRole));
    EXPECT_TRUE(at("F16", Column::heel)
                    .data(StationsModel::refusedRole)
                    .toString()
                    .contains(QStringLiteral("number × size × length")));
    ASSERT_TRUE(model.setData(at("F16", Column::heel), QStringLiteral("none"), Qt::EditRole));
    EXPECT_EQ(test::decided(desk, "F16.heel.count"), QStringLiteral("0"));
    EXPECT_EQ(shown("F16", Column::heel), QStringLiteral("none"));
    ASSERT_TRUE(model.setData(at("F15", Column::heel), QString(), Qt::EditRole));
    EXPECT_EQ(shown("F15", Column::heel), QStringLiteral("2 × No. 14 × 3\""));
}

TEST_F(Groups, pastingAKindAndItsSizeGoesByTheNewKind) {
    const auto tip = desk.journal().tip();
    view.showSet(ColumnSet::heel);
    select(at("F14", Column::heelKind), at("F14", Column::heelKind));
    paste(QStringLiteral("bolt\t2\t3/8\nbolt\t2\t1/2\n"));
    EXPECT_EQ(desk.journal().tip(), tip + 1);
    EXPECT_EQ(test::decided(desk, "F14.heel.diameter"), QStringLiteral("3/8 in"));
    EXPECT_EQ(test::decided(desk, "F15.heel.diameter"), QStringLiteral("1/2 in"));
    EXPECT_TRUE(test::decided(desk, "F14.heel.gauge").isEmpty());
}

TEST_F(Groups, fillDownAndCopyPassOverWhatIsNotShown) {
    view.showSet(ColumnSet::overview);
    const auto columns = view.shownColumns();
    EXPECT_LT(columns.size(), 14U);
    ASSERT_TRUE(model.setData(at("F14", Column::heel), QStringLiteral("4"), Qt::EditRole));
    select(at("F14", Column::heelDetail), at("F16", Column::floor));
    view.fillDown();
    EXPECT_TRUE(test::decided(desk, "F16.heel.count").isEmpty()) << "not in the selection in sight";
    go("F14", Column::floor);
    press(Qt::Key_Tab);
    EXPECT_EQ(view.currentIndex(), at("F14", Column::heel)) << "what is hidden is passed over";
    select(at("F14", Column::place), at("F14", Column::floor));
    view.copy();
    EXPECT_EQ(QGuiApplication::clipboard()->text().count(QLatin1Char('\t')), 2);
    for (int set = 0; set < columnSetCount; ++set) {
        view.showSet(static_cast<ColumnSet>(set));
        EXPECT_FALSE(view.isColumnHidden(static_cast<int>(Column::worst)));
        EXPECT_FALSE(view.isColumnHidden(view.currentIndex().column()));
    }
}

}  // namespace
}  // namespace fayline
