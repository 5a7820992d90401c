#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "quantity/quantity.h"

namespace fayline {

/// A place in a drawing: millimetres from its top left corner, x to the right, y down. Millimetres
/// of paper when printed; on screen the same at the screen's nominal resolution.
struct PointMm {
    double x = 0.0, y = 0.0;
    bool operator==(const PointMm&) const = default;
};

struct SizeMm {
    double width = 0.0, height = 0.0;
    bool operator==(const SizeMm&) const = default;
};

/// Empty (right < left) until something is put in.
struct RectMm {
    double left = 0.0, top = 0.0, right = -1.0, bottom = -1.0;

    [[nodiscard]] bool empty() const { return right < left || bottom < top; }
    [[nodiscard]] double width() const { return right - left; }
    [[nodiscard]] double height() const { return bottom - top; }
    [[nodiscard]] bool contains(PointMm p) const {
        return p.x >= left && p.x <= right && p.y >= top && p.y <= bottom;
    }
    [[nodiscard]] bool overlaps(const RectMm& o) const {
        return !empty() && !o.empty() && left <= o.right && o.left <= right && top <= o.bottom &&
               o.top <= bottom;
    }
    bool operator==(const RectMm&) const = default;
};
RectMm united(const RectMm& a, const RectMm& b);
RectMm united(const RectMm& a, PointMm p);

/// What an item is, never how it looks: the painter's style gives each role its pen and fill.
enum class Role {
    paper,    ///< the ground; an item in it wipes out what lies below
    hull,     ///< the area inside the hull's outline
    outline,  ///< the hull's outline
    frame,    ///< a frame's timber
    timber,   ///< keel and backbone
    floor,    ///< a floor timber
    ballast,
    waterline,
    bolt,  ///< a fastening with nothing to say about it
    boltShort,
    boltNear,
    boltUnknown,
    statusShort,
    statusNear,
    statusUnknown,
    statusOutside,
    statusOk,
    statusUnloaded,
    grid,
    label,
    muted,  ///< text and lines of second rank
    dimension,
    selection
};
inline constexpr std::size_t roleCount = static_cast<std::size_t>(Role::selection) + 1;

enum class LineStyle { solid, dashed, dotted, dashDot };

/// Width in millimetres; none: the thinnest line the medium shows well, whatever the scale.
struct Stroke {
    std::optional<double> widthMm;
    LineStyle style = LineStyle::solid;
    bool operator==(const Stroke&) const = default;
};

/// What an item may be.
namespace shape {

struct Line {
    PointMm from, to;
    Stroke stroke;
    bool operator==(const Line&) const = default;
};

struct Polyline {
    std::vector<PointMm> points;
    Stroke stroke;
    bool operator==(const Polyline&) const = default;
};

/// A closed area, filled as its role is filled (tint, hatch or solid).
struct Polygon {
    std::vector<PointMm> points;
    bool filled = true;
    std::optional<Stroke> stroke;  ///< of its edge
    bool operator==(const Polygon&) const = default;
};

enum class Weight { regular, bold };
enum class Across { left, centre, right };     ///< what of the text lies on the anchor
enum class Upright { baseline, middle, top };  ///< middle and top of the capitals

/// One line of text in the bundled font.
struct Text {
    PointMm anchor;
    std::string text;       ///< UTF-8
    double letterMm = 2.5;  ///< height of the capitals
    Weight weight = Weight::regular;
    Across across = Across::left;
    Upright upright = Upright::baseline;
    double angleDeg = 0.0;  ///< turned about the anchor, anticlockwise
    bool cleared = false;   ///< wipes out what lies below it
    bool operator==(const Text&) const = default;
};

enum class MarkKind { circle, cross, diamond, triangle, square };

/// A sign of fixed size about its centre.
struct Mark {
    PointMm at;
    MarkKind kind = MarkKind::circle;
    double sizeMm = 2.0;  ///< across
    bool filled = true;   ///< else its edge only
    Stroke stroke;        ///< of its edge; a cross has nothing else
    bool operator==(const Mark&) const = default;
};

/// Parallel lines over an area, in every style.
struct Hatch {
    std::vector<PointMm> points;
    double angleDeg = 45.0;  ///< of the lines, anticlockwise from the right
    double spacingMm = 2.0;
    Stroke stroke;
    bool operator==(const Hatch&) const = default;
};

enum class DimensionKind {
    between,   ///< arrows at both ends, the figure above the line
    running,   ///< from the datum's circle, one arrow, the figure at that end
    auxiliary  ///< as between, the figure in brackets: a help, never to be set out by
};

/// A dimension from one point to another. The painter draws what partsOf() makes of it.
struct Dimension {
    PointMm from, to;
    double offsetMm = 0.0;  ///< of the dimension line, to the left of from → to as seen on paper
    std::string text;
    double letterMm = 2.5;
    DimensionKind kind = DimensionKind::between;
    bool operator==(const Dimension&) const = default;
};

}  // namespace shape

using Shape = std::variant<shape::Line, shape::Polyline, shape::Polygon, shape::Text, shape::Mark,
                           shape::Hatch, shape::Dimension>;

struct DrawItem {
    Role role = Role::outline;
    std::string id;  ///< frame, fastening or member it shows; empty for what cannot be picked
    Shape shape;
    bool operator==(const DrawItem&) const = default;
};

/// A place in the plane that is drawn, in the hull's own measure: across is x in a profile, y in a
/// section; up is z.
struct PlanePoint {
    Length across, up;
    bool operator==(const PlanePoint&) const = default;
};

/// How the plane lies in the drawing.
struct DrawScale {
    PointMm origin;           ///< where across and up are nil
    double mmPerMetre = 1.0;  ///< drawing per hull; more than nil
    bool mirrored = false;    ///< across runs to the left

    [[nodiscard]] PointMm toDrawing(PlanePoint p) const;
    [[nodiscard]] PlanePoint toPlane(PointMm p) const;
    [[nodiscard]] double sizeMm(Length length) const { return length.si() * mmPerMetre; }
    bool operator==(const DrawScale&) const = default;
};

/// A place where the keyboard stops.
struct DrawStop {
    std::string id;
    PointMm at;
    bool operator==(const DrawStop&) const = default;
};

/// Items in the order they are painted, and what a view of them needs to know.
struct Drawing {
    SizeMm size;
    std::vector<DrawItem> items;
    std::optional<DrawScale> scale;           ///< none when nothing is drawn to scale
    std::vector<std::vector<DrawStop>> rows;  ///< stops from left to right, row by row
    bool namesAll = false;                    ///< every stop's name stands beside it already
    bool operator==(const Drawing&) const = default;
};

/// What an item covers, text by the bundled font's widths, strokes included.
RectMm boundsOf(const DrawItem& item);
RectMm boundsOf(const Drawing& drawing);
/// What all items of one id cover; empty when there are none.
RectMm boundsOf(const Drawing& drawing, const std::string& id);

}  // namespace fayline
