#include "paint/font.h"

#include <QFontDatabase>

// Outside any namespace, as Qt asks: the resource lies in a static library.
static void initialiseFontResource() {
    Q_INIT_RESOURCE(font);
}

namespace fayline {

bool registerBundledFont() {
    static const bool registered = [] {
        initialiseFontResource();
        bool all = true;
        for (const char* file : {":/font/DejaVuSans.ttf", ":/font/DejaVuSans-Bold.ttf"}) {
            all = QFontDatabase::addApplicationFont(QString::fromLatin1(file)) >= 0 && all;
        }
        return all;
    }();
    return registered;
}

QFont bundledFont(shape::Weight weight) {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setBold(weight == shape::Weight::bold);
    font.setKerning(false);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(QFont::StyleStrategy(QFont::PreferNoShaping | QFont::PreferAntialias));
    return font;
}

}  // namespace fayline
