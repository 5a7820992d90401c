#include "derive/old_paper.h"

#include <gtest/gtest.h>

using namespace fayline;

TEST(OldPaper, NamesSheetsWhoseCodeIsAnotherNowAndThoseThatAreNoMore) {
    const std::map<std::string, std::string> recorded{{"sheet.F10.paper", "AAAA1111"},
                                                      {"sheet.F9.floor.paper", "BBBB2222"},
                                                      {"sheet.F9.paper", "CCCC3333"},
                                                      {"sheet.keel.paper", "DDDD4444"},
                                                      {"F9.P.heel.1.drilled", "2026-11-25"}};
    const std::map<std::string, std::string> codes{
        {"F9", "CCCC3333"}, {"F9.floor", "XXXX9999"}, {"F10", "YYYY8888"}, {"planks", "ZZZZ7777"}};
    EXPECT_EQ(oldPaper(recorded, codes),
              (std::vector<OldPaper>{{"F9.floor", "BBBB2222", "XXXX9999"},
                                     {"F10", "AAAA1111", "YYYY8888"},
                                     {"keel", "DDDD4444", ""}}));
    EXPECT_TRUE(oldPaper({}, codes).empty());
    EXPECT_EQ(codeOnPaper(recorded, "F9.floor"), "BBBB2222");
    EXPECT_EQ(codeOnPaper(recorded, "planks"), "") << "never put on paper";
}
