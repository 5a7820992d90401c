#include <gtest/gtest.h>

#include <random>

#include "hull/offsets.h"
#include "shapes.h"

namespace fayline {
namespace {

constexpr const char* good =
    "# unit: mm\n"
    "# waterline: 350\n"
    "station,x,half_breadth,height\n"
    "bow,0,0,100\n"
    "bow,0,20,500\n"
    "\n"
    "mid,1000,0,0\n"
    "mid,1000,420,200\n"
    "mid,1000,500,450\n";

std::string lineFor(const std::string& text) {
    const auto offsets = readOffsets(text, "offsets.csv");
    if (offsets) return "";
    std::string lines;
    for (const auto& p : offsets.error()) lines += (lines.empty() ? "" : "\n") + p.line();
    return lines;
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
    const auto at = text.find(from);
    if (at == std::string::npos) throw std::runtime_error("not in the text: " + from);
    return text.replace(at, from.size(), to);
}

TEST(ReadOffsets, valuesAndTextsAsTyped) {
    const auto offsets = readOffsets(good, "offsets.csv");
    ASSERT_TRUE(offsets);
    ASSERT_EQ(offsets->stations.size(), 2U);
    EXPECT_EQ(offsets->waterline, millimetres(350));
    EXPECT_EQ(offsets->waterlineText, "350 mm");
    const auto& mid = offsets->stations[1];
    EXPECT_EQ(mid.id, "mid");
    EXPECT_EQ(mid.x, millimetres(1000));
    EXPECT_EQ(mid.xText, "1000 mm");
    ASSERT_EQ(mid.points.size(), 3U);
    EXPECT_EQ(mid.points[1], (OffsetPoint{millimetres(420), millimetres(200), "420 mm", "200 mm"}));
}

TEST(ReadOffsets, feetInchesEighths) {
    const auto offsets = readOffsets(
        "# unit: ft-in-8ths\n# waterline: 1-0-0\nstation,x,half_breadth,height\n"
        "0,0-0-0,0-0-0,0-0-0\n0,0-0-0,3-4-2,2-0-0\n1,8-0-0,0-0-0,0-0-0\n1,8-0-0,3-4-2+,2-0-0\n",
        "offsets.csv");
    ASSERT_TRUE(offsets) << offsets.error().front().line();
    EXPECT_EQ(offsets->stations[0].points[1].halfBreadth, inches(40.25));
    EXPECT_EQ(offsets->stations[0].points[1].halfBreadthText, "3-4-2");
    EXPECT_EQ(offsets->stations[1].points[1].halfBreadth, inches(40.3125));
    EXPECT_EQ(offsets->stations[1].points[1].halfBreadthText, "3-4-2+");
    EXPECT_EQ(offsets->waterlineText, "1-0-0");
}

TEST(ReadOffsets, cellsWithTheirOwnUnitKeepIt) {
    const auto offsets = readOffsets(replaced(good, "mid,1000,420,", "mid,1000,16 1/2 in,"), "f");
    ASSERT_TRUE(offsets);
    EXPECT_EQ(offsets->stations[1].points[1].halfBreadth, inches(16.5));
    EXPECT_EQ(offsets->stations[1].points[1].halfBreadthText, "16 1/2 in");
}

TEST(ReadOffsets, withoutWaterlineTheLowestTopCounts) {
    const auto offsets = readOffsets(replaced(good, "# waterline: 350\n", ""), "f");
    ASSERT_TRUE(offsets);
    EXPECT_FALSE(offsets->waterline);
    EXPECT_EQ(waterlineOf(*offsets), millimetres(450));
    EXPECT_EQ(waterlineOf(*readOffsets(good, "f")), millimetres(350));
}

TEST(ReadOffsets, unitLine) {
    EXPECT_EQ(lineFor(replaced(good, "# unit: mm\n", "")),
              "offsets.csv:1: the line that names the unit is missing; \"# unit: mm\" above the "
              "header (mm, cm, m, in, ft or ft-in-8ths)");
    EXPECT_EQ(lineFor(replaced(good, "unit: mm", "unit: furlongs")),
              "offsets.csv:1: unit is \"furlongs\"; mm, cm, m, in, ft or ft-in-8ths");
    EXPECT_EQ(lineFor(replaced(good, "# waterline: 350", "# unit: m")),
              "offsets.csv:2: \"# unit:\" stands a second time; once above the header");
}

TEST(ReadOffsets, columns) {
    EXPECT_EQ(lineFor(replaced(good, "half_breadth", "half_bredth")),
              "offsets.csv:3: \"half_bredth\" is not a column of a table of offsets; did you mean "
              "half_breadth? station, x, half_breadth, height and line\n"
              "offsets.csv:3: the column half_breadth is missing; station,x,half_breadth,height");
    const auto swapped = readOffsets(
        "# unit: mm\nheight,station,half_breadth,x\n0,a,0,0\n100,a,50,0\n0,b,0,90\n100,b,50,90\n",
        "f");
    ASSERT_TRUE(swapped) << "columns may stand in any order";
    EXPECT_EQ(swapped->stations[1].points[1].height, millimetres(100));
}

TEST(ReadOffsets, theRabbetsPointOfEachStation) {
    const std::string marked =
        "# unit: mm\n"
        "station,x,half_breadth,height,line\n"
        "bow,0,0,100,rabbet\n"
        "bow,0,20,500,\n"
        "mid,1000,0,0,\n"
        "mid,1000,420,200,rabbet\n"
        "mid,1000,500,450,\n";
    const auto offsets = readOffsets(marked, "offsets.csv");
    ASSERT_TRUE(offsets);
    EXPECT_EQ(offsets->stations[0].rabbet, 1);
    EXPECT_EQ(offsets->stations[1].rabbet, 2);
    EXPECT_FALSE(readOffsets(good, "offsets.csv")->stations[0].rabbet);
    EXPECT_EQ(lineFor(replaced(marked, "450,", "450,rabbet")),
              "offsets.csv:7: the rabbet of station mid is marked a second time; one point of each "
              "station");
    EXPECT_EQ(lineFor(replaced(marked, "0,0,\n", "0,0,chine\n")),
              "offsets.csv:5: line is \"chine\"; rabbet, or nothing");
}

TEST(ReadOffsets, negativeHalfBreadth) {
    EXPECT_EQ(lineFor(replaced(good, "mid,1000,420,200", "mid,1000,-12,200")),
              "offsets.csv:8: half_breadth is -12 mm; 0 mm or more");
}

TEST(ReadOffsets, cellsThatDoNotRead) {
    EXPECT_EQ(lineFor(replaced(good, "420", "4a20")).substr(0, 27), "offsets.csv:8: half_breadth");
    EXPECT_EQ(lineFor(replaced(good, "420", "250 lb")).substr(0, 27),
              "offsets.csv:8: half_breadth");
    EXPECT_EQ(lineFor(replaced(good, "# waterline: 350", "# waterline: high")).substr(0, 23),
              "offsets.csv:2: waterlin");
    EXPECT_EQ(lineFor(replaced(good, "420", "nan")).substr(0, 27), "offsets.csv:8: half_breadth");
}

TEST(ReadOffsets, allProblemsInOneGo) {
    auto text = replaced(good, "bow,0,20,500", "bow,0,-1,500");
    text = replaced(text, "mid,1000,420,200", "mid,1000,-2,200");
    EXPECT_EQ(lineFor(text),
              "offsets.csv:5: half_breadth is -1 mm; 0 mm or more\n"
              "offsets.csv:8: half_breadth is -2 mm; 0 mm or more");
}

TEST(ReadOffsets, stationRowsApart) {
    EXPECT_EQ(lineFor(std::string(good) + "bow,2000,0,0\nbow,2000,50,400\n"),
              "offsets.csv:10: station bow comes twice; all points of a station together, and each "
              "name once");
}

TEST(ReadOffsets, stationsOutOfOrder) {
    EXPECT_EQ(lineFor(std::string(good) + "aft,900,0,0\naft,900,50,400\n"),
              "offsets.csv:10: station aft at x = 900 mm does not lie aft of station mid at x = "
              "1000 mm; stations in order from forward to aft");
    EXPECT_EQ(lineFor(std::string(good) + "aft,1000,0,0\naft,1000,50,400\n").substr(0, 15),
              "offsets.csv:10:");
}

TEST(ReadOffsets, oneStationTwoPlaces) {
    EXPECT_EQ(lineFor(replaced(good, "mid,1000,420", "mid,1001,420")),
              "offsets.csv:8: x of station mid is 1001 mm, in line 7 it is 1000 mm; one x for all "
              "points of a station");
}

TEST(ReadOffsets, tooFew) {
    EXPECT_EQ(lineFor("# unit: mm\nstation,x,half_breadth,height\n"),
              "offsets.csv:2: there are 0 stations; at least 2 stations");
    EXPECT_EQ(lineFor("# unit: mm\nstation,x,half_breadth,height\na,0,0,0\na,0,5,5\n"),
              "offsets.csv:2: there is 1 station; at least 2 stations");
    EXPECT_EQ(lineFor(replaced(good, "bow,0,20,500\n", "")),
              "offsets.csv:4: station bow has 1 point; at least 2 points");
}

TEST(ReadOffsets, absurdSizes) {
    EXPECT_EQ(lineFor(replaced(good, "mid,1000,500,450", "mid,1000,500,450000")),
              "offsets.csv:9: height is 450000 mm; at most 200 m either way");
    EXPECT_EQ(lineFor(replaced(good, "420", "1e300")).substr(0, 40),
              "offsets.csv:8: half_breadth is 1e300 mm;");
    // Metres given for millimetres: x alone is out of reason.
    EXPECT_NE(lineFor(replaced(good, "unit: mm", "unit: m")).find("x is 1000 m"),
              std::string::npos);
}

TEST(ReadOffsets, crossingNamesBothPieces) {
    EXPECT_EQ(
        lineFor("# unit: mm\nstation,x,half_breadth,height\n"
                "a,0,0,0\na,0,500,0\na,0,500,300\na,0,200,-100\na,0,600,600\n"
                "b,1000,0,0\nb,1000,500,400\n"),
        "offsets.csv:6: the section of station a crosses itself: the piece between lines 5 and "
        "6 meets the piece between lines 3 and 4; points in order from keel to sheer, along a "
        "line that does not cross itself");
}

TEST(ReadOffsets, crossingOfTheJoinToTheCentreline) {
    EXPECT_NE(lineFor("# unit: mm\nstation,x,half_breadth,height\n"
                      "a,0,300,200\na,0,100,100\na,0,100,300\na,0,500,600\n"
                      "b,1000,0,0\nb,1000,500,400\n")
                  .find("meets the join from the centreline to line 3"),
              std::string::npos);
}

TEST(ReadOffsets, doublePoint) {
    EXPECT_EQ(lineFor(replaced(good, "mid,1000,500,450", "mid,1000,420,200")),
              "offsets.csv:9: the point is the same as the one in line 8; each point of a section "
              "once");
}

TEST(ReadOffsets, sheerToKeelIsNoticed) {
    EXPECT_EQ(lineFor("# unit: mm\nstation,x,half_breadth,height\n"
                      "a,0,500,400\na,0,0,0\nb,1000,0,0\nb,1000,500,400\n"),
              "offsets.csv:4: the last point of station a, at 0 mm, is not above the first, at 400 "
              "mm; points in order from keel to sheer");
}

TEST(ReadOffsets, waterlineOutsideTheHull) {
    EXPECT_EQ(
        lineFor(replaced(good, "waterline: 350", "waterline: 460")),
        "offsets.csv:2: waterline is 460 mm; above 0 mm (the lowest point), up to 450 mm (the "
        "lowest station's top)");
}

// Text damaged at random is read or refused with a place, never worse.
TEST(ReadOffsets, damagedTextIsAnsweredInWords) {
    std::mt19937 random(20);
    const std::string base = test::treeFile("tests/hulls/terrin-offsets.csv");
    ASSERT_TRUE(readOffsets(base, "offsets.csv"));
    const std::string letters = "0123456789-+,.#\n\"ex m/'\t\xC3\xFF";
    int refused = 0;
    for (int round = 0; round < 150; ++round) {
        std::string text = base;
        const int edits = 1 + static_cast<int>(random() % 6);
        for (int e = 0; e < edits; ++e) {
            const std::size_t at = random() % text.size();
            switch (random() % 3) {
                case 0:
                    text[at] = letters[random() % letters.size()];
                    break;
                case 1:
                    text.erase(at, 1 + random() % 8);
                    break;
                default:
                    text.insert(at, 1, letters[random() % letters.size()]);
            }
        }
        const auto offsets = readOffsets(text, "offsets.csv");
        if (offsets) {
            EXPECT_TRUE(checkOffsets(*offsets).empty());
            continue;
        }
        ++refused;
        for (const auto& problem : offsets.error()) {
            EXPECT_EQ(problem.where.rfind("offsets.csv:", 0), 0U) << problem.line();
            EXPECT_FALSE(problem.what.empty());
            EXPECT_FALSE(problem.allowed.empty()) << problem.line();
        }
    }
    EXPECT_GT(refused, 75);
    EXPECT_LT(refused, 150);
}

}  // namespace
}  // namespace fayline
