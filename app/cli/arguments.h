#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "quantity/result.h"

namespace fayline::cli {

/// An option a command takes: with a value after it, or a plain switch.
struct OptionSpec {
    std::string name;  ///< "--to"
    bool takesValue = false;
    std::string meaning;
};

/// What a command takes; used to read arguments and to print help.
struct CommandSpec {
    std::string name;
    std::string operands;  ///< "FILE WHAT=VALUE…"
    std::size_t least = 0, most = 0;
    std::vector<OptionSpec> options;
    std::string summary;
};

struct Arguments {
    std::vector<std::string> operands;
    std::map<std::string, std::string> options;

    [[nodiscard]] bool has(const std::string& option) const { return options.count(option) > 0; }
    [[nodiscard]] std::optional<std::string> value(const std::string& option) const;
};

/// Reads what follows the command's name. Options may stand anywhere; `--` ends them; `--to=FILE`
/// and `--to FILE` are one.
Result<Arguments> readArguments(const CommandSpec& spec, const std::vector<std::string>& words);

}  // namespace fayline::cli
