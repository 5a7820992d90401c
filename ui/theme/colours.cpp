#include "theme/colours.h"

namespace fayline {
namespace {

struct Inks {
    QColor window, base, alternate, text, button, highlight, highlighted, line, faint, link;
};

QPalette paletteOf(const Inks& inks) {
    QPalette palette;
    palette.setColor(QPalette::Window, inks.window);
    palette.setColor(QPalette::WindowText, inks.text);
    palette.setColor(QPalette::Base, inks.base);
    palette.setColor(QPalette::AlternateBase, inks.alternate);
    palette.setColor(QPalette::Text, inks.text);
    palette.setColor(QPalette::PlaceholderText, inks.faint);
    palette.setColor(QPalette::Button, inks.button);
    palette.setColor(QPalette::ButtonText, inks.text);
    palette.setColor(QPalette::BrightText, inks.highlighted);
    palette.setColor(QPalette::Highlight, inks.highlight);
    palette.setColor(QPalette::HighlightedText, inks.highlighted);
    palette.setColor(QPalette::ToolTipBase, inks.base);
    palette.setColor(QPalette::ToolTipText, inks.text);
    palette.setColor(QPalette::Link, inks.link);
    palette.setColor(QPalette::LinkVisited, inks.link);
    palette.setColor(QPalette::Light, inks.base);
    palette.setColor(QPalette::Midlight, inks.alternate);
    palette.setColor(QPalette::Mid, inks.line);
    palette.setColor(QPalette::Dark, inks.faint);
    palette.setColor(QPalette::Shadow, inks.line);
    for (const auto role :
         {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::HighlightedText}) {
        palette.setColor(QPalette::Disabled, role, inks.faint);
    }
    palette.setColor(QPalette::Disabled, QPalette::Base, inks.window);
    palette.setColor(QPalette::Disabled, QPalette::Highlight, inks.alternate);
    return palette;
}

}  // namespace

QPalette paperPalette() {
    return paletteOf({.window = QColor(0xF4, 0xF1, 0xEA),
                      .base = QColor(0xFF, 0xFE, 0xFA),
                      .alternate = QColor(0xEE, 0xEA, 0xDF),
                      .text = QColor(0x20, 0x2B, 0x33),
                      .button = QColor(0xFB, 0xF9, 0xF3),
                      .highlight = QColor(0x1F, 0x5C, 0x86),
                      .highlighted = QColor(0xFF, 0xFF, 0xFF),
                      .line = QColor(0xCF, 0xC9, 0xBB),
                      .faint = QColor(0x64, 0x68, 0x66),
                      .link = QColor(0x1B, 0x56, 0x80)});
}

QPalette lampPalette() {
    return paletteOf({.window = QColor(0x1A, 0x1D, 0x1E),
                      .base = QColor(0x21, 0x25, 0x27),
                      .alternate = QColor(0x2A, 0x2F, 0x31),
                      .text = QColor(0xE6, 0xE3, 0xDA),
                      .button = QColor(0x2C, 0x31, 0x34),
                      .highlight = QColor(0x7F, 0xB6, 0xDE),
                      .highlighted = QColor(0x10, 0x18, 0x1D),
                      .line = QColor(0x43, 0x49, 0x4B),
                      .faint = QColor(0xA3, 0xA7, 0xA4),
                      .link = QColor(0x8C, 0xC0, 0xE6)});
}

bool isDark(const QPalette& palette) {
    return palette.color(QPalette::Window).lightness() <
           palette.color(QPalette::WindowText).lightness();
}

Colours coloursFor(const QPalette& palette) {
    if (isDark(palette)) {
        return {.rail = QColor(0x12, 0x16, 0x17),
                .railText = QColor(0xC4, 0xC8, 0xC4),
                .railChosen = QColor(0x2A, 0x31, 0x31),
                .railChosenText = QColor(0xFF, 0xFF, 0xFF),
                .railEdge = QColor(0xE0, 0xB0, 0x5A),
                .line = palette.color(QPalette::Mid),
                .muted = palette.color(QPalette::PlaceholderText),
                .link = palette.color(QPalette::Link),
                .chosenRow = QColor(0x26, 0x33, 0x3C),
                .chosenCell = QColor(0x7F, 0xB6, 0xDE, 0x3C),
                .refused = QColor(0xF2, 0x7D, 0x66),
                .notice = QColor(0x3A, 0x31, 0x1B),
                .noticeEdge = QColor(0xD9, 0xA9, 0x3F)};
    }
    return {.rail = QColor(0x2B, 0x38, 0x3A),
            .railText = QColor(0xCF, 0xD5, 0xD1),
            .railChosen = QColor(0x40, 0x50, 0x51),
            .railChosenText = QColor(0xFF, 0xFF, 0xFF),
            .railEdge = QColor(0xE6, 0xB9, 0x63),
            .line = palette.color(QPalette::Mid),
            .muted = palette.color(QPalette::PlaceholderText),
            .link = palette.color(QPalette::Link),
            .chosenRow = QColor(0xEA, 0xF0, 0xF2),
            .chosenCell = QColor(0x1F, 0x5C, 0x86, 0x2C),
            .refused = QColor(0x9B, 0x1C, 0x1C),
            .notice = QColor(0xFC, 0xF0, 0xD2),
            .noticeEdge = QColor(0xB9, 0x83, 0x1F)};
}

}  // namespace fayline
