#include "hull/structure.h"

#include <algorithm>
#include <set>

#include "limits_words.h"

namespace fayline {

using detail::inWords;
using detail::requireWithin;

std::vector<FrameInput> setOutFrames(const FrameSpacing& spacing) {
    std::vector<FrameInput> frames;
    frames.reserve(static_cast<std::size_t>(std::max(0, spacing.count)));
    for (int k = 0; k < spacing.count; ++k) {
        frames.push_back({"F" + std::to_string(k + 1), spacing.first + spacing.roomAndSpace * k,
                          spacing.sided, spacing.moulded, false});
    }
    return frames;
}

Problems checkFrames(const std::vector<FrameInput>& frames, const LoftedSurface& surface) {
    Problems problems;
    std::set<std::string> ids;
    for (std::size_t i = 0; i < frames.size(); ++i) {
        const FrameInput& frame = frames[i];
        const std::string where = frame.id + ".frame";
        if (frame.id.empty()) {
            problems.push_back({"frames.id", "frames",
                                "frame number " + std::to_string(i + 1) + " has no name",
                                "a name for each frame"});
        } else if (!ids.insert(frame.id).second) {
            problems.push_back(
                {"frames.twice", where, "there are two frames " + frame.id, "each name once"});
        }
        requireWithin(problems, frame.x, surface.foreEnd(), surface.afterEnd(), where + ".x",
                      "frame " + frame.id);
        requireWithin(problems, frame.sided, detail::thinnestTimber, detail::thickestTimber,
                      where + ".sided", "the siding");
        requireWithin(problems, frame.moulded, detail::thinnestTimber, detail::thickestTimber,
                      where + ".moulded", "the moulding");
        if (i > 0 && frame.x <= frames[i - 1].x) {
            problems.push_back(
                {"frames.order", where + ".x", "frame " + frame.id + " is at " + inWords(frame.x),
                 "aft of frame " + frames[i - 1].id + " at " + inWords(frames[i - 1].x)});
        }
    }
    return problems;
}

Result<FloorPlace> placeFloor(const FloorInput& floor, const std::vector<FrameInput>& frames,
                              const KeelTimber& keel, const LoftedSurface& surface) {
    const auto refuse = [&](std::string code, std::string what, std::string allowed) {
        return tl::unexpected(
            Problem{std::move(code), floor.frame + ".floor", std::move(what), std::move(allowed)});
    };
    const auto frame = std::find_if(frames.begin(), frames.end(),
                                    [&](const FrameInput& f) { return f.id == floor.frame; });
    if (frame == frames.end()) {
        return refuse("floor.no_frame", "there is no frame " + floor.frame, "a frame that exists");
    }
    Length x = frame->x;
    if (floor.topology == FloorTopology::beside) {
        const Length apart = 0.5 * (frame->sided + floor.sided);
        x += floor.aftOfFrame ? apart : -apart;
    }
    const auto heel = keelTopAt(keel, x);
    if (!heel || !surface.spans(x)) {
        return refuse("floor.no_keel", "the floor at " + inWords(x) + " does not stand on the keel",
                      inWords(keel.from) + " to " + inWords(keel.to));
    }
    const Length top = *heel + floor.throat;
    const auto out = surface.sectionAt(x).halfBreadthAt(top);
    if (!out) {
        return refuse("floor.too_high",
                      "the top of the floor, at " + inWords(top) + ", lies outside the hull",
                      "between " + inWords(surface.lowestAt(x)) + " and " +
                          inWords(surface.sheerHeightAt(x)));
    }
    return FloorPlace{floor.frame, x, *heel, top, *out};
}

}  // namespace fayline
