#pragma once

#include <string>
#include <vector>

#include "derive/derive.h"
#include "derive/paper.h"
#include "small_hull.h"

namespace fayline::test {

/// Decisions for what lies on no frame: butts, plank ends, garboard, two joints of the backbone.
inline Decisions everyGroup() {
    Decisions d{{"planking.longest", "2 m"}};
    for (const char* group : {"butt", "hood", "garboard"}) {
        const std::string name = group;
        d.emplace_back(name + ".kind", "wood_screw");
        d.emplace_back(name + ".count", "2");
        d.emplace_back(name + ".gauge", "12");
        d.emplace_back(name + ".length", "2 in");
    }
    for (const char* joint : {"stem_scarph", "sternpost_heel_of_the_deadwood"}) {
        const std::string name = std::string("B.") + joint;
        const bool fore = joint[3] == 'm';
        d.emplace_back(name + ".kind", fore ? "bolt" : "drift");
        d.emplace_back(name + ".count", "5");
        d.emplace_back(name + ".diameter", "5/8 in");
        d.emplace_back(name + ".length", "10 in");
        d.emplace_back(name + ".fore_x", fore ? "600 mm" : "4800 mm");
        d.emplace_back(name + ".fore_height", "350 mm");
        d.emplace_back(name + ".aft_x", fore ? "1100 mm" : "5300 mm");
        d.emplace_back(name + ".aft_height", "320 mm");
        d.emplace_back(name + ".upper", fore ? "stem" : "deadwood");
        d.emplace_back(name + ".lower", "keel");
    }
    return d;
}

/// A hull with every group that frames, floors and planks can have, worked out.
struct PaperHull {
    Project project;
    std::shared_ptr<const Results> results;

    explicit PaperHull(const Decisions& more = {}) : project(smallHull()) {
        const Decisions groups{{"heel.kind", "wood_screw"},
                               {"heel.count", "2"},
                               {"heel.gauge", "14"},
                               {"heel.length", "3 in"},
                               {"heel.metal", "c65100_h02"},
                               {"heel.counterbore", "3/8 in"},
                               {"arm.kind", "bolt"},
                               {"arm.count", "3"},
                               {"arm.diameter", "3/8 in"},
                               {"arm.metal", "c65500_h02"},
                               {"floor_bolt.kind", "drift"},
                               {"floor_bolt.count", "2"},
                               {"floor_bolt.diameter", "1/2 in"},
                               {"floor_bolt.length", "10 in"},
                               {"planking.strakes", "6"},
                               {"planking.thickness", "25 mm"},
                               {"plank.kind", "wood_screw"},
                               {"plank.count", "2"},
                               {"plank.gauge", "12"},
                               {"plank.length", "2 in"}};
        for (const Decisions& some : {groups, more}) {
            for (const auto& [what, text] : some) decide(project, what, text);
        }
        work();
    }
    void work() { results = Deriver(shippedCatalogue()).derive(project); }

    [[nodiscard]] std::vector<Sheet> sheets(PaperSize paper = PaperSize::a4,
                                            std::optional<UnitSystem> units = {}) const {
        PaperOptions options;
        options.paper = paper;
        options.units = units;
        options.printed = "2026-11-25 10:42 UTC";
        return sheetsOf(project, *results, *shippedCatalogue(), options);
    }
    [[nodiscard]] Sheet sheet(const std::string& id, PaperOptions options = {}) const {
        return sheetNamed(id, project, *results, *shippedCatalogue(), options).value_or(Sheet{});
    }
};

}  // namespace fayline::test
