#pragma once

#include "derive/results.h"

namespace fayline {

/// Fills `worstFirst` from the sets. Checks of sets that `before` had too keep their order and are
/// not compared again; the outcome is the same as without `before`, which may be null.
void putWorstFirst(Results& results, const Results* before);

}  // namespace fayline
