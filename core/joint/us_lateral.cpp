#include "joint/us_lateral.h"

namespace fayline {
namespace {

UsLateral withLeast(const ModeLoads& modes) {
    UsLateral result;
    result.modes = modes;
    const ModeLoad& least = leastMode(result.modes);
    result.reference = least.load;
    result.governs = least.name;
    return result;
}

}  // namespace

UsLateral usSingleShear(const DowelModes& yield, const UsReduction& reduction) {
    return withLeast({{"Im", yield.im / reduction.bearing},
                      {"Is", yield.is / reduction.bearing},
                      {"II", yield.ii / reduction.turning},
                      {"IIIm", yield.iiim / reduction.bending},
                      {"IIIs", yield.iiis / reduction.bending},
                      {"IV", yield.iv / reduction.bending}});
}

UsLateral usDoubleShear(const DowelModes& onePlane, const UsReduction& reduction) {
    return withLeast({{"Im", onePlane.im / reduction.bearing},
                      {"Is", 2.0 * onePlane.is / reduction.bearing},
                      {"IIIs", 2.0 * onePlane.iiis / reduction.bending},
                      {"IV", 2.0 * onePlane.iv / reduction.bending}});
}

}  // namespace fayline
