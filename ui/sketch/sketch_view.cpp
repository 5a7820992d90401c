#include "sketch/sketch_view.h"

#include <QEvent>
#include <QFontMetricsF>
#include <QPainter>
#include <QScrollBar>
#include <QStyle>
#include <QTimer>
#include <cmath>

#include "paint/font.h"
#include "pinned.h"
#include "sheet/selection.h"
#include "tiles.h"

namespace fayline {

namespace {

double nominalPixelsPerMm(const QWidget& widget) {
    return widget.logicalDpiX() / 25.4;
}

double letterMmOf(const QWidget& widget) {
    const double capitals = QFontMetricsF(widget.font()).capHeight();
    return capitals / nominalPixelsPerMm(widget);
}

}  // namespace

SketchView::SketchView(QWidget* parent)
    : QAbstractScrollArea(parent),
      styleMaker_(screenStyle),
      tiles_(std::make_unique<SketchTiles>()),
      idle_(new QTimer(this)) {
    registerBundledFont();
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    setAccessibleName(tr("Sketch"));
    viewport()->setMouseTracking(true);
    viewport()->setAttribute(Qt::WA_OpaquePaintEvent);
    horizontalScrollBar()->setFocusPolicy(Qt::NoFocus);
    verticalScrollBar()->setFocusPolicy(Qt::NoFocus);
    // A drawing of a boat has its own left and right, whichever way the language runs.
    setLayoutDirection(Qt::LeftToRight);
    setMinimumSize(120, 80);
    style_ = styleMaker_(palette());
    // One piece a turn of the event loop, so that input is never kept waiting.
    connect(idle_, &QTimer::timeout, this, &SketchView::prepareAround);
}

SketchView::~SketchView() = default;

void SketchView::setMaker(Maker maker) {
    maker_ = std::move(maker);
    remake();
}

void SketchView::setDrawing(Drawing drawing) {
    maker_ = nullptr;
    drawing_ = std::move(drawing);
    remake();
}

void SketchView::refresh() {
    if (!maker_) return;
    Drawing made = maker_(room());
    if (made == drawing_) return;
    drawing_ = std::move(made);
    layScrollBars();
    forgetPicture();
}

SketchRoom SketchView::room() const {
    const QSizeF size = QSizeF(maximumViewportSize()) * zoom_ / nominalPixelsPerMm(*this);
    return {{size.width(), size.height()}, letterMmOf(*this)};
}

void SketchView::setTip(std::function<QString(const QString&)> tip) {
    tip_ = std::move(tip);
}

void SketchView::setPaintStyle(std::function<PaintStyle(const QPalette&)> style) {
    styleMaker_ =
        style ? std::move(style) : std::function<PaintStyle(const QPalette&)>(screenStyle);
    style_ = styleMaker_(palette());
    forgetPicture();
}

QSize SketchView::sizeHint() const {
    return {640, 240};
}

double SketchView::pixelsPerMm() const {
    if (maker_) return nominalPixelsPerMm(*this);
    const QSize room = maximumViewportSize();
    const double fit = std::min(room.width() / std::max(drawing_.size.width, 1.0),
                                room.height() / std::max(drawing_.size.height, 1.0));
    return fit * zoom_;
}

void SketchView::remake() {
    if (maker_) drawing_ = maker_(room());
    layScrollBars();
    forgetPicture();
}

void SketchView::forgetPicture() {
    tiles_->reset(drawing_, style_, pixelsPerMm(), devicePixelRatioF());
    setSelected(selected_);
    viewport()->update();
}

void SketchView::layScrollBars() {
    const double scale = pixelsPerMm();
    // Half a pixel of rounding must not bring up scroll bars when all of it fits.
    const QSize content(static_cast<int>(std::floor(drawing_.size.width * scale + 0.49)),
                        static_cast<int>(std::floor(drawing_.size.height * scale + 0.49)));
    const QSize whole = maximumViewportSize();
    const bool all = content.width() <= whole.width() && content.height() <= whole.height();
    const QSize seen = all ? whole : viewport()->size();
    horizontalScrollBar()->setRange(0, std::max(0, content.width() - seen.width()));
    verticalScrollBar()->setRange(0, std::max(0, content.height() - seen.height()));
    horizontalScrollBar()->setPageStep(seen.width());
    verticalScrollBar()->setPageStep(seen.height());
    horizontalScrollBar()->setSingleStep(20);
    verticalScrollBar()->setSingleStep(20);
}

QPointF SketchView::contentOrigin() const {
    const double scale = pixelsPerMm();
    const double ratio = devicePixelRatioF();
    // What is smaller than the view stands in its middle. Always on a whole device pixel.
    const auto at = [&](int room, double size, int scrolled) {
        return std::round((std::max(0.0, (room - size) / 2.0) - scrolled) * ratio) / ratio;
    };
    return {at(viewport()->width(), drawing_.size.width * scale, horizontalScrollBar()->value()),
            at(viewport()->height(), drawing_.size.height * scale, verticalScrollBar()->value())};
}

QPointF SketchView::placeOf(PointMm place) const {
    return PaintMap{pixelsPerMm(), contentOrigin()}.map(place);
}

void SketchView::setSelected(const QString& id) {
    selected_ = id;
    const double letter_mm = maker_ ? letterMmOf(*this) : 2.1;
    chosenItems_ = selectionOf(drawing_, id.toStdString(), {letter_mm, letter_mm});
    const QString told = id.isEmpty() ? QString() : tipFor(id);
    if (told != accessibleDescription()) setAccessibleDescription(told);
    viewport()->update();
}

void SketchView::choose(const QString& id) {
    setSelected(id);
    reveal(id);
    emit selected(id);
}

void SketchView::reveal(const QString& id) {
    const RectMm box = boundsOf(drawing_, id.toStdString());
    if (box.empty()) return;
    const QPointF a = placeOf({box.left, box.top});
    const QPointF b = placeOf({box.right, box.bottom});
    // Scrolls no more than needed; of what is larger than the view, as much as goes in.
    const auto shift = [](double from, double to, int room) {
        constexpr double margin = 24.0;
        if (from >= 0.0 && to <= room) return 0;
        if (to - from > room)
            return from > room - margin ? qRound(from - margin)
                   : to < margin        ? qRound(to - room + margin)
                                        : 0;
        return from < 0.0 ? qRound(from - margin) : qRound(to - room + margin);
    };
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() +
                                    shift(a.x(), b.x(), viewport()->width()));
    verticalScrollBar()->setValue(verticalScrollBar()->value() +
                                  shift(a.y(), b.y(), viewport()->height()));
}

QString SketchView::tipFor(const QString& id) const {
    const QString text = tip_ ? tip_(id) : QString();
    return text.isEmpty() ? id : text;
}

void SketchView::setZoom(double zoom) {
    zoomAt(zoom, QPointF(viewport()->rect().center()));
}

void SketchView::zoomAt(double zoom, QPointF place) {
    zoom = std::clamp(std::isfinite(zoom) ? zoom : leastZoom, leastZoom, mostZoom);
    if (zoom == zoom_) return;
    const PointMm under = PaintMap{pixelsPerMm(), contentOrigin()}.unmap(place);
    const double before = zoom_;
    const std::optional<DrawScale> scaleBefore = drawing_.scale;
    zoom_ = zoom;
    remake();
    PointMm now = under;
    if (maker_ && scaleBefore && drawing_.scale) {
        now = drawing_.scale->toDrawing(scaleBefore->toPlane(under));
    } else if (maker_) {
        now = {under.x * zoom_ / before, under.y * zoom_ / before};
    }
    const QPointF drift = placeOf(now) - place;
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() + qRound(drift.x()));
    verticalScrollBar()->setValue(verticalScrollBar()->value() + qRound(drift.y()));
    emit zoomChanged(zoom_);
}

void SketchView::zoomIn() {
    setZoom(zoom_ * 1.25);
}
void SketchView::zoomOut() {
    setZoom(zoom_ / 1.25);
}
void SketchView::zoomToFit() {
    setZoom(1.0);
}

void SketchView::paintEvent(QPaintEvent* /*event*/) {
    const double scale = pixelsPerMm();
    // The window may have come to a screen of another resolution.
    if (tiles_->ratio() != devicePixelRatioF()) {
        tiles_->reset(drawing_, style_, scale, devicePixelRatioF());
    }
    QPainter painter(viewport());
    const QPointF corner = contentOrigin();
    tiles_->paint(painter, corner, viewport()->size());
    paintItems(painter, chosenItems_, PaintMap{scale, corner}, style_);
    if (maker_) {
        const double letter_mm = letterMmOf(*this);
        paintItems(
            painter,
            pinnedNames(drawing_, {scale, corner}, viewport()->size(), {letter_mm, letter_mm}),
            PaintMap{scale, {}}, style_);
    }
    if (hasFocus()) {
        painter.setPen(QPen(palette().color(QPalette::Highlight), 2.0));
        painter.drawRect(QRectF(viewport()->rect()).adjusted(1.0, 1.0, -1.0, -1.0));
    }
    idle_->start();
}

void SketchView::prepareAround() {
    if (!tiles_->prepareOneAround(contentOrigin(), viewport()->size())) idle_->stop();
}

void SketchView::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    remake();
}

void SketchView::scrollContentsBy(int /*dx*/, int /*dy*/) {
    viewport()->update();
}

void SketchView::changeEvent(QEvent* event) {
    QAbstractScrollArea::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange) {
        style_ = styleMaker_(palette());
        forgetPicture();
    } else if (event->type() == QEvent::FontChange) {
        remake();
    }
}

}  // namespace fayline
