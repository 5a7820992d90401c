#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace fayline {

/// What a journal step does. Undo and redo act on `decide` steps only; a record is of something
/// that happened.
enum class StepKind { decide, undo, redo, record, note };

/// One decision changed: the texts as typed; no text = not decided.
struct Change {
    std::string what;
    std::optional<std::string> oldText;
    std::optional<std::string> newText;
    bool operator==(const Change&) const = default;
};

/// One line of the journal. Steps are never altered or removed once written.
struct Step {
    std::int64_t number = 0;  ///< 1, 2, 3 … without a gap
    std::string at;           ///< UTC, ISO 8601: 2026-11-25T10:42:07Z
    std::string who;
    std::string why;    ///< the builder's reason; may be empty
    std::string title;  ///< plain words: "ballast bolt K.5 diameter to 5/8 in"
    StepKind kind = StepKind::decide;
    std::optional<std::int64_t> target;  ///< for undo and redo: the decide step acted on
    std::vector<Change> changes;
    std::string hash;  ///< SHA-256 in hex over the previous hash and every field above
    bool operator==(const Step&) const = default;
};

}  // namespace fayline
