#include "derive/derive.h"

#include <gtest/gtest.h>

#include <random>

#include "small_hull.h"

using namespace fayline;
using namespace fayline::test;

namespace {

/// Everything worked out, compared by value and bit for bit.
void expectSame(const Results& a, const Results& b) {
    EXPECT_EQ(*a.structure, *b.structure);
    EXPECT_EQ(*a.ballastBolts, *b.ballastBolts);
    ASSERT_EQ(a.cases.size(), b.cases.size());
    for (std::size_t i = 0; i < a.cases.size(); ++i) EXPECT_EQ(*a.cases[i], *b.cases[i]);
    ASSERT_EQ(a.worstFirst.size(), b.worstFirst.size());
    for (std::size_t i = 0; i < a.worstFirst.size(); ++i)
        EXPECT_EQ(*a.worstFirst[i], *b.worstFirst[i]);
    EXPECT_EQ(a.missing, b.missing);
    EXPECT_EQ(a.problems, b.problems);
}

const Check* find(const Results& results, const std::string& id, LimitStateKind kind, Basis basis,
                  LoadCase loadCase) {
    for (const Check* check : results.worstFirst) {
        if (check->id == id && check->limitState == kind && check->basis == basis &&
            check->loadCase == loadCase)
            return check;
    }
    return nullptr;
}

}  // namespace

TEST(Derive, FromNothingToMarginsSaysWhatIsMissingInOrder) {
    Deriver deriver(shippedCatalogue());
    Project project;
    const auto empty = deriver.derive(project);
    ASSERT_FALSE(empty->missing.empty());
    EXPECT_EQ(empty->missing.front().what, "offsets.…");
    EXPECT_TRUE(empty->worstFirst.empty());
    std::size_t missing = empty->missing.size();
    for (const auto& [what, text] : smallHullDecisions()) {
        decide(project, what, text);
        const auto now = deriver.derive(project);
        EXPECT_LE(now->missing.size(), missing + 3) << what;
        missing = now->missing.size();
    }
    const auto whole = deriver.derive(project);
    EXPECT_TRUE(whole->missing.empty()) << whole->missing.front().says;
    EXPECT_TRUE(whole->problems.empty()) << whole->problems.front().line();
    EXPECT_EQ(whole->ballastBolts->placed.size(), 6U);
    EXPECT_FALSE(whole->worstFirst.empty());
}

TEST(Derive, AThinnerBoltLowersItsOwnMargin) {
    Deriver deriver(shippedCatalogue());
    Project project = smallHull();
    const auto before = deriver.derive(project);
    decide(project, "K.4.diameter", "1/2 in");
    const auto after = deriver.derive(project);
    const auto* thick =
        find(*before, "K.4", LimitStateKind::metal, Basis::metal, LoadCase::knockdownStarboard);
    const auto* thin =
        find(*after, "K.4", LimitStateKind::metal, Basis::metal, LoadCase::knockdownStarboard);
    ASSERT_TRUE(thick && thin);
    if (thick->margin) {
        EXPECT_LT(*thin->margin, *thick->margin);
    }
    EXPECT_LT(*thin->working, *thick->working);
}

TEST(Derive, ABoltsDiameterReRunsLayoutLoadsAndChecksAndNothingElse) {
    Deriver deriver(shippedCatalogue());
    Project project = smallHull();
    deriver.derive(project);
    decide(project, "K.5.diameter", "5/8 in");
    const RunCounts runs = deriver.derive(project)->runs;
    // All six bolts share anew in the six cases that tip the ballast; in the four others that load
    // the keel only K.5 is checked again. The bed is checked again in the nine that press on it. The
    // frame K.5 stands at has a narrower hole through its floor.
    EXPECT_EQ(runs, (RunCounts{0, 0, 0, 1, 13, 6 * 6 + 4 + 9, 0, 0, 1}));
}

TEST(Derive, AWashersDiameterReRunsOneBoltsChecks) {
    Deriver deriver(shippedCatalogue());
    Project project = smallHull();
    deriver.derive(project);
    decide(project, "K.2.washer_diameter", "100 mm");
    EXPECT_EQ(deriver.derive(project)->runs, (RunCounts{0, 0, 0, 1, 0, 10}));
}

TEST(Derive, AReasonReRunsNothing) {
    Deriver deriver(shippedCatalogue());
    Project project = smallHull();
    deriver.derive(project);
    decide(project, "K.2.reason", "the rod was in the shed");
    EXPECT_EQ(deriver.derive(project)->runs, RunCounts{});
}

TEST(Derive, IncrementalEqualsFreshOverRandomEdits) {
    const Decisions edits{{"K.1.diameter", "5/8 in"},
                          {"K.1.diameter", ""},
                          {"K.3.metal", "c63000"},
                          {"bolts.count", "8"},
                          {"bolts.count", "6"},
                          {"floors.throat", "200 mm"},
                          {"floors.throat", "160 mm"},
                          {"F5.floor.kind", "none"},
                          {"F5.floor.kind", ""},
                          {"keel.wood", "iroko"},
                          {"keel.wood", "white_oak"},
                          {"case.knockdown_port.factor", "1.2"},
                          {"case.knockdown_port.factor", ""},
                          {"K.2.through", "between"},
                          {"K.2.through", ""},
                          {"K.6.x", "4000 mm"},
                          {"K.6.x", ""},
                          {"ballast.mass", "1900 kg"},
                          {"ballast.mass", ""},
                          {"offsets.S2.3.height", "880 mm"},
                          {"offsets.S2.3.height", "850 mm"},
                          {"wood.white_oak.density", "690 kg/m3"},
                          {"metal_set.factor", "3"},
                          {"metal_set.factor", ""}};
    std::mt19937 random(20261125);
    Deriver kept(shippedCatalogue());
    Project project = smallHull();
    for (int i = 0; i < 150; ++i) {
        const auto& [what, text] = edits[random() % edits.size()];
        decide(project, what, text);
        const auto incremental = kept.derive(project);
        const auto fresh = Deriver(shippedCatalogue()).derive(project);
        expectSame(*incremental, *fresh);
        if (HasFailure()) FAIL() << "after " << what << "=" << text;
    }
}

TEST(Derive, EquilibriumOfEveryCase) {
    const auto results = Deriver(shippedCatalogue()).derive(smallHull());
    ASSERT_EQ(results->cases.size(), std::size(allCases));
    for (const auto& loads : results->cases) {
        EXPECT_TRUE(loads->settled) << loads->why;
        EXPECT_LT(loads->residual.relative, 1e-9) << nameOf(loads->loadCase);
        double moment_Nm = 0;
        for (const auto& frame : loads->frames) moment_Nm += inNewtonMetres(frame.keelMoment);
        EXPECT_NEAR(moment_Nm, inNewtonMetres(loads->totalMoment.x),
                    1e-9 * std::abs(moment_Nm) + 1e-9);
    }
}

TEST(Derive, EveryCheckWithAFigureExplainsItself) {
    const auto results = Deriver(shippedCatalogue()).derive(smallHull());
    for (const Check* check : results->worstFirst) {
        if (!check->working) continue;
        const auto trace = explain(*results, *check);
        ASSERT_TRUE(trace.has_value()) << check->id << " " << nameOf(check->limitState);
        EXPECT_FALSE(trace->formula.empty());
        EXPECT_FALSE(trace->clause.empty());
        for (const TraceLine& line : trace->lines) EXPECT_FALSE(line.meaning.empty());
    }
}

TEST(Derive, ABareHullHasFiguresAndNoChecks) {
    Project project = smallHull();
    project.ballast = {};
    const auto results = Deriver(shippedCatalogue()).derive(project);
    EXPECT_TRUE(results->afloat->body.has_value()) << results->afloat->why;
    EXPECT_TRUE(results->worstFirst.empty());
    EXPECT_EQ(results->missing.size(), 1U);
    EXPECT_EQ(results->missing.front().what, "ballast.metal");
}
