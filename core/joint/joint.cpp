#include "joint/joint.h"

#include <array>
#include <functional>
#include <utility>

#include "material/across_grain.h"
#include "material/density.h"
#include "material/design_stress.h"

namespace fayline {
namespace {

template <typename E, std::size_t N>
using Words = std::array<std::pair<E, std::string_view>, N>;

constexpr Words<FastenerKind, 4> kinds{{
    {FastenerKind::woodScrew, "wood_screw"},
    {FastenerKind::bolt, "bolt"},
    {FastenerKind::drift, "drift"},
    {FastenerKind::rivet, "rivet"},
}};
constexpr Words<FastenerEnd, 9> ends{{
    {FastenerEnd::head, "head"},
    {FastenerEnd::nut, "nut"},
    {FastenerEnd::formedHead, "formed_head"},
    {FastenerEnd::clenchRing, "clench_ring"},
    {FastenerEnd::rove, "rove"},
    {FastenerEnd::peened, "peened"},
    {FastenerEnd::countersunk, "countersunk"},
    {FastenerEnd::thread, "thread"},
    {FastenerEnd::blind, "blind"},
}};

template <typename E, std::size_t N>
std::string_view wordFor(const Words<E, N>& words, E value) {
    for (const auto& [known, word] : words) {
        if (known == value) return word;
    }
    return {};
}

template <typename E, std::size_t N>
std::optional<E> valueFor(const Words<E, N>& words, std::string_view text) {
    for (const auto& [value, word] : words) {
        if (word == text) return value;
    }
    return std::nullopt;
}

}  // namespace

std::string_view nameOf(FastenerKind kind) {
    return wordFor(kinds, kind);
}
std::string_view nameOf(FastenerEnd end) {
    return wordFor(ends, end);
}
std::optional<FastenerKind> fastenerKindNamed(std::string_view name) {
    return valueFor(kinds, name);
}
std::optional<FastenerEnd> fastenerEndNamed(std::string_view name) {
    return valueFor(ends, name);
}

std::size_t JointHash::operator()(const Joint& joint) const {
    std::size_t mixed = joint.members.size();
    const auto mix = [&](double value) { mixed = mixed * 1000003U ^ std::hash<double>{}(value); };
    for (const JointMember& member : joint.members) {
        mix(member.thickness.si());
        mix(member.counterbore.si());
        mix(member.grain.inDegrees());
        mix(member.gravity ? member.gravity->value.value : -1.0);
    }
    mix(joint.fastener.diameter.si());
    mix(joint.fastener.length.si());
    mix(joint.fastener.gauge ? joint.fastener.gauge->number() : -1);
    mix(static_cast<double>(joint.duration));
    return mixed;
}

int planesOf(const Joint& joint) {
    return static_cast<int>(joint.members.size()) - 1;
}

JointMember jointMember(const Wood& wood) {
    JointMember member;
    member.name = wood.name.value;
    member.family = wood.family;
    member.gravity = specificGravityOvenDry(wood);
    member.gravityTwelve = specificGravityTwelve(wood);
    member.density = characteristicDensity(wood);
    member.acrossUs = compressionPerpendicularUs(wood);
    member.acrossEc5 = compressionPerpendicularEc5(wood);
    member.acrossMean = wood.green.compressionPerpendicular;
    member.tensionUs = tensionUs(wood);
    member.shearUs = shearUs(wood);
    member.tensionEc5 = tensionEc5(wood);
    return member;
}

JointMember leadMember(const Metal& lead) {
    JointMember member;
    member.name = lead.name.value;
    member.lead = designUltimate(lead);
    return member;
}

FastenerMetal fastenerMetal(const Metal& metal) {
    FastenerMetal figures;
    figures.yield = designYield(metal);
    figures.ultimate = designUltimate(metal);
    figures.yieldTypical = metal.yieldTypical;
    figures.ultimateTypical = metal.ultimateTypical;
    figures.shear = designShear(metal);
    figures.bendingYield = bendingYield(metal);
    return figures;
}

}  // namespace fayline
