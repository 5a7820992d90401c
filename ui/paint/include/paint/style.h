#pragma once

#include <QColor>
#include <QPalette>
#include <array>
#include <vector>

#include "check/check.h"
#include "sheet/drawing.h"

namespace fayline {

/// Parallel lines in place of a tint.
struct HatchLook {
    double angleDeg = 45.0;
    double spacingMm = 2.0;
};

/// How one role looks.
struct RoleLook {
    QColor line;                   ///< lines, edges, text; also of hatching
    QColor fill;                   ///< of areas and filled marks; invalid: not filled
    std::vector<HatchLook> hatch;  ///< over the fill
};

/// How a drawing looks on one medium.
struct PaintStyle {
    QColor paper;
    std::array<RoleLook, roleCount> looks;
    bool snaps = false;              ///< upright and level lines lie on whole device pixels
    bool edgesEveryArea = false;     ///< areas without an edge of their own get one
    double leastStrokeMm = 0.0;      ///< nothing thinner than this …
    double leastStrokePixels = 0.0;  ///< … or this

    [[nodiscard]] const RoleLook& look(Role role) const {
        return looks[static_cast<std::size_t>(role)];
    }
    RoleLook& look(Role role) { return looks[static_cast<std::size_t>(role)]; }
};

/// For a screen whose colours are the palette's, light or dark. The ground is the palette's Base,
/// the selection its Highlight.
PaintStyle screenStyle(const QPalette& palette);

/// Black on white: hatching where the screen has tints, no line thinner than 0.18 mm.
PaintStyle printStyle();

/// Ink of a status's sign on a light or a dark ground. Okabe and Ito's colours for colour-blind
/// eyes, made darker or lighter until they reach 4.5:1 on the ground (WCAG 2.2, 1.4.3).
QColor statusColour(Status status, bool onDark);

/// Contrast ratio of two opaque colours, 1 to 21 (WCAG 2.2).
double contrastRatio(const QColor& a, const QColor& b);

}  // namespace fayline
