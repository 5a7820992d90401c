#include "material/design_stress.h"

#include <algorithm>
#include <array>

namespace fayline {
namespace {

constexpr double lowestTwentieth = 1.645;  // standard deviations below the mean
constexpr double bendingVariation = 0.16;
constexpr double shearVariation = 0.14;
constexpr double tensionOfBending = 0.55;
constexpr double tensionOfBendingEc5 = 0.6;

Figure<Stress> fromClear(const Figure<Stress>& clear, double variation, double divisor,
                         const char* how) {
    return {clear.value * ((1.0 - lowestTwentieth * variation) / divisor),
            std::max(clear.standing, Standing::fromMemory), how + clear.source};
}

}  // namespace

std::optional<Figure<Stress>> bendingUs(const Wood& wood) {
    if (!wood.green.modulusOfRupture) return std::nullopt;
    return fromClear(*wood.green.modulusOfRupture, bendingVariation,
                     wood.family == WoodFamily::hardwood ? 2.3 : 2.1,
                     "clear green wood by ASTM D2555 and D245; ");
}

std::optional<Figure<Stress>> tensionUs(const Wood& wood) {
    auto stress = bendingUs(wood);
    if (!stress) return stress;
    stress->value *= tensionOfBending;
    stress->source = "0.55 of bending, " + stress->source;
    return stress;
}

std::optional<Figure<Stress>> shearUs(const Wood& wood) {
    if (wood.us.shear) return wood.us.shear;
    if (!wood.green.shear) return std::nullopt;
    return fromClear(*wood.green.shear, shearVariation,
                     wood.family == WoodFamily::hardwood ? 4.5 : 4.1,
                     "clear green wood by ASTM D2555 and D245; ");
}

std::optional<Figure<Stress>> tensionEc5(const Wood& wood) {
    if (!wood.ec5.bending) return std::nullopt;
    return Figure<Stress>{wood.ec5.bending->value * tensionOfBendingEc5,
                          std::max(wood.ec5.bending->standing, Standing::fromMemory),
                          "0.6 of bending (EN 384); " + wood.ec5.bending->source};
}

double slopeOfGrainRatio(double run) {
    struct Step {
        double run, ratio;
    };
    constexpr std::array<Step, 9> steps{{{6, 0.40},
                                         {8, 0.53},
                                         {10, 0.61},
                                         {12, 0.69},
                                         {14, 0.74},
                                         {15, 0.76},
                                         {16, 0.80},
                                         {18, 0.85},
                                         {20, 1.00}}};
    if (run <= steps.front().run) return std::max(0.0, steps.front().ratio * run / 6.0);
    for (std::size_t i = 1; i < steps.size(); ++i) {
        if (run > steps[i].run) continue;
        const Step& low = steps[i - 1];
        const Step& high = steps[i];
        return low.ratio + (high.ratio - low.ratio) * (run - low.run) / (high.run - low.run);
    }
    return 1.0;
}

}  // namespace fayline
