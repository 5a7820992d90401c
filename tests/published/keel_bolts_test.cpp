// Ballast loads and rod strength against worked examples in print (keel_bolts.csv).

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <sstream>

#include "joint/rod.h"
#include "load/ballast.h"
#include "quantity/csv.h"
#include "quantity/reading.h"

using namespace fayline;

namespace {

CsvFile rows() {
    std::ifstream file(std::string(FAYLINE_SOURCE_DIR) + "/tests/published/keel_bolts.csv");
    std::ostringstream text;
    text << file.rdbuf();
    return readCsv(text.str(), "keel_bolts.csv").value();
}

struct Row {
    const CsvFile& file;
    const CsvRow& row;
    [[nodiscard]] std::string text(const char* name) const { return row.cells[*file.column(name)]; }
    [[nodiscard]] double number(const char* name) const {
        return readRatio(text(name), name).value();
    }
    [[nodiscard]] Length length(const char* name) const {
        return readLength(text(name), name).value();
    }
};

CaseLoads loadsOf(const Row& row, double slip) {
    const int bolts = static_cast<int>(row.number("bolts"));
    BallastLoadInput input;
    input.ballast =
        Mass::fromSi(readForce(row.text("force"), "force").value().si() / standardGravity.si());
    input.centre.z = -slip * row.length("arm");
    input.acrossGrain = megapascals(500);
    input.timberDepth = millimetres(100);
    for (int i = 0; i < 10; ++i)
        input.bed.push_back(
            {metres(0.1 * i), metres(0.1), row.length("breadth"), LineMass::fromSi(1)});
    for (int i = 0; i < bolts; ++i) {
        const double side = i % 2 == 0 ? -1.0 : 1.0;
        input.bolts.push_back({"K." + std::to_string(i + 1),
                               "",
                               {metres(0.1 * i), side * row.length("off_centre"), Length{}},
                               squareMillimetres(100),
                               metres(0.5),
                               megapascals(200000)});
    }
    return ballastLoads(input, LoadCase::knockdownStarboard, CaseSettings{});
}

RodInput rodOf(Length root, Stress strength, double factor) {
    RodInput rod;
    rod.root = root;
    rod.yield = strength;
    rod.ultimate = 2.0 * strength;
    rod.factor = factor;
    return rod;
}

double says(const Row& row, double slip) {
    const std::string kind = row.text("kind");
    if (kind == "moment") {
        const double moment_Nm = inNewtonMetres(loadsOf(row, slip).totalMoment.x);
        return row.text("unit") == "kNm" ? moment_Nm / 1000
                                         : moment_Nm / (4.4482216152605 * 0.0254);
    }
    if (kind == "equal_force") return inNewtons(loadsOf(row, slip).bolts.front().equalForce) / 1000;
    const Stress strength = readStress(row.text("strength"), "strength").value();
    if (kind == "size_sixteenths") {
        const Force demand = loadsOf(row, slip).bolts.front().equalForce;
        int sixteenths = 1;
        while (rodTension(rodOf(inches(sixteenths / 16.0), strength, 2.0)).working < demand)
            ++sixteenths;
        return sixteenths;
    }
    RodInput rod = rodOf(slip * row.length("root"), strength, 1.0);
    rod.ultimate = strength;
    return row.number("bolts") * inNewtons(rodTension(rod).apart->low) / 4.4482216152605;
}

bool agrees(const Row& row, double slip) {
    return std::abs(says(row, slip) - row.number("published")) <= row.number("tolerance");
}

}  // namespace

TEST(PublishedKeelBolts, EveryRow) {
    const CsvFile file = rows();
    ASSERT_GE(file.rows.size(), 7U);
    for (const CsvRow& cells : file.rows) {
        const Row row{file, cells};
        EXPECT_TRUE(agrees(row, 1.0)) << row.text("source") << ", " << row.text("item") << ": "
                                      << says(row, 1.0) << ", printed " << row.text("published");
    }
}

TEST(PublishedKeelBolts, OnePerCentTurnsARowRed) {
    const CsvFile file = rows();
    for (const double slip : {0.99, 1.01}) {
        int red = 0;
        for (const CsvRow& cells : file.rows) red += agrees({file, cells}, slip) ? 0 : 1;
        EXPECT_GE(red, 3) << slip;
    }
}
