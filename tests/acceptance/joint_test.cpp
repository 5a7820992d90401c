// fayline joint: one joint from a file, through the real program.

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <regex>

#include "program.h"
#include "shape.h"

using namespace fayline::acceptance;

namespace {

const std::string good = R"({
  "members": [
    {"name": "plank", "wood": "western_redcedar", "thickness": "1 1/8 in", "counterbore": "3/8 in"},
    {"name": "frame", "wood": "white_oak", "thickness": "2 1/2 in", "grain": 90}
  ],
  "fastener": {"kind": "wood_screw", "gauge": "No. 14", "length": "2 1/2 in", "metal": "c65500_h02"},
  "hole": {"bung": "1/2 in"},
  "service": "dry", "duration": "ten years",
  "demand": {"lateral": "60 lb", "axial": "20 lb"}
})";

const std::string bolted = R"({
  "members": [
    {"name": "floor", "family": "hardwood", "specific_gravity": 0.68, "density": "560 kg/m3",
     "across_us": "5.5 MPa", "across_ec5": "8 MPa", "across_mean": "4.6 MPa", "thickness": "60 mm"},
    {"name": "frame", "wood": "white_oak", "thickness": "50 mm", "gap": "1 mm"},
    {"wood": "White oak", "thickness": "60 mm", "width": "120 mm", "grain_slope": 12}
  ],
  "fastener": {"kind": "bolt", "diameter": "12 mm", "thread": "m12", "nut": "iso_m12", "yield": "170 MPa",
    "ultimate": "400 MPa", "shear": "250 MPa", "head_height": "8 mm",
    "head_washer": {"diameter": "36 mm", "thickness": "4 mm"},
    "point_washer": {"diameter": "36 mm", "thickness": "4 mm"}},
  "hole": {"diameter": "13 mm"},
  "row": {"count": 3, "spacing": "60 mm", "main": {"area": "8000 mm2", "modulus": "9000 MPa"},
    "side": {"area": "9000 mm2", "modulus": "9000 MPa"}},
  "placement": {"end": "90 mm", "load": "toward_end", "edge": "40 mm"},
  "group": {"places": [{"along": "0 mm", "across": "0 mm"}, {"along": "60 mm", "across": "-5 mm"}],
    "load_at": {"along": "30 mm", "across": "20 mm"}, "direction": 15},
  "units": "millimetres", "basis": "ec5"
})";

std::string replaced(std::string text, const std::string& from, const std::string& to) {
    const auto at = text.find(from);
    if (at == std::string::npos) throw std::runtime_error("not in the file: " + from);
    return text.replace(at, from.size(), to);
}

const std::string sectionShape = "null|{area_mm2: num, modulus_MPa: num}";
const std::string inputShape = R"({
    members: [{name: text, wood: text|null, family: text, specific_gravity: num|null,
      specific_gravity_twelve: num|null, density_kg_per_m3: num|null, bearing_us_MPa: num|null,
      embedment_ec5_MPa: num|null, across_us_MPa: num|null, across_ec5_MPa: num|null,
      across_mean_MPa: num|null, tension_us_MPa: num|null, tension_ec5_MPa: num|null,
      shear_us_MPa: num|null, lead_MPa: num|null, thickness_mm: num, width_mm: num|null,
      grain_slope: num|null, counterbore_mm: num, gap_mm: num,
      grain_deg: num, end_grain: bool}],
    fastener: {kind: text, section: text, gauge: int|null, diameter_mm: num, thread: text|null,
      root_mm: num|null, length_mm: num|null, thread_length_mm: num|null, tip_mm: num|null,
      thread_bears: bool, ends: {head: text, point: text}, head_diameter_mm: num|null,
      head_height_mm: num|null, head_strength_MPa: num|null,
      head_washer: null|{diameter_mm: num, thickness_mm: num},
      point_washer: null|{diameter_mm: num, thickness_mm: num}, pitch_mm: num|null,
      nut_height_mm: num|null, nut_shear_MPa: num|null, peen_height_mm: num|null,
      slant_deg: num|null, yield_moment_Nm: num|null, corrosion_mm: num,
      metal: {metal: text|null, yield_MPa: num|null, ultimate_MPa: num|null,
        yield_typical_MPa: num|null, ultimate_typical_MPa: num|null, shear_MPa: num|null,
        bending_yield_MPa: num|null, metal_factor: num}},
    hole: {diameter_mm: num|null, bung_mm: num|null, slip_fit_mm: num|null, pilot_mm: num|null,
      pilot_tip_mm: num|null, bit_mm: num|null, collar_mm: num|null}, zone: text, heel: bool,
    group: null|{places: [{along_mm: num, across_mm: num}], load_at: {along_mm: num,
      across_mm: num}, direction_deg: num}, service: text, fitted: text, duration: text,
    kind_of_load: text,
    row: null|{count: int, spacing_mm: num, main: )" +
                               sectionShape + ", side: " + sectionShape + R"(},
    placement: null|{end_mm: num|null, load: text, spacing_mm: num|null, edge_mm: num|null,
      edge_loaded_across: bool},
    demand: null|{lateral_N: num, axial_N: num}})";

const std::string stateKeys =
    "reference_N: num, working_N: num, gives_N: band|null, apart_N: band|null, clause: text, "
    "soft: bool, standing: text, outside: [text]}";
const std::string state = "{" + stateKeys;

std::string lateral(const std::string& modes, const std::string& rope) {
    return "lateral: {planes: int, modes_N: {" + modes + "}, rope_N: " + rope +
           ", governs: text, " + stateKeys;
}
const std::string missing = ", missing: [{limit_state: text, why: text}]}";
const std::string usSingle =
    lateral("Im: num, Is: num, II: num, IIIm: num, IIIs: num, IV: num", "null");
const std::string usDouble = lateral("Im: num, Is: num, IIIs: num, IV: num", "null");
const std::string ec5Single = lateral("a: num, b: num, c: num, d: num, e: num, f: num", "num");
const std::string ec5Double = lateral("g: num, h: num, j: num, k: num", "num");

std::string screwBasis(const std::string& side) {
    return "{" + side + ", withdrawal: {reference_N_per_mm: num, holds_mm: num, " + stateKeys +
           ", pull_through: " + state + ", metal: " + state + ", combined: " + state +
           ", driving: {gives_Nm: num, apart_Nm: num, dry_Nm: num|null, waxed_Nm: num|null}" +
           missing;
}
std::string boltBasis(const std::string& side, const std::string& splitting = "") {
    return "{" + side + ", washer: " + state + ", punching: " + state + ", metal: " + state +
           ", head_shear: " + state + ", thread_strip: " + state + ", net_section: " + state +
           ", group: {plastic_N: num, worst: int, share: num, " + stateKeys + splitting +
           ", combined: null" + missing;
}
std::string whole(const std::string& us, const std::string& ec5) {
    return "{format: text, program: text, joint: " + inputShape + ", basis: text, us: " + us +
           ", ec5: " + ec5 +
           R"(, geometry: [{what: text, has: text, needs: text, has_mm: num, needs_mm: num,
             met: bool, says: text, standing: text}],
           moisture: {zone: text, states: [text], limit_states: [{basis: text, limit_state: text,
             working_N: [num], governs: text}]},
           slip: [{soft_N_per_mm: num, stiff_N_per_mm: num, why: text}],
           first_to_go: [{limit_state: text, gives_N: band|null, apart_N: band|null, soft: bool,
             too_close: bool}], cautions: [text]})";
}

Json worked(const std::string& text) {
    const Folder folder;
    folder.write("joint.json", text);
    return doneJson(folder, {"joint", "joint.json", "--json"});
}

}  // namespace

TEST(Joint, AScrewHasEveryKeyOfTheContractAndNoOther) {
    const Json json = worked(good);
    EXPECT_EQ(mismatch(json, whole(screwBasis(usSingle), screwBasis(ec5Single))), "");
    EXPECT_EQ(headMismatch(json, "fayline.joint/1", false), "");
    EXPECT_EQ(json["basis"], "us");
}

TEST(Joint, ABoltInDoubleShearHasEveryKeyOfTheContractAndNoOther) {
    const Json json = worked(bolted);
    EXPECT_EQ(
        mismatch(json, whole(boltBasis(usDouble, ", splitting: " + state), boltBasis(ec5Double))),
        "");
    EXPECT_EQ(headMismatch(json, "fayline.joint/1", false), "");
    EXPECT_EQ(json["basis"], "ec5");
    EXPECT_EQ(json["us"]["lateral"]["planes"], 2);
}

TEST(Joint, TheInputComesBackAsUnderstood) {
    const Json input = worked(bolted)["joint"];
    EXPECT_EQ(input["members"][1]["wood"], "white_oak");
    EXPECT_EQ(input["members"][2]["wood"], "white_oak");
    EXPECT_TRUE(input["members"][0]["wood"].is_null());
    EXPECT_EQ(input["members"][0]["specific_gravity"], 0.68);
    EXPECT_EQ(input["members"][1]["gap_mm"], 1.0);
    // M12, 1.75 mm pitch: d3 = 12 - 1.226869 · 1.75 (ISO 724).
    EXPECT_NEAR(input["fastener"]["root_mm"].get<double>(), 12 - 1.226869 * 1.75, 1e-9);
    EXPECT_EQ(input["row"]["count"], 3);
    EXPECT_TRUE(input["demand"].is_null());
    const Json screw = worked(good)["joint"];
    EXPECT_NEAR(screw["members"][0]["thickness_mm"].get<double>(), 28.575, 1e-12);
    EXPECT_NEAR(screw["demand"]["lateral_N"].get<double>(), 60 * 4.4482216152605, 1e-9);
    EXPECT_NEAR(screw["fastener"]["diameter_mm"].get<double>(), 0.242 * 25.4, 1e-9);
}

TEST(Joint, DryForTenYearsNeedsNoUsAdjustment) {
    const Json dry = worked(good);
    for (const char* what : {"lateral", "withdrawal", "pull_through"}) {
        EXPECT_EQ(dry["us"][what]["working_N"], dry["us"][what]["reference_N"]) << what;
        EXPECT_NEAR(dry["ec5"][what]["working_N"].get<double>(),
                    0.7 / 1.3 * dry["ec5"][what]["reference_N"].get<double>(), 1e-9)
            << what;
    }
    const Json wet = worked(replaced(good, "\"dry\"", "\"wet\""));
    EXPECT_NEAR(wet["us"]["lateral"]["working_N"].get<double>(),
                0.7 * dry["us"]["lateral"]["working_N"].get<double>(), 1e-9);
}

TEST(Joint, InchesAndMillimetresGiveTheSameBytes) {
    const Json one = worked(good);
    std::string metric = replaced(good, "1 1/8 in", "28.575 mm");
    metric = replaced(metric, "3/8 in", "9.525 mm");
    EXPECT_EQ(worked(metric), one);
}

TEST(Joint, TextSaysBothBasesAndWhatLetsGoFirst) {
    const Folder folder;
    folder.write("joint.json", good);
    const std::string text = done(folder, {"joint", "joint.json"});
    for (const char* part :
         {"No. 14 wood screw, 2-1/2\" long, c65500 h02", "plank: 1-1/8\" less 3/8\" of western",
          "US basis", "Eurocode 5", "mode IIIs", "What lets go first", "1. ", "thread bound",
          "Results guide, they do not certify."})
        EXPECT_NE(text.find(part), std::string::npos) << part << "\n" << text;
    folder.write("bolt.json", bolted);
    EXPECT_NE(done(folder, {"joint", "bolt.json"}).find("12 mm bolt"), std::string::npos);
}

namespace {

struct Bad {
    std::string name, text, where, what, allowed;
    friend void PrintTo(const Bad& bad, std::ostream* out) { *out << bad.name; }
};

/// The good file with one passage changed.
Bad with(const std::string& name, const std::string& from, const std::string& to,
         const std::string& where, const std::string& what, const std::string& allowed) {
    return {name, replaced(good, from, to), where, what, allowed};
}

std::vector<Bad> badJoints() {
    std::string huge = "{\"members\": \"" + std::string(2U << 20U, 'x') + "\"}";
    return {
        {"empty", "", "j.json:1", "the file is empty", "JSON"},
        {"no_json", "screw into oak", "j.json:1", "does not read here", "JSON"},
        {"broken_off", good.substr(0, 200), "j.json:5", "breaks off", "JSON"},
        {"a_comma_too_many", replaced(good, "\"duration\"", ", \"duration\""), "j.json:8",
         "does not read here", "commas between"},
        {"a_list", "[1, 2]", "the file", "no object", "an object"},
        {"too_large", huge, "j.json", "over 1 MB", "one joint"},
        {"deep", std::string(200000, '['), "j.json:1", "breaks off", "JSON"},
        {"not_utf8", replaced(good, "plank", "pl\xff"), "j.json:3", "does not read", "JSON"},
        with("number_out_of_range", "\"grain\": 90", "\"grain\": 1e999", "j.json", "out of range",
             "plain numbers"),
        with("key_twice", "\"grain\": 90", "\"grain\": 90, \"grain\": 0", "j.json",
             "grain stands twice", "each key once"),
        with("mistyped_key", "\"counterbore\"", "\"counterbor\"", "members[0].counterbor",
             "no such key", "did you mean counterbore?"),
        with("unknown_key", "\"service\"", "\"weather\"", "weather", "no such key",
             "one of members, fastener"),
        with("bare_length", "\"1 1/8 in\"", "28", "members[0].thickness", "is 28, a bare number",
             "text with its unit"),
        with("bare_number_as_text", "\"1 1/8 in\"", "\"28\"", "members[0].thickness", "has no unit",
             "a length"),
        with("bare_force", "\"60 lb\"", "60", "demand.lateral", "a bare number", "250 lb"),
        with("mass_for_a_force", "\"60 lb\"", "\"60 kg\"", "demand.lateral", "kg", ""),
        with("wrong_kind", "\"3/8 in\"", "\"3 MPa\"", "members[0].counterbore",
             "a length is wanted", "a length"),
        with("negative_thickness", "\"2 1/2 in\", \"grain\"", "\"-2 in\", \"grain\"",
             "members[1].thickness", "is -2 in", "more than 0"),
        with("nil_thickness", "\"2 1/2 in\", \"grain\"", "\"0 in\", \"grain\"",
             "members[1].thickness", "is 0 in", "more than 0"),
        with("absurd_thickness", "\"2 1/2 in\", \"grain\"", "\"90 m\", \"grain\"",
             "members[1].thickness", "is 90 m", "at most"),
        with("no_thickness", "\"thickness\": \"2 1/2 in\", ", "", "members[1].thickness",
             "is missing", "such as"),
        with("counterbore_too_deep", "\"3/8 in\"", "\"2 in\"", "members[0].counterbore", "is 51",
             "less than the thickness"),
        with("grain_beyond_ninety", "\"grain\": 90", "\"grain\": 100", "members[1].grain",
             "is 100°", "0 to 90 degrees"),
        with("grain_no_number", "\"grain\": 90", "\"grain\": [90]", "members[1].grain",
             "not a number", "such as 90"),
        with("unknown_wood", "\"white_oak\"", "\"wite_oak\"", "members[1].wood", "no wood",
             "did you mean white_oak?"),
        with("wood_of_nobody", "\"white_oak\"", "\"unobtainium\"", "members[1].wood", "no wood",
             "of the catalogue"),
        with("no_wood", "\"wood\": \"white_oak\", ", "\"family\": \"hardwood\", ",
             "members[1].wood", "is missing", "specific_gravity or density"),
        with("no_family", "\"wood\": \"white_oak\"", "\"specific_gravity\": 0.7",
             "members[1].family", "is missing", "softwood or hardwood"),
        with("gravity_as_density", "\"grain\": 90", "\"specific_gravity\": 680",
             "members[1].specific_gravity", "680", "0.05 to 1.5"),
        with("density_of_a_feather", "\"grain\": 90", "\"density\": \"5 kg/m3\"",
             "members[1].density", "5 kg/m", "50 to 1500"),
        with("one_member", R"(,
    {"name": "frame", "wood": "white_oak", "thickness": "2 1/2 in", "grain": 90})",
             "", "members", "are 1", "2 to 20"),
        with("members_no_list", "\"members\": [", "\"members\": 3, \"x\": [", "x", "no such key",
             "one of"),
        with("member_no_object",
             "{\"name\": \"frame\", \"wood\": \"white_oak\", \"thickness\": "
             "\"2 1/2 in\", \"grain\": 90}",
             "7", "members[1]", "no object", "an object"),
        with("unknown_kind", "\"wood_screw\"", "\"wood_scrw\"", "fastener.kind", "no kind",
             "did you mean wood_screw?"),
        with("no_kind", "\"kind\": \"wood_screw\", ", "", "fastener.kind", "is missing",
             "wood_screw, bolt"),
        with("gauge_too_large", "No. 14", "No. 99", "fastener.gauge", "99", "30"),
        with("gauge_as_length", "No. 14", "14 mm", "fastener.gauge", "14 mm", ""),
        with("no_size", "\"gauge\": \"No. 14\", ", "", "fastener.diameter", "is missing", "gauge"),
        with("no_length", "\"length\": \"2 1/2 in\", ", "", "fastener.length", "is missing",
             "such as"),
        with("screw_too_short", "\"length\": \"2 1/2 in\"", "\"length\": \"1/2 in\"",
             "fastener.length", "is 12.5 mm", "before the last member"),
        with("thread_longer_than_the_screw", "\"gauge\"", "\"thread_length\": \"5 in\", \"gauge\"",
             "fastener.thread_length", "is 127", "0 to the length"),
        with("unknown_metal", "c65500_h02", "c65500_h2", "fastener.metal", "no metal",
             "did you mean c65500_h02?"),
        with("no_metal", ", \"metal\": \"c65500_h02\"", "", "fastener.metal", "is missing",
             "yield and ultimate"),
        with("yield_above_ultimate", "\"metal\": \"c65500_h02\"",
             "\"yield\": \"90 ksi\", \"ultimate\": \"45 ksi\"", "fastener.yield", "above",
             "at most the ultimate"),
        with("nut_thread_on_a_screw", "\"gauge\"", "\"thread\": \"m12\", \"gauge\"",
             "fastener.thread", "for a wood_screw", "of bolts"),
        with("unknown_duration", "\"ten years\"", "\"ten yeers\"", "duration", "no duration",
             "did you mean ten years?"),
        with("unknown_service", "\"dry\"", "\"damp\"", "service", "no service", "one of dry, wet"),
        with("demand_pushed_sideways_backwards", "\"60 lb\"", "\"-60 lb\"", "demand.lateral", "-",
             "0 or more"),
        with("row_of_none", "\"service\"", "\"row\": {\"count\": 0}, \"service\"", "row.count", "0",
             "1000"),
        with("row_without_spacing", "\"service\"", "\"row\": {\"count\": 3}, \"service\"",
             "row.spacing", "is 0 mm", "more than 0"),
        with("half_a_count", "\"service\"", "\"row\": {\"count\": 2.5}, \"service\"", "row.count",
             "2.5", ""),
        with("no_bool", "\"grain\": 90", "\"end_grain\": \"yes\"", "members[1].end_grain",
             "is \"yes\"", "true or false"),
        with("demand_and_load", "\"demand\"", "\"load\": {}, \"demand\"", "load", "beside demand",
             "one of the two"),
        with("double_shear_of_three", "\"service\"", "\"shear\": \"triple\", \"service\"", "shear",
             "no shear", "one of single, double"),
        with("double_shear_of_a_screw_too_short", "\"service\"",
             "\"shear\": \"double\", \"service\"", "fastener.length", "is 63.5 mm",
             "before the last member"),
        with("side_of_a_screw", "\"gauge\"", "\"side\": \"6 mm\", \"gauge\"", "fastener.side",
             "for a wood_screw", "square bar"),
        with("moment_without_unit", "\"gauge\"", "\"yield_moment\": \"12\", \"gauge\"",
             "fastener.yield_moment", "no moment", "Nm"),
        with("moment_of_nothing", "\"gauge\"", "\"yield_moment\": \"0 Nm\", \"gauge\"",
             "fastener.yield_moment", "is 0 Nm", "more than 0"),
        with("moment_bare", "\"gauge\"", "\"yield_moment\": 12, \"gauge\"", "fastener.yield_moment",
             "a bare number", "8 Nm"),
        with("moment_in_words", "\"gauge\"", "\"yield_moment\": \"much Nm\", \"gauge\"",
             "fastener.yield_moment", "", ""),
        with("bronze_for_lead", "\"wood\": \"white_oak\"", "\"lead\": \"c65500_h02\"",
             "members[1].lead", "no lead", "a lead"),
        with("wood_and_lead", "\"grain\": 90", "\"lead\": \"lead_pure\"", "members[1].lead",
             "beside wood", "one of the two"),
        with("group_of_one", "\"service\"",
             R"("group": {"places": [{"along": "0 mm", "across": "0 mm"}],
                "load_at": {"along": "0 mm", "across": "0 mm"}}, "service")",
             "group.places", "are 1", "2 to 1000"),
        with("group_of_twins", "\"service\"",
             R"("group": {"places": [{"along": "1 mm", "across": "0 mm"},
                {"along": "1 mm", "across": "0 mm"}],
                "load_at": {"along": "0 mm", "across": "0 mm"}}, "service")",
             "group.places[1]", "place of another", "of its own"),
        with("group_without_load", "\"service\"", R"("group": {"places": []}, "service")",
             "group.load_at", "is missing", "a point"),
        with("width_nil", "\"grain\": 90", "\"width\": \"0 mm\"", "members[1].width", "is 0 mm",
             "more than 0"),
        with("slope_of_nothing", "\"grain\": 90", "\"grain_slope\": 0", "members[1].grain_slope",
             "1 in 0", "1 in 0.5"),
        with("unknown_zone", "\"service\"", "\"zone\": \"soked\", \"service\"", "zone", "no zone",
             "did you mean soaked?"),
        with("pilot_thicker_at_its_point", "\"bung\": \"1/2 in\"",
             "\"pilot\": \"3 mm\", \"pilot_tip\": \"4 mm\"", "hole.pilot_tip", "is 4 mm",
             "at most"),
        with("unknown_hole_key", "\"bung\"", "\"bng\"", "hole.bng", "no such key",
             "did you mean bung?"),
        with("metal_factor_nil", "\"gauge\"", "\"metal_factor\": 0, \"gauge\"",
             "fastener.metal_factor", "0", "1 to 100"),
    };
}

class BadJoint : public ::testing::TestWithParam<Bad> {};

}  // namespace

TEST_P(BadJoint, IsRefusedInOneSentenceWithItsPlace) {
    const Bad& bad = GetParam();
    const Folder folder;
    folder.write("j.json", bad.text);
    for (const Words& words : {Words{"joint", "j.json"}, Words{"joint", "j.json", "--json"}}) {
        const auto before = folder.digests();
        const Ran ran = runFayline(folder, words);
        EXPECT_EQ(ran.exit, 1) << ran.err;
        EXPECT_EQ(ran.out, "");
        EXPECT_EQ(folder.digests(), before);
        const auto lines = linesOf(ran.err);
        ASSERT_FALSE(lines.empty());
        static const std::regex form("fayline: [^ ].*: .+; .+");
        for (const std::string& line : lines) {
            EXPECT_TRUE(std::regex_match(line, form)) << line;
            EXPECT_LT(line.size(), 500U) << line;
        }
        EXPECT_EQ(lines[0].rfind("fayline: " + bad.where + ": ", 0), 0U) << lines[0];
        const auto semicolon = lines[0].find("; ");
        EXPECT_NE(lines[0].find(bad.what), std::string::npos) << lines[0];
        EXPECT_NE(lines[0].find(bad.allowed, semicolon), std::string::npos) << lines[0];
    }
}

INSTANTIATE_TEST_SUITE_P(Joint, BadJoint, ::testing::ValuesIn(badJoints()),
                         [](const auto& tested) { return tested.param.name; });

TEST(Joint, LoadIsAnotherWordForDemand) {
    EXPECT_EQ(worked(replaced(good, "\"demand\"", "\"load\"")), worked(good));
}

TEST(Joint, WordsThatSayTheSameGiveTheSame) {
    const std::string washers = R"("head_washer": {"diameter": "36 mm", "thickness": "4 mm"},
    "point_washer": {"diameter": "36 mm", "thickness": "4 mm"})";
    std::string brief =
        replaced(bolted, washers, R"("washer": {"diameter": "36 mm", "thickness": "4 mm"})");
    brief = replaced(brief, "\"ultimate\"", "\"tensile\"");
    EXPECT_EQ(worked(brief), worked(bolted));
    EXPECT_EQ(worked(replaced(bolted, "\"units\"", "\"shear\": \"double\", \"units\"")),
              worked(bolted));
}

TEST(Joint, DoubleShearOfTwoPutsTheFirstOnBothSides) {
    const std::string two = R"({"members": [
      {"wood": "white_oak", "thickness": "2 in"}, {"wood": "white_oak", "thickness": "3 in"}],
      "fastener": {"kind": "rivet", "side": "1/4 in", "metal": "copper_hard"}, "shear": "double"})";
    const Json json = worked(two);
    EXPECT_EQ(json["us"]["lateral"]["planes"], 2);
    EXPECT_EQ(json["joint"]["members"].size(), 3U);
    EXPECT_EQ(json["joint"]["fastener"]["section"], "square");
}

TEST(Joint, YieldMomentMeasuredStandsBeforeTheFormulas) {
    const auto moment = [](const std::string& text) {
        return worked(replaced(good, "\"gauge\"", "\"yield_moment\": \"" + text + "\", \"gauge\""));
    };
    EXPECT_NEAR(moment("20 Nm")["us"]["lateral"]["modes_N"]["IV"].get<double>() /
                    moment("5000 Nmm")["us"]["lateral"]["modes_N"]["IV"].get<double>(),
                2.0, 1e-9);
    EXPECT_NEAR(moment("10 lb-in")["joint"]["fastener"]["yield_moment_Nm"].get<double>(),
                1.1298482902761668, 1e-12);
}

TEST(Joint, EachRuleIsSaidOnce) {
    const Folder folder;
    folder.write("joint.json",
                 replaced(good, "\"2 1/2 in\", \"metal\"", "\"1 1/2 in\", \"metal\""));
    const std::string text = done(folder, {"joint", "joint.json"});
    const std::string rule = "traditional, shorter than the code: ";
    const auto us = text.find("US basis"), ec5 = text.find("Eurocode 5");
    const std::string half = text.substr(us, ec5 - us);
    const auto first = half.find(rule);
    ASSERT_NE(first, std::string::npos) << half;
    EXPECT_EQ(half.find(rule, first + 1), std::string::npos) << half;
    EXPECT_NE(half.find("outside, lateral, withdrawal"), std::string::npos) << half;
}

TEST(Joint, FourStatesOfMoistureAndTheOneThatGoverns) {
    const Json json = worked(replaced(good, "\"service\"", "\"zone\": \"cycling\", \"service\""));
    EXPECT_EQ(json["moisture"]["states"],
              Json({"as_fitted", "shed_dry", "afloat", "winter_ashore"}));
    for (const Json& row : json["moisture"]["limit_states"]) {
        EXPECT_EQ(row["governs"], "afloat") << row;
        EXPECT_LT(row["working_N"][2], row["working_N"][3]) << row;
    }
}

TEST(Joint, CommasForPointsChangeNothing) {
    const Folder folder;
    folder.write("screw.json", good);
    folder.write("bolt.json", bolted);
    folder.write("bad.json", replaced(good, "\"grain\": 90", "\"specific_gravity\": 680.5"));
    const auto everything = [&](const Words& environment) {
        std::string all;
        for (const char* file : {"screw.json", "bolt.json", "bad.json"}) {
            for (const Words& words : {Words{"joint", file}, Words{"joint", file, "--json"}}) {
                const Ran ran = runFayline(folder, words, environment);
                all += ran.out + ran.err;
            }
        }
        return all;
    };
    const std::string expected = everything({"LC_ALL=C"});
    EXPECT_NE(expected.find("680.5"), std::string::npos);
    const std::string locales = folder / "locales";
    std::filesystem::create_directory(locales);
    for (const std::string name : {"de_DE", "tr_TR"}) {
        const std::string command = "localedef -i " + name + " -f UTF-8 '" + locales + "/" + name +
                                    ".UTF-8' >'" + locales + "/log' 2>&1";
        if (std::system(command.c_str()) != 0)
            GTEST_SKIP() << "no such locale can be made here (package locales)";
        const Words other{"LOCPATH=" + locales, "LC_ALL=" + name + ".UTF-8"};
        EXPECT_EQ(everything(other), expected) << name;
    }
}

TEST(Joint, EveryFaultOfAFileIsTold) {
    const Folder folder;
    std::string text = replaced(good, "\"1 1/8 in\"", "28");
    text = replaced(text, "white_oak", "wite_oak");
    text = replaced(text, "No. 14", "No. 99");
    folder.write("j.json", text);
    const auto lines = linesOf(runFayline(folder, {"joint", "j.json"}).err);
    ASSERT_EQ(lines.size(), 3U);
    EXPECT_EQ(lines[0].rfind("fayline: members[0].thickness: ", 0), 0U);
    EXPECT_EQ(lines[1].rfind("fayline: members[1].wood: ", 0), 0U);
    EXPECT_EQ(lines[2].rfind("fayline: fastener.gauge: ", 0), 0U);
}

TEST(Joint, FilesThatAreNoneAndWordsTooManyEndAsTheyShould) {
    const Folder folder;
    folder.write("j.json", good);
    EXPECT_EQ(runFayline(folder, {"joint", "none.json"}).exit, 1);
    EXPECT_EQ(runFayline(folder, {"joint", "/dev/zero"}).exit, 1);
    EXPECT_EQ(runFayline(folder, {"joint", "."}).exit, 1);
    EXPECT_EQ(runFayline(folder, {"joint"}).exit, 2);
    EXPECT_EQ(runFayline(folder, {"joint", "j.json", "j.json"}).exit, 2);
    EXPECT_EQ(runFayline(folder, {"joint", "j.json", "--csv"}).exit, 2);
}
