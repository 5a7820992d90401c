#include "material/metal.h"

#include <algorithm>

namespace fayline {
namespace {

constexpr double shearOverUltimate = 0.6;

std::optional<Figure<Stress>> guaranteedOrTypical(const std::optional<Figure<Stress>>& guaranteed,
                                                  const std::optional<Figure<Stress>>& typical) {
    if (guaranteed || !typical) return guaranteed;
    auto figure = *typical;
    figure.source = "typical, nothing guaranteed: " + figure.source;
    return figure;
}

}  // namespace

std::optional<Figure<Stress>> designYield(const Metal& metal) {
    return guaranteedOrTypical(metal.yieldMin, metal.yieldTypical);
}

std::optional<Figure<Stress>> designUltimate(const Metal& metal) {
    return guaranteedOrTypical(metal.ultimateMin, metal.ultimateTypical);
}

std::optional<Figure<Stress>> designShear(const Metal& metal) {
    if (metal.shear) return metal.shear;
    const auto ultimate = designUltimate(metal);
    if (!ultimate) return std::nullopt;
    return Figure<Stress>{ultimate->value * shearOverUltimate, afterWorking(ultimate->standing),
                          "0.6 of ultimate: " + ultimate->source};
}

std::optional<Figure<Stress>> bendingYield(const Metal& metal) {
    const auto yield = designYield(metal);
    const auto ultimate = designUltimate(metal);
    if (!yield || !ultimate) return std::nullopt;
    return Figure<Stress>{
        (yield->value + ultimate->value) / 2.0,
        afterWorking(std::max(yield->standing, ultimate->standing)),
        "mean of yield (" + yield->source + ") and ultimate (" + ultimate->source + ")"};
}

}  // namespace fayline
