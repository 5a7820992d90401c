#include <QImage>
#include <QPainter>
#include <QScrollBar>
#include <algorithm>
#include <cstdlib>

#include "example.h"
#include "sheet/selection.h"
#include "sketch_fixture.h"

namespace fayline {
namespace {

QImage seen(SketchView& view) {
    return view.viewport()->grab().toImage().convertToFormat(QImage::Format_RGB32);
}

/// Pixels of which a channel differs by more than so many of 255 steps.
int differing(const QImage& a, const QImage& b, int steps = 0) {
    int count = 0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x) {
            const QRgb p = a.pixel(x, y);
            const QRgb q = b.pixel(x, y);
            const int most = std::max({std::abs(qRed(p) - qRed(q)), std::abs(qGreen(p) - qGreen(q)),
                                       std::abs(qBlue(p) - qBlue(q))});
            count += most > steps ? 1 : 0;
        }
    }
    return count;
}

TEST_F(SketchTest, PiecesMakeTheSamePictureAsTheWhole) {
    view_.clearFocus();
    for (const double zoom : {1.0, 2.7}) {
        view_.setZoom(zoom);
        view_.verticalScrollBar()->setValue(view_.verticalScrollBar()->maximum());
        const QImage pieces = seen(view_);
        QImage whole(pieces.size(), QImage::Format_RGB32);
        whole.setDevicePixelRatio(pieces.devicePixelRatio());
        const PaintStyle style = screenStyle(view_.palette());
        whole.fill(style.paper);
        QPainter painter(&whole);
        paintDrawing(painter, view_.drawing(), {view_.logicalDpiX() / 25.4, view_.placeOf({})},
                     style);
        painter.end();
        EXPECT_EQ(pieces.size(), view_.viewport()->size() * pieces.devicePixelRatio());
        // Sloping edges may be blended a step or two of 255 another way; no eye sees that.
        EXPECT_EQ(differing(pieces, whole, 4), 0) << zoom;
    }
}

TEST_F(SketchTest, ChoosingDoesNotMakeTheDrawingAgain) {
    seen(view_);
    const int made = made_;
    const QImage before = seen(view_);
    view_.setSelected(QStringLiteral("F14"));
    const QImage chosen = seen(view_);
    EXPECT_GT(differing(before, chosen), 100);
    view_.setSelected({});
    EXPECT_EQ(differing(before, seen(view_)), 0);
    EXPECT_EQ(made_, made);
}

TEST_F(SketchTest, NamesStayInSightWhenZoomedIn) {
    view_.clearFocus();
    view_.setZoom(4.0);
    view_.verticalScrollBar()->setValue(0);
    const QImage image = seen(view_);
    const QColor paper = view_.palette().color(QPalette::Base);
    int inked = 0, ground = 0;
    for (int y = image.height() - 10; y < image.height() - 4; ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const int away = std::abs(image.pixelColor(x, y).lightness() - paper.lightness());
            inked += away > 80 ? 1 : 0;
            ground += away == 0 ? 1 : 0;
        }
    }
    // Text on plain paper: some ink, mostly ground.
    EXPECT_GT(inked, 50);
    EXPECT_GT(ground, 4 * inked);
    for (const DrawStop& stop : view_.drawing().rows.front()) {
        EXPECT_GT(view_.placeOf(stop.at).y(), view_.viewport()->height())
            << "their row is out of sight";
    }
}

TEST_F(SketchTest, FocusShows) {
    view_.setFocus();
    const QImage with = seen(view_);
    view_.clearFocus();
    EXPECT_GT(differing(with, seen(view_)), 1000);
}

TEST_F(SketchTest, FollowsAChangeOfPalette) {
    QPalette dark = view_.palette();
    dark.setColor(QPalette::Base, QColor(0x21, 0x25, 0x27));
    dark.setColor(QPalette::Text, QColor(0xE6, 0xE3, 0xDA));
    seen(view_);
    view_.setPalette(dark);
    EXPECT_EQ(seen(view_).pixelColor(500, 5), QColor(0x21, 0x25, 0x27));
}

TEST_F(SketchTest, TextFollowsTheFont) {
    const auto letter = [&] {
        for (const DrawItem& item : view_.drawing().items) {
            if (const auto* text = std::get_if<shape::Text>(&item.shape)) return text->letterMm;
        }
        return 0.0;
    };
    QFont font = view_.font();
    font.setPointSizeF(9.0);
    view_.setFont(font);
    const double small = letter();
    font.setPointSizeF(18.0);
    view_.setFont(font);
    EXPECT_NEAR(letter() / small, 2.0, 0.2);
}

}  // namespace
}  // namespace fayline
