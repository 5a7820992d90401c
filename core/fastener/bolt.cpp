#include "fastener/bolt.h"

#include <numbers>

namespace fayline {
namespace {

constexpr double turnsProud = 1.5;

Area circle(Length diameter) {
    return diameter * diameter * (std::numbers::pi / 4.0);
}

}  // namespace

std::string_view nutKindText(NutKind kind) {
    switch (kind) {
        case NutKind::hex:
            return "hex";
        case NutKind::heavyHex:
            return "heavy_hex";
        case NutKind::jam:
            break;
    }
    return "jam";
}

std::optional<NutKind> nutKindFromText(std::string_view text) {
    for (const auto kind : {NutKind::hex, NutKind::heavyHex, NutKind::jam}) {
        if (nutKindText(kind) == text) return kind;
    }
    return std::nullopt;
}

Area bearingArea(const Washer& washer, Length woodHole) {
    const Length hole = max(washer.inside, woodHole);
    if (washer.outside <= hole) return Area{};
    return circle(washer.outside) - circle(hole);
}

Washer plateWasher(Length fits, Length inside, Length outside, Length thickness) {
    Washer washer;
    washer.id = "plate";
    washer.name = "Plate washer";
    washer.fits = fits;
    washer.inside = inside;
    washer.outside = outside;
    washer.thickness = thickness;
    washer.source = "size chosen";
    return washer;
}

Length rodLength(const Thread& thread, const Nut& nut, const Washer& washer, Length grip,
                 Length takeUp) {
    const Length end = washer.thickness + nut.height + thread.pitch * turnsProud;
    return grip + end * 2.0 + takeUp;
}

Length threadLength(const Thread& thread, const Nut& nut, const Washer& washer, Length takeUp) {
    return washer.thickness + nut.height + thread.pitch * turnsProud + takeUp;
}

}  // namespace fayline
