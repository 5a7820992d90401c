#include "theme/theme.h"

#include <gtest/gtest.h>

#include <QTest>

#include <QApplication>
#include <QComboBox>
#include <QImage>
#include <QLineEdit>
#include <QPainter>
#include <set>

#include "paint/style.h"
#include "theme/card.h"
#include "theme/colours.h"
#include "theme/status.h"

namespace fayline {
namespace {

constexpr double leastForText = 4.5;
constexpr double leastForMarks = 3.0;

class Looks : public testing::TestWithParam<bool> {
  protected:
    [[nodiscard]] QPalette palette() const { return GetParam() ? lampPalette() : paperPalette(); }
};

TEST_P(Looks, allTextCanBeRead) {
    const QPalette p = palette();
    const Colours colours = coloursFor(p);
    const auto reads = [](const QColor& ink, const QColor& ground, const char* where) {
        EXPECT_GE(contrastRatio(ink, ground), leastForText) << where;
    };
    for (const auto ground :
         {QPalette::Window, QPalette::Base, QPalette::AlternateBase, QPalette::Button}) {
        reads(p.color(QPalette::WindowText), p.color(ground), "text");
        reads(p.color(QPalette::Disabled, QPalette::Text), p.color(ground), "disabled text");
    }
    for (const auto ground : {QPalette::Window, QPalette::Base}) {
        reads(colours.muted, p.color(ground), "muted");
        reads(colours.link, p.color(ground), "link");
        reads(colours.refused, p.color(ground), "refused");
    }
    reads(colours.muted, colours.chosenRow, "muted on the chosen row");
    reads(p.color(QPalette::Text), colours.chosenRow, "text on the chosen row");
    reads(p.color(QPalette::HighlightedText), p.color(QPalette::Highlight), "selection");
    reads(p.color(QPalette::WindowText), colours.notice, "notice");
    reads(colours.railText, colours.rail, "rail");
    reads(colours.railChosenText, colours.railChosen, "chosen page");
    EXPECT_GE(contrastRatio(colours.railEdge, colours.railChosen), leastForMarks);
}

TEST_P(Looks, everyStatusCanBeReadOnEveryGround) {
    const QPalette p = palette();
    for (int i = 0; i <= static_cast<int>(Status::unloaded); ++i) {
        const auto status = static_cast<Status>(i);
        const StatusInk ink = statusInk(status, p);
        for (const QColor& ground :
             {p.color(QPalette::Base), p.color(QPalette::Window), coloursFor(p).chosenRow}) {
            EXPECT_GE(contrastRatio(ink.ink, ground), leastForText) << i;
        }
        EXPECT_GE(contrastRatio(p.color(QPalette::Text), ink.fill), leastForText) << i;
    }
}

/// Which pixels a status's mark covers, whatever its colour.
QImage shapeOf(Status status, const QPalette& palette) {
    QImage image(24, 24, QImage::Format_RGB32);
    image.fill(palette.color(QPalette::Base));
    QPainter painter(&image);
    paintStatusMark(painter, image.rect(), status, palette);
    painter.end();
    QImage mask(image.size(), QImage::Format_Mono);
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x)
            mask.setPixel(x, y, image.pixelColor(x, y) != palette.color(QPalette::Base) ? 1 : 0);
    }
    return mask;
}

TEST_P(Looks, statusesAreToldApartWithoutColour) {
    std::vector<QImage> shapes;
    std::set<QString> words;
    for (int i = 0; i <= static_cast<int>(Status::unloaded); ++i) {
        shapes.push_back(shapeOf(static_cast<Status>(i), palette()));
        words.insert(statusWord(static_cast<Status>(i)));
    }
    EXPECT_EQ(words.size(), shapes.size());
    for (std::size_t a = 0; a < shapes.size(); ++a) {
        for (std::size_t b = a + 1; b < shapes.size(); ++b) {
            int different = 0;
            for (int y = 0; y < 24; ++y) {
                for (int x = 0; x < 24; ++x)
                    different += shapes[a].pixelIndex(x, y) != shapes[b].pixelIndex(x, y) ? 1 : 0;
            }
            EXPECT_GT(different, 30) << a << " and " << b;
        }
    }
}

INSTANTIATE_TEST_SUITE_P(LightAndDark, Looks, testing::Bool(),
                         [](const auto& look) { return look.param ? "dark" : "light"; });

TEST(ThemeTest, switchesWhileTheProgramRuns) {
    Theme theme(*qApp);
    theme.setLook(Look::light);
    EXPECT_FALSE(isDark(QApplication::palette()));
    Card card(QStringLiteral("A card"));
    card.resize(100, 60);
    const QColor light = card.grab().toImage().pixelColor(50, 40);
    theme.setLook(Look::dark);
    for (int i = 0; i < 3; ++i) QCoreApplication::processEvents();
    EXPECT_TRUE(isDark(QApplication::palette()));
    EXPECT_GT(light.lightness(), card.grab().toImage().pixelColor(50, 40).lightness() + 100);
    theme.setLook(Look::system);
    EXPECT_EQ(theme.look(), Look::system);
}

TEST(ThemeTest, textSizeStaysWithinReason) {
    Theme theme(*qApp);
    theme.setTextSize(14);
    EXPECT_EQ(QApplication::font().pointSize(), 14);
    EXPECT_EQ(QApplication::font().family(), QStringLiteral("DejaVu Sans"));
    theme.setTextSize(200);
    EXPECT_EQ(theme.textSize(), 20);
    theme.setTextSize(1);
    EXPECT_EQ(theme.textSize(), 8);
    theme.setTextSize(9);
}

TEST(ThemeTest, focusIsSeen) {
    Theme theme(*qApp);
    theme.setLook(Look::light);
    QWidget window;
    QLineEdit first(&window);
    QLineEdit second(&window);
    first.setGeometry(10, 10, 100, 24);
    second.setGeometry(10, 50, 100, 24);
    window.show();
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    first.setFocus();
    const QImage with = window.grab(first.geometry()).toImage();
    second.setFocus();
    const QImage without = window.grab(first.geometry()).toImage();
    EXPECT_NE(with.pixelColor(50, 0), without.pixelColor(50, 0));
}

}  // namespace
}  // namespace fayline
