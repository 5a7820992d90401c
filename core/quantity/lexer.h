#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>
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

/// Walks along tokens; the last one, the end, is never passed.
class Cursor {
  public:
    explicit Cursor(std::vector<Token> tokens) : tokens_(std::move(tokens)) {}

    [[nodiscard]] const Token& peek(std::size_t ahead = 0) const {
        return tokens_[std::min(at_ + ahead, tokens_.size() - 1)];
    }
    [[nodiscard]] bool sees(Mark mark, std::size_t ahead = 0) const {
        return peek(ahead).mark == mark;
    }
    [[nodiscard]] bool isBehind(Mark mark) const {
        return at_ > 0 && tokens_[at_ - 1].mark == mark;
    }
    void skip(std::size_t count = 1) { at_ = std::min(at_ + count, tokens_.size() - 1); }
    bool accept(Mark mark) {
        if (!sees(mark)) return false;
        skip();
        return true;
    }

  private:
    std::vector<Token> tokens_;
    std::size_t at_ = 0;
};

/// The tokens of a plain spelling, an end token last. Units are words, exponents and quotients
/// included (N/mm2); so are ' and ". The views point into the spelling.
std::vector<Token> tokens(std::string_view spelling);

}  // namespace fayline::detail
