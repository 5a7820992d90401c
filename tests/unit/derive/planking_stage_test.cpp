// Plank ends on a raked stem, and which decisions of the fastenings are still missing.

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "derive/derive.h"
#include "small_hull.h"

using namespace fayline;
using namespace fayline::test;

namespace {

std::vector<std::string> missingOf(const Project& project) {
    const auto results = Deriver(shippedCatalogue()).derive(project);
    std::vector<std::string> names;
    for (const Missing& missing : results->missing) names.push_back(missing.what);
    return names;
}

bool has(const std::vector<std::string>& names, const std::string& name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

void screws(Project& project, const std::string& group, const std::string& count) {
    decide(project, group + ".kind", "wood_screw");
    decide(project, group + ".count", count);
    decide(project, group + ".gauge", "No. 8");
    decide(project, group + ".length", "40 mm");
    decide(project, group + ".metal", "c65100_h02");
}

/// The small hull with a stem that rakes from 200 mm up at S1 to 1200 mm at S0.
Project rakedHull() {
    Decisions decisions = smallHullDecisions();
    for (auto& [what, text] : decisions) {
        if (what == "keel.from") text = "1600 mm";
        if (what == "frames.first") text = "700 mm";
        if (what == "ballast.from") text = "1800 mm";
    }
    Project project = projectOf(decisions);
    for (int p = 0; p < 5; ++p) {
        const std::string place = "offsets.S0." + std::to_string(p + 1);
        decide(project, place + ".height", std::to_string(1200 + 75 * p) + " mm");
        decide(project, place + ".half_breadth", std::to_string(30 + 10 * p) + " mm");
    }
    decide(project, "planking.thickness", "20 mm");
    decide(project, "planking.strakes", "8");
    screws(project, "hood", "2");
    return project;
}

double distanceToHull_mm(const Results& results, const Point& place) {
    const Section section = results.hull->surface->sectionAt(place.x);
    double least_mm = 1e9;
    for (std::size_t i = 0; i + 1 < section.points.size(); ++i) {
        const SectionPoint& a = section.points[i];
        const SectionPoint& b = section.points[i + 1];
        for (int k = 0; k <= 50; ++k) {
            const double t = k / 50.0;
            const Length y = a.y + t * (b.y - a.y);
            const Length z = a.z + t * (b.z - a.z);
            least_mm = std::min(
                least_mm, std::hypot(inMillimetres(y - abs(place.y)), inMillimetres(z - place.z)));
        }
    }
    return least_mm;
}

}  // namespace

TEST(PlankEnds, StrakesEndAlongARakedStemOneAboveTheOther) {
    const auto results = Deriver(shippedCatalogue()).derive(rakedHull());
    ASSERT_TRUE(results->planking);
    std::map<int, const Hole*> fore;
    std::set<std::string> ids;
    for (const Hole& hole : results->planking->holes) {
        EXPECT_TRUE(ids.insert(hole.id).second) << hole.id;
        // A frame of the offsets' own curve, and a diameter of the stagger's slope.
        EXPECT_LT(distanceToHull_mm(*results, hole.start), 5) << hole.id;
        if (hole.frame == "F1" && hole.side == "starboard" && hole.id.ends_with(".1"))
            fore[std::stoi(hole.joins.front().substr(6))] = &hole;
    }
    EXPECT_EQ(results->planking->holes.size(), 2U * 2U * 8U * 2U);
    ASSERT_EQ(fore.size(), 8U);
    for (int k = 2; k <= 8; ++k) {
        EXPECT_LT(fore[k]->start.x, fore[k - 1]->start.x + millimetres(0.5)) << k;
        EXPECT_GT(fore[k]->start.z, fore[k - 1]->start.z) << k;
    }
    EXPECT_GT(fore[1]->start.x - fore[8]->start.x, millimetres(300));
    EXPECT_EQ(fore[1]->joins.back(), "stem");
}

TEST(PlankEnds, TheSameEndsAreNotWorkedOutAnew) {
    Deriver deriver(shippedCatalogue());
    Project project = rakedHull();
    const auto before = deriver.derive(project);
    decide(project, "keel.wood", "iroko");
    EXPECT_EQ(deriver.derive(project)->planking, before->planking);
    decide(project, "hood.count", "1");
    EXPECT_EQ(deriver.derive(project)->planking->holes.size(), 2U * 2U * 8U);
}

TEST(MissingFastenings, GroupsNotBegunAreAskedForOnceInABuildersOrder) {
    auto names = missingOf(smallHull());
    const std::vector<std::string> order{"heel.kind",  "arm.kind",  "floor_bolt.kind",
                                         "plank.kind", "hood.kind", "garboard.kind"};
    names.erase(std::remove_if(names.begin(), names.end(),
                               [&](const std::string& name) { return !has(order, name); }),
                names.end());
    EXPECT_EQ(names, order);
    EXPECT_FALSE(has(missingOf(smallHull()), "butt.kind"));
    Project project = smallHull();
    decide(project, "planking.longest", "4 m");
    EXPECT_TRUE(has(missingOf(project), "butt.kind"));
}

TEST(MissingFastenings, AGroupBegunSaysWhatItLacks) {
    Project project = smallHull();
    decide(project, "heel.kind", "wood_screw");
    decide(project, "heel.count", "2");
    decide(project, "arm.kind", "drift");
    auto names = missingOf(project);
    for (const char* name : {"heel.gauge", "heel.length", "heel.metal", "arm.count", "arm.diameter",
                             "arm.length", "arm.metal"})
        EXPECT_TRUE(has(names, name)) << name;
    for (const char* name : {"heel.kind", "heel.count", "heel.diameter", "arm.kind", "arm.gauge"})
        EXPECT_FALSE(has(names, name)) << name;
    screws(project, "heel", "2");
    names = missingOf(project);
    EXPECT_TRUE(std::none_of(names.begin(), names.end(),
                             [](const std::string& name) { return name.rfind("heel.", 0) == 0; }));
    decide(project, "plank.count", "0");
    EXPECT_FALSE(has(missingOf(project), "plank.kind"));
}

TEST(MissingFastenings, SinglePlacesAndJointsSayWhatTheyLack) {
    Project project = smallHull();
    decide(project, "F3.P.arm.kind", "bolt");
    decide(project, "F3.P.arm.count", "2");
    decide(project, "F3.P.arm.metal", "c65500_h02");
    decide(project, "B.scarph.kind", "bolt");
    decide(project, "B.scarph.fore_x", "1 m");
    const auto names = missingOf(project);
    EXPECT_TRUE(has(names, "F3.P.arm.diameter"));
    EXPECT_FALSE(has(names, "arm.kind"));
    EXPECT_FALSE(has(names, "F3.P.arm.length"));
    for (const char* name : {"B.scarph.count", "B.scarph.diameter", "B.scarph.length",
                             "B.scarph.metal", "B.scarph.fore_height", "B.scarph.aft_x"})
        EXPECT_TRUE(has(names, name)) << name;
}
