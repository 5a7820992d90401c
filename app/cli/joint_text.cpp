#include <algorithm>
#include <set>

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
    text += " of " + (wood ? plain(*wood) : std::string("wood as given"));
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

std::string basisText(const BasisResult& result, const char* title, const char* reference,
                      const Style& style) {
    std::string text = std::string("\n") + title + "\n";
    text += row("", reference, "working", "starts to give", "comes apart", "");
    for (const LimitState& state : result.states()) {
        const std::string how = state.kind == LimitStateKind::lateral
                                    ? "mode " + result.lateral->governs
                                : state.soft ? "soft"
                                             : "sudden";
        text +=
            row(plain(nameOf(state.kind)), style.force(state.reference), style.force(state.working),
                style.band(state.gives), style.band(state.apart), how);
    }
    for (const MissingState& missing : result.missing)
        text += plain(nameOf(missing.kind)) + ": not worked out, " + missing.why + "\n";
    std::set<std::string> said;
    for (const LimitState& state : result.states()) {
        for (const std::string& outside : state.outside) {
            if (said.insert(outside).second)
                text += "  outside, " + plain(nameOf(state.kind)) + ": " + outside + "\n";
        }
    }
    return text;
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

std::string jointText(const JointFile& file, const JointResult& result) {
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
    if (result.driving) {
        text += "\nDriving: the root starts to yield at " +
                rounded(inNewtonMetres(result.driving->gives), 2) + " N·m and twists off at " +
                rounded(inNewtonMetres(result.driving->apart), 2) + " N·m\n";
    }
    if (!result.geometry.empty()) text += "\nSizes\n";
    for (const GeometryFinding& finding : result.geometry) {
        text += padded(plain(finding.what), 13) + (finding.met ? "ok    " : "short ") + "has " +
                style.length(finding.has) + ", needs " + style.length(finding.needs) + ": " +
                finding.says + "\n";
    }
    text += orderText(file, result, style) + "\n";
    for (const std::string& caution : result.cautions) text += caution + "\n";
    for (const std::string& caution : standingCautions()) text += caution + "\n";
    return text;
}

}  // namespace fayline::cli
