#include "project/decide.h"

#include <algorithm>

#include "catalogue/kept.h"
#include "quantity/text.h"

namespace fayline {
namespace {

template <typename Entry>
std::vector<std::string> idsOf(const std::map<std::string, Entry>& entries) {
    std::vector<std::string> ids;
    ids.reserve(entries.size());
    for (const auto& [id, entry] : entries) ids.push_back(id);
    return ids;
}

Problem unknownMaterial(const Field& field, const std::string& text, const std::string& id,
                        const std::string& where, const std::vector<std::string>& ids,
                        const char* kind) {
    const auto near = didYouMean(id, ids);
    std::string allowed =
        near ? "did you mean " + *near + "?" : std::string("a ") + kind + " of the catalogue.";
    allowed += " Your own: give its figures first, like " + std::string(kind) + "." + id +
               (kind == std::string("wood") ? ".density" : ".yield");
    return {"material.unknown", where,
            field.label + " is " + quotable(text) + ", which the catalogue lacks", allowed};
}

/// Woods and metals must be known; ballast must be something ballast is cast of.
Result<void> checkMaterial(const Field& field, const std::string& text, const std::string& where,
                           const Project& project, const Catalogue& catalogue) {
    const std::string id = materialId(text);
    if (field.kind == ValueKind::woodName) {
        if (catalogue.woods.count(id) > 0 || project.wood.count(id) > 0) return {};
        return tl::unexpected(
            unknownMaterial(field, text, id, where, idsOf(catalogue.woods), "wood"));
    }
    const auto metal = catalogue.metals.find(id);
    if (metal == catalogue.metals.end()) {
        if (project.metal.count(id) > 0) return {};
        return tl::unexpected(
            unknownMaterial(field, text, id, where, idsOf(catalogue.metals), "metal"));
    }
    const MetalFamily family = metal->second.family;
    if (field.section == "ballast" && family != MetalFamily::lead && family != MetalFamily::iron) {
        return tl::unexpected(Problem{
            "material.kind", where, "metal is " + quotable(text) + ", which ballast is not cast of",
            "a lead or an iron of the catalogue"});
    }
    return {};
}

/// A kept row must be of a catalogue and read as one of its entries: "catalogue.wood.white_oak".
Result<void> checkKeptRow(const std::string& name, const std::string& text) {
    const std::string place = name.substr(name.find('.') + 1);
    const auto dot = place.find('.');
    const auto kind =
        dot == std::string::npos ? std::nullopt : catalogueKindFromText(place.substr(0, dot));
    if (!kind) {
        return tl::unexpected(Problem{"kept.kind", quotable(name),
                                      "there is no catalogue of this name",
                                      "names like catalogue.wood.white_oak"});
    }
    const auto entry = readKeptRow(*kind, place.substr(dot + 1), text);
    if (entry) return {};
    const Problem& first = entry.error().front();
    return tl::unexpected(
        Problem{"kept.unreadable", quotable(name), first.what,
                first.allowed.empty() ? "the row as the catalogue has it" : first.allowed});
}

/// Adds the catalogue row a material decision relies on, unless the project keeps it already.
void keepRow(const Field& field, const std::string& text, const Project& project,
             const Catalogue& catalogue, std::vector<Journal::NewText>& texts) {
    const CatalogueKind kind =
        field.kind == ValueKind::woodName ? CatalogueKind::wood : CatalogueKind::metal;
    const std::string id = materialId(text);
    const std::string name = keptName(kind, id);
    if (project.kept.count(name.substr(name.find('.') + 1)) > 0) return;
    if (std::any_of(texts.begin(), texts.end(), [&](const auto& t) { return t.first == name; }))
        return;
    if (const auto row = catalogueRow(catalogue, kind, id)) texts.emplace_back(name, *row);
}

/// A decision named twice in one go: the later text stands.
void setText(std::vector<Journal::NewText>& texts, const std::string& what,
             std::optional<std::string> text) {
    const auto same =
        std::find_if(texts.begin(), texts.end(), [&](const auto& t) { return t.first == what; });
    if (same == texts.end()) {
        texts.emplace_back(what, std::move(text));
    } else {
        same->second = std::move(text);
    }
}

std::string titleFor(const Journal& journal, const std::vector<Journal::NewText>& texts) {
    std::vector<Change> changes;
    for (const auto& [what, text] : texts) {
        const auto present = journal.decided().find(what);
        const bool same =
            present == journal.decided().end() ? !text : text && *text == present->second;
        if (!same) changes.push_back({what, std::nullopt, text});
    }
    return stepTitle(changes);
}

}  // namespace

std::string materialId(std::string_view name) {
    std::string id = lowered(trimmed(name));
    std::replace_if(
        id.begin(), id.end(), [](char c) { return c == ' ' || c == '-'; }, '_');
    return id;
}

std::string keptName(CatalogueKind kind, std::string_view id) {
    return "catalogue." + std::string(catalogueKindText(kind)) + "." + std::string(id);
}

Result<Step> prepareDecisions(const Journal& journal, const Project& project,
                              const Catalogue& catalogue,
                              const std::vector<std::pair<std::string, std::string>>& typed,
                              StepBy by) {
    Project working = project;
    std::vector<Journal::NewText> texts;
    std::string note;
    for (const auto& [what, text] : typed) {
        if (what == "note") {
            if (trimmed(text).empty())
                return tl::unexpected(
                    Problem{"value.text", "note", "it says nothing", "a few words"});
            note += (note.empty() ? "" : "; ") + std::string(trimmed(text));
            continue;
        }
        const auto names = expandRange(working, what);
        if (!names) return tl::unexpected(names.error());
        const std::optional<std::string> newText =
            trimmed(text).empty() ? std::nullopt : std::optional(std::string(trimmed(text)));
        for (const std::string& name : *names) {
            const auto target = findDecision(name);
            if (!target) return tl::unexpected(target.error());
            if (const auto done = applyChange(working, name, newText); !done)
                return tl::unexpected(done.error());
            setText(texts, name, newText);
            const ValueKind kind = target->field->kind;
            if (newText && kind == ValueKind::keptRow) {
                if (const auto reads = checkKeptRow(name, *newText); !reads)
                    return tl::unexpected(reads.error());
            }
            if (!newText || (kind != ValueKind::woodName && kind != ValueKind::metalName)) continue;
            if (const auto known =
                    checkMaterial(*target->field, *newText, name, working, catalogue);
                !known) {
                return tl::unexpected(known.error());
            }
            keepRow(*target->field, *newText, working, catalogue, texts);
        }
    }
    if (texts.empty() && !note.empty()) return journal.prepareNote(note, by);
    if (!note.empty()) by.why += (by.why.empty() ? "" : "; ") + note;
    std::string title = titleFor(journal, texts);
    return journal.prepareDecide(std::move(texts), std::move(title), std::move(by));
}

}  // namespace fayline
