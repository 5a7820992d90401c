#include "shape.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "program.h"

using namespace fayline::acceptance;

// The shapes are what every other test here leans on: each kind of misfit must be seen.
TEST(Shape, FindsWhatIsMissingTooMuchOrOfTheWrongKind) {
    const char* shape = "{a: num, b: {c: [int], d: text|null}, e: xyz, f: band}";
    const Json good = Json::parse(R"({"a":1.5,"b":{"c":[1,2],"d":null},"e":[1,2,3],"f":[1,1]})");
    EXPECT_EQ(mismatch(good, shape), "");
    const auto spoilt = [&](auto change) {
        Json json = good;
        change(json);
        return mismatch(json, shape);
    };
    EXPECT_EQ(spoilt([](Json& j) { j.erase("a"); }), "it lacks a");
    EXPECT_EQ(spoilt([](Json& j) { j["b"]["x"] = 1; }), "it.b has a key of no contract, x");
    EXPECT_EQ(spoilt([](Json& j) { j["a"] = "1"; }), "it.a is \"1\", not num");
    EXPECT_EQ(spoilt([](Json& j) { j["a"] = nullptr; }), "it.a is null, not num");
    EXPECT_EQ(spoilt([](Json& j) { j["b"]["c"][1] = 2.5; }), "it.b.c[1] is 2.5, not int");
    EXPECT_EQ(spoilt([](Json& j) { j["b"]["d"] = ""; }), "it.b.d is \"\", not null");
    EXPECT_EQ(spoilt([](Json& j) { j["b"] = 1; }), "it.b is no object");
    EXPECT_EQ(spoilt([](Json& j) { j["e"].push_back(4); }), "it.e is [1,2,3,4], not xyz");
    EXPECT_EQ(spoilt([](Json& j) { j["f"][0] = 2; }), "it.f is [2,1], not band");
    EXPECT_THROW(mismatch(good, "{a: nmu}"), std::logic_error);
    EXPECT_THROW(mismatch(good, "{a num}"), std::logic_error);
}

TEST(Shape, HeadAndCautionsStandInTheirPlaces) {
    const auto head = [](const char* text, bool ofProject = true) {
        return headMismatch(Json::parse(text), "x/1", ofProject);
    };
    EXPECT_EQ(head(R"({"format":"x/1","program":"p","project":"q","step":1,"cautions":["c"]})"),
              "");
    EXPECT_EQ(head(R"({"format":"x/1","program":"p","cautions":["c"]})", false), "");
    EXPECT_NE(head(R"({"format":"x/1","program":"p","step":1,"project":"q","cautions":["c"]})"),
              "");
    EXPECT_NE(head(R"({"format":"x/1","program":"p","project":"q","step":1,"cautions":[]})"), "");
    EXPECT_NE(head(R"({"format":"x/2","program":"p","project":"q","step":1,"cautions":["c"]})"),
              "");
    EXPECT_NE(
        head(R"({"format":"x/1","program":"p","project":"q","step":1,"cautions":["c"],"z":1})"),
        "");
}
