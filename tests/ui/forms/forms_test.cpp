#include <gtest/gtest.h>

#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <QWheelEvent>

#include "choice_box.h"
#include "compared.h"
#include "desk/desk.h"
#include "forms/field_form.h"
#include "forms/hull_page.h"
#include "missing_list.h"
#include "offsets_model.h"
#include "printing.h"
#include "services.h"

namespace fayline {
namespace {

class FormsTest : public testing::Test {
  protected:
    FormsTest() : desk(test::deskSetup()) { EXPECT_TRUE(desk.open(file.path())); }

    void type(FieldRow& row, const QString& text) {
        row.entry()->setFocus();
        row.entry()->selectAll();
        QTest::keyClicks(row.entry(), text);
    }

    test::DemoFile file;
    Desk desk;
};

TEST_F(FormsTest, everyGeneralDecisionHasAField) {
    HullPage page(desk);
    for (const Field& field : decisionTable()) {
        const bool general = field.pattern.find('#') == std::string::npos &&
                             field.pattern.find('*') == std::string::npos;
        const bool shown = field.section == "hull" || field.section == "keel" ||
                           field.section == "frames" || field.section == "floors" ||
                           field.section == "ballast" || field.section == "bolts";
        if (!general || !shown) continue;
        FieldRow* row = page.row(field.pattern);
        ASSERT_NE(row, nullptr) << field.pattern;
        EXPECT_FALSE(row->entry()->accessibleName().isEmpty());
        EXPECT_EQ(row->label()->toolTip(), QString::fromStdString(field.help));
    }
}

TEST_F(FormsTest, showsWhatWasTypedElseWhatTheRuleGives) {
    FieldRow mass(desk, "ballast.mass");
    EXPECT_EQ(mass.entry()->text(), test::decided(desk, "ballast.mass"));
    ASSERT_TRUE(desk.decide({{"ballast.mass", ""}}));
    mass.follow();
    EXPECT_TRUE(mass.entry()->text().isEmpty());
    EXPECT_TRUE(
        mass.entry()->placeholderText().endsWith(QStringLiteral("worked out from its shape")))
        << mass.entry()->placeholderText().toStdString();
}

TEST_F(FormsTest, aBareNumberTakesTheUnitBeside) {
    FieldRow row(desk, "keel.sided");
    type(row, QStringLiteral("8 1/4"));
    QTest::keyClick(row.entry(), Qt::Key_Return);
    EXPECT_EQ(test::decided(desk, "keel.sided"), QStringLiteral("8 1/4 in"));
    EXPECT_EQ(row.entry()->text(), QStringLiteral("8 1/4 in")) << "the unit is then shown";
}

TEST_F(FormsTest, aBadEntryStaysAndTheOldValueStands) {
    FieldRow row(desk, "bolts.diameter");
    const QString before = test::decided(desk, "bolts.diameter");
    type(row, QStringLiteral("seven eighths"));
    QTest::keyClick(row.entry(), Qt::Key_Return);
    EXPECT_EQ(row.entry()->text(), QStringLiteral("seven eighths"));
    EXPECT_EQ(test::decided(desk, "bolts.diameter"), before);
    EXPECT_FALSE(row.objection().isEmpty());
    EXPECT_TRUE(row.objection().endsWith(QStringLiteral("Still in force: %1.").arg(before)))
        << row.objection().toStdString();
    EXPECT_EQ(row.entry()->accessibleDescription(), row.objection());

    // Something decided elsewhere does not wipe it.
    ASSERT_TRUE(desk.decide({{"hull.name", "Other"}}));
    row.follow();
    EXPECT_EQ(row.entry()->text(), QStringLiteral("seven eighths"));
    EXPECT_FALSE(row.objection().isEmpty());

    QTest::keyClick(row.entry(), Qt::Key_Escape);
    EXPECT_EQ(row.entry()->text(), before);
    EXPECT_TRUE(row.objection().isEmpty());
}

TEST_F(FormsTest, aMendedEntryClearsTheObjection) {
    FieldRow row(desk, "bolts.diameter");
    type(row, QStringLiteral("900 mm"));
    QTest::keyClick(row.entry(), Qt::Key_Return);
    EXPECT_FALSE(row.objection().isEmpty());
    type(row, QStringLiteral("3/4"));
    EXPECT_TRUE(row.objection().isEmpty());
    QTest::keyClick(row.entry(), Qt::Key_Return);
    EXPECT_EQ(test::decided(desk, "bolts.diameter"), QStringLiteral("3/4 in"));
}

TEST_F(FormsTest, derivingDoesNotWipeWhatIsBeingTyped) {
    FieldRow row(desk, "bolts.diameter");
    row.show();
    row.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&row));
    type(row, QStringLiteral("3/"));
    ASSERT_TRUE(desk.decide({{"bolts.diameter", "1 in"}}));
    row.follow();
    EXPECT_EQ(row.entry()->text(), QStringLiteral("3/"));
}

TEST_F(FormsTest, anEmptyEntryGoesBackToTheRule) {
    FieldRow row(desk, "ballast.mass");
    row.entry()->setFocus();
    row.entry()->selectAll();
    QTest::keyClick(row.entry(), Qt::Key_Delete);
    QTest::keyClick(row.entry(), Qt::Key_Return);
    EXPECT_TRUE(test::decided(desk, "ballast.mass").isEmpty());
}

TEST_F(FormsTest, leftAsItIsDecidesNothing) {
    const auto tip = desk.journal().tip();
    HullPage page(desk);
    page.settle();
    for (const Field& field : decisionTable()) {
        if (FieldRow* row = page.row(field.pattern)) QTest::keyClick(row->entry(), Qt::Key_Return);
    }
    EXPECT_EQ(desk.journal().tip(), tip);
}

TEST_F(FormsTest, woodsAreReadByNameAndKeptById) {
    FieldRow row(desk, "keel.wood");
    EXPECT_EQ(row.entry()->text(), QStringLiteral("White oak"));
    type(row, QStringLiteral("iroko"));
    row.commit();
    EXPECT_EQ(test::decided(desk, "keel.wood"), QStringLiteral("iroko"));
    EXPECT_EQ(row.entry()->text(), QStringLiteral("Iroko"));
    type(row, QStringLiteral("cheese"));
    row.commit();
    EXPECT_EQ(test::decided(desk, "keel.wood"), QStringLiteral("iroko"));
    EXPECT_FALSE(row.objection().isEmpty());
}

TEST_F(FormsTest, theWheelNeverChangesAChoice) {
    FieldRow row(desk, "keel.wood");
    row.show();
    row.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&row));
    auto* box = row.findChild<QComboBox*>();
    ASSERT_NE(box, nullptr);
    for (const bool focused : {false, true}) {
        if (focused) box->setFocus();
        QWheelEvent turn(QPointF(5, 5), box->mapToGlobal(QPointF(5, 5)), {}, QPoint(0, -120),
                         Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(box, &turn);
        EXPECT_EQ(row.entry()->text(), QStringLiteral("White oak"));
    }
    EXPECT_FALSE(box->focusPolicy() & Qt::WheelFocus & ~Qt::StrongFocus);
    row.commit();
    EXPECT_EQ(test::decided(desk, "keel.wood"), QStringLiteral("white_oak"));
}

TEST_F(FormsTest, aFormForOneBoltDecidesThatBolt) {
    FieldForm form(desk, QStringLiteral("K.5"), "bolt", "K.5");
    FieldRow* reason = form.row("K.5.reason");
    ASSERT_NE(reason, nullptr);
    type(*reason, QStringLiteral("the old hole is here"));
    form.commit();
    EXPECT_EQ(test::decided(desk, "K.5.reason"), QStringLiteral("the old hole is here"));
}

TEST_F(FormsTest, whatIsMissingLeadsToItsField) {
    ASSERT_TRUE(desk.create(file.folder() + QStringLiteral("/new.fayline"), {}));
    HullPage page(desk);
    page.resize(1200, 800);
    page.show();
    page.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
    MissingList* list = page.findChild<MissingList*>();
    ASSERT_NE(list, nullptr);
    ASSERT_FALSE(desk.results()->missing.empty());
    for (const Missing& missing : desk.results()->missing) {
        emit list->wanted(QString::fromStdString(missing.what));
        if (missing.what.rfind("offsets", 0) == 0) continue;
        FieldRow* row = page.row(missing.what);
        ASSERT_NE(row, nullptr) << missing.what;
        EXPECT_TRUE(row->entry()->hasFocus()) << missing.what;
    }
}

TEST_F(FormsTest, everythingMissingCanBeDecidedHereUntilThereIsAMargin) {
    ASSERT_TRUE(desk.create(file.folder() + QStringLiteral("/new.fayline"), {}));
    HullPage page(desk);
    const QString offsets = QStringLiteral(FAYLINE_SOURCE_DIR "/resources/demo/hollin-offsets.csv");
    ASSERT_TRUE(page.importOffsets(offsets));
    const std::vector<std::pair<const char*, const char*>> typed = {
        {"keel.wood", "White oak"},
        {"keel.from", "93"},
        {"keel.to", "293"},
        {"keel.underside_fore", "28"},
        {"keel.underside_aft", "20"},
        {"keel.sided", "8"},
        {"keel.moulded", "6"},
        {"frames.count", "37"},
        {"frames.first", "30"},
        {"frames.spacing", "9"},
        {"frames.sided", "2"},
        {"frames.moulded", "3"},
        {"floors.kind", "sawn"},
        {"floors.throat", "7"},
        {"floors.sided", "3"},
        {"floors.wood", "White oak"},
        {"ballast.metal", "Lead, pure (ballast)"},
        {"ballast.from", "134"},
        {"ballast.to", "260"},
        {"ballast.depth_middle", "20"},
        {"bolts.count", "9"},
        {"bolts.diameter", "7/8"},
        {"bolts.metal", "Silicon bronze C65500 half hard, to 2 in"}};
    EXPECT_TRUE(desk.results()->worstFirst.empty());
    for (const auto& [what, text] : typed) {
        FieldRow* row = page.row(what);
        ASSERT_NE(row, nullptr) << what;
        row->entry()->setText(QString::fromUtf8(text));
        row->commit();
        EXPECT_TRUE(row->objection().isEmpty()) << what << ": " << row->objection().toStdString();
    }
    // What is left is the planking's and the other groups', which are decided in their own forms.
    for (const Missing& missing : desk.results()->missing) {
        const QString what = QString::fromStdString(missing.what);
        EXPECT_TRUE(what.startsWith(QStringLiteral("planking.")) ||
                    what.endsWith(QStringLiteral(".kind")))
            << missing.says;
    }
    EXPECT_FALSE(desk.results()->worstFirst.empty());
}

TEST_F(FormsTest, badOffsetsAreRefusedWithTheirLines) {
    QFile table(file.folder() + QStringLiteral("/bad.csv"));
    ASSERT_TRUE(table.open(QIODevice::WriteOnly));
    table.write("# unit: mm\nstation,x,half_breadth,height\nA,0,x,0\n");
    table.close();
    HullPage page(desk);
    QSignalSpy stopped(&page, &Page::stopped);
    const auto tip = desk.journal().tip();
    EXPECT_FALSE(page.importOffsets(table.fileName()));
    EXPECT_EQ(desk.journal().tip(), tip);
    ASSERT_EQ(stopped.size(), 1);
    EXPECT_TRUE(stopped.front()[1].toStringList().front().startsWith(QStringLiteral("bad.csv:3")));
}

TEST_F(FormsTest, offsetsAreShownForReading) {
    OffsetsModel model(desk);
    EXPECT_EQ(model.rowCount(), static_cast<int>(desk.project().offsets.size()));
    EXPECT_GT(model.pointCount(), model.rowCount());
    EXPECT_FALSE(model.flags(model.index(0, 1)).testFlag(Qt::ItemIsEditable));
    EXPECT_TRUE(model.index(0, 1)
                    .data(Qt::AccessibleTextRole)
                    .toString()
                    .startsWith(QStringLiteral("station ")));
}

TEST_F(FormsTest, computedStandsBesideStated) {
    const auto rows = comparedFigures(desk);
    ASSERT_GE(rows.size(), 3U);
    EXPECT_EQ(rows[0].name, QStringLiteral("Displacement"));
    EXPECT_FALSE(rows[0].worked.isEmpty());
    EXPECT_FALSE(rows[0].stated.isEmpty());
    EXPECT_FALSE(rows[0].apart.isEmpty());
    ASSERT_TRUE(desk.decide({{"hull.displacement", ""}}));
    EXPECT_TRUE(comparedFigures(desk)[0].stated.isEmpty());
    EXPECT_TRUE(comparedFigures(desk)[0].apart.isEmpty());
}

TEST_F(FormsTest, aFileForReadingCannotBeEdited) {
    Desk second(test::deskSetup());
    ASSERT_TRUE(second.open(file.path()));
    ASSERT_TRUE(second.isReadOnly());
    FieldRow row(second, "bolts.diameter");
    EXPECT_FALSE(row.isEnabled());
}

}  // namespace
}  // namespace fayline
