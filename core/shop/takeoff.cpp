#include "shop/takeoff.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "pieces.h"
#include "quantity/text.h"

namespace fayline {
namespace {

/// Spares in hundred, by kind: those that are dropped, bent or twisted off most come first
/// (judgement). Bolts and drifts are few and dear: whole pieces only, so that a single one has
/// none.
struct SpareRule {
    const char* kind;
    double part;
    bool roundsUp;
};
constexpr SpareRule spareRules[] = {
    {"wood_screw", 0.05, true}, {"rivet", 0.10, true}, {"rove", 0.10, true},  {"bolt", 0.05, false},
    {"drift", 0.05, false},     {"nut", 0.05, true},   {"washer", 0.05, true}};

/// Screws and roves are sold by the hundred (common practice); fewer than one box are bought
/// singly.
constexpr int packOf = 100;

int sparesFor(const TakeOffLine& line) {
    for (const SpareRule& rule : spareRules) {
        if (line.kind != rule.kind) continue;
        const double exact = rule.part * line.count;
        return static_cast<int>(rule.roundsUp ? std::ceil(exact - 1e-9) : std::floor(exact + 1e-9));
    }
    return 0;
}

int orderFor(const TakeOffLine& line) {
    const int wanted = line.count + line.spare;
    const bool packed = line.kind == "wood_screw" || line.kind == "rove";
    if (!packed || wanted < packOf) return wanted;
    return (wanted + packOf - 1) / packOf * packOf;
}

int kindOrder(const std::string& kind) {
    static constexpr const char* order[] = {"bolt",       "nut",   "washer", "drift",
                                            "wood_screw", "rivet", "rove"};
    return static_cast<int>(std::find(std::begin(order), std::end(order), kind) -
                            std::begin(order));
}

class Counter {
  public:
    Counter(const TakeOffStock& stock, UnitSystem units) : stock_(stock), units_(units) {}

    /// A hole and others like it, `times` in all.
    void add(const Hole& hole, int times) {
        const Length length = pieces::boughtLength(hole, units_);
        TakeOffLine line = made(hole, hole.kind, pieces::sizeText(hole, units_));
        line.length = length;
        if (hole.kind == "bolt") line.stock = rodOf(hole);
        const auto density = densityOf(hole.metal, line);
        put(std::move(line), hole.group, times,
            density ? std::optional(*density * pieces::volumeOf(hole, length)) : std::nullopt);
        if (hole.kind == "bolt") {
            nuts(hole, 2 * times);
            ring(hole, "washer", 2 * times);
        }
        if (hole.kind == "rivet") ring(hole, "rove", times);
    }

    TakeOff done() {
        TakeOff out;
        bool allKnown = true;
        for (auto& [line, each] : lines_) {
            line.spare = sparesFor(line);
            line.order = orderFor(line);
            if (each) {
                line.mass = static_cast<double>(line.order) * *each;
                out.knownMass += *line.mass;
            }
            allKnown = allKnown && each.has_value();
            if (!line.fitting) {
                out.count += line.count;
                out.order += line.order;
            }
            out.lines.push_back(std::move(line));
        }
        if (allKnown) out.mass = out.knownMass;
        std::stable_sort(out.lines.begin(), out.lines.end(), before);
        return out;
    }

  private:
    static bool before(const TakeOffLine& a, const TakeOffLine& b) {
        const auto key = [](const TakeOffLine& l) {
            return std::tuple(l.metal, kindOrder(l.kind));
        };
        if (key(a) != key(b)) return key(a) < key(b);
        if (const auto order = naturalOrder(a.size, b.size); order != 0) return order < 0;
        return a.length < b.length;
    }

    [[nodiscard]] TakeOffLine made(const Hole& hole, const std::string& kind,
                                   std::string size) const {
        TakeOffLine line;
        line.kind = kind;
        line.metal = hole.metal;
        line.size = std::move(size);
        if (hole.metal.empty()) {
            line.metalName = "metal not decided";
        } else if (const auto found = stock_.metals->find(hole.metal);
                   found != stock_.metals->end()) {
            line.metalName = found->second.name.value;
        } else {
            line.metalName = hole.metal;
        }
        return line;
    }

    std::optional<Density> densityOf(const std::string& metal, TakeOffLine& line) const {
        if (metal.empty()) {
            line.why = "the metal is not decided";
            return std::nullopt;
        }
        const auto found = stock_.metals->find(metal);
        if (found != stock_.metals->end() && found->second.density)
            return found->second.density->value;
        line.why = "the density of " + metal + " is not known";
        return std::nullopt;
    }

    [[nodiscard]] std::string rodOf(const Hole& hole) const {
        for (const auto& [id, rod] : *stock_.rods) {
            if (rod.metal == hole.metal && abs(rod.diameter - hole.diameter) < millimetres(0.001))
                return id;
        }
        return {};
    }

    /// The plain hexagon nut for a rod of this diameter.
    [[nodiscard]] const Nut* nutFor(Length diameter) const {
        for (const auto& [id, nut] : *stock_.nuts) {
            const auto thread = stock_.threads->find(nut.thread);
            if (nut.kind == NutKind::hex && thread != stock_.threads->end() &&
                abs(thread->second.nominal - diameter) < millimetres(0.001))
                return &nut;
        }
        return nullptr;
    }

    void nuts(const Hole& hole, int count) {
        TakeOffLine line = made(hole, "nut", "for " + pieces::sizeText(hole, units_));
        line.fitting = true;
        const Nut* nut = nutFor(hole.diameter);
        if (nut != nullptr) line.stock = nut->id;
        const auto density = densityOf(hole.metal, line);
        if (nut == nullptr) line.why = "the catalogue has no nut for this rod";
        put(std::move(line), hole.group, count,
            nut != nullptr && density
                ? std::optional(*density * pieces::nutVolume(*nut, hole.diameter))
                : std::nullopt);
    }

    void ring(const Hole& hole, const char* kind, int count) {
        const std::string shank = " for " + pieces::sizeText(hole, units_);
        const bool known = hole.washerDiameter && hole.washerThickness;
        TakeOffLine line =
            made(hole, kind,
                 known ? pieces::lengthText(*hole.washerDiameter, units_) + " × " +
                             pieces::lengthText(*hole.washerThickness, units_) + shank
                       : "size not decided," + shank);
        line.fitting = true;
        if (known) line.stock = washerOf(hole);
        const auto density = densityOf(hole.metal, line);
        if (!known) line.why = "its size is not decided";
        put(std::move(line), hole.group, count,
            known && density ? std::optional(*density * pieces::ringVolume(*hole.washerDiameter,
                                                                           pieces::acrossOf(hole),
                                                                           *hole.washerThickness))
                             : std::nullopt);
    }

    [[nodiscard]] std::string washerOf(const Hole& hole) const {
        const auto same = [](Length a, Length b) { return abs(a - b) < millimetres(0.01); };
        for (const auto& [id, washer] : *stock_.washers) {
            if (same(washer.fits, hole.diameter) && same(washer.outside, *hole.washerDiameter) &&
                same(washer.thickness, *hole.washerThickness))
                return id;
        }
        return {};
    }

    void put(TakeOffLine line, const std::string& group, int count, std::optional<Mass> each) {
        auto found = std::find_if(lines_.begin(), lines_.end(), [&](const auto& known) {
            const TakeOffLine& l = known.first;
            return l.kind == line.kind && l.metal == line.metal && l.size == line.size &&
                   l.length.has_value() == line.length.has_value() &&
                   (!l.length || abs(*l.length - *line.length) < millimetres(0.01));
        });
        if (found == lines_.end()) {
            if (each) line.why.clear();
            lines_.emplace_back(std::move(line), each);
            found = lines_.end() - 1;
        }
        found->first.count += count;
        auto& groups = found->first.groups;
        if (std::find(groups.begin(), groups.end(), group) == groups.end()) groups.push_back(group);
    }

    const TakeOffStock& stock_;
    UnitSystem units_;
    std::vector<std::pair<TakeOffLine, std::optional<Mass>>> lines_;
};

/// Whether two holes ask for the very same things.
bool alike(const Hole& a, const Hole& b) {
    const auto asks = [](const Hole& h) {
        return std::tie(h.kind, h.diameter, h.length, h.gauge, h.square, h.washerDiameter,
                        h.washerThickness, h.metal, h.group);
    };
    return asks(a) == asks(b);
}

}  // namespace

TakeOff takeOff(const std::vector<const Hole*>& holes, const TakeOffStock& stock,
                UnitSystem units) {
    Counter counter(stock, units);
    // Like holes mostly follow each other.
    for (std::size_t i = 0; i < holes.size();) {
        std::size_t next = i + 1;
        while (next < holes.size() && alike(*holes[i], *holes[next])) ++next;
        counter.add(*holes[i], static_cast<int>(next - i));
        i = next;
    }
    TakeOff out = counter.done();
    out.rules = {
        units == UnitSystem::inches
            ? "Screws keep their length. Bolts, drifts and rivets are cut to the next 1/8 in."
            : "Screws keep their length. Bolts, drifts and rivets are cut to the next 5 mm.",
        "Spares: screws, nuts and washers 5 in 100, rivets and roves 10 in 100, bolts and drifts 1 "
        "in each full 20 (judgement).",
        "Screws and roves from 100 up are ordered by the hundred.",
        "A bolt has a nut and a washer at both ends, a rivet one rove. A ballast bolt is cut only "
        "after its hole is measured.",
    };
    return out;
}

}  // namespace fayline
