#pragma once

#include <cmath>
#include <compare>

namespace fayline {

/// A physical quantity: mass^M length^L time^T, one double in SI base units.
/// Made only through named functions (millimetres(38.1)), read only through named functions
/// (inMillimetres(x)).
template <int M, int L, int T>
class Quantity {
  public:
    constexpr Quantity() = default;

    static constexpr Quantity fromSi(double value) {
        Quantity q;
        q.value_ = value;
        return q;
    }
    /// The value in kg^M m^L s^T. For use inside .cpp files only.
    [[nodiscard]] constexpr double si() const { return value_; }

    constexpr auto operator<=>(const Quantity&) const = default;

    constexpr Quantity operator-() const { return fromSi(-value_); }
    constexpr Quantity& operator+=(Quantity o) {
        value_ += o.value_;
        return *this;
    }
    constexpr Quantity& operator-=(Quantity o) {
        value_ -= o.value_;
        return *this;
    }
    constexpr Quantity& operator*=(double factor) {
        value_ *= factor;
        return *this;
    }
    constexpr Quantity& operator/=(double factor) {
        value_ /= factor;
        return *this;
    }

    friend constexpr Quantity operator+(Quantity a, Quantity b) { return a += b; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return a -= b; }
    friend constexpr Quantity operator*(Quantity a, double factor) { return a *= factor; }
    friend constexpr Quantity operator*(double factor, Quantity a) { return a *= factor; }
    friend constexpr Quantity operator/(Quantity a, double factor) { return a /= factor; }

  private:
    double value_ = 0.0;
};

namespace detail {
template <int M, int L, int T>
constexpr auto wrap(double value) {
    if constexpr (M == 0 && L == 0 && T == 0) {
        return value;
    } else {
        return Quantity<M, L, T>::fromSi(value);
    }
}
}  // namespace detail

/// Products and quotients carry their own unit; one without any unit is a plain double.
template <int M1, int L1, int T1, int M2, int L2, int T2>
constexpr auto operator*(Quantity<M1, L1, T1> a, Quantity<M2, L2, T2> b) {
    return detail::wrap<M1 + M2, L1 + L2, T1 + T2>(a.si() * b.si());
}
template <int M1, int L1, int T1, int M2, int L2, int T2>
constexpr auto operator/(Quantity<M1, L1, T1> a, Quantity<M2, L2, T2> b) {
    return detail::wrap<M1 - M2, L1 - L2, T1 - T2>(a.si() / b.si());
}

/// Square root of a quantity with even dimensions (an area gives a length).
template <int M, int L, int T>
auto sqrt(Quantity<M, L, T> q) {
    static_assert(M % 2 == 0 && L % 2 == 0 && T % 2 == 0, "only even dimensions have a root");
    return detail::wrap<M / 2, L / 2, T / 2>(std::sqrt(q.si()));
}

template <int M, int L, int T>
constexpr Quantity<M, L, T> abs(Quantity<M, L, T> q) {
    return q.si() < 0 ? -q : q;
}
template <int M, int L, int T>
constexpr Quantity<M, L, T> min(Quantity<M, L, T> a, Quantity<M, L, T> b) {
    return b < a ? b : a;
}
template <int M, int L, int T>
constexpr Quantity<M, L, T> max(Quantity<M, L, T> a, Quantity<M, L, T> b) {
    return a < b ? b : a;
}
template <int M, int L, int T>
bool isFinite(Quantity<M, L, T> q) {
    return std::isfinite(q.si());
}

using Length = Quantity<0, 1, 0>;
using Area = Quantity<0, 2, 0>;
using Volume = Quantity<0, 3, 0>;
using SecondMoment = Quantity<0, 4, 0>;
using Mass = Quantity<1, 0, 0>;
using LineMass = Quantity<1, -1, 0>;
using Density = Quantity<1, -3, 0>;
using Force = Quantity<1, 1, -2>;
using Moment = Quantity<1, 2, -2>;
using Stress = Quantity<1, -1, -2>;
using ForcePerLength = Quantity<1, 0, -2>;
using Acceleration = Quantity<0, 1, -2>;

constexpr Length millimetres(double v) {
    return Length::fromSi(v / 1000.0);
}
constexpr Length metres(double v) {
    return Length::fromSi(v);
}
constexpr Length inches(double v) {
    return Length::fromSi(v * 254.0 / 10000.0);
}
constexpr Area squareMillimetres(double v) {
    return Area::fromSi(v / 1.0e6);
}
constexpr Area squareMetres(double v) {
    return Area::fromSi(v);
}
constexpr Volume cubicMetres(double v) {
    return Volume::fromSi(v);
}
constexpr Mass kilograms(double v) {
    return Mass::fromSi(v);
}
constexpr Density kilogramsPerCubicMetre(double v) {
    return Density::fromSi(v);
}
constexpr Force newtons(double v) {
    return Force::fromSi(v);
}
constexpr Moment newtonMetres(double v) {
    return Moment::fromSi(v);
}
constexpr Stress megapascals(double v) {
    return Stress::fromSi(v * 1.0e6);
}
constexpr Acceleration metresPerSecondSquared(double v) {
    return Acceleration::fromSi(v);
}

constexpr double inMillimetres(Length q) {
    return q.si() * 1000.0;
}
constexpr double inMetres(Length q) {
    return q.si();
}
constexpr double inInches(Length q) {
    return q.si() * 10000.0 / 254.0;
}
constexpr double inSquareMillimetres(Area q) {
    return q.si() * 1.0e6;
}
constexpr double inSquareMetres(Area q) {
    return q.si();
}
constexpr double inCubicMetres(Volume q) {
    return q.si();
}
constexpr double inKilograms(Mass q) {
    return q.si();
}
constexpr double inKilogramsPerCubicMetre(Density q) {
    return q.si();
}
constexpr double inNewtons(Force q) {
    return q.si();
}
constexpr double inNewtonMetres(Moment q) {
    return q.si();
}
constexpr double inMegapascals(Stress q) {
    return q.si() / 1.0e6;
}
constexpr double inNewtonsPerMillimetre(ForcePerLength q) {
    return q.si() / 1000.0;
}

/// Standard acceleration of gravity (CGPM 1901).
inline constexpr Acceleration standardGravity = metresPerSecondSquared(9.80665);

/// A place in the hull: x aft, y to starboard, z up.
struct Point {
    Length x, y, z;
    bool operator==(const Point&) const = default;
};
/// A force with its three components along x, y, z.
struct ForceVector {
    Force x, y, z;
    bool operator==(const ForceVector&) const = default;
};
/// A moment with its three components about x, y, z (right hand).
struct MomentVector {
    Moment x, y, z;
    bool operator==(const MomentVector&) const = default;
};

/// An angle; kept apart from plain ratios.
class Angle {
  public:
    constexpr Angle() = default;
    static constexpr Angle degrees(double v) {
        Angle a;
        a.degrees_ = v;
        return a;
    }
    [[nodiscard]] constexpr double inDegrees() const { return degrees_; }
    [[nodiscard]] constexpr double inRadians() const {
        return degrees_ * 3.14159265358979323846 / 180.0;
    }
    constexpr auto operator<=>(const Angle&) const = default;

  private:
    double degrees_ = 0.0;
};

/// A wood-screw gauge (No. 14): a kind of its own, never a length.
class Gauge {
  public:
    explicit constexpr Gauge(int number) : number_(number) {}
    [[nodiscard]] constexpr int number() const { return number_; }
    constexpr auto operator<=>(const Gauge&) const = default;

  private:
    int number_;
};

/// The four bases on which a wood's density is published. Types keep them apart.
struct SpecificGravityOvenDry {  ///< oven-dry mass, oven-dry volume (US design standard's G)
    double value = 0.0;
    auto operator<=>(const SpecificGravityOvenDry&) const = default;
};
struct SpecificGravityTwelve {  ///< oven-dry mass, volume at 12 % moisture (handbook tables)
    double value = 0.0;
    auto operator<=>(const SpecificGravityTwelve&) const = default;
};
struct SpecificGravityGreen {  ///< oven-dry mass, green volume (basic specific gravity)
    double value = 0.0;
    auto operator<=>(const SpecificGravityGreen&) const = default;
};
struct CharacteristicDensity {  ///< fifth percentile, mass and volume at 12 % (Eurocode 5)
    Density value;
    auto operator<=>(const CharacteristicDensity&) const = default;
};

}  // namespace fayline
