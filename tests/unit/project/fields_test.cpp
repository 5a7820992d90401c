#include "project/fields.h"

#include <gtest/gtest.h>

#include <set>

using namespace fayline;

namespace {

/// A name for a row of the table, with a place put in.
std::string exampleName(const Field& field) {
    std::string name = field.pattern;
    const auto put = [&](const std::string& what, const std::string& with) {
        if (const auto at = name.find(what); at != std::string::npos)
            name.replace(at, what.size(), with);
    };
    put("F#", "F3");
    put("strake#", "strake4");
    put("*", field.places.empty() ? "a name 0.5" : field.places.front());
    put("#", "2");
    return name;
}

std::string exampleText(const Field& field) {
    switch (field.kind) {
        case ValueKind::length:
            return std::to_string((field.low + 0.3 * (field.high - field.low)) * 1000) + " mm";
        case ValueKind::mass:
            return "500 kg";
        case ValueKind::density:
            return field.low > 900 ? "8000 kg/m3" : field.low == 900 ? "1020 kg/m3" : "600 kg/m3";
        case ValueKind::stress:
            return "20 MPa";
        case ValueKind::ratio:
            return field.high < 1.5 ? "0.5" : "2";
        case ValueKind::count:
            return std::to_string(static_cast<int>(field.high));
        case ValueKind::gauge:
            return "No. 14";
        case ValueKind::choice:
            return field.choices.back();
        case ValueKind::woodName:
            return "white_oak";
        case ValueKind::metalName:
            return "lead_pure";
        case ValueKind::keptRow:
            return "a,b\r\n1,2";
        case ValueKind::text:
            return "some words";
    }
    return "";
}

}  // namespace

TEST(DecisionTable, EveryRowIsFoundSetAndClearedAgain) {
    std::set<std::string> patterns;
    for (const Field& field : decisionTable()) {
        EXPECT_TRUE(patterns.insert(field.pattern).second) << field.pattern << " stands twice";
        EXPECT_FALSE(field.label.empty());
        EXPECT_FALSE(field.help.empty()) << field.pattern;
        const std::string name = exampleName(field);
        const auto target = findDecision(name);
        ASSERT_TRUE(target) << name << ": " << target.error().line();
        EXPECT_EQ(target->field, &field) << name;
        Project project;
        const auto set = applyChange(project, name, exampleText(field));
        ASSERT_TRUE(set) << set.error().line();
        EXPECT_NE(project, Project{}) << name;
        ASSERT_TRUE(applyChange(project, name, std::nullopt));
        EXPECT_EQ(project, Project{}) << name;
    }
}

TEST(DecisionTable, LimitsAreRefusedWithTheAllowedSpan) {
    Project project;
    for (const Field& field : decisionTable()) {
        if (field.kind != ValueKind::length) continue;
        const auto set = applyChange(project, exampleName(field), "900 m");
        ASSERT_FALSE(set) << field.pattern;
        EXPECT_EQ(set.error().allowed, field.limits);
        EXPECT_FALSE(field.limits.empty());
    }
    EXPECT_EQ(project, Project{});
}

TEST(DecisionTable, AMistypedNameIsAnsweredWithTheNearest) {
    const auto target = findDecision("K.5.diametre");
    ASSERT_FALSE(target);
    EXPECT_EQ(target.error().allowed, "did you mean K.5.diameter?");
    EXPECT_FALSE(findDecision(""));
    EXPECT_FALSE(findDecision("."));
    EXPECT_FALSE(findDecision("F0.floor.kind"));
    EXPECT_FALSE(findDecision("F9.floor"));
    EXPECT_FALSE(findDecision("K.05.diameter"));
}

TEST(DecisionTable, AMistypedPlaceIsAnsweredWithOneThatExists) {
    const auto allowed = [](const char* what) {
        const auto target = findDecision(what);
        EXPECT_FALSE(target) << what;
        return target ? std::string() : target.error().allowed;
    };
    EXPECT_EQ(allowed("F0.floor.kind"), "did you mean F1.floor.kind?");
    EXPECT_EQ(allowed("K.05.diameter"), "did you mean K.1.diameter?");
    EXPECT_EQ(allowed("strake4.widht"), "did you mean strake4.width?");
    EXPECT_EQ(allowed("strake0.width"), "did you mean strake1.width?");
}

TEST(DecisionTable, OnlyLoadCasesAndClassesThatAreReadMayBeNamed) {
    for (const char* name : {"knockdown_port",
                             "knockdown_starboard",
                             "sailing_port",
                             "sailing_starboard",
                             "grounding_up",
                             "grounding_aft",
                             "grounding_forward",
                             "grounding_port",
                             "grounding_starboard",
                             "pounding_fore",
                             "pounding_aft",
                             "sea_bottom",
                             "sea_side",
                             "rig",
                             "swelling",
                             "springback",
                             "slings",
                             "on_keel",
                             "own.beaching",
                             "own.on the hard"})
        EXPECT_TRUE(findDecision(std::string("case.") + name + ".factor")) << name;
    for (const char* name : {"keel", "hull", "trim"})
        EXPECT_TRUE(findDecision(std::string("class.") + name + ".target")) << name;
    const auto typo = findDecision("case.knockdown_prt.factor");
    ASSERT_FALSE(typo);
    EXPECT_EQ(typo.error().what, "there is no load case knockdown_prt");
    EXPECT_EQ(typo.error().allowed, "did you mean case.knockdown_port.factor?");
    const auto far = findDecision("case.whale.factor");
    ASSERT_FALSE(far);
    EXPECT_NE(far.error().allowed.find("one of knockdown_port"), std::string::npos);
    EXPECT_NE(far.error().allowed.find("on_keel, or own. and a name"), std::string::npos);
    EXPECT_FALSE(findDecision("case.own.factor"));
    const auto kel = findDecision("class.kel.target");
    ASSERT_FALSE(kel);
    EXPECT_EQ(kel.error().what, "there is no class kel");
    EXPECT_EQ(kel.error().allowed, "did you mean class.keel.target?");
}

TEST(DecisionTable, NamesStandInOneLineReasonsMayTakeSeveral) {
    Project project;
    for (const char* bad : {"a\nb", "a\tb", "a\x7f", "a\xc2\x85",
                            "a\xe2\x80\xa8"
                            "b"})
        EXPECT_FALSE(applyChange(project, "hull.name", std::string("x") + bad + "y")) << bad;
    EXPECT_FALSE(applyChange(project, "B.scarph.upper", std::string("stem\nkeel")));
    EXPECT_TRUE(applyChange(project, "hull.name", std::string("Möwe – 2")));
    EXPECT_TRUE(applyChange(project, "K.1.reason", std::string("first\nsecond")));
    EXPECT_FALSE(applyChange(project, "K.1.reason", std::string("first\x1bsecond")));
}

TEST(DecisionTable, StationNamesMayHoldDots) {
    const auto target = findDecision("offsets.9.5.3.half_breadth");
    ASSERT_TRUE(target);
    EXPECT_EQ(target->address.place, "9.5");
    EXPECT_EQ(target->address.index, 3);
}

TEST(DecisionTable, BadValuesLeaveTheLastGoodOne) {
    Project project;
    ASSERT_TRUE(applyChange(project, "keel.sided", "200 mm"));
    for (const char* bad : {"200", "-5 mm", "200 kg", "nan mm", "", "wide", "1e999 mm"}) {
        EXPECT_FALSE(applyChange(project, "keel.sided", std::string(bad))) << bad;
        EXPECT_DOUBLE_EQ(inMillimetres(*project.keel.sided), 200);
    }
    EXPECT_FALSE(applyChange(project, "floors.kind", std::string("swan")));
    EXPECT_FALSE(applyChange(project, "frames.count", std::string("3.5")));
    EXPECT_FALSE(applyChange(project, "frames.count", std::string("401")));
}

TEST(DecisionTable, OneInchAndItsMillimetresAreTheSameValue) {
    Project inches, metric;
    ASSERT_TRUE(applyChange(inches, "K.1.diameter", "1 1/2 in"));
    ASSERT_TRUE(applyChange(metric, "K.1.diameter", "38.1 mm"));
    EXPECT_EQ(inches, metric);
}

TEST(Fold, TextsThatNoLongerReadAreReportedAndLeftOut) {
    const auto folded =
        foldDecisions({{"keel.sided", "200 mm"}, {"keel.moulded", "deep"}, {"no.such", "1"}});
    EXPECT_EQ(folded.problems.size(), 2U);
    EXPECT_TRUE(folded.project.keel.sided);
    EXPECT_FALSE(folded.project.keel.moulded);
}
