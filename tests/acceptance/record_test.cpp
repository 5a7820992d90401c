// The calculation record as the program writes it, read back from PDF and text.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <regex>

#include "program.h"

using namespace fayline::acceptance;

namespace {

const std::string plank = R"({
  "members": [
    {"name": "plank", "wood": "western_redcedar", "thickness": "1 1/8 in", "counterbore": "3/8 in"},
    {"name": "frame", "wood": "white_oak", "thickness": "2 1/2 in", "grain": 90}
  ],
  "fastener": {"kind": "wood_screw", "gauge": "No. 14", "length": "2 1/2 in", "metal": "c65500_h02"},
  "hole": {"bung": "1/2 in"},
  "demand": {"lateral": "60 lb", "axial": "20 lb"}
})";

std::string tool(const Folder& folder, const Words& words) {
    const Ran ran = runProgram(words, folder.path(), {"PATH=/usr/bin:/bin"});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    return ran.out;
}

/// One text for each page, line breaks made blanks.
std::vector<std::string> pagesOf(const Folder& folder, const std::string& file) {
    std::string all = tool(folder, {"/usr/bin/pdftotext", "-layout", folder / file, "-"});
    all = std::regex_replace(all, std::regex("[ \\n]+"), " ");
    std::vector<std::string> pages(1);
    for (const char c : all) {
        if (c == '\f') {
            pages.emplace_back();
        } else {
            pages.back() += c;
        }
    }
    if (pages.back().empty()) pages.pop_back();
    return pages;
}

std::string joined(const std::vector<std::string>& pages) {
    std::string all;
    for (const std::string& page : pages) all += page + "\n";
    return all;
}

bool has(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

void expectEveryPageNumberedAndCautioned(const std::vector<std::string>& pages,
                                         const std::string& revision) {
    for (std::size_t i = 0; i < pages.size(); ++i) {
        EXPECT_TRUE(
            has(pages[i], "page " + std::to_string(i + 1) + " of " + std::to_string(pages.size())))
            << i;
        EXPECT_TRUE(has(pages[i], "Results guide, they do not certify")) << i;
        EXPECT_TRUE(has(pages[i], "local codes prevail")) << i;
        EXPECT_TRUE(has(pages[i], revision)) << i;
    }
}

std::string revisionIn(const std::string& out) {
    std::smatch m;
    EXPECT_TRUE(std::regex_search(out, m, std::regex("revision ([0-9A-Z]{8})\n"))) << out;
    return m.empty() ? std::string() : m[1].str();
}

/// The newtons that stand in brackets behind "can carry" in the working of this title.
double canCarry_N(const std::string& text, const std::string& title) {
    const auto at = text.find(title);
    EXPECT_NE(at, std::string::npos) << title;
    if (at == std::string::npos) return std::nan("");
    const std::string rest = text.substr(at);
    std::smatch m;
    const std::regex figure("can carry [0-9.]+ lb \\(([0-9.]+) (k?)N\\)");
    EXPECT_TRUE(std::regex_search(rest, m, figure)) << title;
    return m.empty() ? std::nan("") : std::stod(m[1]) * (m[2].length() > 0 ? 1000.0 : 1.0);
}

}  // namespace

TEST(Record, OneJointsPdfCanBeFollowedAndItsFiguresAreThoseOfTheJson) {
    const Folder folder;
    folder.write("plank.json", plank);
    const Ran ran = runFayline(folder, {"joint", "plank.json", "--record", "plank.pdf"});
    ASSERT_EQ(ran.exit, 0) << ran.err;
    EXPECT_EQ(ran.err, "");
    const auto pages = pagesOf(folder, "plank.pdf");
    EXPECT_EQ(ran.out.rfind("plank.pdf: " + std::to_string(pages.size()) + " pages", 0), 0U)
        << ran.out;
    expectEveryPageNumberedAndCautioned(pages, revisionIn(ran.out));
    const std::string text = joined(pages);
    for (const char* words :
         {"Z' = min(modes) · C_D · C_M · C_g · C_Δ · C_eg", "NDS 12.3.1, Table 12.3.1A",
          "EN 1995-1-1", "from memory", "one joint, from plank.json", "What lets go first",
          "Equations behind the modes, US basis", "Equations behind the modes, Eurocode 5",
          "−B + √(B² − 4·A·C)", "1-1/8\"", "western redcedar"})
        EXPECT_TRUE(has(text, words)) << words;

    const Json json = doneJson(folder, {"joint", "plank.json", "--json"});
    const std::pair<const char*, double> workings[] = {
        {"Sideways load on the fastening, US basis", json["us"]["lateral"]["working_N"]},
        {"Sideways load on the fastening, Eurocode 5", json["ec5"]["lateral"]["working_N"]}};
    for (const auto& [title, expected] : workings)
        EXPECT_NEAR(canCarry_N(text, title), expected, std::abs(expected) * 6e-4) << title;
    // Every mode of the JSON stands in the working, to four digits.
    for (const auto& [mode, load] : json["us"]["lateral"]["modes_N"].items()) {
        std::smatch m;
        const std::regex row("Z_" + mode + " [0-9.]+ lb ([0-9.]+) (k?)N mode " + mode);
        ASSERT_TRUE(std::regex_search(text, m, row)) << mode;
        const double printed = std::stod(m[1]) * (m[2].length() > 0 ? 1000.0 : 1.0);
        EXPECT_NEAR(printed, load.get<double>(), load.get<double>() * 6e-4) << mode;
    }
}

TEST(Record, TextSaysWhatThePdfSays) {
    const Folder folder;
    folder.write("plank.json", plank);
    const std::string pdf = done(folder, {"joint", "plank.json", "--record", "plank.pdf"});
    const std::string txt = done(folder, {"joint", "plank.json", "--record", "plank.txt"});
    EXPECT_EQ(revisionIn(pdf), revisionIn(txt)) << "the form is no part of what it says";
    const std::string text = bytesOf(folder / "plank.txt");
    EXPECT_TRUE(has(text, "revision " + revisionIn(txt)));
    const Json json = doneJson(folder, {"joint", "plank.json", "--json"});
    const double expected = json["us"]["lateral"]["working_N"];
    EXPECT_NEAR(canCarry_N(text, "Sideways load on the fastening, US basis"), expected,
                expected * 6e-4);
}

TEST(Record, AHullIsRolledUpWithContentsOnEitherPaper) {
    const Folder folder;
    done(folder, {"demo", "--to", "w.fayline"});
    const Json margins = doneJson(folder, {"margins", "w.fayline", "--json"});
    for (const std::string paper : {"a4", "letter"}) {
        const Ran ran =
            runFayline(folder, {"record", "w.fayline", "--to", paper + ".pdf", "--paper", paper});
        ASSERT_EQ(ran.exit, 0) << ran.err;
        const std::string info = tool(folder, {"/usr/bin/pdfinfo", folder / paper + ".pdf"});
        EXPECT_TRUE(has(info, paper == "a4" ? "(A4)" : "(letter)")) << info;
        const auto pages = pagesOf(folder, paper + ".pdf");
        expectEveryPageNumberedAndCautioned(pages, revisionIn(ran.out));
        EXPECT_LT(pages.size(), 200U) << "one working for each distinct joint";
        const std::string text = joined(pages);
        for (const char* words :
             {"Contents", "Factor sets", "Loads by case", "Shares", "Ballast bolts",
              "Floor timbers", "Planks", "Decisions in force", "knocked down to port", "US C_D"})
            EXPECT_TRUE(has(text, words)) << words;
        // The worst check of all stands on the first page with its own margin.
        const Json worst = margins["checks"][0];
        EXPECT_TRUE(has(pages.front(), worst["id"].get<std::string>())) << worst;
        char margin[16];
        std::snprintf(margin, sizeof margin, "×%.2f",
                      std::floor(worst["margin"].get<double>() * 100.0) / 100.0);
        EXPECT_TRUE(has(pages.front(), margin)) << margin;
    }
}

TEST(Record, AStationsRecordIsPrintedWhereNoFileIsNamed) {
    const Folder folder;
    putDemo(folder, "p.fayline");
    const std::string text = done(folder, {"record", "p.fayline", "--station", "F17"});
    EXPECT_EQ(text.rfind("Calculation record: station F17\n", 0), 0U);
    EXPECT_TRUE(has(text, "K.3"));
    EXPECT_FALSE(has(text, "K.9")) << "stands at another frame";
    EXPECT_EQ(text, done(folder, {"record", "p.fayline", "--station", "17"}))
        << "as --frames takes it";
}

TEST(Record, WhatCannotBeIsRefusedAndNothingIsWritten) {
    const Folder folder;
    putDemo(folder, "p.fayline");
    folder.write("plank.json", plank);
    const auto before = folder.digests();
    const std::tuple<Words, int, const char*> wrong[] = {
        {{"record", "p.fayline", "--to", "out.doc"}, 2, "out.doc: a record is written as PDF or"},
        {{"record", "p.fayline", "--station", "F99", "--to", "o.pdf"}, 1, "there is no frame F99"},
        {{"record", "p.fayline", "--station", "F8-F9"}, 2, "--station: one station is meant"},
        {{"record", "p.fayline", "--station", "F8", "--all"}, 2, "--all: it stands beside"},
        {{"record", "p.fayline", "--to", "o.pdf", "--paper", "a5"}, 2, "there is no paper a5"},
        {{"record", "p.fayline", "--to", "none/here/o.pdf"}, 1, "could not be written"},
        {{"record", "none.fayline"}, 1, "there is no such file"},
        {{"joint", "plank.json", "--record", "o.doc"}, 2, "a record is written as PDF or"},
        {{"joint", "plank.json", "--record", "o.pdf", "--json"}, 2, "it stands beside --record"},
        {{"joint", "plank.json", "--paper", "a4"}, 2, "there is nothing to print it on"}};
    for (const auto& [words, exit, says] : wrong) {
        const Ran ran = runFayline(folder, words);
        EXPECT_EQ(ran.exit, exit) << words[2] << ": " << ran.err;
        EXPECT_TRUE(has(ran.err, says)) << ran.err;
        EXPECT_EQ(ran.err.rfind("fayline: ", 0), 0U) << ran.err;
        EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
        EXPECT_EQ(ran.out, "");
    }
    EXPECT_EQ(folder.digests(), before);
}
