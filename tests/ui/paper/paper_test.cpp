// Sheets as PDF, read back by other programs.
#include "paper/paper.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "paint/font.h"
#include "paper_fixture.h"
#include "sheet/font_metrics.h"

namespace fayline {
namespace {

using test::PaperHull;

QString output(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(60000) || process.exitCode() != 0) return {};
    return QString::fromUtf8(process.readAllStandardOutput());
}

struct Word {
    double left, top, right, bottom;
    QString text;
};

/// The words of each page, in millimetres, as pdftotext finds them.
std::vector<std::vector<Word>> wordsOf(const QString& path) {
    std::vector<std::vector<Word>> pages;
    static const QRegularExpression word(
        QStringLiteral("<word xMin=\"([0-9.]+)\" yMin=\"([0-9.]+)\" xMax=\"([0-9.]+)\" "
                       "yMax=\"([0-9.]+)\">(.*)</word>"));
    const QString xml =
        output(QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), path, QStringLiteral("-")});
    for (const QString& line : xml.split(QLatin1Char('\n'))) {
        if (line.contains(QLatin1String("<page"))) pages.emplace_back();
        const auto match = word.match(line);
        if (!match.hasMatch()) continue;
        const auto mm = [&](int part) { return match.captured(part).toDouble() * 25.4 / 72.0; };
        pages.back().push_back({mm(1), mm(2), mm(3), mm(4), match.captured(5)});
    }
    return pages;
}

class Pdf : public testing::Test {
  protected:
    void SetUp() override { ASSERT_TRUE(registerBundledFont()); }
    [[nodiscard]] QString path(const char* name) const {
        return folder_.filePath(QString::fromLatin1(name));
    }
    QTemporaryDir folder_;
};

/// Height of the ink of one letter, in millimetres, on a page at 600 dpi.
double inkHeight(const QString& pdf, const QString& base) {
    output(QStringLiteral("pdftoppm"),
           {QStringLiteral("-r"), QStringLiteral("600"), QStringLiteral("-gray"),
            QStringLiteral("-singlefile"), QStringLiteral("-x"), QStringLiteral("0"),
            QStringLiteral("-y"), QStringLiteral("0"), QStringLiteral("-W"), QStringLiteral("1200"),
            QStringLiteral("-H"), QStringLiteral("1200"), pdf, base});
    const QImage image(base + QStringLiteral(".pgm"));
    int first = -1, last = -1;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (qGray(image.pixel(x, y)) > 127) continue;
            if (first < 0) first = y;
            last = y;
            break;
        }
    }
    return first < 0 ? 0.0 : (last - first + 1) * 25.4 / 600.0;
}

TEST_F(Pdf, CapitalsAreAsHighAsTheyAreAskedToBe) {
    double box = 0.0;
    for (const double letter : {3.5, 5.0, 10.0}) {
        SheetPage page;
        page.drawing.size = sizeOf(PaperSize::a4);
        shape::Text text;
        text.anchor = {20, 30};
        text.text = "H";
        text.letterMm = letter;
        page.drawing.items.push_back({Role::label, {}, text});
        const auto written = writePdf(path("h.pdf"), {&page}, QStringLiteral("H"));
        ASSERT_TRUE(written);
        EXPECT_NEAR(inkHeight(path("h.pdf"), path("h")), letter, 0.06) << "one pixel is 0.04 mm";
        const auto words = wordsOf(path("h.pdf"));
        ASSERT_EQ(words.size(), 1U);
        ASSERT_EQ(words[0].size(), 1U);
        // The box other programs put around a word stands in a fixed ratio to its capitals.
        const double ratio = (words[0][0].bottom - words[0][0].top) / letter;
        if (box > 0.0) {
            EXPECT_NEAR(ratio, box, 0.01);
        }
        box = ratio;
    }
}

TEST_F(Pdf, EveryWordReadBackIsHighEnoughAndInsideTheMargins) {
    SheetPage gauge;
    gauge.drawing.size = sizeOf(PaperSize::a4);
    shape::Text text;
    text.anchor = {20, 30};
    text.text = "H";
    text.letterMm = 3.5;
    gauge.drawing.items.push_back({Role::label, {}, text});
    ASSERT_TRUE(writePdf(path("h.pdf"), {&gauge}, QStringLiteral("H")));
    const Word h = wordsOf(path("h.pdf"))[0][0];
    const double least = (h.bottom - h.top) * 0.995;
    const double large = (h.bottom - h.top) * 5.0 / 3.5 * 0.995;
    for (const PaperSize paper : {PaperSize::a4, PaperSize::letter}) {
        const PaperHull hull;
        for (const Sheet& sheet : hull.sheets(paper)) {
            ASSERT_TRUE(writePdf(path("s.pdf"), sheet));
            const auto pages = wordsOf(path("s.pdf"));
            ASSERT_EQ(pages.size(), sheet.pages.size()) << sheet.id;
            for (std::size_t p = 0; p < pages.size(); ++p) {
                int figures = 0;
                for (const Word& word : pages[p]) {
                    EXPECT_GE(word.bottom - word.top, least)
                        << sheet.id << ": " << word.text.toStdString();
                    EXPECT_GT(word.left, 15.0) << word.text.toStdString();
                    EXPECT_LT(word.right, sizeOf(paper).width - 9.0) << word.text.toStdString();
                    EXPECT_LT(word.bottom, sizeOf(paper).height - 4.0) << word.text.toStdString();
                    if (word.bottom - word.top >= large) ++figures;
                }
                EXPECT_GE(figures, static_cast<int>(sheet.pages[p].holes.size())) << sheet.id;
            }
        }
    }
}

TEST_F(Pdf, HoldsItsFontsAndItsWordsAndStaysSmall) {
    const PaperHull hull;
    const Sheet sheet = hull.sheet("F5");
    ASSERT_TRUE(writePdf(path("F5.pdf"), sheet));
    const QString words =
        output(QStringLiteral("pdftotext"), {path("F5.pdf"), QStringLiteral("-")});
    for (const char* word : {"F5", "PORT", "STARBOARD", "P5-A1", "S5-H2", "drilled", "naval"})
        EXPECT_TRUE(words.contains(QString::fromLatin1(word))) << word;
    EXPECT_TRUE(words.contains(QString::fromStdString(sheet.revision)));
    const QString fonts = output(QStringLiteral("pdffonts"), {path("F5.pdf")});
    EXPECT_EQ(fonts.split(QLatin1Char('\n'), Qt::SkipEmptyParts).size(), 4)
        << "regular and bold, nothing else\n"
        << fonts.toStdString();
    EXPECT_LT(QFileInfo(path("F5.pdf")).size(), 150'000);
}

TEST_F(Pdf, AFailureSaysSoAndLeavesWhatWasThere) {
    const PaperHull hull;
    const Sheet sheet = hull.sheet("F5");
    const auto nowhere = writePdf(path("no/such/folder/F5.pdf"), sheet);
    ASSERT_FALSE(nowhere);
    EXPECT_EQ(nowhere.error().code, "file.write");
    EXPECT_FALSE(nowhere.error().allowed.empty());
    const auto empty = writePdf(path("none.pdf"), std::vector<const SheetPage*>{}, {});
    ASSERT_FALSE(empty);
    EXPECT_EQ(empty.error().code, "pdf.empty");
    EXPECT_FALSE(QFileInfo::exists(path("none.pdf")));
    ASSERT_TRUE(writePdf(path("F5.pdf"), sheet));
    EXPECT_EQ(QDir(folder_.path()).entryList(QDir::Files).size(), 1) << "nothing is left aside";
}

TEST_F(Pdf, ScreenAndPaperAreOneDrawing) {
    const PaperHull hull;
    const Sheet sheet = hull.sheet("F5");
    const SizeMm size = sheet.pages[0].drawing.size;
    QImage image(int(size.width * 4), int(size.height * 4), QImage::Format_RGB32);
    image.fill(Qt::white);
    {
        QPainter painter(&image);
        paintPage(painter, sheet.pages[0], 4.0);
    }
    int dark = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) dark += qGray(image.pixel(x, y)) < 128 ? 1 : 0;
    }
    EXPECT_GT(dark, image.width() * image.height() / 50);
    EXPECT_LT(dark, image.width() * image.height() / 4);
}

}  // namespace
}  // namespace fayline
