#include "layout/hole.h"

#include <algorithm>
#include <cmath>

namespace fayline {
namespace {

struct Vec {
    double x, y, z;
};
Vec minus(const Point& a, const Point& b) {
    return {a.x.si() - b.x.si(), a.y.si() - b.y.si(), a.z.si() - b.z.si()};
}
double dot(const Vec& a, const Vec& b) {
    return a.x * b.x + a.y * b.y + a.z * b.z;
}

}  // namespace

Length distanceBetween(const Hole& a, const Hole& b) {
    const Vec d1 = minus(a.end, a.start);
    const Vec d2 = minus(b.end, b.start);
    const Vec r = minus(a.start, b.start);
    const double aa = dot(d1, d1), ee = dot(d2, d2), bb = dot(d1, d2), cc = dot(d1, r),
                 ff = dot(d2, r);
    const double denominator = aa * ee - bb * bb;
    double s = denominator > 1e-18 ? std::clamp((bb * ff - cc * ee) / denominator, 0.0, 1.0) : 0.0;
    double t = ee > 0 ? (bb * s + ff) / ee : 0.0;
    if (t < 0 || t > 1) {
        t = std::clamp(t, 0.0, 1.0);
        s = aa > 0 ? std::clamp((bb * t - cc) / aa, 0.0, 1.0) : 0.0;
    }
    const Vec gap{r.x + s * d1.x - t * d2.x, r.y + s * d1.y - t * d2.y, r.z + s * d1.z - t * d2.z};
    return metres(std::sqrt(dot(gap, gap)));
}

int strakeOf(const Hole& hole) {
    for (const std::string& member : hole.joins) {
        if (member.rfind("strake", 0) == 0) return std::stoi(member.substr(6));
    }
    return 0;
}

}  // namespace fayline
