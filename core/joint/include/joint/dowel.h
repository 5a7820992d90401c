#pragma once

#include <string>
#include <vector>

#include "quantity/quantity.h"

namespace fayline {

/// A dowel across one plane between a side and a main member, both pressing on it evenly.
struct DowelInput {
    ForcePerLength sideBearing, mainBearing;  ///< bearing strength times width of the dowel
    Length sideLength, mainLength;            ///< lengths that bear
    Length gap;                               ///< between the two: felt, bedding, shim
    Moment sideMoment, mainMoment;            ///< the dowel's moment at a hinge in either
    bool operator==(const DowelInput&) const = default;
};

/// Yield load of one plane by each way of giving, unreduced.
struct DowelModes {
    Force im;    ///< main member crushed along the dowel
    Force is;    ///< side member crushed along the dowel
    Force ii;    ///< dowel turns straight in both
    Force iiim;  ///< hinge in the side member, dowel turns in the main
    Force iiis;  ///< hinge in the main member, dowel turns in the side
    Force iv;    ///< a hinge in each
    bool operator==(const DowelModes&) const = default;
};

/// General dowel equations (AWC Technical Report 12, Table 1-1). Without a gap and with one moment
/// they are the closed forms of NDS Table 12.3.1A.
DowelModes dowelModes(const DowelInput& input);

/// Plastic moment of the dowel, F_yb·D³/6 round, F_yb·a³/4 square.
enum class DowelSection { round, square };
Moment dowelMoment(Stress bendingYield, Length width, DowelSection section = DowelSection::round);

/// One mode by the name the standard prints, with its load.
struct ModeLoad {
    std::string name;  ///< "IIIs", "d"
    Force load;
    bool operator==(const ModeLoad&) const = default;
};

/// The mode with the least load, the first of equals. Needs at least one.
const ModeLoad& leastMode(const std::vector<ModeLoad>& modes);

}  // namespace fayline
