// What a hull's record gathers: every check once, each distinct joint with its worst.
#include "derive/record.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "derive/derive.h"
#include "record_things.h"
#include "small_hull.h"

namespace fayline {
namespace {

struct Worked {
    std::shared_ptr<const Catalogue> catalogue = test::shippedCatalogue();
    Project project = test::smallHull();
    std::shared_ptr<const Results> results;

    Worked() {
        for (const auto& [what, text] : test::Decisions{{"arm.kind", "bolt"},
                                                        {"arm.count", "3"},
                                                        {"arm.diameter", "3/8 in"},
                                                        {"arm.metal", "c65500_h02"},
                                                        {"planking.thickness", "1 in"},
                                                        {"planking.strakes", "8"},
                                                        {"planking.wood", "western_redcedar"},
                                                        {"frames.wood", "white_oak"},
                                                        {"plank.kind", "wood_screw"},
                                                        {"plank.count", "2"},
                                                        {"plank.gauge", "12"},
                                                        {"plank.length", "1 3/4 in"},
                                                        {"plank.metal", "c65100_h02"}})
            test::decide(project, what, text);
        results = Deriver(catalogue).derive(project);
    }
};

TEST(RecordThings, EveryCheckBelongsToExactlyOneAndItsWorstIsTheWorst) {
    const Worked hull;
    const auto things = thingsOf(*hull.results, {});
    ASSERT_GE(things.size(), 4U);
    std::map<std::string, const RecordThing*> byId;
    for (const RecordThing& thing : things) {
        for (const std::string& id : thing.ids) EXPECT_TRUE(byId.emplace(id, &thing).second) << id;
    }
    std::size_t checked = 0;
    for (const auto& set : hull.results->checkSets) {
        for (const Check& check : set->checks) {
            ++checked;
            ASSERT_TRUE(byId.count(check.id)) << check.id << " is in no part of the record";
            const RecordThing& thing = *byId[check.id];
            const auto same =
                std::find_if(thing.worst.begin(), thing.worst.end(), [&](const Check* w) {
                    return w->basis == check.basis && w->limitState == check.limitState;
                });
            ASSERT_NE(same, thing.worst.end());
            EXPECT_FALSE(worseThan(check, **same)) << check.id << " is worse than " << (*same)->id;
        }
    }
    EXPECT_GT(checked, 100U);
    EXPECT_LT(things.size(), byId.size() / 4) << "rolled up";
}

TEST(RecordThings, AStationsAreItsOwn) {
    const Worked hull;
    const std::string frame = hull.results->boltInputs.front()->frame;
    const auto things = thingsOf(*hull.results, frame);
    ASSERT_FALSE(things.empty());
    std::set<std::string> groups;
    for (const RecordThing& thing : things) {
        groups.insert(thing.group);
        EXPECT_EQ(thing.frames, std::vector<std::string>{frame});
        for (const Check* check : thing.worst) EXPECT_EQ(check->frame, frame);
    }
    EXPECT_TRUE(groups.count("ballast"));
    EXPECT_TRUE(groups.count("plank"));
    EXPECT_FALSE(
        stationRecord("F99", hull.project, *hull.results, *hull.catalogue, {}).has_value());
}

TEST(RecordThings, FramesInARowAreSaidAsARange) {
    const Worked hull;
    EXPECT_EQ(frameRanges({"F3", "F2", "F4", "F6", "F7"}, *hull.results), "F2 to F4, F6, F7");
    EXPECT_EQ(frameRanges({"F5"}, *hull.results), "F5");
}

TEST(RecordJoint, CatalogueNamesComeBackOnlyWhereTheFiguresAreTheCatalogues) {
    const Worked hull;
    const auto& woods = hull.catalogue->woods;
    const auto& metals = hull.catalogue->metals;
    Joint joint;
    joint.members = {jointMember(woods.at("western_redcedar")), jointMember(woods.at("white_oak"))};
    joint.members[0].thickness = inches(1.0);
    joint.fastener.metal = fastenerMetal(metals.at("c65500_h02"));
    joint.fastener.metal.factor = 3.0;
    NamedJoint named =
        namedJoint(joint, "c65500_h02", *hull.catalogue, Basis::us, UnitSystem::inches);
    EXPECT_EQ(named.woods[0], "western_redcedar");
    EXPECT_EQ(named.woods[1], "white_oak");
    EXPECT_EQ(named.metal, "c65500_h02");
    joint.members[1].gravity->value.value = 0.6;
    joint.fastener.metal.yield->value = megapascals(300);
    named = namedJoint(joint, "c65500_h02", *hull.catalogue, Basis::us, UnitSystem::inches);
    EXPECT_FALSE(named.woods[1]);
    EXPECT_FALSE(named.metal);
}

TEST(RecordHull, TheOpeningNamesTheWorstOfEveryGroupAndTheWorkingsFollow) {
    const Worked hull;
    const Record record = hullRecord(hull.project, *hull.results, *hull.catalogue,
                                     {{"keel.sided", "6 in"}, {"offsets.1.x", "0 mm"}}, {});
    const auto things = thingsOf(*hull.results, {});
    std::set<std::string> groups;
    for (const RecordThing& thing : things) groups.insert(thing.group);
    const record::Table* summary = nullptr;
    for (const record::Block& block : record.opening) {
        if (const auto* table = std::get_if<record::Table>(&block)) summary = table;
    }
    ASSERT_NE(summary, nullptr);
    EXPECT_EQ(summary->rows.size(), groups.size());
    std::size_t workings = 0, expected = 0;
    for (const record::Block& block : record.blocks) {
        if (const auto* working = std::get_if<record::Working>(&block)) {
            ++workings;
            EXPECT_FALSE(working->formula.empty());
            EXPECT_FALSE(working->clause.empty()) << working->title;
            EXPECT_FALSE(working->figures.empty());
            EXPECT_NE(working->result.find("can carry"), std::string::npos);
        }
    }
    for (const RecordThing& thing : things) {
        for (const Check* check : thing.worst) expected += check->working.has_value();
    }
    EXPECT_EQ(workings, expected) << "one for each limit state of each distinct joint";
    const std::string text = textOf(record);
    EXPECT_NE(text.find("keel.sided"), std::string::npos);
    EXPECT_EQ(text.find("offsets.1.x"), std::string::npos) << "offsets have a file of their own";
}

}  // namespace
}  // namespace fayline
