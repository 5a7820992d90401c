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

/// Every strake of both sides, from outside.
struct PlankBook {
    SheetHead head;
    std::vector<std::pair<std::string, std::string>> notes;
    std::vector<std::string> warnings;
    std::vector<PlankStrip> strips;  ///< port, then starboard
    std::string nothing;
    bool operator==(const PlankBook&) const = default;
};

std::string revisionOf(const PlankBook& book);
Sheet layOut(const PlankBook& book, PaperSize paper);

}  // namespace fayline
