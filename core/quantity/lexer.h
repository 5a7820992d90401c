#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace fayline::detail {

enum class Mark { number, slash, dash, plus, word, hash, junk, end };

struct Token {
    Mark mark = Mark::end;
    std::string_view text;
    std::size_t at = 0;
    bool blankBefore = false;
};

/// The text in ASCII spellings: vulgar fractions as n/d, primes as ' and ", dashes and blanks as
/// their plain forms, ² and ³ behind a letter as digits, ° as "deg". Anything else stays.
std::string plainSpelling(std::string_view text);

/// The tokens of a plain spelling, an end token last. Units are words, exponents and quotients
/// included (N/mm2); so are ' and ". The views point into the spelling.
std::vector<Token> tokens(std::string_view spelling);

}  // namespace fayline::detail
