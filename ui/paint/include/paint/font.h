#pragma once

#include <QFont>

#include "sheet/drawing.h"

namespace fayline {

/// Makes the bundled font known to Qt; once, after the application object is made. Says whether it
/// is there. Calling it again does nothing.
bool registerBundledFont();

/// The bundled font as drawings are set in it: no kerning, no ligatures, so that widths are those
/// of sheet/font_metrics.h. Its size is the caller's.
QFont bundledFont(shape::Weight weight);

}  // namespace fayline
