#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "project/step.h"
#include "quantity/result.h"

namespace fayline {

struct FoldedJournal;

/// "decide", "undo", "redo", "record" or "note": the word in the file, in JSON and in the hash.
std::string_view stepKindName(StepKind kind);
/// The kind with that name, or nothing.
std::optional<StepKind> stepKindNamed(std::string_view name);

/// SHA-256, 64 small hex digits, that chains a step to the one before it. `step.hash` is not read.
///
/// The bytes hashed are these fields, one after another, each as its length in bytes (8 bytes, most
/// significant first) and then its bytes:
///   "fayline.step/1", hash of the step before ("" for step 1), number, at, who, why, title, kind,
///   target, how many changes, and for each change: what, old text, new text.
/// Target and the two texts may be missing: each is a field "0", or a field "1" and then the text.
/// Numbers are decimal digits. Texts are UTF-8 as typed.
std::string stepHash(const Step& step, std::string_view previousHash);

/// Who does a step, and why and when.
struct StepBy {
    std::string who;
    std::string why;  ///< may be empty
    std::string at;   ///< UTC, as in Step::at
};

/// What the builder decided, step by step. Everything here is worked out from the steps alone, so
/// undo and redo work on after a file is closed and opened again.
///
/// The `prepare…` functions make the next step without adding it; `append` adds one that fits.
/// Undo takes back the newest decide step still in force; a new decide step empties the redo line.
/// Records and notes stand outside: they are never undone and leave undo and redo as they were.
class Journal {
  public:
    using NewText = std::pair<std::string, std::optional<std::string>>;

    [[nodiscard]] const std::vector<Step>& steps() const { return steps_; }
    /// WHAT → text as typed, for all that is decided now.
    [[nodiscard]] const std::map<std::string, std::string>& decided() const { return decided_; }
    /// The same for what record steps say has happened.
    [[nodiscard]] const std::map<std::string, std::string>& recorded() const { return recorded_; }

    /// Number and hash of the last step; 0 and "" before the first.
    [[nodiscard]] std::int64_t tip() const;
    [[nodiscard]] std::string tipHash() const;

    /// The decide step that undo (redo) would act on, or nothing.
    [[nodiscard]] std::optional<std::int64_t> nextUndo() const;
    [[nodiscard]] std::optional<std::int64_t> nextRedo() const;
    [[nodiscard]] std::string nextUndoTitle() const;
    [[nodiscard]] std::string nextRedoTitle() const;
    /// How many steps undo (redo) could act on, one after another.
    [[nodiscard]] std::size_t undoDepth() const { return undo_.size(); }
    [[nodiscard]] std::size_t redoDepth() const { return redo_.size(); }

    /// A decide step for texts to be set (nothing = back to the rule). Texts equal to the present
    /// ones are left out; if none is left the problem has the code "nothing". A WHAT given twice is
    /// refused.
    [[nodiscard]] Result<Step> prepareDecide(const std::vector<NewText>& newTexts,
                                             std::string title, StepBy by) const;
    /// Takes nextUndo() back, or puts nextRedo() in force again; "nothing" if there is none.
    [[nodiscard]] Result<Step> prepareUndo(StepBy by) const;
    [[nodiscard]] Result<Step> prepareRedo(StepBy by) const;
    /// Something that happened. The same thing may happen twice, so equal texts are kept.
    [[nodiscard]] Result<Step> prepareRecord(const std::vector<NewText>& newTexts,
                                             std::string title, StepBy by) const;
    [[nodiscard]] Result<Step> prepareNote(std::string title, StepBy by) const;

    /// Whether a step may come next: number, chain, texts, and the changes it makes.
    [[nodiscard]] Result<void> fits(const Step& step) const;
    /// Adds a step that fits; otherwise nothing changes and the problem names the step.
    Result<void> append(Step step);

    /// SHA-256 over decided() and recorded(), laid out as in stepHash: "fayline.state/1", how many
    /// decided, each WHAT and text in byte order of WHAT, then the same for recorded.
    [[nodiscard]] std::string stateHash() const;

    /// The journal of all steps that fit, in order, up to the first that does not.
    static FoldedJournal fold(std::vector<Step> steps);

  private:
    [[nodiscard]] Result<Step> finished(Step step) const;
    [[nodiscard]] Result<void> changesFit(const Step& step) const;
    [[nodiscard]] const Step& at(std::int64_t number) const;
    void apply(const Step& step);

    std::vector<Step> steps_;
    std::map<std::string, std::string> decided_;
    std::map<std::string, std::string> recorded_;
    std::vector<std::int64_t> undo_;
    std::vector<std::int64_t> redo_;
};

/// A journal read from outside.
struct FoldedJournal {
    Journal journal;                           ///< every step before the first bad one
    std::optional<std::int64_t> firstBadStep;  ///< place in the row, counted from 1
    std::optional<Problem> problem;            ///< what is wrong with it
};

}  // namespace fayline
