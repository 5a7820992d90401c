#include "hull/hydrostatics.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "shapes.h"

namespace fayline {
namespace {

using namespace test;

Hydrostatics afloat(const Offsets& offsets, Density water = seaWater) {
    const auto result = hydrostatics(lofted(offsets), waterlineOf(offsets), water);
    if (!result) throw std::runtime_error(result.error().line());
    return *result;
}

double relative(double value, double expected) {
    return std::abs(value / expected - 1.0);
}

TEST(Hydrostatics, boxIsExact) {
    for (const int stations : {2, 3, 4, 7}) {
        const auto h =
            afloat(box(metres(5), metres(2), metres(1), stations), kilogramsPerCubicMetre(1000));
        EXPECT_LT(relative(h.volume.si(), 10.0), 1e-9);
        EXPECT_LT(relative(h.displacement.si(), 10000.0), 1e-9);
        EXPECT_LT(relative(h.centre.x.si(), 2.5), 1e-9);
        EXPECT_LT(relative(h.centre.z.si(), 0.5), 1e-9);
        EXPECT_EQ(h.centre.y, Length{});
        EXPECT_LT(relative(h.waterplaneArea.si(), 10.0), 1e-9);
        EXPECT_LT(relative(h.waterplaneCentre.x.si(), 2.5), 1e-9);
        // Bottom, two sides, two flat ends.
        EXPECT_LT(relative(h.wettedArea.si(), 10.0 + 10.0 + 4.0), 1e-9);
        EXPECT_LT(relative(h.wettedLength.si(), 5.0), 1e-9);
    }
}

TEST(Hydrostatics, boxBelowHalfItsDepth) {
    auto offsets = box(metres(5), metres(2), metres(1), 6);
    offsets.waterline = metres(0.25);
    const auto h = afloat(offsets);
    EXPECT_LT(relative(h.volume.si(), 2.5), 1e-9);
    EXPECT_LT(relative(h.centre.z.si(), 0.125), 1e-9);
    EXPECT_LT(relative(h.wettedArea.si(), 10.0 + 2.5 + 1.0), 1e-9);
}

// A box narrowing evenly to an upright edge forward: half-breadth x / 4 over 4 m, depth 1 m.
TEST(Hydrostatics, wedgeIsExact) {
    for (const int stations : {2, 3, 5}) {
        const auto h = afloat(hullOf(stations, metres(4), [](double share) {
            return std::vector<SectionPoint>{{metres(share), metres(0)},
                                             {metres(share), metres(1)}};
        }));
        EXPECT_LT(relative(h.volume.si(), 4.0), 1e-9);
        EXPECT_LT(relative(h.centre.x.si(), 8.0 / 3.0), 1e-9);
        EXPECT_LT(relative(h.centre.z.si(), 0.5), 1e-9);
        EXPECT_LT(relative(h.waterplaneArea.si(), 4.0), 1e-9);
        EXPECT_LT(relative(h.wettedArea.si(), 4.0 + 2.0 * std::sqrt(17.0) + 2.0), 1e-9);
    }
}

// A punt: bottom rising in straight ramps of 1 in 2 at both ends, sides upright. The water meets
// the ramps between stations, so wetted length and volume are found only if the bays are cut there.
TEST(Hydrostatics, overhangsAreCutAtTheWater) {
    auto offsets = hullOf(9, metres(8), [](double share) {
        const double x_m = 8.0 * share;
        const double bottom_m = std::max({0.0, (2.0 - x_m) / 2.0, (x_m - 6.0) / 2.0});
        return std::vector<SectionPoint>{
            {metres(0), metres(bottom_m)}, {metres(1), metres(bottom_m)}, {metres(1), metres(1.5)}};
    });
    const double w = 0.437;
    offsets.waterline = metres(w);
    const auto h = afloat(offsets);
    EXPECT_LT(relative(h.wettedLength.si(), 4.0 + 4.0 * w), 1e-9);
    EXPECT_LT(relative(h.waterplaneArea.si(), 2.0 * (4.0 + 4.0 * w)), 1e-9);
    EXPECT_LT(relative(h.volume.si(), 2.0 * (4.0 * w + 2.0 * w * w)), 1e-9);
    EXPECT_LT(relative(h.wettedArea.si(),
                       2.0 * (4.0 + 2.0 * w * std::sqrt(5.0)) + 2.0 * (4.0 * w + 2.0 * w * w)),
              1e-9);
}

// What straight pieces between the section's points leave out of a circle about (0, axis), and what
// the points themselves lie off it.
struct ChordError {
    double area_m2 = 0.0;
    double radial_m = 0.0;
};
ChordError chordError(const Section& section, double radius_m, double axis_m) {
    ChordError error;
    double before = 0.0;
    for (const auto& p : section.points) {
        const double angle = std::atan2(p.y.si(), axis_m - p.z.si());
        const double turn = angle - before;
        error.area_m2 += radius_m * radius_m * (turn - std::sin(turn));
        error.radial_m =
            std::max(error.radial_m, std::abs(std::hypot(p.y.si(), axis_m - p.z.si()) - radius_m));
        before = angle;
    }
    return error;
}

TEST(Hydrostatics, halfCylinderWithinTheChordError) {
    for (const int chords : {4, 6, 8, 12, 24}) {
        const auto offsets = halfCylinder(metres(5), metres(1), 6, chords);
        const Section section = lofted(offsets).sectionAt(metres(2.2));
        const ChordError error = chordError(section, 1.0, 1.0);
        EXPECT_LT(error.radial_m, 2.5e-4) << chords;
        const double area_m2 = std::numbers::pi / 2.0;
        const double allowed = error.area_m2 + 2.0 * area_m2 * error.radial_m;
        EXPECT_LT(allowed, 1e-3);
        EXPECT_NEAR(section.areaBelow(metres(1)).si(), area_m2, allowed) << chords;
        EXPECT_NEAR(section.girth().si(), area_m2, allowed) << chords;
        EXPECT_NEAR(section.centreHeightBelow(metres(1))->si(),
                    1.0 - 4.0 / (3.0 * std::numbers::pi), allowed);
        const auto h = afloat(offsets);
        EXPECT_NEAR(h.volume.si(), 5.0 * area_m2, 5.0 * allowed) << chords;
        EXPECT_NEAR(h.wettedArea.si(), 5.0 * std::numbers::pi + std::numbers::pi, 12.0 * allowed);
    }
}

// Straight chords through the points would be far outside that tolerance: the curve earns its keep.
TEST(Hydrostatics, curvedSectionsBeatChordsThroughThePoints) {
    const auto offsets = halfCylinder(metres(5), metres(1), 6, 6);
    const double exact_m3 = 2.5 * std::numbers::pi;
    const double raw = std::abs(trapezoids(offsets, metres(1)).volume.si() - exact_m3);
    const double curved = std::abs(afloat(offsets).volume.si() - exact_m3);
    EXPECT_GT(raw, 0.08);
    EXPECT_LT(curved, raw / 50.0);
}

// Half of a frustum of a cone, radii 0.25 m and 1 m over 4 m, its axis at the waterline.
TEST(Hydrostatics, coneWithinTheChordError) {
    const double r0 = 0.25, r1 = 1.0, length = 4.0;
    for (const int stations : {2, 5}) {
        auto offsets = hullOf(stations, metres(length), [&](double share) {
            std::vector<SectionPoint> points;
            const double r = r0 + (r1 - r0) * share;
            for (int k = 0; k <= 12; ++k) {
                const double angle = std::numbers::pi / 2.0 * k / 12.0;
                points.push_back({metres(r * std::sin(angle)), metres(1.0 - r * std::cos(angle))});
            }
            return points;
        });
        const ChordError error = chordError(lofted(offsets).sectionAt(metres(length)), 1.0, 1.0);
        const double relativeError =
            (error.area_m2 + std::numbers::pi * error.radial_m) / (std::numbers::pi / 2.0);
        const auto h = afloat(offsets);
        const double volume = std::numbers::pi / 6.0 * length * (r0 * r0 + r0 * r1 + r1 * r1);
        EXPECT_LT(relative(h.volume.si(), volume), relativeError);
        const double slant = std::hypot(length, r1 - r0);
        EXPECT_LT(relative(h.wettedArea.si(), std::numbers::pi * 0.5 * (r0 + r1) * slant +
                                                  std::numbers::pi / 2.0 * (r0 * r0 + r1 * r1)),
                  relativeError);
        EXPECT_LT(relative(h.waterplaneArea.si(), length * (r0 + r1)), 1e-9);
    }
}

// Wigley's hull has closed forms: volume 4/9 L B T, water plane 2/3 L B, centre 3/8 T below the
// waterline (derived: the integrals of the two parabolas are 2/3 each, of z times the second 1/4).
struct WigleyError {
    double volume, waterplane, centre;
};
WigleyError wigleyError(int stations, int points) {
    const double l = 10.0, b = 1.0, t = 0.625;
    const auto h = afloat(wigley(metres(l), metres(b), metres(t), stations, points));
    EXPECT_NEAR(h.centre.x.si(), l / 2.0, 1e-9);
    EXPECT_NEAR(h.waterplaneCentre.x.si(), l / 2.0, 1e-9);
    EXPECT_NEAR(h.wettedLength.si(), l, 1e-9);
    return {relative(h.volume.si(), 4.0 / 9.0 * l * b * t),
            relative(h.waterplaneArea.si(), 2.0 / 3.0 * l * b),
            std::abs(h.centre.z.si() - t * 5.0 / 8.0) / t};
}

TEST(Hydrostatics, wigleyAndItsConvergence) {
    const auto e11 = wigleyError(11, 20);
    const auto e21 = wigleyError(21, 20);
    const auto e41 = wigleyError(41, 20);
    EXPECT_LT(e11.volume, 3e-4);
    EXPECT_LT(e21.volume, 4e-5);
    EXPECT_LT(e21.volume, e11.volume / 4.0) << "halving the spacing: better than second order";
    EXPECT_LT(e21.waterplane, e11.waterplane / 8.0);
    EXPECT_LT(e41.waterplane, e21.waterplane / 8.0);
    EXPECT_LT(e11.centre, 2e-5);
    EXPECT_LT(e21.centre, e11.centre);
}

TEST(Hydrostatics, wigleyWithStationsOffTheMiddle) {
    EXPECT_LT(wigleyError(10, 10).volume, 5e-4);
    EXPECT_LT(wigleyError(20, 10).volume, 6e-5);
}

TEST(Hydrostatics, wigleySkinAgainstTheIntegral) {
    const double l = 10.0, b = 1.0, t = 0.625;
    const int n = 300;
    double half_m2 = 0.0;
    for (int i = 0; i < n; ++i) {
        for (int k = 0; k < n; ++k) {
            const double u = 2.0 * (i + 0.5) / n - 1.0, v = (k + 0.5) / n;
            const double yx = b / 2.0 * (-2.0 * u) * (1.0 - v * v) * 2.0 / l;
            const double yz = b / 2.0 * (1.0 - u * u) * (-2.0 * v) / t;
            half_m2 += std::sqrt(1.0 + yx * yx + yz * yz) * (l / n) * (t / n);
        }
    }
    const auto h = afloat(wigley(metres(l), metres(b), metres(t), 21, 20));
    EXPECT_LT(relative(h.wettedArea.si(), 2.0 * half_m2), 1e-4);
}

// The same closed forms through files: 11 and 21 stations of Wigley's hull, a box half in the
// water, a half cylinder in inches.
TEST(Hydrostatics, closedFormsFromFiles) {
    const auto fromFile = [](const std::string& name) {
        const auto offsets = readOffsets(treeFile("tests/hulls/" + name), name);
        if (!offsets) throw std::runtime_error(offsets.error().front().line());
        return afloat(*offsets);
    };
    const double wigley_m3 = 4.0 / 9.0 * 10.0 * 1.0 * 0.625;
    const double e11 = relative(fromFile("wigley-11.csv").volume.si(), wigley_m3);
    const double e21 = relative(fromFile("wigley-21.csv").volume.si(), wigley_m3);
    EXPECT_LT(e11, 3e-4);
    EXPECT_LT(e21, e11 / 4.0);
    EXPECT_LT(relative(fromFile("box.csv").volume.si(), 5.0), 1e-9);
    const double inch = 0.0254;
    const double cylinder_m3 = std::numbers::pi / 2.0 * std::pow(40 * inch, 2) * 200 * inch;
    EXPECT_LT(relative(fromFile("half-cylinder.csv").volume.si(), cylinder_m3), 1e-4);
}

// Raising the water a little adds a slice as wide as the water plane.
TEST(Hydrostatics, waterplaneIsTheSlopeOfTheVolume) {
    const auto offsets = readOffsets(treeFile("resources/demo/hollin-offsets.csv"), "hollin");
    const auto surface = lofted(*offsets);
    const Length w = waterlineOf(*offsets), dz = millimetres(2);
    const auto low = hydrostatics(surface, w - dz, seaWater);
    const auto mid = hydrostatics(surface, w, seaWater);
    const auto high = hydrostatics(surface, w + dz, seaWater);
    EXPECT_LT(relative(((high->volume - low->volume) / (2.0 * dz)).si(), mid->waterplaneArea.si()),
              1e-4);
}

TEST(Hydrostatics, refusesWhatCannotFloat) {
    const auto surface = lofted(box(metres(5), metres(2), metres(1), 3));
    const auto above = hydrostatics(surface, metres(1.001), seaWater);
    ASSERT_FALSE(above);
    EXPECT_EQ(above.error().line(),
              "waterline: waterline is 1001 mm; above 0 mm (the lowest point), up to 1000 mm "
              "(the lowest station's top)");
    EXPECT_FALSE(hydrostatics(surface, metres(0), seaWater));
    EXPECT_FALSE(hydrostatics(surface, metres(std::nan("")), seaWater));
    const auto oil = hydrostatics(surface, metres(0.5), kilogramsPerCubicMetre(850));
    ASSERT_FALSE(oil);
    EXPECT_EQ(oil.error().line(),
              "water density: water density is 850 kg/m³; 900 kg/m³ to 1100 kg/m³");
    const auto plank = lofted(hullOf(3, metres(3), [](double) {
        return std::vector<SectionPoint>{{Length{}, metres(0)}, {Length{}, metres(1)}};
    }));
    const auto nothing = hydrostatics(plank, metres(0.5), seaWater);
    ASSERT_FALSE(nothing);
    EXPECT_EQ(nothing.error().code, "hull.no_volume");
}

TEST(Hydrostatics, figuresOfStationsAndFrames) {
    const auto offsets = box(metres(5), metres(2), metres(1), 6);
    const auto surface = lofted(offsets);
    const auto figures = stationFigures(surface, metres(0.25));
    ASSERT_EQ(figures.size(), 6U);
    EXPECT_EQ(figures[3].id, "3");
    for (const auto& f : figures) {
        EXPECT_LT(relative(f.area.si(), 0.5), 1e-9);
        EXPECT_LT(relative(f.girth.si(), 2.0), 1e-9);
        EXPECT_LT(relative(f.wettedGirth.si(), 1.25), 1e-9);
    }
    const auto frame = sectionFigures(surface, "F7", metres(1.61), metres(0.25));
    EXPECT_EQ(frame.id, "F7");
    EXPECT_EQ(frame.x, metres(1.61));
    EXPECT_LT(relative(frame.area.si(), 0.5), 1e-9);
}

}  // namespace
}  // namespace fayline
