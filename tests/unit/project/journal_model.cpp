#include "journal_model.h"

#include "project/journal.h"

namespace fayline::model {
namespace {

using State = std::map<std::string, std::string>;

const StepBy someone{"Ada", "", "2026-11-25T10:42:07Z"};

State with(State state, const Move& move) {
    for (const auto& [what, text] : move.texts) {
        state.erase(what);
        if (text) state.emplace(what, *text);
    }
    return state;
}

/// Whole states, one after another, and where in the row we stand.
struct Snapshots {
    std::vector<State> states = {{}};
    std::size_t here = 0;
    State recorded;

    bool step(const Move& move) {
        switch (move.kind) {
            case MoveKind::decide: {
                State next = with(states[here], move);
                if (next == states[here]) return false;
                states.resize(here + 1);
                states.push_back(std::move(next));
                ++here;
                return true;
            }
            case MoveKind::undo:
                if (here == 0) return false;
                --here;
                return true;
            case MoveKind::redo:
                if (here + 1 == states.size()) return false;
                ++here;
                return true;
            case MoveKind::record:
                recorded = with(recorded, move);
                return true;
            case MoveKind::note:
                return true;
            case MoveKind::reopen:
                return false;
        }
        return false;
    }
};

Result<Step> prepared(const Journal& journal, const Move& move) {
    const std::vector<Journal::NewText> texts(move.texts.begin(), move.texts.end());
    switch (move.kind) {
        case MoveKind::decide:
            return journal.prepareDecide(texts, "decided", someone);
        case MoveKind::undo:
            return journal.prepareUndo(someone);
        case MoveKind::redo:
            return journal.prepareRedo(someone);
        case MoveKind::record:
            return journal.prepareRecord(texts, "recorded", someone);
        case MoveKind::note:
            return journal.prepareNote("noted", someone);
        case MoveKind::reopen:
            break;
    }
    return tl::unexpected(Problem{"nothing", "", "", ""});
}

std::optional<std::string> difference(const Journal& journal, const Snapshots& model) {
    if (journal.decided() != model.states[model.here]) return "other decisions";
    if (journal.recorded() != model.recorded) return "other records";
    if (journal.undoDepth() != model.here) return "another depth of undo";
    if (journal.redoDepth() != model.states.size() - 1 - model.here) return "another depth of redo";
    return std::nullopt;
}

std::optional<std::string> replayDifference(const Journal& live) {
    const FoldedJournal folded = Journal::fold(live.steps());
    if (folded.problem) return "replay stopped: " + folded.problem->line();
    if (folded.journal.decided() != live.decided()) return "replay gives other decisions";
    if (folded.journal.stateHash() != live.stateHash()) return "replay gives another state";
    if (folded.journal.nextUndo() != live.nextUndo() ||
        folded.journal.nextRedo() != live.nextRedo())
        return "replay gives another undo or redo";
    return std::nullopt;
}

class Walk {
  public:
    std::optional<std::string> one(const Move& move) {
        if (move.kind == MoveKind::reopen) {
            if (auto wrong = replayDifference(journal_)) return wrong;
            journal_ = Journal::fold(journal_.steps()).journal;
            return difference(journal_, model_);
        }
        const auto before = journal_.steps();
        const auto step = prepared(journal_, move);
        if (step.has_value() != model_.step(move))
            return step ? "a step where none was due" : "no step: " + step.error().line();
        if (!step)
            return step.error().code == "nothing" ? std::nullopt
                                                  : std::optional(step.error().line());
        if (auto added = journal_.append(*step); !added) return added.error().line();
        if (journal_.steps().size() != before.size() + 1 ||
            !std::equal(before.begin(), before.end(), journal_.steps().begin()))
            return "steps already written have changed";
        return difference(journal_, model_);
    }

    std::optional<std::string> all(MoveKind kind) {
        const auto next = [&] {
            return kind == MoveKind::undo ? journal_.nextUndo() : journal_.nextRedo();
        };
        while (next())
            if (auto wrong = one({kind, {}})) return wrong;
        return std::nullopt;
    }

    [[nodiscard]] const State& decided() const { return journal_.decided(); }

  private:
    Journal journal_;
    Snapshots model_;
};

}  // namespace

std::optional<std::string> firstDifference(const std::vector<Move>& moves) {
    Walk walk;
    for (std::size_t i = 0; i < moves.size(); ++i)
        if (auto wrong = walk.one(moves[i])) return "move " + std::to_string(i + 1) + ": " + *wrong;
    if (auto wrong = walk.all(MoveKind::redo)) return "redo to the end: " + *wrong;
    const State newest = walk.decided();
    if (auto wrong = walk.all(MoveKind::undo)) return "undo all: " + *wrong;
    if (!walk.decided().empty()) return "undo all leaves decisions";
    if (auto wrong = walk.all(MoveKind::redo)) return "redo all: " + *wrong;
    if (walk.decided() != newest) return "redo all does not lead back";
    return walk.one({MoveKind::reopen, {}});
}

}  // namespace fayline::model
