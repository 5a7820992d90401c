#include "offsets_check.h"

#include <algorithm>
#include <array>
#include <utility>

#include "limits_words.h"
#include "quantity/text.h"

namespace fayline {
namespace {

using detail::farthest;
using detail::SourceLines;

constexpr std::size_t mostStations = 1000;
constexpr std::size_t mostPoints = 1000;
constexpr std::size_t mostProblems = 1000;

/// The text as typed, or the value where nothing was typed.
std::string shown(Length value, const std::string& typed) {
    if (!typed.empty()) return quotable(typed);
    return detail::inWords(value);
}

/// A station as messages call it.
std::string stationName(const std::string& id) {
    return id.empty() ? "the station without a name" : "station " + quotable(id);
}

std::string counted(std::size_t count, const char* one, const char* many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

/// Twice the area of the triangle a, b, c in square metres: its sign tells the side of a-b that c
/// lies on.
double side_m2(const OffsetPoint& a, const OffsetPoint& b, const OffsetPoint& c) {
    return ((b.halfBreadth - a.halfBreadth) * (c.height - a.height) -
            (b.height - a.height) * (c.halfBreadth - a.halfBreadth))
        .si();
}

bool inBox(const OffsetPoint& a, const OffsetPoint& b, const OffsetPoint& p) {
    return p.halfBreadth >= min(a.halfBreadth, b.halfBreadth) &&
           p.halfBreadth <= max(a.halfBreadth, b.halfBreadth) &&
           p.height >= min(a.height, b.height) && p.height <= max(a.height, b.height);
}

/// Whether the pieces a-b and c-d have a point in common.
bool meet(const OffsetPoint& a, const OffsetPoint& b, const OffsetPoint& c, const OffsetPoint& d) {
    const double abc = side_m2(a, b, c), abd = side_m2(a, b, d);
    const double cda = side_m2(c, d, a), cdb = side_m2(c, d, b);
    if (abc * abd < 0.0 && cda * cdb < 0.0) return true;
    return (abc == 0.0 && inBox(a, b, c)) || (abd == 0.0 && inBox(a, b, d)) ||
           (cda == 0.0 && inBox(c, d, a)) || (cdb == 0.0 && inBox(c, d, b));
}

/// Whether b-c runs back along a-b.
bool foldsBack(const OffsetPoint& a, const OffsetPoint& b, const OffsetPoint& c) {
    const Area along = (b.halfBreadth - a.halfBreadth) * (c.halfBreadth - b.halfBreadth) +
                       (b.height - a.height) * (c.height - b.height);
    return side_m2(a, b, c) == 0.0 && along.si() < 0.0;
}

class Checker {
  public:
    Checker(const Offsets& offsets, const SourceLines* lines) : offsets_(offsets), lines_(lines) {}

    Problems run() {
        const auto& stations = offsets_.stations;
        if (stations.size() < 2) {
            refuse("offsets.stations", wholeWhere(),
                   "there " + std::string(stations.size() == 1 ? "is " : "are ") +
                       counted(stations.size(), "station", "stations"),
                   "at least 2 stations");
        } else if (stations.size() > mostStations) {
            refuse("offsets.stations", wholeWhere(),
                   "there are " + counted(stations.size(), "station", "stations"),
                   "at most " + std::to_string(mostStations));
            return std::move(problems_);
        }
        for (std::size_t s = 0; s < stations.size(); ++s) checkStation(s);
        for (std::size_t s = 1; s < stations.size(); ++s) checkOrder(s);
        if (problems_.empty()) checkWaterline();
        if (problems_.size() > mostProblems) problems_.resize(mostProblems);
        return std::move(problems_);
    }

  private:
    void refuse(std::string code, std::string where, std::string what, std::string allowed) {
        problems_.push_back(
            {std::move(code), std::move(where), std::move(what), std::move(allowed)});
    }

    [[nodiscard]] std::string fileWhere(int line) const {
        return lines_->file + ":" + std::to_string(line);
    }
    [[nodiscard]] std::string wholeWhere() const {
        return lines_ != nullptr ? fileWhere(lines_->header) : "offsets";
    }
    [[nodiscard]] std::string where(std::size_t s, std::size_t p) const {
        if (lines_ == nullptr) return "offsets." + offsets_.stations[s].id;
        const auto& of = lines_->points[s];
        return fileWhere(of.empty() ? lines_->header : of[std::min(p, of.size() - 1)]);
    }
    [[nodiscard]] std::string placeOf(std::size_t s, std::size_t p) const {
        return std::to_string(lines_ != nullptr ? lines_->points[s][p] : static_cast<int>(p) + 1);
    }
    /// "the piece between lines 22 and 23"; piece 0 joins the first point to the centreline.
    [[nodiscard]] std::string pieceName(std::size_t s, std::size_t piece) const {
        const std::string word = lines_ != nullptr ? "line" : "point";
        if (piece == 0) return "the join from the centreline to " + word + " " + placeOf(s, 0);
        return "the piece between " + word + "s " + placeOf(s, piece - 1) + " and " +
               placeOf(s, piece);
    }
    /// "half_breadth" in a file, "half_breadth of point 3" without one.
    [[nodiscard]] std::string named(const char* field, std::size_t p) const {
        return lines_ != nullptr ? field
                                 : std::string(field) + " of point " + std::to_string(p + 1);
    }

    bool checkSize(Length value, const std::string& typed, const std::string& at,
                   const std::string& name) {
        if (isFinite(value) && abs(value) <= farthest) return true;
        refuse("offsets.size", at, name + " is " + shown(value, typed), "at most 200 m either way");
        return false;
    }

    void checkStation(std::size_t s) {
        const auto& station = offsets_.stations[s];
        if (station.id.empty()) {
            refuse("offsets.id", lines_ != nullptr ? where(s, 0) : "offsets",
                   "the station at x = " + shown(station.x, station.xText) + " has no name",
                   "a name for each station");
        }
        checkSize(station.x, station.xText, where(s, 0), "x");
        if (station.points.size() < 2) {
            refuse("offsets.points", where(s, 0),
                   stationName(station.id) + " has " +
                       counted(station.points.size(), "point", "points"),
                   "at least 2 points");
            return;
        }
        if (station.points.size() > mostPoints) {
            refuse("offsets.points", where(s, 0),
                   stationName(station.id) + " has " +
                       counted(station.points.size(), "point", "points"),
                   "at most " + std::to_string(mostPoints));
            return;
        }
        if (station.rabbet &&
            (*station.rabbet < 1 || *station.rabbet > static_cast<int>(station.points.size()))) {
            refuse("offsets.rabbet", where(s, 0),
                   "the rabbet of " + stationName(station.id) + " is point " +
                       std::to_string(*station.rabbet),
                   "1 to " + std::to_string(station.points.size()));
        }
        bool sound = true;
        for (std::size_t p = 0; p < station.points.size(); ++p) {
            const auto& point = station.points[p];
            const bool sized = checkSize(point.halfBreadth, point.halfBreadthText, where(s, p),
                                         named("half_breadth", p));
            sound = checkSize(point.height, point.heightText, where(s, p), named("height", p)) &&
                    sized && sound;
            if (sized && point.halfBreadth < Length{}) {
                refuse("offsets.half_breadth", where(s, p),
                       named("half_breadth", p) + " is " +
                           shown(point.halfBreadth, point.halfBreadthText),
                       "0 mm or more");
                sound = false;
            }
        }
        if (sound && !checkDoubles(s)) checkChain(s);
    }

    bool checkDoubles(std::size_t s) {
        const auto& points = offsets_.stations[s].points;
        bool found = false;
        for (std::size_t p = 1; p < points.size(); ++p) {
            for (std::size_t q = 0; q < p; ++q) {
                if (points[p].halfBreadth != points[q].halfBreadth ||
                    points[p].height != points[q].height) {
                    continue;
                }
                refuse("offsets.double_point", where(s, p),
                       (lines_ != nullptr ? std::string("the point")
                                          : "point " + std::to_string(p + 1)) +
                           " is the same as the one " +
                           (lines_ != nullptr ? "in line " : "numbered ") + placeOf(s, q),
                       "each point of a section once");
                found = true;
                break;
            }
        }
        return found;
    }

    void checkChain(std::size_t s) {
        const auto& station = offsets_.stations[s];
        if (station.points.back().height <= station.points.front().height) {
            refuse("offsets.upside_down", where(s, station.points.size() - 1),
                   "the last point of " + stationName(station.id) + ", at " +
                       shown(station.points.back().height, station.points.back().heightText) +
                       ", is not above the first, at " +
                       shown(station.points.front().height, station.points.front().heightText),
                   "points in order from keel to sheer");
            return;
        }
        std::vector<OffsetPoint> chain = station.points;
        OffsetPoint middle = chain.front();
        middle.halfBreadth = Length{};
        chain.insert(chain.begin(), middle);
        const bool joined = chain[1].halfBreadth > Length{};
        for (std::size_t i = joined ? 0 : 1; i + 2 < chain.size(); ++i) {
            if (foldsBack(chain[i], chain[i + 1], chain[i + 2])) return refuseCrossing(s, i, i + 1);
            for (std::size_t k = i + 2; k + 1 < chain.size(); ++k) {
                if (meet(chain[i], chain[i + 1], chain[k], chain[k + 1])) {
                    return refuseCrossing(s, i, k);
                }
            }
        }
    }

    void refuseCrossing(std::size_t s, std::size_t first, std::size_t second) {
        refuse("offsets.crossing", where(s, second),
               "the section of " + stationName(offsets_.stations[s].id) +
                   " crosses itself: " + pieceName(s, second) + " meets " + pieceName(s, first),
               "points in order from keel to sheer, along a line that does not cross itself");
    }

    void checkOrder(std::size_t s) {
        const auto& stations = offsets_.stations;
        for (std::size_t before = 0; before < s; ++before) {
            if (stations[before].id != stations[s].id || stations[s].id.empty()) continue;
            refuse("offsets.station_twice", where(s, 0),
                   stationName(stations[s].id) + " comes twice",
                   "all points of a station together, and each name once");
            break;
        }
        const auto& fore = stations[s - 1];
        const auto& aft = stations[s];
        if (!isFinite(fore.x) || !isFinite(aft.x) || aft.x > fore.x) return;
        refuse("offsets.order", where(s, 0),
               stationName(aft.id) + " at x = " + shown(aft.x, aft.xText) +
                   " does not lie aft of " + stationName(fore.id) +
                   " at x = " + shown(fore.x, fore.xText),
               "stations in order from forward to aft");
    }

    void checkWaterline() {
        if (!offsets_.waterline) return;
        const auto& stations = offsets_.stations;
        Length low = stations[0].points[0].height;
        Length top = stations[0].points.back().height;
        for (const auto& station : stations) {
            top = min(top, station.points.back().height);
            for (const auto& point : station.points) low = min(low, point.height);
        }
        if (*offsets_.waterline > low && *offsets_.waterline <= top) return;
        refuse("offsets.waterline",
               lines_ != nullptr ? fileWhere(lines_->waterline) : "offsets.waterline",
               "waterline is " + shown(*offsets_.waterline, offsets_.waterlineText),
               "above " + shown(low, {}) + " (the lowest point), up to " + shown(top, {}) +
                   " (the lowest station's top)");
    }

    const Offsets& offsets_;
    const SourceLines* lines_;
    Problems problems_;
};

}  // namespace

namespace detail {

Problems checkTable(const Offsets& offsets, const SourceLines* lines) {
    return Checker(offsets, lines).run();
}

}  // namespace detail

Problems checkOffsets(const Offsets& offsets) {
    return detail::checkTable(offsets, nullptr);
}

Length waterlineOf(const Offsets& offsets) {
    if (offsets.waterline) return *offsets.waterline;
    std::optional<Length> lowest;
    for (const auto& station : offsets.stations) {
        if (station.points.empty()) continue;
        const Length top = station.points.back().height;
        lowest = lowest ? min(*lowest, top) : top;
    }
    return lowest.value_or(Length{});
}

}  // namespace fayline
