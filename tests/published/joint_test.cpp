// Joints against printed figures: one file for each source, one row for each figure. Files called
// memory hold figures nobody here has seen in print; they are kept apart and not counted.

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <functional>
#include <sstream>
#include <stdexcept>

#include "joint_rows.h"

namespace fayline {
namespace {

struct Source {
    const char* file;
    Says says;
    int rows;  ///< so that a file cut short is noticed
    bool read;
};

constexpr Source sources[] = {
    {"nds_lag_withdrawal", lagWithdrawal_lbPerIn, 34, true},
    {"nds_lag_steel_plate", lagPlate_lb, 59, true},
    {"us_nail_seaint", nail_lb, 2, true},
    {"us_screw_withdrawal", screwWithdrawal_lbPerIn, 1, true},
    {"us_screw_withdrawal_hicks", screwWithdrawal_lbPerIn, 1, true},
    {"us_nail_withdrawal", screwOrNailWithdrawal_lbPerIn, 1, true},
    {"us_screw_body", screwSize, 4, true},
    {"nds_screw_penetration", screwSize, 1, true},
    {"us_end_grain_hicks", screwSize, 1, true},
    {"gtr282_withdrawal", handbookWithdrawal, 2, true},
    {"ec5_lvl_handbook", ec5Figure, 13, true},
    {"ec5_porteous", ec5Figure, 9, true},
    {"thread_strip_faulkner", stripArea_mm2, 22, true},
    {"us_lateral_memory", lateral_lb, 50, false},
    {"us_withdrawal_memory", screwOrNailWithdrawal_lbPerIn, 9, false},
    {"us_group_memory", groupFactor, 10, false},
    {"us_pull_through_memory", pullThrough_lb, 3, false},
    {"ec5_axial_memory", ec5Axial, 9, false},
};

CsvFile fileOf(const Source& source) {
    const std::string name = std::string(source.file) + ".csv";
    std::ifstream stream(std::string(FAYLINE_SOURCE_DIR) + "/tests/published/" + name);
    std::ostringstream text;
    text << stream.rdbuf();
    auto file = readCsv(text.str(), name);
    if (!file) throw std::runtime_error(file.error().front().line());
    return *std::move(file);
}

bool agrees(const Row& row, Says says, const Coefficients& coefficients) {
    const double apart = std::abs(says(row, coefficients) - row.number("published"));
    return apart <= row.number("tolerance");
}

/// Rows said to reproduce that do not.
int redRows(bool readOnly, const Coefficients& coefficients) {
    int red = 0;
    for (const Source& source : sources) {
        if (readOnly && !source.read) continue;
        const CsvFile file = fileOf(source);
        for (const CsvRow& cells : file.rows) {
            const Row row(file, cells);
            if (row.text("reproduces") == "yes")
                red += agrees(row, source.says, coefficients) ? 0 : 1;
        }
    }
    return red;
}

class PublishedJoints : public testing::TestWithParam<Source> {};

TEST_P(PublishedJoints, EveryRow) {
    const CsvFile file = fileOf(GetParam());
    ASSERT_EQ(static_cast<int>(file.rows.size()), GetParam().rows);
    for (const CsvRow& cells : file.rows) {
        const Row row(file, cells);
        const bool reproduces = row.text("reproduces") == "yes";
        EXPECT_EQ(agrees(row, GetParam().says, {}), reproduces)
            << row.where() << ": " << GetParam().says(row, {}) << ", printed "
            << row.text("published");
        EXPECT_EQ(row.text("reason").empty(), reproduces) << row.where() << ": reason";
        EXPECT_FALSE(row.text("source").empty() || row.text("why").empty()) << row.where();
        if (!GetParam().read) {
            EXPECT_EQ(row.text("standing"), "from_memory") << row.where();
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Files, PublishedJoints, testing::ValuesIn(sources),
                         [](const auto& tested) { return std::string(tested.param.file); });

TEST(PublishedJoints, AHundredAndTwentyFiguresOrMoreOfJointsWereRead) {
    int read = 0;
    for (const Source& source : sources) {
        const CsvFile file = fileOf(source);
        for (const CsvRow& cells : file.rows)
            read += Row(file, cells).text("standing") == "read" ? 1 : 0;
    }
    EXPECT_GE(read, 120);
}

struct Moved {
    const char* name;
    std::function<double&(Coefficients&)> of;
};

#define US(field)                                                      \
    Moved {                                                            \
#field, [](Coefficients & c) -> double& { return c.us.field; } \
    }
#define EC5(field)                                                      \
    Moved {                                                             \
#field, [](Coefficients & c) -> double& { return c.ec5.field; } \
    }

/// How many rows the coefficient turns red, moved one per cent up and down.
std::pair<int, int> redWhenMoved(const Moved& moved, bool readOnly) {
    Coefficients up;
    Coefficients down;
    moved.of(up) *= 1.01;
    moved.of(down) *= 0.99;
    return {redRows(readOnly, up), redRows(readOnly, down)};
}

// Figures somebody read notice each of these moved by one per cent.
TEST(PublishedJoints, OnePerCentOfACoefficientIsNoticedByWhatWasRead) {
    const Moved all[] = {
        US(bearingParallel_psi), US(bearingAcross_psi),    US(bearingAcrossExponent),
        US(bearingSmall_psi),    US(bearingSmallExponent), US(reductionBending),
        US(grainRise),           US(smallReduction),       US(smallSlope_perIn),
        US(smallOffset),         US(lagWithdrawal),        US(lagGravityExponent),
        US(lagDiameterExponent), US(screwWithdrawal_psi),  US(nailWithdrawal_psi),
        US(screwUltimate_psi),   US(driftUltimate_psi),    EC5(embedment),
        EC5(undrilledExponent),  EC5(diameterSlope),       EC5(acrossSoftwood),
        EC5(yieldRound),         EC5(yieldSquare),         EC5(yieldExponent),
        EC5(oneHinge),           EC5(twoHinges),           EC5(splitting),
        EC5(slipDivisor),        EC5(rootToEffective)};
    for (const Moved& moved : all) {
        const auto [up, down] = redWhenMoved(moved, true);
        EXPECT_GT(up, 0) << moved.name;
        EXPECT_GT(down, 0) << moved.name;
    }
}

// Every coefficient there is stands in one of the two lists, but for driftSafety: it is the ratio
// of the wood screws' two coefficients, and nobody has published one for drifts.
TEST(PublishedJoints, NoCoefficientIsLeftOut) {
    constexpr std::size_t lists = 29 + 16;
    EXPECT_EQ((sizeof(UsCoefficients) + sizeof(Ec5Coefficients)) / sizeof(double), lists + 1);
}

// For these no printed figure could be read: only remembered ones notice.
TEST(PublishedJoints, OnePerCentOfACoefficientIsNoticedByMemory) {
    const Moved all[] = {US(reductionBearing),
                         US(reductionTurning),
                         US(nailGravityExponent),
                         US(pullThroughThin_psi),
                         EC5(withdrawal),
                         EC5(withdrawalDiameterExponent),
                         EC5(withdrawalLengthExponent),
                         EC5(densityExponent),
                         EC5(fullDiameter_mm),
                         EC5(rowExponent),
                         EC5(rowSpacing),
                         US(pullThroughThick_psi),
                         US(groupModulus),
                         EC5(acrossHardwood),
                         EC5(acrossSlope),
                         EC5(nailHead)};
    for (const Moved& moved : all) {
        const auto [up, down] = redWhenMoved(moved, false);
        EXPECT_GT(up, 0) << moved.name;
        EXPECT_GT(down, 0) << moved.name;
    }
}

}  // namespace
}  // namespace fayline
