#pragma once

#include <functional>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "json.h"
#include "quantity/quantity.h"
#include "quantity/result.h"

namespace fayline::cli {

/// One object of a JSON file, read key by key. What is wrong goes to the problems with its JSON
/// path, and reading goes on. A key that is not there, or null, is nothing.
class JointObject {
  public:
    /// Refuses what is no object, and every key not among these.
    JointObject(const Json& json, std::string path, std::vector<std::string> keys,
                Problems& problems);

    [[nodiscard]] bool has(const char* key) const { return find(key) != nullptr; }
    [[nodiscard]] const Json* find(const char* key) const;
    [[nodiscard]] std::string pathOf(const std::string& key) const;

    /// More than nil, at most 5 m.
    std::optional<Length> size(const char* key) const;
    /// Nil or more, at most 5 m.
    std::optional<Length> depth(const char* key) const;
    /// Of either sign, at most 5 m.
    std::optional<Length> place(const char* key) const;
    /// More than nil.
    std::optional<Moment> moment(const char* key) const;
    std::optional<Stress> stress(const char* key) const;
    std::optional<Area> area(const char* key) const;
    std::optional<Force> force(const char* key) const;
    std::optional<Density> density(const char* key) const;
    std::optional<double> ratio(const char* key) const;
    std::optional<Angle> angle(const char* key) const;
    std::optional<int> count(const char* key, int least, int most) const;
    std::optional<Gauge> gauge(const char* key) const;
    std::optional<bool> yes(const char* key) const;
    std::optional<std::string> text(const char* key) const;

    /// A text that must be one of these; `what` it names goes into the sentence.
    std::optional<std::string> word(const char* key, const std::vector<std::string>& words,
                                    const std::string& what) const;

    void refuse(const std::string& key, std::string what, std::string allowed) const;

  private:
    template <typename T, typename Read>
    std::optional<T> typed(const char* key, const char* example, Read read) const;
    template <typename T, typename Read>
    std::optional<T> number(const char* key, const char* example, Read read) const;

    const Json* json_;
    std::string path_;
    Problems* problems_;
};

/// JSON text as a value; refused with file and line when it is none, or names a key twice.
Result<Json> readJson(const std::string& text, const std::string& file);

}  // namespace fayline::cli
