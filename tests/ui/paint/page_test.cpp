// A page on paper: true lengths, the font inside the file, its words readable by others.
#include <gtest/gtest.h>

#include <QImage>
#include <QImageReader>
#include <QPainter>
#include <QPdfWriter>
#include <QProcess>
#include <QTemporaryDir>

#include "example.h"
#include "paint/font.h"
#include "paint/paint.h"

namespace fayline {
namespace {

QString output(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(60000) || process.exitCode() != 0) return {};
    return QString::fromUtf8(process.readAllStandardOutput());
}

class Page : public testing::Test {
  protected:
    void SetUp() override { ASSERT_TRUE(registerBundledFont()); }

    QString written(const std::vector<DrawItem>& items) {
        const QString path = folder_.filePath(QStringLiteral("page.pdf"));
        QPdfWriter writer(path);
        writer.setPageSize(QPageSize(QPageSize::A4));
        writer.setPageMargins(QMarginsF(0, 0, 0, 0), QPageLayout::Millimeter);
        writer.setResolution(1200);
        QPainter painter(&writer);
        paintItems(painter, items, PaintMap{1200 / 25.4, {}}, printStyle());
        return path;
    }

    /// The page at 600 dpi, as another program sees it.
    QImage rastered(const QString& path) {
        const QString base = folder_.filePath(QStringLiteral("seen"));
        output(QStringLiteral("pdftoppm"),
               {QStringLiteral("-r"), QStringLiteral("600"), QStringLiteral("-gray"),
                QStringLiteral("-singlefile"), path, base});
        QImageReader reader(base + QStringLiteral(".pgm"));
        QImageReader::setAllocationLimit(512);
        return reader.read();
    }

    QTemporaryDir folder_;
};

/// First to last dark pixel along a row or column, in millimetres.
double extent(const QImage& image, int at, bool along) {
    int first = -1, last = -1;
    for (int i = 0; i < (along ? image.width() : image.height()); ++i) {
        if (qGray(along ? image.pixel(i, at) : image.pixel(at, i)) > 127) continue;
        if (first < 0) first = i;
        last = i;
    }
    return first < 0 ? 0.0 : (last - first + 1) * 25.4 / 600.0;
}

TEST_F(Page, LengthsAreTrueBothWays) {
    const QImage page =
        rastered(written({{Role::label, {}, shape::Line{{50, 60}, {150, 60}, {0.5, {}}}},
                          {Role::label, {}, shape::Line{{30, 100}, {30, 201.6}, {0.5, {}}}}}));
    ASSERT_FALSE(page.isNull()) << "pdftoppm is needed";
    const auto pixel = [](double mm) { return qRound(mm * 600.0 / 25.4); };
    EXPECT_NEAR(extent(page, pixel(60.0), true), 100.0, 0.1);
    EXPECT_NEAR(extent(page, pixel(30.0), false), 101.6, 0.1);
}

TEST_F(Page, ThinLinesStayVisible) {
    const QImage page =
        rastered(written({{Role::label, {}, shape::Line{{50, 60}, {150, 60}, {}}}}));
    ASSERT_FALSE(page.isNull());
    int dark = 0;
    for (int y = 0; y < page.height(); ++y) dark += qGray(page.pixel(2400, y)) < 128 ? 1 : 0;
    EXPECT_GE(dark, 4) << "0.18 mm are 4.25 pixels";
    EXPECT_LE(dark, 5);
}

TEST_F(Page, WordsAndFontAreInTheFile) {
    const DrawFormat format{{180, 80}, 2.5, UnitSystem::inches, {}};
    const QString path = written(profileDrawing(example::profile(), format).items);
    const QString words = output(QStringLiteral("pdftotext"), {path, QStringLiteral("-")});
    for (const char* word : {"FWD", "LWL", "worst margin", "F19", "K.6", "short"}) {
        EXPECT_TRUE(words.contains(QString::fromLatin1(word))) << word;
    }
    const QString fonts = output(QStringLiteral("pdffonts"), {path});
    EXPECT_TRUE(fonts.contains(QStringLiteral("DejaVuSans")));
    EXPECT_TRUE(fonts.contains(QStringLiteral("DejaVuSans-Bold")));
    const QStringList lines = fonts.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    for (int i = 2; i < lines.size(); ++i) {
        EXPECT_TRUE(lines[i].contains(QStringLiteral("yes")))
            << "embedded: " << lines[i].toStdString();
    }
    EXPECT_EQ(lines.size(), 4) << "two heading lines, regular and bold, nothing else";
}

}  // namespace
}  // namespace fayline
