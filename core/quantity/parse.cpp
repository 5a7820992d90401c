#include "parse.h"

#include <algorithm>

#include "lexer.h"
#include "quantity/text.h"

namespace fayline::detail {
namespace {

constexpr std::size_t longestText = 200;
constexpr std::size_t longestDivisor = 9;
constexpr int largestExponent = 400;
constexpr int inchesPerFoot = 12;
constexpr int eighthsPerInch = 8;

bool isWhole(std::string_view number) {
    return number.find_first_not_of("0123456789") == std::string_view::npos;
}

/// A whole number of at most nine digits.
std::optional<std::int64_t> smallWhole(std::string_view number) {
    if (number.empty() || !isWhole(number) || number.size() > longestDivisor) return std::nullopt;
    std::int64_t value = 0;
    for (const char c : number) value = value * 10 + (c - '0');
    return value;
}

/// The pieces of a number, before its unit is known.
using Pieces = std::vector<Piece>;

class Parser {
  public:
    Parser(std::string_view text, std::string_view where, Kind wanted, const Bare& bare)
        : typed_(trimmed(text)), where_(where), wanted_(wanted), bare_(bare) {}

    Result<double> run() {
        if (typed_.empty()) {
            refuse("number.empty", std::string(kindName(wanted_)) + " is missing here",
                   std::string(kindExample(wanted_)));
        } else if (typed_.size() > longestText || firstBadUtf8(typed_)) {
            refuse("number.malformed", quoted() + " is not " + std::string(kindName(wanted_)),
                   std::string(kindExample(wanted_)));
        } else {
            spelling_ = plainSpelling(typed_);
            tokens_ = tokens(spelling_);
            if (parseAll()) return rounded();
        }
        return tl::unexpected(std::move(problem_));
    }

  private:
    // Each of these returns false once problem_ is set.

    bool refuse(std::string code, std::string what, std::string allowed) {
        problem_ = {std::move(code), std::string(where_), std::move(what), std::move(allowed)};
        return false;
    }
    bool malformed(const std::string& why) {
        return refuse("number.malformed", quoted() + " cannot be read: " + why,
                      std::string(kindExample(wanted_)));
    }
    bool isOtherKind(Kind kind) {
        problem_ = wrongKind(typed_, where_, kind, wanted_);
        return false;
    }

    bool parseAll() {
        if (peek().mark == Mark::hash || isWordNo()) {
            const Token& behind = peek(1);
            if (behind.mark == Mark::number) return isOtherKind(Kind::gauge);
        }
        if (peek().mark == Mark::dash || peek().mark == Mark::plus) {
            negative_ = peek().mark == Mark::dash;
            ++at_;
        }
        if (isTriple()) return parseTriple();
        int terms = 0;
        do {
            if (!parseTerm()) return false;
            ++terms;
        } while (accept(Mark::plus));
        if (peek().mark != Mark::end) return refuseRest();
        if (negative_ && terms > 1) {
            return malformed("a minus before a sum could mean the first part or all of it");
        }
        return true;
    }

    bool refuseRest() {
        const Token& token = peek();
        if (token.mark == Mark::number && tokens_[at_ - 1].mark == Mark::number) {
            return malformed("two numbers stand side by side; digits are never grouped");
        }
        if (token.mark == Mark::dash) {
            return malformed(
                "a dash joins feet to inches (3'-4\"), a whole to its fraction "
                "(1-1/2), or three groups (3-4-2), without blanks in the last two");
        }
        return malformed("\"" + quotable(std::string_view(spelling_).substr(token.at), 20) +
                         "\" is left over");
    }

    /// Three whole numbers joined by dashes without blanks.
    [[nodiscard]] bool isTriple() const {
        for (std::size_t i = 0; i < 5; ++i) {
            const Token& token = peek(i);
            if (token.mark != (i % 2 == 0 ? Mark::number : Mark::dash)) return false;
            if (i > 0 && token.blankBefore) return false;
            if (i % 2 == 0 && !isWhole(token.text)) return false;
        }
        return peek(5).mark != Mark::slash;
    }

    bool parseTriple() {
        if (wanted_ != Kind::length) return isOtherKind(Kind::length);
        const auto feet = smallWhole(peek(0).text);
        const auto inches = smallWhole(peek(2).text);
        const auto eighths = smallWhole(peek(4).text);
        at_ += 5;
        const bool sixteenth = peek().mark == Mark::plus && !peek().blankBefore;
        if (sixteenth) ++at_;
        if (peek().mark != Mark::end) {
            return malformed("three groups with dashes are feet-inches-eighths and nothing more");
        }
        if (!feet || !inches || *inches >= inchesPerFoot || !eighths ||
            *eighths >= eighthsPerInch) {
            return malformed("in feet-inches-eighths the inches go to 11 and the eighths to 7");
        }
        const std::int64_t sixteenths =
            ((*feet * inchesPerFoot + *inches) * eighthsPerInch + *eighths) * 2 +
            (sixteenth ? 1 : 0);
        Factor inch = factorOf(LengthUnit::in);
        pieces_.push_back({std::to_string(sixteenths), 0, eighthsPerInch * 2, inch});
        return true;
    }

    /// A number with its unit; feet may have inches behind them.
    bool parseTerm() {
        Pieces number;
        if (!parseMixed(number)) return false;
        if (!isWord()) {
            if (peek().mark != Mark::end && peek().mark != Mark::plus) return refuseRest();
            return takeBare(number);
        }
        const Unit* unit = takeUnit();
        if (unit == nullptr) return false;
        take(number, unit->factor);
        return !isFoot(*unit) || parseInches(number);
    }

    /// What may stand behind feet: inches, with or without their mark.
    bool parseInches(const Pieces& feet) {
        const bool dash = peek().mark == Mark::dash;
        if (peek(dash ? 1 : 0).mark != Mark::number) return true;
        if (dash) ++at_;
        Pieces inches;
        if (!parseMixed(inches)) return false;
        if (isWord()) {
            const Unit* unit = takeUnit();
            if (unit == nullptr) return false;
            if (!isInch(*unit)) return malformed("only inches can stand behind feet");
        }
        if (feet.size() != 1 || feet.front().exponent != 0 || feet.front().divisor != 1) {
            return malformed("feet with inches behind them are a whole number");
        }
        const auto value = roundedSum(inches);
        if (!value || *value >= inchesPerFoot) {
            return malformed("the inches behind feet go up to less than 12");
        }
        take(inches, factorOf(LengthUnit::in));
        return true;
    }

    /// 40, 40.625, 5/8, 40 5/8, 40-5/8.
    bool parseMixed(Pieces& number) {
        if (peek().mark != Mark::number) {
            if (typed_.find_first_of("0123456789") != std::string_view::npos) {
                return malformed("a number is missing");
            }
            return refuse("number.malformed",
                          quoted() + " is not " + std::string(kindName(wanted_)),
                          std::string(kindExample(wanted_)));
        }
        if (peek(1).mark == Mark::slash) return parseFraction(number, false);
        const bool dash =
            peek(1).mark == Mark::dash && !peek(1).blankBefore && !peek(2).blankBefore;
        const std::size_t fraction = dash ? 2 : 1;
        const bool mixed =
            peek(fraction).mark == Mark::number && peek(fraction + 1).mark == Mark::slash;
        if (mixed && !isWhole(peek().text)) {
            return malformed("a number with a point has a fraction behind it");
        }
        if (!takeDecimal(number)) return false;
        if (!mixed) return true;
        if (dash) ++at_;
        return parseFraction(number, true);
    }

    bool parseFraction(Pieces& number, bool behindWhole) {
        const std::string_view above = peek().text;
        const Token& below = peek(2);
        if (below.mark != Mark::number) return malformed("a number is missing below the stroke");
        const auto numerator = smallWhole(above);
        const auto divisor = smallWhole(below.text);
        if (!numerator || !divisor) {
            return malformed("a fraction has two whole numbers of at most nine digits");
        }
        if (*divisor == 0) {
            return refuse("number.zero_denominator",
                          quoted() + " has a zero below the stroke of its fraction",
                          "a number from 1 up there");
        }
        if (behindWhole && *numerator >= *divisor) {
            return malformed("a fraction behind a whole number is less than one");
        }
        at_ += 3;
        if (peek().mark == Mark::slash) return malformed("a fraction has one stroke");
        number.push_back({std::string(above), 0, *divisor, {}});
        return true;
    }

    bool takeDecimal(Pieces& number) {
        std::string_view text = peek().text;
        Piece piece;
        if (const auto e = text.find_first_of("eE"); e != std::string_view::npos) {
            std::string_view exponent = text.substr(e + 1);
            const bool isNegative = exponent.starts_with('-');
            if (!isWhole(exponent.substr(0, 1))) exponent.remove_prefix(1);
            const auto size = smallWhole(exponent);
            if (!size || *size > largestExponent) return isNegative ? tooSmall() : tooLarge();
            piece.exponent = static_cast<int>(isNegative ? -*size : *size);
            text = text.substr(0, e);
        }
        const auto point = text.find_first_of(".,");
        if (point != std::string_view::npos) {
            if (text.find_first_of(".,", point + 1) != std::string_view::npos) {
                return refuse("number.separators",
                              quoted() +
                                  " has more than one point or comma; digits are never "
                                  "grouped, both mark the decimals",
                              "1.5 or 1,5");
            }
            if (point + 1 == text.size()) {
                return malformed("a digit is missing behind the point or comma");
            }
            piece.exponent -= static_cast<int>(text.size() - point - 1);
        }
        std::copy_if(text.begin(), text.end(), std::back_inserter(piece.digits),
                     [](char c) { return c != '.' && c != ','; });
        number.push_back(std::move(piece));
        ++at_;
        return true;
    }

    bool takeBare(Pieces& number) {
        if (bare_.factor) {
            take(number, *bare_.factor);
            return true;
        }
        if (bare_.onlyFeetInchesEighths) {
            return refuse("unit.missing",
                          quoted() + " has no unit and is not in feet-inches-eighths",
                          "three groups such as 3-4-2 or 3-4-2+, or a unit behind the number");
        }
        return refuse("unit.missing", quoted() + " has no unit", std::string(kindExample(wanted_)));
    }

    /// The unit at hand, of the wanted kind; null once problem_ is set.
    const Unit* takeUnit() {
        std::string name(peek().text);
        if (name.ends_with('.')) name.pop_back();
        name.erase(std::remove_if(name.begin(), name.end(),
                                  [](char c) { return c == '^' || c == ' ' || c == '\t'; }),
                   name.end());
        const Unit* unit = findUnit(name, wanted_);
        if (unit == nullptr) {
            std::string what = "\"" + quotable(name, 20) + "\" is not a unit known here";
            const auto similar = similarUnit(name, wanted_);
            refuse("unit.unknown", what,
                   (similar ? "did you mean " + *similar + "? " : "") +
                       std::string(kindExample(wanted_)));
            return nullptr;
        }
        if (unit->kind != wanted_) {
            isOtherKind(unit->kind);
            return nullptr;
        }
        ++at_;
        return unit;
    }

    void take(const Pieces& number, Factor factor) {
        for (Piece piece : number) {
            piece.factor = factor;
            pieces_.push_back(std::move(piece));
        }
    }

    Result<double> rounded() {
        const auto value = roundedSum(pieces_);
        if (value) return negative_ && *value != 0.0 ? -*value : *value;
        value.error() == OutOfRange::tooLarge ? tooLarge() : tooSmall();
        return tl::unexpected(std::move(problem_));
    }

    bool tooLarge() {
        return refuse("number.too_large", quoted() + " is too large to reckon with",
                      std::string(kindExample(wanted_)));
    }
    bool tooSmall() {
        return refuse("number.too_small", quoted() + " is too small to tell from zero",
                      std::string(kindExample(wanted_)));
    }

    [[nodiscard]] std::string quoted() const { return "\"" + quotable(typed_) + "\""; }
    [[nodiscard]] const Token& peek(std::size_t ahead = 0) const {
        return tokens_[std::min(at_ + ahead, tokens_.size() - 1)];
    }
    [[nodiscard]] bool isWord() const { return peek().mark == Mark::word; }
    [[nodiscard]] bool isWordNo() const {
        const std::string word = lowered(peek().text);
        return word == "no" || word == "no.";
    }
    bool accept(Mark mark) {
        if (peek().mark != mark) return false;
        ++at_;
        return true;
    }
    static bool isFoot(const Unit& unit) {
        const Factor foot = factorOf(LengthUnit::ft);
        return unit.kind == Kind::length && unit.factor.numerator == foot.numerator &&
               unit.factor.denominator == foot.denominator;
    }
    static bool isInch(const Unit& unit) {
        const Factor inch = factorOf(LengthUnit::in);
        return unit.kind == Kind::length && unit.factor.numerator == inch.numerator &&
               unit.factor.denominator == inch.denominator;
    }

    std::string_view typed_;
    std::string_view where_;
    Kind wanted_;
    Bare bare_;
    std::string spelling_;
    std::vector<Token> tokens_;
    std::size_t at_ = 0;
    bool negative_ = false;
    Pieces pieces_;
    Problem problem_;
};

}  // namespace

Result<double> parseQuantity(std::string_view text, std::string_view where, Kind wanted,
                             const Bare& bare) {
    return Parser(text, where, wanted, bare).run();
}

Problem wrongKind(std::string_view text, std::string_view where, Kind found, Kind wanted) {
    return {"unit.wrong_kind", std::string(where),
            quotable(text) + " is " + std::string(kindName(found)) + ", " +
                std::string(kindName(wanted)) + " is wanted",
            std::string(kindExample(wanted))};
}

}  // namespace fayline::detail
