// Every key of every JSON result, as docs/contracts.md names them.

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <regex>
#include <set>

#include "program.h"
#include "shape.h"

using namespace fayline::acceptance;

namespace {

const std::string caseShape = R"({
    case: text, duration: text, kind_of_load: text, load_factor: num, keel_axis_z_mm: num,
    total: {force_N: xyz, moment_Nm: xyz, at_mm: xyz}, demand_factor: {us: num, ec5: num},
    residual: {force_N: num, moment_Nm: num, relative: num}, carried: bool, settled: bool,
    why: text|null,
    bed: null|{resultant_N: num, at_x_mm: num|null, at_y_mm: num, contact_from_y_mm: num, highest_MPa: num},
    source: text, standing: text})";

const std::string fasteningShape = R"({
    id: text, group: text, point_mm: xyz, force_N: xyz|null, axial_N: num|null,
    lateral_N: num|null, moment_Nm: xyz|null, by_method: null|
    {equal_force_N: num, windward_only_N: num, elastic_N: num, cracked_section_N: num},
    share: null|{tributary: num, rigid: num, envelope: num},
    demand: {axial_N: num|null, lateral_N: num|null}, known: bool, why: text|null})";

const std::string stationShape = R"({frame: text, x_mm: num, cases: [{
    case: text, keel_moment_Nm: num, keel_lateral_N: num, keel_vertical_N: num,
    share: {tributary: num, rigid: num, beam: num|null}, fastenings: [)" +
                                 fasteningShape + R"(],
    group_share: null|{heel: band|null, arm: band|null, floor: band|null}, after_slip: null, keel_roll_mrad: null, garboard_opening_mm: null,
    reactions: null, residual: null, why: text, carried: bool}]})";

const std::string checkShape = R"({
    id: text, frame: text|null, group: text, stands: int, case: text, basis: text,
    limit_state: text, moisture: text, class: text, demand_N: num|null, working_N: num|null, gives_N: band|null,
    apart_N: band|null, margin: num|null, status: text, soft: bool, clause: text|null,
    standing: text, outside: [text], why: text|null})";

const std::string holeShape = R"({
    id: text, mark: text, frame: text|null, side: text|null, face: text, group: text, kind: text,
    joins: [text], start_mm: xyz, end_mm: xyz, diameter_mm: num, length_mm: num, grip_mm: num,
    steps: [{drill: text, diameter_mm: num, depth_mm: num}], bung_mm: num|null, locked: bool,
    drilled: bool})";

const std::string sectionShape = "x_mm: num, area_m2: num, girth_mm: num, wetted_girth_mm: num}";

std::string withHead(const std::string& keys) {
    return "{format: text, program: text, project: text, step: int, " + keys +
           ", cautions: [text]}";
}

/// Every text under this key must be one of these words.
void oneOf(const Json& json, const char* key, const std::set<std::string>& words) {
    for (const auto& [name, value] : json.items()) {
        if (name == key && value.is_string()) {
            EXPECT_EQ(words.count(value.get<std::string>()), 1U) << key << " is " << value;
        }
        if (value.is_structured()) oneOf(value, key, words);
    }
}

const std::set<std::string> groups{"heel",  "arm",  "floor", "ballast",  "backbone",
                                   "plank", "butt", "hood",  "garboard", "own"};
const std::set<std::string> standings{"read", "derived", "common_practice", "from_memory",
                                      "judgement"};

class Demo : public ::testing::Test {
  protected:
    void SetUp() override { putDemo(folder, "demo.fayline"); }
    Json json(const char* command) { return doneJson(folder, {command, "demo.fayline", "--json"}); }
    Folder folder;
};

}  // namespace

TEST_F(Demo, MarginsHaveEveryKeyOfTheContract) {
    const Json json = this->json("margins");
    EXPECT_EQ(headMismatch(json, "fayline.margins/1", true), "");
    EXPECT_EQ(mismatch(json, withHead("basis: text, cases: [" + caseShape + "], stations: [" +
                                      stationShape + "], checks: [" + checkShape +
                                      "], outside: [{says: text, checks: int}], "
                                      "missing: [{what: text, says: text}]")),
              "");
    EXPECT_EQ(json["project"], "Hollin");
    EXPECT_EQ(json["cases"].size(), 15U);
    EXPECT_GE(json["stations"].size(), 9U);
    EXPECT_GE(json["checks"].size(), 9U * (4U + 4U + 3U));
    EXPECT_TRUE(json["missing"].empty()) << "every group of the demo is decided";
    oneOf(json, "basis", {"us", "ec5", "metal"});
    oneOf(json, "group", groups);
    oneOf(json, "standing", standings);
    oneOf(json, "class", {"keel", "hull", "trim"});
    oneOf(json, "moisture", {"as_fitted", "shed_dry", "afloat", "winter_ashore"});
    oneOf(json, "kind_of_load", {"permanent", "variable", "accidental"});
    oneOf(json, "duration", {"permanent", "ten years", "two months", "seven days", "ten minutes"});
    oneOf(json, "case",
          {"knockdown_port", "knockdown_starboard", "sailing_port", "sailing_starboard",
           "grounding_up", "grounding_aft", "grounding_forward", "grounding_port",
           "grounding_starboard", "sea_bottom", "sea_side", "swelling", "springback", "slings",
           "on_keel"});
    oneOf(json, "status", {"short", "near", "ok", "unknown", "outside", "unloaded"});
    oneOf(json, "limit_state",
          {"lateral", "withdrawal", "pull_through", "washer", "metal", "combined", "head_shear",
           "thread_strip", "crushing", "punching", "net_section", "splitting", "group", "driving",
           "floor_bending", "floor_shear", "floor_splitting", "frame_bending"});
}

TEST_F(Demo, HolesHaveEveryKeyOfTheContract) {
    const Json json = this->json("holes");
    EXPECT_EQ(headMismatch(json, "fayline.holes/1", true), "");
    EXPECT_EQ(mismatch(json, withHead("holes: [" + holeShape +
                                      R"(], findings: [{kind: text, holes: [text],
                                       missing_mm: num|null, says: text, cure: [text]}])")),
              "");
    oneOf(json, "face", {"fore", "aft", "inner", "outer"});
    oneOf(json, "group", groups);
    std::set<std::string> ids;
    std::size_t bolts = 0;
    for (const Json& hole : json["holes"]) {
        EXPECT_TRUE(ids.insert(hole["id"]).second) << hole["id"] << " stands twice";
        bolts += hole["group"] == "ballast" ? 1U : 0U;
        EXPECT_GE(hole["joins"].size(), 2U) << hole["id"];
        EXPECT_GT(hole["diameter_mm"].get<double>(), 0) << hole["id"];
        EXPECT_LE(hole["grip_mm"], hole["length_mm"]) << hole["id"];
        double square = 0;
        for (std::size_t i = 0; i < 3; ++i) {
            const double d = hole["end_mm"][i].get<double>() - hole["start_mm"][i].get<double>();
            square += d * d;
        }
        EXPECT_NEAR(std::sqrt(square), hole["length_mm"].get<double>(), 1e-6) << hole["id"];
        EXPECT_FALSE(hole["steps"].empty()) << hole["id"];
    }
    EXPECT_EQ(bolts, 9U);
    for (const Json& finding : json["findings"]) {
        for (const Json& id : finding["holes"])
            EXPECT_EQ(ids.count(id), 1U) << "a finding about " << id << ", which is no hole";
        for (const Json& cure : finding["cure"])
            EXPECT_NE(cure.get<std::string>().find('='), std::string::npos) << cure;
    }
}

TEST_F(Demo, HullHasEveryKeyOfTheContract) {
    const Json json = this->json("hull");
    EXPECT_EQ(headMismatch(json, "fayline.hull/1", true), "");
    EXPECT_EQ(
        mismatch(json,
                 withHead(R"(
        water_density_kg_per_m3: num, waterline_mm: num, volume_m3: num, displacement_kg: num,
        centre_mm: xyz, waterplane_area_m2: num, waterplane_centre_mm: xyz, wetted_area_m2: num,
        wetted_length_mm: num, stated_displacement_kg: num|null,
        ballast: null|{mass_kg: num, mass_from_shape_kg: num, centre_mm: xyz,
        centre_below_top_mm: num, ratio: num},
        stations: [{station: text, )" +
                          sectionShape +
                          "], frames: [{rabbet_mm: [num]|null, rabbet: text|null, frame: text, " +
                          sectionShape + "]")),
        "");
    EXPECT_EQ(json["stations"].size(), 21U);
    EXPECT_EQ(json["frames"].size(), 37U);
    const double volume = json["volume_m3"];
    EXPECT_NEAR(json["displacement_kg"].get<double>(),
                volume * json["water_density_kg_per_m3"].get<double>(), 1e-6);
    EXPECT_EQ(json["centre_mm"][1], 0.0);
    // Areas of the stations by trapezoids give the volume within their own coarseness.
    double trapezoids = 0;
    for (std::size_t i = 1; i < json["stations"].size(); ++i) {
        const Json& a = json["stations"][i - 1];
        const Json& b = json["stations"][i];
        trapezoids += (b["x_mm"].get<double>() - a["x_mm"].get<double>()) / 1000 *
                      (a["area_m2"].get<double>() + b["area_m2"].get<double>()) / 2;
    }
    EXPECT_NEAR(trapezoids, volume, 0.02 * volume);
    for (const char* list : {"stations", "frames"}) {
        for (const Json& section : json[list])
            EXPECT_LE(section["wetted_girth_mm"], section["girth_mm"]) << section;
    }
}

TEST_F(Demo, JournalHasEveryKeyOfTheContract) {
    const Json json = this->json("journal");
    EXPECT_EQ(headMismatch(json, "fayline.journal/1", true), "");
    EXPECT_EQ(mismatch(json, withHead(R"(
        steps: [{step: int, at: text, who: text, why: words, title: text, kind: text,
                 target: int|null, changes: [{what: text, old: text|null, new: text|null}],
                 hash: text}],
        undo: int|null, redo: int|null)")),
              "");
    oneOf(json, "kind", {"decide", "undo", "redo", "record", "note"});
    int number = 0;
    for (const Json& step : json["steps"]) {
        EXPECT_EQ(step["step"], ++number);
        EXPECT_TRUE(std::regex_match(step["hash"].get<std::string>(), std::regex("[0-9a-f]{64}")));
        EXPECT_TRUE(std::regex_match(step["at"].get<std::string>(),
                                     std::regex(R"(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ)")));
        EXPECT_EQ(step["who"], "tester");
    }
    EXPECT_EQ(json["step"], number);
    EXPECT_EQ(json["undo"], number);
    EXPECT_TRUE(json["redo"].is_null());
}

TEST_F(Demo, VerifyHasEveryKeyOfTheContract) {
    const Json json = this->json("verify");
    EXPECT_EQ(headMismatch(json, "fayline.verify/1", false), "");
    EXPECT_EQ(mismatch(json, R"({format: text, program: text, outcome: text, step: int,
                                 first_bad_step: int|null, says: text|null, cautions: [text]})"),
              "");
    EXPECT_EQ(json["outcome"], "ok");
    EXPECT_EQ(json["step"], this->json("journal")["step"]);
    EXPECT_TRUE(json["first_bad_step"].is_null());
}
