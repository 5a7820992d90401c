#include "load/plane.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace fayline {
namespace {

using Vec3 = std::array<double, 3>;

/// Opening between ballast and keel: w = d[0] + d[1]·x + d[2]·y, lengths over a reach so that the
/// three numbers are alike in size.
struct Plane {
    Vec3 d{0, 0, 0};
    [[nodiscard]] double at(double x, double y) const { return d[0] + d[1] * x + d[2] * y; }
};

struct Symmetric {
    double aa = 0, ab = 0, ac = 0, bb = 0, bc = 0, cc = 0;
    void add(double weight, double x, double y) {
        aa += weight;
        ab += weight * x;
        ac += weight * y;
        bb += weight * x * x;
        bc += weight * x * y;
        cc += weight * y * y;
    }
    void add(const Symmetric& other, double part) {
        aa += part * other.aa;
        ab += part * other.ab;
        ac += part * other.ac;
        bb += part * other.bb;
        bc += part * other.bc;
        cc += part * other.cc;
    }
};

/// Solves by Cholesky. A direction in which nothing resists keeps still: one row of bolts with no
/// bed under load cannot tell how the ballast leans.
Vec3 solve(const Symmetric& m, const Vec3& right) {
    const double l11 = std::sqrt(m.aa);
    if (!(l11 > 0)) return {0, 0, 0};
    const double l21 = m.ab / l11;
    const double l31 = m.ac / l11;
    const double rest22 = m.bb - l21 * l21;
    const double l22 = rest22 > 1e-13 * m.bb ? std::sqrt(rest22) : 0.0;
    const double l32 = l22 > 0 ? (m.bc - l31 * l21) / l22 : 0.0;
    const double rest33 = m.cc - l31 * l31 - l32 * l32;
    const double l33 = rest33 > 1e-13 * m.cc ? std::sqrt(rest33) : 0.0;
    const double y1 = right[0] / l11;
    const double y2 = l22 > 0 ? (right[1] - l21 * y1) / l22 : 0.0;
    const double y3 = l33 > 0 ? (right[2] - l31 * y1 - l32 * y2) / l33 : 0.0;
    Vec3 out{0, 0, 0};
    out[2] = l33 > 0 ? y3 / l33 : 0.0;
    out[1] = l22 > 0 ? (y2 - l32 * out[2]) / l22 : 0.0;
    out[0] = (y1 - l21 * out[1] - l31 * out[2]) / l11;
    return out;
}

struct Bolt {
    double x, y, k;
};
struct Strip {
    double x, half, k;  ///< k: stiffness for each unit of breadth
};

struct State {
    double energy = 0;
    Vec3 gradient{0, 0, 0};  ///< what is out of balance
    Symmetric stiffness;
    double contact = 0, contactX = 0, contactY = 0;
};

/// Part of a strip in contact: limits in y.
bool contactOf(const Plane& plane, const Strip& strip, bool both, double& from, double& to) {
    from = -strip.half;
    to = strip.half;
    if (both) return to > from;
    const double middle = plane.d[0] + plane.d[1] * strip.x;
    const double slope = plane.d[2];
    if (slope > 0) {
        to = std::min(to, -middle / slope);
    } else if (slope < 0) {
        from = std::max(from, -middle / slope);
    } else if (middle >= 0) {
        return false;
    }
    return to > from;
}

class Section {
  public:
    Section(std::vector<Bolt> bolts, std::vector<Strip> strips, const Vec3& load)
        : bolts_(std::move(bolts)), strips_(std::move(strips)), load_(load) {}

    /// `both`: bolts that also push and a bed that also pulls, where the search begins.
    [[nodiscard]] State at(const Plane& plane, bool both) const {
        State state;
        state.gradient = load_;
        for (std::size_t i = 0; i < 3; ++i) state.energy += load_[i] * plane.d[i];
        for (const Bolt& bolt : bolts_) {
            const double open = plane.at(bolt.x, bolt.y);
            if (!both && open <= 0) continue;
            const double pull = bolt.k * open;
            state.energy += 0.5 * pull * open;
            state.gradient[0] += pull;
            state.gradient[1] += pull * bolt.x;
            state.gradient[2] += pull * bolt.y;
            state.stiffness.add(bolt.k, bolt.x, bolt.y);
        }
        for (const Strip& strip : strips_) addStrip(plane, strip, both, state);
        return state;
    }

    [[nodiscard]] const std::vector<Bolt>& bolts() const { return bolts_; }
    [[nodiscard]] const std::vector<Strip>& strips() const { return strips_; }

  private:
    static void addStrip(const Plane& plane, const Strip& strip, bool both, State& state) {
        double from = 0, to = 0;
        if (!contactOf(plane, strip, both, from, to)) return;
        const double s0 = to - from;
        const double s1 = (to * to - from * from) / 2.0;
        const double s2 = (to * to * to - from * from * from) / 3.0;
        const double middle = plane.d[0] + plane.d[1] * strip.x;
        const double slope = plane.d[2];
        const double push = -strip.k * (middle * s0 + slope * s1);
        const double pushY = -strip.k * (middle * s1 + slope * s2);
        state.energy += -0.5 * (push * middle + pushY * slope);
        state.gradient[0] -= push;
        state.gradient[1] -= push * strip.x;
        state.gradient[2] -= pushY;
        state.contact += push;
        state.contactX += push * strip.x;
        state.contactY += pushY;
        Symmetric& m = state.stiffness;
        m.aa += strip.k * s0;
        m.ab += strip.k * s0 * strip.x;
        m.ac += strip.k * s1;
        m.bb += strip.k * s0 * strip.x * strip.x;
        m.bc += strip.k * s1 * strip.x;
        m.cc += strip.k * s2;
    }

    std::vector<Bolt> bolts_;
    std::vector<Strip> strips_;
    Vec3 load_;
};

double sizeOf(const Vec3& v) {
    return std::sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
}

/// Newton's steps on a convex energy, halved until each goes down; then on while it still helps.
bool settle(const Section& section, double load, Plane& plane, State& state) {
    plane = {};
    state = section.at(plane, true);
    // A trace of the whole bed shows the way where a single row of bolts alone would not.
    constexpr double trace = 1e-9;
    const Symmetric whole = state.stiffness;
    Vec3 step = solve(state.stiffness, state.gradient);
    for (std::size_t i = 0; i < 3; ++i) plane.d[i] = -step[i];
    state = section.at(plane, false);
    for (int turn = 0; turn < 200; ++turn) {
        const double left = sizeOf(state.gradient);
        if (left <= 1e-16 * load) break;
        state.stiffness.add(whole, trace);
        step = solve(state.stiffness, state.gradient);
        bool better = false;
        for (double part = 1.0; part > 1e-12; part /= 2.0) {
            Plane next = plane;
            for (std::size_t i = 0; i < 3; ++i) next.d[i] -= part * step[i];
            State there = section.at(next, false);
            if (there.energy < state.energy || sizeOf(there.gradient) < left) {
                plane = next;
                state = there;
                better = true;
                break;
            }
        }
        if (!better) break;
    }
    return sizeOf(state.gradient) <= 1e-11 * load;
}

}  // namespace

PlaneSection planeSection(const std::vector<PlaneBolt>& bolts, const std::vector<PlaneStrip>& bed,
                          BedStiffness stiffness, const PlaneLoad& load) {
    PlaneSection result;
    result.tension.assign(bolts.size(), Force{});
    double along_m = 0, athwart_m = 0;
    for (const PlaneStrip& strip : bed) {
        along_m = std::max(along_m, std::abs(strip.x.si()));
        athwart_m = std::max(athwart_m, strip.halfBreadth.si());
    }
    if (bolts.empty() || along_m <= 0 || athwart_m <= 0 || stiffness.si() <= 0) return result;

    std::vector<Bolt> pulling;
    for (const PlaneBolt& bolt : bolts)
        pulling.push_back(
            {bolt.x.si() / along_m, bolt.y.si() / athwart_m, bolt.stiffness.si() / 1e6});
    std::vector<Strip> pressed;
    for (const PlaneStrip& strip : bed) {
        pressed.push_back({strip.x.si() / along_m, strip.halfBreadth.si() / athwart_m,
                           stiffness.si() * strip.length.si() * athwart_m / 1e6});
    }
    // A force up at (x, y) turns by +y about x and by −x about y.
    const Vec3 turning{load.up.si(), -load.pitch.si() / along_m, load.roll.si() / athwart_m};
    const double size_N = sizeOf(turning);
    if (size_N <= 0) {
        result.balanced = true;
        return result;
    }
    const Section section(std::move(pulling), std::move(pressed), turning);
    Plane plane;
    State state;
    result.balanced = settle(section, size_N, plane, state);
    if (!result.balanced) return result;
    for (std::size_t i = 0; i < bolts.size(); ++i) {
        const Bolt& bolt = section.bolts()[i];
        result.tension[i] = newtons(bolt.k * std::max(0.0, plane.at(bolt.x, bolt.y)));
    }
    result.contact = newtons(state.contact);
    if (state.contact > 0) {
        result.contactX = metres(state.contactX / state.contact * along_m);
        result.contactY = metres(state.contactY / state.contact * athwart_m);
    }
    if (plane.d[2] != 0) result.neutral = metres(-plane.d[0] / plane.d[2] * athwart_m);
    double deepest = 0;
    for (const Strip& strip : section.strips()) {
        deepest =
            std::max({deepest, -plane.at(strip.x, strip.half), -plane.at(strip.x, -strip.half)});
    }
    result.highest = Stress::fromSi(stiffness.si() * deepest / 1e6);
    return result;
}

}  // namespace fayline
