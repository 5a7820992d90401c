#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "project/project.h"
#include "project/step.h"
#include "quantity/result.h"

namespace fayline {

/// What sort of value a decision holds; says how its text is read.
enum class ValueKind {
    length,
    mass,
    density,
    stress,
    ratio,
    count,
    gauge,
    choice,
    woodName,
    metalName,
    text,
    keptRow
};

using Value = std::variant<Length, Mass, Density, Stress, double, int, std::string>;

/// The parts of a decision's name that vary: for "F9.floor.throat" the place is "F9".
struct Address {
    std::string place;  ///< "F9", "K.5", "white_oak", station id; empty for hull-wide fields
    int index = 0;      ///< point number in `offsets`
};

/// One row of the decision table. Everything that edits, shows or stores a decision reads this.
struct Field {
    std::string pattern;  ///< "keel.sided", "F#.floor.throat", "K.#.diameter", "case.*.factor",
                          ///< "offsets.*.#.height"
    ValueKind kind = ValueKind::text;
    double low = 0.0, high = 0.0;      ///< limits, inclusive, in SI; low == high: none
    std::string limits;                ///< the same in words, for messages: "1 mm to 2 m"
    std::vector<std::string> choices;  ///< for ValueKind::choice
    std::string section;               ///< where a form shows it: "keel", "ballast" …
    std::string label;                 ///< "siding"
    std::string help;                  ///< one sentence for a first-time user
    std::function<void(Project&, const Address&, const Value*)>
        set;                            ///< null value: back to the rule
    std::vector<std::string> places{};  ///< names the `*` may stand for; none: any name
};

/// The whole table, in the order forms show it.
const std::vector<Field>& decisionTable();

struct Target {
    const Field* field = nullptr;
    Address address;
};

/// Finds the row for a decision's name. Unknown: a Problem with the nearest name.
Result<Target> findDecision(std::string_view what);

/// Reads a typed text for a field: value or a Problem saying what is allowed. `where` = the
/// decision's name.
Result<Value> readValue(const Field& field, std::string_view text, std::string_view where);

/// Sets or clears one decision in a project value. Refuses what does not read or does not exist.
Result<void> applyChange(Project& project, const std::string& what,
                         const std::optional<std::string>& text);

/// Plain words for one decision: "ballast bolt K.5 diameter".
std::string decisionTitle(std::string_view what);
/// Plain words for a step: "ballast bolt K.5 diameter to 5/8 in"; several changes name the first
/// and count the rest.
std::string stepTitle(const std::vector<Change>& changes);

/// "F8-F10.floor.kind" or "K.2-K.4.diameter" → one name per frame or bolt that exists. A single
/// name stays one. A frame or bolt that does not exist is a Problem.
Result<std::vector<std::string>> expandRange(const Project& project, std::string_view what);

/// Folds a map of decisions into a project. Texts that no longer read are returned as problems and
/// left out.
struct Folded {
    Project project;
    Problems problems;
};
Folded foldDecisions(const std::vector<std::pair<std::string, std::string>>& decided);

}  // namespace fayline
