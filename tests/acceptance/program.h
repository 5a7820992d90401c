#pragma once

#include <filesystem>
#include <iosfwd>
#include <map>
#include <nlohmann/json_fwd.hpp>
#include <string>
#include <vector>

namespace fayline::acceptance {

using Json = nlohmann::ordered_json;
using Words = std::vector<std::string>;

/// A folder of its own, removed at the end.
class Folder {
  public:
    Folder();
    ~Folder();
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    [[nodiscard]] const std::string& path() const { return path_; }
    [[nodiscard]] std::string operator/(const std::string& name) const {
        return path_ + "/" + name;
    }
    void write(const std::string& name, const std::string& bytes) const;
    /// SHA-256 of every file here, by name.
    [[nodiscard]] std::map<std::string, std::string> digests() const;

  private:
    std::string path_;
};

std::string bytesOf(const std::string& path);
/// A file of the source tree.
std::string sourceText(const std::string& path);

/// How a program ended: its exit code (128 + signal if one killed it) and what it wrote.
struct Ran {
    int exit = 0;
    std::string out, err;
};

/// Runs a program with exactly this environment; standard input is empty.
Ran runProgram(const Words& words, const std::string& folder, const Words& environment);

/// Runs the real program in a folder, without a display and with almost no environment.
Ran runFayline(const Folder& folder, const Words& words, const Words& environment = {});

/// Runs a command that must succeed; its standard output.
std::string done(const Folder& folder, const Words& words);
/// The same, read as JSON.
Json doneJson(const Folder& folder, const Words& words);

/// A copy of the demo project under this name.
void putDemo(const Folder& folder, const std::string& name);
/// The demo's hull with nothing decided but what hangs her ballast.
void putBallastHull(const Folder& folder, const std::string& name);
std::vector<std::string> linesOf(const std::string& text);

/// A long text that a failing test shows by its digest alone.
struct Text {
    std::string bytes;
    bool operator==(const Text&) const = default;
};
std::ostream& operator<<(std::ostream& out, const Text& text);
/// The first line in which two texts differ, from both; empty when they are equal.
std::string firstDifference(const Text& a, const Text& b);

/// Margins of a project, without its line "step": what must be equal for equal decisions.
Text marginsWithoutStep(const Folder& folder, const std::string& name);

}  // namespace fayline::acceptance
