#include "joint/ec5_axial.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace fayline {
namespace {

double inclination(Angle axisToGrain) {
    const double sine = std::sin(axisToGrain.inRadians());
    const double cosine = std::cos(axisToGrain.inRadians());
    return 1.2 * cosine * cosine + sine * sine;
}

double densityFactor(CharacteristicDensity density, Density declaredAt,
                     const Ec5Coefficients& coefficients) {
    return std::pow(density.value / declaredAt, coefficients.densityExponent);
}

struct RowPoint {
    double spacing_d, exponent;
};
constexpr std::array<RowPoint, 4> nailRows{{{4.0, 0.5}, {7.0, 0.7}, {10.0, 0.85}, {14.0, 1.0}}};

double nailExponent(double spacing_d) {
    if (spacing_d <= nailRows.front().spacing_d) return nailRows.front().exponent;
    for (std::size_t i = 1; i < nailRows.size(); ++i) {
        const RowPoint& low = nailRows[i - 1];
        const RowPoint& high = nailRows[i];
        if (spacing_d > high.spacing_d) continue;
        return low.exponent + (high.exponent - low.exponent) * (spacing_d - low.spacing_d) /
                                  (high.spacing_d - low.spacing_d);
    }
    return 1.0;
}

}  // namespace

Force screwWithdrawalEc5(CharacteristicDensity density, Length diameter, Length thread,
                         Angle axisToGrain, const Ec5Coefficients& coefficients) {
    const double diameter_mm = inMillimetres(diameter);
    const double thread_mm = inMillimetres(thread);
    if (thread_mm <= 0.0) return {};
    const double strength_MPa =
        coefficients.withdrawal * std::pow(diameter_mm, coefficients.withdrawalDiameterExponent) *
        std::pow(thread_mm, coefficients.withdrawalLengthExponent) *
        std::pow(inKilogramsPerCubicMetre(density.value), coefficients.densityExponent);
    const double size = std::min(diameter_mm / coefficients.fullDiameter_mm, 1.0);
    return newtons(strength_MPa * diameter_mm * thread_mm * size / inclination(axisToGrain));
}

Force screwWithdrawalDeclared(Stress declared, Density declaredAt, CharacteristicDensity density,
                              Length diameter, Length thread, Angle axisToGrain,
                              const Ec5Coefficients& coefficients) {
    return declared * diameter * thread *
           (densityFactor(density, declaredAt, coefficients) / inclination(axisToGrain));
}

Force pullThroughDeclared(Stress declared, Density declaredAt, CharacteristicDensity density,
                          Length head, const Ec5Coefficients& coefficients) {
    return declared * (head * head) * densityFactor(density, declaredAt, coefficients);
}

Force pullThroughNail(CharacteristicDensity density, Length head,
                      const Ec5Coefficients& coefficients) {
    const double density_kgPerM3 = inKilogramsPerCubicMetre(density.value);
    return megapascals(coefficients.nailHead * density_kgPerM3 * density_kgPerM3) * (head * head);
}

double effectiveNails(int inRow, double spacing_d) {
    return std::pow(inRow, nailExponent(spacing_d));
}

double effectiveBolts(int inRow, double spacing_d, Angle toGrain,
                      const Ec5Coefficients& coefficients) {
    const double count = inRow;
    const double along = std::min(count, std::pow(count, coefficients.rowExponent) *
                                             std::pow(spacing_d / coefficients.rowSpacing, 0.25));
    return along + (count - along) * toGrain.inDegrees() / 90.0;
}

double effectiveAxial(int count, const Ec5Coefficients& coefficients) {
    return std::pow(count, coefficients.rowExponent);
}

Force combinedEc5(Force lateral, Force axial, Angle toSurface, bool squared) {
    return combinedEc5(lateral, axial, Direction::of(toSurface), squared);
}

Force combinedEc5(Force lateral, Force axial, const Direction& toSurface, bool squared) {
    const double sine = toSurface.sine;
    const double cosine = toSurface.cosine;
    constexpr double nothing = 1e-12;  // a right angle's cosine is not quite nil in doubles
    const bool pulled = sine > nothing;
    const bool sheared = cosine > nothing;
    if ((pulled && axial.si() <= 0.0) || (sheared && lateral.si() <= 0.0)) return {};
    const double along = pulled ? sine / axial.si() : 0.0;
    const double over = sheared ? cosine / lateral.si() : 0.0;
    const double used = squared ? std::sqrt(along * along + over * over) : along + over;
    return used > 0.0 ? newtons(1.0 / used) : Force{};
}

}  // namespace fayline
