#include "arguments.h"

#include <algorithm>

#include "quantity/text.h"

namespace fayline::cli {
namespace {

Problem unknownOption(const CommandSpec& spec, const std::string& word) {
    std::vector<std::string> names;
    std::string all;
    for (const OptionSpec& option : spec.options) {
        names.push_back(option.name);
        all += (all.empty() ? "" : ", ") + option.name;
    }
    const auto near = didYouMean(word, names);
    return {"option.unknown", word, "there is no such option for " + spec.name,
            near          ? "did you mean " + *near + "?"
            : all.empty() ? "it takes none"
                          : "one of " + all};
}

}  // namespace

std::optional<std::string> Arguments::value(const std::string& option) const {
    const auto found = options.find(option);
    if (found == options.end()) return std::nullopt;
    return found->second;
}

Result<Arguments> readArguments(const CommandSpec& spec, const std::vector<std::string>& words) {
    Arguments arguments;
    bool optionsOver = false;
    for (std::size_t i = 0; i < words.size(); ++i) {
        std::string word = words[i];
        if (optionsOver || word.size() < 2 || word.substr(0, 2) != "--") {
            if (word.empty())
                return tl::unexpected(Problem{"operands", spec.name, "an operand is empty",
                                              "fayline " + spec.name + " " + spec.operands});
            arguments.operands.push_back(word);
            continue;
        }
        if (word == "--") {
            optionsOver = true;
            continue;
        }
        std::optional<std::string> value;
        if (const auto equals = word.find('='); equals != std::string::npos) {
            value = word.substr(equals + 1);
            word.resize(equals);
        }
        const auto option = std::find_if(spec.options.begin(), spec.options.end(),
                                         [&](const OptionSpec& o) { return o.name == word; });
        if (option == spec.options.end()) return tl::unexpected(unknownOption(spec, word));
        if (arguments.has(word))
            return tl::unexpected(Problem{"option.twice", word, "it is given twice", "once"});
        if (option->takesValue && !value) {
            if (i + 1 >= words.size())
                return tl::unexpected(
                    Problem{"option.value", word, "it has nothing after it", option->meaning});
            value = words[++i];
        }
        if (!option->takesValue && value)
            return tl::unexpected(
                Problem{"option.value", word, "it takes no value", "the option alone"});
        arguments.options[word] = value.value_or("");
    }
    const std::size_t given = arguments.operands.size();
    if (given < spec.least || given > spec.most) {
        return tl::unexpected(Problem{
            "operands", spec.name,
            "it is given " + std::to_string(given) + (given == 1 ? " operand" : " operands"),
            "fayline " + spec.name + " " + spec.operands});
    }
    return arguments;
}

}  // namespace fayline::cli
