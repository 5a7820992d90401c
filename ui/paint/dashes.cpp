#include "dashes.h"

#include <vector>

namespace fayline {

namespace {

/// Dashes and gaps in turn, in millimetres.
std::vector<double> patternMm(LineStyle style) {
    switch (style) {
        case LineStyle::solid:
            return {};
        case LineStyle::dashed:
            return {2.0, 1.2};
        case LineStyle::dotted:
            return {0.4, 0.8};
        case LineStyle::dashDot:
            return {3.0, 0.8, 0.4, 0.8};
    }
    return {};
}

}  // namespace

QList<QLineF> dashesAlong(const QPolygonF& line, LineStyle style, double perMm) {
    const std::vector<double> pattern = patternMm(style);
    QList<QLineF> dashes;
    std::size_t part = 0;
    double left = pattern.empty() ? 0.0 : pattern[0] * perMm;
    for (qsizetype i = 1; i < line.size(); ++i) {
        const QLineF piece(line[i - 1], line[i]);
        const double length = piece.length();
        if (pattern.empty() || !(left > 0.0)) {
            dashes << piece;
            continue;
        }
        for (double at = 0.0; at < length;) {
            const double end = std::min(at + left, length);
            if (part % 2 == 0)
                dashes << QLineF(piece.pointAt(at / length), piece.pointAt(end / length));
            left -= end - at;
            at = end;
            if (left > 1e-9) continue;
            part = (part + 1) % pattern.size();
            left = pattern[part] * perMm;
        }
    }
    return dashes;
}

}  // namespace fayline
