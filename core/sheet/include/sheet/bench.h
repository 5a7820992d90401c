#pragma once

#include <string>
#include <utility>
#include <vector>

#include "sheet/sheet_head.h"

namespace fayline {

/// One hole as the bench sees it. All figures are texts in the sheet's unit.
struct BenchHole {
    std::string id;
    std::string mark;    ///< "P8-A3"
    std::string along;   ///< from the datum, running
    std::string across;  ///< from the edge its group names
    std::string angle;   ///< to the face: "square", "12° up"
    std::string beyond;  ///< "through", or the wood left beyond the point
    bool operator==(const BenchHole&) const = default;
};

/// Holes with the same bits, stops, face and fastening, in drilling order.
struct BenchGroup {
    std::string title;                 ///< what goes in, and from which face
    std::vector<std::string> setting;  ///< bits with their stops, scrap first, tighten, bung
    std::vector<BenchHole> holes;
    bool operator==(const BenchGroup&) const = default;
};

/// A part drawn behind the holes, in the plane of the picture.
struct BenchPart {
    Role role = Role::frame;
    std::vector<PlanePoint> points;
    bool closed = true;
    LineStyle style = LineStyle::solid;
    bool operator==(const BenchPart&) const = default;
};

/// A hole in the picture, with the figures that stand beside it.
struct BenchSpot {
    std::string id, mark, along, across;
    PlanePoint at;
    Length diameter;
    PlanePoint tip;  ///< where it ends; the same place when it runs square to the picture
    bool operator==(const BenchSpot&) const = default;
};

/// A drawing to scale with every hole lettered and measured from the datum.
struct BenchPicture {
    std::vector<BenchPart> parts;
    std::vector<BenchSpot> spots;
    PlanePoint datum;
    std::string datumMark;          ///< "A"
    std::string along, across;      ///< heads of the two columns of figures
    bool acrossRight = true;        ///< the plane's first axis runs to the right
    std::string up, outward, away;  ///< "UP", "OUTBOARD", "BOW away from you"
    bool operator==(const BenchPicture&) const = default;
};

/// A hole that stands here but is drilled from another sheet.
struct BenchGuest {
    std::string mark, along, across, sheet;
    bool operator==(const BenchGuest&) const = default;
};

/// One side of a sheet, or the whole of it when it has no sides.
struct BenchSide {
    std::string side;                                        ///< port, starboard, ""
    std::string seen;                                        ///< "AFT face, looking forward"
    std::vector<std::pair<std::string, std::string>> notes;  ///< before you drill, datum, check
    BenchPicture picture;
    std::vector<std::string> warnings;
    std::vector<BenchGroup> groups;
    std::vector<BenchGuest> guests;
    std::string margins;  ///< the worst joint, in one line
    std::string nothing;  ///< what is said when there is nothing to drill
    bool operator==(const BenchSide&) const = default;
};

/// What a frame's or a floor's drilling sheet says.
struct BenchSheet {
    SheetHead head;
    std::vector<BenchSide> sides;
    bool operator==(const BenchSheet&) const = default;
};

/// The revision code: a hash of everything the sheet says except when it was printed, the last
/// change, the count of pages and the program.
std::string revisionOf(const BenchSheet& sheet);

/// The pages: each side starts one; what does not fit runs on to another, never splitting a hole's
/// row.
Sheet layOut(const BenchSheet& sheet, PaperSize paper);

}  // namespace fayline
