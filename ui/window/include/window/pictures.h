#pragma once

#include <QSize>
#include <QString>

#include "window/run.h"

namespace fayline {

/// One picture of the real window.
struct PictureWish {
    QString project;       ///< file to open; empty: the start page
    QString picture;       ///< PNG to write
    QString page;          ///< "hull", "stations", "margins", "sheets", "metal"; empty: as it opens
    int part = 0;          ///< of the hull page, of the grid's columns, or which chart
    QString frame;         ///< or sheet, to be chosen; empty: as it opens
    bool working = false;  ///< the working of the frame's worst margin is open
    bool dark = false;
    int textSize = 9;  ///< points
    QSize size{1360, 860};
};

/// Opens the project in a window that is not shown to anyone and writes pictures of it; needs the
/// offscreen platform or a display. What the user's settings say is left alone.
Result<void> savePictures(QApplication& application, const WindowServices& services,
                          const std::vector<PictureWish>& wishes);

}  // namespace fayline
