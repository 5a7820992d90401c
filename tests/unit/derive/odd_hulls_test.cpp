// Hulls that lack something, or have more of it than usual: each is worked out as far as it goes,
// and says in plain words what is missing.

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "derive/derive.h"
#include "small_hull.h"

using namespace fayline;
using namespace fayline::test;

namespace {

void group(Project& project, const std::string& name,
           const std::vector<std::pair<const char*, const char*>>& fields) {
    for (const auto& [field, text] : fields) decide(project, name + "." + field, text);
}

/// The small hull with every group of fastenings decided.
Project whole() {
    Project project = smallHull();
    group(
        project, "planking",
        {{"thickness", "20 mm"}, {"strakes", "8"}, {"wood", "western_larch"}, {"longest", "3 m"}});
    decide(project, "frames.wood", "white_oak");
    for (const char* name : {"plank", "hood", "garboard", "butt"})
        group(project, name,
              {{"kind", "wood_screw"},
               {"count", "2"},
               {"gauge", "No. 8"},
               {"length", "40 mm"},
               {"metal", "c65100_h02"}});
    group(project, "heel",
          {{"kind", "drift"},
           {"count", "1"},
           {"diameter", "8 mm"},
           {"length", "120 mm"},
           {"metal", "c65500_h02"}});
    for (const char* name : {"arm", "floor_bolt"})
        group(project, name,
              {{"kind", "bolt"}, {"count", "2"}, {"diameter", "10 mm"}, {"metal", "c65500_h02"}});
    return project;
}

std::shared_ptr<const Results> resultsOf(const Project& project) {
    auto results = Deriver(shippedCatalogue()).derive(project);
    std::set<std::string> ids;
    for (const Hole* hole : allHoles(*results))
        EXPECT_TRUE(ids.insert(hole->id).second) << hole->id;
    for (const Check* check : results->worstFirst) {
        if (check->group == "ballast") continue;
        if (check->status == Status::unloaded || check->status == Status::unknown) {
            EXPECT_FALSE(check->why.empty()) << check->id;
        }
    }
    return results;
}

bool misses(const Results& results, const std::string& what) {
    return std::any_of(results.missing.begin(), results.missing.end(),
                       [&](const Missing& m) { return m.what == what && !m.says.empty(); });
}

const Check* worst(const Results& results, const std::string& id, LoadCase loadCase) {
    for (const Check* check : results.worstFirst) {
        if (check->id == id && check->loadCase == loadCase) return check;
    }
    return nullptr;
}

std::size_t count(const Results& results, const std::string& wanted) {
    const auto holes = allHoles(results);
    return static_cast<std::size_t>(std::count_if(
        holes.begin(), holes.end(), [&](const Hole* hole) { return hole->group == wanted; }));
}

}  // namespace

TEST(OddHulls, WithoutBallastSheStandsOnHerKeel) {
    Project project = whole();
    project.ballast = {};
    project.bolts = {};
    const auto results = resultsOf(project);
    EXPECT_TRUE(misses(*results, "ballast.metal"));
    EXPECT_EQ(count(*results, "ballast"), 0U);
    const Check* arm = worst(*results, "F5.P.arm.1", LoadCase::onKeel);
    ASSERT_NE(arm, nullptr);
    EXPECT_GT(*arm->demand, Force{});
    EXPECT_EQ(worst(*results, "F5.P.arm.1", LoadCase::knockdownPort), nullptr);
}

TEST(OddHulls, WithoutFramesNothingIsFastenedAndTheyAreAskedFor) {
    for (const char* frames : {"", "0"}) {
        Project project = whole();
        decide(project, "frames.count", frames);
        const auto results = resultsOf(project);
        EXPECT_TRUE(misses(*results, "frames.count")) << frames;
        EXPECT_TRUE(allHoles(*results).empty());
        EXPECT_TRUE(results->problems.empty());
    }
}

TEST(OddHulls, TwoHundredFramesAreAllFastened) {
    Project project = whole();
    decide(project, "frames.first", "30 mm");
    decide(project, "frames.spacing", "30 mm");
    decide(project, "frames.count", "200");
    decide(project, "frames.sided", "14 mm");
    decide(project, "floors.sided", "14 mm");
    decide(project, "floors.kind", "none");
    decide(project, "F60.floor.kind", "sawn");
    const auto results = resultsOf(project);
    ASSERT_EQ(results->structure->frames.size(), 200U);
    const auto framed = std::count_if(results->curves.begin(), results->curves.end(),
                                      [](const auto& curve) { return curve != nullptr; });
    EXPECT_EQ(framed, 200);
    EXPECT_EQ(count(*results, "plank"), 200U * 8U * 2U * 2U);
}

// Nobody has decided on floors: what the keel carries goes through the heels of the frames over it.
TEST(OddHulls, WithoutFloorsTheHeelsCarryAll) {
    Project project = whole();
    project.ballast = {};
    project.bolts = {};
    decide(project, "floors.kind", "none");
    const auto results = resultsOf(project);
    EXPECT_TRUE(misses(*results, "floors.kind"));
    EXPECT_EQ(count(*results, "arm"), 0U);
    EXPECT_EQ(count(*results, "floor"), 0U);
    const Check* heel = worst(*results, "F5.P.heel.1", LoadCase::onKeel);
    ASSERT_NE(heel, nullptr);
    EXPECT_GT(*heel->demand, Force{});
    // All of it, no band: twelve frames over the keel, two heels each, one drift in each.
    const double boat_N = results->afloat->body->displacement.si() * 9.80665;
    double least_N = 1e12, most_N = 0;
    for (int i = 1; i <= 12; ++i) {
        const Check* one = worst(*results, "F" + std::to_string(i) + ".P.heel.1", LoadCase::onKeel);
        ASSERT_NE(one, nullptr) << i;
        const double factor = one->basis == Basis::ec5 ? 1.35 : 1.0;
        least_N = std::min(least_N, inNewtons(*one->demand) / factor);
        most_N = std::max(most_N, inNewtons(*one->demand) / factor);
        EXPECT_EQ(one->why.find("twentieth"), std::string::npos);
    }
    EXPECT_LT(least_N, boat_N / 24 * 1.001);
    EXPECT_GT(most_N, boat_N / 24 * 0.999);
}

TEST(OddHulls, WithBallastButWithoutFloorsNothingCarriesTheBallast) {
    Project project = whole();
    decide(project, "floors.kind", "none");
    const auto results = resultsOf(project);
    EXPECT_TRUE(misses(*results, "floors.kind"));
    for (const auto& loads : results->cases) {
        if (loads->loadCase != LoadCase::knockdownPort) continue;
        EXPECT_FALSE(loads->carried);
        EXPECT_NE(loads->why.find("nothing carries this"), std::string::npos);
    }
    EXPECT_EQ(worst(*results, "F5.P.heel.1", LoadCase::knockdownPort), nullptr);
    EXPECT_NE(worst(*results, "F5.P.heel.1", LoadCase::onKeel), nullptr);
}

TEST(OddHulls, AFrameWithoutAFloorLeavesTheLoadToTheOthers) {
    Project project = whole();
    const auto before = resultsOf(project);
    decide(project, "F5.floor.kind", "none");
    const auto results = resultsOf(project);
    EXPECT_EQ(count(*results, "arm"), count(*before, "arm") - 4);
    const Check* heel = worst(*results, "F5.P.heel.1", LoadCase::knockdownPort);
    ASSERT_NE(heel, nullptr);
    EXPECT_EQ(heel->status, Status::unloaded);
    EXPECT_NE(heel->why.find("no load of the keel reaches"), std::string::npos);
    EXPECT_GT(*worst(*results, "F6.P.arm.1", LoadCase::onKeel)->demand,
              *worst(*before, "F6.P.arm.1", LoadCase::onKeel)->demand);
}

TEST(OddHulls, AnArmOnOneSideAloneIsAFindingAndCarriesMore) {
    Project project = whole();
    const auto before = resultsOf(project);
    decide(project, "F6.S.arm.count", "0");
    const auto results = resultsOf(project);
    const auto findings = allFindings(*results);
    EXPECT_TRUE(std::any_of(findings.begin(), findings.end(), [](const Finding* f) {
        return f->kind == "floor" && f->says.find("port alone") != std::string::npos;
    }));
    EXPECT_GT(*worst(*results, "F6.P.arm.1", LoadCase::knockdownPort)->demand,
              *worst(*before, "F6.P.arm.1", LoadCase::knockdownPort)->demand);
    EXPECT_EQ(worst(*results, "F6.S.arm.1", LoadCase::knockdownPort), nullptr);
}

TEST(OddHulls, PlanksNarrowerThanTwoFasteningsSayHowManyFit) {
    Project project = whole();
    decide(project, "planking.strakes", "60");
    const auto results = resultsOf(project);
    const auto findings = allFindings(*results);
    const auto narrow = std::count_if(findings.begin(), findings.end(), [](const Finding* f) {
        return f->kind == "edge" && f->says.find("2 fastenings want") != std::string::npos &&
               !f->cure.empty() && f->missing && *f->missing > Length{};
    });
    EXPECT_GT(narrow, 60);
}
