#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "hull/hydrostatics.h"
#include "hull/structure.h"
#include "shapes.h"

namespace fayline {
namespace {

using namespace test;

struct Invented {
    const char* file;
    double displacement_kg;
    double length_m;
    KeelTimber keel;
    BallastShape ballast;
    double ballast_kg, ballastDensity_kg_m3, centreBelow_mm;
};

void PrintTo(const Invented& hull, std::ostream* out) {
    *out << hull.file;
}

Length mm(double v) {
    return millimetres(v);
}

const Invented hollin{
    "resources/demo/hollin-offsets.csv",
    7200.0,
    9.4,
    {mm(2350), mm(7450), mm(715), mm(510), mm(210), mm(150)},
    {mm(3400), mm(6600), mm(180), mm(210), mm(180), mm(120), mm(410), mm(570), mm(520)},
    2900.0,
    11100.0,
    240.0};
const Invented terrin{
    "tests/hulls/terrin-offsets.csv",
    3200.0,
    8.0,
    {mm(2600), mm(5900), mm(889), mm(889), mm(140), mm(110)},
    {inches(132), inches(198.9375), mm(110), mm(140), mm(110), mm(144), mm(790), mm(820), mm(850)},
    1350.0,
    7200.0,
    420.0};
const Invented pipit{
    "tests/hulls/pipit-offsets.csv",
    1150.0,
    6.2,
    {mm(1550), mm(5200), mm(335), mm(315), mm(95), mm(70)},
    {mm(2500), mm(4000), mm(85), mm(95), mm(85), mm(90), mm(300), mm(300), mm(300)},
    450.0,
    11100.0,
    150.0};

class InventedHulls : public testing::TestWithParam<Invented> {
  protected:
    Offsets offsets_ = [] {
        auto read = readOffsets(treeFile(GetParam().file), GetParam().file);
        if (!read) throw std::runtime_error(read.error().front().line());
        return *read;
    }();
    LoftedSurface surface_ = lofted(offsets_);
};

INSTANTIATE_TEST_SUITE_P(All, InventedHulls, testing::Values(hollin, terrin, pipit),
                         [](const auto& test) {
                             const std::string file = test.param.file;
                             const auto slash = file.rfind('/') + 1;
                             return file.substr(slash, file.find('-', slash) - slash);
                         });

TEST_P(InventedHulls, displacementByTrapezoidsOnTheRawOffsets) {
    const auto raw = trapezoids(offsets_, *offsets_.waterline);
    EXPECT_NEAR(raw.volume.si() * 1025.0, GetParam().displacement_kg,
                0.003 * GetParam().displacement_kg);
    const Length length = offsets_.stations.back().x - offsets_.stations.front().x;
    EXPECT_NEAR(length.si(), GetParam().length_m, 0.01);
}

TEST_P(InventedHulls, loftAgreesWithTheRawOffsets) {
    const auto raw = trapezoids(offsets_, *offsets_.waterline);
    const auto h = hydrostatics(surface_, *offsets_.waterline, seaWater);
    ASSERT_TRUE(h);
    EXPECT_NEAR(h->volume / raw.volume, 1.0, 0.01);
    EXPECT_GT(h->volume, raw.volume) << "chords and trapezoids cut off what is convex";
    EXPECT_NEAR(h->centre.x.si(), raw.centreX.si(), 0.002 * GetParam().length_m);
}

TEST_P(InventedHulls, ballastIsAsDescribed) {
    const auto& p = GetParam();
    ASSERT_TRUE(checkBallast(p.ballast, p.keel).empty());
    const auto body =
        ballastBody(p.ballast, p.keel, kilogramsPerCubicMetre(p.ballastDensity_kg_m3));
    EXPECT_NEAR(body.mass.si(), p.ballast_kg, 0.005 * p.ballast_kg);
    EXPECT_NEAR(inMillimetres(body.centreBelow), p.centreBelow_mm, 3.0);
    const auto h = hydrostatics(surface_, *offsets_.waterline, seaWater);
    EXPECT_LT(std::abs((body.centre.x - h->centre.x).si()), 0.025 * p.length_m)
        << "ballast close under the centre of buoyancy, so that she can float level";
}

// The offsets run outside of the ballast: its lower face is the hull's lowest line there.
TEST_P(InventedHulls, ballastFitsInsideTheOffsets) {
    const auto& p = GetParam();
    double worst_mm = 0.0;
    for (int k = 1; k < 40; ++k) {
        const Length x = p.ballast.from + (p.ballast.to - p.ballast.from) * (k / 40.0);
        const auto ballast = ballastSectionAt(p.ballast, p.keel, x);
        const Length bottom = ballast->topHeight - ballast->depth;
        worst_mm = std::max(worst_mm, std::abs(inMillimetres(bottom - surface_.lowestAt(x))));
        const auto half = surface_.sectionAt(x).halfBreadthAt(ballast->topHeight - mm(1));
        ASSERT_TRUE(half);
        EXPECT_NEAR(inMillimetres(*half), inMillimetres(ballast->topBreadth) / 2.0, 12.0)
            << inMillimetres(x) << ": the offsets have no point just at the joint";
    }
    EXPECT_LT(worst_mm, 25.0);
}

// Between stations every figure stays between, or close to, what the stations around it have.
TEST_P(InventedHulls, nothingRingsBetweenStations) {
    const auto& stations = surface_.stations();
    const Length w = *offsets_.waterline;
    for (std::size_t bay = 0; bay < surface_.bays(); ++bay) {
        Area low = squareMetres(1e9), high;
        for (std::size_t s = bay == 0 ? 0 : bay - 1; s < std::min(bay + 3, stations.size()); ++s) {
            const Area area = surface_.sectionAt(stations[s].x).areaBelow(w);
            low = min(low, area);
            high = max(high, area);
        }
        const Area slack = 0.02 * high;
        const Section fore = surface_.sectionIn(bay, 0.0), aft = surface_.sectionIn(bay, 1.0);
        for (int k = 1; k < 8; ++k) {
            const Section section = surface_.sectionIn(bay, k / 8.0);
            EXPECT_GE(section.areaBelow(w), low - slack) << stations[bay].id;
            EXPECT_LE(section.areaBelow(w), high + slack) << stations[bay].id;
            EXPECT_GE(section.lowest(), min(fore.lowest(), aft.lowest()) - mm(3));
            EXPECT_LE(section.lowest(), max(fore.lowest(), aft.lowest()) + mm(3));
        }
    }
}

double totalTurn_degrees(const Section& section) {
    double sum = 0.0, before = 0.0;
    bool first = true;
    for (std::size_t i = 1; i < section.points.size(); ++i) {
        const double dy = (section.points[i].y - section.points[i - 1].y).si();
        const double dz = (section.points[i].z - section.points[i - 1].z).si();
        if (std::hypot(dy, dz) < 1e-6) continue;
        const double heading = std::atan2(dz, dy);
        if (!first) sum += std::abs(std::remainder(heading - before, 2.0 * std::numbers::pi));
        before = heading;
        first = false;
    }
    return sum * 180.0 / std::numbers::pi;
}

// A section between two stations bends hardly more, in all, than the more bent of the two: it has
// no waves and no kinks of its own. 10 degrees are a ripple of a millimetre beside the stem;
// strands that cross or run askew bring 20 to 400.
TEST_P(InventedHulls, sectionsBetweenStationsHaveNoWavesOfTheirOwn) {
    for (std::size_t bay = 0; bay < surface_.bays(); ++bay) {
        const double most = std::max(totalTurn_degrees(surface_.sectionIn(bay, 0.0)),
                                     totalTurn_degrees(surface_.sectionIn(bay, 1.0)));
        for (int k = 1; k < 16; ++k) {
            EXPECT_LT(totalTurn_degrees(surface_.sectionIn(bay, k / 16.0)), most + 10.0)
                << "bay " << bay << " " << k;
        }
    }
}

/// Second differences along one waterline of the raw offsets, over runs of neighbouring stations
/// where the plank, not the keel's side, is at that height.
std::vector<std::vector<double>> secondDifferences_mm(const Offsets& offsets, double height_mm) {
    std::vector<std::vector<double>> runs;
    std::vector<double> run;
    const auto close = [&] {
        std::vector<double> second;
        for (std::size_t i = 1; i + 1 < run.size(); ++i) {
            second.push_back(run[i - 1] - 2.0 * run[i] + run[i + 1]);
        }
        if (second.size() >= 6) runs.push_back(second);
        run.clear();
    };
    for (const auto& s : offsets.stations) {
        bool found = false;
        for (std::size_t p = 1; p + 1 < s.points.size(); ++p) {
            if (std::abs(inMillimetres(s.points[p].height) - height_mm) > 0.1) continue;
            if (inMillimetres(s.points[p].halfBreadth) < 130.0) continue;
            run.push_back(inMillimetres(s.points[p].halfBreadth));
            found = true;
        }
        if (!found) close();
    }
    close();
    return runs;
}

int unfairPlaces(const Offsets& offsets, int* checked) {
    int unfair = 0;
    for (const double height_mm : {850.0, 1000.0, 1150.0, 1300.0, 1480.0, 1750.0, 2000.0, 2250.0}) {
        for (const auto& second : secondDifferences_mm(offsets, height_mm)) {
            for (std::size_t i = 0; i < second.size(); ++i) {
                ++*checked;
                if (second[i] > 0.0) ++unfair;
                if (i == 0 || i + 1 == second.size()) continue;
                const double beside = 0.5 * (second[i - 1] + second[i + 1]);
                const double most = std::max(std::abs(second[i - 1]), std::abs(second[i + 1]));
                if (std::abs(second[i] - beside) > 5.0 + 0.35 * most) ++unfair;
            }
        }
    }
    return unfair;
}

// Along every waterline the second differences have one sign (no hollow, no bump) and change
// gently; a point moved by 8 mm is found.
TEST(Hollin, offsetsAreFair) {
    auto offsets = *readOffsets(treeFile(hollin.file), "hollin");
    int checked = 0;
    EXPECT_EQ(unfairPlaces(offsets, &checked), 0);
    EXPECT_GT(checked, 80);
    for (auto& p : offsets.stations[9].points) {
        if (p.height == mm(1150)) p.halfBreadth += mm(8);
    }
    EXPECT_GT(unfairPlaces(offsets, &checked), 0);
}

TEST(Hollin, isAWholesomeShape) {
    const auto offsets = *readOffsets(treeFile(hollin.file), "hollin");
    const auto surface = lofted(offsets);
    Length beam, lowest = metres(1);
    for (const auto& p : surface.sheerLine()) beam = max(beam, 2.0 * p.y);
    for (const auto& p : surface.profileLine()) lowest = min(lowest, p.z);
    EXPECT_NEAR(beam.si(), 2.9, 0.05);
    EXPECT_NEAR((*offsets.waterline - lowest).si(), 1.45, 0.05);
    EXPECT_GE(offsets.stations.size(), 17U);
    const auto h = hydrostatics(surface, *offsets.waterline, seaWater);
    const Volume block = h->wettedLength * beam * (*offsets.waterline - lowest);
    EXPECT_GT(h->volume / block, 0.15);
    EXPECT_LT(h->volume / block, 0.25);
    // The keel timber lies inside: no wider than the hull where the ballast hangs under it.
    for (double x = 3.4; x <= 6.6; x += 0.2) {
        const auto top = keelTopAt(hollin.keel, metres(x));
        EXPECT_GE(*surface.sectionAt(metres(x)).halfBreadthAt(*top), 0.5 * hollin.keel.sided) << x;
    }
}

// Frames at 230 mm room and space: each gets a sound section, its figures between its neighbours'.
TEST(Hollin, framesAreServed) {
    const auto offsets = *readOffsets(treeFile(hollin.file), "hollin");
    const auto surface = lofted(offsets);
    const auto frames = setOutFrames({mm(900), mm(230), 35, mm(44), mm(60)});
    EXPECT_TRUE(checkFrames(frames, surface).empty());
    for (const auto& frame : frames) {
        const auto figures = sectionFigures(surface, frame.id, frame.x, *offsets.waterline);
        EXPECT_GT(figures.girth, figures.wettedGirth);
        EXPECT_GT(figures.wettedGirth.si(), 0.0) << frame.id;
        EXPECT_GT(figures.area.si(), 0.0) << frame.id;
    }
}

}  // namespace
}  // namespace fayline
