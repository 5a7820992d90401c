#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace fayline::model {

enum class MoveKind { decide, undo, redo, record, note, reopen };

/// One thing done to a journal. `texts`: WHAT → text, nothing = back to the rule.
struct Move {
    MoveKind kind = MoveKind::note;
    std::map<std::string, std::optional<std::string>> texts;
};

/// Does the moves on a Journal and on a plain list of whole states side by side, then undoes
/// everything and redoes everything. The first difference in words, or nothing.
std::optional<std::string> firstDifference(const std::vector<Move>& moves);

}  // namespace fayline::model
