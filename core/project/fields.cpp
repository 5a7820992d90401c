#include "project/fields.h"

#include <algorithm>
#include <charconv>
#include <unordered_map>

#include "quantity/reading.h"
#include "quantity/text.h"
#include "table_builder.h"

namespace fayline {
namespace {

bool isNumber(std::string_view token) {
    return !token.empty() && token.size() <= 6 && token.front() != '0' &&
           std::all_of(token.begin(), token.end(), [](char c) { return c >= '0' && c <= '9'; });
}

int toNumber(std::string_view token) {
    int number = 0;
    std::from_chars(token.data(), token.data() + token.size(), number);
    return number;
}

bool isFrame(std::string_view token) {
    if (token.size() < 2 || token.front() != 'F') return false;
    token.remove_prefix(1);
    if (token.back() >= 'A' && token.back() <= 'Z') token.remove_suffix(1);
    return isNumber(token);
}

bool isStrake(std::string_view token) {
    return token.substr(0, 6) == "strake" && isNumber(token.substr(6));
}

/// The word a row of the table begins with, for a name typed: "F9" stands under "F#".
std::string_view headOf(std::string_view token) {
    if (isFrame(token)) return "F#";
    if (token.size() > 6 && isStrake(token)) return "strake#";
    return token;
}

/// A free name between two fixed ends: no blanks at its ends, no control characters, of sensible
/// length.
bool isName(std::string_view name) {
    return !name.empty() && name.size() <= 80 && trimmed(name) == name &&
           std::none_of(name.begin(), name.end(),
                        [](unsigned char c) { return c < 0x20 || c == 0x7f; });
}

std::string joined(const std::vector<std::string_view>& tokens, std::size_t from, std::size_t to) {
    std::string text;
    for (std::size_t i = from; i < to; ++i) {
        if (i != from) text += '.';
        text += tokens[i];
    }
    return text;
}

bool matchToken(std::string_view pattern, std::string_view token, Address& address,
                const std::string& first) {
    if (pattern == "F#") {
        if (!isFrame(token)) return false;
        address.place = token;
        return true;
    }
    if (pattern == "strake#") {
        if (!isStrake(token)) return false;
        address.place = token;
        return true;
    }
    if (pattern == "#") {
        if (!isNumber(token)) return false;
        if (first == "K") {
            address.place = "K." + std::string(token);
        } else {
            address.index = toNumber(token);
        }
        return true;
    }
    return pattern == token;
}

std::optional<Address> match(const std::vector<std::string_view>& pattern,
                             const std::vector<std::string_view>& tokens) {
    Address address;
    const std::string first(pattern.front());
    const auto star =
        static_cast<std::size_t>(std::find(pattern.begin(), pattern.end(), "*") - pattern.begin());
    const std::size_t behind = star == pattern.size() ? 0 : pattern.size() - star - 1;
    if (star == pattern.size() ? tokens.size() != pattern.size() : tokens.size() < pattern.size())
        return std::nullopt;
    for (std::size_t i = 0; i < std::min(star, pattern.size()); ++i) {
        if (!matchToken(pattern[i], tokens[i], address, first)) return std::nullopt;
    }
    if (star == pattern.size()) return address;
    for (std::size_t i = 0; i < behind; ++i) {
        if (!matchToken(pattern[star + 1 + i], tokens[tokens.size() - behind + i], address, first))
            return std::nullopt;
    }
    address.place = joined(tokens, star, tokens.size() - behind);
    if (!isName(address.place)) return std::nullopt;
    return address;
}

/// Whether a row's `*` may stand for this name: one of its places, or "own." and a name.
bool isPlace(const Field& field, std::string_view name) {
    return field.places.empty() ||
           std::any_of(field.places.begin(), field.places.end(), [&](const std::string& place) {
               if (!place.ends_with(".*")) return name == place;
               const std::size_t fixed = place.size() - 1;
               return name.size() > fixed && name.substr(0, fixed) == place.substr(0, fixed);
           });
}

/// Table rows by their first word, their patterns split once.
struct Indexed {
    const Field* field;
    std::vector<std::string_view> pattern;
};
using Index = std::unordered_map<std::string_view, std::vector<Indexed>>;

const Index& tableIndex() {
    static const Index index = [] {
        Index made;
        for (const Field& field : decisionTable()) {
            Indexed entry{&field, splitAt(field.pattern, '.')};
            made[entry.pattern.front()].push_back(std::move(entry));
        }
        return made;
    }();
    return index;
}

/// What stands for one word of a pattern in a name meant like the typed one.
std::string wordFor(std::string_view pattern, std::string_view typed) {
    if (pattern == "F#") return std::string(isFrame(typed) ? typed : "F1");
    if (pattern == "strake#") return std::string(isStrake(typed) ? typed : "strake1");
    if (pattern == "#") return std::string(isNumber(typed) ? typed : "1");
    return std::string(pattern == "*" && !typed.empty() ? typed : pattern);
}

/// The names a mistyped one may have meant: every row of the table with this name's place put in,
/// and with each place it knows.
std::vector<std::string> candidatesFor(std::string_view what,
                                       const std::vector<std::string_view>& tokens) {
    std::vector<std::string> names;
    const auto add = [&](const std::vector<std::string_view>& pattern, std::string_view place) {
        std::string name;
        for (std::size_t i = 0; i < pattern.size(); ++i) {
            if (i != 0) name += '.';
            name += pattern[i] == "*" && !place.empty()
                        ? std::string(place)
                        : wordFor(pattern[i], i < tokens.size() ? tokens[i] : std::string_view{});
        }
        if (name != what) names.push_back(std::move(name));
    };
    for (const Field& field : decisionTable()) {
        const auto pattern = splitAt(field.pattern, '.');
        if (field.places.empty()) add(pattern, {});
        for (const std::string& place : field.places) {
            if (!place.ends_with(".*")) add(pattern, place);
        }
    }
    return names;
}

/// A name of the right form whose place nothing would read.
Problem unknownPlace(const Field& field, std::string_view place, std::string_view what,
                     const std::optional<std::string>& near) {
    const bool own =
        std::find(field.places.begin(), field.places.end(), "own.*") != field.places.end();
    std::string all;
    for (const std::string& name : field.places) {
        if (!name.ends_with(".*")) all += (all.empty() ? "" : ", ") + name;
    }
    if (own) all += ", or own. and a name";
    return {"decision.place", quotable(what),
            std::string("there is no ") + (own ? "load case " : "class ") + quotable(place),
            near ? "did you mean " + *near + "?" : "one of " + all};
}

template <typename T>
Result<Value> limited(const Result<T>& read, const Field& field, std::string_view text,
                      std::string_view where) {
    if (!read) return tl::unexpected(read.error());
    double value = 0;
    if constexpr (std::is_arithmetic_v<T>) {
        value = static_cast<double>(*read);
    } else {
        value = read->si();
    }
    if (field.low < field.high && (value < field.low || value > field.high)) {
        return tl::unexpected(Problem{"value.limits", std::string(where),
                                      field.label + " is " + quotable(text), field.limits});
    }
    return Value(*read);
}

Result<Value> readGaugeNumber(const Field& field, std::string_view text, std::string_view where) {
    const auto gauge = readGauge(text, where);
    if (!gauge) return tl::unexpected(gauge.error());
    return limited(Result<int>(gauge->number()), field, text, where);
}

Result<Value> readChoice(const Field& field, std::string_view text, std::string_view where) {
    const std::string word = lowered(trimmed(text));
    if (std::find(field.choices.begin(), field.choices.end(), word) != field.choices.end())
        return Value(word);
    std::string all;
    for (const std::string& choice : field.choices) all += (all.empty() ? "" : ", ") + choice;
    std::string what = field.label + " is " + quotable(text);
    if (const auto near = didYouMean(word, field.choices)) all += "; did you mean " + *near + "?";
    return tl::unexpected(Problem{"value.choice", std::string(where), what, "one of " + all});
}

/// Control characters and line separators; an end of line is one unless the field takes several
/// lines.
bool hasControl(std::string_view text, bool manyLines) {
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto c = static_cast<unsigned char>(text[i]);
        if ((c < 0x20 && !(manyLines && c == '\n')) || c == 0x7f) return true;
        const std::string_view rest = text.substr(i);
        if (c == 0xc2 && rest.size() > 1 && static_cast<unsigned char>(rest[1]) < 0xa0) return true;
        if (rest.starts_with("\xe2\x80\xa8") || rest.starts_with("\xe2\x80\xa9")) return true;
    }
    return false;
}

Result<Value> readText(const Field& field, std::string_view text, std::string_view where) {
    const std::size_t most = field.kind == ValueKind::keptRow ? 20000
                             : field.pattern == "hull.name"   ? 60
                                                              : 400;
    const bool control = field.kind != ValueKind::keptRow &&
                         hasControl(trimmed(text), field.pattern.ends_with(".reason"));
    if (trimmed(text).empty() || text.size() > most || firstBadUtf8(text) || control) {
        return tl::unexpected(Problem{"value.text", std::string(where),
                                      field.label + " is " + quotable(text),
                                      "plain text of 1 to " + std::to_string(most) + " letters"});
    }
    return Value(std::string(trimmed(text)));
}

}  // namespace

const std::vector<Field>& decisionTable() {
    static const std::vector<Field> rows = [] {
        std::vector<Field> all;
        for (auto&& part : {table::hullRows(), table::structureRows(), table::ballastRows(),
                            table::fasteningRows(), table::figureRows()}) {
            all.insert(all.end(), part.begin(), part.end());
        }
        return all;
    }();
    return rows;
}

Result<Target> findDecision(std::string_view what) {
    const auto tokens = splitAt(what, '.');
    const std::string_view head = headOf(tokens.front());
    const Field* lacksPlace = nullptr;
    std::string place;
    if (const auto rows = tableIndex().find(head); rows != tableIndex().end()) {
        for (const Indexed& row : rows->second) {
            auto address = match(row.pattern, tokens);
            if (!address) continue;
            if (isPlace(*row.field, address->place)) return Target{row.field, std::move(*address)};
            lacksPlace = row.field;
            place = address->place;
        }
    }
    // Of names equally near, one in the same place is meant.
    const auto candidates = candidatesFor(what, tokens);
    std::vector<std::string> sameHead;
    for (const std::string& name : candidates) {
        if (headOf(std::string_view(name).substr(0, name.find('.'))) == head)
            sameHead.push_back(name);
    }
    auto near = didYouMean(what, sameHead);
    if (!near) near = didYouMean(what, candidates);
    if (lacksPlace != nullptr) return tl::unexpected(unknownPlace(*lacksPlace, place, what, near));
    return tl::unexpected(
        Problem{"decision.unknown", quotable(what), "there is no decision of this name",
                near ? "did you mean " + *near + "?" : "names like keel.sided or K.5.diameter"});
}

Result<Value> readValue(const Field& field, std::string_view text, std::string_view where) {
    switch (field.kind) {
        case ValueKind::length:
            return limited(readLength(text, where), field, text, where);
        case ValueKind::mass:
            return limited(readMass(text, where), field, text, where);
        case ValueKind::density:
            return limited(readDensity(text, where), field, text, where);
        case ValueKind::stress:
            return limited(readStress(text, where), field, text, where);
        case ValueKind::ratio:
            return limited(readRatio(text, where), field, text, where);
        case ValueKind::count:
            return limited(
                readCount(text, where, static_cast<int>(field.low), static_cast<int>(field.high)),
                field, text, where);
        case ValueKind::gauge:
            return readGaugeNumber(field, text, where);
        case ValueKind::choice:
            return readChoice(field, text, where);
        case ValueKind::woodName:
        case ValueKind::metalName:
        case ValueKind::keptRow:
        case ValueKind::text:
            return readText(field, text, where);
    }
    return tl::unexpected(
        Problem{"value.kind", std::string(where), "no reader for this kind of value", ""});
}

Result<void> applyChange(Project& project, const std::string& what,
                         const std::optional<std::string>& text) {
    const auto target = findDecision(what);
    if (!target) return tl::unexpected(target.error());
    if (!text) {
        target->field->set(project, target->address, nullptr);
        return {};
    }
    const auto value = readValue(*target->field, *text, what);
    if (!value) return tl::unexpected(value.error());
    target->field->set(project, target->address, &*value);
    return {};
}

Folded foldDecisions(const std::vector<std::pair<std::string, std::string>>& decided) {
    Folded folded;
    for (const auto& [what, text] : decided) {
        if (const auto done = applyChange(folded.project, what, text); !done)
            folded.problems.push_back(done.error());
    }
    return folded;
}

}  // namespace fayline
