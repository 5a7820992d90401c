#include "plank_ends.h"

#include <algorithm>
#include <cmath>

namespace fayline {
namespace {

constexpr int stepsAlong = 48;
constexpr int spotsAcross = 4;  ///< pieces of one strake's end

/// One place of the line that strakes end on.
struct EndPlace {
    double s_m;  ///< along the line
    Length x, z;
};

/// The rabbet from the frame to the hull's end, never going down again (a sternpost's step); where
/// there is none, the hull's lowest line.
std::vector<EndPlace> profileOf(const PlankEndsInput& in, Length endX) {
    std::vector<EndPlace> profile;
    for (int i = 0; i <= stepsAlong; ++i) {
        const Length x = i == stepsAlong ? endX
                                         : in.frameX + (static_cast<double>(i) / stepsAlong) *
                                                           (endX - in.frameX);
        const PlankingLine line = curveStage(curveInput(in.hull, x, in.rule));
        Length z = line.rabbet ? line.rabbet->at.z : in.hull->surface->lowestAt(x);
        double s_m = 0;
        if (!profile.empty()) {
            const EndPlace& before = profile.back();
            z = max(z, before.z);
            s_m = before.s_m + std::hypot((x - before.x).si(), (z - before.z).si());
        }
        profile.push_back({s_m, x, z});
    }
    return profile;
}

EndPlace placeOn(const std::vector<EndPlace>& profile, double s_m) {
    const auto above = std::find_if(profile.begin() + 1, profile.end() - 1,
                                    [&](const EndPlace& p) { return p.s_m >= s_m; });
    const EndPlace& a = *(above - 1);
    const double span_m = above->s_m - a.s_m;
    const double t = span_m > 0 ? std::clamp((s_m - a.s_m) / span_m, 0.0, 1.0) : 0.0;
    return {s_m, a.x + t * (above->x - a.x), a.z + t * (above->z - a.z)};
}

/// Length along a curve to where it first stands this high.
Length alongAtHeight(const FrameCurve& curve, Length z) {
    constexpr int steps = 200;
    for (int i = 0; i < steps; ++i) {
        const Length here = curve.girth() * (static_cast<double>(i) / steps);
        const Length next = curve.girth() * (static_cast<double>(i + 1) / steps);
        const Length low = curve.at(here).z;
        const Length high = curve.at(next).z;
        if (high < z) continue;
        const double t = high > low ? std::clamp((z - low) / (high - low), 0.0, 1.0) : 0.0;
        return here + t * (next - here);
    }
    return curve.girth();
}

}  // namespace

std::optional<PlankEnds> plankEndsStage(const PlankEndsInput& in) {
    if (!in.hull->surface || in.seams.size() < 2) return std::nullopt;
    const LoftedSurface& surface = *in.hull->surface;
    const Length endX = in.fore ? surface.foreEnd() : surface.afterEnd();
    if (!surface.spans(in.frameX)) return std::nullopt;
    const auto last = curveStage(curveInput(in.hull, endX, in.rule)).curve;
    const double inward = in.fore ? 1.0 : -1.0;
    const auto inboard = [&](Length x) {
        const Length moved = x + inward * in.inset;
        return max(surface.foreEnd(), min(surface.afterEnd(), moved));
    };
    const auto profile = profileOf(in, endX);
    const double post_m = profile.back().s_m;
    const double flat_m = last ? last->girth().si() : 0.0;
    const auto spotAt = [&](double s_m) -> std::optional<EndSpot> {
        const bool post = s_m <= post_m || flat_m <= 0.0;
        const EndPlace end = post ? placeOn(profile, s_m) : EndPlace{s_m, endX, {}};
        const Length x = inboard(end.x);
        const auto curve = curveStage(curveInput(in.hull, x, in.rule)).curve;
        if (!curve) return std::nullopt;
        // Up the end section from where the rabbet's own height is reached.
        const Length above = alongAtHeight(*curve, post ? end.z : profile.back().z);
        const Length along =
            post ? above : above + (curve->girth() - above) * ((s_m - post_m) / flat_m);
        return EndSpot{end.x, x, curve->at(along)};
    };
    PlankEnds ends;
    ends.frame = in.frame;
    for (std::size_t k = 0; k + 1 < in.seams.size(); ++k) {
        const double from_m = in.seams[k] * (post_m + flat_m);
        const double to_m = in.seams[k + 1] * (post_m + flat_m);
        StrakeEnd end;
        for (int i = 0; i <= spotsAcross; ++i) {
            const auto spot =
                spotAt(from_m + (static_cast<double>(i) / spotsAcross) * (to_m - from_m));
            if (!spot) return std::nullopt;
            end.line.push_back(*spot);
        }
        end.onPost = (from_m + to_m) / 2.0 < post_m ||
                     (in.rule.keel && end.line[spotsAcross / 2].at.y < in.rule.keel->sided / 2.0);
        ends.strakes.push_back(std::move(end));
    }
    return ends;
}

}  // namespace fayline
