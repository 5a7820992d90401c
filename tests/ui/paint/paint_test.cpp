#include "paint/paint.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>

#include "example.h"
#include "paint/font.h"

namespace fayline {
namespace {

QPalette palette(bool dark) {
    QPalette made;
    made.setColor(QPalette::Base, dark ? QColor(0x21, 0x25, 0x27) : QColor(Qt::white));
    made.setColor(QPalette::Text, dark ? QColor(0xE6, 0xE3, 0xDA) : QColor(Qt::black));
    return made;
}

QImage painted(const std::vector<DrawItem>& items, const PaintStyle& style, double ratio = 1.0,
               QSize size = {80, 60}) {
    QImage image(size * ratio, QImage::Format_RGB32);
    image.setDevicePixelRatio(ratio);
    image.fill(style.paper);
    QPainter painter(&image);
    paintItems(painter, items, PaintMap{1.0, {}}, style);
    return image;
}

int inkedColumns(const QImage& image, int row, const QColor& paper) {
    int count = 0;
    for (int x = 0; x < image.width(); ++x) count += image.pixelColor(x, row) != paper ? 1 : 0;
    return count;
}

class Paint : public testing::Test {
  protected:
    void SetUp() override { ASSERT_TRUE(registerBundledFont()); }
};

TEST_F(Paint, UprightLinesAreSharpAtEveryPlaceAndResolution) {
    const PaintStyle style = screenStyle(palette(false));
    for (const double ratio : {1.0, 1.5, 2.0}) {
        for (double x = 20.0; x < 21.0; x += 0.13) {
            const QImage image = painted(
                {{Role::outline, {}, shape::Line{{x, 10}, {x, 50}, {0.9, {}}}}}, style, ratio);
            const int row = qRound(30 * ratio);
            EXPECT_EQ(inkedColumns(image, row, style.paper), qRound(ratio)) << x << " at " << ratio;
            const int column = static_cast<int>(x * ratio);
            bool full = false;
            for (int c = column - 2; c <= column + 2; ++c)
                full = full || image.pixelColor(c, row) == QColor(Qt::black);
            EXPECT_TRUE(full);
        }
    }
}

TEST_F(Paint, DashesRunOnRoundACorner) {
    // 2.0 mm dashes and 1.2 mm gaps, 5 units a millimetre: 10 and 6.
    const std::vector<PointMm> corner{{4, 4}, {5.2, 4}, {5.2, 10}};
    QImage image(80, 60, QImage::Format_RGB32);
    const PaintStyle style = screenStyle(palette(false));
    image.fill(style.paper);
    QPainter painter(&image);
    const std::vector<DrawItem> items{
        {Role::outline, {}, shape::Polyline{corner, {0.4, LineStyle::dashed}}}};
    paintItems(painter, items, PaintMap{5.0, {}}, style);
    painter.end();
    const auto inked = [&](int x, int y) { return image.pixelColor(x, y) == QColor(Qt::black); };
    EXPECT_TRUE(inked(22, 20));
    EXPECT_TRUE(inked(25, 22));  // 6 along the first leg, 4 down the second
    EXPECT_FALSE(inked(25, 27));
    EXPECT_TRUE(inked(25, 33));
    EXPECT_FALSE(inked(25, 42));
}

TEST_F(Paint, UprightTimbersAreSharp) {
    const PaintStyle style = screenStyle(palette(false));
    const auto bar = [](double x) {
        return shape::Polygon{{{x, 10}, {x + 3, 10}, {x + 3, 50}, {x, 50}}, true, std::nullopt};
    };
    for (double x = 20.0; x < 21.0; x += 0.17) {
        const QImage image = painted({{Role::frame, {}, bar(x)}}, style);
        EXPECT_EQ(inkedColumns(image, 30, style.paper), 3) << x;
    }
}

TEST_F(Paint, RolesHaveTheirColours) {
    for (const bool dark : {false, true}) {
        const PaintStyle style = screenStyle(palette(dark));
        const shape::Polygon square{{{10, 10}, {40, 10}, {40, 40}, {10, 40}}, true, std::nullopt};
        for (const Role role :
             {Role::hull, Role::timber, Role::floor, Role::ballast, Role::frame}) {
            EXPECT_EQ(painted({{role, {}, square}}, style).pixelColor(25, 25),
                      style.look(role).fill);
        }
        const QImage wiped =
            painted({{Role::ballast, {}, square}, {Role::paper, {}, square}}, style);
        EXPECT_EQ(wiped.pixelColor(25, 25), style.paper);
    }
}

TEST_F(Paint, PrintHasNoTintAndEveryAreaAnEdge) {
    const PaintStyle style = printStyle();
    const shape::Polygon square{{{10, 10}, {40, 10}, {40, 40}, {10, 40}}, true, std::nullopt};
    const QImage frame = painted({{Role::frame, {}, square}}, style);
    EXPECT_EQ(frame.pixelColor(25, 25), QColor(Qt::white));
    EXPECT_NE(frame.pixelColor(10, 25), QColor(Qt::white));
    QImage ballast = painted({{Role::ballast, {}, square}}, style, 4.0);
    int inked = 0;
    for (int x = 60; x < 140; ++x) inked += ballast.pixelColor(x, 100) != QColor(Qt::white) ? 1 : 0;
    EXPECT_GT(inked, 10);
    EXPECT_LT(inked, 70);
}

TEST_F(Paint, PrintOfAWholeProfileIsGreyAtMost) {
    DrawFormat format{{300, 100}, 2.5, UnitSystem::inches, {}};
    ProfileInput in = example::profile();
    in.selected = "F14";
    QImage image(1200, 400, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paintDrawing(painter, profileDrawing(in, format), PaintMap{4.0, {}}, printStyle());
    painter.end();
    int coloured = 0, inked = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const QRgb p = image.pixel(x, y);
            coloured += qRed(p) != qGreen(p) || qGreen(p) != qBlue(p) ? 1 : 0;
            inked += qRed(p) < 128 ? 1 : 0;
        }
    }
    EXPECT_EQ(coloured, 0);
    EXPECT_GT(inked, 5000);
}

TEST_F(Paint, TextLiesWhereCoreSaysItDoes) {
    const PaintStyle style = screenStyle(palette(false));
    for (const auto across : {shape::Across::left, shape::Across::centre, shape::Across::right}) {
        for (const double angle : {0.0, 90.0}) {
            shape::Text text;
            text.anchor = {100, 100};
            text.text = "HEEL 14";
            text.letterMm = 14.0;
            text.across = across;
            text.upright = shape::Upright::middle;
            text.angleDeg = angle;
            const QImage image = painted({{Role::label, {}, text}}, style, 1.0, {200, 200});
            RectMm inked;
            for (int y = 0; y < 200; ++y) {
                for (int x = 0; x < 200; ++x) {
                    if (image.pixelColor(x, y).lightness() < 128) {
                        inked = united(united(inked, PointMm{double(x), double(y)}),
                                       PointMm{x + 1.0, y + 1.0});
                    }
                }
            }
            const RectMm told = boundsOf(DrawItem{Role::label, {}, text});
            // Within the told box but for half pixels; full length but for the letters' own side
            // room.
            EXPECT_GE(inked.left, told.left - 1.0);
            EXPECT_LE(inked.right, told.right + 1.0);
            EXPECT_GE(inked.top, told.top - 1.0);
            EXPECT_LE(inked.bottom, told.bottom + 1.0);
            EXPECT_GE(std::max(inked.width(), inked.height()),
                      std::max(told.width(), told.height()) - 5.0);
        }
    }
}

TEST_F(Paint, ClearedTextWipesOutWhatLiesBelow) {
    const PaintStyle style = screenStyle(palette(false));
    shape::Text text;
    text.anchor = {40, 30};
    text.text = ".";
    text.letterMm = 10.0;
    text.across = shape::Across::centre;
    text.upright = shape::Upright::middle;
    const shape::Polygon all{{{0, 0}, {80, 0}, {80, 60}, {0, 60}}, true, std::nullopt};
    EXPECT_EQ(painted({{Role::floor, {}, all}, {Role::label, {}, text}}, style).pixelColor(40, 26),
              style.look(Role::floor).fill);
    text.cleared = true;
    EXPECT_EQ(painted({{Role::floor, {}, all}, {Role::label, {}, text}}, style).pixelColor(40, 26),
              style.paper);
}

TEST_F(Paint, ThePainterComesBackAsItWas) {
    QImage image(100, 100, QImage::Format_RGB32);
    QPainter painter(&image);
    painter.translate(3, 4);
    painter.setPen(QPen(Qt::red, 3.0));
    painter.setBrush(Qt::blue);
    const QTransform before = painter.transform();
    DrawFormat format{{100, 60}, 2.1, UnitSystem::inches, {}};
    paintDrawing(painter, profileDrawing(example::profile(), format), PaintMap{1.0, {}},
                 printStyle());
    EXPECT_EQ(painter.transform(), before);
    EXPECT_EQ(painter.pen(), QPen(Qt::red, 3.0));
    EXPECT_EQ(painter.brush().color(), QColor(Qt::blue));
    EXPECT_FALSE(painter.testRenderHint(QPainter::Antialiasing));
}

TEST_F(Paint, EveryKindOfShapeLeavesInk) {
    const PaintStyle style = screenStyle(palette(false));
    const std::vector<PointMm> triangle{{10, 10}, {60, 10}, {30, 50}};
    shape::Text text;
    text.anchor = {20, 30};
    text.text = "F9";
    text.letterMm = 8.0;
    std::vector<Shape> shapes{
        shape::Line{{5, 5}, {60, 50}, {}},
        shape::Polyline{triangle, {1.0, LineStyle::dashDot}},
        shape::Polygon{triangle, true, Stroke{}},
        text,
        shape::Hatch{triangle, 45.0, 4.0, {}},
        shape::Dimension{{10, 30}, {70, 30}, 5.0, "60", 4.0, shape::DimensionKind::between}};
    for (const auto kind :
         {shape::MarkKind::circle, shape::MarkKind::cross, shape::MarkKind::diamond,
          shape::MarkKind::triangle, shape::MarkKind::square}) {
        for (const bool filled : {true, false})
            shapes.emplace_back(shape::Mark{{30, 30}, kind, 12.0, filled, {1.0, {}}});
    }
    for (const Shape& one : shapes) {
        const QImage image = painted({{Role::label, {}, one}}, style);
        int inked = 0;
        for (int y = 0; y < 60; ++y) inked += inkedColumns(image, y, style.paper);
        EXPECT_GT(inked, 20) << one.index();
    }
}

TEST_F(Paint, NothingToPaintIsNoTrouble) {
    const PaintStyle style = printStyle();
    EXPECT_EQ(painted({{Role::label, {}, shape::Polygon{}},
                       {Role::label, {}, shape::Polyline{}},
                       {Role::label, {}, shape::Text{}},
                       {Role::label, {}, shape::Hatch{}}},
                      style),
              painted({}, style));
}

}  // namespace
}  // namespace fayline
