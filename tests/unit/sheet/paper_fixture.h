#pragma once

#include <string>
#include <vector>

#include "derive/derive.h"
#include "derive/paper.h"
#include "small_hull.h"

namespace fayline::test {

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
