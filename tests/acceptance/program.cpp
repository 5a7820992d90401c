#include "program.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <poll.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>
#include <sstream>

#include "quantity/digest.h"

namespace fayline::acceptance {
namespace {

std::vector<char*> pointersTo(const Words& words) {
    std::vector<char*> pointers;
    for (const std::string& word : words) pointers.push_back(const_cast<char*>(word.c_str()));
    pointers.push_back(nullptr);
    return pointers;
}

/// Reads both pipes until both are closed.
void drain(int out, int err, Ran& ran) {
    std::array<pollfd, 2> ends{{{out, POLLIN, 0}, {err, POLLIN, 0}}};
    std::array<std::string*, 2> texts{&ran.out, &ran.err};
    int open = 2;
    while (open > 0) {
        if (::poll(ends.data(), ends.size(), -1) < 0) break;
        for (std::size_t i = 0; i < ends.size(); ++i) {
            if (ends[i].fd < 0 || ends[i].revents == 0) continue;
            std::array<char, 65536> buffer;
            const ssize_t got = ::read(ends[i].fd, buffer.data(), buffer.size());
            if (got > 0) {
                texts[i]->append(buffer.data(), static_cast<std::size_t>(got));
            } else {
                ::close(ends[i].fd);
                ends[i].fd = -1;
                --open;
            }
        }
    }
}

}  // namespace

Folder::Folder() {
    path_ = (std::filesystem::temp_directory_path() / "fayline-acceptance-XXXXXX").string();
    if (::mkdtemp(path_.data()) == nullptr) ADD_FAILURE() << "no folder could be made";
}

Folder::~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

void Folder::write(const std::string& name, const std::string& bytes) const {
    std::ofstream file(*this / name, std::ios::binary | std::ios::trunc);
    file << bytes;
    ASSERT_TRUE(file.flush()) << name;
}

std::map<std::string, std::string> Folder::digests() const {
    std::map<std::string, std::string> all;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(path_)) {
        const std::string name = entry.path().string().substr(path_.size() + 1);
        all[name] = entry.is_regular_file() ? sha256Hex(bytesOf(entry.path().string())) : "folder";
    }
    return all;
}

std::string bytesOf(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    EXPECT_TRUE(file.good()) << path;
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

std::string sourceText(const std::string& path) {
    return bytesOf(std::string(FAYLINE_SOURCE_DIR) + "/" + path);
}

Ran runProgram(const Words& words, const std::string& folder, const Words& environment) {
    Ran ran;
    std::array<int, 2> out{}, err{};
    if (::pipe2(out.data(), O_CLOEXEC) != 0 || ::pipe2(err.data(), O_CLOEXEC) != 0) {
        ADD_FAILURE() << "no pipe";
        return ran;
    }
    const auto argv = pointersTo(words);
    const auto envp = pointersTo(environment);
    const pid_t child = ::fork();
    if (child == 0) {
        const int nothing = ::open("/dev/null", O_RDONLY | O_CLOEXEC);
        if (::dup2(nothing, 0) < 0 || ::dup2(out[1], 1) < 0 || ::dup2(err[1], 2) < 0 ||
            ::chdir(folder.c_str()) != 0)
            ::_exit(126);
        ::execve(argv[0], argv.data(), envp.data());
        ::_exit(127);
    }
    ::close(out[1]);
    ::close(err[1]);
    drain(out[0], err[0], ran);
    int status = 0;
    ::waitpid(child, &status, 0);
    ran.exit = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    return ran;
}

Ran runFayline(const Folder& folder, const Words& words, const Words& environment) {
    Words all{FAYLINE_PROGRAM};
    all.insert(all.end(), words.begin(), words.end());
    Words set{"FAYLINE_WHO=tester"};
    set.insert(set.end(), environment.begin(), environment.end());
    return runProgram(all, folder.path(), set);
}

std::string done(const Folder& folder, const Words& words) {
    const Ran ran = runFayline(folder, words);
    std::string line;
    for (const std::string& word : words) line += " " + word;
    EXPECT_EQ(ran.exit, 0) << "fayline" << line << "\n" << ran.err;
    EXPECT_EQ(ran.err, "") << "fayline" << line;
    return ran.out;
}

Json doneJson(const Folder& folder, const Words& words) {
    const std::string text = done(folder, words);
    Json json = Json::parse(text, nullptr, false);
    EXPECT_FALSE(json.is_discarded()) << text.substr(0, 400);
    return json;
}

void putDemo(const Folder& folder, const std::string& name) {
    static const std::string bytes = [] {
        const Folder own;
        done(own, {"demo", "--to", "demo.fayline"});
        return bytesOf(own / "demo.fayline");
    }();
    folder.write(name, bytes);
}

void putBallastHull(const Folder& folder, const std::string& name) {
    static const std::string bytes = [] {
        const Folder own;
        own.write("hollin-offsets.csv", sourceText("resources/demo/hollin-offsets.csv"));
        done(own, {"import", "hollin-offsets.csv", "--to", "b.fayline"});
        const std::string text = sourceText("tests/hulls/hollin-ballast.decisions") + "\n\n";
        Words step{"decide", "b.fayline"};
        std::string why;
        for (const std::string& line : linesOf(text)) {
            if (line.empty() && step.size() > 2) {
                step.insert(step.end(), {"--why", why});
                done(own, step);
                step.resize(2);
                why.clear();
            } else if (line.rfind("# ", 0) == 0) {
                why += (why.empty() ? "" : " ") + line.substr(2);
            } else if (const auto equals = line.find(" = "); equals != std::string::npos) {
                step.push_back(line.substr(0, equals) + "=" + line.substr(equals + 3));
            }
        }
        return bytesOf(own / "b.fayline");
    }();
    folder.write(name, bytes);
}

Text marginsWithoutStep(const Folder& folder, const std::string& name) {
    std::string text;
    int left_out = 0;
    for (const std::string& line : linesOf(done(folder, {"margins", name, "--json"}))) {
        if (line.rfind("  \"step\": ", 0) == 0) {
            ++left_out;
        } else {
            text += line + "\n";
        }
    }
    EXPECT_EQ(left_out, 1);
    return {text};
}

std::vector<std::string> linesOf(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) lines.push_back(line);
    return lines;
}

std::ostream& operator<<(std::ostream& out, const Text& text) {
    return out << text.bytes.size() << " bytes, " << sha256Hex(text.bytes);
}

std::string firstDifference(const Text& a, const Text& b) {
    const auto left = linesOf(a.bytes), right = linesOf(b.bytes);
    for (std::size_t i = 0; i < std::max(left.size(), right.size()); ++i) {
        const std::string& one = i < left.size() ? left[i] : "";
        const std::string& other = i < right.size() ? right[i] : "";
        if (one != other) return std::to_string(i + 1) + ": " + one + " | " + other;
    }
    return a == b ? "" : "line ends";
}

}  // namespace fayline::acceptance
