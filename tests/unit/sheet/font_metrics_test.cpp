#include "sheet/font_metrics.h"

#include <gtest/gtest.h>

namespace fayline {
namespace {

// Figures of the font files: 2048 units an em, 0 is 1303 units wide, 1425 in bold, H 1493 high.
TEST(FontMetrics, FiguresOfTheFontFiles) {
    EXPECT_DOUBLE_EQ(advanceInEms("0"), 1303.0 / 2048.0);
    EXPECT_DOUBLE_EQ(advanceInEms("0", shape::Weight::bold), 1425.0 / 2048.0);
    EXPECT_DOUBLE_EQ(capitalHeightInEms(), 1493.0 / 2048.0);
}

TEST(FontMetrics, EveryFigureIsAsWideAsNought) {
    for (const shape::Weight weight : {shape::Weight::regular, shape::Weight::bold}) {
        for (char c = '0'; c <= '9'; ++c) {
            EXPECT_DOUBLE_EQ(advanceInEms(std::string(1, c), weight), advanceInEms("0", weight))
                << c;
        }
    }
}

TEST(FontMetrics, WidthsAddUp) {
    EXPECT_DOUBLE_EQ(advanceInEms("F14 ⌀"),
                     advanceInEms("F14") + advanceInEms(" ") + advanceInEms("⌀"));
    EXPECT_DOUBLE_EQ(advanceInEms(""), 0.0);
}

TEST(FontMetrics, SignsOfTheTradeAreInTheFont) {
    const double box = advanceInEms("\U0001F6E5");  // a picture that the font does not have
    EXPECT_DOUBLE_EQ(box, 1229.0 / 2048.0);
    for (const char* sign : {"⌀", "½", "⅝", "′", "″", "×", "°", "→", "↧", "−", "–"}) {
        EXPECT_GT(advanceInEms(sign), 0.0) << sign;
        EXPECT_NE(advanceInEms(sign), box) << sign;
    }
}

TEST(FontMetrics, BrokenBytesCountOnceEach) {
    const double broken = advanceInEms("\xFF");
    EXPECT_DOUBLE_EQ(advanceInEms("\xFF\xFF"), 2.0 * broken);
    EXPECT_DOUBLE_EQ(advanceInEms("a\xE2\x8C"), advanceInEms("a") + broken);
}

shape::Text text(const char* says) {
    shape::Text made;
    made.text = says;
    made.letterMm = 7.29;
    return made;
}

TEST(FontMetrics, BoxAroundAText) {
    // 7.29 mm capitals: an em of 7.29 · 2048 / 1493 = 10.0000536 mm.
    shape::Text zero = text("0");
    zero.anchor = {100.0, 50.0};
    const RectMm box = textBounds(zero);
    EXPECT_NEAR(box.left, 100.0, 1e-9);
    EXPECT_NEAR(box.width(), 6.3623, 1e-3);
    EXPECT_NEAR(box.top, 50.0 - 7.29, 1e-9);
    EXPECT_GT(box.bottom, 50.0);

    zero.across = shape::Across::right;
    EXPECT_NEAR(textBounds(zero).right, 100.0, 1e-9);
    zero.across = shape::Across::centre;
    EXPECT_NEAR(textBounds(zero).left + textBounds(zero).right, 200.0, 1e-9);
    zero.upright = shape::Upright::top;
    EXPECT_NEAR(textBounds(zero).top, 50.0, 1e-9);
    zero.upright = shape::Upright::middle;
    EXPECT_NEAR(textBounds(zero).top, 50.0 - 7.29 / 2.0, 1e-9);
}

TEST(FontMetrics, TurnedTextRunsUpward) {
    shape::Text zero = text("0000");
    zero.anchor = {100.0, 50.0};
    zero.angleDeg = 90.0;
    const RectMm box = textBounds(zero);
    EXPECT_NEAR(box.bottom, 50.0, 1e-9);
    EXPECT_NEAR(box.top, 50.0 - 4.0 * 6.3623, 4e-3);
    EXPECT_NEAR(box.left, 100.0 - 7.29, 1e-9);
}

TEST(FontMetrics, ElidedTextFits) {
    const shape::Text longer = text("white oak, sawn");
    EXPECT_EQ(elided(longer, {1000.0, 0.0}), longer.text);
    for (double room = 100.0; room > 0.0; room -= 3.7) {
        shape::Text shorter = longer;
        shorter.text = elided(longer, {room, 0.0});
        EXPECT_LE(textSize(shorter).width, room);
        if (shorter.text != longer.text && !shorter.text.empty()) {
            EXPECT_TRUE(shorter.text.ends_with("…")) << shorter.text;
        }
    }
    EXPECT_EQ(elided(longer, {1.0, 0.0}), "");
    EXPECT_EQ(elided(text("⅝⅝⅝⅝"), {20.0, 0.0}).find('\xEF'), std::string::npos);
}

}  // namespace
}  // namespace fayline
