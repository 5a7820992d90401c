#include <gtest/gtest.h>

#include <cmath>
#include <functional>

#include "hull/hydrostatics.h"
#include "quantity/printing.h"
#include "shapes.h"

namespace fayline {
namespace {

using namespace test;

constexpr const char* hulls[] = {"resources/demo/hollin-offsets.csv",
                                 "tests/hulls/terrin-offsets.csv", "tests/hulls/pipit-offsets.csv"};

Offsets read(const char* file) {
    auto offsets = readOffsets(treeFile(file), file);
    if (!offsets) throw std::runtime_error(offsets.error().front().line());
    return *offsets;
}

Hydrostatics afloat(const Offsets& offsets) {
    return hydrostatics(lofted(offsets), waterlineOf(offsets), seaWater).value();
}

void expectClose(double value, double expected, const char* what, double tolerance = 1e-9) {
    EXPECT_NEAR(value, expected, tolerance * std::abs(expected)) << what;
}

TEST(Invariance, shiftedHull) {
    for (const char* file : hulls) {
        const auto a = afloat(read(file));
        const auto b = afloat(shifted(read(file), metres(-3.21), metres(7.65)));
        expectClose(b.volume.si(), a.volume.si(), file);
        expectClose(b.centre.x.si() + 3.21, a.centre.x.si(), file);
        expectClose(b.centre.z.si() - 7.65, a.centre.z.si(), file);
        expectClose(b.wettedArea.si(), a.wettedArea.si(), file);
        expectClose(b.waterplaneArea.si(), a.waterplaneArea.si(), file);
        expectClose(b.wettedLength.si(), a.wettedLength.si(), file);
    }
}

TEST(Invariance, hullSeenInAMirror) {
    for (const char* file : hulls) {
        const auto a = afloat(read(file));
        const auto b = afloat(reversed(read(file)));
        expectClose(b.volume.si(), a.volume.si(), file);
        expectClose(-b.centre.x.si(), a.centre.x.si(), file);
        expectClose(b.centre.z.si(), a.centre.z.si(), file);
        expectClose(b.wettedArea.si(), a.wettedArea.si(), file);
        expectClose(b.wettedLength.si(), a.wettedLength.si(), file);
    }
}

TEST(Invariance, scaledHull) {
    for (const char* file : hulls) {
        const auto a = afloat(read(file));
        for (const double k : {0.25, 3.0}) {
            const auto b = afloat(scaled(read(file), k));
            expectClose(b.volume.si(), a.volume.si() * k * k * k, file);
            expectClose(b.centre.z.si(), a.centre.z.si() * k, file);
            expectClose(b.wettedArea.si(), a.wettedArea.si() * k * k, file);
            expectClose(b.waterplaneArea.si(), a.waterplaneArea.si() * k * k, file);
        }
    }
}

// One hull in whole sixteenths of an inch, written in every unit a file may have.
std::string hullText(const std::string& unitName, LengthUnit unit) {
    const auto cell = [&](int sixteenths) {
        const std::string text = exactText(inches(sixteenths / 16.0), unit);
        return text.substr(0, text.find(' '));
    };
    std::string text =
        "# unit: " + unitName + "\n# waterline: " + cell(500) + "\nstation,x,half_breadth,height\n";
    for (int s = 0; s < 9; ++s) {
        for (int p = 0; p < 8; ++p) {
            const int out = (64 - (s - 4) * (s - 4) * 3) * (2 * p + 1) / 3;
            const int up = 97 * p + 11 * p * p + 5 * (s - 4) * (s - 4);
            text += "S" + std::to_string(s) + "," + cell(321 * s) + "," + cell(out) + "," +
                    cell(up) + "\n";
        }
    }
    return text;
}

TEST(Invariance, sameHullInEveryUnit) {
    const auto values = [](const std::string& text) {
        auto offsets = readOffsets(text, "hull.csv");
        if (!offsets) throw std::runtime_error(offsets.error().front().line());
        for (auto& s : offsets->stations) {
            s.xText.clear();
            for (auto& p : s.points) p.halfBreadthText = p.heightText = "";
        }
        offsets->waterlineText.clear();
        return *offsets;
    };
    const Offsets inMm = values(hullText("mm", LengthUnit::mm));
    const double volume_m3 = afloat(inMm).volume.si();
    EXPECT_GT(volume_m3, 0.1);
    const std::pair<const char*, LengthUnit> units[] = {
        {"in", LengthUnit::in},
        {"m", LengthUnit::m},
        {"cm", LengthUnit::cm},
        {"ft-in-8ths", LengthUnit::feetInchesEighths}};
    for (const auto& [name, unit] : units) {
        const Offsets other = values(hullText(name, unit));
        EXPECT_EQ(other, inMm) << name;
        EXPECT_EQ(afloat(other).volume.si(), volume_m3) << name;
    }
}

}  // namespace
}  // namespace fayline
