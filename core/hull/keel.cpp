#include "hull/keel.h"

#include "limits_words.h"

namespace fayline {

using detail::requireWithin;

Problems checkKeel(const KeelTimber& keel) {
    Problems problems;
    const auto place = [&](Length value, const char* where, const char* name) {
        requireWithin(problems, value, -detail::farthest, detail::farthest, where, name);
    };
    place(keel.from, "keel.from", "the keel's fore end");
    place(keel.to, "keel.to", "the keel's after end");
    place(keel.undersideFore, "keel.underside_fore", "the keel's underside at the fore end");
    place(keel.undersideAft, "keel.underside_aft", "the keel's underside at the after end");
    requireWithin(problems, keel.sided, detail::thinnestTimber, detail::thickestTimber,
                  "keel.sided", "the keel's siding");
    requireWithin(problems, keel.moulded, detail::thinnestTimber, detail::thickestTimber,
                  "keel.moulded", "the keel's moulding");
    if (problems.empty() && keel.to <= keel.from) {
        problems.push_back({"hull.order", "keel.to",
                            "the keel's after end is at " + detail::inWords(keel.to),
                            "aft of its fore end at " + detail::inWords(keel.from)});
    }
    return problems;
}

std::optional<Length> keelUndersideAt(const KeelTimber& keel, Length x) {
    if (!(x >= keel.from && x <= keel.to)) return std::nullopt;
    const double share = (x - keel.from) / (keel.to - keel.from);
    return keel.undersideFore * (1.0 - share) + keel.undersideAft * share;
}

std::optional<Length> keelTopAt(const KeelTimber& keel, Length x) {
    auto height = keelUndersideAt(keel, x);
    if (height) *height += keel.moulded;
    return height;
}

}  // namespace fayline
