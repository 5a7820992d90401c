#include "rail.h"

#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>
#include <QVBoxLayout>

#include "theme/colours.h"

namespace fayline {
namespace {

constexpr int edge = 4;

void hullSign(QPainterPath& path) {
    path.moveTo(2, 3);
    path.cubicTo(2, 14, 8, 16, 11, 17);
    path.lineTo(11, 21);
    path.lineTo(13, 21);
    path.lineTo(13, 17);
    path.cubicTo(16, 16, 22, 14, 22, 3);
}

void framesSign(QPainterPath& path) {
    path.moveTo(1, 5);
    path.quadTo(12, 9, 23, 4);
    path.moveTo(3, 18);
    path.lineTo(21, 18);
    for (const double x : {6.0, 10.0, 14.0, 18.0}) {
        path.moveTo(x, 7);
        path.lineTo(x, 18);
    }
}

/// A balance: what is carried against what can be.
void balanceSign(QPainterPath& path) {
    path.moveTo(12, 3);
    path.lineTo(12, 20);
    path.moveTo(7, 20);
    path.lineTo(17, 20);
    path.moveTo(4, 6);
    path.lineTo(20, 6);
    for (const double x : {4.0, 20.0}) {
        path.moveTo(x, 6);
        path.lineTo(x - 3, 13);
        path.moveTo(x, 6);
        path.lineTo(x + 3, 13);
        path.moveTo(x - 3, 13);
        path.quadTo(x, 17, x + 3, 13);
    }
}

void paperSign(QPainterPath& path) {
    path.addPolygon(QPolygonF({{6, 2}, {15, 2}, {19, 6}, {19, 21}, {6, 21}, {6, 2}}));
    path.moveTo(15, 2);
    path.lineTo(15, 6);
    path.lineTo(19, 6);
    for (const double y : {11.0, 14.5, 18.0}) {
        path.moveTo(9, y);
        path.lineTo(16, y);
    }
}

/// A bolt, lying.
void boltSign(QPainterPath& path) {
    path.addPolygon(QPolygonF({{2, 7}, {6, 7}, {6, 17}, {2, 17}, {2, 7}}));
    path.moveTo(6, 10);
    path.lineTo(22, 10);
    path.lineTo(22, 14);
    path.lineTo(6, 14);
    for (const double x : {15.0, 18.0, 21.0}) {
        path.moveTo(x, 10);
        path.lineTo(x - 1.5, 14);
    }
}

/// Two timbers and what goes through them.
void jointSign(QPainterPath& path) {
    path.addRect(3, 8, 7, 13);
    path.addRect(14, 8, 7, 13);
    path.moveTo(1, 14.5);
    path.lineTo(23, 14.5);
    path.moveTo(1, 11.5);
    path.lineTo(1, 17.5);
    path.moveTo(23, 12.5);
    path.lineTo(23, 16.5);
}

QPainterPath signPath(Rail::Sign sign) {
    QPainterPath path;
    switch (sign) {
        case Rail::Sign::hull:
            hullSign(path);
            break;
        case Rail::Sign::stations:
            framesSign(path);
            break;
        case Rail::Sign::margins:
            balanceSign(path);
            break;
        case Rail::Sign::sheets:
            paperSign(path);
            break;
        case Rail::Sign::metal:
            boltSign(path);
            break;
        case Rail::Sign::bench:
            jointSign(path);
            break;
    }
    return path;
}

class RailButton : public QAbstractButton {
  public:
    RailButton(const QString& name, Rail::Sign sign, QWidget* parent)
        : QAbstractButton(parent), sign_(sign) {
        setText(name);
        setCheckable(true);
        setAutoExclusive(true);
        setFocusPolicy(Qt::StrongFocus);
        setCursor(Qt::PointingHandCursor);
    }

    [[nodiscard]] QSize sizeHint() const override {
        return {fontMetrics().horizontalAdvance(text()) + 28, fontMetrics().height() + 46};
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const Colours colours = coloursFor(palette());
        const bool front = isChecked();
        if (front || underMouse()) painter.fillRect(rect(), colours.railChosen);
        if (front) painter.fillRect(QRect(0, 0, edge, height()), colours.railEdge);
        QColor ink = front ? colours.railChosenText : colours.railText;
        if (!isEnabled()) ink.setAlphaF(0.45F);
        painter.save();
        painter.translate(width() / 2.0 - 12.0, 11.0);
        QPen pen(ink, 1.8);
        pen.setCapStyle(Qt::RoundCap);
        painter.setPen(pen);
        painter.drawPath(signPath(sign_));
        painter.restore();
        QFont font = painter.font();
        font.setBold(front);
        painter.setFont(font);
        painter.setPen(ink);
        painter.drawText(rect().adjusted(0, 34, 0, -6), Qt::AlignHCenter | Qt::AlignVCenter,
                         text());
        if (hasFocus()) {
            painter.setPen(QPen(colours.railEdge, 2));
            painter.drawRect(QRectF(rect()).adjusted(edge + 2, 3, -3, -3));
        }
    }

  private:
    Rail::Sign sign_;
};

}  // namespace

Rail::Rail(QWidget* parent) : QFrame(parent) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 12, 0, 0);
    layout->setSpacing(2);
    layout->addStretch(1);
    setAccessibleName(tr("Pages"));
}

void Rail::addPage(const QString& name, Sign sign, bool needsHull) {
    auto* button = new RailButton(name, sign, this);
    const int page = static_cast<int>(pages_.size());
    static_cast<QVBoxLayout*>(layout())->insertWidget(page, button);
    pages_.push_back(button);
    needHull_.push_back(needsHull);
    connect(button, &QAbstractButton::clicked, this, [this, page] { emit chosen(page); });
}

void Rail::choose(int page) {
    pages_[static_cast<std::size_t>(page)]->setChecked(true);
}

void Rail::setPagesEnabled(bool enabled) {
    for (std::size_t i = 0; i < pages_.size(); ++i) pages_[i]->setEnabled(enabled || !needHull_[i]);
}

void Rail::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), coloursFor(palette()).rail);
}

void Rail::keyPressEvent(QKeyEvent* event) {
    const int by = event->key() == Qt::Key_Down ? 1 : event->key() == Qt::Key_Up ? -1 : 0;
    const auto here = std::find_if(pages_.begin(), pages_.end(),
                                   [](const QAbstractButton* b) { return b->hasFocus(); });
    if (by == 0 || here == pages_.end()) {
        QFrame::keyPressEvent(event);
        return;
    }
    const int to = static_cast<int>(here - pages_.begin()) + by;
    if (to >= 0 && to < static_cast<int>(pages_.size()))
        pages_[static_cast<std::size_t>(to)]->setFocus(Qt::TabFocusReason);
}

}  // namespace fayline
