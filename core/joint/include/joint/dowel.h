#pragma once

#include <array>
#include <cstddef>
#include <iterator>
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

/// Up to six modes in the standard's order. Their names stand in a table of static storage.
class ModeLoads {
  public:
    ModeLoads() = default;
    template <std::size_t N>
    ModeLoads(const std::array<std::string_view, N>& names, const std::array<Force, N>& loads)
        : names_(names.data()), count_(N) {
        static_assert(N <= 6);
        for (std::size_t i = 0; i < N; ++i) loads_[i] = loads[i];
    }

    class Iterator {
      public:
        using iterator_category = std::input_iterator_tag;
        using value_type = ModeLoad;
        using difference_type = std::ptrdiff_t;
        using pointer = const ModeLoad*;
        using reference = ModeLoad;
        Iterator(const ModeLoads* all, std::size_t at) : all_(all), at_(at) {}
        ModeLoad operator*() const { return (*all_)[at_]; }
        Iterator& operator++() {
            ++at_;
            return *this;
        }
        bool operator==(const Iterator&) const = default;

      private:
        const ModeLoads* all_;
        std::size_t at_;
    };
    [[nodiscard]] Iterator begin() const { return {this, 0}; }
    [[nodiscard]] Iterator end() const { return {this, count_}; }
    [[nodiscard]] std::size_t size() const { return count_; }
    ModeLoad operator[](std::size_t i) const { return {names_[i], loads_[i]}; }
    [[nodiscard]] ModeLoad front() const { return (*this)[0]; }
    /// Which is least, the first of equals.
    [[nodiscard]] std::size_t least() const {
        std::size_t best = 0;
        double value = loads_[0].si();
        for (std::size_t i = 1; i < count_; ++i) {
            const double next = loads_[i].si();
            const bool less = next < value;  // no branch: which mode is least cannot be guessed
            value = less ? next : value;
            best = less ? i : best;
        }
        return best;
    }
    void scale(double factor) {
        for (Force& load : loads_) load *= factor;
    }
    bool operator==(const ModeLoads&) const = default;

  private:
    const std::string_view* names_ = nullptr;
    std::array<Force, 6> loads_{};
    std::size_t count_ = 0;
};

}  // namespace fayline
