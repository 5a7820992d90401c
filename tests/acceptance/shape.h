#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>
#include <string_view>

namespace fayline::acceptance {

/// Compares JSON with a shape written as text; empty when it fits, else where and why not.
///
///   {key: shape, …}  an object with exactly these keys, in any order
///   [shape]          a list of any length
///   num int text bool null
///                    a finite number; a whole one; text that is not empty; …
///   words            text that may be empty
///   xyz band         a list of three numbers; of two, the first not above the second
///   a|b              either
std::string mismatch(const nlohmann::ordered_json& json, std::string_view shape);

/// Whether the first keys are these, in this order, and the last is `cautions` with lines of text.
std::string headMismatch(const nlohmann::ordered_json& json, std::string_view format,
                         bool ofProject);

}  // namespace fayline::acceptance
