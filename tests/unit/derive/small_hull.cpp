#include "small_hull.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "project/fields.h"

namespace fayline::test {
namespace {

std::string catalogueText(CatalogueKind kind) {
    std::ifstream file(std::string(FAYLINE_SOURCE_DIR) + "/resources/catalogue/" +
                       std::string(catalogueFileName(kind)));
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

}  // namespace

std::shared_ptr<const Catalogue> shippedCatalogue() {
    static const std::shared_ptr<const Catalogue> catalogue = [] {
        using enum CatalogueKind;
        const auto read = readCatalogue(
            {catalogueText(wood), catalogueText(metal), catalogueText(thread), catalogueText(rod),
             catalogueText(nut), catalogueText(CatalogueKind::washer), catalogueText(rule)});
        EXPECT_TRUE(read.has_value());
        return std::make_shared<const Catalogue>(read.value());
    }();
    return catalogue;
}

Decisions smallHullDecisions() {
    Decisions d{{"hull.name", "Small"}, {"hull.waterline", "900 mm"}};
    const double half_mm[5] = {150, 600, 800, 700, 400};
    for (int s = 0; s < 5; ++s) {
        const std::string id = "S" + std::to_string(s);
        d.emplace_back("offsets." + id + ".x", std::to_string(s * 1500) + " mm");
        for (int p = 0; p < 5; ++p) {
            const double t = p / 4.0;
            const std::string place = "offsets." + id + "." + std::to_string(p + 1);
            d.emplace_back(place + ".half_breadth",
                           std::to_string(60 + (half_mm[s] - 60) * t * (2 - t)) + " mm");
            d.emplace_back(place + ".height", std::to_string(200 + 1300 * t) + " mm");
        }
    }
    const Decisions rest{{"keel.wood", "white_oak"},
                         {"keel.from", "500 mm"},
                         {"keel.to", "5500 mm"},
                         {"keel.underside_fore", "200 mm"},
                         {"keel.underside_aft", "200 mm"},
                         {"keel.sided", "180 mm"},
                         {"keel.moulded", "140 mm"},
                         {"frames.first", "600 mm"},
                         {"frames.spacing", "400 mm"},
                         {"frames.count", "12"},
                         {"frames.sided", "40 mm"},
                         {"frames.moulded", "50 mm"},
                         {"floors.wood", "white_oak"},
                         {"floors.sided", "80 mm"},
                         {"floors.throat", "160 mm"},
                         {"floors.kind", "sawn"},
                         {"F1.floor.kind", "none"},
                         {"F12.floor.kind", "none"},
                         {"ballast.metal", "lead_antimony_3"},
                         {"ballast.from", "1300 mm"},
                         {"ballast.to", "4300 mm"},
                         {"ballast.breadth_middle", "180 mm"},
                         {"ballast.breadth_fore", "120 mm"},
                         {"ballast.breadth_aft", "120 mm"},
                         {"ballast.bottom_breadth", "140 mm"},
                         {"ballast.depth_middle", "350 mm"},
                         {"bolts.count", "6"},
                         {"bolts.diameter", "3/4 in"},
                         {"bolts.metal", "c65500_h02"},
                         {"bolts.offset", "25 mm"},
                         {"bolts.washer_diameter", "80 mm"},
                         {"bolts.washer_thickness", "6 mm"}};
    d.insert(d.end(), rest.begin(), rest.end());
    return d;
}

Project projectOf(const Decisions& decisions) {
    Project project;
    for (const auto& [what, text] : decisions) decide(project, what, text);
    return project;
}

void decide(Project& project, const std::string& what, const std::string& text) {
    const auto done = applyChange(project, what, text.empty() ? std::nullopt : std::optional(text));
    EXPECT_TRUE(done.has_value()) << (done ? "" : done.error().line());
}

}  // namespace fayline::test
