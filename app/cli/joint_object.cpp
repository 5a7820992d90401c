#include "joint_object.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

#include "quantity/reading.h"
#include "quantity/text.h"

namespace fayline::cli {
namespace {

constexpr Length largest = metres(5);

std::string listOf(const std::vector<std::string>& words) {
    std::string all;
    for (const std::string& word : words) all += (all.empty() ? "" : ", ") + word;
    return all;
}

std::string shown(const Json& json) {
    return quotable(json.dump(-1, ' ', false, Json::error_handler_t::replace), 40);
}

}  // namespace

JointObject::JointObject(const Json& json, std::string path, std::vector<std::string> keys,
                         Problems& problems)
    : json_(&json), path_(std::move(path)), problems_(&problems) {
    if (!json.is_object()) {
        problems.push_back({"joint.kind", path_.empty() ? "the file" : path_,
                            "is " + shown(json) + ", no object", "an object { … }"});
        return;
    }
    for (const auto& [key, value] : json.items()) {
        if (std::find(keys.begin(), keys.end(), key) != keys.end()) continue;
        const auto near = didYouMean(key, keys);
        refuse(quotable(key, 40), "there is no such key here",
               near ? "did you mean " + *near + "?" : "one of " + listOf(keys));
    }
}

const Json* JointObject::find(const char* key) const {
    if (!json_->is_object()) return nullptr;
    const auto found = json_->find(key);
    return found == json_->end() || found->is_null() ? nullptr : &*found;
}

std::string JointObject::pathOf(const std::string& key) const {
    return path_.empty() ? key : path_ + "." + key;
}

void JointObject::refuse(const std::string& key, std::string what, std::string allowed) const {
    problems_->push_back({"joint.value", pathOf(key), std::move(what), std::move(allowed)});
}

/// A quantity: text with its unit.
template <typename T, typename Read>
std::optional<T> JointObject::typed(const char* key, const char* example, Read read) const {
    const Json* json = find(key);
    if (json == nullptr) return std::nullopt;
    if (!json->is_string()) {
        refuse(key,
               "is " + shown(*json) + (json->is_number() ? ", a bare number" : ", not a quantity"),
               std::string("text with its unit, such as \"") + example + "\"");
        return std::nullopt;
    }
    const Result<T> value = read(json->get<std::string>(), pathOf(key));
    if (value) return *value;
    problems_->push_back(value.error());
    return std::nullopt;
}

/// A count, ratio or degrees: a number, or text that says one.
template <typename T, typename Read>
std::optional<T> JointObject::number(const char* key, const char* example, Read read) const {
    const Json* json = find(key);
    if (json == nullptr) return std::nullopt;
    if (!json->is_string() && !json->is_number()) {
        refuse(key, "is " + shown(*json) + ", not a number",
               std::string("a number such as ") + example);
        return std::nullopt;
    }
    const Result<T> value =
        read(json->is_string() ? json->get<std::string>() : json->dump(), pathOf(key));
    if (value) return *value;
    problems_->push_back(value.error());
    return std::nullopt;
}

/// A number and one of a few units; the project has no other moments to read.
Result<Moment> momentFrom(const std::string& text, const std::string& path) {
    struct Unit {
        std::string_view name;
        double newtonMetres;
    };
    constexpr double poundInch = 4.4482216152605 * 0.0254;
    constexpr Unit units[] = {{"Nmm", 0.001},
                              {"N·mm", 0.001},
                              {"Nm", 1.0},
                              {"N·m", 1.0},
                              {"lb-in", poundInch},
                              {"in-lb", poundInch},
                              {"lb-ft", poundInch * 12},
                              {"ft-lb", poundInch * 12}};
    const std::string whole(trimmed(text));
    for (const Unit& unit : units) {
        if (whole.size() <= unit.name.size() ||
            whole.compare(whole.size() - unit.name.size(), unit.name.size(), unit.name) != 0)
            continue;
        const auto number = readRatio(
            trimmed(std::string_view(whole).substr(0, whole.size() - unit.name.size())), path);
        if (!number) return tl::unexpected(number.error());
        return newtonMetres(*number * unit.newtonMetres);
    }
    return tl::unexpected(Problem{"unit.missing", path,
                                  "\"" + quotable(text, 40) + "\" is no moment with its unit",
                                  "a number with Nm, Nmm, lb-in or lb-ft"});
}

std::optional<Length> JointObject::size(const char* key) const {
    const auto value = typed<Length>(
        key, "1 1/2 in", [](const auto& text, auto path) { return readLength(text, path); });
    if (!value || (value->si() > 0.0 && *value <= largest)) return value;
    refuse(key, "is " + find(key)->get<std::string>(), "more than 0 and at most 5 m");
    return std::nullopt;
}

std::optional<Length> JointObject::depth(const char* key) const {
    const auto value = typed<Length>(
        key, "3/8 in", [](const auto& text, auto path) { return readLength(text, path); });
    if (!value || (value->si() >= 0.0 && *value <= largest)) return value;
    refuse(key, "is " + find(key)->get<std::string>(), "0 to 5 m");
    return std::nullopt;
}

std::optional<Length> JointObject::place(const char* key) const {
    const auto value = typed<Length>(
        key, "3 in", [](const auto& text, auto path) { return readLength(text, path); });
    if (!value || abs(*value) <= largest) return value;
    refuse(key, "is " + find(key)->get<std::string>(), "within 5 m");
    return std::nullopt;
}

std::optional<Moment> JointObject::moment(const char* key) const {
    const auto value = typed<Moment>(
        key, "8 Nm", [](const auto& text, auto path) { return momentFrom(text, path); });
    if (!value || (value->si() > 0.0 && *value <= newtonMetres(1e6))) return value;
    refuse(key, "is " + find(key)->get<std::string>(), "more than 0 and at most 1 MN·m");
    return std::nullopt;
}

std::optional<Stress> JointObject::stress(const char* key) const {
    const auto value = typed<Stress>(
        key, "45 ksi", [](const auto& text, auto path) { return readStress(text, path); });
    if (!value || (value->si() > 0.0 && *value <= megapascals(1e6))) return value;
    refuse(key, "is " + find(key)->get<std::string>(), "more than 0 and at most 1000 GPa");
    return std::nullopt;
}

std::optional<Area> JointObject::area(const char* key) const {
    const auto value = typed<Area>(
        key, "40 in2", [](const auto& text, auto path) { return readArea(text, path); });
    if (!value || (value->si() > 0.0 && *value <= squareMetres(25))) return value;
    refuse(key, "is " + find(key)->get<std::string>(), "more than 0 and at most 25 m2");
    return std::nullopt;
}

std::optional<Force> JointObject::force(const char* key) const {
    const auto value = typed<Force>(
        key, "250 lb", [](const auto& text, auto path) { return readForce(text, path); });
    if (!value || abs(*value) <= newtons(1e9)) return value;
    refuse(key, "is " + find(key)->get<std::string>(), "at most 1000 MN");
    return std::nullopt;
}

std::optional<Density> JointObject::density(const char* key) const {
    return typed<Density>(key, "560 kg/m3",
                          [](const auto& text, auto path) { return readDensity(text, path); });
}

std::optional<double> JointObject::ratio(const char* key) const {
    return number<double>(key, "0.5",
                          [](const auto& text, auto path) { return readRatio(text, path); });
}

std::optional<Angle> JointObject::angle(const char* key) const {
    return number<Angle>(key, "90",
                         [](const auto& text, auto path) { return readAngle(text, path); });
}

std::optional<int> JointObject::count(const char* key, int least, int most) const {
    return number<int>(
        key, "4", [&](const auto& text, auto path) { return readCount(text, path, least, most); });
}

std::optional<Gauge> JointObject::gauge(const char* key) const {
    return typed<Gauge>(key, "No. 14",
                        [](const auto& text, auto path) { return readGauge(text, path); });
}

std::optional<bool> JointObject::yes(const char* key) const {
    const Json* json = find(key);
    if (json == nullptr) return std::nullopt;
    if (json->is_boolean()) return json->get<bool>();
    refuse(key, "is " + shown(*json), "true or false");
    return std::nullopt;
}

std::optional<std::string> JointObject::text(const char* key) const {
    const Json* json = find(key);
    if (json == nullptr) return std::nullopt;
    if (json->is_string() && !trimmed(json->get<std::string>()).empty() &&
        json->get<std::string>().size() <= 200)
        return quotable(json->get<std::string>(), 200);
    refuse(key, "is " + shown(*json), "a text of 1 to 200 letters");
    return std::nullopt;
}

std::optional<std::string> JointObject::word(const char* key, const std::vector<std::string>& words,
                                             const std::string& what) const {
    const auto value = text(key);
    if (!value || std::find(words.begin(), words.end(), *value) != words.end()) return value;
    const auto near = didYouMean(*value, words);
    const std::string listed = listOf(words);
    refuse(key, "there is no " + what + " \"" + quotable(*value, 40) + "\"",
           near                  ? "did you mean " + *near + "?"
           : listed.size() < 300 ? "one of " + listed
                                 : "one of the " + std::to_string(words.size()) +
                                       " of the catalogue, such as " + words.front());
    return std::nullopt;
}

Result<Json> readJson(const std::string& text, const std::string& file) {
    // One set of keys for each object that is open; a key may stand once in it.
    std::vector<std::set<std::string>> open;
    std::string twice;
    const auto note = [&](int, Json::parse_event_t event, Json& value) {
        if (event == Json::parse_event_t::object_start) open.emplace_back();
        if (event == Json::parse_event_t::object_end && !open.empty()) open.pop_back();
        if (event == Json::parse_event_t::key && !open.empty() &&
            !open.back().insert(value.get<std::string>()).second && twice.empty())
            twice = value.get<std::string>();
        return true;
    };
    try {
        Json json = Json::parse(text, note);
        if (twice.empty()) return json;
        return tl::unexpected(Problem{
            "joint.twice", file, "the key " + quotable(twice, 40) + " stands twice in one object",
            "each key once"});
    } catch (const Json::parse_error& error) {
        const std::size_t at = std::min<std::size_t>(error.byte, text.size());
        const auto line =
            1 + std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), '\n');
        const bool over = trimmed(std::string_view(text).substr(at)).empty();
        return tl::unexpected(
            Problem{"joint.json", file + ":" + std::to_string(line),
                    trimmed(text).empty() ? "the file is empty"
                    : over                ? "the JSON breaks off or does not read here"
                                          : "the JSON does not read here",
                    "JSON with text in straight quotation marks, commas between, no comments"});
    } catch (const Json::exception&) {
        return tl::unexpected(Problem{"joint.json", file, "a number in it is out of range",
                                      "JSON with plain numbers"});
    }
}

}  // namespace fayline::cli
