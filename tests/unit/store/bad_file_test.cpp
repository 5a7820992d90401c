#include <gtest/gtest.h>

#include <random>

#include "store/project_file.h"
#include "support.h"

namespace fayline {
namespace {

using namespace test;

/// How a file is met by all three doors; the file must come out of it untouched and alone.
std::string refusalOf(const TempFolder& folder, const std::string& bytes) {
    const auto path = folder / "x.fayline";
    writeBytes(path, bytes);
    const auto time = std::filesystem::last_write_time(path);
    std::string word = openWord(path, OpenMode::readWrite);
    EXPECT_EQ(openWord(path, OpenMode::readOnly), word);
    const auto verified = ProjectFile::verify(path);
    EXPECT_EQ(verified ? "file." + std::string(fileOutcomeName(verified->outcome)) : "none", word);
    EXPECT_EQ(bytesOf(path), bytes) << word;
    EXPECT_EQ(std::filesystem::last_write_time(path), time) << word;
    EXPECT_EQ(namesIn(folder.path()), std::vector<std::string>{"x.fayline"}) << word;
    return word;
}

std::string projectBytes(std::int64_t steps) {
    const TempFolder folder;
    makeProject(folder / "a.fayline", steps);
    return bytesOf(folder / "a.fayline");
}

std::string projectChangedBy(const std::string& sql) {
    const TempFolder folder;
    makeProject(folder / "a.fayline", 20);
    runSql(folder / "a.fayline", sql);
    return bytesOf(folder / "a.fayline");
}

TEST(BadFileTest, testFilesOfOtherProgramsAreRefused) {
    const TempFolder folder;
    EXPECT_EQ(refusalOf(folder, ""), "file.not_ours");
    EXPECT_EQ(refusalOf(folder, "a letter to the surveyor\n"), "file.not_ours");
    EXPECT_EQ(refusalOf(folder, "\x89PNG\r\n\x1a\n" + std::string(4'000, '\0')), "file.not_ours");
    EXPECT_EQ(refusalOf(folder, std::string("SQLite format 3\0", 16)), "file.not_ours");
    EXPECT_EQ(refusalOf(folder, std::string(100'000, '\xFF')), "file.not_ours");
    const TempFolder other;
    runSql(other / "b.db", "CREATE TABLE journal(step)");
    EXPECT_EQ(refusalOf(folder, bytesOf(other / "b.db")), "file.not_ours");
}

TEST(BadFileTest, testFolderAndDeviceAreRefused) {
    const TempFolder folder;
    EXPECT_EQ(openWord(folder.path(), OpenMode::readWrite), "file.not_ours");
    EXPECT_EQ(openWord("/dev/null", OpenMode::readOnly), "file.not_ours");
}

TEST(BadFileTest, testHeaderThatIsNotOursIsRefused) {
    const TempFolder folder;
    EXPECT_EQ(refusalOf(folder, projectChangedBy("PRAGMA application_id=0")), "file.not_ours");
    EXPECT_EQ(refusalOf(folder, projectChangedBy("PRAGMA user_version=2")), "file.newer");
    EXPECT_EQ(refusalOf(folder, projectChangedBy("PRAGMA user_version=-1")), "file.newer");
    EXPECT_EQ(refusalOf(folder, projectChangedBy("PRAGMA user_version=0")), "file.damaged");
    EXPECT_EQ(refusalOf(folder, projectChangedBy("PRAGMA journal_mode=WAL")), "file.not_ours");
}

TEST(BadFileTest, testNewerFormatNamesTheFormatNeeded) {
    const TempFolder folder;
    writeBytes(folder / "x.fayline", projectChangedBy("PRAGMA user_version=7"));
    const auto opened = ProjectFile::open(folder / "x.fayline", OpenMode::readWrite);
    EXPECT_NE(opened.error().what.find("format 7"), std::string::npos) << opened.error().line();
}

TEST(BadFileTest, testEditsByOtherToolsAreFound) {
    const TempFolder folder;
    const auto badStep = [&](const std::string& sql) {
        const std::string bytes = projectChangedBy(sql);
        EXPECT_EQ(refusalOf(folder, bytes), "file.damaged") << sql;
        const auto verified = ProjectFile::verify(folder / "x.fayline");
        EXPECT_EQ(verified->step, verified->firstBadStep.value_or(verified->step + 1) - 1);
        return verified->firstBadStep.value_or(0);
    };
    EXPECT_EQ(badStep("UPDATE journal SET title = 'altered' WHERE step = 7"), 7);
    EXPECT_EQ(badStep("UPDATE journal SET why = why || ' ' WHERE step = 20"), 20);
    EXPECT_EQ(badStep("UPDATE journal SET kind = 'other' WHERE step = 4"), 4);
    EXPECT_EQ(badStep("UPDATE journal SET target = 1 WHERE step = 3"), 3);
    EXPECT_EQ(badStep("UPDATE change SET new = NULL WHERE step = 9 AND n = 1"), 9);
    EXPECT_EQ(badStep("UPDATE change SET n = 9 WHERE step = 2 AND n = 2"), 2);
    EXPECT_EQ(badStep("UPDATE change SET n = 9 WHERE step = 1 AND n = 3"), 1);
    EXPECT_EQ(badStep("DELETE FROM change WHERE step = 12"), 12);
    EXPECT_EQ(badStep("INSERT INTO change VALUES(25, 1, 'hull.name', NULL, 'x')"), 21);
    EXPECT_EQ(badStep("INSERT INTO change VALUES(0, 1, 'hull.name', NULL, 'x')"), 1);
    EXPECT_EQ(badStep("DELETE FROM journal WHERE step = 5"), 5);
    EXPECT_EQ(badStep("DELETE FROM change WHERE step = 20; DELETE FROM journal WHERE step = 20"),
              20);
    EXPECT_EQ(badStep("UPDATE head SET step = 21"), 21);
    EXPECT_EQ(badStep("UPDATE head SET step = 19"), 0);
    EXPECT_EQ(badStep("UPDATE head SET hash = ''"), 0);
    EXPECT_EQ(badStep("DELETE FROM head"), 0);
    EXPECT_EQ(badStep("UPDATE project SET value = 'x' WHERE key = 'uuid'"), 0);
    EXPECT_EQ(badStep("INSERT INTO project VALUES('more', 'x')"), 0);
}

TEST(BadFileTest, testFilesWithPartsOfOthersAreRefused) {
    const TempFolder folder;
    for (const char* sql : {
             "CREATE VIEW v(x) AS SELECT 1 UNION ALL SELECT x FROM v",
             "CREATE TRIGGER t AFTER INSERT ON journal BEGIN DELETE FROM change; END",
             "CREATE INDEX i ON journal(at)",
             "CREATE TABLE extra(x)",
             "CREATE VIRTUAL TABLE f USING fts5(x)",
         })
        EXPECT_EQ(refusalOf(folder, projectChangedBy(sql)), "file.not_ours") << sql;
    std::string deep = "1";
    for (int i = 0; i < 900; ++i) deep += "+1";
    for (const std::string& sql : {
             std::string("ALTER TABLE journal ADD COLUMN extra TEXT"),
             std::string("DROP TABLE snapshot"),
             std::string("DROP TABLE snapshot; CREATE VIEW snapshot AS SELECT * FROM journal"),
             std::string("DROP TABLE head; CREATE TABLE head(id INTEGER PRIMARY KEY, step INTEGER, "
                         "hash TEXT, project TEXT)"),
             "DROP TABLE snapshot; CREATE TABLE snapshot(step INTEGER PRIMARY KEY, decisions "
             "INTEGER NOT NULL, state TEXT NOT NULL, g GENERATED ALWAYS AS (" +
                 deep + "))",
             std::string("DROP TABLE snapshot; CREATE VIRTUAL TABLE snapshot USING fts5(x)"),
         }) {
        const std::string word = refusalOf(folder, projectChangedBy(sql));
        EXPECT_TRUE(word == "file.damaged" || word == "file.not_ours") << word << ": " << sql;
    }
}

TEST(BadFileTest, testGiantTextIsRefused) {
    const TempFolder folder;
    EXPECT_EQ(refusalOf(folder, projectChangedBy("INSERT INTO project VALUES('big', "
                                                 "CAST(zeroblob(20000000) AS TEXT))")),
              "file.damaged");
}

TEST(BadFileTest, testEveryTruncationIsFound) {
    const std::string whole = projectBytes(40);
    const TempFolder folder;
    ASSERT_EQ(whole.size() % 512, 0U);
    for (std::size_t size = 0; size < whole.size(); size += 512)
        EXPECT_EQ(refusalOf(folder, whole.substr(0, size)),
                  size == 0 ? "file.not_ours" : "file.damaged")
            << size;
}

TEST(BadFileTest, testDamageOutsideTheStepsIsFound) {
    const TempFolder folder;
    std::string bytes = projectBytes(40);
    bytes[39] = static_cast<char>(bytes[39] ^ 1);  // how many pages are free
    EXPECT_EQ(refusalOf(folder, bytes), "file.damaged");
}

TEST(BadFileTest, testStepsBeforeTheDamageCanBeSaved) {
    const TempFolder folder;
    writeBytes(folder / "x.fayline",
               projectChangedBy("UPDATE journal SET title = 'altered' WHERE step = 15"));
    const auto steps = ProjectFile::readableSteps(folder / "x.fayline");
    ASSERT_TRUE(steps);
    EXPECT_EQ(steps->size(), 14U);
    ASSERT_TRUE(ProjectFile::create(folder / "y.fayline", *steps, "fayline"));
    EXPECT_EQ(ProjectFile::verify(folder / "y.fayline")->step, 14);
    const std::string whole = projectBytes(200);
    writeBytes(folder / "z.fayline", whole.substr(0, whole.size() - 4'096));
    const auto cut = ProjectFile::readableSteps(folder / "z.fayline");
    ASSERT_TRUE(cut) << cut.error().line();
    EXPECT_LE(cut->size(), 200U);
    EXPECT_EQ(ProjectFile::readableSteps(folder / "none").error().code, "file.missing");
}

/// Flips one bit at a time; whatever still opens must say exactly what was written.
void flipBits(std::int64_t steps, int flips, int leastFound) {
    const TempFolder folder;
    const auto path = folder / "x.fayline";
    const std::string whole = projectBytes(steps);
    const Journal journal = journalOf(steps);
    const auto seed = std::random_device()();
    SCOPED_TRACE("seed " + std::to_string(seed));
    std::mt19937 random(seed);
    int found = 0;
    for (int i = 0; i < flips; ++i) {
        const std::size_t bit = random() % (whole.size() * 8);
        std::string bytes = whole;
        bytes[bit / 8] = static_cast<char>(bytes[bit / 8] ^ (1 << (bit % 8)));
        writeBytes(path, bytes);
        const auto opened = ProjectFile::open(path, OpenMode::readOnly);
        if (!opened) {
            ++found;
            continue;
        }
        EXPECT_EQ(opened->file->steps(), journal.steps()) << "bit " << bit;
        EXPECT_EQ(opened->file->facts().at("program"), "fayline test") << "bit " << bit;
    }
    EXPECT_GE(found, leastFound) << "most of the file is content, so most flips must be noticed";
}

TEST(BadFileTest, testNoFlippedBitPassesUnnoticed) {
    flipBits(150, 500, 150);
}
TEST(BadFileTest, testNoFlippedBitPassesUnnoticedInALongJournal) {
    flipBits(1'100, 100, 50);
}

}  // namespace
}  // namespace fayline
