#include <algorithm>
#include <array>

#include "catalogue/rule.h"
#include "property.h"
#include "readers.h"

namespace fayline {
namespace {

constexpr std::array<std::string_view, 10> columns{
    "rule",  "applies_to",      "quantity", "bound",  "value",
    "times", "need_not_exceed", "words",    "source", "standing"};

constexpr Limits<Length> anyLength{millimetres(0.1), metres(20.0), "0.1 mm to 20 m"};
constexpr Limits<double> anyFactor{0.01, 1000.0, "0.01 to 1000"};

/// A length when nothing stands under `times`, else a number; false when it cannot be read.
bool readLimit(RowReader& row, RuleLimit& rule) {
    if (row.isEmpty("times")) {
        rule.length = row.length("value", anyLength);
    } else if (const auto times = row.id("times")) {
        rule.times = *times;
        rule.factor = row.ratio("value", anyFactor);
    }
    if (!row.isEmpty("need_not_exceed")) {
        rule.needNotExceed = row.length("need_not_exceed", anyLength);
        if (!rule.needNotExceed) return false;
    }
    return rule.length || rule.factor;
}

}  // namespace

std::string_view ruleBoundText(RuleBound bound) {
    return bound == RuleBound::atLeast ? "at_least" : "at_most";
}

std::optional<RuleBound> ruleBoundFromText(std::string_view text) {
    if (text == "at_least") return RuleBound::atLeast;
    if (text == "at_most") return RuleBound::atMost;
    return std::nullopt;
}

Length limitLength(const RuleLimit& rule, Length reference) {
    const Length limit = rule.length ? *rule.length : reference * rule.factor.value_or(0.0);
    return rule.needNotExceed ? min(limit, *rule.needNotExceed) : limit;
}

std::map<std::string, RuleLimit> readRules(const CsvFile& file, Problems& problems) {
    std::map<std::string, RuleLimit> rules;
    if (!hasColumns(file, columns, problems)) return rules;
    SeenRows seen;
    for (const auto& csv : file.rows) {
        RowReader row(file, csv, problems);
        const auto id = row.id("rule");
        const auto appliesTo = row.words("applies_to");
        const auto quantity = row.id("quantity");
        const auto words = row.words("words");
        const auto source = row.source();
        const auto standing = row.standing();
        const auto bound = ruleBoundFromText(row.cell("bound"));
        if (!bound) row.refuseWord("catalogue.bound", "bound", {"at_least", "at_most"});
        RuleLimit rule;
        const bool good = readLimit(row, rule);
        if (!id || !seen.first(row, *id, "rule")) continue;
        if (!appliesTo || !quantity || !words || !source || !standing || !bound || !good) continue;
        rule.id = *id;
        rule.appliesTo = *appliesTo;
        rule.quantity = *quantity;
        rule.bound = *bound;
        rule.words = *words;
        rule.source = *source;
        rule.standing = *standing;
        rules.emplace(*id, std::move(rule));
    }
    return rules;
}

}  // namespace fayline
