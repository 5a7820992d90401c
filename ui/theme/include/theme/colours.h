#pragma once

#include <QColor>
#include <QPalette>

namespace fayline {

/// Off-white paper under daylight; the same workshop under a lamp.
QPalette paperPalette();
QPalette lampPalette();

/// Whether text is lighter than what it stands on.
bool isDark(const QPalette& palette);

/// What QPalette has no role for. All text colours here reach 4.5:1 on the ground they are meant
/// for.
struct Colours {
    QColor rail, railText, railChosen, railChosenText, railEdge;  ///< the rail of pages
    QColor line;                ///< hairlines between and around cards
    QColor muted;               ///< text of second rank, and values that come from a rule
    QColor link;                ///< text that does something
    QColor chosenRow;           ///< the row of the chosen frame
    QColor chosenCell;          ///< a selected cell; lets what is below show through
    QColor refused;             ///< outline and text of an entry that was not taken
    QColor notice, noticeEdge;  ///< ground of a banner
};
Colours coloursFor(const QPalette& palette);

}  // namespace fayline
