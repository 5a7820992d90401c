#include "joint/moisture.h"

#include <algorithm>

#include "joint/work_joint.h"

namespace fayline {
namespace {

constexpr std::array<std::string_view, 4> stateNames{"as_fitted", "shed_dry", "afloat",
                                                     "winter_ashore"};
constexpr std::array<std::string_view, 3> zoneNames{"soaked", "cycling", "drier"};
/// Of equal states the first of these is named.
constexpr std::array<std::size_t, 4> order{2, 3, 1, 0};

std::vector<LimitState> timberStates(const JointResult& result) {
    std::vector<LimitState> all;
    const auto take = [&](const LimitState& state) {
        if (state.basis != Basis::metal) all.push_back(state);
    };
    result.us.each(take);
    result.ec5.each(take);
    return all;
}

}  // namespace

std::string_view nameOf(MoistureState state) {
    return stateNames[static_cast<std::size_t>(state)];
}
std::string_view nameOf(MoistureZone zone) {
    return zoneNames[static_cast<std::size_t>(zone)];
}

std::optional<MoistureZone> moistureZoneNamed(std::string_view name) {
    for (std::size_t i = 0; i < zoneNames.size(); ++i) {
        if (zoneNames[i] == name) return static_cast<MoistureZone>(i);
    }
    return std::nullopt;
}

Service serviceIn(MoistureState state, MoistureZone zone, Fitted fitted) {
    switch (state) {
        case MoistureState::asFitted:
            return fitted == Fitted::wet ? Service::wet : Service::dry;
        case MoistureState::shedDry:
            return Service::dry;
        case MoistureState::afloat:
            return zone == MoistureZone::drier ? Service::dry : Service::wet;
        case MoistureState::winterAshore:
            return zone == MoistureZone::soaked ? Service::wet : Service::dry;
    }
    return Service::wet;
}

Result<std::vector<MoistureRow>> moistureRows(const Joint& joint, MoistureZone zone) {
    std::vector<MoistureRow> rows;
    for (std::size_t i = 0; i < moistureStates.size(); ++i) {
        Joint there = joint;
        there.service = serviceIn(moistureStates[i], zone, joint.fitted);
        const auto result = workJoint(there);
        if (!result) return tl::unexpected(result.error());
        const auto states = timberStates(*result);
        rows.resize(states.size());
        for (std::size_t k = 0; k < states.size(); ++k) {
            rows[k].basis = states[k].basis;
            rows[k].kind = states[k].kind;
            rows[k].working[i] = states[k].working;
        }
    }
    for (MoistureRow& row : rows) {
        // Fitted wet and dried once, it is no better when wetted again.
        if (joint.fitted == Fitted::wet) {
            for (const std::size_t again : {2U, 3U})
                row.working[again] = min(row.working[again], row.working[1]);
        }
        std::size_t least = order.front();
        for (const std::size_t i : order) {
            if (row.working[i] < row.working[least]) least = i;
        }
        row.governs = moistureStates[least];
    }
    return rows;
}

}  // namespace fayline
