#pragma once

#include "derive/results.h"
#include "json.h"

namespace fayline::cli {

/// What each frame that bears on the keel takes in each case, and what its fastenings carry.
Json stationsJson(const Results& results);

}  // namespace fayline::cli
