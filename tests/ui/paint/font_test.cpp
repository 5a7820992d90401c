// The bundled font as Qt sees it against the table that core works with.
#include "paint/font.h"

#include <gtest/gtest.h>

#include <QFontInfo>
#include <QFontMetricsF>
#include <QRawFont>

#include "sheet/font_metrics.h"

namespace fayline {
namespace {

class BundledFont : public testing::TestWithParam<shape::Weight> {
  protected:
    void SetUp() override { ASSERT_TRUE(registerBundledFont()); }
    QFont sized(int pixels) {
        QFont font = bundledFont(GetParam());
        font.setPixelSize(pixels);
        return font;
    }
};

TEST_P(BundledFont, IsTheOneThatIsUsed) {
    const QRawFont raw = QRawFont::fromFont(sized(20));
    EXPECT_EQ(raw.familyName(), QStringLiteral("DejaVu Sans"));
    EXPECT_EQ(raw.weight() >= QFont::Bold, GetParam() == shape::Weight::bold);
    EXPECT_EQ(raw.unitsPerEm(), 2048.0);
}

TEST_P(BundledFont, EveryCharacterOfTheTableIsAsWideAsQtSays) {
    const QFont font = sized(2048);
    const QFontMetricsF metrics(font);
    const QRawFont raw = QRawFont::fromFont(font);
    int compared = 0;
    for (char32_t code = 0x20; code < 0x2700; ++code) {
        const QString text = QString::fromUcs4(&code, 1);
        const bool held = (code < 0x7F || code >= 0xA0) &&
                          (code < 0x300 || (code >= 0x370 && code < 0x530) || code >= 0x2010);
        if (!held || !raw.supportsCharacter(code) || !text.at(0).isPrint()) continue;
        const double told = advanceInEms(text.toStdString(), GetParam());
        if (told == advanceInEms("\xFF", GetParam()) && code >= 0x2060)
            continue;  // not in the table's ranges
        EXPECT_NEAR(metrics.horizontalAdvance(text), told * 2048.0, 0.6)
            << std::hex << static_cast<unsigned>(code);
        ++compared;
    }
    EXPECT_GT(compared, 2000);
}

TEST_P(BundledFont, WholeTextsToo) {
    const QFont font = sized(1000);
    const QFontMetricsF metrics(font);
    for (const char* text :
         {"AVATAR To. fi ffl Wy", "F14, looking aft", "3/8\" × 4-1/2\"", "⌀8.2 ↧45", "12⅝ − ½"}) {
        EXPECT_NEAR(metrics.horizontalAdvance(QString::fromUtf8(text)),
                    advanceInEms(text, GetParam()) * 1000.0, 1.0)
            << text;
    }
}

TEST_P(BundledFont, CapitalsAreAsHighAsTheTableSays) {
    const QFontMetricsF metrics(sized(2048));
    EXPECT_NEAR(metrics.tightBoundingRect(QStringLiteral("H")).height(),
                capitalHeightInEms() * 2048.0, 1.0);
}

TEST_P(BundledFont, SmallTextOnTheScreenKeepsItsWidth) {
    const QFontMetricsF metrics(sized(11));
    const char* text = "outside the formula's range";
    EXPECT_NEAR(metrics.horizontalAdvance(QString::fromUtf8(text)),
                advanceInEms(text, GetParam()) * 11.0, 0.6);
}

INSTANTIATE_TEST_SUITE_P(Weights, BundledFont,
                         testing::Values(shape::Weight::regular, shape::Weight::bold));

}  // namespace
}  // namespace fayline
