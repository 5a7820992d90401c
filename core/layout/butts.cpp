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

double between(const Place& a, const Place& b) {
    return std::hypot(b.x_m - a.x_m, b.y_m - a.y_m, b.z_m - a.z_m);
}

/// From a strake's end to a frame; nil where the end has no shape.
double toEnd(const std::shared_ptr<const PlankEnds>& ends, const PlankLine& frame, int strake) {
    const auto k = static_cast<std::size_t>(strake) - 1;
    if (!ends || k >= ends->strakes.size()) return 0.0;
    const EndSpot end = ends->strakes[k].middle();
    return between({end.end.si(), end.at.y.si(), end.at.z.si()}, middleOf(frame, strake));
}

/// A strake from one end of the hull to the other; where an end has no shape, from the last frame.
struct StrakeRun {
    double length_m = 0;
    std::vector<double> middles_m;  ///< of each bay, from the strake's fore end
};

StrakeRun runOf(const PlankingInput& in, int strake) {
    StrakeRun run;
    run.length_m = toEnd(in.fore, in.frames.front(), strake);
    for (std::size_t i = 0; i + 1 < in.frames.size(); ++i) {
        const double bay_m =
            between(middleOf(in.frames[i], strake), middleOf(in.frames[i + 1], strake));
        run.middles_m.push_back(run.length_m + bay_m / 2.0);
        run.length_m += bay_m;
    }
    run.length_m += toEnd(in.aft, in.frames.back(), strake);
    return run;
}

/// Whether a butt here keeps clear of those in the strakes below.
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

/// Butts from forward aft, each as far aft as the plank reaches and the shift allows, strake by
/// strake upward.
Row rowOf(const std::vector<StrakeRun>& runs, double longest_m) {
    Row row;
    const int strakes = static_cast<int>(runs.size()) - 1;
    std::vector<std::set<std::size_t>> taken(static_cast<std::size_t>(strakes) + 1);
    for (int strake = 1; strake <= strakes; ++strake) {
        const StrakeRun& run = runs[static_cast<std::size_t>(strake)];
        std::size_t next = 0;  // first bay the present plank may end in
        double start_m = 0;    // where it begins
        while (run.length_m - start_m > longest_m) {
            std::size_t end = next;  // one past the last bay it reaches the middle of
            while (end < run.middles_m.size() && run.middles_m[end] - start_m <= longest_m) ++end;
            if (end == next) {
                row.unbroken.push_back(strake);
                break;
            }
            std::size_t bay = end;
            while (bay > next && !keepsShift(taken, strake, bay - 1)) --bay;
            if (bay == next) {
                bay = end;
                row.tight.push_back(row.butts.size());
            }
            --bay;
            taken[static_cast<std::size_t>(strake)].insert(bay);
            row.butts.push_back({"", strake, bay});
            next = bay + 1;
            start_m = run.middles_m[bay];
        }
    }
    return row;
}

/// The least length of plank, by quarter metres, with which every strake keeps the shift.
std::optional<Length> cureFor(const std::vector<StrakeRun>& runs, double longest_m) {
    constexpr double step_m = 0.25;
    for (double at_m = step_m * (std::floor(longest_m / step_m) + 1); at_m <= longest_m + 4;
         at_m += step_m) {
        const Row row = rowOf(runs, at_m);
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
    std::vector<StrakeRun> runs(1);
    for (int k = 1; k < static_cast<int>(in.frames.front().seams.size()); ++k)
        runs.push_back(runOf(in, k));
    const double longest_m = in.longest->si();
    Row row = rowOf(runs, longest_m);
    for (Butt& butt : row.butts)
        butt.id = "butt" + std::to_string(butt.strake) + "_" + in.frames[butt.bay].frame;
    if (row.tight.empty() && row.unbroken.empty()) return row.butts;
    const auto cure = cureFor(runs, longest_m);
    const auto tell = [&](std::vector<std::string> holes, const std::string& says) {
        Finding finding{"butt", std::move(holes), std::nullopt, says, {}};
        if (cure) {
            finding.missing = *cure - *in.longest;
            finding.cure = {
                "planking.longest=" + std::to_string(std::lround(inMillimetres(*cure))) + " mm"};
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
                     ": the longest plank does not reach from one place for a butt to the next");
    return row.butts;
}

}  // namespace fayline
