#include "joint/us_lateral.h"

#include <array>

namespace fayline {
namespace {

constexpr std::array<std::string_view, 6> single{"Im", "Is", "II", "IIIm", "IIIs", "IV"};
constexpr std::array<std::string_view, 4> twice{"Im", "Is", "IIIs", "IV"};

UsLateral withLeast(const ModeLoads& modes) {
    const ModeLoad least = modes[modes.least()];
    return {modes, least.load, least.name};
}

}  // namespace

UsLateral usSingleShear(const DowelModes& yield, const UsReduction& reduction) {
    return withLeast({single,
                      {yield.im / reduction.bearing, yield.is / reduction.bearing,
                       yield.ii / reduction.turning, yield.iiim / reduction.bending,
                       yield.iiis / reduction.bending, yield.iv / reduction.bending}});
}

UsLateral usDoubleShear(const DowelModes& onePlane, const UsReduction& reduction) {
    return withLeast(
        {twice,
         {onePlane.im / reduction.bearing, 2.0 * onePlane.is / reduction.bearing,
          2.0 * onePlane.iiis / reduction.bending, 2.0 * onePlane.iv / reduction.bending}});
}

}  // namespace fayline
