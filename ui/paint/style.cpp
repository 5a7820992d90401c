#include "paint/style.h"

#include "sheet/marks.h"

namespace fayline {

namespace {

constexpr std::array everyStatus{Status::isShort, Status::near, Status::unknown,
                                 Status::outside, Status::ok,   Status::unloaded};

QColor mixed(const QColor& a, const QColor& b, double ofB) {
    const auto channel = [&](int from, int to) { return from + qRound((to - from) * ofB); };
    return {channel(a.red(), b.red()), channel(a.green(), b.green()), channel(a.blue(), b.blue())};
}

/// Timber, metal and water on a light and on a dark ground.
struct Materials {
    QColor frame, timber, timberEdge, floor, ballast, ballastEdge, water;
};
constexpr auto rgb = [](int value) { return QColor::fromRgb(static_cast<QRgb>(value)); };

Materials materials(bool dark) {
    if (dark) {
        return {rgb(0x9C8250), rgb(0x4A3F2C), rgb(0xA88F5E), rgb(0xD0A868),
                rgb(0x3F474E), rgb(0x98A3AC), rgb(0x8FB4CE)};
    }
    return {rgb(0x9C7E46), rgb(0xE8DABC), rgb(0x8A6D3B), rgb(0x75552B),
            rgb(0xBDC4CB), rgb(0x4A535C), rgb(0x35688C)};
}

}  // namespace

PaintStyle screenStyle(const QPalette& palette) {
    const QColor ground = palette.color(QPalette::Base);
    const QColor ink = palette.color(QPalette::Text);
    const bool dark = ground.lightness() < ink.lightness();
    const Materials of = materials(dark);
    // Two thirds of the way to the text reaches 4.5:1 whatever the palette calls its faint colours.
    const QColor faint = mixed(ground, ink, 0.72);

    PaintStyle style;
    style.paper = ground;
    style.snaps = true;
    style.leastStrokePixels = 1.0;
    for (RoleLook& look : style.looks) look = {ink, ink, {}};
    style.look(Role::paper) = {ground, ground, {}};
    style.look(Role::hull) = {ink, mixed(ground, ink, dark ? 0.07 : 0.045), {}};
    style.look(Role::frame) = {mixed(of.frame, ink, 0.35), of.frame, {}};
    style.look(Role::timber) = {of.timberEdge, of.timber, {}};
    style.look(Role::floor) = {mixed(of.floor, ink, 0.35), of.floor, {}};
    style.look(Role::ballast) = {of.ballastEdge, of.ballast, {}};
    style.look(Role::waterline) = {of.water, of.water, {}};
    style.look(Role::grid) = {mixed(ground, ink, 0.2), mixed(ground, ink, 0.2), {}};
    style.look(Role::muted) = {faint, faint, {}};
    style.look(Role::dimension) = {ink, ink, {}};
    const QColor chosen = palette.color(QPalette::Highlight);
    style.look(Role::selection) = {chosen, chosen, {}};
    for (const Status status : everyStatus) {
        const QColor colour = statusColour(status, dark);
        style.look(statusRole(status)) = {colour, colour, {}};
    }
    for (const Status status : {Status::isShort, Status::near, Status::unknown}) {
        style.look(boltRole(status)) = style.look(statusRole(status));
    }
    return style;
}

PaintStyle printStyle() {
    PaintStyle style;
    style.paper = Qt::white;
    style.edgesEveryArea = true;
    style.leastStrokeMm = 0.18;
    for (RoleLook& look : style.looks) look = {Qt::black, Qt::black, {}};
    style.look(Role::paper) = {Qt::white, Qt::white, {}};
    style.look(Role::hull) = {Qt::white, QColor(), {}};
    style.look(Role::frame) = {Qt::black, Qt::white, {}};
    style.look(Role::timber) = {Qt::black, Qt::white, {{-45.0, 2.4}}};
    style.look(Role::floor) = {Qt::black, Qt::white, {{45.0, 1.2}}};
    style.look(Role::ballast) = {Qt::black, Qt::white, {{45.0, 2.0}, {-45.0, 2.0}}};
    return style;
}

}  // namespace fayline
