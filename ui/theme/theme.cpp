#include "theme/theme.h"

#include <QApplication>
#include <QToolTip>

#include "paint/font.h"
#include "theme/colours.h"
#include "workshop_style.h"

namespace fayline {

Theme::Theme(QApplication& application)
    : application_(application), desktopIsDark_(isDark(QApplication::palette())) {
    registerBundledFont();
    QApplication::setStyle(new WorkshopStyle);
    apply();
}

void Theme::setLook(Look look) {
    look_ = look;
    apply();
}

void Theme::setTextSize(int points) {
    textSize_ = qBound(8, points, 20);
    apply();
}

void Theme::apply() {
    const bool dark = look_ == Look::dark || (look_ == Look::system && desktopIsDark_);
    const QPalette palette = dark ? lampPalette() : paperPalette();
    QApplication::setPalette(palette);
    QToolTip::setPalette(palette);
    QFont font(QStringLiteral("DejaVu Sans"), textSize_);
    QApplication::setFont(font);
    QToolTip::setFont(font);
}

}  // namespace fayline
