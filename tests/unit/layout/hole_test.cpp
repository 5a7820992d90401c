#include "layout/hole.h"

#include <gtest/gtest.h>

using namespace fayline;

namespace {

Hole rod(double x1, double y1, double z1, double x2, double y2, double z2) {
    Hole hole;
    hole.start = {metres(x1), metres(y1), metres(z1)};
    hole.end = {metres(x2), metres(y2), metres(z2)};
    return hole;
}

}  // namespace

TEST(HoleDistance, CrossedParallelEndToEndAndPoint) {
    EXPECT_NEAR(inMetres(distanceBetween(rod(0, 0, 0, 0, 0, 1), rod(-1, 0.3, 0.5, 1, 0.3, 0.5))),
                0.3, 1e-12);
    EXPECT_NEAR(inMetres(distanceBetween(rod(0, 0, 0, 0, 0, 1), rod(0.4, 0, 0, 0.4, 0, 1))), 0.4,
                1e-12);
    EXPECT_NEAR(inMetres(distanceBetween(rod(0, 0, 0, 0, 0, 1), rod(0, 0, 1.5, 0, 0, 2))), 0.5,
                1e-12);
    EXPECT_NEAR(inMetres(distanceBetween(rod(0, 0, 0, 0, 0, 1), rod(3, 4, 0, 3, 4, 0))), 5.0,
                1e-12);
    EXPECT_NEAR(inMetres(distanceBetween(rod(0, 0, 0, 0, 0, 1), rod(0, 0, 0.5, 1, 0, 0.5))), 0.0,
                1e-12);
}
