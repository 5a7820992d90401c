// What is read from sets of checks, against a plain search through all of them.

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "derive/derive.h"
#include "small_hull.h"

using namespace fayline;
using namespace fayline::test;

namespace {

bool counts(const Check& check, Basis leading) {
    return check.basis == leading || check.basis == Basis::metal;
}

class CheckSets : public testing::Test {
  protected:
    CheckSets() : deriver(shippedCatalogue()), project(smallHull()) {
        for (const auto& [what, text] :
             std::vector<std::pair<std::string, std::string>>{{"arm.kind", "bolt"},
                                                              {"arm.count", "3"},
                                                              {"arm.diameter", "3/8 in"},
                                                              {"arm.metal", "c65500_h02"},
                                                              {"planking.wood", "iroko"},
                                                              {"planking.thickness", "28 mm"},
                                                              {"planking.strakes", "7"},
                                                              {"plank.kind", "wood_screw"},
                                                              {"plank.count", "2"},
                                                              {"plank.gauge", "No. 12"},
                                                              {"plank.length", "2 in"},
                                                              {"plank.metal", "c65100_h02"}})
            decide(project, what, text);
        results = deriver.derive(project);
    }

    Deriver deriver;
    Project project;
    std::shared_ptr<const Results> results;
};

TEST_F(CheckSets, EveryCheckStandsOnceWorstFirst) {
    std::size_t all = 0;
    for (const auto& set : results->checkSets) {
        all += set->checks.size();
        EXPECT_TRUE(std::is_sorted(set->checks.begin(), set->checks.end(), worseThan));
    }
    ASSERT_GT(all, 500U);
    EXPECT_EQ(results->worstFirst.size(), all);
    EXPECT_TRUE(std::is_sorted(results->worstFirst.begin(), results->worstFirst.end(),
                               [](const Check* a, const Check* b) { return worseThan(*a, *b); }));
    EXPECT_EQ(std::set<const Check*>(results->worstFirst.begin(), results->worstFirst.end()).size(),
              all);
}

TEST_F(CheckSets, TheWorstOfEachThingAndFrameIsTheFirstInTheWholeList) {
    for (const Basis leading : {Basis::us, Basis::ec5}) {
        std::map<std::string, const Check*> byId, byFrame;
        for (const Check* check : results->worstFirst) {
            if (!counts(*check, leading)) continue;
            byId.try_emplace(check->id, check);
            if (!check->frame.empty()) byFrame.try_emplace(check->frame, check);
        }
        const auto each = worstOfEach(*results, leading);
        EXPECT_EQ(each.size(), byId.size());
        for (const Check* check : each) EXPECT_EQ(check, byId.at(check->id));
        const auto frames = worstByFrame(*results, leading);
        EXPECT_EQ(frames.size(), byFrame.size());
        for (const auto& [frame, check] : frames)
            EXPECT_EQ(check, byFrame.at(std::string(frame))) << frame;
    }
}

TEST_F(CheckSets, ChecksOfOneThingAndSetsOfOneFrame) {
    std::map<std::string, std::vector<const Check*>> byId;
    std::map<std::string, std::size_t> atFrame;
    for (const Check* check : results->worstFirst) {
        byId[check->id].push_back(check);
        if (!check->frame.empty()) ++atFrame[check->frame];
    }
    for (const auto& [id, checks] : byId) EXPECT_EQ(checksOf(*results, id), checks) << id;
    EXPECT_TRUE(checksOf(*results, "K.99").empty());
    for (const auto& [frame, number] : atFrame) {
        std::size_t found = 0;
        for (const CheckSet* set : setsAtFrame(*results, frame)) {
            found += static_cast<std::size_t>(
                std::count_if(set->checks.begin(), set->checks.end(),
                              [&, at = frame](const Check& check) { return check.frame == at; }));
        }
        EXPECT_EQ(found, number) << frame;
    }
    EXPECT_TRUE(setsAtFrame(*results, "F999").empty());
}

TEST_F(CheckSets, AnEditKeepsTheSetsItDoesNotTouch) {
    decide(project, "F3.arm.diameter", "1/2 in");
    const auto after = deriver.derive(project);
    int fresh = 0;
    for (const auto& set : after->checkSets) {
        const bool had = std::find(results->checkSets.begin(), results->checkSets.end(), set) !=
                         results->checkSets.end();
        if (had) continue;
        ++fresh;
        EXPECT_EQ(set->frame, "F3");
    }
    EXPECT_EQ(fresh, 1);
}

}  // namespace
