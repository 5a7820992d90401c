#pragma once

#include "project/journal.h"

namespace fayline::test {

/// A step that may come next: now a decision, now an undo, a redo, a record or a note, with texts
/// that are empty, long or not English.
Step nextStep(const Journal& journal);
Journal journalOf(std::int64_t steps);

}  // namespace fayline::test
