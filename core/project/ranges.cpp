#include <algorithm>
#include <charconv>

#include "project/fields.h"
#include "quantity/text.h"

namespace fayline {
namespace {

Problem noSuch(std::string_view kind, std::string_view id, std::string_view where,
               const std::vector<std::string>& all) {
    std::string allowed = all.empty() ? "there are none yet: decide how many first"
                                      : std::string(all.front()) + " to " + std::string(all.back());
    return {"place.unknown", std::string(where),
            "there is no " + std::string(kind) + " " + quotable(id), allowed};
}

/// "F9" → F9; a lettered frame is set in by deciding its place, so its own `frame.x` may name it
/// first.
bool namesNewFrame(std::string_view id, std::string_view rest,
                   const std::vector<std::string>& frames) {
    if (rest != ".frame.x" || id.empty() || id.back() < 'A' || id.back() > 'Z') return false;
    return std::find(frames.begin(), frames.end(), id.substr(0, id.size() - 1)) != frames.end();
}

Result<std::vector<std::string>> between(const std::vector<std::string>& all,
                                         std::string_view first, std::string_view last,
                                         std::string_view kind, std::string_view where) {
    const auto from = std::find(all.begin(), all.end(), first);
    const auto to = std::find(all.begin(), all.end(), last);
    if (from == all.end()) return tl::unexpected(noSuch(kind, first, where, all));
    if (to == all.end()) return tl::unexpected(noSuch(kind, last, where, all));
    if (to < from) {
        return tl::unexpected(Problem{"place.order", std::string(where),
                                      std::string(first) + " comes after " + std::string(last),
                                      std::string(last) + "-" + std::string(first)});
    }
    return std::vector<std::string>(from, to + 1);
}

}  // namespace

std::vector<std::string> frameIds(const Project& project) {
    std::vector<std::string> ids;
    for (int i = 1; i <= project.frames.count.value_or(0); ++i)
        ids.push_back("F" + std::to_string(i));
    for (const auto& [id, frame] : project.frame) {
        const bool lettered = id.back() >= 'A' && id.back() <= 'Z';
        if (lettered && frame.x) ids.push_back(id);
    }
    std::sort(ids.begin(), ids.end(), NaturalLess{});
    return ids;
}

std::vector<std::string> boltIds(const Project& project) {
    std::vector<std::string> ids;
    for (int i = 1; i <= project.bolts.count.value_or(0); ++i)
        ids.push_back("K." + std::to_string(i));
    return ids;
}

Result<std::vector<std::string>> expandRange(const Project& project, std::string_view what) {
    const bool bolt = what.substr(0, 2) == "K.";
    const std::size_t start = bolt ? 2 : 0;
    const bool frame =
        !bolt && what.size() > 1 && what[0] == 'F' && what[1] >= '0' && what[1] <= '9';
    if (!bolt && !frame) return std::vector<std::string>{std::string(what)};

    std::size_t dot = what.find('.', start);
    // "K.2-K.4.diameter": the dot inside the second bolt's id does not end the place.
    if (bolt && dot != std::string_view::npos && what.substr(0, dot).ends_with("-K"))
        dot = what.find('.', dot + 1);
    const std::string_view place = what.substr(0, dot);
    const std::string_view rest =
        dot == std::string_view::npos ? std::string_view{} : what.substr(dot);
    const std::size_t dash = place.find('-');
    const std::string_view kind = bolt ? "ballast bolt" : "frame";
    const auto all = bolt ? boltIds(project) : frameIds(project);

    if (dash == std::string_view::npos) {
        const bool known = std::find(all.begin(), all.end(), place) != all.end();
        // A name the table does not know is a better message than a place that does not exist.
        if (known || namesNewFrame(place, rest, all) || !findDecision(what)) {
            return std::vector<std::string>{std::string(what)};
        }
        return tl::unexpected(noSuch(kind, place, what, all));
    }
    std::string last(place.substr(dash + 1));
    const std::string prefix = bolt ? "K." : "F";
    if (!last.empty() && last.front() >= '0' && last.front() <= '9') last.insert(0, prefix);
    const auto ids = between(all, place.substr(0, dash), last, kind, what);
    if (!ids) return tl::unexpected(ids.error());
    std::vector<std::string> names;
    names.reserve(ids->size());
    for (const std::string& id : *ids) names.push_back(id + std::string(rest));
    return names;
}

std::string decisionTitle(std::string_view what) {
    const auto target = findDecision(what);
    if (!target) return std::string(what);
    const std::string& section = target->field->section;
    const Address& at = target->address;
    if (section == "bolt") return "ballast bolt " + at.place + " " + target->field->label;
    if (section == "bolts") return "ballast bolts: " + target->field->label;
    if (section == "frames" || section == "floors") {
        // A floor's label says "floor siding", right at a frame; the set's own title need not say
        // it twice.
        const std::string& label = target->field->label;
        return section + ": " + (label.rfind("floor ", 0) == 0 ? label.substr(6) : label);
    }
    if (section == "frame" || section == "floor") return at.place + " " + target->field->label;
    if (section == "offsets") {
        return "offset station " + at.place +
               (at.index > 0 ? " point " + std::to_string(at.index) : "") + " " +
               target->field->label;
    }
    if (section.size() > 3 && section.compare(section.size() - 3, 3, " at") == 0) {
        std::string group = section.substr(0, section.size() - 3);
        std::replace(group.begin(), group.end(), '_', ' ');
        const std::string& pattern = target->field->pattern;
        const char* side = pattern.rfind("F#.P.", 0) == 0   ? " port"
                           : pattern.rfind("F#.S.", 0) == 0 ? " starboard"
                                                            : "";
        return at.place + side + " " + group + " " + target->field->label;
    }
    if (!at.place.empty()) return at.place + " " + target->field->label;
    return section + " " + target->field->label;
}

namespace {

/// What was decided, a word of the table with spaces between its parts: "white oak".
std::string inWords(const Change& change) {
    std::string text = *change.newText;
    const auto target = findDecision(change.what);
    if (target &&
        (target->field->kind == ValueKind::choice || target->field->kind == ValueKind::woodName ||
         target->field->kind == ValueKind::metalName))
        std::replace(text.begin(), text.end(), '_', ' ');
    return text;
}

}  // namespace

std::string stepTitle(const std::vector<Change>& changes) {
    // The first decision that is not a catalogue row kept along with it.
    auto lead = std::find_if(changes.begin(), changes.end(),
                             [](const Change& c) { return c.what.rfind("catalogue.", 0) != 0; });
    if (lead == changes.end()) lead = changes.begin();
    if (lead == changes.end()) return "nothing";
    std::string title = decisionTitle(lead->what);
    title += lead->newText ? " to " + quotable(inWords(*lead), 40) : " back to the rule";
    const auto others = std::count_if(changes.begin(), changes.end(), [&](const Change& c) {
        return &c != &*lead && c.what.rfind("catalogue.", 0) != 0;
    });
    if (others > 0) title += " and " + std::to_string(others) + " more";
    return title;
}

}  // namespace fayline
