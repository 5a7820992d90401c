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
    put("*", "a name 0.5");
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
