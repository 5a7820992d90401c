#include "joint/washer.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fayline {
namespace {

constexpr double wetAcrossGrain = 0.67;
constexpr const char* usClause =
    "ANSI/AWC NDS 3.10.4 with wet service 0.67 (Merritt & Ricketts, Table 10.6)";
constexpr const char* ec5Clause = "EN 1995-1-1 8.5.2(2): 3.0·f_c,90 under a washer; Table 3.1, 2.3";
constexpr const char* bedUsClause = "ANSI/AWC NDS 3.10.2 with wet service 0.67";
constexpr const char* bedEc5Clause = "EN 1995-1-1 6.1.5, k_c,90 = 1.0; Table 3.1, 2.3";

double moistureFactor(Service service) {
    return service == Service::wet ? wetAcrossGrain : 1.0;
}

/// NDS 3.10.4: bearing shorter than 6 in gains from the wood beside it; for a round washer the
/// length is its diameter.
double bearingFactor(Length bearing) {
    const double bearing_in = inInches(bearing);
    if (bearing_in <= 0 || bearing_in >= 6.0) return 1.0;
    return (bearing_in + 0.375) / bearing_in;
}

std::vector<Remark> rangeNotes(const WasherInput& washer) {
    std::vector<Remark> notes;
    if (washer.thickness < 0.25 * washer.bolt && washer.thickness < millimetres(8))
        notes.push_back({Rule::washerMayDish, -1, {}, {}, 0.0});
    return notes;
}

LimitState base(const WasherInput& washer, LimitStateKind kind, Basis basis) {
    LimitState state;
    state.kind = kind;
    state.basis = basis;
    state.soft = true;
    if (kind == LimitStateKind::washer) state.outside = rangeNotes(washer);
    return state;
}

void explainWasher(const WasherInput& washer, Trace& trace) {
    trace.lines.push_back({"D", "washer diameter", washer.diameter, "decision", std::nullopt});
    trace.lines.push_back({"d_h", "hole", washer.hole, "bolt size", std::nullopt});
    if (washer.timberWidth && *washer.timberWidth < washer.diameter) {
        trace.lines.push_back(
            {"b", "width of timber under it", *washer.timberWidth, "decision", std::nullopt});
        trace.notes.emplace_back(
            "The washer overhangs the timber; only what bears on wood is counted.");
    }
    trace.lines.push_back({"A", "bearing area", bearingArea(washer), "", std::nullopt});
}

void explainEc5Factors(const WasherInput& wood, Trace& trace) {
    trace.lines.push_back({"f_c,90,k", "characteristic strength across the grain",
                           *wood.ec5Characteristic, wood.ec5Source, wood.ec5Standing});
    trace.lines.push_back(
        {"k_mod",
         std::string("service class ") + (wood.service == Service::wet ? "3" : "2") + ", " +
             std::string(nameOf(wood.duration)),
         kMod(wood.duration, wood.service), "EN 1995-1-1 Table 3.1", Standing::fromMemory});
    trace.lines.push_back({"γ_M", "connections, " + std::string(nameOf(wood.kindOfLoad)) + " load",
                           gammaM(wood.kindOfLoad), "EN 1995-1-1 Table 2.3", Standing::fromMemory});
}

}  // namespace

Area bearingArea(const WasherInput& washer) {
    const double radius_mm = inMillimetres(washer.diameter) / 2.0;
    const double hole_mm = inMillimetres(washer.hole) / 2.0;
    double area_mm2 = std::numbers::pi * (radius_mm * radius_mm - hole_mm * hole_mm);
    if (washer.timberWidth) {
        const double half_mm = inMillimetres(*washer.timberWidth) / 2.0;
        if (half_mm < radius_mm) {
            const double segment_mm2 =
                radius_mm * radius_mm * std::acos(half_mm / radius_mm) -
                half_mm * std::sqrt(radius_mm * radius_mm - half_mm * half_mm);
            area_mm2 -= 2.0 * segment_mm2;
        }
    }
    return squareMillimetres(std::max(0.0, area_mm2));
}

std::optional<LimitState> washerUs(const WasherInput& washer, Trace* trace) {
    if (!washer.usAllowable) return std::nullopt;
    const Area area = bearingArea(washer);
    const double bearing = bearingFactor(washer.diameter);
    LimitState state = base(washer, LimitStateKind::washer, Basis::us);
    state.reference = *washer.usAllowable * area;
    state.working = state.reference * moistureFactor(washer.service) * bearing;
    if (washer.meanWet)
        state.gives = Band{*washer.meanWet * area, *washer.meanWet * area * bearing};
    state.standing = washer.usStanding;
    state.clause = usClause;
    if (trace != nullptr) {
        trace->title = "Wood crushed under the washer, US basis";
        trace->formula = "W' = F_c⊥ · C_M · C_b · A";
        trace->clause = usClause;
        trace->standing = state.standing;
        trace->outside = textsOf(state.outside);
        explainWasher(washer, *trace);
        trace->lines.push_back({"F_c⊥", "allowable across the grain, dry", *washer.usAllowable,
                                washer.usSource, washer.usStanding});
        trace->lines.push_back({"C_M", "wet service", moistureFactor(washer.service),
                                "Merritt & Ricketts, Table 10.6", Standing::read});
        trace->lines.push_back({"C_b", "short bearing, (l_b + 3/8 in)/l_b", bearing,
                                "ANSI/AWC NDS 3.10.4", Standing::fromMemory});
        trace->lines.push_back(
            {"W'", "design load on the washer", state.working, "", std::nullopt});
        trace->notes.emplace_back(
            "No duration factor: crushing across the grain is a limit on how far it sinks.");
    }
    return state;
}

std::optional<LimitState> washerEc5(const WasherInput& washer, Trace* trace) {
    if (!washer.ec5Characteristic) return std::nullopt;
    const Area area = bearingArea(washer);
    LimitState state = base(washer, LimitStateKind::washer, Basis::ec5);
    state.reference = 3.0 * *washer.ec5Characteristic * area;
    state.working =
        state.reference * kMod(washer.duration, washer.service) / gammaM(washer.kindOfLoad);
    if (washer.meanWet)
        state.gives =
            Band{*washer.meanWet * area, *washer.meanWet * area * bearingFactor(washer.diameter)};
    state.standing = std::max(washer.ec5Standing, Standing::fromMemory);
    state.clause = ec5Clause;
    if (trace != nullptr) {
        trace->title = "Wood crushed under the washer, Eurocode 5";
        trace->formula = "R_d = 3.0 · f_c,90,k · A · k_mod / γ_M";
        trace->clause = ec5Clause;
        trace->standing = state.standing;
        trace->outside = textsOf(state.outside);
        explainWasher(washer, *trace);
        explainEc5Factors(washer, *trace);
        trace->lines.push_back(
            {"R_d", "design load on the washer", state.working, "", std::nullopt});
    }
    return state;
}

std::optional<LimitState> bedUs(const BedInput& bed, Trace* trace) {
    if (!bed.wood.usAllowable || bed.highest.si() <= 0) return std::nullopt;
    LimitState state = base(bed.wood, LimitStateKind::crushing, Basis::us);
    state.reference = bed.contact * (*bed.wood.usAllowable / bed.highest);
    state.working = state.reference * moistureFactor(bed.wood.service);
    if (bed.wood.meanWet) {
        const Force gives = bed.contact * (*bed.wood.meanWet / bed.highest);
        state.gives = Band{gives, gives};
    }
    state.standing = bed.wood.usStanding;
    state.clause = bedUsClause;
    if (trace != nullptr) {
        trace->title = "Keel timber crushed on the ballast's lee edge, US basis";
        trace->formula = "p_max ≤ F_c⊥ · C_M";
        trace->clause = bedUsClause;
        trace->standing = state.standing;
        trace->lines.push_back({"C", "contact force", bed.contact, "load case", Standing::derived});
        trace->lines.push_back(
            {"p_max", "highest pressure", bed.highest, "cracked section", Standing::derived});
        trace->lines.push_back({"F_c⊥", "allowable across the grain, dry", *bed.wood.usAllowable,
                                bed.wood.usSource, bed.wood.usStanding});
        trace->lines.push_back({"C_M", "wet service", moistureFactor(bed.wood.service),
                                "Merritt & Ricketts, Table 10.6", Standing::read});
        trace->lines.push_back(
            {"C_d", "contact force that is just met", state.working, "", std::nullopt});
    }
    return state;
}

std::optional<LimitState> bedEc5(const BedInput& bed, Trace* trace) {
    if (!bed.wood.ec5Characteristic || bed.highest.si() <= 0) return std::nullopt;
    LimitState state = base(bed.wood, LimitStateKind::crushing, Basis::ec5);
    state.reference = bed.contact * (*bed.wood.ec5Characteristic / bed.highest);
    state.working =
        state.reference * kMod(bed.wood.duration, bed.wood.service) / gammaM(bed.wood.kindOfLoad);
    if (bed.wood.meanWet) {
        const Force gives = bed.contact * (*bed.wood.meanWet / bed.highest);
        state.gives = Band{gives, gives};
    }
    state.standing = std::max(bed.wood.ec5Standing, Standing::fromMemory);
    state.clause = bedEc5Clause;
    if (trace != nullptr) {
        trace->title = "Keel timber crushed on the ballast's lee edge, Eurocode 5";
        trace->formula = "p_max ≤ k_c,90 · f_c,90,k · k_mod / γ_M, k_c,90 = 1.0";
        trace->clause = bedEc5Clause;
        trace->standing = state.standing;
        trace->lines.push_back({"C", "contact force", bed.contact, "load case", Standing::derived});
        trace->lines.push_back(
            {"p_max", "highest pressure", bed.highest, "cracked section", Standing::derived});
        explainEc5Factors(bed.wood, *trace);
        trace->lines.push_back(
            {"C_d", "contact force that is just met", state.working, "", std::nullopt});
    }
    return state;
}

}  // namespace fayline
