#include "project/decide.h"

#include <gtest/gtest.h>

using namespace fayline;

namespace {

Catalogue tinyCatalogue() {
    Catalogue catalogue;
    catalogue.woods["white_oak"].id = "white_oak";
    catalogue.rowTexts[{CatalogueKind::wood, "white_oak"}] = "wood,property\r\nwhite_oak,name\r\n";
    catalogue.metals["lead_pure"].family = MetalFamily::lead;
    catalogue.rowTexts[{CatalogueKind::metal, "lead_pure"}] =
        "metal,property\r\nlead_pure,name\r\n";
    catalogue.metals["c65500_h02"].family = MetalFamily::bronze;
    catalogue.rowTexts[{CatalogueKind::metal, "c65500_h02"}] =
        "metal,property\r\nc65500_h02,name\r\n";
    return catalogue;
}

const StepBy by{"builder", "", "2026-11-25T10:00:00Z"};

struct Bench {
    Journal journal;
    Project project;
    Catalogue catalogue = tinyCatalogue();

    Result<Step> prepare(const std::vector<std::pair<std::string, std::string>>& typed) const {
        return prepareDecisions(journal, project, catalogue, typed, by);
    }
    void decide(const std::vector<std::pair<std::string, std::string>>& typed) {
        const auto step = prepare(typed);
        ASSERT_TRUE(step) << step.error().line();
        for (const Change& change : step->changes)
            ASSERT_TRUE(applyChange(project, change.what, change.newText));
        ASSERT_TRUE(journal.append(*step));
    }
};

}  // namespace

TEST(Decide, ARangeIsOneStepWithAChangeForEach) {
    Bench bench;
    bench.decide({{"frames.count", "12"}});
    const auto step = bench.prepare({{"F8-F10.floor.kind", "sawn"}});
    ASSERT_TRUE(step);
    EXPECT_EQ(step->changes.size(), 3U);
    EXPECT_EQ(step->title, "F8 floor to sawn and 2 more");
}

TEST(Decide, SameValueAgainIsNoStep) {
    Bench bench;
    bench.decide({{"keel.sided", "200 mm"}});
    const auto step = bench.prepare({{"keel.sided", "200 mm"}});
    ASSERT_FALSE(step);
    EXPECT_EQ(step.error().code, "nothing");
}

TEST(Decide, EmptyTextGoesBackToTheRule) {
    Bench bench;
    bench.decide({{"keel.sided", "200 mm"}});
    const auto step = bench.prepare({{"keel.sided", " "}});
    ASSERT_TRUE(step);
    EXPECT_EQ(step->changes.front().oldText, "200 mm");
    EXPECT_FALSE(step->changes.front().newText);
}

TEST(Decide, OneBadValueRefusesAll) {
    Bench bench;
    const auto step = bench.prepare({{"keel.sided", "200 mm"}, {"keel.moulded", "deep"}});
    ASSERT_FALSE(step);
    EXPECT_EQ(step.error().where, "keel.moulded");
}

TEST(Decide, TheCatalogueRowIsKeptInTheSameStepOnce) {
    Bench bench;
    bench.decide({{"keel.wood", "White oak"}});
    EXPECT_EQ(bench.project.kept.count("wood.white_oak"), 1U);
    const auto again = bench.prepare({{"floors.wood", "white_oak"}});
    ASSERT_TRUE(again);
    EXPECT_EQ(again->changes.size(), 1U);
}

TEST(Decide, AMetalTheCatalogueLacksIsRefusedWithTheNearest) {
    const auto step = Bench{}.prepare({{"bolts.metal", "c65500_h2"}});
    ASSERT_FALSE(step);
    EXPECT_NE(step.error().line().find("did you mean c65500_h02?"), std::string::npos);
    EXPECT_FALSE(Bench{}.prepare({{"keel.wood", "plastic"}}));
}

TEST(Decide, AMetalTheCatalogueLacksIsAnsweredInWholeSentences) {
    const auto none = Bench{}.prepare({{"bolts.metal", "unobtainium"}});
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().allowed,
              "a metal of the catalogue. Your own: give its figures first, like "
              "metal.unobtainium.yield");
}

TEST(Decide, AKeptRowMustReadAsAnEntryOfItsCatalogue) {
    for (const char* what : {"catalogue.wood.white_oak", "catalogue.fish.cod", "catalogue.wood"}) {
        const auto step = Bench{}.prepare({{what, "x"}});
        ASSERT_FALSE(step) << what;
        EXPECT_EQ(step.error().where, what);
        EXPECT_FALSE(step.error().allowed.empty());
    }
    const std::string row =
        "wood,property,value,moisture,source,standing\r\n"
        "white_oak,name,White oak (Quercus alba),,common and botanical name,read\r\n"
        "white_oak,family,hardwood,,Wood Handbook FPL-GTR-190 Table 5-3a,read\r\n"
        "white_oak,specific_gravity,0.68,12 %,Wood Handbook FPL-GTR-190 Table 5-3a,read\r\n";
    const auto kept = Bench{}.prepare({{"catalogue.wood.white_oak", row}});
    EXPECT_TRUE(kept) << kept.error().line();
    EXPECT_FALSE(Bench{}.prepare({{"catalogue.wood.red_oak", row}}));
}

TEST(Decide, TheBuildersOwnWoodNeedsItsFiguresFirst) {
    Bench bench;
    bench.decide({{"wood.bog_oak.density", "700 kg/m3"}});
    bench.decide({{"keel.wood", "bog oak"}});
    EXPECT_EQ(bench.project.keel.wood, "bog oak");
}

TEST(Decide, BallastIsCastOfLeadOrIron) {
    EXPECT_FALSE(Bench{}.prepare({{"ballast.metal", "c65500_h02"}}));
    EXPECT_TRUE(Bench{}.prepare({{"ballast.metal", "lead_pure"}}));
}

TEST(Decide, ANoteAloneIsANoteStepAndBesideDecisionsTheirReason) {
    const auto note = Bench{}.prepare({{"note", "asked the yard about bolts"}});
    ASSERT_TRUE(note);
    EXPECT_EQ(note->kind, StepKind::note);
    const auto both = Bench{}.prepare({{"keel.sided", "200 mm"}, {"note", "as built"}});
    ASSERT_TRUE(both);
    EXPECT_EQ(both->why, "as built");
}

TEST(Decide, LaterChangesSeeEarlierOnesOfTheSameStep) {
    EXPECT_TRUE(Bench{}.prepare({{"frames.count", "4"}, {"F4.floor.kind", "sawn"}}));
    EXPECT_FALSE(Bench{}.prepare({{"F4.floor.kind", "sawn"}, {"frames.count", "4"}}));
}
