#include "shape.h"

#include <cmath>
#include <map>
#include <nlohmann/json.hpp>
#include <stdexcept>
#include <vector>

namespace fayline::acceptance {
namespace {

using Json = nlohmann::ordered_json;

struct Shape {
    char kind = 'w';  ///< word, object, list, either
    std::string word;
    std::vector<std::pair<std::string, Shape>> parts;
};

class Reader {
  public:
    explicit Reader(std::string_view text) : text_(text) {}

    Shape whole() {
        Shape shape = either();
        skip();
        if (at_ != text_.size()) fail();
        return shape;
    }

  private:
    Shape either() {
        Shape first = single();
        skip();
        if (peek() != '|') return first;
        Shape all{'e', "", {{"", std::move(first)}}};
        while (peek() == '|') {
            ++at_;
            all.parts.emplace_back("", single());
            skip();
        }
        return all;
    }

    Shape single() {
        skip();
        if (peek() == '[') {
            ++at_;
            Shape list{'l', "", {{"", either()}}};
            expect(']');
            return list;
        }
        if (peek() != '{') return {'w', word(), {}};
        ++at_;
        Shape object{'o', "", {}};
        for (skip(); peek() != '}'; skip()) {
            std::string key = word();
            expect(':');
            object.parts.emplace_back(std::move(key), either());
            skip();
            if (peek() == ',') ++at_;
        }
        ++at_;
        return object;
    }

    std::string word() {
        skip();
        const std::size_t from = at_;
        while (at_ < text_.size() &&
               (std::isalnum(static_cast<unsigned char>(text_[at_])) || text_[at_] == '_'))
            ++at_;
        if (at_ == from) fail();
        return std::string(text_.substr(from, at_ - from));
    }

    [[nodiscard]] char peek() const { return at_ < text_.size() ? text_[at_] : '\0'; }
    void skip() {
        while (peek() == ' ' || peek() == '\n') ++at_;
    }
    void expect(char c) {
        skip();
        if (peek() != c) fail();
        ++at_;
    }
    [[noreturn]] void fail() const {
        throw std::logic_error("shape does not read at " + std::string(text_.substr(at_, 20)));
    }

    std::string_view text_;
    std::size_t at_ = 0;
};

bool isNumber(const Json& json) {
    return json.is_number() && std::isfinite(json.get<double>());
}

bool numbers(const Json& json, std::size_t count) {
    if (!json.is_array() || json.size() != count) return false;
    for (const Json& one : json) {
        if (!isNumber(one)) return false;
    }
    return true;
}

bool isWord(const Json& json, const std::string& word) {
    if (word == "num") return isNumber(json);
    if (word == "int") return json.is_number_integer();
    if (word == "text") return json.is_string() && !json.get_ref<const std::string&>().empty();
    if (word == "words") return json.is_string();
    if (word == "bool") return json.is_boolean();
    if (word == "null") return json.is_null();
    if (word == "xyz") return numbers(json, 3);
    if (word == "band") return numbers(json, 2) && json[0].get<double>() <= json[1].get<double>();
    throw std::logic_error("no such word in a shape: " + word);
}

std::string compare(const Json& json, const Shape& shape, const std::string& where);

std::string compareObject(const Json& json, const Shape& shape, const std::string& where) {
    if (!json.is_object()) return where + " is no object";
    for (const auto& [key, part] : shape.parts) {
        if (!json.contains(key)) return where + " lacks " + key;
        if (auto problem = compare(json.at(key), part, where + "." + key); !problem.empty())
            return problem;
    }
    for (const auto& [key, value] : json.items()) {
        bool known = false;
        for (const auto& part : shape.parts) known = known || part.first == key;
        if (!known) return where + " has a key of no contract, " + key;
    }
    return "";
}

std::string compare(const Json& json, const Shape& shape, const std::string& where) {
    switch (shape.kind) {
        case 'o':
            return compareObject(json, shape, where);
        case 'l': {
            if (!json.is_array()) return where + " is no list";
            for (std::size_t i = 0; i < json.size(); ++i) {
                auto problem = compare(json[i], shape.parts.front().second,
                                       where + "[" + std::to_string(i) + "]");
                if (!problem.empty()) return problem;
            }
            return "";
        }
        case 'e': {
            std::string problem;
            for (const auto& part : shape.parts) {
                problem = compare(json, part.second, where);
                if (problem.empty()) return "";
            }
            return problem;
        }
        default:
            return isWord(json, shape.word)
                       ? ""
                       : where + " is " + json.dump().substr(0, 60) + ", not " + shape.word;
    }
}

}  // namespace

std::string mismatch(const Json& json, std::string_view shape) {
    return compare(json, Reader(shape).whole(), "it");
}

std::string headMismatch(const Json& json, std::string_view format, bool ofProject) {
    if (!json.is_object()) return "no object";
    std::vector<std::string> keys;
    for (const auto& [key, value] : json.items()) keys.push_back(key);
    std::vector<std::string> first{"format", "program"};
    if (ofProject) first.insert(first.end(), {"project", "step"});
    for (std::size_t i = 0; i < first.size(); ++i) {
        if (i >= keys.size() || keys[i] != first[i]) return "key " + first[i] + " is not in place";
    }
    if (json["format"] != format) return "format is " + json["format"].dump();
    if (keys.back() != "cautions") return "the last key is " + keys.back();
    return json["cautions"].empty() ? "no cautions" : mismatch(json["cautions"], "[text]");
}

}  // namespace fayline::acceptance
