#include "store/project_file.h"

#include <gtest/gtest.h>

#include <cstdlib>

#include "support.h"

namespace fayline {
namespace {

using namespace test;

TEST(ProjectFileTest, testStepsComeBackByteForByte) {
    const TempFolder folder;
    const auto path = folder / "gannet.fayline";
    Journal journal = journalOf(30);
    {
        auto made = ProjectFile::create(path, journal.steps(), "fayline 0.1");
        ASSERT_TRUE(made) << made.error().line();
        EXPECT_EQ(made->outcome, FileOutcome::ok);
        for (int i = 0; i < 30; ++i) {
            const Step step = nextStep(journal);
            ASSERT_TRUE(journal.append(step));
            ASSERT_TRUE(made->file->append(step));
        }
    }
    const auto opened = ProjectFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(opened) << opened.error().line();
    EXPECT_EQ(opened->outcome, FileOutcome::ok);
    EXPECT_EQ(opened->says, "");
    EXPECT_EQ(opened->file->steps(), journal.steps());
    EXPECT_EQ(opened->file->journal().decided(), journal.decided());
    EXPECT_EQ(opened->file->journal().nextRedo(), journal.nextRedo());
    EXPECT_EQ(opened->file->facts().at("program"), "fayline 0.1");
    EXPECT_EQ(opened->file->facts().at("uuid").size(), 36U);
}

TEST(ProjectFileTest, testUndoWorksOnAfterReopening) {
    const TempFolder folder;
    const auto path = folder / "gannet.fayline";
    const StepBy ada{"Ada", "", "2026-11-25T10:42:07Z"};
    {
        auto made = ProjectFile::create(path, {}, "fayline");
        for (const char* text : {"4 in", "5 in"})
            ASSERT_TRUE(made->file->append(
                *made->file->journal().prepareDecide({{"keel.sided", text}}, text, ada)));
    }
    for (int left = 2; left > 0; --left) {
        auto opened = ProjectFile::open(path, OpenMode::readWrite);
        ASSERT_TRUE(opened);
        ASSERT_TRUE(opened->file->append(*opened->file->journal().prepareUndo(ada)));
    }
    const auto opened = ProjectFile::open(path, OpenMode::readOnly);
    EXPECT_TRUE(opened->file->journal().decided().empty());
    EXPECT_EQ(opened->file->journal().redoDepth(), 2U);
    EXPECT_EQ(opened->file->steps().size(), 4U);
}

TEST(ProjectFileTest, testOneFileAndNothingBesideIt) {
    const TempFolder folder;
    {
        auto made = ProjectFile::create(folder / "a.fayline", journalOf(3).steps(), "fayline");
        ASSERT_TRUE(made);
        ASSERT_TRUE(made->file->append(nextStep(made->file->journal())));
        EXPECT_EQ(namesIn(folder.path()), std::vector<std::string>{"a.fayline"}) << "while idle";
    }
    EXPECT_EQ(namesIn(folder.path()), std::vector<std::string>{"a.fayline"});
}

TEST(ProjectFileTest, testMissingFileIsNotMade) {
    const TempFolder folder;
    for (const OpenMode mode : {OpenMode::readOnly, OpenMode::readWrite})
        EXPECT_EQ(openWord(folder / "none.fayline", mode), "file.missing");
    EXPECT_EQ(openWord(folder / "no folder/none.fayline", OpenMode::readWrite), "file.missing");
    const auto verified = ProjectFile::verify(folder / "none.fayline");
    ASSERT_TRUE(verified);
    EXPECT_EQ(verified->outcome, FileOutcome::missing);
    EXPECT_TRUE(namesIn(folder.path()).empty());
}

TEST(ProjectFileTest, testCreateNeverReplacesAFile) {
    const TempFolder folder;
    const auto path = folder / "gannet.fayline";
    writeBytes(path, "a letter");
    EXPECT_EQ(ProjectFile::create(path, {}, "fayline").error().code, "file.exists");
    EXPECT_EQ(bytesOf(path), "a letter");
    std::filesystem::create_symlink("nowhere", folder / "link.fayline");
    EXPECT_EQ(ProjectFile::create(folder / "link.fayline", {}, "fayline").error().code,
              "file.exists");
    EXPECT_EQ(ProjectFile::create(folder / "none" / "a.fayline", {}, "fayline").error().code,
              "file.missing");
    EXPECT_EQ(namesIn(folder.path()), (std::vector<std::string>{"gannet.fayline", "link.fayline"}))
        << "nothing left over";
}

TEST(ProjectFileTest, testCreateRefusesStepsThatDoNotFold) {
    const TempFolder folder;
    std::vector<Step> steps = journalOf(5).steps();
    steps[2].title = "altered";
    EXPECT_EQ(ProjectFile::create(folder / "a.fayline", steps, "fayline").error().where, "step 3");
    EXPECT_TRUE(namesIn(folder.path()).empty());
}

TEST(ProjectFileTest, testStepThatDoesNotFitIsRefusedAndLaterOnesGoOn) {
    const TempFolder folder;
    auto made = ProjectFile::create(folder / "a.fayline", journalOf(3).steps(), "fayline");
    const Step good = nextStep(made->file->journal());
    Step bad = good;
    bad.title = "altered";
    EXPECT_EQ(made->file->append(bad).error().code, "journal.hash");
    EXPECT_TRUE(made->file->append(good));
    EXPECT_EQ(made->file->append(good).error().code, "journal.number");
    EXPECT_EQ(sqlText(folder / "a.fayline", "SELECT count(*) FROM journal"), "4");
}

TEST(ProjectFileTest, testReadOnlyModeChangesNothing) {
    const TempFolder folder;
    const auto path = folder / "a.fayline";
    makeProject(path, 5);
    const std::string before = bytesOf(path);
    {
        auto opened = ProjectFile::open(path, OpenMode::readOnly);
        ASSERT_TRUE(opened);
        EXPECT_EQ(opened->outcome, FileOutcome::ok);
        EXPECT_TRUE(opened->file->isReadOnly());
        EXPECT_EQ(opened->file->append(nextStep(opened->file->journal())).error().code,
                  "file.read_only");
    }
    EXPECT_EQ(bytesOf(path), before);
}

TEST(ProjectFileTest, testCopyIsWholeAndNeverReplaces) {
    const TempFolder folder;
    auto made = ProjectFile::create(folder / "a.fayline", journalOf(40).steps(), "fayline");
    ASSERT_TRUE(made);
    ASSERT_TRUE(made->file->append(nextStep(made->file->journal())));
    ASSERT_TRUE(made->file->copyTo(folder / "b.fayline"));
    EXPECT_EQ(made->file->copyTo(folder / "b.fayline").error().code, "file.exists");
    EXPECT_EQ(made->file->copyTo(folder / "none" / "c.fayline").error().code, "file.missing");
    const auto copy = ProjectFile::open(folder / "b.fayline", OpenMode::readWrite);
    ASSERT_TRUE(copy) << copy.error().line();
    EXPECT_EQ(copy->file->steps(), made->file->steps());
    EXPECT_EQ(copy->file->facts(), made->file->facts());
    EXPECT_EQ(namesIn(folder.path()), (std::vector<std::string>{"a.fayline", "b.fayline"}));
}

TEST(ProjectFileTest, testWhatOthersReadIsWhatIsDecided) {
    const TempFolder folder;
    const auto path = folder / "a.fayline";
    makeProject(path, 60);
    const Journal journal = journalOf(60);
    std::map<std::string, std::string> decided;
    for (const auto& [what, text] : journal.decided())
        decided[what] = sqlText(
            path,
            "SELECT new FROM change JOIN journal USING(step) WHERE what = '" + what +
                "' AND kind IN ('decide', 'undo', 'redo') ORDER BY step DESC, n DESC LIMIT 1");
    EXPECT_EQ(decided, journal.decided());
    EXPECT_EQ(sqlText(path, "PRAGMA application_id"), "1178687820");
    EXPECT_EQ(sqlText(path, "PRAGMA user_version"), "1");
    EXPECT_EQ(sqlText(path, "PRAGMA journal_mode"), "delete");
}

TEST(ProjectFileTest, testSnapshotEveryThousandStepsIsChecked) {
    const TempFolder folder;
    const auto path = folder / "a.fayline";
    makeProject(path, 2'000);
    EXPECT_EQ(sqlText(path, "SELECT group_concat(step) FROM snapshot"), "1000")
        << "a snapshot is written along with the step after it";
    {
        auto opened = ProjectFile::open(path, OpenMode::readWrite);
        ASSERT_TRUE(opened->file->append(nextStep(opened->file->journal())));
    }
    EXPECT_EQ(sqlText(path, "SELECT group_concat(step) FROM snapshot"), "1000,2000");
    EXPECT_EQ(openWord(path, OpenMode::readWrite), "ok");
    runSql(path, "UPDATE snapshot SET decisions = decisions + 1 WHERE step = 2000");
    const auto opened = ProjectFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(opened) << "a snapshot can be done without";
    EXPECT_NE(opened->says.find("step 2000"), std::string::npos) << opened->says;
    EXPECT_EQ(sqlText(path, "SELECT count(*) FROM snapshot"), "0");
    EXPECT_EQ(opened->file->steps().size(), 2'001U);
}

TEST(ProjectFileTest, testStepAlreadyInTheFileIsNoProblem) {
    const TempFolder folder;
    const auto path = folder / "a.fayline";
    auto made = ProjectFile::create(path, journalOf(3).steps(), "fayline");
    const Step step = nextStep(made->file->journal());
    // The same step arrives by another door, as when a commit succeeds but its answer is lost.
    ASSERT_EQ(inChild([&] {
                  ::setenv("XDG_RUNTIME_DIR", folder.path().c_str(), 1);
                  auto other = ProjectFile::open(path, OpenMode::readWrite);
                  return other && other->file->append(step) ? 0 : 1;
              }),
              0);
    EXPECT_TRUE(made->file->append(step));
    EXPECT_TRUE(made->file->append(nextStep(made->file->journal())));
    EXPECT_EQ(ProjectFile::verify(path)->step, 5);
}

TEST(ProjectFileTest, testOutcomeNamesAreThoseOfTheReports) {
    EXPECT_EQ(fileOutcomeName(FileOutcome::notOurs), "not_ours");
    EXPECT_EQ(fileOutcomeName(FileOutcome::inUse), "in_use");
    EXPECT_EQ(fileOutcomeName(FileOutcome::readOnly), "read_only");
    EXPECT_EQ(fileOutcomeName(FileOutcome::ok), "ok");
}

}  // namespace
}  // namespace fayline
