#include "lexer.h"

#include <array>

namespace fayline::detail {
namespace {

struct Spelling {
    std::string_view from;
    std::string_view to;
};

// The blank behind a fraction keeps "½5" from becoming 1/25.
constexpr std::array fractions{
    Spelling{"½", "1/2 "}, Spelling{"⅓", "1/3 "},  Spelling{"⅔", "2/3 "}, Spelling{"¼", "1/4 "},
    Spelling{"¾", "3/4 "}, Spelling{"⅕", "1/5 "},  Spelling{"⅖", "2/5 "}, Spelling{"⅗", "3/5 "},
    Spelling{"⅘", "4/5 "}, Spelling{"⅙", "1/6 "},  Spelling{"⅚", "5/6 "}, Spelling{"⅐", "1/7 "},
    Spelling{"⅛", "1/8 "}, Spelling{"⅜", "3/8 "},  Spelling{"⅝", "5/8 "}, Spelling{"⅞", "7/8 "},
    Spelling{"⅑", "1/9 "}, Spelling{"⅒", "1/10 "},
};

constexpr std::array marks{
    Spelling{"\u2032", "'"},    Spelling{"\u2019", "'"},   Spelling{"\u02B9", "'"},
    Spelling{"\u2033", "\""},   Spelling{"\u201D", "\""},  Spelling{"\u02BA", "\""},
    Spelling{"''", "\""},       Spelling{"\u2212", "-"},   Spelling{"\u2010", "-"},
    Spelling{"\u2011", "-"},    Spelling{"\u2012", "-"},   Spelling{"\u2013", "-"},
    Spelling{"\u2044", "/"},    Spelling{"\u2215", "/"},   Spelling{"\u00B0", "deg "},
    Spelling{"\u00BA", "deg "}, Spelling{"\u2116", "No."}, Spelling{"\u00A0", " "},
    Spelling{"\u2009", " "},    Spelling{"\u202F", " "},   Spelling{"\u2007", " "},
};

constexpr std::array exponents{Spelling{"²", "2"}, Spelling{"³", "3"}};

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}
bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '%';
}
bool isBlank(char c) {
    return c == ' ' || c == '\t';
}
bool isPoint(char c) {
    return c == '.' || c == ',';
}

template <std::size_t N>
const Spelling* startOf(std::string_view text, const std::array<Spelling, N>& spellings) {
    for (const auto& spelling : spellings) {
        if (text.starts_with(spelling.from)) return &spelling;
    }
    return nullptr;
}

class Lexer {
  public:
    explicit Lexer(std::string_view text) : text_(text) {}

    std::vector<Token> run() {
        std::vector<Token> found;
        while (true) {
            const std::size_t before = at_;
            while (isBlank(peek())) ++at_;
            Token token;
            token.blankBefore = at_ > before;
            token.at = at_;
            token.mark = at_ < text_.size() ? next() : Mark::end;
            token.text = text_.substr(token.at, at_ - token.at);
            found.push_back(token);
            if (token.mark == Mark::end) return found;
        }
    }

  private:
    [[nodiscard]] char peek(std::size_t ahead = 0) const {
        return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0';
    }

    Mark next() {
        if (isDigit(peek()) || (isPoint(peek()) && isDigit(peek(1)))) {
            takeNumber();
            return Mark::number;
        }
        if (isLetter(peek())) {
            takeUnit();
            return Mark::word;
        }
        switch (text_[at_++]) {
            case '/':
                return Mark::slash;
            case '-':
                return Mark::dash;
            case '+':
                return Mark::plus;
            case '#':
                return Mark::hash;
            case '\'':
            case '"':
                return Mark::word;
            default:
                return Mark::junk;
        }
    }

    void takeNumber() {
        while (isDigit(peek()) || isPoint(peek())) ++at_;
        if (peek() != 'e' && peek() != 'E') return;
        const std::size_t sign = peek(1) == '+' || peek(1) == '-' ? 1 : 0;
        if (!isDigit(peek(1 + sign))) return;
        at_ += 1 + sign;
        while (isDigit(peek())) ++at_;
    }

    void takeUnit() {
        takeUnitPart();
        std::size_t ahead = 0;
        while (isBlank(peek(ahead))) ++ahead;
        if (peek(ahead) != '/') return;
        ++ahead;
        while (isBlank(peek(ahead))) ++ahead;
        if (!isLetter(peek(ahead))) return;
        at_ += ahead;
        takeUnitPart();
    }

    void takeUnitPart() {
        while (isLetter(peek())) ++at_;
        const std::size_t caret = peek() == '^' ? 1 : 0;
        const char exponent = peek(caret);
        // In "3ft2in" and "3ft2.5" the 2 is the next number.
        const char behind = peek(caret + 1);
        const bool goesOn = isDigit(behind) || isPoint(behind) || isLetter(behind) ||
                            behind == '"' || behind == '\'' || behind == '-';
        if ((exponent == '2' || exponent == '3') && !goesOn) {
            at_ += caret + 1;
        } else if (peek() == '.') {
            ++at_;
        }
    }

    std::string_view text_;
    std::size_t at_ = 0;
};

}  // namespace

std::string plainSpelling(std::string_view text) {
    std::string plain;
    while (!text.empty()) {
        const Spelling* spelling = startOf(text, marks);
        if (spelling == nullptr && !plain.empty() && isLetter(plain.back())) {
            spelling = startOf(text, exponents);
        }
        if (spelling == nullptr) {
            spelling = startOf(text, fractions);
            if (spelling != nullptr && !plain.empty() && isDigit(plain.back())) plain += ' ';
        }
        if (spelling != nullptr) {
            plain += spelling->to;
            text.remove_prefix(spelling->from.size());
        } else {
            plain += text.front();
            text.remove_prefix(1);
        }
    }
    return plain;
}

std::vector<Token> tokens(std::string_view spelling) {
    return Lexer(spelling).run();
}

}  // namespace fayline::detail
