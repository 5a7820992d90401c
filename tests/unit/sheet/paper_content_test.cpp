// What the sheets of a whole hull say.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>
#include <regex>
#include <set>

#include "found.h"
#include "paper_fixture.h"

namespace fayline {
namespace {

using test::Decisions;
using test::PaperHull;

std::string allText(const Sheet& sheet) {
    std::string all;
    for (const SheetPage& page : sheet.pages) {
        for (const shape::Text& text : texts(page.drawing)) all += text.text + " ";
    }
    return all;
}

std::vector<std::string> drilled(const std::vector<Sheet>& sheets) {
    std::vector<std::string> ids;
    for (const Sheet& sheet : sheets) {
        for (const SheetPage& page : sheet.pages)
            ids.insert(ids.end(), page.holes.begin(), page.holes.end());
    }
    std::sort(ids.begin(), ids.end());
    return ids;
}

std::vector<std::string> holeIds(const Results& results) {
    std::vector<std::string> ids;
    for (const Hole* hole : allHoles(results)) ids.push_back(hole->id);
    std::sort(ids.begin(), ids.end());
    return ids;
}

TEST(PaperHoles, EachIsDrilledFromExactlyOnePage) {
    const PaperHull hull;
    EXPECT_GT(holeIds(*hull.results).size(), 200U);
    EXPECT_EQ(drilled(hull.sheets()), holeIds(*hull.results));
    const PaperHull many({{"arm.count", "9"},
                          {"heel.count", "5"},
                          {"plank.count", "3"},
                          {"F5.P.arm.count", "1"},
                          {"F6.S.heel.count", "0"}});
    EXPECT_EQ(drilled(many.sheets(PaperSize::letter)), holeIds(*many.results));
}

TEST(PaperHoles, ThoseOnNoFrameHaveTheirPageToo) {
    const PaperHull hull(test::everyGroup());
    std::map<std::string, int> groups;
    for (const Hole* hole : allHoles(*hull.results)) ++groups[hole->group];
    for (const char* group : {"butt", "hood", "garboard", "backbone"})
        EXPECT_GT(groups[group], 0) << group;
    EXPECT_EQ(drilled(hull.sheets()), holeIds(*hull.results));
    const Sheet backbone = hull.sheet("backbone");
    EXPECT_EQ(backbone.pages.size(), 2U) << "a page for each joint";
    EXPECT_NE(allText(backbone).find("Stem scarph"), std::string::npos);
    const std::string book = allText(hull.sheet("planks"));
    for (const char* word : {"Butts", "Plank ends", "Garboard to keel"})
        EXPECT_NE(book.find(word), std::string::npos) << word;
}

TEST(PaperHoles, CountIsTheTakeOffs) {
    const PaperHull hull;
    const TakeOff takeOff = takeOffOf(hull.project, *hull.results, *test::shippedCatalogue());
    EXPECT_EQ(static_cast<std::size_t>(takeOff.count), drilled(hull.sheets()).size());
}

TEST(PaperHoles, CountsAgreeWhateverIsDecided) {
    std::mt19937 dice(11);
    const auto pick = [&](std::initializer_list<const char*> of) {
        return std::string(*(of.begin() + static_cast<std::ptrdiff_t>(dice() % of.size())));
    };
    for (int round = 0; round < 12; ++round) {
        Decisions more;
        for (const char* group : {"heel", "arm", "floor_bolt", "plank", "F4.heel", "F6.P.arm",
                                  "F7.S.arm", "strake2.plank"}) {
            const std::string name = group;
            more.emplace_back(name + ".count", pick({"0", "1", "2", "3", "5"}));
            more.emplace_back(name + ".kind", pick({"bolt", "drift", "rivet"}));
            more.emplace_back(name + ".diameter", pick({"3/8 in", "10 mm", "1/2 in"}));
            more.emplace_back(name + ".length", pick({"4 in", "150 mm"}));
        }
        more.emplace_back("bolts.count", pick({"3", "5", "8"}));
        const PaperHull hull(more);
        const auto sheets = hull.sheets();
        EXPECT_EQ(drilled(sheets), holeIds(*hull.results)) << "round " << round;
        const TakeOff takeOff = takeOffOf(hull.project, *hull.results, *test::shippedCatalogue());
        EXPECT_EQ(static_cast<std::size_t>(takeOff.count), holeIds(*hull.results).size());
    }
}

TEST(PaperFrame, EachHoleStandsOnceInTheTableAndOnceInTheDrawing) {
    const PaperHull hull;
    const Sheet sheet = hull.sheet("F5");
    std::map<std::string, int> said;
    std::map<std::string, int> ringed;
    for (const SheetPage& page : sheet.pages) {
        for (const DrawItem& item : page.drawing.items) {
            const auto* text = std::get_if<shape::Text>(&item.shape);
            if (text != nullptr && !item.id.empty() && text->weight == shape::Weight::bold)
                ++said[item.id];
            const auto* mark = std::get_if<shape::Mark>(&item.shape);
            if (mark != nullptr && !item.id.empty() && !mark->filled) ++ringed[item.id];
        }
    }
    std::size_t holes = 0;
    for (const SheetPage& page : sheet.pages) {
        for (const std::string& id : page.holes) {
            ++holes;
            EXPECT_EQ(said[id], 2) << id << ": its mark, beside the drawing and in the table";
            EXPECT_EQ(ringed[id], 1) << id;
            EXPECT_EQ(id.find(page.side == "port" ? ".P." : ".S."), 2U)
                << id << " on the page of the other side";
        }
    }
    EXPECT_EQ(holes, 10U) << "two heel screws and three arm bolts a side";
}

TEST(PaperFrame, FirstPortThenStarboardEachWithItsOwnFigures) {
    const PaperHull hull(Decisions{{"F5.S.arm.count", "2"}});
    const Sheet sheet = hull.sheet("F5");
    ASSERT_EQ(sheet.pages.size(), 2U);
    EXPECT_EQ(sheet.pages[0].side, "port");
    EXPECT_EQ(sheet.pages[1].side, "starboard");
    EXPECT_EQ(sheet.pages[0].holes.size(), 5U);
    EXPECT_EQ(sheet.pages[1].holes.size(), 4U);
    EXPECT_EQ(sheet.fileName, "F5.pdf");
    const std::string text = allText(sheet);
    for (const char* word : {"PORT",
                             "STARBOARD",
                             "Before you drill",
                             "Datum A",
                             "Check",
                             "UP",
                             "OUTBOARD",
                             "BOW",
                             "drilled",
                             "driven",
                             "Scrap first",
                             "STOP and ask",
                             "Margins",
                             "naval architect",
                             "surveyor",
                             "class rules",
                             "local codes prevail",
                             "page 1 of 2",
                             "page 2 of 2",
                             "Drill only if the code is current",
                             "inches"})
        EXPECT_NE(text.find(word), std::string::npos) << word;
}

TEST(PaperFrame, PortIsHatchedStarboardIsBlackTheTwoOnOppositeEdges) {
    const Sheet sheet = PaperHull().sheet("F5");
    const auto port = found<shape::Hatch>(sheet.pages[0].drawing, Role::label);
    ASSERT_EQ(port.size(), 1U);
    EXPECT_LT(port[0].points[0].x, 20.0);
    EXPECT_TRUE(found<shape::Hatch>(sheet.pages[1].drawing, Role::label).empty());
    const auto areas = found<shape::Polygon>(sheet.pages[1].drawing, Role::label);
    const bool black = std::any_of(areas.begin(), areas.end(), [](const shape::Polygon& p) {
        return p.filled && p.points[0].x > 195.0 && p.points[2].y - p.points[0].y > 200.0;
    });
    EXPECT_TRUE(black);
}

TEST(PaperEmpty, ASheetWithNothingToDrillSaysSo) {
    const PaperHull hull(
        {{"arm.kind", ""}, {"heel.kind", ""}, {"floor_bolt.kind", ""}, {"plank.kind", ""}});
    const Sheet frame = hull.sheet("F5");
    EXPECT_TRUE(frame.empty);
    EXPECT_NE(allText(frame).find("Nothing to drill"), std::string::npos);
    EXPECT_TRUE(hull.sheet("F5.floor").empty);
    EXPECT_NE(allText(hull.sheet("F5.floor")).find("Nothing to drill"), std::string::npos);
    EXPECT_TRUE(hull.sheet("planks").empty);
    EXPECT_NE(allText(hull.sheet("planks")).find("Nothing to drill"), std::string::npos);
    EXPECT_FALSE(hull.sheet("keel").empty);
    const PaperHull bare(Decisions{{"bolts.count", ""}});
    EXPECT_NE(allText(bare.sheet("keel")).find("Nothing holds the ballast on"), std::string::npos);
}

TEST(PaperKeel, ListsEveryBoltWithItsMarginAndASignOffForThisRevision) {
    const PaperHull hull;
    const Sheet keel = hull.sheet("keel");
    EXPECT_EQ(keel.pages.size(), 1U);
    const std::string text = allText(keel);
    for (int i = 1; i <= 6; ++i)
        EXPECT_NE(text.find("K." + std::to_string(i) + " "), std::string::npos) << i;
    EXPECT_NE(text.find("Reviewed to revision " + keel.revision + " and no other"),
              std::string::npos);
    for (const char* word : {"knockdown port", "knockdown starboard", "washer", "socket", "grip",
                             "plumb", "signature", "naval architect"})
        EXPECT_NE(text.find(word), std::string::npos) << word;
    EXPECT_TRUE(std::regex_search(text, std::regex("×[0-9]+\\.[0-9]")));
}

TEST(PaperKeel, AShortMarginIsSaidInAWordAndInBold) {
    const PaperHull hull({{"K.3.diameter", "1/4 in"}, {"K.3.washer_diameter", "15 mm"}});
    const Sheet keel = hull.sheet("keel");
    bool bold = false;
    for (const SheetPage& page : keel.pages) {
        for (const shape::Text& text : texts(page.drawing))
            bold = bold || (text.text.find("SHORT") != std::string::npos &&
                            text.weight == shape::Weight::bold);
    }
    EXPECT_TRUE(bold);
}

TEST(PaperPlanks, EveryCrossingHasItsFigures) {
    const PaperHull hull;
    const Sheet book = hull.sheet("planks");
    const std::string text = allText(book);
    EXPECT_NE(text.find("Strake 1, garboard"), std::string::npos);
    EXPECT_NE(text.find("Strake 6, sheer strake"), std::string::npos);
    std::set<std::string> sides;
    std::map<std::string, int> figures;
    for (const SheetPage& page : book.pages) {
        sides.insert(page.side);
        for (const DrawItem& item : page.drawing.items) {
            const auto* figure = std::get_if<shape::Text>(&item.shape);
            if (figure != nullptr && !item.id.empty()) ++figures[item.id];
        }
        for (const std::string& id : page.holes)
            EXPECT_EQ(id.find(page.side == "port" ? ".P." : ".S.") != std::string::npos, true);
    }
    EXPECT_EQ(sides, (std::set<std::string>{"port", "starboard"}));
    for (const Hole* hole : allHoles(*hull.results)) {
        if (hole->group == "plank") {
            EXPECT_EQ(figures[hole->id], 1) << hole->id;
        }
    }
}

TEST(PaperUnits, MillimetresHaveNoDecimalsAndInchesNone) {
    const PaperHull hull;
    const std::regex decimal("[0-9][.,][0-9]");
    for (const UnitSystem units : {UnitSystem::millimetres, UnitSystem::inches}) {
        for (const Sheet& sheet : hull.sheets(PaperSize::a4, units)) {
            for (const SheetPage& page : sheet.pages) {
                for (const shape::Text& text : texts(page.drawing)) {
                    // Margins are ratios: ×0.84.
                    const std::string lengths =
                        std::regex_replace(text.text, std::regex("×[0-9]+\\.[0-9]+"), "");
                    EXPECT_FALSE(std::regex_search(lengths, decimal))
                        << sheet.id << ": " << text.text;
                }
            }
        }
    }
    EXPECT_NE(allText(PaperHull(Decisions{{"hull.units", "millimetres"}}).sheet("F5")).find("mm"),
              std::string::npos);
}

TEST(PaperFloor, BallastBoltsStandThereButAreDrilledFromTheKeelSheet) {
    const PaperHull hull;
    for (const Hole* hole : allHoles(*hull.results)) {
        if (hole->group != "ballast") continue;
        const Sheet floor = hull.sheet(hole->frame + ".floor");
        EXPECT_NE(allText(floor).find(hole->id + " "), std::string::npos) << hole->id;
        EXPECT_NE(allText(floor).find("keel sheet"), std::string::npos);
        for (const SheetPage& page : floor.pages)
            EXPECT_EQ(std::count(page.holes.begin(), page.holes.end(), hole->id), 0);
    }
}

}  // namespace
}  // namespace fayline
