#include "sheet/joint_picture.h"

#include <algorithm>

#include "joint/screw.h"
#include "sheet/font_metrics.h"
#include "wrap.h"

namespace fayline {
namespace {

using shape::Across;
using shape::Upright;

constexpr Stroke thin{0.25, LineStyle::solid};

struct FastenerSizes {
    double body = 0, root = 0, thread = 0, tip = 0, head = 0;  ///< millimetres of wood
};

FastenerSizes sizesOf(const JointFastener& f) {
    FastenerSizes sizes;
    if (f.kind == FastenerKind::woodScrew && (f.gauge || f.diameter.si() > 0.0)) {
        const ScrewShape shape = screwShape(f);
        sizes = {inMillimetres(shape.body.value), inMillimetres(shape.root.value),
                 inMillimetres(shape.thread.value), inMillimetres(shape.tip.value),
                 inMillimetres(shape.head.value)};
        return sizes;
    }
    sizes.body = inMillimetres(f.diameter);
    sizes.root = f.root ? inMillimetres(*f.root) : sizes.body;
    sizes.head = f.headDiameter ? inMillimetres(*f.headDiameter) : 1.7 * sizes.body;
    sizes.tip = f.kind == FastenerKind::drift ? sizes.body : 0.0;
    return sizes;
}

class Picture {
  public:
    Picture(const Joint& joint, const JointPictureRoom& room)
        : joint_(joint), room_(room), sizes_(sizesOf(joint.fastener)) {}

    Drawing draw() {
        drawing_.size = room_.size;
        measure();
        for (std::size_t i = 0; i < joint_.members.size(); ++i) member(i);
        counterbores();
        fastener();
        for (std::size_t i = 0; i < joint_.members.size(); ++i) labels(i);
        words();
        return std::move(drawing_);
    }

  private:
    [[nodiscard]] double letter() const { return room_.letterMm; }
    [[nodiscard]] double mm(Length length) const { return inMillimetres(length) * scale_; }

    /// Sizes along the fastening decide the scale; what stands proud of the wood is drawn too.
    void measure() {
        double total = 0.0;
        for (const JointMember& member : joint_.members) {
            from_.push_back(total);
            total += inMillimetres(member.thickness);
            to_.push_back(total);
            total += inMillimetres(member.gap);
        }
        total = to_.empty() ? 1.0 : std::max(1.0, to_.back());
        const bool blind = joint_.fastener.point == FastenerEnd::blind ||
                           joint_.fastener.point == FastenerEnd::thread;
        const double start = headAt();
        const double end = blind ? start + inMillimetres(joint_.fastener.length) : total;
        proud_ = std::max(1.6 * sizes_.body, 2.0);
        const double least = -proud_;
        const double most = std::max(total, end) + (blind ? 0.0 : proud_);
        const double side = 1.0 * letter();
        const double along = (room_.size.width - 2.0 * side) / std::max(1.0, most - least);
        // The wood stands well clear of head and washer.
        top_ = 2.6 * letter();
        bottom_ = room_.size.height - 5.6 * letter();
        const double across = (bottom_ - top_) / std::max(1.0, 2.2 * widest());
        scale_ = std::max(1.0e-3, std::min(along, across));
        axis_ = (top_ + bottom_) / 2.0;
        origin_ = room_.size.width / 2.0 - scale_ * (most + least) / 2.0;
        start_ = start;
        end_ = end;
        drawing_.scale = DrawScale{{origin_, axis_}, scale_ * 1000.0, false};
    }

    [[nodiscard]] double widest() const {
        double most = std::max(sizes_.head, sizes_.body);
        for (const auto& bearing : {joint_.fastener.headBearing, joint_.fastener.pointBearing}) {
            if (bearing) most = std::max(most, inMillimetres(bearing->diameter));
        }
        return most;
    }

    /// Where the head's outer face lies: at the bottom of its counterbore.
    [[nodiscard]] double headAt() const {
        return joint_.members.empty() ? 0.0 : inMillimetres(joint_.members.front().counterbore);
    }

    [[nodiscard]] double x(double wood_mm) const { return origin_ + wood_mm * scale_; }

    void add(Role role, Shape shape, const std::string& id = {}) {
        drawing_.items.push_back({role, id, std::move(shape)});
    }
    void box(Role role, double fromX, double toX, double half, const std::string& id,
             bool filled = true) {
        add(role,
            shape::Polygon{{{fromX, axis_ - half},
                            {toX, axis_ - half},
                            {toX, axis_ + half},
                            {fromX, axis_ + half}},
                           filled,
                           thin},
            id);
    }

    void member(std::size_t i) {
        const std::string id = "member." + std::to_string(i);
        add(i % 2 == 0 ? Role::timber : Role::frame,
            shape::Polygon{{{x(from_[i]), top_},
                            {x(to_[i]), top_},
                            {x(to_[i]), bottom_},
                            {x(from_[i]), bottom_}},
                           true,
                           Stroke{0.35, LineStyle::solid}},
            id);
    }

    /// A hole as wide as plug, head or washer, left white; the plug is hatched.
    void counterbores() {
        if (joint_.members.empty()) return;
        const JointFastener& f = joint_.fastener;
        const auto half = [&](const std::optional<EndBearing>& bearing) {
            double across = sizes_.head;
            if (bearing) across = std::max(across, inMillimetres(bearing->diameter) * 1.08);
            if (f.bung) across = inMillimetres(*f.bung);
            return scale_ * across / 2.0;
        };
        const double front = inMillimetres(joint_.members.front().counterbore);
        if (front > 0.0) bore(x(from_.front()), x(from_.front() + front), half(f.headBearing));
        const double back = inMillimetres(joint_.members.back().counterbore);
        if (joint_.members.size() > 1 && back > 0.0)
            bore(x(to_.back() - back), x(to_.back()), half(f.pointBearing));
    }

    void bore(double from, double to, double half) {
        box(Role::paper, from, to, half, {});
        if (joint_.fastener.bung)
            add(Role::muted, shape::Hatch{{{from, axis_ - half},
                                           {to, axis_ - half},
                                           {to, axis_ + half},
                                           {from, axis_ + half}},
                                          0.0,
                                          0.8,
                                          Stroke{0.18, LineStyle::solid}});
        box(Role::muted, from, to, half, {}, false);
    }

    void fastener() {
        const JointFastener& f = joint_.fastener;
        if (sizes_.body <= 0.0 || joint_.members.empty()) return;
        const double half = scale_ * sizes_.body / 2.0;
        const double rootHalf = scale_ * sizes_.root / 2.0;
        if (f.kind == FastenerKind::woodScrew) {
            screw(half, rootHalf);
            return;
        }
        if (f.kind == FastenerKind::drift) {
            const double tip = std::min(sizes_.tip, end_ - start_) * scale_;
            add(Role::bolt,
                shape::Polygon{{{x(start_), axis_ - half},
                                {x(end_) - tip, axis_ - half},
                                {x(end_), axis_},
                                {x(end_) - tip, axis_ + half},
                                {x(start_), axis_ + half}},
                               true,
                               thin},
                "fastener");
            endPart(f.head, f.headBearing, x(start_), -1.0);
            return;
        }
        const double back = inMillimetres(joint_.members.back().counterbore);
        const double far = x(to_.back() - back);
        const double proud = proud_ * scale_;
        const bool nutHead = f.head == FastenerEnd::nut;
        box(Role::bolt, x(start_) - (nutHead ? proud : 0.0),
            far + (f.point == FastenerEnd::nut ? proud : 0.0), half, "fastener");
        endPart(f.head, f.headBearing, x(start_), -1.0);
        endPart(f.point, f.pointBearing, far, 1.0);
    }

    /// Head flush at the start, shank, thread as a row of flanks, tip.
    void screw(double half, double rootHalf) {
        const double from = x(start_), to = x(end_);
        const double headHalf = scale_ * sizes_.head / 2.0;
        const double cone = std::min(headHalf - half, (to - from) / 3.0);
        const double tip = std::min(sizes_.tip * scale_, (to - from) / 2.0);
        const double threadFrom = std::max(from + cone, to - sizes_.thread * scale_);
        std::vector<PointMm> upper{
            {from, axis_ - headHalf}, {from + cone, axis_ - half}, {threadFrom, axis_ - half}};
        const double pitch = std::max(1.2 * (half - rootHalf) + 0.2, scale_ * sizes_.body * 0.45);
        for (double at = threadFrom; at + pitch < to - tip; at += pitch) {
            upper.push_back({at + pitch * 0.3, axis_ - rootHalf});
            upper.push_back({at + pitch * 0.7, axis_ - rootHalf});
            upper.push_back({at + pitch, axis_ - half});
        }
        upper.push_back({to - tip, axis_ - rootHalf});
        upper.push_back({to, axis_});
        std::vector<PointMm> outline = upper;
        for (auto p = upper.rbegin() + 1; p != upper.rend(); ++p)
            outline.push_back({p->x, 2.0 * axis_ - p->y});
        add(Role::bolt, shape::Polygon{std::move(outline), true, thin}, "fastener");
    }

    /// What holds at one end, outside the face at `face`; `outward` is the direction away from the
    /// wood.
    void endPart(FastenerEnd end, const std::optional<EndBearing>& bearing, double face,
                 double outward) {
        double at = face;
        const double body = scale_ * sizes_.body;
        const auto slab = [&](double thick, double half, Role role) {
            box(role, std::min(at, at + outward * thick), std::max(at, at + outward * thick), half,
                "fastener");
            at += outward * thick;
        };
        const auto washer = [&] {
            if (!bearing) return;
            const double thick =
                std::max(0.5, bearing->thickness.si() > 0.0 ? mm(bearing->thickness) : 0.12 * body);
            slab(thick, mm(bearing->diameter) / 2.0, Role::ballast);
        };
        const double headHalf = scale_ * sizes_.head / 2.0;
        switch (end) {
            case FastenerEnd::nut:
                washer();
                slab(0.85 * body, 0.85 * body, Role::ballast);
                return;
            case FastenerEnd::head:
            case FastenerEnd::formedHead:
            case FastenerEnd::clenchRing:
            case FastenerEnd::peened:
                washer();
                slab(joint_.fastener.headHeight ? mm(*joint_.fastener.headHeight) : 0.55 * body,
                     headHalf, Role::ballast);
                return;
            case FastenerEnd::rove:
                washer();
                slab(0.4 * body, 0.75 * body, Role::ballast);
                return;
            case FastenerEnd::countersunk: {
                const double deep = outward * (headHalf - body / 2.0);
                add(Role::bolt,
                    shape::Polygon{{{at, axis_ - headHalf},
                                    {at, axis_ + headHalf},
                                    {at - deep, axis_ + body / 2.0},
                                    {at - deep, axis_ - body / 2.0}},
                                   true,
                                   thin},
                    "fastener");
                return;
            }
            case FastenerEnd::thread:
            case FastenerEnd::blind:
                return;
        }
    }

    [[nodiscard]] std::string show(Length length) const {
        return displayLength(length, room_.units == UnitSystem::inches ? LengthStyle::inchFractions
                                                                       : LengthStyle::millimetres);
    }

    /// Name above, thickness below; where a name is wider than its member it stands upright.
    void labels(std::size_t i) {
        const JointMember& m = joint_.members[i];
        const double from = x(from_[i]), to = x(to_[i]), middle = (from + to) / 2.0;
        const std::string id = "member." + std::to_string(i);
        shape::Text name;
        name.text = m.name;
        name.letterMm = letter();
        name.across = Across::centre;
        const double wide = to - from - 0.8;
        const double upright = axis_ - top_ - scale_ * widest() / 2.0 - 1.0;
        if (widthMm(m.name, letter(), shape::Weight::regular) <= wide + 2.0 * letter() ||
            wide < 1.4 * letter()) {
            name.text = elided(name, {std::max(wide + 2.0 * letter(), 8.0 * letter()), letter()});
            name.anchor = {middle, top_ - 0.8 * letter()};
            if (joint_.members.size() > 2 && wide < 1.4 * letter()) name.text.clear();
        } else {
            name.text = elided(name, {upright, letter()});
            name.anchor = {middle + letter() / 2.0, top_ + 1.0};
            name.across = Across::right;
            name.angleDeg = 90.0;
            name.cleared = true;
        }
        if (!name.text.empty()) add(Role::label, name, id);
        if (m.thickness.si() <= 0.0) return;
        const std::string figure = show(m.thickness);
        const double needed = widthMm(figure, letter(), shape::Weight::regular) + letter();
        // Narrow members take turns on two levels.
        const bool low = needed > to - from && i % 2 == 1;
        add(Role::dimension, shape::Dimension{{from, bottom_},
                                              {to, bottom_},
                                              -(low ? 4.0 : 2.2) * letter(),
                                              figure,
                                              letter(),
                                              shape::DimensionKind::between});
        if (m.gap.si() > 0.0 && i + 1 < joint_.members.size())
            add(Role::muted, shape::Line{{(to + x(from_[i + 1])) / 2.0, top_},
                                         {(to + x(from_[i + 1])) / 2.0, bottom_},
                                         {0.2, LineStyle::dotted}});
    }

    /// What the picture cannot show by itself.
    void words() {
        const JointFastener& f = joint_.fastener;
        std::string size = f.gauge                 ? "No. " + std::to_string(f.gauge->number())
                           : f.diameter.si() > 0.0 ? show(f.diameter)
                                                   : std::string();
        if (f.kind != FastenerKind::woodScrew && !size.empty()) size = "⌀ " + size;
        if (f.section == DowelSection::square && f.diameter.si() > 0.0)
            size = show(f.diameter) + " square";
        const bool long_ = f.kind == FastenerKind::woodScrew || f.kind == FastenerKind::drift;
        if (long_ && f.length.si() > 0.0) size += " × " + show(f.length);
        for (std::size_t i = 0; i + 1 < joint_.members.size(); ++i) {
            if (joint_.members[i].gap.si() > 0.0)
                size +=
                    ", gap " + show(joint_.members[i].gap) + " behind " + joint_.members[i].name;
        }
        shape::Text text;
        text.letterMm = letter();
        text.text = elided(
            [&] {
                text.text = size;
                return text;
            }(),
            {room_.size.width - 2.0, letter()});
        text.anchor = {room_.size.width / 2.0, room_.size.height - 0.5 * letter()};
        text.across = Across::centre;
        if (!text.text.empty()) add(Role::label, text, "fastener");
    }

    const Joint& joint_;
    JointPictureRoom room_;
    FastenerSizes sizes_;
    Drawing drawing_;
    std::vector<double> from_, to_;  ///< of the members, millimetres of wood
    double scale_ = 1, origin_ = 0, axis_ = 0, top_ = 0, bottom_ = 0, start_ = 0, end_ = 0;
    double proud_ = 0;
};

}  // namespace

Drawing jointDrawing(const Joint& joint, const JointPictureRoom& room) {
    return Picture(joint, room).draw();
}

}  // namespace fayline
