#include "paint/style.h"

#include <gtest/gtest.h>

#include "sheet/marks.h"

namespace fayline {
namespace {

constexpr std::array every{Status::isShort, Status::near, Status::unknown,
                           Status::outside, Status::ok,   Status::unloaded};

struct Ground {
    const char* name;
    QColor base, text;
};
void PrintTo(const Ground& ground, std::ostream* out) {
    *out << ground.name;
}

class ScreenStyle : public testing::TestWithParam<Ground> {
  protected:
    PaintStyle style_ = [] {
        QPalette palette;
        palette.setColor(QPalette::Base, GetParam().base);
        palette.setColor(QPalette::Text, GetParam().text);
        palette.setColor(QPalette::Highlight, QColor(0x30, 0x70, 0xA0));
        return screenStyle(palette);
    }();
    QColor line(Role role) { return style_.look(role).line; }
    QColor fill(Role role) { return style_.look(role).fill; }
};

TEST_P(ScreenStyle, TextReadsOnPaperAndHull) {
    for (const Role role :
         {Role::label, Role::muted, Role::waterline, Role::dimension, Role::outline}) {
        EXPECT_GE(contrastRatio(line(role), style_.paper), 4.5) << static_cast<int>(role);
        EXPECT_GE(contrastRatio(line(role), fill(Role::hull)), 4.5) << static_cast<int>(role);
    }
    for (const Status status : every) {
        EXPECT_GE(contrastRatio(line(statusRole(status)), style_.paper), 4.5) << nameOf(status);
    }
}

TEST_P(ScreenStyle, TimbersAndBoltsStandOut) {
    const QColor hull = fill(Role::hull);
    EXPECT_GE(contrastRatio(fill(Role::frame), hull), 3.0);
    EXPECT_GE(contrastRatio(fill(Role::floor), hull), 4.5);
    for (const Role role : {Role::timber, Role::ballast})
        EXPECT_GE(contrastRatio(line(role), hull), 3.0);
    for (const Role bolt : {Role::bolt, Role::boltShort, Role::boltNear, Role::boltUnknown}) {
        for (const Role under : {Role::timber, Role::ballast}) {
            EXPECT_GE(contrastRatio(line(bolt), fill(under)), 3.0)
                << static_cast<int>(bolt) << " on " << static_cast<int>(under);
        }
    }
}

TEST_P(ScreenStyle, SelectionIsThePalettesAndNoStatus) {
    EXPECT_EQ(line(Role::selection), QColor(0x30, 0x70, 0xA0));
    for (const Status status : every) EXPECT_NE(line(Role::selection), line(statusRole(status)));
}

INSTANTIATE_TEST_SUITE_P(
    Grounds, ScreenStyle,
    testing::Values(Ground{"white", QColor(0xFF, 0xFF, 0xFF), QColor(0, 0, 0)},
                    Ground{"paper", QColor(0xFF, 0xFE, 0xFA), QColor(0x20, 0x2B, 0x33)},
                    Ground{"lamp", QColor(0x21, 0x25, 0x27), QColor(0xE6, 0xE3, 0xDA)},
                    Ground{"dark", QColor(0x1B, 0x1E, 0x20), QColor(0xFC, 0xFC, 0xFC)}),
    testing::PrintToStringParamName());

TEST(PrintStyle, BlackAndWhiteOnly) {
    const PaintStyle style = printStyle();
    for (const RoleLook& look : style.looks) {
        EXPECT_TRUE(look.line == QColor(Qt::black) || look.line == QColor(Qt::white));
        EXPECT_TRUE(!look.fill.isValid() || look.fill == QColor(Qt::black) ||
                    look.fill == QColor(Qt::white));
    }
    EXPECT_GT(style.leastStrokeMm, 0.1);
    EXPECT_FALSE(style.look(Role::ballast).hatch.empty());
    EXPECT_FALSE(style.look(Role::timber).hatch.empty());
}

TEST(Contrast, FiguresOfTheGuideline) {
    EXPECT_NEAR(contrastRatio(Qt::black, Qt::white), 21.0, 1e-6);
    EXPECT_NEAR(contrastRatio(Qt::white, Qt::white), 1.0, 1e-12);
    // #767676 is the lightest grey that reaches 4.5:1 on white; #777777 does not.
    EXPECT_GE(contrastRatio(QColor(0x76, 0x76, 0x76), Qt::white), 4.5);
    EXPECT_LT(contrastRatio(QColor(0x77, 0x77, 0x77), Qt::white), 4.5);
}

}  // namespace
}  // namespace fayline
