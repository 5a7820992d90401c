// Commands as typed: what they make, where they print, how they end.

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <sstream>

#include "cli.h"
#include "program.h"
#include "store/project_file.h"

using namespace fayline::acceptance;

namespace {

bool startsWith(const std::string& text, const std::string& start) {
    return text.rfind(start, 0) == 0;
}

const std::vector<std::string> commandNames{"demo",   "import", "hull", "margins", "holes",
                                            "decide", "undo",   "redo", "journal", "verify"};

}  // namespace

TEST(Commands, HelpNamesEveryCommandAndGoesToStandardOutput) {
    const Folder folder;
    const std::string help = done(folder, {"--help"});
    for (const std::string& name : commandNames)
        EXPECT_NE(help.find("  fayline " + name + " "), std::string::npos) << name;
    for (const std::string& name : commandNames)
        EXPECT_EQ(done(folder, {name, "--help"}), help) << name;
    EXPECT_NE(help.find("naval architect"), std::string::npos);
    EXPECT_TRUE(folder.digests().empty());
}

TEST(Commands, VersionIsOneLineThatResultsRepeat) {
    const Folder folder;
    const std::string version = done(folder, {"--version"});
    ASSERT_TRUE(startsWith(version, "fayline "));
    EXPECT_EQ(linesOf(version).size(), 1U);
    putDemo(folder, "d.fayline");
    EXPECT_EQ(
        doneJson(folder, {"verify", "d.fayline", "--json"})["program"].get<std::string>() + "\n",
        version);
}

TEST(Commands, DemoMakesAProjectThatVerifies) {
    const Folder folder;
    const std::string out = done(folder, {"demo", "--to", "d.fayline"});
    EXPECT_TRUE(startsWith(out, "d.fayline: "));
    EXPECT_EQ(folder.digests().size(), 1U) << "something else was left beside it";
    EXPECT_EQ(doneJson(folder, {"verify", "d.fayline", "--json"})["outcome"], "ok");
    EXPECT_EQ(done(folder, {"demo", "--to=e.fayline"}).substr(1), out.substr(1));
}

TEST(Commands, WorkWithNoEnvironmentAtAll) {
    const Folder folder;
    const Ran made = runProgram({FAYLINE_PROGRAM, "demo", "--to", "d.fayline"}, folder.path(), {});
    EXPECT_EQ(made.exit, 0) << made.err;
    const Ran ran = runProgram({FAYLINE_PROGRAM, "margins", "d.fayline"}, folder.path(), {});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    EXPECT_EQ(ran.err, "");
    EXPECT_NE(ran.out.find("worst first"), std::string::npos);
}

// The demo is nothing but its offsets and its decisions: typed by hand they give the same margins.
TEST(Commands, ImportAndDecideGiveWhatDemoGives) {
    const Folder folder;
    folder.write("hollin-offsets.csv", sourceText("resources/demo/hollin-offsets.csv"));
    const std::string out = done(folder, {"import", "hollin-offsets.csv", "--to", "p.fayline"});
    EXPECT_EQ(out, "p.fayline: 1 step\n");
    int decided = 0;
    for (const std::string& line : linesOf(sourceText("resources/demo/hollin.decisions"))) {
        if (line.empty() || line[0] == '#') continue;
        const auto equals = line.find(" = ");
        ASSERT_NE(equals, std::string::npos) << line;
        const std::string step =
            done(folder,
                 {"decide", "p.fayline", line.substr(0, equals) + "=" + line.substr(equals + 3)});
        EXPECT_TRUE(startsWith(step, "step " + std::to_string(decided + 2) + ": ")) << step;
        ++decided;
    }
    EXPECT_GE(decided, 40);
    putDemo(folder, "d.fayline");
    EXPECT_EQ(marginsWithoutStep(folder, "p.fayline"), marginsWithoutStep(folder, "d.fayline"));
}

TEST(Commands, AnExistingFileIsNeverOverwritten) {
    const Folder folder;
    putDemo(folder, "taken.fayline");
    folder.write("notes.txt", "dear diary");
    folder.write("hull.csv", sourceText("resources/demo/hollin-offsets.csv"));
    std::filesystem::create_directory(folder / "folder.fayline");
    std::filesystem::create_symlink("nowhere", folder / "link.fayline");
    const auto before = folder.digests();
    for (const char* target :
         {"taken.fayline", "notes.txt", "hull.csv", "folder.fayline", "link.fayline"}) {
        for (const Words& words :
             {Words{"demo", "--to", target}, Words{"import", "hull.csv", "--to", target}}) {
            const Ran ran = runFayline(folder, words);
            EXPECT_EQ(ran.exit, 1) << target;
            EXPECT_EQ(ran.out, "") << target;
            EXPECT_NE(ran.err.find(target), std::string::npos) << ran.err;
        }
    }
    EXPECT_EQ(folder.digests(), before);
    EXPECT_FALSE(std::filesystem::exists(folder / "nowhere"));
}

TEST(Commands, AMissingFileIsNeverMade) {
    const Folder folder;
    for (const char* name : {"hull", "margins", "holes", "undo", "redo", "journal", "verify"}) {
        for (const char* file : {"none.fayline", "no/such/folder.fayline"}) {
            const Ran ran = runFayline(folder, {name, file});
            EXPECT_EQ(ran.exit, 1) << name;
            EXPECT_EQ(ran.out, "") << name;
            EXPECT_NE(ran.err.find("there is no such file"), std::string::npos) << ran.err;
        }
    }
    EXPECT_EQ(runFayline(folder, {"decide", "none.fayline", "hull.name=A"}).exit, 1);
    EXPECT_TRUE(folder.digests().empty());
}

TEST(Commands, ReadingLeavesTheFileAsItIs) {
    const Folder folder;
    putDemo(folder, "d.fayline");
    const auto before = folder.digests();
    for (const Words& words : {Words{"hull", "d.fayline"},
                               {"hull", "d.fayline", "--json"},
                               {"margins", "d.fayline"},
                               {"margins", "--json", "d.fayline"},
                               {"margins", "d.fayline", "--csv"},
                               {"holes", "d.fayline"},
                               {"holes", "d.fayline", "--json"},
                               {"holes", "d.fayline", "--csv"},
                               {"journal", "d.fayline"},
                               {"journal", "d.fayline", "--json"},
                               {"verify", "d.fayline"},
                               {"verify", "--", "d.fayline"}}) {
        EXPECT_NE(done(folder, words), "");
        EXPECT_EQ(folder.digests(), before) << words[0];
    }
}

TEST(Commands, NotesGoToStandardErrorAndLeaveJsonWhole) {
    const Folder folder;
    putDemo(folder, "d.fayline");
    done(folder, {"decide", "d.fayline", "F37.frame.x=30 m"});
    const Ran ran = runFayline(folder, {"margins", "d.fayline", "--json"});
    EXPECT_EQ(ran.exit, 0);
    EXPECT_FALSE(Json::parse(ran.out, nullptr, false).is_discarded());
    ASSERT_FALSE(ran.err.empty());
    for (const std::string& line : linesOf(ran.err))
        EXPECT_TRUE(startsWith(line, "fayline: note: ")) << line;
    EXPECT_NE(ran.err.find("F37"), std::string::npos);
}

TEST(Commands, AResultThatCannotBeWrittenIsAFailure) {
    const Folder folder;
    putDemo(folder, "d.fayline");
    for (const char* command : {"margins", "holes", "hull", "journal", "verify"}) {
        const Ran ran = runProgram(
            {"/bin/sh", "-c",
             std::string("exec '") + FAYLINE_PROGRAM + "' " + command + " d.fayline > /dev/full"},
            folder.path(), {});
        EXPECT_EQ(ran.exit, 1) << command;
        EXPECT_NE(ran.err.find("standard output"), std::string::npos) << ran.err;
    }
}

TEST(Commands, AFileOpenForEditingElsewhereIsReadButNotChanged) {
    const Folder folder;
    putDemo(folder, "d.fayline");
    const std::string runtime = folder / "runtime";
    std::filesystem::create_directory(runtime);
    ASSERT_EQ(::chmod(runtime.c_str(), 0700), 0);
    const Words environment{"XDG_RUNTIME_DIR=" + runtime};
    ASSERT_EQ(::setenv("XDG_RUNTIME_DIR", runtime.c_str(), 1), 0);
    const auto held =
        fayline::ProjectFile::open(folder / "d.fayline", fayline::OpenMode::readWrite);
    ASSERT_TRUE(held) << held.error().line();
    const Ran decide = runFayline(folder, {"decide", "d.fayline", "hull.name=A"}, environment);
    EXPECT_EQ(decide.exit, 1);
    EXPECT_EQ(decide.out, "");
    EXPECT_EQ(linesOf(decide.err).size(), 1U) << decide.err;
    const Ran margins = runFayline(folder, {"margins", "d.fayline"}, environment);
    EXPECT_EQ(margins.exit, 0);
    EXPECT_NE(margins.out.find("Hollin: margins"), std::string::npos);
    const Ran verify = runFayline(folder, {"verify", "d.fayline", "--json"}, environment);
    EXPECT_EQ(verify.exit, 0);
    EXPECT_EQ(Json::parse(verify.out)["outcome"], "in_use");
}

TEST(Commands, TheLibraryEntryDoesWhatTheProgramDoes) {
    const Folder folder;
    putDemo(folder, "d.fayline");
    for (const char* command : {"margins", "holes", "hull"}) {
        std::ostringstream out, err;
        EXPECT_EQ(fayline::cli::runCommandLine({command, folder / "d.fayline", "--json"}, out, err),
                  0);
        EXPECT_EQ(out.str(), done(folder, {command, "d.fayline", "--json"}));
        EXPECT_EQ(err.str(), "");
    }
}
