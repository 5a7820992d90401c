#include <algorithm>
#include <stdexcept>

#include "joint/ec5_axial.h"
#include "joint/ec5_bearing.h"
#include "joint/ec5_lateral.h"
#include "joint/slip.h"
#include "joint/splitting.h"
#include "joint/thread_strip.h"
#include "joint/washer.h"
#include "joint_rows.h"

namespace fayline {
namespace {

double kilonewtons(Force force) {
    return inNewtons(force) / 1000.0;
}
double newtonMillimetres(Moment moment) {
    return inNewtonMetres(moment) * 1000.0;
}
double designShare(const Row& row) {
    return kMod(durationNamed(row.text("duration")).value(), Service::dry) /
           gammaM(KindOfLoad::variable);
}

CharacteristicDensity densityOf(const Row& row, const char* column = "density") {
    return {row.density(column)};
}

Ec5Lateral nailed(const Row& row, const Ec5Coefficients& c) {
    const Length d = row.length("diameter");
    const Ec5Dowel dowel{embedmentSmall(densityOf(row), d, LeadHole::none, c),
                         embedmentSmall(densityOf(row, "density2"), d, LeadHole::none, c),
                         row.length("t1"),
                         row.length("t2"),
                         d,
                         yieldMomentEc5(row.stress("ultimate"), d, DowelSection::round, c),
                         {}};
    return ec5SingleShear(dowel, {}, RopeLimits::roundNail, c);
}

double washerPlate_N(const Row& row) {
    WasherInput washer;
    washer.bolt = row.length("diameter");
    washer.hole = washer.bolt + millimetres(1);
    washer.diameter = row.length("t2");
    washer.thickness = millimetres(12);
    washer.ec5Characteristic = row.stress("ultimate");
    return inNewtons(washerEc5(washer)->reference);
}

double declared_kN(const Row& row, const Ec5Coefficients& c) {
    return kilonewtons(screwWithdrawalDeclared(megapascals(10), kilogramsPerCubicMetre(350),
                                               densityOf(row), row.length("diameter"),
                                               row.length("t2"), Angle::degrees(90), c));
}

}  // namespace

double ec5Figure(const Row& row, const Coefficients& coefficients) {
    const Ec5Coefficients& c = coefficients.ec5;
    const std::string what = row.text("what");
    if (what == "undrilled" || what == "drilled") {
        const LeadHole hole = what == "drilled" ? LeadHole::drilled : LeadHole::none;
        return inMegapascals(embedmentSmall(densityOf(row), row.length("diameter"), hole, c));
    }
    if (what == "across") {
        const Length d = row.length("diameter");
        const auto at = [&](double degrees) {
            return embedmentLarge(densityOf(row), d, Angle::degrees(degrees), WoodFamily::softwood,
                                  c);
        };
        return at(0) / at(90);
    }
    if (what == "moment" || what == "square") {
        const DowelSection section = what == "square" ? DowelSection::square : DowelSection::round;
        return newtonMillimetres(
            yieldMomentEc5(row.stress("ultimate"), row.length("diameter"), section, c));
    }
    if (what == "splitting") {
        // h_e/(1 − h_e/h) is 1 mm for h = 2 mm and h_e = 2/3 mm.
        return inNewtons(splittingEc5({millimetres(1), millimetres(2), millimetres(2.0 / 3.0)}, c));
    }
    if (what == "slip") {
        const Density density = row.density("density");
        return inNewtonsPerMillimetre(slipModulusEc5(density, density, row.length("diameter"), c));
    }
    if (what == "effective") return inMillimetres(effectiveThread(row.length("diameter"), c));
    if (what == "washer") return washerPlate_N(row);
    if (what == "design") return 6.4 * row.number("n") * designShare(row);
    if (what == "declared") return declared_kN(row, c);
    if (what == "declared_row") {
        return declared_kN(row, c) * effectiveAxial(static_cast<int>(row.number("n")), c) *
               designShare(row);
    }
    const Ec5Lateral nail = nailed(row, c);
    if (what == "row") {
        const int count = static_cast<int>(row.number("n"));
        return kilonewtons(nail.onePlane) * effectiveNails(count, 50.0 / 3.1) * designShare(row);
    }
    for (const ModeLoad& mode : nail.modes) {
        if (what == "mode_" + std::string(mode.name)) return kilonewtons(mode.load);
    }
    throw std::runtime_error(row.where() + ": nothing called " + what);
}

double ec5Axial(const Row& row, const Coefficients& coefficients) {
    const Ec5Coefficients& c = coefficients.ec5;
    if (row.text("what") == "screw") {
        return inNewtons(screwWithdrawalEc5(densityOf(row), row.length("diameter"),
                                            row.length("length"), Angle::degrees(90), c));
    }
    if (row.text("what") == "head")
        return inNewtons(pullThroughNail(densityOf(row), row.length("diameter"), c));
    if (row.text("what") == "hardwood") {
        const auto at = [&](double degrees) {
            return embedmentLarge(densityOf(row), row.length("diameter"), Angle::degrees(degrees),
                                  WoodFamily::hardwood, c);
        };
        return at(0) / at(90);
    }
    // "4 bolts of …"
    const int count = std::stoi(row.text("item"));
    return effectiveBolts(count, row.length("length") / row.length("diameter"), {}, c);
}

/// One diameter of the thread engaged.
double stripArea_mm2(const Row& row, const Coefficients&) {
    const auto area = row.text("what") == "bolt" ? &boltStripArea : &nutStripArea;
    const Length d = row.length("diameter");
    return inSquareMillimetres(area(d, row.length("pitch"), d));
}

}  // namespace fayline
