#include "hull/hydrostatics.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <utility>

#include "limits_words.h"
#include "quantity/display.h"

namespace fayline {
namespace {

using FirstMoment = Quantity<0, 4, 0>;

using detail::inWords;

constexpr int panelsPerBay = 4;
constexpr int stripsPerPanel = 4;

/// Gauss and Legendre's five places and weights on 0 to 1 (Abramowitz and Stegun, table 25.4).
struct Gauss {
    double at;
    double weight;
};
constexpr std::array<Gauss, 5> gauss{{{0.046910077030668, 0.118463442528095},
                                      {0.230765344947158, 0.239314335249683},
                                      {0.5, 0.284444444444444},
                                      {0.769234655052842, 0.239314335249683},
                                      {0.953089922969332, 0.118463442528095}}};

struct Panel {
    std::size_t bay;
    double from, to;
};

/// Cuts every bay into panels, and where the lowest points cross the waterline there too, so that
/// no panel is wet in part of its length only.
std::vector<Panel> panelsOf(const LoftedSurface& surface, Length waterline) {
    std::vector<Panel> panels;
    for (std::size_t bay = 0; bay < surface.bays(); ++bay) {
        const auto wetAt = [&](double fraction) {
            return surface.sectionIn(bay, fraction).lowest() < waterline;
        };
        for (int k = 0; k < panelsPerBay; ++k) {
            const double from = static_cast<double>(k) / panelsPerBay;
            const double to = static_cast<double>(k + 1) / panelsPerBay;
            const bool wetFrom = wetAt(from);
            if (wetFrom == wetAt(to)) {
                panels.push_back({bay, from, to});
                continue;
            }
            double low = from;
            double high = to;
            for (int step = 0; step < 50; ++step) {
                const double middle = 0.5 * (low + high);
                (wetAt(middle) == wetFrom ? low : high) = middle;
            }
            panels.push_back({bay, from, 0.5 * (low + high)});
            panels.push_back({bay, 0.5 * (low + high), to});
        }
    }
    return panels;
}

struct Corner3 {
    double x_m, y_m, z_m;
};

double triangleArea_m2(const Corner3& a, const Corner3& b, const Corner3& c) {
    const double ux = b.x_m - a.x_m, uy = b.y_m - a.y_m, uz = b.z_m - a.z_m;
    const double vx = c.x_m - a.x_m, vy = c.y_m - a.y_m, vz = c.z_m - a.z_m;
    return 0.5 * std::hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
}

/// The part of a triangle at or below a height.
double wetTriangle_m2(const std::array<Corner3, 3>& corners, double z_m) {
    std::array<Corner3, 4> wet{};
    std::size_t count = 0;
    for (std::size_t i = 0; i < 3; ++i) {
        const Corner3& a = corners[i];
        const Corner3& b = corners[(i + 1) % 3];
        if (a.z_m <= z_m) wet[count++] = a;
        if ((a.z_m <= z_m) != (b.z_m <= z_m)) {
            const double t = (z_m - a.z_m) / (b.z_m - a.z_m);
            wet[count++] = {a.x_m + t * (b.x_m - a.x_m), a.y_m + t * (b.y_m - a.y_m), z_m};
        }
    }
    double area_m2 = 0.0;
    for (std::size_t i = 2; i < count; ++i) area_m2 += triangleArea_m2(wet[0], wet[i - 1], wet[i]);
    return area_m2;
}

Corner3 cornerOf(const Section& section, std::size_t i) {
    return {section.x.si(), section.points[i].y.si(), section.points[i].z.si()};
}

/// One side's skin between two sections of one bay, below the waterline. Each four-sided patch is
/// the mean of its two ways of being cut into triangles.
Area wetSkin(const Section& fore, const Section& aft, Length waterline) {
    double area_m2 = 0.0;
    for (std::size_t i = 1; i < fore.points.size(); ++i) {
        const Corner3 a = cornerOf(fore, i - 1), b = cornerOf(fore, i);
        const Corner3 c = cornerOf(aft, i), d = cornerOf(aft, i - 1);
        for (const auto& triangle :
             {std::array{a, b, c}, std::array{a, c, d}, std::array{a, b, d}, std::array{b, c, d}}) {
            area_m2 += 0.5 * wetTriangle_m2(triangle, waterline.si());
        }
    }
    return squareMetres(area_m2);
}

struct Sums {
    Volume volume;
    FirstMoment volumeX, volumeZ;
    Area waterplane;
    Volume waterplaneX;
    Area skin;
    std::optional<Length> foremost, aftmost;
};

void addPanel(Sums& sums, const LoftedSurface& surface, const Panel& panel, Length waterline) {
    const double width = panel.to - panel.from;
    const Length fore = surface.sectionIn(panel.bay, panel.from).x;
    const Length aft = surface.sectionIn(panel.bay, panel.to).x;
    const Section middle = surface.sectionIn(panel.bay, panel.from + 0.5 * width);
    if (middle.lowest() >= waterline) return;
    if (!sums.foremost) sums.foremost = fore;
    sums.aftmost = aft;
    for (const auto& place : gauss) {
        const Section section = surface.sectionIn(panel.bay, panel.from + width * place.at);
        const Length slice = (aft - fore) * place.weight;
        const Area area = section.areaBelow(waterline);
        sums.volume += area * slice;
        sums.volumeX += area * slice * section.x;
        if (const auto z = section.centreHeightBelow(waterline)) sums.volumeZ += area * slice * *z;
        const Length breadth = 2.0 * section.waterplaneHalfBreadth(waterline);
        sums.waterplane += breadth * slice;
        sums.waterplaneX += breadth * slice * section.x;
    }
    Section before = surface.sectionIn(panel.bay, panel.from);
    for (int k = 1; k <= stripsPerPanel; ++k) {
        Section next = surface.sectionIn(panel.bay, panel.from + width * k / stripsPerPanel);
        sums.skin += 2.0 * wetSkin(before, next, waterline);
        before = std::move(next);
    }
}

Problems checkFloating(const LoftedSurface& surface, Length waterline, Density water) {
    Problems problems;
    Length low = surface.sectionIn(0, 0.0).lowest();
    Length high = surface.sectionIn(0, 0.0).top();
    for (std::size_t bay = 0; bay < surface.bays(); ++bay) {
        const Section section = surface.sectionIn(bay, 1.0);
        low = min(low, section.lowest());
        high = min(high, section.top());
    }
    if (!(waterline > low && waterline <= high)) {
        problems.push_back({"hull.waterline", "waterline", "waterline is " + inWords(waterline),
                            "above " + inWords(low) + " (the lowest point), up to " +
                                inWords(high) + " (the lowest station's top)"});
    }
    if (!(water >= kilogramsPerCubicMetre(900.0) && water <= kilogramsPerCubicMetre(1100.0))) {
        problems.push_back({"hull.water_density", "water density",
                            "water density is " + displayDensity(water, UnitSystem::millimetres, 6),
                            "900 kg/m³ to 1100 kg/m³"});
    }
    return problems;
}

}  // namespace

Result<Hydrostatics> hydrostatics(const LoftedSurface& surface, Length waterline, Density water) {
    if (auto problems = checkFloating(surface, waterline, water); !problems.empty()) {
        return tl::unexpected(std::move(problems.front()));
    }
    Sums sums;
    for (const auto& panel : panelsOf(surface, waterline)) {
        addPanel(sums, surface, panel, waterline);
    }
    if (!(sums.volume.si() > 0.0)) {
        return tl::unexpected(Problem{"hull.no_volume", "waterline",
                                      "the hull has no breadth below " + inWords(waterline),
                                      "offsets with half-breadths above 0 mm below the waterline"});
    }
    for (const std::size_t end : {std::size_t{0}, surface.bays()}) {
        const Section flat =
            end == 0 ? surface.sectionIn(0, 0.0) : surface.sectionIn(surface.bays() - 1, 1.0);
        sums.skin += flat.areaBelow(waterline);
    }
    Hydrostatics result;
    result.waterline = waterline;
    result.water = water;
    result.volume = sums.volume;
    result.displacement = sums.volume * water;
    result.centre = {sums.volumeX / sums.volume, Length{}, sums.volumeZ / sums.volume};
    result.waterplaneArea = sums.waterplane;
    result.waterplaneCentre = {sums.waterplaneX / sums.waterplane, Length{}, waterline};
    result.wettedArea = sums.skin;
    result.wettedLength = *sums.aftmost - *sums.foremost;
    return result;
}

SectionFigures sectionFigures(const LoftedSurface& surface, std::string id, Length x,
                              Length waterline) {
    const Section section = surface.sectionAt(x);
    return {std::move(id), section.x, section.areaBelow(waterline), section.girth(),
            section.wettedGirth(waterline)};
}

std::vector<SectionFigures> stationFigures(const LoftedSurface& surface, Length waterline) {
    std::vector<SectionFigures> figures;
    for (const auto& station : surface.stations()) {
        figures.push_back(sectionFigures(surface, station.id, station.x, waterline));
    }
    return figures;
}

}  // namespace fayline
