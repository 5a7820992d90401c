#include "catalogue/catalogue.h"

#include <gtest/gtest.h>

#include <set>

#include "catalogue_files.h"
#include "material/across_grain.h"
#include "material/density.h"

namespace fayline {
namespace {

const Catalogue& shipped() {
    static const Catalogue catalogue = shippedCatalogue();
    return catalogue;
}

TEST(ShippedCatalogue, HoldsEveryWoodAHullIsBuiltOf) {
    for (const char* id : {"white_oak",
                           "northern_red_oak",
                           "live_oak",
                           "black_locust",
                           "white_ash",
                           "rock_elm",
                           "american_elm",
                           "douglas_fir_coast",
                           "western_larch",
                           "tamarack",
                           "longleaf_pine",
                           "western_redcedar",
                           "port_orford_cedar",
                           "yellow_cedar",
                           "atlantic_white_cedar",
                           "sitka_spruce",
                           "baldcypress",
                           "iroko",
                           "teak",
                           "true_mahogany",
                           "sapele",
                           "purpleheart",
                           "angelique",
                           "greenheart",
                           "european_oak",
                           "european_larch"}) {
        EXPECT_TRUE(shipped().woods.contains(id)) << id;
    }
}

TEST(ShippedCatalogue, ReadsValuesInTheirUnits) {
    const auto& oak = shipped().woods.at("white_oak");
    EXPECT_EQ(oak.family, WoodFamily::hardwood);
    EXPECT_EQ(oak.specificGravityTwelve->value.value, 0.68);
    EXPECT_NEAR(inMegapascals(oak.twelve.compressionPerpendicular->value), 7.4, 1e-12);
    EXPECT_NEAR(inMegapascals(oak.green.compressionPerpendicular->value), 4.61949, 1e-4);
    EXPECT_NEAR(oak.shrinkageTangential->value, 0.105, 1e-12);
    EXPECT_EQ(oak.us.specificGravity->standing, Standing::read);
    const auto& bronze = shipped().metals.at("c65500_h02");
    EXPECT_EQ(bronze.family, MetalFamily::bronze);
    EXPECT_NEAR(inMegapascals(bronze.yieldMin->value), 262.0, 0.01);
    EXPECT_NEAR(inKilogramsPerCubicMetre(bronze.density->value), 8530.0, 1e-9);
    EXPECT_EQ(inMillimetres(shipped().threads.at("unc_1_2").nominal), 12.7);
    EXPECT_NEAR(inMillimetres(shipped().threads.at("unc_1_2").pitch), 25.4 / 13.0, 1e-12);
    EXPECT_EQ(shipped().rods.at("c65500_h02_3_4").thread, "unc_3_4");
    EXPECT_EQ(shipped().nuts.at("heavy_1_2").kind, NutKind::heavyHex);
}

TEST(ShippedCatalogue, EveryWoodServesBothBases) {
    for (const auto& [id, wood] : shipped().woods) {
        const auto gravity = specificGravityOvenDry(wood);
        const auto density = characteristicDensity(wood);
        ASSERT_TRUE(gravity && density) << id;
        EXPECT_GT(gravity->value.value, 0.3) << id;
        EXPECT_LT(gravity->value.value, 1.2) << id;
        EXPECT_TRUE(compressionPerpendicularEc5(wood)) << id;
        EXPECT_TRUE(modulusAcrossGrain(wood, AcrossGrain::unknown, WoodMoisture::twelve)) << id;
        EXPECT_TRUE(wood.shrinkageRadial && wood.shrinkageTangential) << id;
        EXPECT_LT(wood.shrinkageRadial->value, wood.shrinkageTangential->value) << id;
    }
}

TEST(ShippedCatalogue, GreenWoodIsWeakerThanDry) {
    int pairs = 0;
    for (const auto& [id, wood] : shipped().woods) {
        for (const auto slot : {&ClearWood::modulusOfRupture, &ClearWood::modulusOfElasticity,
                                &ClearWood::compressionParallel,
                                &ClearWood::compressionPerpendicular, &ClearWood::shear}) {
            const auto& green = wood.green.*slot;
            const auto& twelve = wood.twelve.*slot;
            if (!green || !twelve) continue;
            if (id == "true_mahogany" && slot == &ClearWood::shear) continue;  // 1240, 1230 psi
            EXPECT_LT(green->value, twelve->value) << id;
            ++pairs;
        }
    }
    EXPECT_GT(pairs, 100);
}

TEST(ShippedCatalogue, GreenMeanLiesBelowTheAssignedCompression) {
    int pairs = 0;
    for (const auto& [id, wood] : shipped().woods) {
        if (!wood.us.compressionPerpendicular || !wood.green.compressionPerpendicular) continue;
        EXPECT_LT(wood.green.compressionPerpendicular->value,
                  wood.us.compressionPerpendicular->value)
            << id;
        ++pairs;
    }
    EXPECT_GE(pairs, 10);
}

TEST(ShippedCatalogue, EstimatedRowsAreWhatTheFunctionGives) {
    int rows = 0;
    for (const auto& [id, wood] : shipped().woods) {
        const auto& green = wood.green.compressionPerpendicular;
        if (!green || green->source.find("estimated") == std::string::npos) continue;
        const auto gravity = *wood.specificGravityGreen;
        EXPECT_NEAR(
            inMegapascals(green->value),
            inMegapascals(estimatedCompressionPerpendicularGreen(wood.family, gravity).value),
            0.051)
            << id;
        EXPECT_NEAR(inMegapascals(wood.twelve.compressionPerpendicular->value),
                    inMegapascals(estimatedCompressionPerpendicularTwelve(wood.family,
                                                                          twelveFromGreen(gravity))
                                      .value),
                    0.051)
            << id;
        ++rows;
    }
    EXPECT_EQ(rows, 7);
}

TEST(ShippedCatalogue, EveryRodFindsNutAndWasher) {
    for (const auto& [id, rod] : shipped().rods) {
        if (rod.thread == "m18" || rod.thread == "m27")
            continue;  // washers of these are not stocked
        bool nut = false;
        bool washer = false;
        for (const auto& [nutId, one] : shipped().nuts) nut = nut || one.thread == rod.thread;
        for (const auto& [washerId, one] : shipped().washers) {
            washer = washer || abs(one.fits - rod.diameter) < millimetres(0.01);
        }
        EXPECT_TRUE(nut && washer) << id;
    }
}

TEST(ShippedCatalogue, MetalsForBoltsHaveWhatAStrengthCheckNeeds) {
    std::set<std::string> metals;
    for (const auto& [id, rod] : shipped().rods) metals.insert(rod.metal);
    for (const auto& id : metals) {
        const auto& metal = shipped().metals.at(id);
        EXPECT_TRUE(designYield(metal) && designUltimate(metal) && designShear(metal)) << id;
        EXPECT_TRUE(bendingYield(metal) && metal.modulus && metal.corrosion) << id;
        EXPECT_LT(designShear(metal)->value, designUltimate(metal)->value) << id;
    }
}

TEST(ShippedCatalogue, LimitsOfTheClassRule) {
    const auto& rules = shipped().rules;
    const auto limit = [&](const char* id, double boltMm) {
        return inMillimetres(limitLength(rules.at(id), millimetres(boltMm)));
    };
    EXPECT_NEAR(limit("lr_keel_bolt_least", 10), 14.0, 1e-12);
    EXPECT_NEAR(limit("lr_keel_washer_diameter", 20), 80.0, 1e-12);
    EXPECT_NEAR(limit("lr_keel_washer_thickness", 20), 5.0, 1e-12);
    EXPECT_NEAR(limit("lr_keel_washer_thickness", 36), 8.0, 1e-12);
    EXPECT_EQ(rules.at("lr_keel_bolt_pair").factor, 1.2);
    for (const auto& [id, rule] : rules) EXPECT_FALSE(rule.words.empty()) << id;
}

TEST(ShippedCatalogue, KindsAndFilesHaveNames) {
    std::set<std::string_view> files;
    for (const auto kind :
         {CatalogueKind::wood, CatalogueKind::metal, CatalogueKind::thread, CatalogueKind::rod,
          CatalogueKind::nut, CatalogueKind::washer, CatalogueKind::rule}) {
        EXPECT_EQ(catalogueKindFromText(catalogueKindText(kind)), kind);
        files.insert(catalogueFileName(kind));
    }
    EXPECT_EQ(files.size(), 7U);
    EXPECT_FALSE(catalogueKindFromText("screw"));
}

}  // namespace
}  // namespace fayline
