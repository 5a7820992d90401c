// Writes pictures of the window into a folder, for looking at: every page, light and dark; on the
// demo hull or another project: window_pictures FOLDER [PROJECT [FRAME]]
#include <QApplication>
#include <QDir>
#include <iostream>

#include "services.h"
#include "store/project_file.h"
#include "window/pictures.h"

int main(int argc, char** argv) {
    using namespace fayline;
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const QDir folder(argc > 1 ? QString::fromLocal8Bit(argv[1]) : QStringLiteral("."));
    const test::DemoFile demo;
    test::decideFastenings(demo.path());
    const QString project = argc > 2 ? QString::fromLocal8Bit(argv[2]) : demo.path();
    const QString at = argc > 3 ? QString::fromLocal8Bit(argv[3]) : QStringLiteral("F20");
    std::vector<PictureWish> wishes;
    for (const bool dark : {false, true}) {
        const QString look = dark ? QStringLiteral("dark") : QStringLiteral("light");
        const auto wish = [&](const QString& name, const QString& page, const QString& frame,
                              bool working, int part = 0) {
            PictureWish made;
            made.project = project;
            made.picture = folder.filePath(name + QLatin1Char('-') + look + QStringLiteral(".png"));
            made.page = page;
            made.frame = frame;
            made.working = working;
            made.part = part;
            made.dark = dark;
            wishes.push_back(made);
        };
        wish(QStringLiteral("stations"), QStringLiteral("stations"), at, false);
        wish(QStringLiteral("working"), QStringLiteral("stations"), at, !at.isEmpty());
        wish(QStringLiteral("heels"), QStringLiteral("stations"), at, false, 3);
        wish(QStringLiteral("all-columns"), QStringLiteral("stations"), at, false, 8);
        wish(QStringLiteral("hull"), QStringLiteral("hull"), {}, false);
        wish(QStringLiteral("fastenings"), QStringLiteral("hull"), {}, false, 1);
        wish(QStringLiteral("backbone"), QStringLiteral("hull"), {}, false, 2);
        wish(QStringLiteral("margins"), QStringLiteral("margins"), {}, false);
        wish(QStringLiteral("moments"), QStringLiteral("margins"), {}, false, 1);
        wish(QStringLiteral("shares"), QStringLiteral("margins"), {}, false, 2);
        wish(QStringLiteral("sheets"), QStringLiteral("sheets"), QStringLiteral("keel"), false);
        wish(QStringLiteral("metal"), QStringLiteral("metal"), {}, false);
        wish(QStringLiteral("bench"), QStringLiteral("bench"), {}, false);
    }
    PictureWish start;
    start.picture = folder.filePath(QStringLiteral("start.png"));
    wishes.push_back(start);
    PictureWish large;
    large.project = demo.path();
    large.picture = folder.filePath(QStringLiteral("stations-large.png"));
    large.frame = QStringLiteral("F18");
    large.textSize = 14;
    wishes.push_back(large);
    const QString empty = QDir(demo.folder()).filePath(QStringLiteral("empty.fayline"));
    if (!ProjectFile::create(empty.toStdString(), {}, "fayline test")) return 1;
    for (const char* page : {"hull", "stations", "margins", "sheets", "metal"}) {
        PictureWish first;
        first.project = empty;
        first.page = QString::fromLatin1(page);
        first.picture =
            folder.filePath(QStringLiteral("empty-") + first.page + QStringLiteral(".png"));
        wishes.push_back(first);
    }
    if (const auto saved = savePictures(application, test::services(), wishes); !saved) {
        std::cerr << saved.error().line() << "\n";
        return 1;
    }
    return 0;
}
