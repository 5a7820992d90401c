#include <QLineEdit>
#include <QScrollBar>
#include <QTest>
#include <QVBoxLayout>

#include "example.h"
#include "sketch_fixture.h"

namespace fayline {
namespace {

TEST_F(SketchTest, ArrowsGoFromFrameToFrame) {
    key(Qt::Key_Right);
    key(Qt::Key_Right);
    key(Qt::Key_Right);
    key(Qt::Key_Left);
    EXPECT_EQ(chosen_, (QStringList{QStringLiteral("F1"), QStringLiteral("F2"),
                                    QStringLiteral("F3"), QStringLiteral("F2")}));
    EXPECT_EQ(view_.selectedId(), QStringLiteral("F2"));
}

TEST_F(SketchTest, StopsAtTheEnds) {
    key(Qt::Key_End);
    key(Qt::Key_Right);
    EXPECT_EQ(view_.selectedId(), QStringLiteral("F37"));
    key(Qt::Key_Home);
    key(Qt::Key_Left);
    EXPECT_EQ(view_.selectedId(), QStringLiteral("F1"));
    EXPECT_EQ(chosen_, (QStringList{QStringLiteral("F37"), QStringLiteral("F1")}))
        << "no signal where nothing changes";
}

TEST_F(SketchTest, DownGoesToTheNearestBoltAndBack) {
    view_.setSelected(QStringLiteral("F19"));  // at 4910 mm; K.5 is at 4960
    key(Qt::Key_Down);
    EXPECT_EQ(view_.selectedId(), QStringLiteral("K.5"));
    key(Qt::Key_Right);
    EXPECT_EQ(view_.selectedId(), QStringLiteral("K.6"));
    key(Qt::Key_Up);  // K.6 is at 5260, F20 at 5140, F21 at 5370
    EXPECT_EQ(view_.selectedId(), QStringLiteral("F21"));
}

TEST_F(SketchTest, EnterActivatesWhatIsChosen) {
    key(Qt::Key_Return);
    EXPECT_TRUE(activated_.isEmpty());
    view_.setSelected(QStringLiteral("F9"));
    key(Qt::Key_Return);
    key(Qt::Key_Enter, Qt::KeypadModifier);
    EXPECT_EQ(activated_, (QStringList{QStringLiteral("F9"), QStringLiteral("F9")}));
    EXPECT_TRUE(chosen_.isEmpty());
}

TEST_F(SketchTest, ControlPlusMinusAndNoughtZoom) {
    key(Qt::Key_Plus, Qt::ControlModifier);
    key(Qt::Key_Equal, Qt::ControlModifier);
    EXPECT_NEAR(view_.zoom(), 1.25 * 1.25, 1e-12);
    key(Qt::Key_Minus, Qt::ControlModifier);
    EXPECT_NEAR(view_.zoom(), 1.25, 1e-12);
    key(Qt::Key_0, Qt::ControlModifier);
    EXPECT_EQ(view_.zoom(), 1.0);
    key(Qt::Key_Minus, Qt::ControlModifier);
    EXPECT_EQ(view_.zoom(), 1.0) << "never smaller than fits";
    for (int i = 0; i < 40; ++i) key(Qt::Key_Plus, Qt::ControlModifier);
    EXPECT_EQ(view_.zoom(), SketchView::mostZoom);
}

TEST_F(SketchTest, SteppingBringsTheChosenIntoView) {
    view_.setZoom(6.0);
    for (const int at : {Qt::Key_Home, Qt::Key_End}) {
        key(at);
        const QRectF seen = view_.viewport()->rect();
        EXPECT_GE(stopPlace(view_.selectedId().toStdString()).x(), seen.left());
        EXPECT_LE(stopPlace(view_.selectedId().toStdString()).x(), seen.right());
    }
}

TEST_F(SketchTest, TabLeaves) {
    QWidget window;
    auto* layout = new QVBoxLayout(&window);
    auto* before = new QLineEdit(&window);
    auto* sketch = new SketchView(&window);
    auto* after = new QLineEdit(&window);
    for (QWidget* widget : {static_cast<QWidget*>(before), static_cast<QWidget*>(sketch),
                            static_cast<QWidget*>(after)}) {
        layout->addWidget(widget);
    }
    window.show();
    window.activateWindow();
    sketch->setFocus();
    QCoreApplication::processEvents();
    ASSERT_TRUE(sketch->hasFocus());
    QTest::keyClick(sketch, Qt::Key_Tab);
    EXPECT_TRUE(after->hasFocus());
    QTest::keyClick(after, Qt::Key_Backtab);
    EXPECT_TRUE(sketch->hasFocus());
}

TEST_F(SketchTest, AnEmptyDrawingTakesEveryKey) {
    view_.setMaker([](const SketchRoom& room) {
        return profileDrawing({}, {room.size, room.letterMm, {}, {}});
    });
    for (const int at :
         {Qt::Key_Left, Qt::Key_Right, Qt::Key_Up, Qt::Key_Down, Qt::Key_Home, Qt::Key_Return})
        key(at);
    view_.setZoom(5.0);
    EXPECT_TRUE(chosen_.isEmpty());
}

TEST_F(SketchTest, TellsScreenReadersWhatIsChosen) {
    view_.setAccessibleName(QStringLiteral("Side profile"));
    view_.setTip([](const QString& id) { return id + QStringLiteral(": floor short, ×0.80"); });
    view_.setSelected(QStringLiteral("F19"));
    EXPECT_EQ(view_.accessibleName(), QStringLiteral("Side profile"));
    EXPECT_EQ(view_.accessibleDescription(), QStringLiteral("F19: floor short, ×0.80"));
    view_.setSelected({});
    EXPECT_TRUE(view_.accessibleDescription().isEmpty());
}

}  // namespace
}  // namespace fayline
