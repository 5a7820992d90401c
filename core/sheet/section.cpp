#include "sheet/section.h"

#include <algorithm>
#include <cmath>

#include "plan.h"
#include "section_holes.h"
#include "sheet/font_metrics.h"
#include "sheet/marks.h"
#include "sheet/scale_bar.h"
#include "sheet/selection.h"

namespace fayline {

namespace {

using Chain = std::vector<SectionPoint>;

/// The part of a chain that runs upward from a height, cut there.
Chain above(const Chain& chain, Length height) {
    Chain kept;
    for (std::size_t i = 0; i < chain.size(); ++i) {
        const SectionPoint& p = chain[i];
        if (p.z < height) {
            kept.clear();  // what came before a lower place does not stand on the heel
            continue;
        }
        if (kept.empty() && i > 0 && chain[i - 1].z < height) {
            const SectionPoint& below = chain[i - 1];
            const double t = (height - below.z) / (p.z - below.z);
            kept.push_back({below.y + (p.y - below.y) * t, height});
        }
        kept.push_back(p);
    }
    return kept;
}

/// The part of a chain up to where it first passes a height.
Chain upTo(const Chain& chain, Length height) {
    Chain kept;
    for (std::size_t i = 0; i < chain.size(); ++i) {
        if (chain[i].z <= height) {
            kept.push_back(chain[i]);
            continue;
        }
        if (i > 0) {
            const SectionPoint& below = chain[i - 1];
            const double t = (height - below.z) / (chain[i].z - below.z);
            kept.push_back({below.y + (chain[i].y - below.y) * t, height});
        }
        break;
    }
    return kept;
}

Chain onThisSide(Chain chain) {
    std::erase_if(chain, [](const SectionPoint& p) { return p.y < Length{}; });
    return chain;
}

class SectionPicture {
  public:
    SectionPicture(const SectionInput& input, const DrawFormat& format)
        : in_(input), format_(format) {}

    Drawing draw() {
        if (in_.side.empty() && in_.keel.empty() && in_.ballast.empty() && in_.bolts.empty()) {
            return plan::emptyDrawing(in_.emptyText, format_);
        }
        place();
        if (in_.side.size() >= 2) add(Role::hull, {}, area(in_.side));
        bothSides(in_.ballast, Role::ballast, "ballast");
        bothSides(in_.keel, Role::timber, "keel");
        frameLegs();
        floorTimber();
        waterline();
        if (in_.side.size() >= 2) {
            add(Role::outline, {}, shape::Polyline{mirroredLine(in_.side), {0.5, {}}});
        }
        drawing_.namesAll = true;
        bolts();
        words();
        stops();
        plan::addSectionHoles(drawing_, in_, format_);
        if (in_.selected) {
            const SizeMm letter{format_.letterMm, format_.letterMm};
            for (DrawItem& item : selectionOf(drawing_, *in_.selected, letter)) {
                drawing_.items.push_back(std::move(item));
            }
        }
        return std::move(drawing_);
    }

  private:
    void place() {
        plan::Extent extent;
        for (const Chain* chain : {&in_.side, &in_.keel, &in_.ballast}) {
            for (const SectionPoint& p : *chain) {
                extent.add({p.y, p.z});
                extent.add({-p.y, p.z});
            }
        }
        for (const SectionBolt& bolt : in_.bolts) {
            for (const Point& p : {bolt.start, bolt.end}) {
                extent.add({p.y, p.z});
                extent.add({-p.y, p.z});
            }
        }
        if (in_.waterline) extent.add({Length{}, *in_.waterline});
        const double letter_mm = format_.letterMm;
        const double side_mm = plan::widthMm("LWL", format_) + 2.0 * letter_mm;
        const double head_mm = 3.2 * letter_mm;
        const double foot_mm = 3.0 * letter_mm;
        DrawScale scale;
        scale.mirrored = true;
        scale.mmPerMetre = plan::mmPerMetre(
            extent, {format_.size.width - 2.0 * side_mm, format_.size.height - head_mm - foot_mm},
            format_);
        const double height_mm = scale.sizeMm(extent.height());
        drawing_.size = {std::max(format_.size.width, scale.sizeMm(extent.width()) + 2.0 * side_mm),
                         std::max(format_.size.height, height_mm + head_mm + foot_mm)};
        const double spare_mm = drawing_.size.height - head_mm - foot_mm - height_mm;
        scale.origin = {drawing_.size.width / 2.0,
                        head_mm + spare_mm / 2.0 + scale.sizeMm(extent.top())};
        drawing_.scale = scale;
        halfWidth_mm_ = scale.sizeMm(extent.width()) / 2.0;
    }

    void add(Role role, const std::string& id, Shape shape) {
        drawing_.items.push_back({role, id, std::move(shape)});
    }
    [[nodiscard]] PointMm at(Length y, Length z) const { return drawing_.scale->toDrawing({y, z}); }

    /// From the starboard end over the first point to the port end.
    [[nodiscard]] std::vector<PointMm> mirroredLine(const Chain& chain) const {
        std::vector<PointMm> line;
        for (auto p = chain.rbegin(); p != chain.rend(); ++p) line.push_back(at(p->y, p->z));
        for (const SectionPoint& p : chain) line.push_back(at(-p.y, p.z));
        return line;
    }
    [[nodiscard]] shape::Polygon area(const Chain& chain) const {
        return {mirroredLine(chain), true, std::nullopt};
    }
    void bothSides(const Chain& chain, Role role, const std::string& id) {
        if (chain.size() < 2) return;
        shape::Polygon both = area(chain);
        both.stroke = Stroke{0.25, LineStyle::solid};
        add(role, id, std::move(both));
    }

    [[nodiscard]] std::optional<Length> heelHeight() const {
        if (in_.heel) return in_.heel;
        std::optional<Length> top;
        for (const SectionPoint& p : in_.keel) top = top ? max(*top, p.z) : p.z;
        return top;
    }

    /// The inside of the planking, upward from the heel.
    const Chain& insidePlanking() {
        if (inside_) return *inside_;
        const Length planking = in_.planking.value_or(Length{});
        Chain inside = planking > Length{} ? movedInward(in_.side, planking) : in_.side;
        if (const auto heel = heelHeight()) inside = above(inside, *heel);
        inside_ = onThisSide(std::move(inside));
        return *inside_;
    }

    void frameLegs() {
        if (!in_.moulded || *in_.moulded <= Length{}) return;
        const Chain& outer = insidePlanking();
        Chain inner = movedInward(outer, *in_.moulded);
        if (const auto heel = heelHeight()) inner = above(inner, *heel);
        inner = onThisSide(std::move(inner));
        if (outer.size() < 2 || inner.empty()) return;
        for (const double side : {1.0, -1.0}) {
            std::vector<PointMm> leg;
            for (const SectionPoint& p : outer) leg.push_back(at(side * p.y, p.z));
            for (auto p = inner.rbegin(); p != inner.rend(); ++p)
                leg.push_back(at(side * p->y, p->z));
            add(Role::frame, in_.frame, shape::Polygon{leg, true, Stroke{0.25, LineStyle::solid}});
        }
    }

    void floorTimber() {
        if (!in_.floorTop) return;
        const Chain inside = upTo(insidePlanking(), *in_.floorTop);
        if (inside.size() < 2) return;
        const std::string id = in_.frame.empty() ? std::string{} : in_.frame + ".floor";
        bothSides(inside, Role::floor, id);
    }

    void waterline() {
        if (!in_.waterline) return;
        const double y = at(Length{}, *in_.waterline).y;
        const double past_mm = 1.0 * format_.letterMm;
        const double middle_mm = drawing_.size.width / 2.0;
        const double end = middle_mm + halfWidth_mm_ + past_mm;
        add(Role::waterline, {},
            shape::Line{{2.0 * middle_mm - end, y}, {end, y}, {0.25, LineStyle::dashed}});
        add(Role::waterline, {}, plan::note("LWL", {end + 0.5 * format_.letterMm, y}, format_));
    }

    void bolts() {
        const double letter_mm = format_.letterMm;
        for (const SectionBolt& bolt : in_.bolts) {
            plan::Rod rod{at(bolt.start.y, bolt.start.z), at(bolt.end.y, bolt.end.z)};
            rod.strokeMm = bolt.status == Status::isShort ? 0.8 : 0.55;
            if (bolt.diameter) rod.breadthMm = drawing_.scale->sizeMm(*bolt.diameter);
            rod.nutBreadthMm = std::max(1.1 * letter_mm, 2.0 * rod.breadthMm);
            if (bolt.washer) {
                rod.nutBreadthMm = std::max(rod.nutBreadthMm, drawing_.scale->sizeMm(*bolt.washer));
            }
            plan::addRod(drawing_, rod, boltRole(bolt.status), bolt.id);
            nameOf(bolt, rod);
        }
    }

    /// The name beside the head, on the bolt's own side of the boat; the sign above the head.
    void nameOf(const SectionBolt& bolt, const plan::Rod& rod) {
        const double letter_mm = format_.letterMm;
        const double way = rod.from.x < drawing_.size.width / 2.0 - 1e-6 ? -1.0 : 1.0;
        const double above = rod.from.y - 0.9 * letter_mm;
        shape::Text name = plan::note(
            bolt.id, {rod.from.x + way * (rod.nutBreadthMm / 2.0 + 0.5 * letter_mm), above},
            format_);
        name.across = way < 0.0 ? shape::Across::right : shape::Across::left;
        name.weight = shape::Weight::bold;
        name.cleared = true;
        add(Role::label, bolt.id, name);
        if (bolt.status == Status::ok || bolt.status == Status::unloaded) return;
        for (DrawItem& item :
             statusMark(bolt.status, {rod.from.x, above}, {letter_mm, letter_mm}, bolt.id)) {
            drawing_.items.push_back(std::move(item));
        }
    }

    void words() {
        const double letter_mm = format_.letterMm;
        const double y = 1.4 * letter_mm;
        const double edge_mm = 0.8 * letter_mm;
        shape::Text starboard = plan::note("STARBOARD", {edge_mm, y}, format_);
        starboard.weight = shape::Weight::bold;
        add(Role::label, {}, starboard);
        shape::Text port = plan::note("PORT", {drawing_.size.width - edge_mm, y}, format_);
        port.weight = shape::Weight::bold;
        port.across = shape::Across::right;
        add(Role::label, {}, port);
        shape::Text title =
            plan::note(in_.frame.empty() ? "looking aft" : in_.frame + ", looking aft",
                       {drawing_.size.width / 2.0, y}, format_);
        title.across = shape::Across::centre;
        const double half_mm = textSize(title).width / 2.0 + letter_mm;
        if (drawing_.size.width / 2.0 - half_mm > edge_mm + textSize(starboard).width) {
            add(Role::muted, {}, title);
        }
        const SizeMm room{std::min(drawing_.size.width * 0.4, 25.0 * letter_mm), letter_mm};
        for (DrawItem& item :
             scaleBar(*drawing_.scale,
                      {drawing_.size.width - edge_mm, drawing_.size.height - 1.2 * letter_mm}, room,
                      {letter_mm, letter_mm}, format_.units)) {
            drawing_.items.push_back(std::move(item));
        }
    }

    void stops() {
        std::vector<DrawStop> row;
        for (const SectionBolt& bolt : in_.bolts) {
            row.push_back({bolt.id, at(bolt.start.y, bolt.start.z)});
        }
        std::stable_sort(row.begin(), row.end(),
                         [](const DrawStop& a, const DrawStop& b) { return a.at.x < b.at.x; });
        if (!row.empty()) drawing_.rows.push_back(std::move(row));
    }

    const SectionInput& in_;
    const DrawFormat& format_;
    Drawing drawing_;
    double halfWidth_mm_ = 0.0;
    std::optional<Chain> inside_;  ///< worked out once
};

}  // namespace

Drawing sectionDrawing(const SectionInput& input, const DrawFormat& format) {
    return SectionPicture(input, format).draw();
}

}  // namespace fayline
