#include "pieces.h"

#include <cmath>
#include <numbers>

#include "joint/screw.h"

namespace fayline::pieces {
namespace {

constexpr double quarterPi = std::numbers::pi / 4.0;

/// Countersink of a flat head: 82 degrees (ASME B18.6.1, from memory).
constexpr double headHalfAngleDeg = 41.0;
/// A square or round nail's head against its shank, across and thick (from memory, the middle of
/// 2.2 to 2.8 and of 0.4 to 0.5).
constexpr double rivetHeadAcross = 2.5;
constexpr double rivetHeadThick = 0.45;

Volume roundRod(Length diameter, Length length) {
    return quarterPi * (diameter * diameter) * length;
}

/// A cone with its top cut off.
Volume frustum(Length large, Length small, Length height) {
    return std::numbers::pi / 12.0 * (large * large + large * small + small * small) * height;
}

Volume screwVolume(const Hole& hole, Length length) {
    JointFastener screw;
    screw.diameter = hole.diameter;
    if (hole.gauge) screw.gauge = Gauge(*hole.gauge);
    screw.length = length;
    const ScrewShape shape = screwShape(screw);
    const Length body = shape.body.value, root = shape.root.value, head = shape.head.value;
    const Length headHeight =
        (head - body) / 2.0 / std::tan(headHalfAngleDeg * std::numbers::pi / 180.0);
    const Length thread = min(shape.thread.value, length);
    const Length tip = min(shape.tip.value, thread);
    const Length plain = max(Length{}, length - thread - headHeight);
    // Ridge and groove of the thread about fill each other up at the mean of body and root.
    const Length mean = (body + root) / 2.0;
    return frustum(head, body, min(headHeight, length)) + roundRod(body, plain) +
           roundRod(mean, thread - tip) + frustum(mean, Length{}, tip);
}

}  // namespace

Length boughtLength(const Hole& hole, UnitSystem units) {
    if (hole.kind == "wood_screw") return hole.length;
    const Length step = units == UnitSystem::inches ? inches(1.0 / 8.0) : millimetres(5.0);
    return std::ceil(hole.length / step - 1e-6) * step;
}

Length acrossOf(const Hole& hole) {
    return hole.square ? hole.diameter / std::numbers::sqrt2 : hole.diameter;
}

Volume volumeOf(const Hole& hole, Length length) {
    if (hole.kind == "wood_screw") return screwVolume(hole, length);
    const Length across = acrossOf(hole);
    const Volume shank = hole.square ? across * across * length : roundRod(across, length);
    if (hole.kind != "rivet") return shank;
    return shank + roundRod(rivetHeadAcross * across, rivetHeadThick * across);
}

Volume nutVolume(const Nut& nut, Length bolt) {
    const Area hexagon = std::sqrt(3.0) / 2.0 * (nut.acrossFlats * nut.acrossFlats);
    return (hexagon - quarterPi * (bolt * bolt)) * nut.height;
}

Volume ringVolume(Length outside, Length inside, Length thickness) {
    return quarterPi * (outside * outside - inside * inside) * thickness;
}

std::string lengthText(Length length, UnitSystem units) {
    return units == UnitSystem::inches
               ? displayLength(length, LengthStyle::inchFractions, UnitMark::leftOut) + " in"
               : displayLength(length, LengthStyle::millimetres);
}

std::string sizeText(const Hole& hole, UnitSystem units) {
    if (hole.gauge) return "No. " + std::to_string(*hole.gauge);
    return lengthText(acrossOf(hole), units) + (hole.square ? " square" : "");
}

}  // namespace fayline::pieces
