#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "hull/hydrostatics.h"
#include "shapes.h"

namespace fayline {
namespace {

using namespace test;

/// Ugly but lawful: stations of unlike shape, unevenly spaced, with flats, steps and knuckles.
Offsets uglyHull(std::mt19937& random) {
    const auto pick = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    Offsets offsets;
    double x_m = pick(-5, 5);
    const int count = 2 + static_cast<int>(random() % 12);
    for (int s = 0; s < count; ++s) {
        std::vector<SectionPoint> points;
        double z_m = pick(-1, 0.5), y_m = random() % 2 == 0 ? 0.0 : pick(0, 0.3);
        points.push_back({metres(y_m), metres(z_m)});
        const int more = 1 + static_cast<int>(random() % 9);
        for (int p = 0; p < more; ++p) {
            if (random() % 4 == 0) y_m += pick(0.001, 0.4);  // a flat
            z_m += random() % 5 == 0 ? pick(0.0005, 0.01) : pick(0.05, 0.5);
            if (random() % 3 != 0) y_m = std::max(0.0, y_m + pick(-0.1, 0.4));
            points.push_back({metres(y_m), metres(z_m)});
        }
        points.push_back({metres(y_m + 0.1), metres(std::max(z_m, 1.5) + 0.2)});
        offsets.stations.push_back(station("S" + std::to_string(s), metres(x_m), points));
        x_m += random() % 5 == 0 ? pick(0.002, 0.02) : pick(0.2, 1.5);
    }
    return offsets;
}

// Whatever the shape: sections stay on their side of the centreline and inside the box of the
// stations around them, figures are finite, and the volume is like that of the raw offsets (no more
// can be asked where neighbouring stations have nothing in common).
TEST(RandomHulls, staySane) {
    std::mt19937 random(7);
    int lofts = 0, floated = 0;
    double sum = 0.0;
    for (int round = 0; round < 40; ++round) {
        const Offsets offsets = uglyHull(random);
        const auto surface = loft(offsets);
        ASSERT_TRUE(surface) << surface.error().front().line();
        ++lofts;
        for (std::size_t bay = 0; bay < surface->bays(); ++bay) {
            Length low = metres(100), high = metres(-100), out;
            const std::size_t from = bay == 0 ? 0 : bay - 1;
            for (std::size_t s = from; s < std::min(bay + 3, offsets.stations.size()); ++s) {
                for (const auto& p : offsets.stations[s].points) {
                    low = min(low, p.height);
                    high = max(high, p.height);
                    out = max(out, p.halfBreadth);
                }
            }
            for (const double fraction : {0.0, 0.13, 0.5, 0.77, 1.0}) {
                const Section section = surface->sectionIn(bay, fraction);
                EXPECT_EQ(section.points.front().y, Length{});
                for (const auto& p : section.points) {
                    ASSERT_TRUE(isFinite(p.y) && isFinite(p.z));
                    EXPECT_GE(p.y, Length{});
                    EXPECT_LE(p.y, 1.2 * out + metres(0.1)) << round << " " << bay;
                    EXPECT_GE(p.z, low - 0.15 * (high - low)) << round << " " << bay;
                    EXPECT_LE(p.z, high + 0.15 * (high - low)) << round << " " << bay;
                }
            }
        }
        const Length w = waterlineOf(offsets);
        const auto h = hydrostatics(*surface, w, seaWater);
        const auto raw = trapezoids(offsets, w);
        if (!(raw.volume.si() > 0.01)) continue;
        ASSERT_TRUE(h) << h.error().line();
        const double ratio = h->volume / raw.volume;
        EXPECT_GT(ratio, 0.5) << round;
        EXPECT_LT(ratio, 1.5) << round;
        sum += ratio;
        ++floated;
        EXPECT_TRUE(isFinite(h->wettedArea));
        EXPECT_GE(h->centre.x, surface->foreEnd());
        EXPECT_LE(h->centre.x, surface->afterEnd());
    }
    EXPECT_EQ(lofts, 40);
    EXPECT_GT(floated, 25);
    EXPECT_NEAR(sum / floated, 1.0, 0.03) << "neither fuller nor leaner on the whole";
}

}  // namespace
}  // namespace fayline
