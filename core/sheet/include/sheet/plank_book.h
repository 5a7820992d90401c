#pragma once

#include <string>
#include <utility>
#include <vector>

#include "sheet/sheet_head.h"

namespace fayline {

/// One fastening of a plank at one crossing.
struct PlankHole {
    std::string id;
    std::string figure;      ///< distance from the edge it is nearer to
    bool fromUpper = false;  ///< measured from the upper edge
    std::string offLine;     ///< off the struck centreline: "3/8 F", "3/8 A", "0"
    double up = 0.5;         ///< of the plank's width, from its lower edge
    double aft = 0.0;        ///< of the frame's siding, from its centreline
    bool operator==(const PlankHole&) const = default;
};

/// A strake on one frame's struck centreline.
struct PlankCrossing {
    std::string frame;
    std::string width;             ///< of the plank there
    std::vector<PlankHole> holes;  ///< lower first
    std::string flag;              ///< "BUTT", "HOOD END"; empty elsewhere
    bool operator==(const PlankCrossing&) const = default;
};

struct PlankStrip {
    std::string side;                      ///< port, starboard
    std::string title;                     ///< "strake 1, garboard"
    std::vector<std::string> setting;      ///< fastening, bits and stops, bung; said once
    std::vector<PlankCrossing> crossings;  ///< forward to aft
    bool operator==(const PlankStrip&) const = default;
};

/// A fastening that stands on no frame's line: of a butt, a plank's end, the garboard to the keel.
struct PlankRow {
    std::string id, mark;
    std::string where;    ///< "strake 4"
    std::string offLine;  ///< off a frame's struck line: "2-3/8 A F22"
    std::string edge;     ///< from an edge: "1-1/2 L"
    bool operator==(const PlankRow&) const = default;
};

struct PlankList {
    std::string side;
    std::string title;                 ///< "Butts"
    std::vector<std::string> setting;  ///< fastening, bits, and what the figures run from
    std::vector<PlankRow> rows;
    bool operator==(const PlankList&) const = default;
};

/// Every strake of both sides, from outside.
struct PlankBook {
    SheetHead head;
    std::vector<std::pair<std::string, std::string>> notes;
    std::vector<std::string> warnings;
    std::vector<PlankStrip> strips;  ///< port, then starboard
    std::vector<PlankList> lists;    ///< the same
    std::string nothing;
    bool operator==(const PlankBook&) const = default;
};

std::string revisionOf(const PlankBook& book);
Sheet layOut(const PlankBook& book, PaperSize paper);

}  // namespace fayline
