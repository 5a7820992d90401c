// Statics done again from nothing but the program's JSON: what it prints must balance by itself.

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <nlohmann/json.hpp>
#include <numbers>

#include "program.h"

using namespace fayline::acceptance;

namespace {

constexpr double gravity = 9.80665;  // CGPM 1901
constexpr double nearly = 1e-9;      // relative, of the case's own force or moment

double num(const Json& json) {
    return json.get<double>();
}

/// The ballast bolts of one case, from all stations.
std::vector<Json> fasteningsOf(const Json& margins, const std::string& name) {
    std::vector<Json> all;
    for (const Json& station : margins["stations"]) {
        for (const Json& one : station["cases"]) {
            if (one["case"] != name) continue;
            for (const Json& f : one["fastenings"]) {
                if (f["group"] == "ballast") all.push_back(f);
            }
        }
    }
    return all;
}

const Json& caseNamed(const Json& margins, const std::string& name) {
    for (const Json& one : margins["cases"]) {
        if (one["case"] == name) return one;
    }
    throw std::runtime_error("no case " + name);
}

/// Force and moment along and about x, y, z.
struct Six {
    std::array<double, 6> of{};
    void add(const Json& at_mm, const Json& force_N, const Json& about_mm, double sign = 1) {
        std::array<double, 3> r{}, f{};
        for (std::size_t i = 0; i < 3; ++i) {
            r[i] = (num(at_mm[i]) - num(about_mm[i])) / 1000;
            f[i] = sign * num(force_N[i]);
            of[i] += f[i];
        }
        of[3] += r[1] * f[2] - r[2] * f[1];
        of[4] += r[2] * f[0] - r[0] * f[2];
        of[5] += r[0] * f[1] - r[1] * f[0];
    }
    [[nodiscard]] double force_N() const { return std::hypot(of[0], of[1], of[2]); }
    [[nodiscard]] double moment_Nm() const { return std::hypot(of[3], of[4], of[5]); }
};

struct Left {
    Six load, left;
};

/// What is left of force and moment on the ballast: its load, the bolts, the bed. About the middle
/// of the joint, which the case's own moment is about.
Left leftOn(const Json& margins, const Json& one) {
    const Json& total = one["total"];
    const Json& centre = caseNamed(margins, "knockdown_port")["total"]["at_mm"];
    const Json about = {centre[0], 0.0, one["keel_axis_z_mm"]};
    Left result;
    result.load.add(total["at_mm"], total["force_N"], about);
    result.left = result.load;
    for (const Json& f : fasteningsOf(margins, one["case"]))
        result.left.add(f["point_mm"], f["force_N"], about);
    if (!one["bed"].is_null()) {
        const Json at = {one["bed"]["at_x_mm"], one["bed"]["at_y_mm"], one["keel_axis_z_mm"]};
        result.left.add(at, {0.0, 0.0, one["bed"]["resultant_N"]}, about, -1);
    }
    return result;
}

class Equilibrium : public ::testing::Test {
  protected:
    void SetUp() override { putDemo(folder, "p.fayline"); }
    Json margins() { return doneJson(folder, {"margins", "p.fayline", "--json"}); }
    void decide(const std::string& what) { done(folder, {"decide", "p.fayline", what}); }

    void expectBalance() {
        const Json json = margins();
        for (const Json& one : json["cases"]) {
            const Left on = leftOn(json, one);
            const double size_N = on.load.force_N();
            EXPECT_LE(on.left.force_N(), nearly * size_N) << one["case"];
            // A metre of arm where the load itself turns nothing.
            EXPECT_LE(on.left.moment_Nm(), nearly * std::max(on.load.moment_Nm(), size_N))
                << one["case"];
            EXPECT_LT(num(one["residual"]["relative"]), 1e-12) << one["case"];
            for (std::size_t i = 0; i < 3; ++i) {
                EXPECT_NEAR(num(one["total"]["moment_Nm"][i]), on.load.of[3 + i], nearly * size_N)
                    << one["case"];
            }
        }
    }

    Folder folder;
};

}  // namespace

TEST_F(Equilibrium, LoadBoltsAndBedBalanceInEveryCase) {
    expectBalance();
}

TEST_F(Equilibrium, AlsoAfterEditsThatMakeTheBoltsUneven) {
    decide("K.2.diameter=1/2 in");
    decide("K.7.offset=-60 mm");
    decide("case.knockdown_port.factor=1.7");
    decide("ballast.centre_below=300 mm");
    decide("bolts.count=7");
    expectBalance();
}

// The bolts' sideways forces act where each bolt crosses the joint, and the joint slopes: their
// heights turn the ballast too.
TEST_F(Equilibrium, RollBalancesWithTheHeightOfEachBolt) {
    const Json json = margins();
    for (const Json& one : json["cases"]) {
        const Left on = leftOn(json, one);
        EXPECT_LE(std::abs(on.left.of[3]),
                  nearly * std::max(std::abs(on.load.of[3]), on.load.force_N()))
            << one["case"];
    }
}

// A control: the sums above are not blind.
TEST_F(Equilibrium, OneForceLeftOutIsSeen) {
    Json json = margins();
    Json& cases = json["stations"][0]["cases"];
    for (Json& one : cases) one["fastenings"].erase(one["fastenings"].begin());
    const Left on = leftOn(json, caseNamed(json, "knockdown_starboard"));
    EXPECT_GT(on.left.force_N(), 0.01 * on.load.force_N());
    EXPECT_GT(on.left.moment_Nm(), 0.01 * on.load.moment_Nm());
}

TEST_F(Equilibrium, StationsAddUpToTheTotalOfEachCase) {
    const Json json = margins();
    for (const Json& one : json["cases"]) {
        double moment_Nm = 0, lateral_N = 0, vertical_N = 0, tributary = 0, rigid = 0;
        double rigidPlace_mm = 0;
        double aft = -1e9;
        for (const Json& station : json["stations"]) {
            EXPECT_GT(num(station["x_mm"]), aft) << station["frame"];
            aft = num(station["x_mm"]);
            for (const Json& at : station["cases"]) {
                if (at["case"] != one["case"]) continue;
                moment_Nm += num(at["keel_moment_Nm"]);
                lateral_N += num(at["keel_lateral_N"]);
                vertical_N += num(at["keel_vertical_N"]);
                tributary += num(at["share"]["tributary"]);
                rigid += num(at["share"]["rigid"]);
                rigidPlace_mm += num(at["share"]["rigid"]) * num(station["x_mm"]);
            }
        }
        const Json& total = one["total"];
        const double size_N = std::hypot(num(total["force_N"][1]), num(total["force_N"][2]));
        EXPECT_NEAR(lateral_N, num(total["force_N"][1]), nearly * size_N) << one["case"];
        EXPECT_NEAR(vertical_N, num(total["force_N"][2]), nearly * size_N) << one["case"];
        EXPECT_NEAR(moment_Nm, num(total["moment_Nm"][0]),
                    nearly * std::abs(num(total["moment_Nm"][0])))
            << one["case"];
        EXPECT_NEAR(tributary, 1, nearly) << one["case"];
        EXPECT_NEAR(rigid, 1, nearly) << one["case"];
        // A stiff ballast neither pitches nor yaws: its shares stand together under its centre.
        EXPECT_NEAR(rigidPlace_mm, num(caseNamed(json, "knockdown_port")["total"]["at_mm"][0]),
                    nearly * rigidPlace_mm)
            << one["case"];
    }
}

TEST_F(Equilibrium, TheLoadsAreTheWeightsDecided) {
    const Json json = margins();
    const Json hull = doneJson(folder, {"hull", "p.fayline", "--json"});
    const double ballast_N = num(hull["ballast"]["mass_kg"]) * gravity;
    const double rest_N =
        (num(hull["stated_displacement_kg"]) - num(hull["ballast"]["mass_kg"])) * gravity;
    EXPECT_NEAR(ballast_N, 2900 * gravity, 1e-6);
    for (const double side : {1.0, -1.0}) {
        const Json& one = caseNamed(json, side > 0 ? "knockdown_starboard" : "knockdown_port");
        const Json& total = one["total"];
        EXPECT_NEAR(num(total["force_N"][1]), side * ballast_N, nearly * ballast_N);
        const double arm_m = (num(one["keel_axis_z_mm"]) - num(total["at_mm"][2])) / 1000;
        EXPECT_GT(arm_m, 0);
        EXPECT_NEAR(num(total["moment_Nm"][0]), side * ballast_N * arm_m,
                    nearly * ballast_N * arm_m);
        // Lying on one side, the bed presses on the lee half, and contact ends on this side of it.
        EXPECT_GT(side * num(one["bed"]["at_y_mm"]), side * num(one["bed"]["contact_from_y_mm"]));
        EXPECT_GT(side * num(one["bed"]["at_y_mm"]), 0);
    }
    EXPECT_NEAR(num(caseNamed(json, "grounding_up")["total"]["force_N"][2]), rest_N,
                nearly * rest_N);
}

TEST_F(Equilibrium, ASectionThatStaysPlaneAndBoltsThatDoNotPush) {
    const Json json = margins();
    std::map<std::string, double> grip_mm, diameter_mm;
    const Json holes = doneJson(folder, {"holes", "p.fayline", "--json"});
    for (const Json& hole : holes["holes"]) {
        grip_mm[hole["id"]] = num(hole["grip_mm"]);
        diameter_mm[hole["id"]] = num(hole["diameter_mm"]);
    }
    for (const double side : {1.0, -1.0}) {
        const std::string name = side > 0 ? "knockdown_starboard" : "knockdown_port";
        // Stretch of the bolts in one row, from forward: a straight line where they pull, and
        // nothing where it would be negative.
        std::map<double, std::vector<std::array<double, 2>>> rows;
        double most = 0;
        for (const Json& f : fasteningsOf(json, name)) {
            const std::string id = f["id"];
            EXPECT_GE(num(f["axial_N"]), 0) << id;
            const double area_mm2 = std::numbers::pi / 4 * diameter_mm.at(id) * diameter_mm.at(id);
            const double stretch = num(f["axial_N"]) * grip_mm.at(id) / area_mm2;
            most = std::max(most, stretch);
            if (stretch > 0)
                rows[num(f["point_mm"][1])].push_back({num(f["point_mm"][0]), stretch});
        }
        std::size_t compared = 0;
        for (const auto& [y_mm, row] : rows) {
            for (std::size_t i = 2; i < row.size(); ++i) {
                const double part = (row[i][0] - row[0][0]) / (row[1][0] - row[0][0]);
                EXPECT_NEAR(row[i][1], row[0][1] + part * (row[1][1] - row[0][1]), 1e-9 * most)
                    << name << " row at " << y_mm;
                ++compared;
            }
        }
        EXPECT_GE(compared, 2U);
    }
}

TEST_F(Equilibrium, OnABedOfOneBreadthThePressureIsATriangle) {
    constexpr double breadth_mm = 200, length_mm = 3100;
    // Two like bolts as far before as behind the middle, on a level joint: the ballast rolls alone.
    done(folder,
         {"decide", "p.fayline", "keel.sided=200 mm", "ballast.breadth_fore=210 mm",
          "ballast.breadth_middle=210 mm", "ballast.breadth_aft=210 mm", "ballast.from=3450 mm",
          "ballast.to=6550 mm", "keel.underside_fore=600 mm", "keel.underside_aft=600 mm",
          "ballast.depth_fore=500 mm", "ballast.depth_middle=500 mm", "ballast.depth_aft=500 mm",
          "ballast.centre_x=5000 mm", "bolts.through=between", "bolts.count=2", "bolts.offset=0 mm",
          "K.1.x=4200 mm", "K.2.x=5800 mm"});
    const Json json = margins();
    for (const double side : {1.0, -1.0}) {
        const Json& one = caseNamed(json, side > 0 ? "knockdown_starboard" : "knockdown_port");
        const Json& bed = one["bed"];
        const double from_mm = side * num(bed["contact_from_y_mm"]);
        const double deep_mm = breadth_mm / 2 - from_mm;
        EXPECT_GT(deep_mm, 0);
        EXPECT_LT(deep_mm, breadth_mm);
        EXPECT_NEAR(side * num(bed["at_y_mm"]), from_mm + 2.0 / 3 * deep_mm, 1e-6);
        const double force_N = 0.5 * num(bed["highest_MPa"]) * deep_mm * length_mm;
        EXPECT_NEAR(num(bed["resultant_N"]), force_N, 1e-9 * force_N);
    }
    expectBalance();
}

TEST_F(Equilibrium, ASymmetricKeelIsAsStrongToPortAsToStarboard) {
    decide("bolts.offset=0 mm");
    const Json json = margins();
    const auto port = fasteningsOf(json, "knockdown_port");
    const auto starboard = fasteningsOf(json, "knockdown_starboard");
    ASSERT_EQ(port.size(), starboard.size());
    ASSERT_FALSE(port.empty());
    for (std::size_t i = 0; i < port.size(); ++i) {
        EXPECT_EQ(port[i]["axial_N"], starboard[i]["axial_N"]) << port[i]["id"];
        EXPECT_EQ(num(port[i]["force_N"][1]), -num(starboard[i]["force_N"][1])) << port[i]["id"];
        EXPECT_GT(num(port[i]["axial_N"]), 0) << port[i]["id"];
    }
}
