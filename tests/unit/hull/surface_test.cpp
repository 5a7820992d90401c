#include "hull/surface.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "hull/hydrostatics.h"
#include "shapes.h"

namespace fayline {
namespace {

using namespace test;

SectionPoint mm(double y, double z) {
    return {millimetres(y), millimetres(z)};
}

struct Turn {
    double degrees = 0.0;
    SectionPoint at;
};
/// The bends of a section, sharpest first.
std::vector<Turn> turnsOf(const Section& section) {
    std::vector<Turn> turns;
    const auto& p = section.points;
    for (std::size_t i = 1; i + 1 < p.size(); ++i) {
        const double a = std::atan2((p[i].z - p[i - 1].z).si(), (p[i].y - p[i - 1].y).si());
        const double b = std::atan2((p[i + 1].z - p[i].z).si(), (p[i + 1].y - p[i].y).si());
        turns.push_back(
            {std::abs(std::remainder(b - a, 2.0 * std::numbers::pi)) * 180.0 / std::numbers::pi,
             p[i]});
    }
    std::sort(turns.begin(), turns.end(),
              [](const Turn& a, const Turn& b) { return a.degrees > b.degrees; });
    return turns;
}

double gapTo(const Section& section, SectionPoint target) {
    double least_mm = 1e9;
    for (std::size_t i = 1; i < section.points.size(); ++i) {
        const auto a = section.points[i - 1], b = section.points[i];
        const double ux = (b.y - a.y).si(), uz = (b.z - a.z).si();
        const double wx = (target.y - a.y).si(), wz = (target.z - a.z).si();
        const double length2 = ux * ux + uz * uz;
        const double t = length2 > 0.0 ? std::clamp((ux * wx + uz * wz) / length2, 0.0, 1.0) : 0.0;
        least_mm = std::min(least_mm, 1000.0 * std::hypot(wx - t * ux, wz - t * uz));
    }
    return least_mm;
}

TEST(Surface, passesThroughThePoints) {
    for (const char* file : {"resources/demo/hollin-offsets.csv", "tests/hulls/terrin-offsets.csv",
                             "tests/hulls/pipit-offsets.csv"}) {
        const auto offsets = readOffsets(treeFile(file), file);
        ASSERT_TRUE(offsets) << offsets.error().front().line();
        const auto surface = lofted(*offsets);
        double worst_mm = 0.0;
        for (const auto& station : offsets->stations) {
            const Section section = surface.sectionAt(station.x);
            for (const auto& p : station.points) {
                worst_mm = std::max(worst_mm, gapTo(section, {p.halfBreadth, p.height}));
            }
        }
        EXPECT_LT(worst_mm, 0.5) << file;
    }
}

TEST(Surface, cornersOfABoxStaySharp) {
    const auto surface = lofted(box(metres(5), metres(2), metres(1), 6));
    const auto turns = turnsOf(surface.sectionAt(metres(2.7)));
    EXPECT_NEAR(turns[0].degrees, 90.0, 1e-9);
    EXPECT_EQ(turns[0].at, (SectionPoint{metres(1), metres(0)}));
    EXPECT_NEAR(turns[1].degrees, 0.0, 1e-6);
}

// A chine that rises and goes out along the hull stays one sharp line between the stations.
TEST(Surface, chineStaysSharpBetweenStations) {
    const auto surface = lofted(hullOf(6, metres(5), [](double share) {
        return std::vector<SectionPoint>{mm(0, 0), mm(600 + 300 * share, 200 + 100 * share),
                                         mm(800 + 300 * share, 900)};
    }));
    for (const double x_m : {0.3, 1.5, 2.77, 4.9}) {
        const double share = x_m / 5.0;
        const Section section = surface.sectionAt(metres(x_m));
        const auto turns = turnsOf(section);
        EXPECT_GT(turns[0].degrees, 40.0);
        EXPECT_NEAR(inMillimetres(turns[0].at.y), 600 + 300 * share, 1e-6);
        EXPECT_NEAR(inMillimetres(turns[0].at.z), 200 + 100 * share, 1e-6);
        EXPECT_LT(turns[1].degrees, 1e-6) << "bottom and side are straight";
    }
}

// A chine of 25 degrees is sharp beside straight stretches; the same turn among its like is a
// curve.
TEST(Surface, smallTurnsAreCornersOnlyWhereTheyStandAlone) {
    const auto chine = lofted(hullOf(3, metres(2), [](double) {
        return std::vector<SectionPoint>{mm(0, 0),     mm(300, 85),   mm(600, 190),
                                         mm(820, 410), mm(1025, 640), mm(1215, 880)};
    }));
    const auto sharpest = turnsOf(chine.sectionAt(metres(0.7))).front();
    EXPECT_GT(sharpest.degrees, 20.0);
    EXPECT_NEAR(inMillimetres(sharpest.at.y), 600.0, 1e-6);
    const auto round = lofted(halfCylinder(metres(2), metres(1), 3, 4));
    EXPECT_LT(turnsOf(round.sectionAt(metres(0.7))).front().degrees, 4.0);
}

// Three stations close together where the hull still widens, then a long bay of even breadth: the
// slope of the short bays must not carry the long one outward.
TEST(Surface, unevenStationsDoNotOvershoot) {
    Offsets offsets;
    const std::vector<std::pair<double, double>> halfBreadths{
        {0.0, 200}, {0.5, 250}, {1.0, 300}, {15.0, 300}};
    for (const auto& [x_m, y_mm] : halfBreadths) {
        offsets.stations.push_back(
            station(std::to_string(x_m), metres(x_m), {mm(0, 0), mm(y_mm, 0), mm(y_mm, 500)}));
    }
    const auto surface = lofted(offsets);
    for (double x_m = 1.0; x_m < 15.0; x_m += 0.25) {
        const Length y = *surface.sectionAt(metres(x_m)).halfBreadthAt(millimetres(250));
        EXPECT_LE(inMillimetres(y), 300.0 + 100.0 / 8.0 + 1e-6) << x_m;
        EXPECT_GE(inMillimetres(y), 300.0 - 100.0 / 8.0 - 1e-6) << x_m;
    }
}

// The number of points changes from station to station; the knuckle is found all the same.
TEST(Surface, knuckleIsPairedWhateverThePointsBeside) {
    int count = 0;
    const auto surface = lofted(hullOf(6, metres(5), [&](double) {
        std::vector<SectionPoint> points{mm(0, 0)};
        for (int k = 1; k <= count % 3; ++k) points.push_back(mm(150 * k, 50 * k));
        points.push_back(mm(600, 200));
        points.push_back(mm(700, 900));
        ++count;
        return points;
    }));
    for (const double x_m : {0.4, 1.6, 3.3}) {
        const auto turns = turnsOf(surface.sectionAt(metres(x_m)));
        EXPECT_NEAR(inMillimetres(turns[0].at.y), 600.0, 1e-6);
        EXPECT_NEAR(inMillimetres(turns[0].at.z), 200.0, 1e-6);
        EXPECT_LT(turns[1].degrees, 1e-6);
    }
}

TEST(Surface, roundSectionsAreCurvedNotChords) {
    const auto surface = lofted(halfCylinder(metres(5), metres(1), 6, 6));
    const auto turns = turnsOf(surface.sectionAt(metres(2.7)));
    EXPECT_LT(turns[0].degrees, 3.0) << "the chords through the points turn by 15 degrees";
}

// A straight side running into a tight bilge must not belly out.
TEST(Surface, straightSideStaysStraightBesideABend) {
    const auto surface = lofted(hullOf(3, metres(2), [](double) {
        return std::vector<SectionPoint>{mm(0, 0),     mm(400, 20),  mm(800, 40),
                                         mm(880, 52),  mm(940, 90),  mm(975, 150),
                                         mm(985, 230), mm(995, 630), mm(1005, 1030)};
    }));
    const Section section = surface.sectionAt(metres(1));
    EXPECT_NEAR(inMillimetres(*section.halfBreadthAt(millimetres(430))), 990.0, 1.5);
    EXPECT_NEAR(inMillimetres(*section.halfBreadthAt(millimetres(30))), 600.0, 30.0);
}

TEST(Surface, sheerAndProfileLines) {
    const auto surface = lofted(hullOf(5, metres(4), [](double share) {
        return std::vector<SectionPoint>{mm(0, 100 * share), mm(500 * share, 400),
                                         mm(600 * share, 900 + 200 * share)};
    }));
    EXPECT_NEAR(inMillimetres(surface.lowestAt(metres(1.5))), 37.5, 1e-6);
    EXPECT_NEAR(inMillimetres(surface.sheerHeightAt(metres(1.5))), 975.0, 1e-6);
    const auto sheer = surface.sheerLine();
    const auto profile = surface.profileLine();
    ASSERT_EQ(sheer.size(), profile.size());
    EXPECT_EQ(sheer.front().x, metres(0));
    EXPECT_EQ(sheer.back(), (Point{metres(4), millimetres(600), millimetres(1100)}));
    EXPECT_EQ(profile.back(), (Point{metres(4), Length{}, millimetres(100)}));
    for (std::size_t i = 1; i < sheer.size(); ++i) EXPECT_GT(sheer[i].x, sheer[i - 1].x);
}

TEST(Surface, beyondAnEndTheEndAnswers) {
    const auto surface = lofted(box(metres(5), metres(2), metres(1), 6));
    EXPECT_FALSE(surface.spans(metres(5.1)));
    EXPECT_TRUE(surface.spans(metres(5)));
    EXPECT_EQ(surface.sectionAt(metres(7)).x, metres(5));
    EXPECT_EQ(surface.sectionAt(metres(-1)).x, metres(0));
}

Offsets boxWithFin() {
    Offsets offsets;
    const std::vector<SectionPoint> body{mm(1000, 0), mm(1000, 1000)};
    const std::vector<SectionPoint> fin{mm(100, -500), mm(100, 0), mm(1000, 0), mm(1000, 1000)};
    int id = 0;
    for (const double x_m : {0.0, 1.0, 2.0, 3.0, 3.01, 4.0, 5.0, 6.0, 6.01, 7.0, 8.0, 10.0}) {
        const bool finned = x_m > 3.005 && x_m < 6.005;
        offsets.stations.push_back(station(std::to_string(id++), metres(x_m), finned ? fin : body));
    }
    return offsets;
}

// 10 x 2 x 1 m of box and 2.99 x 0.2 x 0.5 m of fin, and what two bays of 10 mm may hold between.
TEST(Surface, finOnABoxDoesNotRing) {
    const auto offsets = boxWithFin();
    const auto surface = lofted(offsets);
    const auto h = hydrostatics(surface, metres(1), seaWater);
    ASSERT_TRUE(h);
    EXPECT_GT(h->volume.si(), 20.0 + 0.1 * 2.99);
    EXPECT_LT(h->volume.si(), 20.0 + 0.1 * 3.01);
    for (double x_m = 0.05; x_m < 10.0; x_m += 0.05) {
        const Section section = surface.sectionAt(metres(x_m));
        const bool finned = x_m > 3.0 && x_m < 6.01;
        if (std::abs(x_m - 3.005) < 0.006 || std::abs(x_m - 6.005) < 0.006) continue;
        EXPECT_NEAR(section.lowest().si(), finned ? -0.5 : 0.0, 1e-12) << x_m;
        EXPECT_NEAR(section.areaBelow(metres(1)).si(), finned ? 2.1 : 2.0, 1e-12) << x_m;
    }
    // In the step itself the body above goes through untouched.
    const Section step = surface.sectionAt(metres(3.005));
    EXPECT_NEAR(step.halfBreadthAt(metres(0.5))->si(), 1.0, 1e-12);
    EXPECT_NEAR(step.lowest().si(), -0.25, 1e-12);
}

// The same fin without doubled stations: its ends slope over one bay, and no bay beyond feels it.
TEST(Surface, finWithoutDoubledStationsStaysInItsBays) {
    auto offsets = boxWithFin();
    std::erase_if(offsets.stations, [](const OffsetStation& s) {
        return s.x == metres(3.01) || s.x == metres(6.01);
    });
    const auto surface = lofted(offsets);
    for (double x_m = 0.05; x_m < 10.0; x_m += 0.05) {
        const double area_m2 = surface.sectionAt(metres(x_m)).areaBelow(metres(1)).si();
        const bool clear = x_m < 3.0 || x_m > 7.0;
        EXPECT_LE(area_m2, (clear ? 2.0 : 2.1) + 1e-9) << x_m;
        EXPECT_GE(area_m2, 2.0 - 1e-9) << x_m;
    }
}

// A thin fin under a round body, ending between two stations a hand apart. The body has no corner
// to hold on to; above the fin it must go through the step all the same.
TEST(Surface, roundBodyGoesThroughAStep) {
    std::vector<SectionPoint> body;
    for (int k = 0; k <= 18; ++k) {
        const double angle = std::numbers::pi / 2.0 * k / 18.0;
        body.push_back({metres(std::sin(angle)), metres(1.0 - std::cos(angle))});
    }
    std::vector<SectionPoint> finned(body.begin() + 1, body.end());
    finned.insert(finned.begin(), {finned.front().y, metres(-0.7)});
    Offsets offsets;
    int id = 0;
    for (const double x_m : {0.0, 1.0, 2.0, 2.1, 3.0, 4.0}) {
        offsets.stations.push_back(
            station(std::to_string(id++), metres(x_m), x_m < 2.05 ? finned : body));
    }
    const auto surface = lofted(offsets);
    for (const double x_m : {2.02, 2.05, 2.08}) {
        const Section section = surface.sectionAt(metres(x_m));
        for (const double z_m : {0.05, 0.2, 0.5, 0.8}) {
            const double y_m = std::sqrt(1.0 - (1.0 - z_m) * (1.0 - z_m));
            EXPECT_NEAR(section.halfBreadthAt(metres(z_m))->si(), y_m, 2e-3) << x_m << " " << z_m;
        }
    }
}

// The same with the fin let into the body by a round fillet, so that no knuckle marks where it
// ends.
TEST(Surface, filletedFinShrinksIntoTheBody) {
    const auto circle = [](double degrees) {
        const double angle = degrees * std::numbers::pi / 180.0;
        return SectionPoint{metres(std::sin(angle)), metres(1.0 - std::cos(angle))};
    };
    std::vector<SectionPoint> body, finned{mm(50, -700), mm(50, -500), mm(50, -300)};
    for (int k = 0; k <= 18; ++k) body.push_back(circle(5.0 * k));
    for (int k = 0; k <= 5; ++k) {
        const double angle = k * std::numbers::pi / 12.0;
        finned.push_back(mm(200 - 150 * std::cos(angle), -150 + 150 * std::sin(angle)));
    }
    for (int k = 3; k <= 18; ++k) finned.push_back(circle(5.0 * k));
    Offsets offsets;
    int id = 0;
    for (const double x_m : {0.0, 1.0, 2.0, 2.1, 3.0, 4.0}) {
        offsets.stations.push_back(
            station(std::to_string(id++), metres(x_m), x_m < 2.05 ? finned : body));
    }
    const auto surface = lofted(offsets);
    const Section section = surface.sectionAt(metres(2.05));
    for (const double z_m : {0.1, 0.2, 0.4, 0.6, 0.8}) {
        const double y_m = std::sqrt(1.0 - (1.0 - z_m) * (1.0 - z_m));
        EXPECT_NEAR(section.halfBreadthAt(metres(z_m))->si(), y_m, 5e-3) << z_m;
    }
}

// One station has a second, weak hollow nearer to its neighbour's sharp one than its own sharp one
// is: the sharp ones belong together.
TEST(Surface, knucklesArePairedByTheirSharpness) {
    int count = 0;
    const auto surface = lofted(hullOf(2, metres(1), [&](double) {
        std::vector<SectionPoint> points{mm(100, 0)};
        if (count++ == 1) points.push_back(mm(100, 420));
        points.push_back(count == 1 ? mm(100, 420) : mm(120, 500));
        points.push_back(mm(700, count == 1 ? 720 : 800));
        points.push_back(mm(1300, count == 1 ? 1020 : 1100));
        return points;
    }));
    const auto turns = turnsOf(surface.sectionAt(metres(0.5)));
    EXPECT_NEAR(turns[0].degrees, 90.0, 1.0);
    EXPECT_GT(turns[1].degrees, 45.0);
    EXPECT_NEAR(inMillimetres(turns[1].at.z), 460.0, 1.0);
}

// The heel of a sternpost: level keel, then a straight post. Neither side may bend for the other.
TEST(Surface, profileKeepsItsKnuckle) {
    const auto surface = lofted(hullOf(11, metres(10), [](double share) {
        const double up_mm = std::max(0.0, 10.0 * share - 7.0) * 1200.0;
        return std::vector<SectionPoint>{mm(50, up_mm), mm(50, up_mm + 300), mm(600, up_mm + 600),
                                         mm(800, up_mm + 1200)};
    }));
    EXPECT_NEAR(inMillimetres(surface.lowestAt(metres(6.5))), 0.0, 1e-6);
    EXPECT_NEAR(inMillimetres(surface.lowestAt(metres(7.5))), 600.0, 1e-6);
    EXPECT_NEAR(inMillimetres(surface.lowestAt(metres(8.25))), 1500.0, 1e-6);
}

TEST(Surface, refusesWhatTheChecksRefuse) {
    auto offsets = box(metres(5), metres(2), metres(1), 6);
    offsets.stations[2].points[0].halfBreadth = millimetres(-1);
    const auto surface = loft(offsets);
    ASSERT_FALSE(surface);
    EXPECT_EQ(surface.error(), checkOffsets(offsets));
}

}  // namespace
}  // namespace fayline
