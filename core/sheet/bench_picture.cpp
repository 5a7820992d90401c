#include "bench_picture.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "plan.h"
#include "wrap.h"

namespace fayline {
namespace {

using shape::Across;
using shape::Weight;

constexpr double band_mm = 8.0;   ///< a line of words along the top and along the foot
constexpr double pitch_mm = 6.8;  ///< from one mark to the next
constexpr double gap_mm = 4.0;    ///< between columns
constexpr double arrow_mm = 4.5;

/// Drawing : boat, as 1 : this.
constexpr std::array scales{1.0,  1.5,  2.0,  2.5,  3.0,  4.0,  5.0,  6.0,  8.0,  10.0,
                            12.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0, 75.0, 100.0};

struct Columns {
    double mark = 0, along = 0, across = 0;
    [[nodiscard]] double width() const { return mark + along + across + 2 * gap_mm; }
};

Columns columnsOf(const BenchPicture& picture) {
    Columns c{widthMm("mark", page::plain, Weight::regular),
              widthMm(picture.along, page::plain, Weight::regular),
              widthMm(picture.across, page::plain, Weight::regular)};
    for (const BenchSpot& spot : picture.spots) {
        c.mark = std::max(c.mark, widthMm(spot.mark, page::figure, Weight::bold));
        c.along = std::max(c.along, widthMm(spot.along, page::figure, Weight::regular));
        c.across = std::max(c.across, widthMm(spot.across, page::figure, Weight::regular));
    }
    return c;
}

class Picture {
  public:
    Picture(PageFlow& flow, const BenchPicture& picture, double height_mm)
        : flow_(flow), in_(picture), height_mm_(height_mm) {}

    void draw() {
        top_ = flow_.y() + 1.5;
        bottom_ = top_ + height_mm_ - 3.0;
        flow_.add(Role::label, shape::Polygon{{{flow_.left(), top_},
                                               {flow_.right(), top_},
                                               {flow_.right(), bottom_},
                                               {flow_.left(), bottom_}},
                                              false,
                                              Stroke{0.35, LineStyle::solid}});
        const bool marks = !in_.spots.empty();
        columns_ = columnsOf(in_);
        const double taken = marks ? columns_.width() + 3.0 : 0.0;
        // Marks stand outboard of the holes, so that their lines do not cross the timbers inboard.
        fieldLeft_ = flow_.left() + 2.0 + (in_.acrossRight ? 0.0 : taken + 6.0);
        fieldRight_ = flow_.right() - 2.0 - (in_.acrossRight ? taken + 6.0 : 0.0);
        if (!marks) {
            fieldLeft_ = flow_.left() + 2.0;
            fieldRight_ = flow_.right() - 2.0;
        }
        columnLeft_ = in_.acrossRight ? flow_.right() - taken : flow_.left() + 3.0;
        fit();
        timbers();
        if (marks) marksBeside();
        datum();
        words();
        flow_.down(height_mm_);
    }

  private:
    void fit() {
        plan::Extent extent;
        for (const BenchPart& part : in_.parts) {
            for (const PlanePoint& p : part.points) extent.add(p);
        }
        for (const BenchSpot& spot : in_.spots) {
            extent.add(spot.at);
            extent.add(spot.tip);
        }
        extent.add(in_.datum);
        // Where nothing lies outside the datum, its name stands there, clear of the timber.
        const double words = widthMm(in_.datumMark + "  0", page::figure, Weight::bold) + 5.0;
        beside_ = !in_.spots.empty() && in_.datum.across >= extent.right() - millimetres(1);
        if (beside_)
            (in_.acrossRight ? fieldRight_ : fieldLeft_) -= in_.acrossRight ? words : -words;
        const double width = fieldRight_ - fieldLeft_;
        const double above = band_mm + page::figure + 4.0, below = 3.0;
        const double height = bottom_ - top_ - above - below;
        ratio_ = scales.back();
        for (const double ratio : scales) {
            if (extent.width().si() * 1000.0 / ratio <= width &&
                extent.height().si() * 1000.0 / ratio <= height) {
                ratio_ = ratio;
                break;
            }
        }
        scale_.mmPerMetre = 1000.0 / ratio_;
        scale_.mirrored = !in_.acrossRight;
        const double midAcross = (extent.left().si() + extent.right().si()) / 2.0;
        const double midUp = (extent.top().si() + extent.bottom().si()) / 2.0;
        const double sign = scale_.mirrored ? -1.0 : 1.0;
        scale_.origin = {(fieldLeft_ + fieldRight_) / 2.0 - sign * midAcross * scale_.mmPerMetre,
                         top_ + above + height / 2.0 + midUp * scale_.mmPerMetre};
    }

    void timbers() {
        for (const BenchPart& part : in_.parts) {
            std::vector<PointMm> points;
            for (const PlanePoint& p : part.points) points.push_back(scale_.toDrawing(p));
            if (part.closed && part.style == LineStyle::solid) {
                flow_.add(part.role, shape::Polygon{points, true, Stroke{0.5, part.style}});
            } else {
                if (part.closed && !points.empty()) points.push_back(points.front());
                flow_.add(part.role, shape::Polyline{points, {0.3, part.style}});
            }
        }
    }

    void datum() {
        const PointMm at = scale_.toDrawing(in_.datum);
        const std::string words = in_.datumMark + "  0";
        const double half = widthMm(words, page::figure, Weight::bold) / 2.0;
        flow_.add(Role::label,
                  shape::Mark{at, shape::MarkKind::circle, 2.6, true, Stroke{0.0, {}}});
        shape::Text name;
        name.text = words;
        name.letterMm = page::figure;
        name.weight = Weight::bold;
        name.cleared = true;
        if (beside_) {
            name.anchor = {at.x + (in_.acrossRight ? 3.0 : -3.0), at.y + page::figure / 2.0};
            name.across = in_.acrossRight ? Across::left : Across::right;
        } else {
            const double x =
                std::clamp(at.x, flow_.left() + half + 3.0, flow_.right() - half - 3.0);
            name.anchor = {x, at.y - 3.0};
            name.across = Across::centre;
        }
        flow_.add(Role::label, name);
    }

    /// Marks from the top down as the holes lie, moved apart until they do not touch.
    void marksBeside() {
        std::vector<const BenchSpot*> order;
        for (const BenchSpot& spot : in_.spots) order.push_back(&spot);
        const double edge =
            in_.acrossRight ? columnLeft_ - 5.0 : columnLeft_ + columns_.width() + 5.0;
        const auto height = [&](const BenchSpot* s) { return scale_.toDrawing(s->at).y; };
        const auto near = [&](const BenchSpot* s) {
            return std::abs(scale_.toDrawing(s->at).x - edge);
        };
        std::stable_sort(order.begin(), order.end(), [&](const BenchSpot* a, const BenchSpot* b) {
            if (std::abs(height(a) - height(b)) > 0.05) return height(a) < height(b);
            return near(a) > near(b);
        });
        const double first = top_ + band_mm + page::plain + 2.8 + page::figure / 2.0;
        const double last = bottom_ - 2.5 - page::figure / 2.0;
        std::vector<double> at;
        at.reserve(order.size());
        for (const BenchSpot* spot : order)
            at.push_back(std::max(height(spot), at.empty() ? first : at.back() + pitch_mm));
        double limit = last;
        for (auto y = at.rbegin(); y != at.rend(); ++y) {
            *y = std::min(*y, limit);
            limit = *y - pitch_mm;
        }
        untangle(order, at, edge);
        const double x = columnLeft_;
        const double head = top_ + band_mm + page::plain + 1.0;
        flow_.text({x, head}, "mark");
        flow_.text({x + columns_.mark + gap_mm, head}, in_.along);
        flow_.text({x + columns_.mark + columns_.along + 2 * gap_mm, head}, in_.across);
        for (std::size_t i = 0; i < order.size(); ++i) mark(*order[i], at[i], x, edge);
    }

    /// Swaps neighbours as long as that uncrosses their lines.
    void untangle(std::vector<const BenchSpot*>& order, const std::vector<double>& at,
                  double edge) const {
        const auto crossed = [&](std::size_t upper, std::size_t lower, bool swapped) {
            const PointMm a = scale_.toDrawing(order[swapped ? lower : upper]->at);
            const PointMm b = scale_.toDrawing(order[swapped ? upper : lower]->at);
            return meet(a, {edge, at[upper]}, b, {edge, at[lower]});
        };
        for (std::size_t pass = 0; pass < order.size(); ++pass) {
            for (std::size_t i = 0; i + 1 < order.size(); ++i) {
                if (crossed(i, i + 1, false) && !crossed(i, i + 1, true))
                    std::swap(order[i], order[i + 1]);
            }
        }
    }

    /// Whether two straight lines meet, touching included.
    static bool meet(PointMm a, PointMm b, PointMm c, PointMm d) {
        const auto turn = [](PointMm p, PointMm q, PointMm r) {
            return (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
        };
        return turn(a, b, c) * turn(a, b, d) <= 0.0 && turn(c, d, a) * turn(c, d, b) <= 0.0;
    }

    void mark(const BenchSpot& spot, double y, double x, double edge) {
        const PointMm hole = scale_.toDrawing(spot.at);
        const double size = std::max(1.8, scale_.sizeMm(spot.diameter));
        const double foot = y + page::figure / 2.0;
        const double near =
            in_.acrossRight ? columnLeft_ - 1.0 : columnLeft_ + columns_.width() + 1.0;
        flow_.add(Role::label,
                  shape::Polyline{{hole, {edge, y}, {near, y}}, {0.2, LineStyle::solid}}, spot.id);
        const PointMm tip = scale_.toDrawing(spot.tip);
        flow_.add(Role::label, shape::Line{hole, tip, {0.8, LineStyle::solid}}, spot.id);
        flow_.add(Role::paper,
                  shape::Mark{hole, shape::MarkKind::circle, size, true, Stroke{0.0, {}}}, spot.id);
        flow_.add(
            Role::label,
            shape::Mark{hole, shape::MarkKind::circle, size, false, Stroke{0.5, LineStyle::solid}},
            spot.id);
        flow_.text({x, foot}, spot.mark, page::figure, Weight::bold, Across::left, spot.id);
        flow_.text({x + columns_.mark + gap_mm, foot}, spot.along, page::figure, Weight::regular,
                   Across::left, spot.id);
        flow_.text({x + columns_.mark + columns_.along + 2 * gap_mm, foot}, spot.across,
                   page::figure, Weight::regular, Across::left, spot.id);
    }

    /// An arrow head, pointing up, left or right; or a dot in a ring (towards) or a cross (away).
    void arrow(PointMm c, PointMm tip) {
        const double dx = tip.x, dy = tip.y, h = arrow_mm / 2.0;
        flow_.add(Role::label,
                  shape::Polygon{{{c.x + dx * h, c.y + dy * h},
                                  {c.x - dx * h - dy * h * 0.8, c.y - dy * h + dx * h * 0.8},
                                  {c.x - dx * h + dy * h * 0.8, c.y - dy * h - dx * h * 0.8}},
                                 true,
                                 std::nullopt});
    }

    void words() {
        const double base = top_ + band_mm - 2.2;
        const double middle = base - page::plain / 2.0;
        double x = flow_.left() + 3.0;
        const auto word = [&](const std::string& text) {
            flow_.text({x, base}, text, page::plain, Weight::bold);
            x += widthMm(text, page::plain, Weight::bold) + 6.0;
        };
        arrow({x + arrow_mm / 2.0, middle}, {0.0, -1.0});
        x += arrow_mm + 1.5;
        word(in_.up);
        arrow({x + arrow_mm / 2.0, middle}, {in_.acrossRight ? 1.0 : -1.0, 0.0});
        x += arrow_mm + 1.5;
        word(in_.outward);
        if (!in_.away.empty()) word(in_.away);
        const double whole = std::round(ratio_ * 2.0) / 2.0;
        std::string ratio = std::to_string(static_cast<int>(whole));
        if (whole != std::floor(whole)) ratio += "½";
        flow_.text({flow_.right() - 3.0, base}, "drawn 1 to " + ratio, page::plain, Weight::regular,
                   Across::right);
    }

    PageFlow& flow_;
    const BenchPicture& in_;
    double height_mm_;
    double top_ = 0, bottom_ = 0, fieldLeft_ = 0, fieldRight_ = 0, columnLeft_ = 0, ratio_ = 1;
    bool beside_ = false;
    Columns columns_;
    DrawScale scale_;
};

}  // namespace

double leastPictureHeight_mm(const BenchPicture& picture) {
    const double marks = static_cast<double>(picture.spots.size()) * pitch_mm;
    return std::max(52.0, marks + band_mm + page::plain + 8.5);
}

void drawPicture(PageFlow& flow, const BenchPicture& picture, double height_mm) {
    Picture(flow, picture, height_mm).draw();
}

}  // namespace fayline
