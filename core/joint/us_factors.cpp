#include "joint/us_factors.h"

#include <algorithm>
#include <cmath>

namespace fayline {
namespace {

constexpr double pound_N = 4.4482216152605;
constexpr Length quarterInch = inches(0.25);

struct Distances {
    double least, full;  ///< diameters
};

Distances endDistances(EndLoad load, WoodFamily family) {
    if (load != EndLoad::towardEnd) return {2.0, 4.0};
    return family == WoodFamily::softwood ? Distances{3.5, 7.0} : Distances{2.5, 5.0};
}

}  // namespace

double durationFactorUs(Duration duration) {
    switch (duration) {
        case Duration::permanent:
            return 0.9;
        case Duration::tenYears:
            return 1.0;
        case Duration::twoMonths:
            return 1.15;
        case Duration::sevenDays:
            return 1.25;
        case Duration::tenMinutes:
            return 1.6;
    }
    return 0.9;
}

double moistureFactorLateralUs(Fitted fitted, Service service, Length diameter, bool singleRow) {
    if (service == Service::wet) return 0.7;
    if (fitted == Fitted::dry || singleRow) return 1.0;
    return diameter < quarterInch ? 0.7 : 0.4;
}

double moistureFactorAxialUs(Service service) {
    return service == Service::wet ? 0.7 : 1.0;
}

double endGrainFactorUs(bool endGrain) {
    return endGrain ? 0.67 : 1.0;
}

double groupFactorUs(int inRow, Length spacing, Length diameter, const GroupMember& main,
                     const GroupMember& side, const UsCoefficients& coefficients) {
    if (inRow <= 1 || diameter < quarterInch) return 1.0;
    const double mainStiffness_lb = (main.area * main.modulus).si() / pound_N;
    const double sideStiffness_lb = (side.area * side.modulus).si() / pound_N;
    const double ratio =
        std::min(mainStiffness_lb / sideStiffness_lb, sideStiffness_lb / mainStiffness_lb);
    const double slip_lbPerIn = coefficients.groupModulus * std::pow(inInches(diameter), 1.5);
    const double u = 1.0 + slip_lbPerIn * inInches(spacing) / 2.0 *
                               (1.0 / mainStiffness_lb + 1.0 / sideStiffness_lb);
    const double m = u - std::sqrt(u * u - 1.0);
    const double mn = std::pow(m, inRow);
    const double first =
        m * (1.0 - mn * mn) / (inRow * ((1.0 + ratio * mn) * (1.0 + m) - 1.0 + mn * mn));
    return first * (1.0 + ratio) / (1.0 - m);
}

GeometryFactor geometryFactorUs(const Placement& placement, Length diameter, WoodFamily family) {
    GeometryFactor result;
    if (diameter < quarterInch) return result;
    double factor = 1.0;
    if (placement.end) {
        const Distances distances = endDistances(placement.load, family);
        const double has = *placement.end / diameter;
        result.endTooNear = has < distances.least;
        factor = std::min(factor, has / distances.full);
    }
    if (placement.spacing) {
        const double has = *placement.spacing / diameter;
        result.spacingTooNear = has < 3.0;
        factor = std::min(factor, has / 4.0);
    }
    if (placement.edge) {
        const double needs = placement.edgeLoadedAcross ? 4.0 : 1.5;
        result.edgeTooNear = *placement.edge / diameter < needs;
    }
    result.factor = std::max(0.5, factor);
    return result;
}

}  // namespace fayline
