#include <algorithm>

#include "derive/results.h"
#include "joint/work_joint.h"
#include "joint_report.h"
#include "quantity/display.h"

namespace fayline::cli {
namespace {

std::string plain(std::string_view name) {
    std::string text(name);
    std::replace(text.begin(), text.end(), '_', ' ');
    return text;
}

std::string padded(std::string text, std::size_t width) {
    // Dashes and primes are of several bytes: letters count, not bytes.
    std::size_t letters = 0;
    for (const char c : text) letters += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    if (letters < width) text.append(width - letters, ' ');
    return text + " ";
}

struct Style {
    UnitSystem units;
    [[nodiscard]] std::string length(Length value) const {
        return displayLength(value, units == UnitSystem::inches ? LengthStyle::inchFractions
                                                                : LengthStyle::millimetres);
    }
    [[nodiscard]] std::string force(Force value) const { return displayForce(value, units); }
    [[nodiscard]] std::string band(const std::optional<Band>& value) const {
        if (!value) return "no figure";
        if (value->low == value->high) return force(value->low);
        return force(value->low) + " to " + force(value->high);
    }
};

std::string fastenerLine(const JointFile& file, const Style& style) {
    const JointFastener& f = file.joint.fastener;
    std::string text =
        f.gauge ? "No. " + std::to_string(f.gauge->number()) : style.length(f.diameter);
    text += " " + plain(nameOf(f.kind));
    if (f.length.si() > 0.0) text += ", " + style.length(f.length) + " long";
    text += ", " + (file.metal ? plain(*file.metal) : std::string("metal as given"));
    return text + "\n";
}

std::string memberLine(const JointMember& member, const std::optional<std::string>& wood,
                       const Style& style) {
    std::string text = member.name + ": " + style.length(member.thickness);
    if (member.counterbore.si() > 0.0) text += " less " + style.length(member.counterbore);
    text += " of " + (member.lead ? std::string("lead")
                      : wood      ? plain(*wood)
                                  : std::string("wood as given"));
    if (member.grain > Angle{}) text += ", load at " + displayAngle(member.grain) + " to the grain";
    if (member.endGrain) text += ", in end grain";
    if (member.gap.si() > 0.0) text += ", then a gap of " + style.length(member.gap);
    return text + "\n";
}

std::string row(const std::string& what, const std::string& reference, const std::string& working,
                const std::string& gives, const std::string& apart, const std::string& mode) {
    std::string text = padded(what, 13) + padded(reference, 11) + padded(working, 11) +
                       padded(gives, 20) + padded(apart, 20) + mode;
    text.erase(text.find_last_not_of(' ') + 1);
    return text + "\n";
}

/// Each rule once, with all the limit states it touches.
std::string outsideText(const BasisResult& result) {
    std::vector<std::pair<Remark, std::string>> rolled;
    result.each([&](const LimitState& state) {
        for (const Remark& remark : state.outside) {
            const auto same = std::find_if(rolled.begin(), rolled.end(), [&](const auto& old) {
                return old.first.rule == remark.rule && old.first.member == remark.member;
            });
            const std::string kind = plain(nameOf(state.kind));
            if (same == rolled.end()) {
                rolled.emplace_back(remark, kind);
            } else {
                same->second += ", " + kind;
            }
        }
    });
    std::string text;
    for (const auto& [remark, kinds] : rolled)
        text += "  outside, " + kinds + ": " + textOf(remark) + "\n";
    return text;
}

std::string basisText(const BasisResult& result, const char* title, const char* reference,
                      const Style& style) {
    std::string text = std::string("\n") + title + "\n";
    text += row("", reference, "working", "starts to give", "comes apart", "");
    result.each([&](const LimitState& state) {
        std::string how = state.kind == LimitStateKind::lateral
                              ? "mode " + std::string(result.lateral->governs)
                          : state.soft ? "soft"
                                       : "sudden";
        if (!state.place.empty()) how += ", " + std::string(state.place);
        text +=
            row(plain(nameOf(state.kind)), style.force(state.reference), style.force(state.working),
                style.band(state.gives), style.band(state.apart), how);
    });
    if (result.group) {
        text += "  group: fastening " + std::to_string(result.group->worst + 1) + " carries " +
                rounded(result.group->share, 3) + " of the load; once all have yielded " +
                style.force(result.group->plastic) + "\n";
    }
    for (const MissingState& missing : result.missing)
        text +=
            plain(nameOf(missing.kind)) + ": not worked out, " + std::string(missing.why) + "\n";
    return text + outsideText(result);
}

std::string moistureText(const JointFile& file, const std::vector<MoistureRow>& rows,
                         const Style& style) {
    std::string text = "\nMoisture, " + std::string(nameOf(file.zone)) + " zone: design loads\n";
    text += padded("", 20) + padded("as fitted", 11) + padded("shed, dry", 11) +
            padded("afloat", 11) + padded("winter", 11) + "governs\n";
    for (const MoistureRow& one : rows) {
        text += padded(std::string(nameOf(one.basis)) + " " + plain(nameOf(one.kind)), 20);
        for (const Force force : one.working) text += padded(style.force(force), 11);
        text += plain(nameOf(one.governs)) + "\n";
    }
    return text;
}

std::string drivingText(const DrivingResult& driving) {
    const auto torque = [](Moment moment) { return rounded(inNewtonMetres(moment), 2) + " N·m"; };
    std::string text = "\nDriving: the root starts to yield at " + torque(driving.gives) +
                       " and twists off at " + torque(driving.apart);
    if (driving.dry) {
        text += "; the last turn takes about " + torque(*driving.dry) + " dry and " +
                torque(*driving.waxed) + " waxed (judgement: try it on a scrap)";
        if (*driving.dry > driving.gives) text += ". Wax or soap it";
    }
    return text + "\n";
}

std::string slipText(const JointResult& result) {
    std::string text;
    for (std::size_t i = 0; i < result.slip.size(); ++i) {
        const PlaneSlip& slip = result.slip[i];
        text += "Slip, plane " + std::to_string(i + 1) + ": " +
                rounded(inNewtonsPerMillimetre(slip.soft), 0) + " to " +
                rounded(inNewtonsPerMillimetre(slip.stiff), 0) + " N/mm (" +
                std::string(sourceOf(slip)) + ")\n";
    }
    return text.empty() ? text : "\n" + text;
}

std::string orderText(const JointFile& file, const JointResult& result, const Style& style) {
    const BasisResult& chosen = file.basis == Basis::us ? result.us : result.ec5;
    std::string text = "\nWhat lets go first";
    text += file.joint.load ? ", sizes of the load along its direction\n" : "\n";
    int place = 0;
    for (const FirstToGo& entry : firstToGo(chosen, file.joint.load)) {
        text += std::to_string(++place) + ". " + plain(nameOf(entry.kind)) + ": gives at " +
                style.band(entry.gives) + ", apart at " + style.band(entry.apart) +
                (entry.soft ? ", soft" : ", sudden") +
                (entry.tooClose ? "; too close to call against its neighbour" : "") + "\n";
    }
    return text;
}

}  // namespace

std::string aboveGivingText(const JointResult& result) {
    std::string text;
    for (const Basis basis : {Basis::us, Basis::ec5}) {
        std::string kinds;
        (basis == Basis::us ? result.us : result.ec5).each([&](const LimitState& state) {
            if (state.basis == basis && worksAboveGiving(state))
                kinds += (kinds.empty() ? "" : ", ") + plain(nameOf(state.kind));
        });
        if (kinds.empty()) continue;
        text += std::string(text.empty() ? "" : " ") +
                (basis == Basis::us ? "US basis, " : "Eurocode 5, ") + kinds +
                ": the design load stands above what starts to give. " +
                std::string(whyAboveGiving(basis));
    }
    return text;
}

std::string jointText(const JointFile& file, const JointResult& result,
                      const std::vector<MoistureRow>& moisture) {
    const Joint& joint = file.joint;
    const Style style{file.units};
    std::string text = fastenerLine(file, style);
    for (std::size_t i = 0; i < joint.members.size(); ++i)
        text += memberLine(joint.members[i], file.woods[i], style);
    text += std::string(joint.service == Service::dry ? "dry" : "wet") + " in service, " +
            std::string(nameOf(joint.duration)) + ", " + std::string(nameOf(joint.kindOfLoad)) +
            " load\n";
    text += basisText(result.us, "US basis", "reference", style);
    text += basisText(result.ec5, "Eurocode 5", "charact.", style);
    if (const std::string above = aboveGivingText(result); !above.empty())
        text += "\n" + above + "\n";
    text += moistureText(file, moisture, style);
    if (result.driving) text += drivingText(*result.driving);
    if (!result.geometry.empty()) text += "\nSizes\n";
    for (const GeometryFinding& finding : result.geometry) {
        text += padded(plain(finding.what), 14) + (finding.met ? "ok    " : "wrong ") + "has " +
                style.length(finding.has) + (finding.atMost ? ", at most " : ", needs ") +
                style.length(finding.needs) + ": " + finding.says() + "\n";
    }
    text += slipText(result);
    text += orderText(file, result, style) + "\n";
    for (const std::string& caution : jointCautions(joint)) text += caution + "\n";
    for (const std::string& caution : standingCautions()) text += caution + "\n";
    return text;
}

}  // namespace fayline::cli
