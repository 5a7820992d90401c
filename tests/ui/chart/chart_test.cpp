#include "chart/chart.h"

#include <gtest/gtest.h>

#include <QAbstractScrollArea>
#include <QApplication>
#include <QImage>
#include <QSignalSpy>
#include <QTest>
#include <set>

#include "plot.h"
#include "printing.h"
#include "theme/colours.h"
#include "theme/theme.h"

namespace fayline {
namespace {

ChartData twoLines() {
    ChartData data;
    data.title = QStringLiteral("Keel moment");
    data.across = QStringLiteral("frame");
    data.up = QStringLiteral("moment");
    data.unit = QStringLiteral("kNm");
    data.places = {QStringLiteral("F1"), QStringLiteral("F2"), QStringLiteral("F3")};
    data.series = {{QStringLiteral("port"), {1.0, std::nullopt, 3.5}},
                   {QStringLiteral("starboard"), {-1.0, 2.0, 0.25}}};
    data.emptyText = QStringLiteral("Nothing is worked out yet.");
    return data;
}

class ChartTest : public testing::Test {
  protected:
    ChartTest() {
        chart.resize(500, 300);
        chart.show();
        chart.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&chart));
        chart.setFocus();
    }
    Chart chart;
};

TEST_F(ChartTest, theKeyboardReadsEveryFigure) {
    chart.setData(twoLines());
    EXPECT_EQ(chart.reading(), QStringLiteral("F1: port 1 kNm · starboard -1 kNm"));
    QTest::keyClick(&chart, Qt::Key_Right);
    EXPECT_EQ(chart.reading(), QStringLiteral("F2: port no figure · starboard 2 kNm"));
    EXPECT_EQ(chart.accessibleDescription(), chart.reading());
    QTest::keyClick(&chart, Qt::Key_End);
    QTest::keyClick(&chart, Qt::Key_Right);
    EXPECT_EQ(chart.place(), 2) << "it stops at the last";
    QTest::keyClick(&chart, Qt::Key_Home);
    QTest::keyClick(&chart, Qt::Key_Left);
    EXPECT_EQ(chart.place(), 0);
    QSignalSpy chosen(&chart, &Chart::chosen);
    QTest::keyClick(&chart, Qt::Key_Return);
    ASSERT_EQ(chosen.size(), 1);
    EXPECT_EQ(chosen.front().front().toInt(), 0);
}

TEST_F(ChartTest, withoutFiguresItSaysWhatIsMissing) {
    chart.setData(twoLines());
    ChartData none = twoLines();
    for (ChartSeries& series : none.series)
        std::fill(series.values.begin(), series.values.end(), std::nullopt);
    chart.setData(none);
    EXPECT_EQ(chart.place(), -1);
    EXPECT_EQ(chart.reading(), QString());
    EXPECT_EQ(chart.accessibleDescription(), none.emptyText);
    QTest::keyClick(&chart, Qt::Key_Right);
    EXPECT_EQ(chart.place(), -1);
    chart.setData(ChartData{});
    chart.setData(twoLines());
    EXPECT_EQ(chart.place(), 0);
}

TEST_F(ChartTest, thePointerMovesTheCursor) {
    chart.setData(twoLines());
    auto* view = chart.findChild<QAbstractScrollArea*>();
    QTest::mouseMove(view->viewport(), QPoint(view->width() - 20, 100));
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, QPoint(view->width() - 20, 100));
    EXPECT_EQ(chart.place(), 2);
}

TEST_F(ChartTest, followsLightAndDark) {
    chart.setData(twoLines());
    const auto lightPixels = [&] {
        const QImage image = chart.grab().toImage();
        int light = 0;
        for (int y = 0; y < image.height(); y += 4) {
            for (int x = 0; x < image.width(); x += 4)
                light += image.pixelColor(x, y).lightness() > 200 ? 1 : 0;
        }
        return light;
    };
    QApplication::setPalette(paperPalette());
    const int onPaper = lightPixels();
    QApplication::setPalette(lampPalette());
    QCoreApplication::processEvents();
    const int underLamp = lightPixels();
    QApplication::setPalette(paperPalette());
    EXPECT_GT(onPaper, 2000);
    EXPECT_LT(underLamp, onPaper / 10);
}

TEST(SeriesLookTest, fourSeriesDifferInHueDashMarkAndHatch) {
    for (const QPalette& palette : {paperPalette(), lampPalette()}) {
        std::set<QRgb> hues;
        std::set<int> dashes, marks, hatches;
        for (std::size_t i = 0; i < 4; ++i) {
            const SeriesLook look = seriesLook(i, palette);
            hues.insert(look.pen.color().rgb());
            dashes.insert(static_cast<int>(look.pen.style()));
            marks.insert(look.mark);
            hatches.insert(static_cast<int>(look.bar.style()));
        }
        EXPECT_EQ(hues.size(), 4U);
        EXPECT_EQ(dashes.size(), 4U);
        EXPECT_EQ(marks.size(), 4U);
        EXPECT_EQ(hatches.size(), 4U);
    }
}

}  // namespace
}  // namespace fayline
