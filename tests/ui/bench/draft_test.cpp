// A joint as texts: to a joint file and back, and from a joint of the hull.
#include "bench_draft.h"

#include <gtest/gtest.h>

#include "bench_fields.h"
#include "joint/work_joint.h"
#include "services.h"
#include "words/values.h"

namespace fayline {
namespace {

ResultAll<NamedJoint> read(const BenchDraft& draft) {
    return test::services().readJoint(jointFileText(draft, UnitSystem::inches, Basis::us), "test");
}

TEST(BenchDraft, TheFirstExampleIsAJointFileThatReadsBackAsItself) {
    const BenchDraft draft = firstDraft();
    const std::string text = jointFileText(draft, UnitSystem::millimetres, Basis::ec5);
    EXPECT_EQ(draftOf(text), draft);
    const auto named = test::services().readJoint(text, "test");
    ASSERT_TRUE(named) << named.error().front().line() << "\n" << text;
    EXPECT_EQ(named->units, UnitSystem::millimetres);
    EXPECT_EQ(named->basis, Basis::ec5);
    EXPECT_EQ(named->woods.front(), "western_redcedar");
}

TEST(BenchDraft, EveryFieldIsAKeyTheReaderKnows) {
    // A field the reader does not know would be refused as such, whatever its value.
    const auto asked = [](const BenchField& field, const std::string& path) {
        BenchDraft draft = firstDraft();
        draft.set(path, "1 furlong");
        const auto named = read(draft);
        if (named) return;  // a name, taken as it is
        for (const Problem& problem : named.error())
            EXPECT_EQ(problem.what.find("there is no such key"), std::string::npos)
                << field.key << ": " << problem.line();
    };
    for (const BenchField& field : memberFields()) asked(field, "members[0]." + field.key);
    for (const BenchField& field : fastenerFields()) asked(field, field.key);
    for (const BenchField& field : loadFields()) asked(field, field.key);
}

TEST(BenchDraft, KeepsWhatAFileSaysUnderItsOtherNames) {
    const BenchDraft draft = draftOf(R"({
      "members": [{"wood": "white_oak", "thickness": "60 mm", "dowel_bearing": "20 MPa"},
                  {"wood": "white_oak", "thickness": "60 mm", "end_grain": true}],
      "fastener": {"kind": "bolt", "side": "12 mm", "tensile": "400 MPa", "yield": "170 MPa",
                   "washer": {"diameter": "36 mm", "thickness": "4 mm"}, "thread_bears": false},
      "demand": {"lateral": "2 kN"}, "row": {"count": 3, "spacing": "80 mm"},
      "group": {"places": [{"along": "0 mm", "across": "0 mm"}, {"along": "90 mm", "across": "0 mm"}],
                "load_at": {"along": "40 mm", "across": "0 mm"}},
      "units": "millimetres"})");
    EXPECT_EQ(draft.at("members[0].bearing_us"), "20 MPa");
    EXPECT_EQ(draft.at("members[1].end_grain"), "yes");
    EXPECT_EQ(draft.at("fastener.diameter"), "12 mm");
    EXPECT_EQ(draft.at("fastener.section"), "square");
    EXPECT_EQ(draft.at("fastener.ultimate"), "400 MPa");
    EXPECT_EQ(draft.at("fastener.head_washer.diameter"), "36 mm");
    EXPECT_EQ(draft.at("fastener.point_washer.thickness"), "4 mm");
    EXPECT_EQ(draft.at("fastener.thread_bears"), "no");
    EXPECT_EQ(draft.at("load.lateral"), "2 kN");
    EXPECT_EQ(draft.at("row.count"), "3");
    EXPECT_NE(draft.group.find("places"), std::string::npos);
    const std::string text = jointFileText(draft, UnitSystem::millimetres, Basis::us);
    EXPECT_EQ(draftOf(text), draft);
    const auto named = test::services().readJoint(text, "test");
    ASSERT_TRUE(named) << named.error().front().line() << "\n" << text;
    ASSERT_TRUE(named->joint.group);
    EXPECT_EQ(named->joint.group->places.size(), 2U);
}

TEST(BenchDraft, AJointsFiguresComeBackAsTheSameValuesInEitherSystem) {
    BenchDraft first = firstDraft();
    first.set("members[0].thickness", "28.3 mm");
    first.set("members[1].gap", "");
    first.set("members[1].wood", "");
    first.set("members[1].family", "hardwood");
    first.set("members[1].specific_gravity", "0.66");
    first.set("members[1].density", "571 kg/m3");
    first.set("fastener.metal", "");
    first.set("fastener.yield", "260 MPa");
    first.set("fastener.ultimate", "481 MPa");
    auto named = read(first);
    ASSERT_TRUE(named) << named.error().front().line();
    for (const UnitSystem units : {UnitSystem::inches, UnitSystem::millimetres}) {
        named->units = units;
        const auto again =
            test::services().readJoint(jointFileText(draftOf(*named), units, Basis::us), "test");
        ASSERT_TRUE(again) << again.error().front().line();
        const auto before = workJoint(named->joint), after = workJoint(again->joint);
        ASSERT_TRUE(before && after);
        EXPECT_EQ(before->us, after->us);
        EXPECT_EQ(before->ec5, after->ec5);
        EXPECT_EQ(named->joint.members[0].thickness, again->joint.members[0].thickness);
    }
}

TEST(BenchFields, ABareNumberTakesTheBuildersUnitAndNothingElseDoes) {
    const auto& catalogue = *test::catalogue();
    const auto field = [](const char* key) {
        for (const auto* fields : {&memberFields(), &fastenerFields(), &loadFields()}) {
            for (const BenchField& each : *fields) {
                if (each.key == key) return each;
            }
        }
        throw std::runtime_error(key);
    };
    const auto text = [&](const char* key, const char* typed, UnitSystem units) {
        return fileText(field(key), QString::fromUtf8(typed), units, catalogue);
    };
    EXPECT_EQ(text("thickness", "1-1/2", UnitSystem::inches), "1-1/2 in");
    EXPECT_EQ(text("thickness", "1½", UnitSystem::inches), "1½ in");
    EXPECT_EQ(text("thickness", "38", UnitSystem::millimetres), "38 mm");
    EXPECT_EQ(text("thickness", "3-4-2", UnitSystem::inches), "3-4-2") << "feet-inches-eighths";
    EXPECT_EQ(text("thickness", "1 1/2\"", UnitSystem::millimetres), "1 1/2\"");
    EXPECT_EQ(text("load.axial", "-20", UnitSystem::inches), "-20 lb");
    EXPECT_EQ(text("load.lateral", "2 kN", UnitSystem::inches), "2 kN");
    EXPECT_EQ(text("fastener.gauge", "12", UnitSystem::inches), "No. 12");
    EXPECT_EQ(text("grain", "45°", UnitSystem::inches), "45");
    EXPECT_EQ(text("wood", "white oak", UnitSystem::inches), "white_oak");
    EXPECT_EQ(text("fastener.kind", "wood screw", UnitSystem::inches), "wood_screw");
    EXPECT_EQ(text("thickness", "  ", UnitSystem::inches), "");
}

}  // namespace
}  // namespace fayline
