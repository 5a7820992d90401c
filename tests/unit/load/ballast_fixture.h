#pragma once

#include "load/ballast.h"

namespace fayline::test {

/// A box ballast with bolts in a row, alternating either side of the centreline, lead by the metre
/// even along it.
struct BoxBallast {
    double length_mm, breadth_mm, mass_kg, centreBelow_mm;
    int bolts;
    double offset_mm;    ///< alternate sides
    double end_mm;       ///< first and last bolt from the ends
    double diameter_mm;  ///< rod
    double grip_mm;
    double modulus_MPa;  ///< rod
    double acrossGrain_MPa;
    double timberDepth_mm;
};

inline BallastLoadInput inputOf(const BoxBallast& box) {
    BallastLoadInput input;
    input.ballast = kilograms(box.mass_kg);
    input.boat = kilograms(2.5 * box.mass_kg);
    input.centre = {millimetres(box.length_mm / 2), Length{}, millimetres(-box.centreBelow_mm)};
    input.axisHeight = Length{};
    input.acrossGrain = megapascals(box.acrossGrain_MPa);
    input.timberDepth = millimetres(box.timberDepth_mm);
    const int slices = 64;
    for (int i = 0; i < slices; ++i) {
        BedSlice slice;
        slice.x = millimetres(box.length_mm * (i + 0.5) / slices);
        slice.length = millimetres(box.length_mm / slices);
        slice.breadth = millimetres(box.breadth_mm);
        slice.ballast = kilograms(box.mass_kg) / millimetres(box.length_mm);
        input.bed.push_back(slice);
    }
    for (int i = 0; i < box.bolts; ++i) {
        LoadedBolt bolt;
        bolt.id = "K." + std::to_string(i + 1);
        bolt.frame = "F" + std::to_string(i + 1);
        const double step_mm = (box.length_mm - 2 * box.end_mm) / (box.bolts - 1);
        bolt.joint = {millimetres(box.end_mm + step_mm * i),
                      millimetres(i % 2 == 0 ? -box.offset_mm : box.offset_mm), Length{}};
        bolt.area = squareMillimetres(0.7853981633974483 * box.diameter_mm * box.diameter_mm);
        bolt.grip = millimetres(box.grip_mm);
        bolt.modulus = megapascals(box.modulus_MPa);
        input.bolts.push_back(bolt);
        input.frames.push_back({bolt.frame, bolt.joint.x});
    }
    return input;
}

}  // namespace fayline::test
