#include <gtest/gtest.h>
#include <stdio.h>

#include <array>

#include "support.h"

namespace fayline {
namespace {

using namespace test;

std::string readByHand(const std::filesystem::path& path) {
    const std::string command = std::string(PYTHON) + " -B " + FAYLINE_SOURCE_DIR +
                                "/tests/unit/store/read_by_hand.py " + path.string() + " 2>&1";
    FILE* pipe = ::popen(command.c_str(), "r");
    std::string text;
    std::array<char, 4096> buffer{};
    while (const std::size_t got = ::fread(buffer.data(), 1, buffer.size(), pipe))
        text.append(buffer.data(), got);
    ::pclose(pipe);
    return text;
}

TEST(ReadByHandTest, testPythonReadsTheSameDecisionsAndChain) {
    const TempFolder folder;
    makeProject(folder / "a", 1'050);
    const Journal journal = journalOf(1'050);
    std::string expected = "1050 " + journal.tipHash() + "\n";
    for (const auto& [what, text] : journal.decided())
        expected.append(what).append("=").append(text).append("\n");
    EXPECT_EQ(readByHand(folder / "a"), expected);
}

TEST(ReadByHandTest, testPythonFindsTheSameDamage) {
    const TempFolder folder;
    makeProject(folder / "a", 30);
    runSql(folder / "a", "UPDATE change SET new = 'altered' WHERE step = 12 AND n = 1");
    EXPECT_EQ(readByHand(folder / "a"), "step 12 does not fit\n");
    EXPECT_EQ(ProjectFile::verify(folder / "a")->firstBadStep, 12);
}

}  // namespace
}  // namespace fayline
