#include <algorithm>
#include <cmath>
#include <set>

#include "layout/planking.h"

namespace fayline {
namespace {

constexpr std::size_t leastShift = 3;  ///< frame spaces between butts of neighbouring strakes
constexpr int strakesBetween = 3;      ///< whole strakes between butts in one bay

struct Place {
    double x_m, y_m, z_m;
};

Place middleOf(const PlankLine& line, int strake) {
    const auto k = static_cast<std::size_t>(strake);
    const CurvePoint at = line.curve->at((line.seams[k - 1] + line.seams[k]) / 2.0);
    return {line.curve->x().si(), at.y.si(), at.z.si()};
}

/// Lengths of one strake from bay to bay, frame to frame.
std::vector<double> bayLengths(const PlankingInput& in, int strake) {
    std::vector<double> lengths_m;
    for (std::size_t i = 0; i + 1 < in.frames.size(); ++i) {
        const Place a = middleOf(in.frames[i], strake);
        const Place b = middleOf(in.frames[i + 1], strake);
        lengths_m.push_back(std::hypot(b.x_m - a.x_m, b.y_m - a.y_m, b.z_m - a.z_m));
    }
    return lengths_m;
}

bool keepsShift(const std::vector<std::set<std::size_t>>& taken, int strake, std::size_t bay) {
    for (int back = 1; back <= strakesBetween && strake - back >= 1; ++back) {
        for (const std::size_t other : taken[static_cast<std::size_t>(strake - back)]) {
            const std::size_t apart = other > bay ? other - bay : bay - other;
            if (apart == 0 || (back == 1 && apart < leastShift)) return false;
        }
    }
    return true;
}

struct Row {
    std::vector<Butt> butts;
    std::vector<std::size_t> tight;  ///< butts that do not keep the shift
    std::vector<int> unbroken;       ///< strakes with planks longer than the longest
};

Row rowOf(const std::vector<std::vector<double>>& lengths_m, double longest_m) {
    Row row;
    const int strakes = static_cast<int>(lengths_m.size()) - 1;
    std::vector<std::set<std::size_t>> taken(static_cast<std::size_t>(strakes) + 1);
    for (int strake = 1; strake <= strakes; ++strake) {
        const std::vector<double>& bays_m = lengths_m[static_cast<std::size_t>(strake)];
        std::size_t from = 0;  // bay the present plank starts in
        double used_m = 0;     // of the plank before that bay's own frame
        for (;;) {
            double left_m = -used_m;
            for (std::size_t b = from; b < bays_m.size(); ++b) left_m += bays_m[b];
            if (left_m <= longest_m) break;
            // The last bay whose middle this plank still reaches.
            double reach_m = -used_m;
            std::size_t last = from;
            for (std::size_t b = from; b < bays_m.size(); ++b) {
                if (reach_m + bays_m[b] / 2.0 > longest_m) break;
                last = b;
                reach_m += bays_m[b];
            }
            std::size_t bay = last;
            while (bay > from && !keepsShift(taken, strake, bay)) --bay;
            if (bay <= from) {
                if (last == from) {
                    row.unbroken.push_back(strake);
                    break;
                }
                bay = last;
                row.tight.push_back(row.butts.size());
            }
            taken[static_cast<std::size_t>(strake)].insert(bay);
            row.butts.push_back({"butt" + std::to_string(row.butts.size() + 1), strake, bay});
            from = bay;
            used_m = bays_m[bay] / 2.0;
        }
    }
    return row;
}

/// The least length of plank, by quarter metres, with which every strake keeps the shift.
std::optional<Length> cureFor(const std::vector<std::vector<double>>& lengths_m,
                              double longest_m) {
    constexpr double step_m = 0.25;
    for (double at_m = step_m * (std::floor(longest_m / step_m) + 1); at_m <= longest_m + 4;
         at_m += step_m) {
        const Row row = rowOf(lengths_m, at_m);
        if (row.tight.empty() && row.unbroken.empty()) return metres(at_m);
    }
    return std::nullopt;
}

}  // namespace

std::vector<Butt> setOutButts(const PlankingInput& in, std::vector<Finding>& findings) {
    if (!in.longest || in.frames.size() < 2) return {};
    const bool complete = std::all_of(in.frames.begin(), in.frames.end(), [&](const PlankLine& l) {
        return l.curve && l.seams.size() == in.frames.front().seams.size() && l.seams.size() > 1;
    });
    if (!complete) return {};
    std::vector<std::vector<double>> lengths_m(1);
    for (int k = 1; k < static_cast<int>(in.frames.front().seams.size()); ++k)
        lengths_m.push_back(bayLengths(in, k));
    const double longest_m = in.longest->si();
    Row row = rowOf(lengths_m, longest_m);
    if (row.tight.empty() && row.unbroken.empty()) return row.butts;
    const auto cure = cureFor(lengths_m, longest_m);
    const auto tell = [&](std::vector<std::string> holes, const std::string& says) {
        Finding finding{"butt", std::move(holes), std::nullopt, says, {}};
        if (cure) {
            finding.missing = *cure - *in.longest;
            finding.cure = {"planking.longest=" +
                            std::to_string(std::lround(inMillimetres(*cure))) + " mm"};
        }
        findings.push_back(std::move(finding));
    };
    for (const std::size_t i : row.tight) {
        const Butt& butt = row.butts[i];
        std::vector<std::string> holes;
        if (in.butt && in.butt->count > 0) holes = {butt.id + ".P.1", butt.id + ".S.1"};
        tell(std::move(holes), butt.id + " of strake" + std::to_string(butt.strake) +
                                   " stands nearer than three frame spaces to its neighbour's, or "
                                   "within three strakes in one bay");
    }
    for (const int strake : row.unbroken)
        tell({}, "strake" + std::to_string(strake) +
                     ": the longest plank does not reach over a frame space");
    return row.butts;
}

}  // namespace fayline
