#include <algorithm>
#include <numeric>

#include "load/ballast.h"

namespace fayline {

Shares sharesAlong(const std::vector<BedSlice>& bed, Length massCentre,
                   const std::vector<Length>& supports) {
    const std::size_t count = supports.size();
    Shares shares{std::vector<double>(count, 0.0), std::vector<double>(count, 0.0)};
    if (count == 0) return shares;

    std::vector<std::size_t> order(count);
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return supports[a] < supports[b]; });
    double total_kg = 0;
    for (const BedSlice& slice : bed) {
        const double mass_kg = slice.ballast.si() * slice.length.si();
        total_kg += mass_kg;
        // The support nearest this slice; on a tie the forward one.
        std::size_t nearest = order.front();
        for (const std::size_t i : order) {
            if (abs(supports[i] - slice.x) < abs(supports[nearest] - slice.x)) nearest = i;
        }
        shares.tributary[nearest] += mass_kg;
    }
    for (double& share : shares.tributary)
        share = total_kg > 0 ? share / total_kg : 1.0 / static_cast<double>(count);

    double mean_m = 0;
    for (const Length x : supports) mean_m += x.si() / static_cast<double>(count);
    double spread_m2 = 0;
    for (const Length x : supports) spread_m2 += (x.si() - mean_m) * (x.si() - mean_m);
    for (std::size_t i = 0; i < count; ++i) {
        shares.rigid[i] = 1.0 / static_cast<double>(count);
        if (spread_m2 > 0)
            shares.rigid[i] += (massCentre.si() - mean_m) * (supports[i].si() - mean_m) / spread_m2;
    }
    return shares;
}

}  // namespace fayline
