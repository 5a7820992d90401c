// What to order, as the program prints it.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "program.h"
#include "shape.h"

using namespace fayline::acceptance;

namespace {

const std::string metalShape = R"({format: text, program: text, project: text, step: int, lines: [{
    stock: text|null, kind: text, metal: text|null, size: text, length_mm: num|null, count: int,
    spare: int, shelf: int|null, order: int, mass_kg: num|null, price: num|null,
    currency: text|null, groups: [text], why: text|null}],
    totals: {count: int, mass_kg: num|null, price: num|null, currency: text|null},
    rules: [text], cautions: [text]})";

}  // namespace

TEST(Metal, EveryKeyIsAsTheContractsNameIt) {
    const Folder folder;
    putBallastHull(folder, "p.fayline");
    const Json metal = doneJson(folder, {"metal", "p.fayline", "--json"});
    EXPECT_EQ(mismatch(metal, metalShape), "");
    EXPECT_EQ(headMismatch(metal, "fayline.metal/1", true), "");
}

TEST(Metal, TheDemosBoltsNutsAndWashersAreCounted) {
    const Folder folder;
    putBallastHull(folder, "p.fayline");
    const Json metal = doneJson(folder, {"metal", "p.fayline", "--json"});
    int bolts = 0, nuts = 0, washers = 0;
    for (const Json& line : metal["lines"]) {
        const int count = line["count"];
        if (line["kind"] == "bolt") bolts += count;
        if (line["kind"] == "nut") nuts += count;
        if (line["kind"] == "washer") washers += count;
        EXPECT_GE(line["order"].get<int>(), count + line["spare"].get<int>());
        if (line["kind"] == "bolt") {
            const double eighths = line["length_mm"].get<double>() / 25.4 * 8.0;
            EXPECT_NEAR(eighths, std::round(eighths), 1e-6) << "cut to the eighth";
            EXPECT_FALSE(line["mass_kg"].is_null());
        }
    }
    EXPECT_EQ(bolts, 9);
    EXPECT_EQ(nuts, 18);
    EXPECT_EQ(washers, 18);
    EXPECT_EQ(metal["totals"]["count"], 9);
    EXPECT_TRUE(metal["totals"]["price"].is_null());
}

TEST(Metal, AnUnknownMassIsNullAndSaysWhy) {
    const Folder folder;
    putBallastHull(folder, "p.fayline");
    done(folder, {"decide", "p.fayline", "heel.kind=wood_screw", "heel.count=1", "heel.gauge=12",
                  "heel.length=2 in"});
    const Json metal = doneJson(folder, {"metal", "p.fayline", "--json"});
    bool found = false;
    for (const Json& line : metal["lines"]) {
        if (line["kind"] != "wood_screw") continue;
        found = true;
        EXPECT_TRUE(line["mass_kg"].is_null());
        EXPECT_TRUE(line["metal"].is_null());
        EXPECT_EQ(line["why"], "the metal is not decided");
    }
    EXPECT_TRUE(found);
    EXPECT_TRUE(metal["totals"]["mass_kg"].is_null());
}

TEST(Metal, TextAndCsvSayWhatTheJsonSays) {
    const Folder folder;
    putBallastHull(folder, "p.fayline");
    const Json metal = doneJson(folder, {"metal", "p.fayline", "--json"});
    const auto csv = linesOf(done(folder, {"metal", "p.fayline", "--csv"}));
    ASSERT_EQ(csv.size(), metal["lines"].size() + 1);
    EXPECT_EQ(csv[0].substr(0, csv[0].find('\r')),
              "stock,kind,metal,size,length_mm,count,spare,shelf,order,mass_kg,price,currency");
    const std::string text = done(folder, {"metal", "p.fayline"});
    for (const char* word : {"Silicon bronze", "spare", "order", "nut for", "washer", "Price",
                             "naval architect", "1/8 in"})
        EXPECT_NE(text.find(word), std::string::npos) << word;
}
