// The CSV and the plain text say what the JSON says.

#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "program.h"
#include "quantity/csv.h"

using namespace fayline::acceptance;

namespace {

class CsvAndText : public ::testing::Test {
  protected:
    void SetUp() override { putBallastHull(folder, "d.fayline"); }
    Json json(const char* command) { return doneJson(folder, {command, "d.fayline", "--json"}); }
    fayline::CsvFile csv(const char* command) {
        const auto file = fayline::readCsv(done(folder, {command, "d.fayline", "--csv"}), command);
        EXPECT_TRUE(file) << file.error().front().line();
        return file.value();
    }
    Folder folder;
};

/// A cell against the JSON value it stands for; numbers to the last bit.
void same(const std::string& cell, const Json& value, const std::string& column) {
    if (value.is_null()) {
        EXPECT_EQ(cell, "") << column;
    } else if (value.is_number()) {
        EXPECT_EQ(std::stod(cell), value.get<double>()) << column;
    } else {
        EXPECT_EQ(cell, value.get<std::string>()) << column;
    }
}

}  // namespace

TEST_F(CsvAndText, MarginsCsvIsTheChecks) {
    const auto file = csv("margins");
    const std::vector<std::string> columns{
        "id",           "frame",       "group",        "stands",   "case",      "basis",
        "limit_state",  "moisture",    "class",        "demand_N", "working_N", "gives_low_N",
        "gives_high_N", "apart_low_N", "apart_high_N", "margin",   "status",    "soft",
        "clause",       "standing",    "why"};
    EXPECT_EQ(file.header, columns);
    const Json checks = json("margins")["checks"];
    ASSERT_EQ(file.rows.size(), checks.size());
    for (std::size_t i = 0; i < checks.size(); ++i) {
        const auto& cells = file.rows[i].cells;
        const Json& check = checks[i];
        for (std::size_t c = 0; c < columns.size(); ++c) {
            const std::string& column = columns[c];
            const auto end = [&](const char* band, std::size_t which) {
                return check[band].is_null() ? Json(nullptr) : check[band][which];
            };
            if (column == "soft") {
                EXPECT_EQ(cells[c], check["soft"].get<bool>() ? "soft" : "sudden");
            } else if (column.rfind("gives_", 0) == 0) {
                same(cells[c], end("gives_N", column == "gives_low_N" ? 0 : 1), column);
            } else if (column.rfind("apart_", 0) == 0) {
                same(cells[c], end("apart_N", column == "apart_low_N" ? 0 : 1), column);
            } else {
                same(cells[c], check[column], column);
            }
        }
    }
}

TEST_F(CsvAndText, HolesCsvIsTheHoles) {
    const auto file = csv("holes");
    const Json holes = json("holes")["holes"];
    ASSERT_EQ(file.rows.size(), holes.size());
    const std::vector<std::string> columns{"id",         "mark",        "frame",     "side",
                                           "face",       "group",       "kind",      "start_x_mm",
                                           "start_y_mm", "start_z_mm",  "end_x_mm",  "end_y_mm",
                                           "end_z_mm",   "diameter_mm", "length_mm", "grip_mm"};
    EXPECT_EQ(file.header, columns);
    for (std::size_t i = 0; i < holes.size(); ++i) {
        for (std::size_t c = 0; c < columns.size(); ++c) {
            const std::string& column = columns[c];
            const std::string& cell = file.rows[i].cells[c];
            const auto axis = std::string("xyz").find(column[column.size() - 4]);
            if (column.rfind("start_", 0) == 0) {
                same(cell, holes[i]["start_mm"][axis], column);
            } else if (column.rfind("end_", 0) == 0) {
                same(cell, holes[i]["end_mm"][axis], column);
            } else {
                same(cell, holes[i][column], column);
            }
        }
    }
}

TEST_F(CsvAndText, MarginsTextListsEveryLoadedCheckWorstFirstAndCutsMargins) {
    const Json result = json("margins");
    const auto lines = linesOf(done(folder, {"margins", "d.fayline"}));
    ASSERT_FALSE(lines.empty());
    EXPECT_EQ(lines[0], "Hollin: margins, worst first");
    std::size_t at = 0;
    while (at < lines.size() && lines[at].rfind("margin ", 0) != 0) ++at;
    ASSERT_LT(at, lines.size()) << "no table";
    int cut = 0;
    for (const Json& check : result["checks"]) {
        if (check["status"] == "unloaded") continue;
        const std::string& line = lines[++at];
        for (const char* key : {"status", "id", "limit_state", "basis", "case"})
            EXPECT_NE(line.find(check[key].get<std::string>()), std::string::npos) << line;
        if (check["margin"].is_null()) continue;
        const std::string sign = "×";
        ASSERT_EQ(line.rfind(sign, 0), 0U) << line;
        const std::string printed = line.substr(sign.size(), line.find(' ') - sign.size());
        const double margin = check["margin"].get<double>();
        const auto point = printed.find('.');
        const double last = point == std::string::npos
                                ? 1
                                : std::pow(10, -static_cast<double>(printed.size() - point - 1));
        EXPECT_LE(std::stod(printed), margin) << line << ": a margin is cut, never rounded up";
        EXPECT_LT(margin - std::stod(printed), last) << line;
        cut += std::stod(printed) < margin ? 1 : 0;
    }
    EXPECT_GT(cut, 10);
}

TEST_F(CsvAndText, EveryTextEndsWithTheCautionsOrNeedsNone) {
    const Json cautions = json("margins")["cautions"];
    for (const char* command : {"margins", "holes"}) {
        const auto lines = linesOf(done(folder, {command, "d.fayline"}));
        ASSERT_GT(lines.size(), cautions.size());
        for (std::size_t i = 0; i < cautions.size(); ++i)
            EXPECT_EQ(lines[lines.size() - cautions.size() + i], cautions[i]) << command;
    }
}

TEST_F(CsvAndText, TheUnitsDecidedAreTheUnitsShown) {
    EXPECT_NE(done(folder, {"hull", "d.fayline"}).find("lb"), std::string::npos);
    done(folder, {"decide", "d.fayline", "hull.units=millimetres"});
    const std::string hull = done(folder, {"hull", "d.fayline"});
    EXPECT_NE(hull.find(" kg"), std::string::npos) << hull;
    EXPECT_EQ(hull.find("lb"), std::string::npos) << hull;
    EXPECT_NE(done(folder, {"holes", "d.fayline"}).find("22 mm"), std::string::npos);
    EXPECT_EQ(done(folder, {"margins", "d.fayline"}).find(" lb "), std::string::npos);
}

TEST_F(CsvAndText, TheHullsTextGivesTheJsonsFigures) {
    done(folder, {"decide", "d.fayline", "hull.units=millimetres"});
    const Json hull = json("hull");
    const std::string text = done(folder, {"hull", "d.fayline"});
    const double displacement = hull["displacement_kg"];
    const auto at = text.find("displacement");
    ASSERT_NE(at, std::string::npos);
    const double shown = std::stod(text.substr(text.find_first_of("0123456789", at)));
    EXPECT_NEAR(shown, displacement, 0.001 * displacement);
    EXPECT_NE(text.find("(stated 7200 kg)"), std::string::npos) << text;
}
