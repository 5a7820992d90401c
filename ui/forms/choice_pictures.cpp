#include "choice_pictures.h"

#include <QPainter>
#include <QPainterPath>

#include "theme/colours.h"

namespace fayline {
namespace {

/// The pictures are drawn in a field of 60 by 44.
constexpr double wide = 60.0, high = 44.0;

class Picture {
  public:
    Picture(QPainter& painter, const QPalette& palette) : painter_(painter) {
        const QColor ink = palette.color(QPalette::Text);
        line_ = QPen(ink, 1.2);
        line_.setJoinStyle(Qt::RoundJoin);
        frame_ = isDark(palette) ? QColor(0x8A, 0x6F, 0x45) : QColor(0xD9, 0xC0, 0x90);
        keel_ = isDark(palette) ? QColor(0x6B, 0x62, 0x50) : QColor(0xEA, 0xDD, 0xC2);
        metal_ = isDark(palette) ? QColor(0x7F, 0x8A, 0x92) : QColor(0x9A, 0xA3, 0xAA);
    }

    void heel(const std::string& choice) {
        const bool socketed = choice == "socketed";
        if (choice == "beside") {
            area({{4, 4}, {12, 2}, {25, 34}, {25, 42}, {20, 42}}, frame_);
            area({{56, 4}, {48, 2}, {35, 34}, {35, 42}, {40, 42}}, frame_);
        }
        area({{25, 26}, {35, 26}, {35, 43}, {25, 43}}, keel_);
        if (socketed) {
            area({{4, 4}, {12, 2}, {28, 29}, {28, 36}, {24, 36}}, frame_);
            area({{56, 4}, {48, 2}, {32, 29}, {32, 36}, {36, 36}}, frame_);
        } else if (choice == "on_top") {
            area({{4, 4}, {12, 2}, {29, 20}, {29, 26}, {22, 26}}, frame_);
            area({{56, 4}, {48, 2}, {31, 20}, {31, 26}, {38, 26}}, frame_);
        } else if (choice == "continuous" || choice == "half_frames") {
            area({{4, 4}, {12, 2}, {26, 17}, {34, 17}, {48, 2}, {56, 4}, {38, 26}, {22, 26}},
                 frame_);
            if (choice == "half_frames") stroke({{30, 17}, {30, 26}}, 1.8);
        }
    }

    /// Seen from the side: the keel along, timbers across it.
    void sits(const std::string& choice) {
        area({{2, 32}, {58, 32}, {58, 42}, {2, 42}}, keel_);
        if (choice == "beside") {
            area({{20, 4}, {30, 4}, {30, 32}, {20, 32}}, frame_);
            area({{30, 14}, {41, 14}, {41, 32}, {30, 32}}, keel_.darker(115));
        } else if (choice == "across") {
            area({{25, 4}, {35, 4}, {35, 32}, {25, 32}}, frame_);
            area({{23, 15}, {37, 15}, {37, 32}, {23, 32}}, keel_.darker(115));
        } else {
            area({{22, 4}, {32, 4}, {32, 32}, {22, 32}}, frame_);
            area({{32, 12}, {35, 12}, {35, 32}, {32, 32}}, metal_);
            area({{32, 29}, {46, 29}, {46, 32}, {32, 32}}, metal_);
        }
    }

    void make(const std::string& choice) {
        const QPolygonF body({{3, 12}, {10, 8}, {30, 22}, {50, 8}, {57, 12}, {36, 38}, {24, 38}});
        if (choice == "none") {
            QPen dashed = line_;
            dashed.setStyle(Qt::DashLine);
            painter_.setPen(dashed);
            painter_.setBrush(Qt::NoBrush);
            painter_.drawPolygon(body);
            return;
        }
        const bool metal = choice == "cast" || choice == "plate";
        if (choice == "plate") {
            area({{3, 12}, {5, 9}, {30, 33}, {55, 9}, {57, 12}, {32, 38}, {28, 38}}, metal_);
            return;
        }
        area(body, metal ? metal_ : frame_);
        QPainterPath clip;
        clip.addPolygon(body);
        painter_.save();
        painter_.setClipPath(clip);
        if (choice == "sawn") {
            for (const double y : {14.0, 20.0, 26.0, 32.0}) stroke({{0, y}, {60, y}}, 0.8);
        } else if (choice == "grown") {
            for (const double y : {8.0, 14.0, 20.0}) arc(y, 0.8);
        } else if (choice == "laminated") {
            for (const double y : {4.0, 8.0, 12.0, 16.0, 20.0, 24.0}) arc(y, 1.1);
        } else if (choice == "cast") {
            stroke({{6, 14}, {28, 33}, {32, 33}, {54, 14}}, 1.4);
        }
        painter_.restore();
    }

    void bolt(bool between) {
        area({{2, 26}, {58, 26}, {58, 42}, {2, 42}}, keel_);
        if (between) {
            area({{6, 8}, {20, 8}, {20, 26}, {6, 26}}, frame_);
            area({{40, 8}, {54, 8}, {54, 26}, {40, 26}}, frame_);
            rod(26);
        } else {
            area({{22, 8}, {38, 8}, {38, 26}, {22, 26}}, frame_);
            rod(8);
        }
    }

    /// Grain that runs along a timber, or at a slope to it.
    void grain(double slope) {
        area({{3, 14}, {57, 14}, {57, 30}, {3, 30}}, frame_);
        painter_.save();
        painter_.setClipRect(QRectF(3, 14, 54, 16));
        for (double y = -20.0; y < 60.0; y += 5.0) stroke({{0, y}, {60, y - slope}}, 0.8);
        painter_.restore();
    }

  private:
    void area(const QPolygonF& points, const QColor& fill) {
        painter_.setPen(line_);
        painter_.setBrush(fill);
        painter_.drawPolygon(points);
    }
    void stroke(const QPolygonF& points, double width) {
        QPen pen = line_;
        pen.setWidthF(width);
        painter_.setPen(pen);
        painter_.setBrush(Qt::NoBrush);
        painter_.drawPolyline(points);
    }
    void arc(double top, double width) {
        QPainterPath path;
        path.moveTo(0, top);
        path.quadTo(30, top + 38, 60, top);
        QPen pen = line_;
        pen.setWidthF(width);
        painter_.setPen(pen);
        painter_.setBrush(Qt::NoBrush);
        painter_.drawPath(path);
    }
    void rod(double top) {
        area({{28.5, top - 3}, {31.5, top - 3}, {31.5, 43}, {28.5, 43}}, metal_);
        area({{24, top - 3}, {36, top - 3}, {36, top}, {24, top}}, metal_);
    }

    QPainter& painter_;
    QPen line_;
    QColor frame_, keel_, metal_;
};

}  // namespace

std::string lastName(const Field& field) {
    return field.pattern.substr(field.pattern.rfind('.') + 1);
}

bool hasPictures(const Field& field) {
    if (field.kind != ValueKind::choice) return false;
    const std::string name = lastName(field);
    return name == "heel_detail" || name == "topology" || name == "through" || name == "grain" ||
           (name == "kind" && (field.section == "floors" || field.section == "floor"));
}

void paintChoice(QPainter& painter, const QRectF& box, const std::string& name,
                 const std::string& choice, const QPalette& palette) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double scale = qMin(box.width() / wide, box.height() / high);
    painter.translate(box.center().x() - wide * scale / 2.0, box.center().y() - high * scale / 2.0);
    painter.scale(scale, scale);
    Picture picture(painter, palette);
    if (name == "heel_detail") {
        picture.heel(choice);
    } else if (name == "topology") {
        picture.sits(choice);
    } else if (name == "through") {
        picture.bolt(choice == "between");
    } else if (name == "grain") {
        picture.grain(choice == "along" ? 0.0 : 14.0);
    } else {
        picture.make(choice);
    }
    painter.restore();
}

}  // namespace fayline
