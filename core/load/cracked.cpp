#include <algorithm>
#include <cmath>

#include "load/ballast.h"

namespace fayline {
namespace {

/// First and second moments of the contact strip beyond `neutral`: ∫(u−n)du and ∫(u−n)²du over the
/// strip's own breadth.
struct Contact {
    double first_m3;
    double second_m4;
};

Contact contactBeyond(const std::vector<CrackedStrip>& strips, double neutral_m) {
    Contact sum{0, 0};
    for (const CrackedStrip& strip : strips) {
        const double half_m = strip.halfBreadth.si();
        const double from_m = std::max(neutral_m, -half_m) - neutral_m;
        const double to_m = half_m - neutral_m;
        if (to_m <= from_m) continue;
        sum.first_m3 += strip.length.si() * (to_m * to_m - from_m * from_m) / 2.0;
        sum.second_m4 += strip.length.si() * (to_m * to_m * to_m - from_m * from_m * from_m) / 3.0;
    }
    return sum;
}

double tensionFirst(const std::vector<CrackedBolt>& bolts, double neutral_m) {
    double sum = 0;
    for (const CrackedBolt& bolt : bolts)
        sum += bolt.stiffness.si() * std::max(0.0, neutral_m - bolt.u.si());
    return sum;
}

}  // namespace

CrackedSection crackedSection(const std::vector<CrackedBolt>& bolts,
                              const std::vector<CrackedStrip>& strips, BedStiffness bed,
                              Moment moment) {
    CrackedSection section;
    section.tension.assign(bolts.size(), Force{});
    double widest_m = 0;
    for (const CrackedStrip& strip : strips) widest_m = std::max(widest_m, strip.halfBreadth.si());
    double low_m = -widest_m;
    double high_m = widest_m;
    for (const CrackedBolt& bolt : bolts) low_m = std::min(low_m, bolt.u.si());
    const auto balance = [&](double n_m) {
        return tensionFirst(bolts, n_m) - bed.si() * contactBeyond(strips, n_m).first_m3;
    };
    if (bolts.empty() || widest_m <= 0 || bed.si() <= 0 || balance(low_m) > 0 ||
        balance(high_m) < 0)
        return section;
    // Tension grows and contact shrinks as the neutral line moves to lee: one root. Halving to the
    // last bit is exact enough.
    for (int i = 0; i < 200 && low_m < high_m; ++i) {
        const double mid_m = low_m + (high_m - low_m) / 2.0;
        if (mid_m <= low_m || mid_m >= high_m) break;
        (balance(mid_m) > 0 ? high_m : low_m) = mid_m;
    }
    const double neutral_m = low_m + (high_m - low_m) / 2.0;
    const Contact contact = contactBeyond(strips, neutral_m);
    double resisting = bed.si() * contact.second_m4;
    for (const CrackedBolt& bolt : bolts) {
        const double pull_m = std::max(0.0, neutral_m - bolt.u.si());
        resisting += bolt.stiffness.si() * pull_m * pull_m;
    }
    if (resisting <= 0 || contact.first_m3 <= 0) return section;
    const double turn = moment.si() / resisting;
    for (std::size_t i = 0; i < bolts.size(); ++i) {
        section.tension[i] =
            newtons(turn * bolts[i].stiffness.si() * std::max(0.0, neutral_m - bolts[i].u.si()));
    }
    section.neutral = metres(neutral_m);
    section.contact = newtons(turn * bed.si() * contact.first_m3);
    section.contactAt = metres(neutral_m + contact.second_m4 / contact.first_m3);
    section.highest = Stress::fromSi(turn * bed.si() * (widest_m - neutral_m));
    section.balanced = true;
    return section;
}

}  // namespace fayline
