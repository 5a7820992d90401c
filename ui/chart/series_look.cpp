#include <QScatterSeries>
#include <array>

#include "plot.h"
#include "theme/colours.h"

namespace fayline {

/// Blue, vermilion, green and violet of the set for colour-blind eyes by Okabe and Ito (2008),
/// darker on light grounds and lighter on dark ones so that lines reach 3:1.
SeriesLook seriesLook(std::size_t number, const QPalette& palette) {
    static const std::array<QColor, 4> onLight = {
        QColor(0x00, 0x5A, 0x94), QColor(0xB8, 0x4A, 0x00), QColor(0x00, 0x7A, 0x5A),
        QColor(0x9A, 0x4A, 0x7C)};
    static const std::array<QColor, 4> onDark = {QColor(0x6C, 0xBE, 0xF0), QColor(0xF2, 0x92, 0x4A),
                                                 QColor(0x4C, 0xCF, 0xA8),
                                                 QColor(0xE2, 0x9A, 0xC4)};
    static constexpr std::array<Qt::PenStyle, 4> dashes = {Qt::SolidLine, Qt::DashLine, Qt::DotLine,
                                                           Qt::DashDotLine};
    static constexpr std::array<Qt::BrushStyle, 4> hatches = {Qt::SolidPattern, Qt::BDiagPattern,
                                                              Qt::HorPattern, Qt::DiagCrossPattern};
    static constexpr std::array<QScatterSeries::MarkerShape, 4> marks = {
        QScatterSeries::MarkerShapeCircle, QScatterSeries::MarkerShapeRectangle,
        QScatterSeries::MarkerShapeTriangle, QScatterSeries::MarkerShapeRotatedRectangle};
    const std::size_t i = number % onLight.size();
    const QColor ink = (isDark(palette) ? onDark : onLight)[i];
    SeriesLook look;
    look.pen = QPen(ink, 2.0, dashes[i]);
    look.bar = QBrush(ink, hatches[i]);
    look.mark = marks[i];
    return look;
}

}  // namespace fayline
