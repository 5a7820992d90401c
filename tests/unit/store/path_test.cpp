#include <gtest/gtest.h>

#include <algorithm>

#include "store/project_file.h"
#include "support.h"

namespace fayline {
namespace {

using namespace test;

class PathTest : public testing::TestWithParam<std::string> {};

TEST_P(PathTest, testProjectLivesUnderThisNameAndNoOther) {
    const TempFolder folder;
    const auto place = folder / ("in " + GetParam());
    std::filesystem::create_directory(place);
    const auto path = place / GetParam();
    {
        auto made = ProjectFile::create(path, journalOf(3).steps(), "fayline");
        ASSERT_TRUE(made) << made.error().line();
        ASSERT_TRUE(made->file->append(nextStep(made->file->journal())));
        ASSERT_TRUE(made->file->copyTo(place / "copy"));
    }
    const auto opened = ProjectFile::open(path, OpenMode::readWrite);
    ASSERT_TRUE(opened) << opened.error().line();
    EXPECT_EQ(opened->file->steps().size(), 4U);
    std::vector<std::string> expected = {GetParam(), "copy"};
    std::sort(expected.begin(), expected.end());
    EXPECT_EQ(namesIn(place), expected);
    EXPECT_EQ(namesIn(folder.path()), std::vector<std::string>{"in " + GetParam()});
}

INSTANTIATE_TEST_SUITE_P(OddNames, PathTest,
                         testing::Values("\xC3\xB6 'q' \"d\" %20 #h ?x; 1.fayline", "a?mode=memory",
                                         "a#b.fayline", "100%.fayline", "%41.fayline",
                                         "two\nlines.fayline", "-rf.fayline", "a&b=c.fayline",
                                         "back\\slash.fayline", ":memory:", "file:a.fayline",
                                         "\xE8\x88\xB9 \xF0\x9F\x9B\xA5.fayline",
                                         "broken \xFF\xFE utf-8.fayline", " ", "o\xCC\x88.fayline",
                                         std::string(200, 'n')));

TEST(NameTest, testNameWithNoRoomForTheSafetyFileIsRefused) {
    const TempFolder folder;
    EXPECT_TRUE(ProjectFile::create(folder / std::string(247, 'n'), {}, "fayline"));
    EXPECT_EQ(ProjectFile::create(folder / std::string(248, 'n'), {}, "fayline").error().code,
              "file.name");
    EXPECT_EQ(namesIn(folder.path()).size(), 1U);
    std::filesystem::rename(folder / std::string(247, 'n'), folder / std::string(250, 'n'));
    EXPECT_EQ(openWord(folder / std::string(250, 'n'), OpenMode::readWrite), "read_only");
}

TEST(NameTest, testPathTooLongForSqliteIsRefusedByName) {
    const TempFolder folder;
    auto place = folder.path();
    while (place.string().size() < 600) {
        place /= std::string(100, 'n');
        std::filesystem::create_directory(place);
    }
    EXPECT_EQ(ProjectFile::create(place / "a", {}, "fayline").error().code, "file.name");
    EXPECT_TRUE(namesIn(place).empty());
    makeProject(folder / "a", 3);
    std::filesystem::rename(folder / "a", place / "a");
    EXPECT_EQ(openWord(place / "a", OpenMode::readOnly), "file.name");
}

TEST(NameTest, testLinkLeadsToTheFileItself) {
    const TempFolder folder;
    std::filesystem::create_directory(folder / "yard");
    makeProject(folder / "yard/a.fayline", 3);
    std::filesystem::create_symlink("yard/a.fayline", folder / "link");
    auto opened = ProjectFile::open(folder / "link", OpenMode::readWrite);
    ASSERT_TRUE(opened);
    EXPECT_EQ(opened->file->path().filename(), "a.fayline");
    EXPECT_TRUE(opened->file->append(nextStep(opened->file->journal())));
    EXPECT_TRUE(std::filesystem::is_symlink(folder / "link"));
}

TEST(NameTest, testRelativeNameStaysWithTheFileWhenTheFolderChanges) {
    const TempFolder folder;
    EXPECT_EQ(inChild([&] {
                  std::filesystem::current_path(folder.path());
                  auto made = ProjectFile::create("a.fayline", journalOf(3).steps(), "fayline");
                  if (!made) return 1;
                  std::filesystem::current_path("/");
                  return made->file->append(nextStep(made->file->journal())) ? 0 : 2;
              }),
              0);
    EXPECT_EQ(ProjectFile::verify(folder / "a.fayline")->step, 4);
}

}  // namespace
}  // namespace fayline
