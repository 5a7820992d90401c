#include "catalogue/kept.h"

#include <gtest/gtest.h>

#include "catalogue_files.h"

namespace fayline {
namespace {

const Catalogue& shipped() {
    static const Catalogue catalogue = shippedCatalogue();
    return catalogue;
}

TEST(Kept, EveryEntryReadsBackTheSame) {
    int entries = 0;
    for (const auto& [key, text] : shipped().rowTexts) {
        const auto& [kind, id] = key;
        ASSERT_EQ(catalogueRow(shipped(), kind, id).value(), text);
        const auto entry = readKeptRow(kind, id, text);
        ASSERT_TRUE(entry) << id << ": " << entry.error().front().line();
        switch (kind) {
            case CatalogueKind::wood:
                EXPECT_EQ(std::get<Wood>(*entry), shipped().woods.at(id));
                break;
            case CatalogueKind::metal:
                EXPECT_EQ(std::get<Metal>(*entry), shipped().metals.at(id));
                break;
            case CatalogueKind::thread:
                EXPECT_EQ(std::get<Thread>(*entry), shipped().threads.at(id));
                break;
            case CatalogueKind::rod:
                EXPECT_EQ(std::get<RodStock>(*entry), shipped().rods.at(id));
                break;
            case CatalogueKind::nut:
                EXPECT_EQ(std::get<Nut>(*entry), shipped().nuts.at(id));
                break;
            case CatalogueKind::washer:
                EXPECT_EQ(std::get<Washer>(*entry), shipped().washers.at(id));
                break;
            case CatalogueKind::rule:
                EXPECT_EQ(std::get<RuleLimit>(*entry), shipped().rules.at(id));
                break;
        }
        const auto differences = compareKept(shipped(), kind, id, text);
        ASSERT_TRUE(differences);
        EXPECT_TRUE(differences->empty()) << id;
        ++entries;
    }
    EXPECT_GT(entries, 200);
}

TEST(Kept, UnknownIdNamesTheNearest) {
    const auto row = catalogueRow(shipped(), CatalogueKind::wood, "white_oka");
    ASSERT_FALSE(row);
    EXPECT_EQ(row.error().line(), "woods.csv: there is no wood white_oka; did you mean white_oak?");
}

TEST(Kept, ChangedRowsAreListed) {
    auto kept = catalogueRow(shipped(), CatalogueKind::wood, "white_oak").value();
    const std::string now = "white_oak,shear,13.8 MPa,12 %";
    kept.replace(kept.find(now), now.size(), "white_oak,shear,13.1 MPa,12 %");
    kept += "white_oak,us_shear,180 psi,,x,judgement\r\n";
    const auto differences = compareKept(shipped(), CatalogueKind::wood, "white_oak", kept);
    ASSERT_TRUE(differences);
    const EntryDifference changed{"value of shear, 12 %", "13.1 MPa", "13.8 MPa"};
    EXPECT_NE(std::find(differences->begin(), differences->end(), changed), differences->end());
    const EntryDifference gone{"value of us_shear", "180 psi", std::nullopt};
    EXPECT_NE(std::find(differences->begin(), differences->end(), gone), differences->end());
    EXPECT_EQ(differences->size(), 1U + 4U);  // wood, value, source, standing of the added row
}

TEST(Kept, WideRowsAndVanishedEntries) {
    auto kept = catalogueRow(shipped(), CatalogueKind::nut, "hex_1_2").value();
    kept.replace(kept.find("7/16 in"), 7, "3/8 in");
    const auto differences = compareKept(shipped(), CatalogueKind::nut, "hex_1_2", kept);
    ASSERT_TRUE(differences);
    EXPECT_EQ(*differences, (std::vector<EntryDifference>{{"height", "3/8 in", "7/16 in"}}));
    EXPECT_EQ(*compareKept(shipped(), CatalogueKind::nut, "hex_5_2", kept),
              (std::vector<EntryDifference>{{"entry", "hex_5_2", std::nullopt}}));
}

TEST(Kept, ColumnOrderDoesNotMatter) {
    const std::string kept =
        "name,thread,series,pitch,per_inch,nominal,standing,source\n"
        "M6,m6,metric_coarse,1 mm,,6 mm,read,ISO 261; sizes as in EN ISO 898-1 via "
        "usefastener.com\n";
    EXPECT_TRUE(compareKept(shipped(), CatalogueKind::thread, "m6", kept)->empty());
    EXPECT_EQ(std::get<Thread>(readKeptRow(CatalogueKind::thread, "m6", kept).value()),
              shipped().threads.at("m6"));
}

TEST(Kept, SpoiltTextIsRefused) {
    const auto row = catalogueRow(shipped(), CatalogueKind::metal, "monel_400").value();
    EXPECT_FALSE(readKeptRow(CatalogueKind::metal, "monel_500", row));
    EXPECT_FALSE(readKeptRow(CatalogueKind::wood, "monel_400", row));
    EXPECT_FALSE(readKeptRow(CatalogueKind::metal, "monel_400", ""));
    const auto two =
        row + "x,name,y,z,read\r\nx,family,iron,z,read\r\nx,density,7 g/cm3,z,read\r\n";
    const auto refused = readKeptRow(CatalogueKind::metal, "monel_400", two);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().front().what, "the text holds other entries too");
    EXPECT_FALSE(compareKept(shipped(), CatalogueKind::metal, "monel_400", "\"open"));
}

}  // namespace
}  // namespace fayline
