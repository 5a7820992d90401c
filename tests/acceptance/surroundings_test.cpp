// What the machine around the program must not change: its locale, its window libraries.

#include <gtest/gtest.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

#include "cli.h"
#include "program.h"

using namespace fayline::acceptance;

namespace {

const std::vector<Words> readings{
    {"margins", "p.fayline"},          {"margins", "p.fayline", "--json"},
    {"margins", "p.fayline", "--csv"}, {"holes", "p.fayline"},
    {"holes", "p.fayline", "--csv"},   {"hull", "p.fayline"},
    {"hull", "p.fayline", "--json"}};

Text everything(const Folder& folder, const Words& environment) {
    std::string all;
    for (const Words& words : readings) {
        const Ran ran = runFayline(folder, words, environment);
        EXPECT_EQ(ran.exit, 0) << ran.err;
        all += ran.out;
    }
    return {all};
}

/// File names of the shared libraries a running process has loaded.
std::set<std::string> librariesLoaded() {
    std::set<std::string> names;
    std::ifstream maps("/proc/self/maps");
    for (std::string line; std::getline(maps, line);) {
        const auto slash = line.rfind('/');
        if (slash != std::string::npos && line.find(".so", slash) != std::string::npos)
            names.insert(line.substr(slash + 1));
    }
    return names;
}

bool anyStartsWith(const std::set<std::string>& names, const std::string& start) {
    const auto at = names.lower_bound(start);
    return at != names.end() && at->rfind(start, 0) == 0;
}

}  // namespace

TEST(Locale, CommasForPointsChangeNothing) {
    const Folder folder;
    putDemo(folder, "p.fayline");
    const Text expected = everything(folder, {"LC_ALL=C"});
    const std::string locales = folder / "locales";
    std::filesystem::create_directory(locales);
    const std::string command =
        "localedef -i de_DE -f UTF-8 '" + locales + "/de_DE.UTF-8' >'" + locales + "/log' 2>&1";
    if (std::system(command.c_str()) != 0)
        GTEST_SKIP() << "no German locale can be made here (package locales)";
    const Words german{"LOCPATH=" + locales, "LC_ALL=de_DE.UTF-8", "LANG=de_DE.UTF-8"};
    // A control: in this locale printf, which obeys it, writes a comma.
    const Ran control = runProgram({"/usr/bin/printf", "%.1f", "0,5"}, folder.path(), german);
    ASSERT_EQ(control.out, "0,5") << "the locale did not take";
    EXPECT_EQ(firstDifference(everything(folder, german), expected), "");
    EXPECT_EQ(runFayline(folder, {"decide", "p.fayline", "keel.sided=212.5 mm"}, german).exit, 0);
    EXPECT_EQ(
        doneJson(folder, {"journal", "p.fayline", "--json"})["steps"].back()["changes"][0]["new"],
        "212.5 mm");
}

TEST(Locale, TurkishLettersAndUnknownLocalesChangeNothing) {
    const Folder folder;
    putDemo(folder, "p.fayline");
    const Text expected = everything(folder, {"LC_ALL=C"});
    EXPECT_EQ(firstDifference(everything(folder, {"LC_ALL=tr_TR.UTF-8"}), expected), "");
    EXPECT_EQ(
        firstDifference(everything(folder, {"LC_ALL=nowhere", "TZ=Pacific/Auckland"}), expected),
        "");
}

TEST(FileSizeLimit, EndsInASentenceNotInASignal) {
    const Folder folder;
    putDemo(folder, "d.fayline");
    // 16 blocks of 512 bytes: the demo project is longer.
    const Ran ran = runProgram(
        {"/bin/sh", "-c",
         std::string("ulimit -f 16; exec '") + FAYLINE_PROGRAM + "' demo --to e.fayline"},
        folder.path(), {"PATH=/usr/bin:/bin"});
    EXPECT_EQ(ran.exit, 1) << ran.err;
    EXPECT_EQ(linesOf(ran.err).size(), 1U) << ran.err;
    EXPECT_FALSE(std::filesystem::exists(folder / "e.fayline"));
}

TEST(WindowLibraries, TheCommandLineLoadsNone) {
    const Folder folder;
    putDemo(folder, "p.fayline");
    std::ostringstream out, err;
    for (const char* command : {"margins", "holes", "hull", "journal", "verify"})
        EXPECT_EQ(fayline::cli::runCommandLine({command, folder / "p.fayline"}, out, err), 0)
            << err.str();
    // Plugins too are loaded by now: what stands here is all the command line ever needs.
    const auto names = librariesLoaded();
    EXPECT_TRUE(anyStartsWith(names, "libQt6Core")) << "the list is blind";
    EXPECT_TRUE(anyStartsWith(names, "libQt6Sql")) << "the list is blind";
    for (const char* window : {"libQt6Gui", "libQt6Widgets", "libQt6PrintSupport", "libX11",
                               "libxcb", "libwayland", "libGL", "libEGL", "libfontconfig"})
        EXPECT_FALSE(anyStartsWith(names, window)) << window;
}

TEST(WindowLibraries, TheCommandLinesTestsLinkNone) {
    const Folder folder;
    const std::string self = std::filesystem::read_symlink("/proc/self/exe").string();
    const Ran ldd = runProgram({"/usr/bin/ldd", self}, folder.path(), {"PATH=/usr/bin:/bin"});
    ASSERT_EQ(ldd.exit, 0) << ldd.err;
    EXPECT_NE(ldd.out.find("libQt6Core"), std::string::npos);
    EXPECT_EQ(ldd.out.find("libQt6Gui"), std::string::npos);
    EXPECT_EQ(ldd.out.find("libQt6Widgets"), std::string::npos);
}
