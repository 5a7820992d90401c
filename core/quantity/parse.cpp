#include "parse.h"

#include <algorithm>

#include "lexer.h"
#include "mixed.h"
#include "quantity/text.h"

namespace fayline::detail {
namespace {

constexpr std::size_t longestText = 200;
constexpr int inchesPerFoot = 12;
constexpr int eighthsPerInch = 8;

/// The unit's name as it stands in the table: no blanks, no caret, no full stop.
std::string unitName(std::string_view word) {
    std::string name(word);
    if (name.ends_with('.')) name.pop_back();
    const auto isFiller = [](char c) { return c == '^' || c == ' ' || c == '\t'; };
    name.erase(std::remove_if(name.begin(), name.end(), isFiller), name.end());
    return name;
}

bool isLengthOf(const Unit& unit, LengthUnit length) {
    const Factor factor = factorOf(length);
    return unit.kind == Kind::length && unit.factor.numerator == factor.numerator &&
           unit.factor.denominator == factor.denominator;
}

class Parser {
  public:
    Parser(std::string_view typed, std::string_view where, Kind wanted, const Bare& bare)
        : typed_(typed),
          where_(where),
          wanted_(wanted),
          bare_(bare),
          spelling_(plainSpelling(typed)),
          cursor_(tokens(spelling_)) {}

    Result<double> run() {
        if (!parseAll()) return tl::unexpected(std::move(problem_));
        const auto value = roundedSum(pieces_);
        if (value) return negative_ && *value != 0.0 ? -*value : *value;
        refuse(refusalOf(value.error()).value());
        return tl::unexpected(std::move(problem_));
    }

  private:
    // Each of these returns false once problem_ is set.

    bool refuse(Refusal refusal) {
        if (refusal.allowed.empty()) refusal.allowed = kindExample(wanted_);
        problem_ = {std::move(refusal.code), std::string(where_),
                    "\"" + quotable(typed_) + "\"" + refusal.says, std::move(refusal.allowed)};
        return false;
    }
    bool refuse(const tl::unexpected<Refusal>& refusal) { return refuse(refusal.value()); }
    bool isOtherKind(Kind kind) {
        problem_ = wrongKind(typed_, where_, kind, wanted_);
        return false;
    }

    bool parseAll() {
        if (isGauge()) return isOtherKind(Kind::gauge);
        negative_ = cursor_.sees(Mark::dash);
        if (negative_ || cursor_.sees(Mark::plus)) cursor_.skip();
        if (isTriple()) return parseTriple();
        int terms = 0;
        do {
            if (!parseTerm()) return false;
            ++terms;
        } while (cursor_.accept(Mark::plus));
        if (!cursor_.sees(Mark::end)) return refuseRest();
        if (negative_ && terms > 1) {
            return refuse(malformed("a minus before a sum could mean the first part or all of it"));
        }
        return true;
    }

    bool refuseRest() {
        if (cursor_.sees(Mark::number) && cursor_.isBehind(Mark::number)) {
            return refuse(malformed("two numbers stand side by side; digits are never grouped"));
        }
        if (cursor_.sees(Mark::dash)) {
            return refuse(
                malformed("a dash joins feet to inches (3'-4\"), a whole to its fraction (1-1/2), "
                          "or three groups (3-4-2), without blanks in the last two"));
        }
        const auto rest = std::string_view(spelling_).substr(cursor_.peek().at);
        return refuse(malformed("\"" + quotable(rest, 20) + "\" is left over"));
    }

    /// No. 14, #14.
    [[nodiscard]] bool isGauge() const {
        const std::string word = lowered(cursor_.peek().text);
        return (cursor_.sees(Mark::hash) || word == "no" || word == "no.") &&
               cursor_.sees(Mark::number, 1);
    }

    /// Three whole numbers joined by dashes without blanks.
    [[nodiscard]] bool isTriple() const {
        for (std::size_t i = 0; i < 5; ++i) {
            if (!cursor_.sees(i % 2 == 0 ? Mark::number : Mark::dash, i)) return false;
            const Token& token = cursor_.peek(i);
            if (i > 0 && token.blankBefore) return false;
            if (i % 2 == 0 && !isWhole(token.text)) return false;
        }
        return !cursor_.sees(Mark::slash, 5);
    }

    bool parseTriple() {
        if (wanted_ != Kind::length) return isOtherKind(Kind::length);
        const auto feet = smallWhole(cursor_.peek(0).text);
        const auto inches = smallWhole(cursor_.peek(2).text);
        const auto eighths = smallWhole(cursor_.peek(4).text);
        cursor_.skip(5);
        const bool sixteenth = !cursor_.peek().blankBefore && cursor_.accept(Mark::plus);
        if (!cursor_.sees(Mark::end)) {
            return refuse(
                malformed("three groups with dashes are feet-inches-eighths and nothing more"));
        }
        if (!feet || !inches || *inches >= inchesPerFoot || !eighths ||
            *eighths >= eighthsPerInch) {
            return refuse(
                malformed("in feet-inches-eighths the inches go to 11 and the eighths to 7"));
        }
        const std::int64_t allEighths =
            (*feet * inchesPerFoot + *inches) * eighthsPerInch + *eighths;
        const std::int64_t sixteenths = allEighths * 2 + (sixteenth ? 1 : 0);
        pieces_.push_back(
            {std::to_string(sixteenths), 0, eighthsPerInch * 2, factorOf(LengthUnit::in)});
        return true;
    }

    /// A number with its unit; feet may have inches behind them.
    bool parseTerm() {
        Pieces number;
        if (!parseNumber(number)) return false;
        if (!cursor_.sees(Mark::word)) {
            if (!cursor_.sees(Mark::end) && !cursor_.sees(Mark::plus)) return refuseRest();
            return takeBare(number);
        }
        const Unit* unit = takeUnit();
        if (unit == nullptr) return false;
        take(number, unit->factor);
        return !isLengthOf(*unit, LengthUnit::ft) || parseInches(number);
    }

    /// What may stand behind feet: inches, with or without their mark.
    bool parseInches(const Pieces& feet) {
        const bool dash = cursor_.sees(Mark::dash);
        if (!cursor_.sees(Mark::number, dash ? 1 : 0)) return true;
        if (dash) cursor_.skip();
        Pieces inches;
        if (!parseNumber(inches)) return false;
        if (cursor_.sees(Mark::word)) {
            const Unit* unit = takeUnit();
            if (unit == nullptr) return false;
            if (!isLengthOf(*unit, LengthUnit::in)) {
                return refuse(malformed("only inches can stand behind feet"));
            }
        }
        if (feet.size() != 1 || feet.front().exponent != 0 || feet.front().divisor != 1) {
            return refuse(malformed("feet with inches behind them are a whole number"));
        }
        const auto value = roundedSum(inches);
        if (!value || *value >= inchesPerFoot) {
            return refuse(malformed("the inches behind feet go up to less than 12"));
        }
        take(inches, factorOf(LengthUnit::in));
        return true;
    }

    bool parseNumber(Pieces& number) {
        if (!cursor_.sees(Mark::number)) {
            const bool hasDigit = typed_.find_first_of("0123456789") != std::string_view::npos;
            if (hasDigit) return refuse(malformed("a number is missing"));
            return refuse({"number.malformed", " is not " + std::string(kindName(wanted_)), ""});
        }
        auto mixed = takeMixed(cursor_);
        if (!mixed) return refuse(std::move(mixed.error()));
        number = std::move(*mixed);
        return true;
    }

    bool takeBare(const Pieces& number) {
        if (bare_.factor) {
            take(number, *bare_.factor);
            return true;
        }
        if (bare_.onlyFeetInchesEighths) {
            return refuse({"unit.missing", " has no unit and is not in feet-inches-eighths",
                           "three groups such as 3-4-2 or 3-4-2+, or a unit behind the number"});
        }
        return refuse({"unit.missing", " has no unit", ""});
    }

    /// The unit at hand, of the wanted kind; null once problem_ is set.
    const Unit* takeUnit() {
        const std::string name = unitName(cursor_.peek().text);
        const Unit* unit = findUnit(name, wanted_);
        if (unit == nullptr) {
            const auto similar = similarUnit(name, wanted_);
            refuse({"unit.unknown", ": \"" + quotable(name, 20) + "\" is not a unit known here",
                    (similar ? "did you mean " + *similar + "? " : "") +
                        std::string(kindExample(wanted_))});
            return nullptr;
        }
        if (unit->kind != wanted_) {
            isOtherKind(unit->kind);
            return nullptr;
        }
        cursor_.skip();
        return unit;
    }

    void take(const Pieces& number, Factor factor) {
        for (Piece piece : number) {
            piece.factor = factor;
            pieces_.push_back(std::move(piece));
        }
    }

    std::string_view typed_;
    std::string_view where_;
    Kind wanted_;
    Bare bare_;
    std::string spelling_;
    Cursor cursor_;
    bool negative_ = false;
    Pieces pieces_;
    Problem problem_;
};

}  // namespace

Result<double> parseQuantity(std::string_view text, std::string_view where, Kind wanted,
                             const Bare& bare) {
    const auto typed = trimmed(text);
    const std::string name(kindName(wanted));
    const std::string allowed(kindExample(wanted));
    if (typed.empty()) {
        return tl::unexpected(
            Problem{"number.empty", std::string(where), name + " is missing here", allowed});
    }
    if (typed.size() > longestText || firstBadUtf8(typed)) {
        return tl::unexpected(Problem{"number.malformed", std::string(where),
                                      "\"" + quotable(typed) + "\" is not " + name, allowed});
    }
    return Parser(typed, where, wanted, bare).run();
}

Problem wrongKind(std::string_view text, std::string_view where, Kind found, Kind wanted) {
    return {"unit.wrong_kind", std::string(where),
            quotable(text) + " is " + std::string(kindName(found)) + ", " +
                std::string(kindName(wanted)) + " is wanted",
            std::string(kindExample(wanted))};
}

}  // namespace fayline::detail
