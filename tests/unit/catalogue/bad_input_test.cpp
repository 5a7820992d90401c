#include <gtest/gtest.h>

#include <random>

#include "catalogue_files.h"
#include "rounds.h"

namespace fayline {
namespace {

/// One slip in one file: what stands there, what is put in its place, and what must be said of it.
struct Slip {
    const char* name;
    std::string CatalogueTexts::*file;
    const char* from;
    const char* to;
    const char* code;
    const char* says;  ///< part of the line
};

void PrintTo(const Slip& slip, std::ostream* out) {
    *out << slip.name;
}

class BadCatalogue : public testing::TestWithParam<Slip> {};

TEST_P(BadCatalogue, IsRefusedWithPlaceAndReason) {
    const auto& slip = GetParam();
    auto texts = catalogueTexts();
    auto& text = texts.*slip.file;
    const auto place = text.find(slip.from);
    ASSERT_NE(place, std::string::npos) << "the row to spoil is not there";
    text.replace(place, std::string(slip.from).size(), slip.to);

    const auto catalogue = readCatalogue(texts);
    ASSERT_FALSE(catalogue);
    std::string lines;
    bool found = false;
    for (const auto& problem : catalogue.error()) {
        lines += problem.code + " " + problem.line() + "\n";
        found = found ||
                (problem.code == slip.code && problem.line().find(slip.says) != std::string::npos &&
                 problem.where.find(".csv:") != std::string::npos && !problem.allowed.empty());
    }
    EXPECT_TRUE(found) << lines;
}

using T = CatalogueTexts;
constexpr const char* oakShear = "white_oak,shear,13.8 MPa,12 %,";

INSTANTIATE_TEST_SUITE_P(
    Slips, BadCatalogue,
    testing::Values(
        Slip{"unknown_column", &T::woods, "wood,property,", "wood,proprety,",
             "catalogue.column_unknown",
             "woods.csv:3: column proprety is not known; did you mean property?"},
        Slip{"missing_column", &T::rods, ",stock_length,", ",length_of_bar,",
             "catalogue.column_missing", "no column stock_length"},
        Slip{"unknown_property", &T::woods, "white_oak,modulus_of_rupture,",
             "white_oak,modulus_of_rupure,", "catalogue.property_unknown",
             "did you mean modulus_of_rupture?"},
        Slip{"unknown_metal_property", &T::metals, "c65500_h02,yield_min", "c65500_h02,yeild_min",
             "catalogue.property_unknown",
             "metals.csv:5: property: yeild_min is not known; did you mean yield_min?"},
        Slip{"no_unit", &T::woods, oakShear, "white_oak,shear,13.8,12 %,", "unit.missing",
             "woods.csv:12: value"},
        Slip{"wrong_unit", &T::woods, oakShear, "white_oak,shear,13.8 mm,12 %,", "unit.wrong_kind",
             "value"},
        Slip{"out_of_limits", &T::woods, oakShear, "white_oak,shear,13800 MPa,12 %,",
             "catalogue.out_of_limits", "13800 MPa; 0.1 MPa to 80 MPa"},
        Slip{"negative", &T::woods, oakShear, "white_oak,shear,-13.8 MPa,12 %,",
             "catalogue.out_of_limits", "-13.8 MPa"},
        Slip{"no_moisture", &T::woods, oakShear, "white_oak,shear,13.8 MPa,,", "catalogue.moisture",
             "moisture: there is nothing here"},
        Slip{"odd_moisture", &T::woods, oakShear, "white_oak,shear,13.8 MPa,15 %,",
             "catalogue.moisture", "15 % is not known"},
        Slip{"moisture_where_none_belongs", &T::woods, "white_oak,shrinkage_radial,5.6 %,,",
             "white_oak,shrinkage_radial,5.6 %,green,", "catalogue.moisture",
             "no moisture of its own"},
        Slip{"no_source", &T::woods,
             "white_oak,us_specific_gravity,0.73,,NDS 2018 Table 12.3.3A white oak,",
             "white_oak,us_specific_gravity,0.73,,,", "catalogue.empty",
             "source: there is nothing here"},
        Slip{"no_standing", &T::metals, "boltport.com,read", "boltport.com,", "catalogue.standing",
             "standing: there is nothing here"},
        Slip{"unknown_standing", &T::metals, "boltport.com,read", "boltport.com,red",
             "catalogue.standing", "did you mean read?"},
        Slip{"twice", &T::woods,
             "white_oak,family,hardwood,,Wood Handbook FPL-GTR-190 Table 5-3a,read\n",
             "white_oak,family,hardwood,,x,read\nwhite_oak,family,softwood,,x,read\n",
             "catalogue.twice",
             "woods.csv:6: property: white_oak family is here a second time; one row; the first is "
             "in line 5"},
        Slip{"same_id_twice", &T::threads, "\nm6,", "\nm5,", "catalogue.twice",
             "m5 is here a second time"},
        Slip{"bad_id", &T::threads, "\nm6,", "\nM6 coarse,", "catalogue.id", "M6 coarse is no id"},
        Slip{"unknown_family", &T::metals, "c65500_h02,family,bronze", "c65500_h02,family,bronse",
             "catalogue.family", "did you mean bronze?"},
        Slip{"unknown_wood_family", &T::woods, "white_oak,family,hardwood", "white_oak,family,oak",
             "catalogue.family", "one of softwood, hardwood"},
        Slip{"unknown_series", &T::threads, "unified_coarse", "unified_corse", "catalogue.series",
             "did you mean unified_coarse?"},
        Slip{"pitch_and_per_inch", &T::threads, "metric_coarse,6 mm,,1 mm",
             "metric_coarse,6 mm,25,1 mm", "catalogue.contradiction", "per_inch"},
        Slip{"pitch_too_coarse", &T::threads, "metric_coarse,6 mm,,1 mm",
             "metric_coarse,6 mm,,4 mm", "catalogue.contradiction", "less than half"},
        Slip{"per_inch_not_whole", &T::threads, "1/2 in,13,", "1/2 in,13.5,", "number.malformed",
             "per_inch"},
        Slip{"metal_not_there", &T::rods, ",c65500_h02,unc_1_4,", ",c65500_h03,unc_1_4,",
             "catalogue.reference",
             "rods.csv:2: metal: c65500_h03 is not in the catalogue; did you mean c65500_h02?"},
        Slip{"thread_not_there", &T::nuts, ",unc_1_4,", ",unf_1_4,", "catalogue.reference",
             "unf_1_4 is not in the catalogue"},
        Slip{"rod_not_as_thick_as_thread", &T::rods, "unc_1_4,1/4 in", "unc_1_4,3/8 in",
             "catalogue.contradiction", "not as thick as its thread"},
        Slip{"nut_narrower_than_bolt", &T::nuts, "7/16 in,7/32 in", "1/4 in,7/32 in",
             "catalogue.contradiction", "no wider than its bolt"},
        Slip{"washer_hole_too_small", &T::washers, "1/4 in,0.281 in", "1/4 in,0.241 in",
             "catalogue.contradiction", "smaller than the bolt"},
        Slip{"washer_all_hole", &T::washers, "0.281 in,0.625 in", "0.281 in,0.281 in",
             "catalogue.contradiction", "no wider than its hole"},
        Slip{"absurd_length", &T::washers, "0.281 in,0.625 in", "0.281 in,625 in",
             "catalogue.out_of_limits", "625 in; 2 mm to 400 mm"},
        Slip{"unknown_bound", &T::rules, "at_least", "atleast", "catalogue.bound",
             "did you mean at_least?"},
        Slip{"length_rule_without_unit", &T::rules, "at_least,14 mm", "at_least,14", "unit.missing",
             "rules.csv:3: value"},
        Slip{"factor_with_unit", &T::rules, "at_least,4,bolt_diameter",
             "at_least,4 mm,bolt_diameter", "unit.wrong_kind", "value"},
        Slip{"row_too_short", &T::nuts, "7/16 in,7/32 in,", "7/16 in,", "csv.cells", "nuts.csv:3"}),
    [](const auto& slip) { return slip.param.name; });

TEST(BadCatalogue2, AllProblemsOfAllFilesComeAtOnce) {
    auto texts = catalogueTexts();
    texts.woods.replace(texts.woods.find(oakShear), 21, "white_oak,shear,13800");
    texts.washers.replace(texts.washers.find("0.281 in"), 8, "0.281   ");
    texts.rules.replace(texts.rules.find("at_least"), 8, "at_lwast");
    const auto catalogue = readCatalogue(texts);
    ASSERT_FALSE(catalogue);
    EXPECT_EQ(catalogue.error().size(), 3U);
}

TEST(BadCatalogue2, AWoodMustBeComplete) {
    auto texts = catalogueTexts();
    texts.woods =
        "wood,property,value,moisture,source,standing\n"
        "ash,shear,10 MPa,green,x,read\n";
    const auto catalogue = readCatalogue(texts);
    ASSERT_FALSE(catalogue);
    EXPECT_EQ(catalogue.error().size(), 3U);  // name, family, density
    EXPECT_EQ(catalogue.error().front().where, "woods.csv: ash");
}

TEST(BadCatalogue2, YieldAboveUltimateIsASlip) {
    auto texts = catalogueTexts();
    const std::string row = "monel_400,yield_min,25 ksi";
    texts.metals.replace(texts.metals.find(row), row.size(), "monel_400,yield_min,75 ksi");
    const auto catalogue = readCatalogue(texts);
    ASSERT_FALSE(catalogue);
    EXPECT_EQ(catalogue.error().front().line(),
              "metals.csv: monel_400: yield_min is above ultimate_min; yield below ultimate, least "
              "below typical");
}

TEST(BadCatalogue2, EmptyOrBinaryFilesAreRefused) {
    for (const std::string& text :
         {std::string(), std::string("\n\n"), std::string("a\0b", 3), std::string("\xFF\xFE")}) {
        auto texts = catalogueTexts();
        texts.metals = text;
        EXPECT_FALSE(readCatalogue(texts));
    }
}

TEST(BadCatalogue2, SpoiltAtRandomItIsReadOrRefusedNeverBroken) {
    const auto good = catalogueTexts();
    std::mt19937 random(20260613);
    int refused = 0;
    for (int round = 0; round < rounds(400); ++round) {
        auto texts = good;
        std::string* const files[] = {&texts.woods, &texts.metals,  &texts.threads, &texts.rods,
                                      &texts.nuts,  &texts.washers, &texts.rules};
        auto& text = *files[random() % 7];
        for (unsigned i = 0; i < 1 + random() % 3; ++i) {
            const auto place = random() % text.size();
            if (random() % 2 == 0) {
                text[place] = static_cast<char>(random() % 256);
            } else {
                text.erase(place, random() % 20);
            }
        }
        const auto catalogue = readCatalogue(texts);
        if (catalogue) continue;
        ++refused;
        for (const auto& problem : catalogue.error()) {
            EXPECT_FALSE(problem.where.empty() || problem.what.empty() || problem.code.empty());
        }
    }
    EXPECT_GT(refused, rounds(400) / 4);
}

}  // namespace
}  // namespace fayline
