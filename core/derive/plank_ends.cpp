#include "plank_ends.h"

#include <algorithm>
#include <cmath>

namespace fayline {
namespace {

constexpr int stepsAlong = 48;

/// One place of the line that strakes end on.
struct EndPlace {
    double s_m;  ///< along the line
    Length x, z;
};

std::optional<Length> keelTopOf(const PlankEndsInput& in, Length x) {
    return in.keel ? keelTopAt(*in.keel, x) : std::nullopt;
}

std::optional<FrameCurve> curveAt(const PlankEndsInput& in, Length x) {
    return FrameCurve::above(in.hull->surface->sectionAt(x), keelTopOf(in, x));
}

/// The profile from the frame to the hull's end, never going down again (a sternpost's step).
std::vector<EndPlace> profileOf(const PlankEndsInput& in, Length endX) {
    std::vector<EndPlace> profile;
    for (int i = 0; i <= stepsAlong; ++i) {
        const Length x = i == stepsAlong ? endX
                                         : in.frameX + (static_cast<double>(i) / stepsAlong) *
                                                           (endX - in.frameX);
        Length z = max(in.hull->surface->lowestAt(x), keelTopOf(in, x).value_or(metres(-1e6)));
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
    const auto last = curveAt(in, endX);
    if (!last) return std::nullopt;
    const double inward = in.fore ? 1.0 : -1.0;
    const auto inboard = [&](Length x) {
        const Length moved = x + inward * in.inset;
        return max(surface.foreEnd(), min(surface.afterEnd(), moved));
    };
    const auto profile = profileOf(in, endX);
    const double post_m = profile.back().s_m;
    const double whole_m = post_m + last->girth().si();
    const auto heightAt = [&](double s_m) {
        return s_m <= post_m ? placeOn(profile, s_m).z : last->at(metres(s_m - post_m)).z;
    };
    PlankEnds ends;
    ends.frame = in.frame;
    for (std::size_t k = 0; k + 1 < in.seams.size(); ++k) {
        const double from_m = in.seams[k] * whole_m;
        const double to_m = in.seams[k + 1] * whole_m;
        const double middle_m = (from_m + to_m) / 2.0;
        const bool onPost = middle_m < post_m;
        const Length x = onPost ? placeOn(profile, middle_m).x : endX;
        const auto curve = curveAt(in, inboard(x));
        if (!curve) return std::nullopt;
        StrakeEnd end;
        end.x = x;
        end.onPost = onPost;
        if (onPost) {
            end.from = alongAtHeight(*curve, heightAt(from_m));
            end.to = alongAtHeight(*curve, heightAt(to_m));
        } else {
            const double scale = curve->girth() / last->girth();
            end.from = metres(std::max(0.0, from_m - post_m) * scale);
            end.to = metres((to_m - post_m) * scale);
        }
        end.to = max(end.to, end.from);
        end.curve = std::make_shared<const FrameCurve>(*curve);
        ends.strakes.push_back(std::move(end));
    }
    return ends;
}

}  // namespace fayline
