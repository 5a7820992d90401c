#pragma once

#include <array>
#include <cstddef>
#include <initializer_list>
#include <string_view>

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
    std::string_view name;  ///< "IIIs", "d"; of static storage
    Force load;
    bool operator==(const ModeLoad&) const = default;
};

/// Up to six modes in the standard's order.
class ModeLoads {
  public:
    ModeLoads() = default;
    ModeLoads(std::initializer_list<ModeLoad> modes) {
        for (const ModeLoad& mode : modes) all_[count_++] = mode;
    }
    [[nodiscard]] const ModeLoad* begin() const { return all_.data(); }
    [[nodiscard]] const ModeLoad* end() const { return all_.data() + count_; }
    [[nodiscard]] ModeLoad* begin() { return all_.data(); }
    [[nodiscard]] ModeLoad* end() { return all_.data() + count_; }
    [[nodiscard]] std::size_t size() const { return count_; }
    void push_back(const ModeLoad& mode) { all_[count_++] = mode; }
    [[nodiscard]] const ModeLoad& front() const { return all_.front(); }
    const ModeLoad& operator[](std::size_t i) const { return all_[i]; }
    bool operator==(const ModeLoads&) const = default;

  private:
    std::array<ModeLoad, 6> all_{};
    std::size_t count_ = 0;
};

/// The mode with the least load, the first of equals. Needs at least one.
const ModeLoad& leastMode(const ModeLoads& modes);

}  // namespace fayline
