// Sizes and places on the page: legible, inside the margins, nothing over anything else.
#include <gtest/gtest.h>

#include <set>

#include "found.h"
#include "paper_fixture.h"
#include "sheet/font_metrics.h"

namespace fayline {
namespace {

using test::Decisions;
using test::PaperHull;

std::string overlapOn(const SheetPage& page) {
    const auto all = texts(page.drawing);
    std::vector<RectMm> boxes;
    for (const shape::Text& text : all) boxes.push_back(textBounds(text));
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        for (std::size_t j = i + 1; j < boxes.size(); ++j) {
            if (boxes[i].overlaps(boxes[j])) return all[i].text + " | " + all[j].text;
        }
    }
    return {};
}

std::string outsideOf(const SheetPage& page) {
    const SizeMm size = page.drawing.size;
    for (const shape::Text& text : texts(page.drawing)) {
        const RectMm box = textBounds(text);
        if (box.left < 15.0 || box.top < 7.0 || box.right > size.width - 10.0 ||
            box.bottom > size.height - 7.0)
            return text.text;
    }
    const RectMm all = boundsOf(page.drawing);
    if (all.left < 4.0 || all.top < 4.0 || all.right > size.width - 4.0 ||
        all.bottom > size.height - 4.0)
        return "something that is not text";
    return {};
}

/// Hulls that strain the pages: few and many holes, long names, another unit.
std::vector<Decisions> hulls() {
    return {{},
            {{"arm.count", "12"}, {"heel.count", "6"}},
            {{"arm.count", "1"}, {"heel.kind", ""}},
            {{"arm.kind", ""}, {"heel.kind", ""}, {"floor_bolt.kind", ""}, {"plank.kind", ""}},
            {{"plank.count", "3"}, {"plank.kind", "bolt"}, {"plank.diameter", "1/4 in"}},
            {{"floor_bolt.count", "4"}, {"bolts.count", "8"}},
            {{"hull.name", "Honourable Company's Cutter Aberystwyth Castle of Milford"},
             {"heel.metal", "aluminium_bronze_c63000"},
             {"hull.basis", "ec5"}},
            {{"arm.kind", "rivet"}, {"arm.section", "square"}, {"arm.diameter", "5/16 in"}},
            test::everyGroup(),
            {{"K.3.diameter", "1/4 in"}, {"frames.moulded", "90 mm"}, {"planking.strakes", "14"}}};
}

class PaperLayout : public testing::TestWithParam<std::tuple<PaperSize, UnitSystem>> {};

TEST_P(PaperLayout, NothingOverlapsNothingLeavesTheMargins) {
    const auto [paper, units] = GetParam();
    int pages = 0;
    for (const Decisions& more : hulls()) {
        const PaperHull hull(more);
        for (const Sheet& sheet : hull.sheets(paper, units)) {
            ASSERT_FALSE(sheet.pages.empty()) << sheet.id;
            for (const SheetPage& page : sheet.pages) {
                ++pages;
                EXPECT_EQ(page.drawing.size, sizeOf(paper));
                EXPECT_EQ(overlapOn(page), "") << sheet.id << " page " << page.number;
                EXPECT_EQ(outsideOf(page), "") << sheet.id << " page " << page.number;
            }
        }
    }
    EXPECT_GT(pages, 200);
}

TEST_P(PaperLayout, NoCapitalIsLowerThanItMayBe) {
    const auto [paper, units] = GetParam();
    for (const Decisions& more : hulls()) {
        const PaperHull hull(more);
        for (const Sheet& sheet : hull.sheets(paper, units)) {
            for (const SheetPage& page : sheet.pages) {
                for (const shape::Text& text : texts(page.drawing))
                    EXPECT_GE(text.letterMm, 3.5) << sheet.id << ": " << text.text;
            }
        }
    }
}

TEST_P(PaperLayout, FiguresToSetOutByAreFiveMillimetresHigh) {
    const auto [paper, units] = GetParam();
    const PaperHull hull;
    for (const Sheet& sheet : hull.sheets(paper, units)) {
        std::map<std::string, int> large;
        for (const SheetPage& page : sheet.pages) {
            for (const DrawItem& item : page.drawing.items) {
                const auto* text = std::get_if<shape::Text>(&item.shape);
                if (text != nullptr && text->letterMm >= 5.0 && !item.id.empty()) ++large[item.id];
            }
            for (const std::string& id : page.holes) {
                // Mark, along and across, in drawing and table; on the plank book one figure each.
                const int least = sheet.kind == SheetKind::planks ? 1
                                  : sheet.kind == SheetKind::keel ? 5
                                                                  : 6;
                EXPECT_GE(large[id], least) << sheet.id << " " << id;
            }
        }
    }
}

TEST_P(PaperLayout, EveryPageIsNumberedNamedAndCarriesTheCaution) {
    const auto [paper, units] = GetParam();
    const PaperHull hull(Decisions{{"arm.count", "12"}});
    for (const Sheet& sheet : hull.sheets(paper, units)) {
        for (const SheetPage& page : sheet.pages) {
            std::string all;
            for (const shape::Text& text : texts(page.drawing)) all += text.text + " ";
            EXPECT_NE(all.find("page " + std::to_string(page.number) + " of " +
                               std::to_string(sheet.pages.size())),
                      std::string::npos)
                << sheet.id;
            EXPECT_NE(all.find(sheet.revision), std::string::npos) << sheet.id;
            EXPECT_NE(all.find("naval architect"), std::string::npos) << sheet.id;
            EXPECT_NE(all.find(units == UnitSystem::inches ? "inches" : "mm"), std::string::npos);
            if (!page.side.empty()) {
                EXPECT_NE(all.find(page.side == "port" ? "PORT" : "STARBOARD"), std::string::npos);
            }
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Papers, PaperLayout,
                         testing::Combine(testing::Values(PaperSize::a4, PaperSize::letter),
                                          testing::Values(UnitSystem::inches,
                                                          UnitSystem::millimetres)),
                         [](const auto& one) {
                             return std::string(nameOf(std::get<0>(one.param))) +
                                    (std::get<1>(one.param) == UnitSystem::inches ? "Inches"
                                                                                  : "Millimetres");
                         });

}  // namespace
}  // namespace fayline
