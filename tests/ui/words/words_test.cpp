#include <gtest/gtest.h>

#include "desk/desk.h"
#include "printing.h"
#include "services.h"
#include "words/checks.h"
#include "words/materials.h"
#include "words/rule_texts.h"
#include "words/trace_values.h"
#include "words/values.h"

namespace fayline {
namespace {

const Field& fieldAt(const char* what) {
    return *findDecision(what)->field;
}

struct UnitRow {
    const char* what;
    const char* typed;
    UnitSystem units;
    const char* complete;
};

class WithUnit : public testing::TestWithParam<UnitRow> {};

TEST_P(WithUnit, putsTheColumnsUnitBehindABareNumberOnly) {
    const UnitRow& row = GetParam();
    EXPECT_EQ(withUnit(fieldAt(row.what), row.typed, row.units), row.complete);
}

INSTANTIATE_TEST_SUITE_P(
    Spellings, WithUnit,
    testing::Values(UnitRow{"K.5.diameter", "5/8", UnitSystem::inches, "5/8 in"},
                    UnitRow{"K.5.diameter", " 7/8 ", UnitSystem::inches, "7/8 in"},
                    UnitRow{"K.5.diameter", "16", UnitSystem::millimetres, "16 mm"},
                    UnitRow{"K.5.diameter", "16 mm", UnitSystem::inches, "16 mm"},
                    UnitRow{"K.5.diameter", "5/8\"", UnitSystem::millimetres, "5/8\""},
                    UnitRow{"F9.frame.x", "12-3-0", UnitSystem::millimetres, "12-3-0"},
                    UnitRow{"F9.frame.x", "12' 3", UnitSystem::inches, "12' 3"},
                    UnitRow{"F9.floor.throat", "7½", UnitSystem::inches, "7½ in"},
                    UnitRow{"ballast.mass", "2900", UnitSystem::millimetres, "2900 kg"},
                    UnitRow{"ballast.mass", "2900", UnitSystem::inches, "2900 lb"},
                    UnitRow{"K.5.diameter", "nonsense", UnitSystem::inches, "nonsense"},
                    UnitRow{"K.5.diameter", "", UnitSystem::inches, ""},
                    UnitRow{"K.5.diameter", "900", UnitSystem::millimetres,
                            "900 mm"},  // beyond the limits, but a length
                    UnitRow{"frames.count", "37", UnitSystem::inches, "37"},
                    UnitRow{"hull.name", "12", UnitSystem::inches, "12"}));

TEST(Showing, placesAreFeetAndInchesAndSizesInches) {
    EXPECT_EQ(showTyped("99 in", fieldAt("F9.frame.x"), UnitSystem::inches, UnitMark::leftOut),
              QStringLiteral("8'-3\""));
    EXPECT_EQ(showTyped("22.2 mm", fieldAt("K.5.diameter"), UnitSystem::inches, UnitMark::leftOut),
              QStringLiteral("7/8"));
    EXPECT_EQ(
        showTyped("7/8 in", fieldAt("K.5.diameter"), UnitSystem::millimetres, UnitMark::leftOut),
        QStringLiteral("22"));
    EXPECT_EQ(
        showTyped("no length", fieldAt("K.5.diameter"), UnitSystem::inches, UnitMark::leftOut),
        QStringLiteral("no length"));
}

TEST(Showing, whatIsFineIsNotRoundedIntoSomethingElse) {
    EXPECT_EQ(
        showTyped("0.25 mm", fieldAt("K.5.corrosion"), UnitSystem::millimetres, UnitMark::shown),
        QStringLiteral("0.25 mm"));
    EXPECT_EQ(showTyped("0.25 mm", fieldAt("K.5.corrosion"), UnitSystem::inches, UnitMark::shown),
              QStringLiteral("0.01\""));
    EXPECT_EQ(showTyped("1/4 in", fieldAt("K.5.washer_thickness"), UnitSystem::millimetres,
                        UnitMark::leftOut),
              QStringLiteral("6.35"));
    EXPECT_EQ(showTyped("0 mm", fieldAt("K.5.corrosion"), UnitSystem::millimetres, UnitMark::shown),
              QStringLiteral("0 mm"));
}

TEST(Showing, numbersAgreeWithTheirWords) {
    EXPECT_EQ(counted(1, QStringLiteral("1 cell"), QStringLiteral("%1 cells")),
              QStringLiteral("1 cell"));
    EXPECT_EQ(counted(0, QStringLiteral("1 cell"), QStringLiteral("%1 cells")),
              QStringLiteral("0 cells"));
    EXPECT_EQ(counted(7, QStringLiteral("1 cell"), QStringLiteral("%1 cells")),
              QStringLiteral("7 cells"));
}

TEST(Showing, aProblemIsOneSentence) {
    const auto read = readValue(fieldAt("K.5.diameter"), "900 mm", "K.5.diameter");
    ASSERT_FALSE(read);
    EXPECT_EQ(sentence(read.error()), QStringLiteral("Diameter is 900 mm; 6 mm to 80 mm."));
    EXPECT_EQ(namedSentence(read.error()),
              QStringLiteral("ballast bolt K.5 diameter: diameter is 900 mm; 6 mm to 80 mm."));
}

TEST(Materials, rodsAndBallastAreOfferedTheirOwnMetals) {
    const Project none;
    const auto rods = choicesFor(fieldAt("K.5.metal"), *test::catalogue(), none);
    const auto ballast = choicesFor(fieldAt("ballast.metal"), *test::catalogue(), none);
    const auto has = [](const std::vector<Choice>& choices, const char* id) {
        return std::any_of(choices.begin(), choices.end(),
                           [&](const Choice& c) { return c.id == id; });
    };
    EXPECT_TRUE(has(rods, "c65500_h02"));
    EXPECT_FALSE(has(rods, "lead_pure"));
    EXPECT_TRUE(has(ballast, "lead_antimony_3"));
    EXPECT_FALSE(has(ballast, "c65500_h02"));
    EXPECT_EQ(idForName(rods, "silicon bronze c65500 HALF hard, to 2 in"), "c65500_h02");
    EXPECT_EQ(idForName(rods, "unobtainium"), "unobtainium");
    EXPECT_EQ(shownName(fieldAt("keel.wood"), "white_oak", *test::catalogue()),
              QStringLiteral("White oak"));
}

TEST(Materials, everyMetalThatIsOfferedIsTaken) {
    const test::DemoFile file;
    Desk desk(test::deskSetup());
    ASSERT_TRUE(desk.open(file.path()));
    for (const char* what : {"K.5.metal", "ballast.metal", "keel.wood"}) {
        for (const Choice& choice : choicesFor(fieldAt(what), *test::catalogue(), desk.project())) {
            const auto taken = desk.wouldTake({{what, choice.id}});
            EXPECT_TRUE(taken) << what << " = " << choice.id;
        }
    }
}

class RuleTexts : public testing::Test {
  protected:
    RuleTexts() : desk(test::deskSetup()) { EXPECT_TRUE(desk.open(file.path())); }
    RuleText rule(const char* what) {
        return ruleText(what, desk.project(), desk.journal(), *desk.results(), desk.catalogue(),
                        UnitMark::shown);
    }
    test::DemoFile file;
    Desk desk;
};

TEST_F(RuleTexts, sayWhatStandsAndWhereFrom) {
    EXPECT_EQ(rule("K.1.diameter").value, QStringLiteral("7/8\""));
    EXPECT_EQ(rule("K.1.diameter").from, QStringLiteral("as for all bolts"));
    EXPECT_EQ(rule("F20.floor.wood").value, QStringLiteral("White oak"));
    EXPECT_EQ(rule("F9.frame.x").from, QStringLiteral("by even spacing"));
    EXPECT_EQ(rule("hull.basis").value, QStringLiteral("US"));
    EXPECT_EQ(rule("hull.water_density").value, QStringLiteral("63.99 lb/ft³"));
    EXPECT_TRUE(rule("K.1.reason").value.isEmpty());
    EXPECT_TRUE(rule("no.such.thing").value.isEmpty());
}

TEST_F(RuleTexts, followTheResults) {
    ASSERT_TRUE(desk.decide({{"bolts.washer_diameter", ""}}));
    EXPECT_EQ(rule("K.1.washer_diameter").value, QStringLiteral("3-1/2\""))
        << "four diameters of 7/8 in";
    EXPECT_EQ(rule("K.1.washer_diameter").from, QStringLiteral("by the class rule"));
    ASSERT_TRUE(desk.decide({{"bolts.diameter", "1 in"}}));
    EXPECT_EQ(rule("K.1.washer_diameter").value, QStringLiteral("4\""));
}

TEST_F(RuleTexts, theLowerNutStandsWhereTheLayoutPutIt) {
    const QString byRule = rule("K.2.recess").value;
    ASSERT_FALSE(byRule.isEmpty());
    ASSERT_TRUE(desk.decide({{"K.2.recess", byRule.toStdString()}}));
    const auto& holes = desk.results()->ballastBolts->holes;
    const auto hole =
        std::find_if(holes.begin(), holes.end(), [](const Hole& h) { return h.id == "K.2"; });
    ASSERT_NE(hole, holes.end());
    const Length decidedEnd = hole->end.z;
    ASSERT_TRUE(desk.undo());
    const auto& before = desk.results()->ballastBolts->holes;
    const auto same =
        std::find_if(before.begin(), before.end(), [](const Hole& h) { return h.id == "K.2"; });
    EXPECT_NEAR(inMillimetres(same->end.z), inMillimetres(decidedEnd), 0.3)
        << "as rounded on screen";
}

TEST_F(RuleTexts, everyDecidedValueOfAllIsTheValueTheResultsUse) {
    for (const auto& input : desk.results()->boltInputs) {
        if (!input->washer) continue;
        const std::string what = input->id + ".washer_diameter";
        if (desk.journal().decided().count(what) > 0) continue;
        EXPECT_EQ(rule(what.c_str()).value, showSize(input->washer->diameter, UnitSystem::inches))
            << what;
    }
}

TEST(Counts, takeEachThingOnceByItsWorst) {
    const auto check = [](const char* id, Basis basis, Status status) {
        Check made;
        made.id = id;
        made.basis = basis;
        made.status = status;
        return made;
    };
    std::vector<Check> first = {check("K.1", Basis::us, Status::isShort),
                                check("K.1", Basis::metal, Status::near),
                                check("K.2", Basis::ec5, Status::isShort)};
    std::vector<Check> second = {check("K.2", Basis::metal, Status::ok),
                                 check("K.3", Basis::metal, Status::unknown)};
    Results results;
    for (auto* checks : {&first, &second})
        results.checkSets.push_back(std::make_shared<const CheckSet>(std::move(*checks)));
    EXPECT_EQ(countsLine(statusCounts(results, Basis::us)), QStringLiteral("1 short · 1 unknown"));
    EXPECT_EQ(countsLine(statusCounts(results, Basis::ec5)),
              QStringLiteral("1 short · 1 near · 1 unknown"));
    EXPECT_EQ(countsLine({}), QStringLiteral("nothing checked yet"));
    EXPECT_EQ(countsLine({{Status::ok, 3}}), QStringLiteral("all ok"));
}

TEST(TraceValues, areInTheBuildersUnits) {
    EXPECT_EQ(showTraceValue(millimetres(25.4), UnitSystem::inches), QStringLiteral("1 in"));
    EXPECT_EQ(showTraceValue(millimetres(25.4), UnitSystem::millimetres),
              QStringLiteral("25.4 mm"));
    EXPECT_EQ(showArea(squareMillimetres(645.16), UnitSystem::inches), QStringLiteral("1 in²"));
    EXPECT_EQ(showMoment(newtonMetres(1.3558179483314004), UnitSystem::inches),
              QStringLiteral("1 ft·lb"));
    EXPECT_EQ(showMoment(newtonMetres(12345), UnitSystem::millimetres),
              QStringLiteral("12.35 kN·m"));
    EXPECT_EQ(showTraceValue(0.5, UnitSystem::inches), QStringLiteral("0.5"));
    EXPECT_EQ(showTraceValue(0.0, UnitSystem::inches), QStringLiteral("0"));
}

}  // namespace
}  // namespace fayline
