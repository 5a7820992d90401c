#include <algorithm>
#include <cmath>

#include "layout/planking.h"

namespace fayline {
namespace {

Length between(const EndSpot& a, const EndSpot& b) {
    return metres(std::hypot((b.x - a.x).si(), (b.at.y - a.at.y).si(), (b.at.z - a.at.z).si()));
}

}  // namespace

Length StrakeEnd::width() const {
    Length sum;
    for (std::size_t i = 1; i < line.size(); ++i) sum += between(line[i - 1], line[i]);
    return sum;
}

EndSpot StrakeEnd::spotAt(Length up) const {
    std::size_t i = 1;
    while (i + 1 < line.size() && up > between(line[i - 1], line[i])) {
        up -= between(line[i - 1], line[i]);
        ++i;
    }
    const EndSpot& a = line[i - 1];
    const EndSpot& b = line[i];
    const Length piece = between(a, b);
    const double t = piece > Length{} ? std::clamp(up / piece, 0.0, 1.0) : 0.0;
    const auto mix = [t](Length from, Length to) { return from + t * (to - from); };
    const double outY = a.at.outY + t * (b.at.outY - a.at.outY);
    const double outZ = a.at.outZ + t * (b.at.outZ - a.at.outZ);
    const double size = std::hypot(outY, outZ);
    return {mix(a.end, b.end),
            mix(a.x, b.x),
            {mix(a.at.y, b.at.y), mix(a.at.z, b.at.z), size > 0 ? outY / size : a.at.outY,
             size > 0 ? outZ / size : a.at.outZ}};
}

}  // namespace fayline
