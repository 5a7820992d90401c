// Every example of the guides is run, in order, in one folder: what they show is what the program
// prints.
//
// In a block marked `console` a line `$ COMMAND` is run by the shell (`> ` goes on with it); the
// lines below it are what it prints, `…` standing for anything, and a last line `[1]` for an exit
// code other than 0. A block marked `csv NAME` or `json NAME` is written to the file NAME.

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

#include "program.h"
#include "project/fields.h"

using namespace fayline::acceptance;

namespace {

struct Example {
    int line = 0;
    std::string command;
    std::vector<std::string> output;
    int exit = 0;
    std::string file;  ///< instead of a command: a file to write, its text in `command`
};

/// The file a block is written to; empty for other blocks.
std::string fileOf(const std::string& block) {
    for (const char* kind : {"csv ", "json "}) {
        if (block.rfind(kind, 0) == 0) return block.substr(std::string(kind).size());
    }
    return "";
}

std::vector<Example> examplesOf(const std::string& text) {
    std::vector<Example> examples;
    std::string block;
    int number = 0;
    for (const std::string& line : linesOf(text)) {
        ++number;
        if (line.rfind("```", 0) == 0) {
            block = block.empty() ? line.substr(3) : "";
            if (block.empty() && line.size() > 3) ADD_FAILURE() << number << ": a block in a block";
            if (line == "```" && block.empty()) continue;
            if (!fileOf(block).empty()) examples.push_back({number, "", {}, 0, fileOf(block)});
        } else if (!fileOf(block).empty()) {
            examples.back().command += line + "\n";
        } else if (block != "console") {
            continue;
        } else if (line.rfind("$ ", 0) == 0) {
            examples.push_back({number, line.substr(2), {}, 0, ""});
        } else if (line.rfind("> ", 0) == 0 && examples.back().output.empty()) {
            examples.back().command += "\n" + line.substr(2);
        } else if (line.size() == 3 && line[0] == '[' && line[2] == ']') {
            examples.back().exit = line[1] - '0';
        } else {
            examples.back().output.push_back(line);
        }
    }
    return examples;
}

const std::string anything = "…";

/// One line against one that may have gaps.
bool fits(const std::string& line, const std::string& pattern) {
    const auto gap = pattern.find(anything);
    if (gap == std::string::npos) return line == pattern;
    if (line.compare(0, gap, pattern, 0, gap) != 0) return false;
    const std::string rest = pattern.substr(gap + anything.size());
    for (std::size_t at = gap; at <= line.size(); ++at) {
        if (fits(line.substr(at), rest)) return true;
    }
    return false;
}

/// Lines against lines, one of which may stand for any number.
bool fits(const std::vector<std::string>& lines, std::size_t at,
          const std::vector<std::string>& patterns, std::size_t next) {
    if (next == patterns.size()) return at == lines.size();
    if (patterns[next] == anything) {
        for (std::size_t from = at; from <= lines.size(); ++from) {
            if (fits(lines, from, patterns, next + 1)) return true;
        }
        return false;
    }
    return at < lines.size() && fits(lines[at], patterns[next]) &&
           fits(lines, at + 1, patterns, next + 1);
}

/// Runs all examples of a guide; how many commands were run.
int run(const std::string& guide) {
    const Folder folder;
    const std::string bin = std::filesystem::path(FAYLINE_PROGRAM).parent_path().string();
    int commands = 0;
    for (const Example& example : examplesOf(sourceText(guide))) {
        SCOPED_TRACE(guide + ":" + std::to_string(example.line) + ": " + example.command);
        if (!example.file.empty()) {
            folder.write(example.file, example.command);
            continue;
        }
        const Ran ran =
            runProgram({"/bin/sh", "-c", "{ " + example.command + "\n} 2>&1"}, folder.path(),
                       {"PATH=" + bin + ":/usr/bin:/bin", "FAYLINE_WHO=Ann"});
        EXPECT_EQ(ran.exit, example.exit) << ran.out;
        EXPECT_TRUE(fits(linesOf(ran.out), 0, example.output, 0)) << "it printed\n"
                                                                  << ran.out.substr(0, 3000);
        ++commands;
    }
    return commands;
}

}  // namespace

TEST(Guide, GapsFitWhatTheyStandForAndNothingElse) {
    EXPECT_TRUE(fits("step 12: hull name", "step …: hull name"));
    EXPECT_FALSE(fits("step 12: hull name", "step …: hull"));
    EXPECT_TRUE(fits("a b c", "a … c"));
    EXPECT_FALSE(fits("a b", "a b c"));
    EXPECT_TRUE(fits({"a", "b", "c"}, 0, {"a", "…", "c"}, 0));
    EXPECT_TRUE(fits({"a", "c"}, 0, {"a", "…", "c"}, 0));
    EXPECT_FALSE(fits({"a", "b", "c"}, 0, {"a", "c"}, 0));
    EXPECT_FALSE(fits({"a", "b"}, 0, {"a"}, 0));
    EXPECT_FALSE(fits({"a"}, 0, {"a", "b"}, 0));
}

TEST(Guide, CommandLineExamplesPrintWhatTheyShow) {
    EXPECT_GE(run("docs/command-line.md"), 25);
}

TEST(Guide, OffsetsExamplesPrintWhatTheyShow) {
    EXPECT_GE(run("docs/offsets.md"), 5);
}

TEST(Guide, JointFileExamplesPrintWhatTheyShow) {
    EXPECT_GE(run("docs/joint-file.md"), 3);
}

TEST(Guide, EveryCommandHasAnExample) {
    const Folder folder;
    const std::string guide = sourceText("docs/command-line.md");
    int commands = 0;
    for (const std::string& line : linesOf(done(folder, {"--help"}))) {
        const std::string start = "  fayline ";
        if (line.rfind(start, 0) != 0 || line[start.size()] == '[') continue;
        const std::string name =
            line.substr(start.size(), line.find(' ', start.size()) - start.size());
        EXPECT_NE(guide.find("$ fayline " + name), std::string::npos) << name << " has no example";
        ++commands;
    }
    EXPECT_GE(commands, 10);
}

TEST(Guide, NothingIsNamedThatIsNotThere) {
    const std::string text = sourceText("docs/engineering.md");
    std::istringstream words(text);
    int files = 0;
    for (std::string word; words >> word;) {
        const auto from = word.find('`');
        const auto to = word.find('`', from + 1);
        if (from == std::string::npos || to == std::string::npos) continue;
        const std::string name = word.substr(from + 1, to - from - 1);
        for (const char* folder : {"core/", "tests/", "resources/", "docs/"}) {
            if (name.rfind(folder, 0) != 0) continue;
            ++files;
            EXPECT_TRUE(std::filesystem::exists(std::string(FAYLINE_SOURCE_DIR) + "/" + name))
                << name;
        }
    }
    EXPECT_GE(files, 5);
}

namespace {

std::vector<std::string> quotedIn(const std::string& cell) {
    std::vector<std::string> names;
    for (auto from = cell.find('`'); from != std::string::npos; from = cell.find('`', from + 1)) {
        const auto to = cell.find('`', from + 1);
        if (to == std::string::npos) break;
        names.push_back(cell.substr(from + 1, to - from - 1));
        from = to;
    }
    return names;
}

}  // namespace

// The table of names in the guide and the program's own, against each other both ways.
TEST(Guide, EveryDecisionIsListedAndEveryNameListedIsADecision) {
    std::set<std::string> listed;
    bool table = false;
    for (const std::string& line : linesOf(sourceText("docs/command-line.md"))) {
        if (line == "| place | field |") table = true;
        if (line.empty()) table = false;
        if (!table || line.find('`') == std::string::npos) continue;
        const auto bar = line.find('|', 1);
        for (const std::string& place : quotedIn(line.substr(0, bar))) {
            for (const std::string& field : quotedIn(line.substr(bar))) {
                const auto found = fayline::findDecision(place + "." + field);
                EXPECT_TRUE(found) << place << "." << field << " is no decision";
                if (found) listed.insert(found->field->pattern);
            }
        }
    }
    for (const fayline::Field& field : fayline::decisionTable()) {
        if (field.pattern == "catalogue.*") continue;  // kept with the decisions that lean on it
        EXPECT_EQ(listed.count(field.pattern), 1U)
            << field.pattern << " is not listed in docs/command-line.md";
    }
    EXPECT_GE(listed.size(), 200U);
}
