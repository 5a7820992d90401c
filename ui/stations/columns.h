#pragma once

#include <QString>
#include <string>
#include <vector>

#include "project/fields.h"
#include "quantity/display.h"

namespace fayline {

/// The columns of the grid, a row per frame, in the order a builder decides them. The frame itself
/// is the row's heading. `heel`, `arm`, `keelBolt` and `plank` sum a group up in one cell.
enum class Column {
    place,
    frameSided,
    frameMoulded,
    heelDetail,
    floor,
    topology,
    sided,
    throat,
    wood,
    heel,
    heelKind,
    heelCount,
    heelSize,
    heelLength,
    heelMetal,
    arm,
    armKind,
    armCount,
    armSize,
    armLength,
    armMetal,
    keelBolt,
    keelBoltKind,
    keelBoltCount,
    keelBoltSize,
    keelBoltLength,
    keelBoltMetal,
    plank,
    plankKind,
    plankCount,
    plankSize,
    plankLength,
    plankMetal,
    bolt,
    diameter,
    metal,
    washer,
    thickness,
    worst
};
inline constexpr int columnCount = static_cast<int>(Column::worst) + 1;

/// What stands together under one heading.
enum class ColumnGroup { frame, floor, heel, arm, keelBolt, plank, ballast, worst };

/// What of a group a column shows.
enum class ColumnPart { single, summary, kind, count, size, length, metal, bolts, worst };

/// What the grid shows at a time.
enum class ColumnSet { overview, frame, floor, heel, arm, keelBolt, plank, ballast, all };
inline constexpr int columnSetCount = static_cast<int>(ColumnSet::all) + 1;

ColumnGroup groupOf(Column column);
ColumnPart partOf(Column column);
/// Whether a column is shown in a set. The worst margin always is.
bool isShown(Column column, ColumnSet set);

/// "heel", "arm", "floor_bolt", "plank": as decisions name it; empty for the other columns.
std::string fasteningOf(Column column);
/// Whether port and starboard may be decided apart here.
bool hasSides(Column column);
/// Whether a column's decisions are those of the ballast bolts at the frame.
bool isBoltColumn(Column column);

/// The row of the decision table behind a column; for a size that of the kind of fastening it
/// belongs to. Null for summaries, the bolts' names and the worst margin.
const Field* fieldOf(Column column, const std::string& kind = {});

/// The decisions behind one cell: none, one, or one for each bolt at the frame. For a fastening
/// that of both sides together; `side` "P" or "S" names one side's.
std::vector<std::string> decisionsOf(Column column, const std::string& frame,
                                     const std::vector<std::string>& bolts,
                                     const std::string& kind = {}, const std::string& side = {});

/// "Floor siding", "Washer ⌀".
QString titleOf(Column column);
/// "Frame", "Floor", "Heels" …
QString titleOf(ColumnGroup group);
/// "Overview", "Frame" … "All": for the switch above the grid.
QString titleOf(ColumnSet set);
/// The unit a bare number takes; empty where there is none.
QString unitOf(Column column, UnitSystem units);

}  // namespace fayline
