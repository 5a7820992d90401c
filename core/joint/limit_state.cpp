#include "joint/limit_state.h"

#include <array>

namespace fayline {
namespace {

template <typename Enum>
struct Named {
    Enum value;
    std::string_view name;
};

constexpr std::array<Named<LimitStateKind>, 18> limitStates{{
    {LimitStateKind::lateral, "lateral"},
    {LimitStateKind::withdrawal, "withdrawal"},
    {LimitStateKind::pullThrough, "pull_through"},
    {LimitStateKind::washer, "washer"},
    {LimitStateKind::metal, "metal"},
    {LimitStateKind::combined, "combined"},
    {LimitStateKind::headShear, "head_shear"},
    {LimitStateKind::threadStrip, "thread_strip"},
    {LimitStateKind::crushing, "crushing"},
    {LimitStateKind::punching, "punching"},
    {LimitStateKind::netSection, "net_section"},
    {LimitStateKind::splitting, "splitting"},
    {LimitStateKind::group, "group"},
    {LimitStateKind::driving, "driving"},
    {LimitStateKind::floorBending, "floor_bending"},
    {LimitStateKind::floorShear, "floor_shear"},
    {LimitStateKind::floorSplitting, "floor_splitting"},
    {LimitStateKind::frameBending, "frame_bending"},
}};
constexpr std::array<Named<Duration>, 5> durations{{
    {Duration::permanent, "permanent"},
    {Duration::tenYears, "ten years"},
    {Duration::twoMonths, "two months"},
    {Duration::sevenDays, "seven days"},
    {Duration::tenMinutes, "ten minutes"},
}};
constexpr std::array<Named<KindOfLoad>, 3> kinds{{
    {KindOfLoad::permanent, "permanent"},
    {KindOfLoad::variable, "variable"},
    {KindOfLoad::accidental, "accidental"},
}};
constexpr std::array<Named<Basis>, 3> bases{
    {{Basis::us, "us"}, {Basis::ec5, "ec5"}, {Basis::metal, "metal"}}};

template <typename Table, typename Enum>
std::string_view nameIn(const Table& table, Enum value) {
    for (const auto& row : table) {
        if (row.value == value) return row.name;
    }
    return "";
}

template <typename Enum, std::size_t N>
std::optional<Enum> valueIn(const std::array<Named<Enum>, N>& table, std::string_view name) {
    for (const auto& row : table) {
        if (row.name == name) return row.value;
    }
    return std::nullopt;
}

}  // namespace

std::string_view nameOf(Basis basis) {
    return nameIn(bases, basis);
}
std::string_view nameOf(LimitStateKind kind) {
    return nameIn(limitStates, kind);
}
std::string_view nameOf(Duration duration) {
    return nameIn(durations, duration);
}
std::string_view nameOf(KindOfLoad kind) {
    return nameIn(kinds, kind);
}
std::optional<Duration> durationNamed(std::string_view name) {
    return valueIn(durations, name);
}
std::optional<KindOfLoad> kindOfLoadNamed(std::string_view name) {
    return valueIn(kinds, name);
}

bool isAxial(LimitStateKind kind) {
    switch (kind) {
        case LimitStateKind::withdrawal:
        case LimitStateKind::pullThrough:
        case LimitStateKind::washer:
        case LimitStateKind::punching:
        case LimitStateKind::crushing:
        case LimitStateKind::metal:
        case LimitStateKind::headShear:
        case LimitStateKind::threadStrip:
            return true;
        default:
            return false;
    }
}

std::string clauseOf(const LimitState& state) {
    std::string text(state.clause);
    if (!state.place.empty()) text += "; " + std::string(state.place);
    return text;
}

bool worksAboveGiving(const LimitState& state) {
    return state.gives && state.working > state.gives->low;
}

std::string_view whyAboveGiving(Basis basis) {
    return basis == Basis::us
               ? "The US crushing stress is one at which a head or washer has sunk about a "
                 "millimetre, not one the wood does not feel; under a small head in wet wood it "
                 "settles."
               : "Eurocode 5 starts from what dry wood carries near breaking, takes the wet off "
                 "with "
                 "one mild factor, and counts the pull along a bent fastening; a joint loaded so "
                 "far may settle a little while it is nowhere near breaking.";
}

double kMod(Duration duration, Service service) {
    const bool wet = service == Service::wet;
    switch (duration) {
        case Duration::permanent:
            return wet ? 0.50 : 0.60;
        case Duration::tenYears:
            return wet ? 0.55 : 0.70;
        case Duration::twoMonths:
            return wet ? 0.65 : 0.80;
        case Duration::sevenDays:
            return wet ? 0.70 : 0.90;
        case Duration::tenMinutes:
            return wet ? 0.90 : 1.10;
    }
    return 0.50;
}

double gammaM(KindOfLoad kind) {
    return kind == KindOfLoad::accidental ? 1.0 : 1.3;
}

}  // namespace fayline
