#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "fastener/bolt.h"
#include "fastener/thread.h"
#include "layout/hole.h"
#include "material/metal.h"
#include "quantity/display.h"
#include "quantity/quantity.h"

namespace fayline {

/// One thing to buy: a kind of fastening or fitting in one metal, size and length.
struct TakeOffLine {
    std::string stock;  ///< id of the rod, nut or washer in the catalogue; empty: none of this size
    std::string kind;   ///< wood_screw bolt drift rivet; nut washer rove ring
    std::string metal;  ///< catalogue id; empty while not decided
    std::string metalName;  ///< as read on paper: "silicon bronze, half hard"
    std::string size;       ///< "No. 14", "3/8 in", "1/4 in square", "3 in × 1/4 in for 7/8 in"
    std::optional<Length> length;  ///< as bought or cut; none for fittings
    int count = 0;                 ///< what the holes need
    int spare = 0;
    std::optional<int> shelf;         ///< already in the yard; none: not counted
    int order = 0;                    ///< count and spares, up to whole packs
    std::optional<Mass> mass;         ///< of the order; none: a size or density is not known
    std::string why;                  ///< when there is no mass
    std::vector<std::string> groups;  ///< heel, arm …: what it is for
    bool fitting = false;             ///< goes with a fastening: nut, washer, rove, ring
    bool operator==(const TakeOffLine&) const = default;
};

struct TakeOff {
    std::vector<TakeOffLine> lines;  ///< by metal, kind, size, length
    int count = 0;                   ///< fastenings, one for each hole; fittings not counted
    int order = 0;                   ///< fastenings to order
    std::optional<Mass> mass;        ///< of every line; none while one of them is not known
    Mass knownMass;                  ///< of the lines that are known
    std::vector<std::string> rules;  ///< how lengths, spares and packs were reckoned
    bool operator==(const TakeOff&) const = default;
};

/// What the take-off needs to know of metals and bought parts.
struct TakeOffStock {
    const std::map<std::string, Metal>* metals = nullptr;
    const std::map<std::string, RodStock>* rods = nullptr;
    const std::map<std::string, Nut>* nuts = nullptr;
    const std::map<std::string, Washer>* washers = nullptr;
    const std::map<std::string, Thread>* threads = nullptr;
};

/// Counts what the holes ask for. Screws keep their length; bolts, drifts and rivets are cut to the
/// next 1/8 in, or the next 5 mm in millimetres.
TakeOff takeOff(const std::vector<const Hole*>& holes, const TakeOffStock& stock, UnitSystem units);

}  // namespace fayline
