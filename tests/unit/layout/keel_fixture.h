#pragma once

#include "layout/ballast_bolts.h"

namespace fayline::test {

/// Ballast from 1 m to 4 m, 200 broad, joint level at 0; floors each 300 mm from 1.1 m, 80 sided,
/// tops at 320; n bolts of 20 mm.
inline BallastBoltInput keelWith(int bolts) {
    BallastBoltInput input;
    for (const double x_mm : {1000.0, 4000.0}) {
        input.sections.push_back({millimetres(x_mm), millimetres(150), millimetres(0),
                                  millimetres(-400), millimetres(200)});
    }
    for (int i = 0; i < 10; ++i)
        input.floors.push_back({"F" + std::to_string(i + 1), millimetres(1150 + 300 * i),
                                millimetres(80), millimetres(320)});
    for (int i = 0; i < bolts; ++i) {
        BoltChoice bolt;
        bolt.id = "K." + std::to_string(i + 1);
        bolt.diameter = millimetres(20);
        bolt.pitch = millimetres(2.5);
        bolt.washerDiameter = millimetres(80);
        bolt.washerThickness = millimetres(5);
        bolt.recess = millimetres(50);
        input.bolts.push_back(bolt);
    }
    input.alternateOffset = millimetres(25);
    input.rules = {millimetres(14), 4.0, 0.25, millimetres(8), "class rule", "class rule"};
    return input;
}

}  // namespace fayline::test
