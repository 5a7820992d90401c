#include "derive/derive.h"
#include "rounds.h"

#include <gtest/gtest.h>

#include <random>
#include <set>

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
    ASSERT_EQ(a.frameChecks.size(), b.frameChecks.size());
    for (std::size_t i = 0; i < a.frameChecks.size(); ++i) {
        EXPECT_EQ(a.frameChecks[i]->found, b.frameChecks[i]->found);
        EXPECT_EQ(a.frameChecks[i]->loads, b.frameChecks[i]->loads);
    }
    EXPECT_EQ(a.missing, b.missing);
    EXPECT_EQ(a.problems, b.problems);
}

/// What is still to be decided besides planking and fastenings, which the small hull leaves open.
std::vector<std::string> missingTimbers(const Results& results) {
    std::vector<std::string> names;
    for (const Missing& missing : results.missing) {
        const std::string place = missing.what.substr(0, missing.what.find('.'));
        const std::set<std::string> open{"planking", "heel", "arm",      "floor_bolt",
                                         "plank",    "hood", "garboard", "butt"};
        if (open.count(place) == 0) names.push_back(missing.what);
    }
    return names;
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
    EXPECT_EQ(missingTimbers(*whole), std::vector<std::string>{});
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
    const auto before = deriver.derive(project);
    decide(project, "K.5.diameter", "5/8 in");
    const auto after = deriver.derive(project);
    // A bolt is checked again where its forces are new values, K.5 in every case that loads the
    // keel; the bed in every case that presses on it. The frame K.5 stands at is laid out again,
    // the bolt being in its fastenings' way, and has a narrower hole through its floor.
    int checks = 0;
    for (std::size_t c = 0; c < after->cases.size(); ++c) {
        const CaseLoads& loads = *after->cases[c];
        if (!loadsTheKeel(loads.loadCase)) continue;
        for (std::size_t i = 0; i < loads.bolts.size(); ++i) {
            checks += loads.bolts[i].id == "K.5" || loads.bolts[i] != before->cases[c]->bolts[i];
        }
        checks += loads.bed.has_value() ? 1 : 0;
    }
    EXPECT_GT(checks, 6 * 6);
    EXPECT_EQ(after->runs, (RunCounts{0, 0, 0, 1, 15, checks, 0, 1, 1}));
}

TEST(Derive, AWashersDiameterReRunsOneBoltsChecks) {
    Deriver deriver(shippedCatalogue());
    Project project = smallHull();
    deriver.derive(project);
    decide(project, "K.2.washer_diameter", "100 mm");
    EXPECT_EQ(deriver.derive(project)->runs, (RunCounts{0, 0, 0, 1, 0, 11, 0, 1, 1}));
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
    for (int i = 0; i < rounds(150); ++i) {
        const auto& [what, text] = edits[random() % edits.size()];
        decide(project, what, text);
        const auto incremental = kept.derive(project);
        const auto fresh = Deriver(shippedCatalogue()).derive(project);
        expectSame(*incremental, *fresh);
        if (HasFailure()) FAIL() << "after " << what << "=" << text;
    }
}

TEST(Derive, IncrementalEqualsFreshWithEveryGroupDecided) {
    const Decisions edits{{"planking.thickness", "28 mm"},
                          {"planking.thickness", "22 mm"},
                          {"planking.wood", "western_larch"},
                          {"planking.wood", "iroko"},
                          {"planking.strakes", "7"},
                          {"planking.strakes", "9"},
                          {"plank.gauge", "No. 12"},
                          {"plank.gauge", "No. 14"},
                          {"F6.plank.count", "3"},
                          {"F6.plank.count", ""},
                          {"plank.counterbore", "8 mm"},
                          {"plank.counterbore", ""},
                          {"heel.count", "3"},
                          {"heel.count", "2"},
                          {"F4.P.heel.diameter", "5/8 in"},
                          {"F4.P.heel.diameter", ""},
                          {"frames.heel_detail", "on_top"},
                          {"frames.heel_detail", "beside"},
                          {"arm.diameter", "3/8 in"},
                          {"arm.diameter", "1/2 in"},
                          {"F7.S.arm.count", "2"},
                          {"F7.S.arm.count", ""},
                          {"floor_bolt.count", "1"},
                          {"floor_bolt.count", "2"},
                          {"F5.floor.wood", "iroko"},
                          {"F5.floor.wood", ""},
                          {"F5.floor.kind", "none"},
                          {"F5.floor.kind", ""},
                          {"frames.wood", "white_oak"},
                          {"frames.wood", "iroko"},
                          {"case.swelling.factor", "0.8"},
                          {"case.swelling.factor", ""},
                          {"case.slings.duration", "seven days"},
                          {"case.slings.duration", ""},
                          {"wood.iroko.density", "600 kg/m3"},
                          {"wood.iroko.density", "560 kg/m3"},
                          {"K.3.diameter", "7/8 in"},
                          {"K.3.diameter", ""},
                          {"metal_set.factor", "3"},
                          {"metal_set.factor", ""},
                          {"class.hull.target", "1.5"},
                          {"class.hull.target", ""}};
    std::mt19937 random(20261126);
    Deriver kept(shippedCatalogue());
    Project project = smallHull();
    for (const auto& [what, text] : Decisions{{"frames.wood", "white_oak"},
                                              {"planking.wood", "iroko"},
                                              {"planking.thickness", "25 mm"},
                                              {"planking.strakes", "8"},
                                              {"plank.kind", "wood_screw"},
                                              {"plank.count", "2"},
                                              {"plank.gauge", "No. 14"},
                                              {"plank.length", "2 in"},
                                              {"plank.metal", "c65100_h02"},
                                              {"heel.kind", "bolt"},
                                              {"heel.count", "2"},
                                              {"heel.diameter", "1/2 in"},
                                              {"heel.length", "5 in"},
                                              {"heel.metal", "c65500_h02"},
                                              {"arm.kind", "bolt"},
                                              {"arm.count", "3"},
                                              {"arm.diameter", "3/8 in"},
                                              {"arm.metal", "c65500_h02"},
                                              {"floor_bolt.kind", "bolt"},
                                              {"floor_bolt.count", "1"},
                                              {"floor_bolt.diameter", "1/2 in"},
                                              {"floor_bolt.metal", "c65500_h02"}}) {
        decide(project, what, text);
    }
    std::set<std::string> groups;
    for (int i = 0; i < rounds(120); ++i) {
        const auto& [what, text] = edits[random() % edits.size()];
        decide(project, what, text);
        const auto incremental = kept.derive(project);
        expectSame(*incremental, *Deriver(shippedCatalogue()).derive(project));
        if (HasFailure()) FAIL() << "after " << what << "=" << text;
        for (const Check* check : incremental->worstFirst) groups.insert(check->group);
    }
    EXPECT_EQ(groups, (std::set<std::string>{"arm", "ballast", "floor", "heel", "plank"}));
}

TEST(Derive, EquilibriumOfEveryCase) {
    const auto results = Deriver(shippedCatalogue()).derive(smallHull());
    ASSERT_EQ(results->cases.size(), std::size(allCases));
    for (const auto& loads : results->cases) {
        EXPECT_TRUE(loads->settled) << loads->why;
        EXPECT_LT(loads->residual.relative, 1e-12) << nameOf(loads->loadCase);
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
    EXPECT_EQ(missingTimbers(*results), std::vector<std::string>{"ballast.metal"});
}
