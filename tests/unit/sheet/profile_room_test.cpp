// Whatever the size of the picture and the number of frames, nothing is cut off and no text runs
// into another.
#include <gtest/gtest.h>

#include <tuple>

#include "example.h"
#include "found.h"
#include "sheet/font_metrics.h"

namespace fayline {
namespace {

/// Width and height in pixels at 96 dpi, frames, height of capitals in points of 0.1 mm.
class ProfileRoom : public testing::TestWithParam<std::tuple<int, int, int, int>> {
  protected:
    Drawing drawing_ = [] {
        const auto [width, height, frames, letter] = GetParam();
        DrawFormat format{
            {width * 25.4 / 96.0, height * 25.4 / 96.0}, letter / 10.0, UnitSystem::inches, {}};
        return profileDrawing(example::profileWithFrames(frames), format);
    }();
};

TEST_P(ProfileRoom, NothingIsCutOff) {
    const RectMm bounds = boundsOf(drawing_);
    EXPECT_GE(bounds.left, -1e-6);
    EXPECT_GE(bounds.top, -1e-6);
    EXPECT_LE(bounds.right, drawing_.size.width + 1e-6);
    EXPECT_LE(bounds.bottom, drawing_.size.height + 1e-6);
}

TEST_P(ProfileRoom, NoTextRunsIntoAnother) {
    const auto all = texts(drawing_);
    for (std::size_t i = 0; i < all.size(); ++i) {
        for (std::size_t k = i + 1; k < all.size(); ++k) {
            RectMm a = textBounds(all[i]);
            RectMm b = textBounds(all[k]);
            // Capitals and figures against each other; descenders may come near the line below.
            a.bottom = a.top + all[i].letterMm;
            b.bottom = b.top + all[k].letterMm;
            EXPECT_FALSE(a.overlaps(b)) << "'" << all[i].text << "' and '" << all[k].text << "'";
        }
    }
}

TEST_P(ProfileRoom, ShortFramesAndBoltsAreNamed) {
    const auto all = texts(drawing_);
    EXPECT_TRUE(textSaying(all, "F19"));
    EXPECT_TRUE(textSaying(all, "K.6"));
}

INSTANTIATE_TEST_SUITE_P(Sizes, ProfileRoom,
                         testing::Combine(testing::Values(480, 700, 1236, 1900),
                                          testing::Values(190, 260, 420),
                                          testing::Values(24, 36, 60), testing::Values(21, 32)));

}  // namespace
}  // namespace fayline
