// The drilling sheets as the program writes them, without a display.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>

#include "program.h"

using namespace fayline::acceptance;

namespace {

void decideGroups(const Folder& folder, const std::string& name) {
    done(folder, {"decide",
                  name,
                  "heel.kind=wood_screw",
                  "heel.count=2",
                  "heel.gauge=14",
                  "heel.length=3 in",
                  "heel.metal=c65100_h02",
                  "arm.kind=bolt",
                  "arm.count=3",
                  "arm.diameter=3/8 in",
                  "arm.metal=c65500_h02",
                  "floor_bolt.kind=drift",
                  "floor_bolt.count=2",
                  "floor_bolt.diameter=1/2 in",
                  "floor_bolt.length=10 in",
                  "planking.strakes=12",
                  "planking.thickness=1 in",
                  "plank.kind=wood_screw",
                  "plank.count=2",
                  "plank.gauge=12",
                  "plank.length=1-3/4 in"});
}

struct Row {
    std::string sheet, file, page, side, revision;
};

std::vector<Row> rowsOf(const Folder& folder, const std::string& dir) {
    std::vector<Row> rows;
    const auto lines = linesOf(bytesOf(folder / dir + "/sheets.csv"));
    EXPECT_EQ(lines.front(), "sheet,file,page,side,revision\r") << "RFC 4180 line ends";
    for (std::size_t i = 1; i < lines.size(); ++i) {
        std::smatch m;
        const bool fits = std::regex_match(
            lines[i], m, std::regex("([^,]*),([^,]*),([0-9]+),([a-z]*),([0-9A-Z]{8})\r?"));
        EXPECT_TRUE(fits) << lines[i];
        if (fits) rows.push_back({m[1], m[2], m[3], m[4], m[5]});
    }
    return rows;
}

std::string tool(const Folder& folder, const Words& words) {
    const Ran ran = runProgram(words, folder.path(), {"PATH=/usr/bin:/bin"});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    return ran.out;
}

}  // namespace

TEST(Sheets, OnePdfForEachFrameFloorKeelAndPlanksAndAListOfTheirPages) {
    const Folder folder;
    putBallastHull(folder, "p.fayline");
    decideGroups(folder, "p.fayline");
    const Ran ran = runFayline(folder, {"sheets", "p.fayline", "--to", "out/paper"});
    ASSERT_EQ(ran.exit, 0) << ran.err;
    EXPECT_EQ(ran.err, "");
    const auto rows = rowsOf(folder, "out/paper");
    std::map<std::string, int> pages;
    std::set<std::string> sheets;
    for (const Row& row : rows) {
        EXPECT_EQ(row.page, std::to_string(++pages[row.file])) << "in order";
        EXPECT_EQ(row.file, row.sheet + ".pdf");
        sheets.insert(row.sheet);
    }
    for (int frame = 1; frame <= 37; ++frame)
        EXPECT_EQ(sheets.count("F" + std::to_string(frame)), 1U) << frame;
    for (int frame = 14; frame <= 24; ++frame)
        EXPECT_EQ(sheets.count("F" + std::to_string(frame) + ".floor"), 1U) << frame;
    EXPECT_EQ(sheets.count("F13.floor"), 0U) << "no floor stands there";
    EXPECT_EQ(sheets.count("keel") + sheets.count("planks"), 2U);
    std::size_t files = 0;
    for (const auto& entry : std::filesystem::directory_iterator(folder / "out/paper")) {
        const std::string name = entry.path().filename().string();
        EXPECT_TRUE(name == "sheets.csv" || pages.count(name) == 1) << name << " is not listed";
        ++files;
    }
    EXPECT_EQ(files, pages.size() + 1);
    for (const std::string file : {"F16.pdf", "F16.floor.pdf", "keel.pdf", "planks.pdf"}) {
        const std::string info = tool(folder, {"/usr/bin/pdfinfo", folder / "out/paper/" + file});
        EXPECT_TRUE(
            std::regex_search(info, std::regex("Pages: +" + std::to_string(pages[file]) + "\n")))
            << file << "\n"
            << info;
        EXPECT_NE(info.find("A4"), std::string::npos) << info;
        const std::string text =
            tool(folder, {"/usr/bin/pdftotext", folder / "out/paper/" + file, "-"});
        const auto row =
            std::find_if(rows.begin(), rows.end(), [&](const Row& r) { return r.file == file; });
        EXPECT_NE(text.find(row->revision), std::string::npos) << file;
        EXPECT_NE(text.find("naval architect"), std::string::npos) << file;
        EXPECT_NE(text.find("local codes prevail"), std::string::npos) << file;
    }
    EXPECT_EQ(rows[0].side, "port");
    EXPECT_EQ(rows[1].side, "starboard");
}

TEST(Sheets, AFramesTwoSidesFitTwoPagesOfEitherPaper) {
    const Folder folder;
    putBallastHull(folder, "p.fayline");
    decideGroups(folder, "p.fayline");
    for (const std::string paper : {"a4", "letter"}) {
        done(folder, {"sheets", "p.fayline", "--to", paper, "--paper", paper, "--frames", "14-24"});
        for (const Row& row : rowsOf(folder, paper)) EXPECT_LE(std::stoi(row.page), 2) << row.file;
        const std::string info = tool(folder, {"/usr/bin/pdfinfo", folder / paper + "/F16.pdf"});
        EXPECT_NE(info.find(paper == "a4" ? "(A4)" : "(letter)"), std::string::npos) << info;
    }
}

TEST(Sheets, TheWholeDemoHullIsDrilledFromItsSheets) {
    const Folder folder;
    putDemo(folder, "w.fayline");
    for (const std::string paper : {"a4", "letter"}) {
        done(folder, {"sheets", "w.fayline", "--to", paper, "--paper", paper});
        std::set<std::string> sheets;
        for (const Row& row : rowsOf(folder, paper)) {
            sheets.insert(row.sheet);
            if (row.sheet[0] == 'F') {
                EXPECT_LE(std::stoi(row.page), 2) << paper << " " << row.file;
            }
        }
        EXPECT_EQ(sheets.count("backbone"), 1U);
    }
    // Every word lies on the paper.
    const std::regex word(
        "<word xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" "
        "yMax=\"([-0-9.]+)\"");
    for (const std::string file : {"backbone.pdf", "planks.pdf", "keel.pdf", "F17.pdf"}) {
        const std::string xml =
            tool(folder, {"/usr/bin/pdftotext", "-bbox", folder / "a4/" + file, "-"});
        int words = 0;
        for (std::sregex_iterator m(xml.begin(), xml.end(), word), end; m != end; ++m, ++words) {
            EXPECT_GT(std::stod((*m)[1]), 40.0) << file;
            EXPECT_LT(std::stod((*m)[3]), 595.3 - 25.0) << file;
            EXPECT_LT(std::stod((*m)[4]), 841.9 - 10.0) << file;
        }
        EXPECT_GT(words, 100) << file;
    }
}

TEST(Sheets, SomeFramesOnly) {
    const Folder folder;
    putBallastHull(folder, "p.fayline");
    done(folder, {"sheets", "p.fayline", "--to", "a", "--frames", "13-15"});
    std::set<std::string> sheets;
    for (const Row& row : rowsOf(folder, "a")) sheets.insert(row.sheet);
    EXPECT_EQ(sheets, (std::set<std::string>{"F13", "F14", "F14.floor", "F15", "F15.floor"}));
    done(folder, {"sheets", "p.fayline", "--to", "b", "--frames", "F3,20"});
    sheets.clear();
    for (const Row& row : rowsOf(folder, "b")) sheets.insert(row.sheet);
    EXPECT_EQ(sheets, (std::set<std::string>{"F3", "F20", "F20.floor"}));
}

TEST(Sheets, TheirCountOfHolesIsTheTakeOffsAndTheListsOfHoles) {
    const Folder folder;
    putBallastHull(folder, "p.fayline");
    decideGroups(folder, "p.fayline");
    const auto holes = doneJson(folder, {"holes", "p.fayline", "--json"})["holes"];
    const auto csv = linesOf(done(folder, {"holes", "p.fayline", "--csv"}));
    EXPECT_EQ(csv.size(), holes.size() + 1);
    const auto metal = doneJson(folder, {"metal", "p.fayline", "--json"});
    EXPECT_EQ(metal["totals"]["count"], holes.size());
    // Every mark of a frame stands in its sheet's words.
    done(folder, {"sheets", "p.fayline", "--to", "out"});
    const std::string text = tool(folder, {"/usr/bin/pdftotext", folder / "out/F16.pdf", "-"});
    int found = 0;
    for (const auto& hole : holes) {
        if (hole["frame"] != "F16" || (hole["group"] != "heel" && hole["group"] != "arm")) continue;
        ++found;
        const std::string mark =
            (hole["side"] == "port" ? "P16-" : "S16-") + hole["mark"].get<std::string>();
        EXPECT_NE(text.find(mark), std::string::npos) << mark;
    }
    EXPECT_EQ(found, 10);
}

TEST(Sheets, UndoingGivesTheOldCodesBack) {
    const Folder folder;
    putBallastHull(folder, "p.fayline");
    decideGroups(folder, "p.fayline");
    const auto list = [&](const std::string& dir) {
        done(folder, {"sheets", "p.fayline", "--to", dir});
        return bytesOf(folder / dir + "/sheets.csv");
    };
    const std::string before = list("a");
    done(folder, {"decide", "p.fayline", "F16.arm.diameter=1/2 in"});
    const std::string after = list("b");
    EXPECT_NE(before, after);
    const auto one = linesOf(before), other = linesOf(after);
    ASSERT_EQ(one.size(), other.size());
    for (std::size_t i = 0; i < one.size(); ++i) {
        const bool touched = one[i].rfind("F16,", 0) == 0 || one[i].rfind("F16.floor,", 0) == 0;
        if (!touched) {
            EXPECT_EQ(one[i], other[i]);
        }
    }
    done(folder, {"undo", "p.fayline"});
    EXPECT_EQ(list("c"), before);
}

TEST(Sheets, SayTheSameInEveryLocaleAndZone) {
    const Folder folder;
    putBallastHull(folder, "p.fayline");
    decideGroups(folder, "p.fayline");
    done(folder, {"sheets", "p.fayline", "--to", "a"});
    const Ran ran = runFayline(folder, {"sheets", "p.fayline", "--to", "b"},
                               {"LC_ALL=de_DE.UTF-8", "LANG=tr_TR.UTF-8", "TZ=Pacific/Auckland"});
    ASSERT_EQ(ran.exit, 0) << ran.err;
    EXPECT_EQ(bytesOf(folder / "a/sheets.csv"), bytesOf(folder / "b/sheets.csv"));
}

TEST(Sheets, RefusalsNameWhatIsWrongAndWriteNothing) {
    const Folder folder;
    putBallastHull(folder, "p.fayline");
    const auto refused = [&](Words words, int exit, const std::string& says) {
        words.insert(words.begin(), {"sheets", "p.fayline"});
        const Ran ran = runFayline(folder, words);
        EXPECT_EQ(ran.exit, exit) << ran.err;
        EXPECT_NE(ran.err.find(says), std::string::npos) << ran.err;
        EXPECT_EQ(linesOf(ran.err).size(), 1U) << ran.err;
        EXPECT_FALSE(std::filesystem::exists(folder / "out")) << ran.err;
    };
    refused({}, 2, "--to");
    refused({"--to", "out", "--paper", "a3"}, 2, "a4 or letter");
    refused({"--to", "out", "--frames", "90"}, 1, "F90");
    refused({"--to", "out", "--frames", "8-90"}, 1, "F90");
    refused({"--to", "out", "--frames", "x"}, 1, "--frames");
    folder.write("taken", "a file");
    refused({"--to", "taken"}, 1, "taken");
    EXPECT_EQ(bytesOf(folder / "taken"), "a file");
}

TEST(Sheets, WhatWasPrintedIsKeptAndGoesStale) {
    const Folder folder;
    putBallastHull(folder, "p.fayline");
    const auto before = folder.digests();
    done(folder, {"sheets", "p.fayline", "--to", "a", "--frames", "16"});
    EXPECT_EQ(folder.digests().at("p.fayline"), before.at("p.fayline")) << "only when asked";
    EXPECT_EQ(done(folder, {"sheets", "p.fayline", "--to", "b", "--printed"}).find("stale"),
              std::string::npos);
    EXPECT_EQ(doneJson(folder, {"verify", "p.fayline", "--json"})["outcome"], "ok");
    done(folder, {"decide", "p.fayline", "K.5.diameter=1 in"});
    const std::string changed = done(folder, {"sheets", "p.fayline", "--to", "c"});
    EXPECT_NE(changed.find("stale: keel was printed as "), std::string::npos) << changed;
    done(folder, {"undo", "p.fayline"});
    EXPECT_EQ(done(folder, {"sheets", "p.fayline", "--to", "d"}).find("stale"), std::string::npos);
}
