// Writes example pictures into a folder, for looking at: profile and section, light and dark, plain
// and at double resolution, and a printed page of both.
#include <QGuiApplication>
#include <QImage>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <iostream>

#include "example.h"
#include "paint/font.h"
#include "paint/paint.h"

using namespace fayline;

namespace {

QPalette plain(bool dark) {
    QPalette palette;
    palette.setColor(QPalette::Base, dark ? QColor(0x21, 0x25, 0x27) : QColor(0xFF, 0xFE, 0xFA));
    palette.setColor(QPalette::Text, dark ? QColor(0xE6, 0xE3, 0xDA) : QColor(0x20, 0x2B, 0x33));
    palette.setColor(QPalette::Highlight,
                     dark ? QColor(0x7F, 0xB6, 0xDE) : QColor(0x1F, 0x5C, 0x86));
    return palette;
}

SizeMm sizeOf(int width, int height) {
    return {width * 25.4 / 96.0, height * 25.4 / 96.0};
}

void picture(const QString& path, const Drawing& drawing, bool dark, double ratio) {
    const PaintStyle style = screenStyle(plain(dark));
    const PaintMap map;
    QImage image(
        QSizeF(drawing.size.width * map.perMm * ratio, drawing.size.height * map.perMm * ratio)
            .toSize(),
        QImage::Format_RGB32);
    image.setDevicePixelRatio(ratio);
    image.fill(style.paper);
    QPainter painter(&image);
    paintDrawing(painter, drawing, map, style);
    painter.end();
    image.save(path);
}

void page(const QString& path) {
    QPdfWriter writer(path);
    writer.setPageSize(QPageSize(QPageSize::A4));
    writer.setPageOrientation(QPageLayout::Landscape);
    writer.setPageMargins(QMarginsF(0, 0, 0, 0), QPageLayout::Millimeter);
    writer.setResolution(1200);
    QPainter painter(&writer);
    PaintMap map;
    map.perMm = 1200.0 / 25.4;
    map.origin = QPointF(15 * map.perMm, 15 * map.perMm);
    DrawFormat format{{267, 90}, 2.5, UnitSystem::inches, {}};
    paintDrawing(painter, profileDrawing(example::profile(), format), map, printStyle());
    map.origin.ry() = 110 * map.perMm;
    format.size = {120, 90};
    paintDrawing(painter, sectionDrawing(example::section(), format), map, printStyle());
}

}  // namespace

int main(int argc, char** argv) {
    QGuiApplication application(argc, argv);
    if (argc != 2 || !registerBundledFont()) {
        std::cerr << "usage: sheet_pictures FOLDER\n";
        return 2;
    }
    const QString folder = QString::fromLocal8Bit(argv[1]) + QLatin1Char('/');
    for (const bool dark : {false, true}) {
        for (const int ratio : {1, 2}) {
            const QString end = QStringLiteral("-%1-%2x.png")
                                    .arg(dark ? QStringLiteral("dark") : QStringLiteral("light"))
                                    .arg(ratio);
            DrawFormat format{sizeOf(1236, 230), 2.1, UnitSystem::inches, {}};
            ProfileInput profile = example::profile();
            profile.selected = "F14";
            picture(folder + QStringLiteral("profile") + end, profileDrawing(profile, format), dark,
                    ratio);
            profile = example::profileWithFrames(60);
            profile.selected = "K.6";
            format.size = sizeOf(700, 260);
            picture(folder + QStringLiteral("dense") + end, profileDrawing(profile, format), dark,
                    ratio);
            format.size = sizeOf(400, 330);
            SectionInput section = example::section();
            section.selected = "K.6";
            picture(folder + QStringLiteral("section") + end, sectionDrawing(section, format), dark,
                    ratio);
        }
    }
    DrawFormat format{sizeOf(500, 160), 2.1, UnitSystem::millimetres, {}};
    picture(folder + QStringLiteral("empty.png"), profileDrawing({}, format), false, 1);
    ProfileInput bare = example::profile();
    bare.keel.clear();
    bare.ballast.clear();
    bare.bolts.clear();
    bare.frames.clear();
    picture(folder + QStringLiteral("bare.png"), profileDrawing(bare, format), false, 1);
    page(folder + QStringLiteral("page.pdf"));
    return 0;
}
