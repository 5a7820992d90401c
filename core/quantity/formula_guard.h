#pragma once

#include <string_view>

namespace fayline::detail {

/// Whether a spreadsheet could take the text for a formula, however many apostrophes already
/// guard it.
bool looksLikeFormula(std::string_view text);

}  // namespace fayline::detail
