#include "project/journal.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <set>

#include "quantity/digest.h"
#include "quantity/text.h"

namespace fayline {
namespace {

constexpr std::size_t longestTextBytes = 1'000'000;
constexpr std::size_t longestTitleBytes = 1'000;
constexpr std::string_view undoTitle = "Undo: ";
constexpr std::string_view redoTitle = "Redo: ";
static_assert(undoTitle.size() == redoTitle.size());

constexpr std::array kindNames = {
    std::pair{StepKind::decide, std::string_view("decide")},
    std::pair{StepKind::undo, std::string_view("undo")},
    std::pair{StepKind::redo, std::string_view("redo")},
    std::pair{StepKind::record, std::string_view("record")},
    std::pair{StepKind::note, std::string_view("note")},
};

void addMaybe(Digest& digest, const std::optional<std::string>& text) {
    digest.field(text ? "1" : "0");
    if (text) digest.field(*text);
}

void addCount(Digest& digest, std::size_t count) {
    digest.field(static_cast<std::int64_t>(count));
}

std::string place(std::int64_t number) {
    return "step " + std::to_string(number);
}

Problem bad(std::int64_t number, std::string code, std::string what, std::string allowed) {
    return {"journal." + std::move(code), place(number), std::move(what), std::move(allowed)};
}

std::optional<std::string> textIn(const std::map<std::string, std::string>& map,
                                  const std::string& what) {
    const auto found = map.find(what);
    if (found == map.end()) return std::nullopt;
    return found->second;
}

std::string shown(const std::optional<std::string>& text) {
    return text ? "\"" + quotable(*text) + "\"" : "nothing";
}

bool isUtcTime(std::string_view at) {
    static constexpr std::string_view shape = "0000-00-00T00:00:00Z";
    return std::equal(at.begin(), at.end(), shape.begin(), shape.end(), [](char have, char want) {
        return want == '0' ? have >= '0' && have <= '9' : have == want;
    });
}

Step blank(StepKind kind, std::string title, StepBy by) {
    Step step;
    step.at = std::move(by.at);
    step.who = std::move(by.who);
    step.why = std::move(by.why);
    step.title = std::move(title);
    step.kind = kind;
    return step;
}

tl::unexpected<Problem> nothing(std::string what) {
    return tl::unexpected(Problem{"nothing", "", std::move(what), ""});
}

/// The changes that take `step` back, last first.
std::vector<Change> inverse(const Step& step) {
    std::vector<Change> changes(step.changes.rbegin(), step.changes.rend());
    for (Change& change : changes) std::swap(change.oldText, change.newText);
    return changes;
}

struct NamedText {
    std::string_view name;
    std::string_view text;
    std::size_t mostBytes = longestTextBytes;
};

Result<void> textFits(std::int64_t number, const NamedText& checked) {
    const std::string name(checked.name);
    if (checked.text.size() > checked.mostBytes)
        return tl::unexpected(bad(number, "too_long",
                                  name + " has " + std::to_string(checked.text.size()) + " bytes",
                                  "at most " + std::to_string(checked.mostBytes)));
    if (checked.text.find('\0') != std::string_view::npos)
        return tl::unexpected(bad(number, "text", name + " holds a zero byte", "plain text"));
    if (const auto at = firstBadUtf8(checked.text))
        return tl::unexpected(bad(number, "text",
                                  name + " is not UTF-8 from byte " + std::to_string(*at + 1),
                                  "text in UTF-8"));
    return {};
}

Result<void> textsFit(const Step& step) {
    const bool turned = step.kind == StepKind::undo || step.kind == StepKind::redo;
    std::vector<NamedText> texts = {
        {"the name of who did it", step.who},
        {"the reason", step.why},
        {"the title", step.title, longestTitleBytes + (turned ? undoTitle.size() : 0)}};
    for (const Change& change : step.changes) {
        texts.push_back({"the name of a decision", change.what});
        if (change.oldText) texts.push_back({"an old text", *change.oldText});
        if (change.newText) texts.push_back({"a new text", *change.newText});
    }
    for (const NamedText& text : texts)
        if (auto fit = textFits(step.number, text); !fit) return fit;
    if (!isUtcTime(step.at))
        return tl::unexpected(bad(step.number, "time", "its time is \"" + quotable(step.at) + "\"",
                                  "UTC as 2026-11-25T10:42:07Z"));
    return {};
}

}  // namespace

std::string_view stepKindName(StepKind kind) {
    for (const auto& [known, name] : kindNames)
        if (known == kind) return name;
    return {};
}

std::optional<StepKind> stepKindNamed(std::string_view name) {
    for (const auto& [kind, known] : kindNames)
        if (known == name) return kind;
    return std::nullopt;
}

std::string stepHash(const Step& step, std::string_view previousHash) {
    Digest digest;
    digest.field("fayline.step/1").field(previousHash).field(step.number).field(step.at);
    digest.field(step.who).field(step.why).field(step.title).field(stepKindName(step.kind));
    addMaybe(digest, step.target ? std::optional(std::to_string(*step.target)) : std::nullopt);
    addCount(digest, step.changes.size());
    for (const Change& change : step.changes) {
        digest.field(change.what);
        addMaybe(digest, change.oldText);
        addMaybe(digest, change.newText);
    }
    return digest.hex();
}

std::int64_t Journal::tip() const {
    return static_cast<std::int64_t>(steps_.size());
}

std::string Journal::tipHash() const {
    return steps_.empty() ? "" : steps_.back().hash;
}

const Step& Journal::at(std::int64_t number) const {
    return steps_.at(static_cast<std::size_t>(number - 1));
}

std::optional<std::int64_t> Journal::nextUndo() const {
    return undo_.empty() ? std::nullopt : std::optional(undo_.back());
}

std::optional<std::int64_t> Journal::nextRedo() const {
    return redo_.empty() ? std::nullopt : std::optional(redo_.back());
}

std::string Journal::nextUndoTitle() const {
    return undo_.empty() ? "" : at(undo_.back()).title;
}

std::string Journal::nextRedoTitle() const {
    return redo_.empty() ? "" : at(redo_.back()).title;
}

Result<Step> Journal::finished(Step step) const {
    step.number = tip() + 1;
    step.hash = stepHash(step, tipHash());
    if (auto fit = fits(step); !fit) return tl::unexpected(fit.error());
    return step;
}

Result<Step> Journal::prepareDecide(const std::vector<NewText>& newTexts, std::string title,
                                    StepBy by) const {
    Step step = blank(StepKind::decide, std::move(title), std::move(by));
    std::set<std::string> seen;
    for (const auto& [what, text] : newTexts) {
        if (!seen.insert(what).second)
            return tl::unexpected(Problem{"journal.twice", quotable(what),
                                          "it is given more than once", "one value for each"});
        auto present = textIn(decided_, what);
        if (present != text) step.changes.push_back({what, std::move(present), text});
    }
    if (step.changes.empty()) return nothing("nothing would change by this");
    return finished(std::move(step));
}

Result<Step> Journal::prepareUndo(StepBy by) const {
    if (undo_.empty()) return nothing("there is nothing left to undo");
    const Step& target = at(undo_.back());
    Step step = blank(StepKind::undo, std::string(undoTitle) + target.title, std::move(by));
    step.target = target.number;
    step.changes = inverse(target);
    return finished(std::move(step));
}

Result<Step> Journal::prepareRedo(StepBy by) const {
    if (redo_.empty()) return nothing("there is nothing left to redo");
    const Step& target = at(redo_.back());
    Step step = blank(StepKind::redo, std::string(redoTitle) + target.title, std::move(by));
    step.target = target.number;
    step.changes = target.changes;
    return finished(std::move(step));
}

Result<Step> Journal::prepareRecord(const std::vector<NewText>& newTexts, std::string title,
                                    StepBy by) const {
    Step step = blank(StepKind::record, std::move(title), std::move(by));
    for (const auto& [what, text] : newTexts) {
        auto present = textIn(recorded_, what);
        step.changes.push_back({what, std::move(present), text});
    }
    return finished(std::move(step));
}

Result<Step> Journal::prepareNote(std::string title, StepBy by) const {
    return finished(blank(StepKind::note, std::move(title), std::move(by)));
}

Result<void> Journal::changesFit(const Step& step) const {
    if (step.kind == StepKind::undo || step.kind == StepKind::redo) {
        const bool undoing = step.kind == StepKind::undo;
        const auto due = undoing ? nextUndo() : nextRedo();
        const std::string word = undoing ? "undo" : "redo";
        if (!due || step.target != due)
            return tl::unexpected(
                bad(step.number, "target",
                    "it would " + word + " " + (step.target ? place(*step.target) : "no step"),
                    due ? place(*due) + " is next in line" : "there is nothing to " + word));
        if (step.changes != (undoing ? inverse(at(*due)) : at(*due).changes))
            return tl::unexpected(bad(step.number, "changes",
                                      "its changes are not those of " + place(*due),
                                      "the same changes, " + word + "ne"));
        return {};
    }
    if (step.target)
        return tl::unexpected(bad(step.number, "target", "it points at " + place(*step.target),
                                  "only undo and redo steps point at another"));
    if (step.kind == StepKind::decide && step.changes.empty())
        return tl::unexpected(
            bad(step.number, "changes", "it decides nothing", "at least one change"));
    if (step.kind == StepKind::note && !step.changes.empty())
        return tl::unexpected(bad(step.number, "changes", "it is a note with changes", "none"));
    const auto& present = step.kind == StepKind::record ? recorded_ : decided_;
    std::set<std::string_view> seen;
    for (const Change& change : step.changes) {
        const std::string what = quotable(change.what);
        if (change.what.empty() || !seen.insert(change.what).second)
            return tl::unexpected(
                bad(step.number, "changes",
                    change.what.empty() ? "a change names nothing" : what + " is changed twice",
                    "each named once"));
        const auto now = textIn(present, change.what);
        if (change.oldText != now)
            return tl::unexpected(bad(step.number, "old_text",
                                      what + " is said to have been " + shown(change.oldText),
                                      "it was " + shown(now)));
        if (step.kind == StepKind::decide && change.oldText == change.newText)
            return tl::unexpected(
                bad(step.number, "changes", what + " is set to what it was", "a new text"));
    }
    return {};
}

Result<void> Journal::fits(const Step& step) const {
    if (step.number != tip() + 1)
        return tl::unexpected(bad(step.number, "number", "it does not follow " + place(tip()),
                                  place(tip() + 1) + " comes next"));
    if (step.hash != stepHash(step, tipHash()))
        return tl::unexpected(bad(step.number, "hash", "its check sum does not match what it says",
                                  "a step is never altered once written"));
    if (auto fit = textsFit(step); !fit) return fit;
    return changesFit(step);
}

void Journal::apply(const Step& step) {
    auto& map = step.kind == StepKind::record ? recorded_ : decided_;
    for (const Change& change : step.changes) {
        if (change.newText)
            map.insert_or_assign(change.what, *change.newText);
        else
            map.erase(change.what);
    }
    if (step.kind == StepKind::decide) {
        undo_.push_back(step.number);
        redo_.clear();
    } else if (step.kind == StepKind::undo) {
        redo_.push_back(undo_.back());
        undo_.pop_back();
    } else if (step.kind == StepKind::redo) {
        undo_.push_back(redo_.back());
        redo_.pop_back();
    }
}

Result<void> Journal::append(Step step) {
    if (auto fit = fits(step); !fit) return fit;
    apply(step);
    steps_.push_back(std::move(step));
    return {};
}

std::string Journal::stateHash() const {
    Digest digest;
    digest.field("fayline.state/1");
    for (const auto* map : {&decided_, &recorded_}) {
        addCount(digest, map->size());
        for (const auto& [what, text] : *map) digest.field(what).field(text);
    }
    return digest.hex();
}

FoldedJournal Journal::fold(std::vector<Step> steps) {
    FoldedJournal folded;
    folded.journal.steps_.reserve(steps.size());
    for (std::size_t i = 0; i < steps.size(); ++i) {
        if (auto added = folded.journal.append(std::move(steps[i])); !added) {
            folded.firstBadStep = static_cast<std::int64_t>(i + 1);
            folded.problem = std::move(added.error());
            break;
        }
    }
    return folded;
}

}  // namespace fayline
