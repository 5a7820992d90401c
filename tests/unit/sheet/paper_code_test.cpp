// The revision code: what changes it and what does not.
#include <gtest/gtest.h>

#include <map>
#include <regex>
#include <set>

#include "paper_fixture.h"

namespace fayline {
namespace {

using test::PaperHull;

std::map<std::string, std::string> codes(const PaperHull& hull) {
    std::map<std::string, std::string> found;
    for (const Sheet& sheet : hull.sheets()) found[sheet.id] = sheet.revision;
    return found;
}

TEST(PaperCode, IsEightLettersAndDigitsNoneOfThemAlike) {
    std::set<std::string> all;
    for (const auto& [id, code] : codes(PaperHull())) {
        EXPECT_TRUE(std::regex_match(code, std::regex("[2-9A-HJKMNP-TV-Z]{8}"))) << code;
        all.insert(code);
    }
    EXPECT_EQ(all.size(), codes(PaperHull()).size()) << "every sheet has a code of its own";
}

TEST(PaperCode, ComesBackWhenADecisionIsTakenBack) {
    PaperHull hull;
    const auto before = codes(hull);
    test::decide(hull.project, "F5.arm.diameter", "1/2 in");
    hull.work();
    const auto after = codes(hull);
    EXPECT_NE(before.at("F5"), after.at("F5"));
    EXPECT_EQ(before.at("F6"), after.at("F6")) << "another frame's sheet says what it said";
    EXPECT_EQ(before.at("F4"), after.at("F4"));
    EXPECT_EQ(before.at("keel"), after.at("keel"));
    test::decide(hull.project, "F5.arm.diameter", "");
    hull.work();
    EXPECT_EQ(codes(hull), before);
}

TEST(PaperCode, FollowsAChangeThatMovesOneFigureOnly) {
    PaperHull hull;
    const auto before = codes(hull);
    test::decide(hull.project, "K.3.offset", "35 mm");
    hull.work();
    EXPECT_NE(codes(hull).at("keel"), before.at("keel"));
    EXPECT_EQ(codes(hull).at("planks"), before.at("planks"));
}

TEST(PaperCode, IsTheSameOnBothPapersAtAnyTimeByAnyProgram) {
    const PaperHull hull;
    std::vector<Step> steps(1);
    steps[0].title = "arm diameter to 3/8 in";
    steps[0].at = "2026-11-25T10:42:07Z";
    steps[0].changes = {{"arm.diameter", std::nullopt, "3/8 in"}};
    PaperOptions one, other;
    other.paper = PaperSize::letter;
    other.printed = "2031-01-01 00:00 UTC";
    other.program = "fayline 9.9.9";
    other.steps = &steps;
    for (const SheetName& name : sheetNames(hull.project, *hull.results))
        EXPECT_EQ(hull.sheet(name.id, one).revision, hull.sheet(name.id, other).revision)
            << name.id;
    other.units = UnitSystem::millimetres;
    EXPECT_NE(hull.sheet("F5", one).revision, hull.sheet("F5", other).revision)
        << "other figures, another code";
}

TEST(PaperCode, SaysTheLastChangeThatConcernsTheSheet) {
    const PaperHull hull;
    std::vector<Step> steps(3);
    steps[0].title = "F5 arm diameter to 3/8 in";
    steps[0].changes = {{"F5.arm.diameter", std::nullopt, "3/8 in"}};
    steps[1].title = "F6 arm diameter to 3/8 in";
    steps[1].changes = {{"F6.arm.diameter", std::nullopt, "3/8 in"}};
    steps[2].title = "K.2 diameter to 1 in";
    steps[2].changes = {{"K.2.diameter", std::nullopt, "1 in"}};
    for (Step& step : steps) step.at = "2026-11-25T10:42:07Z";
    PaperOptions options;
    options.steps = &steps;
    const auto says = [&](const std::string& id, const std::string& words) {
        const Sheet sheet = hull.sheet(id, options);
        for (const DrawItem& item : sheet.pages[0].drawing.items) {
            const auto* text = std::get_if<shape::Text>(&item.shape);
            if (text != nullptr && text->text.find(words) != std::string::npos) return true;
        }
        return false;
    };
    EXPECT_TRUE(says("F5", "F5 arm"));
    EXPECT_TRUE(says("F6", "F6 arm"));
    EXPECT_TRUE(says("keel", "K.2 diameter"));
}

TEST(PaperCode, AFullHashGivesSpreadCodes) {
    EXPECT_EQ(revisionCode(std::string(64, '0')), "22222222");
    EXPECT_NE(revisionCode(std::string(64, 'f')), revisionCode("e" + std::string(63, 'f')));
}

}  // namespace
}  // namespace fayline
