#include "connection.h"

#include <gtest/gtest.h>
#include <sqlite3.h>

#include "support.h"

namespace fayline::store {
namespace {

using namespace test;

int codeOf(Connection& connection, const char* sql) {
    const auto done = connection.run(sql);
    return done ? SQLITE_OK : done.error().code & 0xFF;
}

TEST(ConnectionTest, testOnlyOwnStatementsAreAccepted) {
    const TempFolder folder;
    makeProject(folder / "a", 3);
    auto connection = Connection::open(folder / "a", Access::readWrite, true);
    ASSERT_TRUE(connection);
    for (const char* sql : {
             "DELETE FROM journal",
             "UPDATE journal SET title = 'x'",
             "DELETE FROM change",
             "UPDATE change SET new = 'x'",
             "DELETE FROM head",
             "INSERT INTO project VALUES('a', 'b')",
             "UPDATE project SET value = 'x'",
             "DROP TABLE snapshot",
             "CREATE TABLE extra(x)",
             "CREATE TEMP TABLE extra(x)",
             "CREATE TRIGGER t AFTER INSERT ON journal BEGIN SELECT 1; END",
             "CREATE VIEW v AS SELECT 1",
             "ALTER TABLE journal ADD COLUMN x",
             "ATTACH 'b' AS b",
             "SELECT load_extension('x')",
             "SELECT randomblob(1)",
             "PRAGMA writable_schema=ON",
             "PRAGMA synchronous=OFF",
             "PRAGMA journal_mode=WAL",
             "WITH RECURSIVE r(x) AS (SELECT 1 UNION ALL SELECT x FROM r) SELECT x FROM r",
         }) {
        const int code = codeOf(**connection, sql);
        EXPECT_TRUE(code == SQLITE_AUTH || code == SQLITE_ERROR) << code << " " << sql;
    }
    EXPECT_EQ(codeOf(**connection, "INSERT INTO snapshot VALUES(-1, 0, '')"), SQLITE_OK);
    EXPECT_EQ(codeOf(**connection, "SELECT count(*) FROM journal"), SQLITE_OK);
    EXPECT_EQ(namesIn(folder.path()), std::vector<std::string>{"a"});
}

TEST(ConnectionTest, testReaderMayNotWrite) {
    const TempFolder folder;
    makeProject(folder / "a", 3);
    auto connection = Connection::open(folder / "a", Access::readWrite, false);
    ASSERT_TRUE(connection);
    EXPECT_EQ(codeOf(**connection, "INSERT INTO snapshot VALUES(-1, 0, '')"), SQLITE_AUTH);
    EXPECT_EQ(codeOf(**connection, "UPDATE head SET step = 9"), SQLITE_AUTH);
    EXPECT_EQ(codeOf(**connection, "SELECT count(*) FROM journal"), SQLITE_OK);
}

TEST(ConnectionTest, testHardeningIsInForce) {
    const TempFolder folder;
    makeProject(folder / "a", 3);
    auto connection = Connection::open(folder / "a", Access::readWrite, true);
    ASSERT_TRUE(connection);
    const std::pair<int, int> switches[] = {
        {SQLITE_DBCONFIG_DEFENSIVE, 1},      {SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0},
        {SQLITE_DBCONFIG_ENABLE_TRIGGER, 0}, {SQLITE_DBCONFIG_ENABLE_VIEW, 0},
        {SQLITE_DBCONFIG_DQS_DML, 0},        {SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0}};
    for (const auto& [what, wanted] : switches) {
        int now = -1;
        sqlite3_db_config((*connection)->native(), what, -1, &now);
        EXPECT_EQ(now, wanted) << what;
    }
    EXPECT_EQ(sqlite3_limit((*connection)->native(), SQLITE_LIMIT_ATTACHED, -1), 0);
    EXPECT_EQ(sqlite3_limit((*connection)->native(), SQLITE_LIMIT_LENGTH, -1), 16 * 1024 * 1024);
}

TEST(ConnectionTest, testUriKeepsEveryByteOfAName) {
    EXPECT_EQ(fileUri("/a b/%20#?.\xFF", "mode=ro"), "file:///a%20b/%2520%23%3F.%FF?mode=ro");
}

}  // namespace
}  // namespace fayline::store
