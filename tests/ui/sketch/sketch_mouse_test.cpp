#include <QApplication>
#include <QHelpEvent>
#include <QScrollBar>
#include <QTest>
#include <QToolTip>
#include <cmath>

#include "sheet/profile.h"
#include "sketch_fixture.h"

namespace fayline {
namespace {

TEST_F(SketchTest, ClickChoosesTheFrameUnderIt) {
    QTest::mouseClick(view_.viewport(), Qt::LeftButton, {}, stopPlace("F14"));
    EXPECT_EQ(chosen_, QStringList{QStringLiteral("F14")});
    EXPECT_EQ(view_.selectedId(), QStringLiteral("F14"));
    QTest::mouseClick(view_.viewport(), Qt::LeftButton, {}, stopPlace("K.6"));
    EXPECT_EQ(view_.selectedId(), QStringLiteral("K.6"));
}

TEST_F(SketchTest, ClickOnNothingChoosesNothing) {
    view_.setSelected(QStringLiteral("F9"));
    QTest::mouseClick(view_.viewport(), Qt::LeftButton, {}, QPoint(2, 2));
    QTest::mouseClick(view_.viewport(), Qt::RightButton, {}, stopPlace("F14"));
    EXPECT_TRUE(chosen_.isEmpty());
    EXPECT_EQ(view_.selectedId(), QStringLiteral("F9"));
}

TEST_F(SketchTest, DoubleClickActivates) {
    QTest::mouseDClick(view_.viewport(), Qt::LeftButton, {}, stopPlace("F14"));
    EXPECT_EQ(activated_, QStringList{QStringLiteral("F14")});
}

TEST_F(SketchTest, SetSelectedIsSilentAndOutlivesARefresh) {
    view_.setSelected(QStringLiteral("F14"));
    view_.refresh();
    EXPECT_TRUE(chosen_.isEmpty());
    EXPECT_EQ(view_.selectedId(), QStringLiteral("F14"));
}

TEST_F(SketchTest, ControlWheelZoomsAtThePointer) {
    const QPoint place = stopPlace("K.6");
    for (int i = 0; i < 8; ++i) wheel(place, {0, 120}, Qt::ControlModifier);
    EXPECT_NEAR(view_.zoom(), std::pow(1.2, 8), 1e-9);
    EXPECT_LE((stopPlace("K.6") - place).manhattanLength(), 2 + 8)
        << "a pixel of rounding a turn at most";
    for (int i = 0; i < 8; ++i) wheel(place, {0, -120}, Qt::ControlModifier);
    EXPECT_NEAR(view_.zoom(), 1.0, 1e-9);
    EXPECT_EQ(scrolled(), QPoint(0, 0));
}

TEST_F(SketchTest, WheelScrollsAndWithShiftSideways) {
    view_.setZoom(4.0);
    const QPoint before = scrolled();
    wheel({500, 100}, {0, -120});
    EXPECT_EQ(scrolled() - before, QPoint(0, 60));
    wheel({500, 100}, {0, -120}, Qt::ShiftModifier);
    EXPECT_EQ(scrolled() - before, QPoint(60, 60));
    wheel({500, 100}, {120, 0});
    EXPECT_EQ(scrolled() - before, QPoint(0, 60));
    EXPECT_NEAR(view_.zoom(), 4.0, 1e-12);
}

TEST_F(SketchTest, AllOfItFitsWithoutScrollBars) {
    for (const QSize size : {QSize(1000, 260), QSize(333, 177), QSize(1237, 501)}) {
        view_.resize(size);
        QCoreApplication::processEvents();
        EXPECT_EQ(view_.horizontalScrollBar()->maximum(), 0);
        EXPECT_EQ(view_.verticalScrollBar()->maximum(), 0);
        EXPECT_FALSE(view_.horizontalScrollBar()->isVisible());
    }
}

TEST_F(SketchTest, MiddleButtonDragsThePicture) {
    view_.setZoom(4.0);
    const QPoint before = scrolled();
    QTest::mousePress(view_.viewport(), Qt::MiddleButton, {}, QPoint(500, 100));
    QTest::mouseMove(view_.viewport(), QPoint(460, 90));
    QTest::mouseRelease(view_.viewport(), Qt::MiddleButton, {}, QPoint(460, 90));
    EXPECT_EQ(scrolled() - before, QPoint(40, 10));
    QTest::mouseMove(view_.viewport(), QPoint(300, 90));
    EXPECT_EQ(scrolled() - before, QPoint(40, 10));
    EXPECT_TRUE(chosen_.isEmpty());
}

TEST_F(SketchTest, SpaceAndLeftButtonDragToo) {
    view_.setZoom(4.0);
    const QPoint before = scrolled();
    QTest::keyPress(&view_, Qt::Key_Space);
    QTest::mousePress(view_.viewport(), Qt::LeftButton, {}, QPoint(500, 100));
    QTest::mouseMove(view_.viewport(), QPoint(530, 100));
    QTest::mouseRelease(view_.viewport(), Qt::LeftButton, {}, QPoint(530, 100));
    QTest::keyRelease(&view_, Qt::Key_Space);
    EXPECT_EQ(scrolled() - before, QPoint(-30, 0));
    EXPECT_TRUE(chosen_.isEmpty());
    QTest::mouseClick(view_.viewport(), Qt::LeftButton, {}, QPoint(500, 100));
    EXPECT_EQ(scrolled() - before, QPoint(-30, 0)) << "released: a click is a click again";
}

TEST_F(SketchTest, TipOfWhatLiesUnderThePointer) {
    QStringList asked;
    view_.setTip([&](const QString& id) {
        asked << id;
        return QStringLiteral("tip of ") + id;
    });
    const QPoint place = stopPlace("F19");
    QHelpEvent help(QEvent::ToolTip, place, view_.viewport()->mapToGlobal(place));
    QApplication::sendEvent(view_.viewport(), &help);
    EXPECT_EQ(asked, QStringList{QStringLiteral("F19")});
    EXPECT_EQ(QToolTip::text(), QStringLiteral("tip of F19"));
    QToolTip::hideText();
}

TEST_F(SketchTest, ZoomedTextKeepsItsSizeAndMoreOfItFits) {
    const auto names = [&] {
        int count = 0;
        for (const DrawItem& item : view_.drawing().items) {
            const auto* text = std::get_if<shape::Text>(&item.shape);
            count += text && text->text.starts_with("F") && text->text != "FWD" ? 1 : 0;
        }
        return count;
    };
    const int before = names();
    view_.setZoom(5.0);
    EXPECT_EQ(names(), 37);
    EXPECT_LT(before, 37);
}

TEST_F(SketchTest, ADrawingOfItsOwnGrowsWithTheZoom) {
    const Drawing fixed = profileDrawing({}, {{100.0, 50.0}, 2.1, UnitSystem::inches, {}});
    view_.setDrawing(fixed);
    const double before = (view_.placeOf({100, 0}) - view_.placeOf({0, 0})).x();
    EXPECT_NEAR(before, 520.0, 1.0) << "260 high for 50 mm";
    view_.setZoom(3.0);
    EXPECT_NEAR((view_.placeOf({100, 0}) - view_.placeOf({0, 0})).x(), 3.0 * before, 1e-6);
}

}  // namespace
}  // namespace fayline
