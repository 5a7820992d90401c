#include "sheet/profile.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "heights.h"
#include "plan.h"
#include "profile_rows.h"
#include "sheet/font_metrics.h"
#include "sheet/marks.h"
#include "sheet/scale_bar.h"
#include "sheet/selection.h"

namespace fayline {

namespace {

PlanePoint plane(const Point& p) {
    return {p.x, p.z};
}

bool nothingToShow(const ProfileInput& input) {
    return input.sheer.empty() && input.lowest.empty() && input.keel.empty() &&
           input.ballast.empty() && input.frames.empty() && input.bolts.empty();
}

/// Fills in what a frame does not say from the lines it stands between.
struct FrameSpan {
    std::optional<Length> bottom, top;
};
FrameSpan spanOf(const ProfileInput& input, const ProfileFrame& frame) {
    FrameSpan span{frame.bottom, frame.top};
    if (!span.top) span.top = heights::onChain(input.sheer, frame.x);
    if (!span.bottom) span.bottom = heights::topOfOutline(input.keel, frame.x);
    if (!span.bottom) span.bottom = heights::onChain(input.lowest, frame.x);
    return span;
}

class Profile {
  public:
    Profile(const ProfileInput& input, const DrawFormat& format) : in_(input), format_(format) {}

    Drawing draw() {
        if (nothingToShow(in_)) return plan::emptyDrawing(in_.emptyText, format_);
        place();
        hullArea();
        outlineOf(in_.ballast, Role::ballast, "ballast");
        outlineOf(in_.keel, Role::timber, "keel");
        frames();
        waterline();
        hullOutline();
        bolts();
        const plan::Rows rows{in_, format_, *drawing_.scale, rowsTop_mm_, left_mm_};
        rows.addTo(drawing_);
        foot();
        if (in_.selected) {
            for (DrawItem& item :
                 selectionOf(drawing_, *in_.selected, {format_.letterMm, format_.letterMm})) {
                drawing_.items.push_back(std::move(item));
            }
        }
        return std::move(drawing_);
    }

  private:
    void place() {
        plan::Extent extent;
        for (const std::vector<Point>* points :
             {&in_.sheer, &in_.lowest, &in_.keel, &in_.ballast}) {
            for (const Point& p : *points) extent.add(plane(p));
        }
        for (const ProfileBolt& bolt : in_.bolts) {
            extent.add(plane(bolt.start));
            extent.add(plane(bolt.end));
        }
        for (const ProfileFrame& frame : in_.frames) {
            const FrameSpan span = spanOf(in_, frame);
            extent.add({frame.x, span.bottom.value_or(span.top.value_or(Length{}))});
            if (span.top) extent.add({frame.x, *span.top});
        }
        if (in_.waterline) extent.add({extent.left(), *in_.waterline});

        layOut(extent);
    }

    /// The hull as large as fits between caption and LWL, head room for a chosen name above, the
    /// rows beneath. Legend and scale bar go beside the hull where it leaves enough room there,
    /// else on a line of their own at the foot.
    void layOut(const plan::Extent& extent) {
        const double letter_mm = format_.letterMm;
        const double caption_mm = plan::widthMm(plan::Rows::caption(), format_) + 2.0 * letter_mm;
        const double right_mm = plan::widthMm("LWL", format_) + 2.5 * letter_mm;
        const double top_mm = 2.6 * letter_mm;
        const double rows_mm = plan::Rows::heightMm(in_, format_);
        const double beside_mm = caption_mm + plan::legendWidthMm(in_, format_) + 2.0 * letter_mm;
        const auto scaleWith = [&](double foot_mm) {
            return plan::mmPerMetre(extent,
                                    {format_.size.width - caption_mm - right_mm,
                                     format_.size.height - top_mm - rows_mm - foot_mm},
                                    format_);
        };
        double foot_mm = 0.6 * letter_mm;
        DrawScale scale;
        scale.mmPerMetre = scaleWith(foot_mm);
        legendBeside_ =
            format_.size.width - scale.sizeMm(extent.width()) - right_mm >= 2.0 * beside_mm;
        if (!legendBeside_) {
            foot_mm = 2.6 * letter_mm;
            scale.mmPerMetre = scaleWith(foot_mm);
        }
        const double width_mm = scale.sizeMm(extent.width());
        const double height_mm = scale.sizeMm(extent.height());
        drawing_.size = {std::max(format_.size.width, width_mm + caption_mm + right_mm),
                         std::max(format_.size.height, height_mm + top_mm + rows_mm + foot_mm)};
        const double spareWidth_mm = drawing_.size.width - caption_mm - right_mm - width_mm;
        const double spareHeight_mm = drawing_.size.height - top_mm - rows_mm - foot_mm - height_mm;
        left_mm_ = caption_mm + spareWidth_mm / 2.0;
        right_mm_ = left_mm_ + width_mm;
        rowsTop_mm_ = top_mm + spareHeight_mm / 2.0 + height_mm;
        scale.origin = {left_mm_ - scale.sizeMm(extent.left()),
                        rowsTop_mm_ - height_mm + scale.sizeMm(extent.top())};
        drawing_.scale = scale;
    }

    [[nodiscard]] PointMm at(const Point& p) const { return drawing_.scale->toDrawing(plane(p)); }
    [[nodiscard]] PointMm at(Length x, Length z) const { return drawing_.scale->toDrawing({x, z}); }

    [[nodiscard]] std::vector<PointMm> at(const std::vector<Point>& points) const {
        std::vector<PointMm> made;
        made.reserve(points.size());
        for (const Point& p : points) made.push_back(at(p));
        return made;
    }

    void add(Role role, const std::string& id, Shape shape) {
        drawing_.items.push_back({role, id, std::move(shape)});
    }

    [[nodiscard]] std::vector<PointMm> hullRound() const {
        std::vector<PointMm> round = at(in_.sheer);
        std::vector<PointMm> below = at(in_.lowest);
        round.insert(round.end(), below.rbegin(), below.rend());
        return round;
    }

    void hullArea() {
        if (in_.sheer.size() < 2 || in_.lowest.size() < 2) return;
        add(Role::hull, {}, shape::Polygon{hullRound(), true, {}});
    }

    void hullOutline() {
        const Stroke stroke{0.5, LineStyle::solid};
        if (in_.sheer.size() >= 2 && in_.lowest.size() >= 2) {
            add(Role::outline, {}, shape::Polygon{hullRound(), false, stroke});
            return;
        }
        if (in_.sheer.size() >= 2) add(Role::outline, {}, shape::Polyline{at(in_.sheer), stroke});
        if (in_.lowest.size() >= 2) add(Role::outline, {}, shape::Polyline{at(in_.lowest), stroke});
    }

    void waterline() {
        if (!in_.waterline) return;
        const double y = at(Length{}, *in_.waterline).y;
        const double past_mm = 1.5 * format_.letterMm;
        add(Role::waterline, {},
            shape::Line{
                {left_mm_ - past_mm, y}, {right_mm_ + past_mm, y}, {0.25, LineStyle::dashed}});
        const PointMm behind{right_mm_ + past_mm + 0.5 * format_.letterMm, y};
        add(Role::waterline, {}, plan::note("LWL", behind, format_));
    }

    void outlineOf(const std::vector<Point>& points, Role role, const std::string& id) {
        if (points.size() < 3) return;
        add(role, id, shape::Polygon{at(points), true, Stroke{0.25, LineStyle::solid}});
    }

    void bar(Role role, const std::string& id, Length x, Length bottom, Length top, Length sided) {
        const PointMm low = at(x - sided / 2.0, bottom);
        const PointMm high = at(x + sided / 2.0, top);
        add(role, id,
            shape::Polygon{{{low.x, high.y}, {high.x, high.y}, {high.x, low.y}, {low.x, low.y}},
                           true,
                           std::nullopt});
    }

    void frames() {
        constexpr double least_mm = 0.4;
        for (const ProfileFrame& frame : in_.frames) {
            const FrameSpan span = spanOf(in_, frame);
            if (!span.bottom || !span.top) continue;
            if (frame.sided && drawing_.scale->sizeMm(*frame.sided) > least_mm) {
                bar(Role::frame, frame.id, frame.x, *span.bottom, *span.top, *frame.sided);
            } else {
                add(Role::frame, frame.id,
                    shape::Line{at(frame.x, *span.bottom), at(frame.x, *span.top), {least_mm, {}}});
            }
        }
        for (const ProfileFrame& frame : in_.frames) floorOf(frame);
    }

    /// A floor of its true size where that is known and broad enough; else a small block at the
    /// heel.
    void floorOf(const ProfileFrame& frame) {
        if (!frame.hasFloor) return;
        const double letter_mm = format_.letterMm;
        std::optional<Length> bottom = frame.floorBottom;
        if (!bottom) bottom = spanOf(in_, frame).bottom;
        if (!bottom) return;
        if (!frame.floorTop) {
            PointMm place = at(frame.x, *bottom);
            place.y -= 0.3 * letter_mm;
            add(Role::floor, frame.id,
                shape::Mark{place, shape::MarkKind::square, 0.6 * letter_mm, false, {}});
            return;
        }
        constexpr double least_mm = 0.7;
        const Length sided = frame.floorSided.value_or(Length{});
        if (drawing_.scale->sizeMm(sided) > least_mm) {
            bar(Role::floor, frame.id, frame.x, *bottom, *frame.floorTop, sided);
        } else {
            add(Role::floor, frame.id,
                shape::Line{at(frame.x, *bottom), at(frame.x, *frame.floorTop), {least_mm, {}}});
        }
    }

    /// Closest two bolts, on paper.
    [[nodiscard]] double boltSpacingMm() const {
        std::vector<double> places;
        places.reserve(in_.bolts.size());
        for (const ProfileBolt& bolt : in_.bolts) places.push_back(at(bolt.start).x);
        std::sort(places.begin(), places.end());
        double least = std::numeric_limits<double>::max();
        for (std::size_t i = 1; i < places.size(); ++i) {
            least = std::min(least, places[i] - places[i - 1]);
        }
        return least;
    }

    void bolts() {
        const double letter_mm = format_.letterMm;
        // Nuts stay apart however large the letters are.
        const double nut_mm =
            std::clamp(0.5 * boltSpacingMm(), 0.8, 0.75 * std::max(letter_mm, 1.1));
        for (const ProfileBolt& other : in_.others) {
            const double breadth_mm =
                other.diameter ? drawing_.scale->sizeMm(*other.diameter) : 0.0;
            drawing_.items.push_back(
                {boltRole(other.status), other.id,
                 shape::Line{at(other.start), at(other.end), {std::max(0.3, breadth_mm), {}}}});
        }
        for (const ProfileBolt& bolt : in_.bolts) {
            plan::Rod rod{at(bolt.start), at(bolt.end)};
            if (bolt.diameter) rod.breadthMm = drawing_.scale->sizeMm(*bolt.diameter);
            rod.nutBreadthMm = std::max(nut_mm, 1.8 * rod.breadthMm);
            rod.strokeMm = bolt.status == Status::isShort ? 0.7 : 0.45;
            plan::addRod(drawing_, rod, boltRole(bolt.status), bolt.id);
        }
        for (const ProfileBolt& bolt : in_.bolts) {
            if (bolt.status == Status::ok || bolt.status == Status::unloaded) continue;
            PointMm sign = at(bolt.start);
            sign.y -= 0.7 * letter_mm;
            for (DrawItem& item :
                 statusMark(bolt.status, sign, {0.95 * letter_mm, 0.95 * letter_mm}, bolt.id)) {
                drawing_.items.push_back(std::move(item));
            }
        }
    }

    /// Which end is which, what the signs mean, and how large things are.
    void foot() {
        const double letter_mm = format_.letterMm;
        const double x = left_mm_ - plan::widthMm(plan::Rows::caption(), format_) - letter_mm;
        const double y = rowsTop_mm_ - 0.6 * letter_mm;
        add(Role::label, {},
            shape::Polygon{{{x, y},
                            {x + letter_mm, y - 0.55 * letter_mm},
                            {x + letter_mm, y + 0.55 * letter_mm}},
                           true,
                           std::nullopt});
        shape::Text forward = plan::note("FWD", {x + 1.6 * letter_mm, y}, format_);
        forward.weight = shape::Weight::bold;
        add(Role::label, {}, forward);

        const double edge_mm = 0.8 * letter_mm;
        const PointMm corner{drawing_.size.width - edge_mm, drawing_.size.height - 1.2 * letter_mm};
        double barLeft_mm = corner.x;
        const SizeMm room{std::min(drawing_.size.width * 0.25, 25.0 * letter_mm), letter_mm};
        for (DrawItem& item :
             scaleBar(*drawing_.scale, corner, room, {letter_mm, letter_mm}, format_.units)) {
            barLeft_mm = std::min(barLeft_mm, boundsOf(item).left);
            drawing_.items.push_back(std::move(item));
        }
        const PointMm start{edge_mm, corner.y};
        if (legendBeside_) {
            plan::addLegendColumn(drawing_, in_, format_, start);
        } else {
            plan::addLegendLine(drawing_, in_, format_, start, barLeft_mm - 2.0 * letter_mm);
        }
    }

    const ProfileInput& in_;
    const DrawFormat& format_;
    Drawing drawing_;
    double left_mm_ = 0.0, right_mm_ = 0.0;  ///< ends of the hull
    double rowsTop_mm_ = 0.0;                ///< its lowest place
    bool legendBeside_ = false;
};

}  // namespace

Drawing profileDrawing(const ProfileInput& input, const DrawFormat& format) {
    return Profile(input, format).draw();
}

}  // namespace fayline
