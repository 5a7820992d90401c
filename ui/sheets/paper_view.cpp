#include "paper_view.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>
#include <algorithm>

#include "paper/paper.h"
#include "theme/colours.h"
#include "words/values.h"

namespace fayline {
namespace {

constexpr int margin_px = 14;

}  // namespace

PaperView::PaperView(QWidget* parent) : QAbstractScrollArea(parent) {
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    viewport()->setBackgroundRole(QPalette::Window);
    setAccessibleName(tr("Preview"));
}

void PaperView::setSheet(std::optional<Sheet> sheet) {
    const bool same = sheet && sheet_ && sheet->id == sheet_->id;
    const bool sameWords = same && sheet->revision == sheet_->revision && !sheet->pages.empty() &&
                           sheet->pages.size() == sheet_->pages.size() &&
                           sheet->pages.front().drawing.size == sheet_->pages.front().drawing.size;
    sheet_ = std::move(sheet);
    if (sameWords) return;  // but for the time of day
    page_ = same ? std::clamp(page_, 0, std::max(0, pageCount() - 1)) : 0;
    layBars();
    if (!same) verticalScrollBar()->setValue(0);
    viewport()->update();
    emit pageChanged(page_);
}

int PaperView::pageCount() const {
    return sheet_ ? static_cast<int>(sheet_->pages.size()) : 0;
}

const SheetPage* PaperView::current() const {
    return pageCount() == 0 ? nullptr : &sheet_->pages[static_cast<std::size_t>(page_)];
}

void PaperView::setPage(int page) {
    const int to = std::clamp(page, 0, std::max(0, pageCount() - 1));
    if (to == page_) return;
    page_ = to;
    layBars();
    verticalScrollBar()->setValue(0);
    viewport()->update();
    emit pageChanged(page_);
}

double PaperView::pixelsPerMm() const {
    const SheetPage* page = current();
    if (page == nullptr) return 1.0;
    const SizeMm size = page->drawing.size;
    const double wide = std::max(40, viewport()->width() - 2 * margin_px);
    const double high = std::max(40, viewport()->height() - 2 * margin_px);
    return zoom_ * std::min(wide / size.width, high / size.height);
}

void PaperView::layBars() {
    const SheetPage* page = current();
    const double scale = pixelsPerMm();
    const int wide =
        page == nullptr ? 0 : static_cast<int>(page->drawing.size.width * scale) + 2 * margin_px;
    const int high =
        page == nullptr ? 0 : static_cast<int>(page->drawing.size.height * scale) + 2 * margin_px;
    horizontalScrollBar()->setRange(0, std::max(0, wide - viewport()->width()));
    verticalScrollBar()->setRange(0, std::max(0, high - viewport()->height()));
    horizontalScrollBar()->setPageStep(viewport()->width());
    verticalScrollBar()->setPageStep(viewport()->height());
    horizontalScrollBar()->setSingleStep(30);
    verticalScrollBar()->setSingleStep(30);
}

void PaperView::setZoom(double zoom) {
    const double to = std::clamp(zoom, leastZoom, mostZoom);
    if (to == zoom_) return;
    const double ratio = to / zoom_;
    const QPoint middle(viewport()->width() / 2, viewport()->height() / 2);
    const double x = (horizontalScrollBar()->value() + middle.x()) * ratio - middle.x();
    const double y = (verticalScrollBar()->value() + middle.y()) * ratio - middle.y();
    zoom_ = to;
    layBars();
    horizontalScrollBar()->setValue(static_cast<int>(x));
    verticalScrollBar()->setValue(static_cast<int>(y));
    viewport()->update();
}

void PaperView::paintEvent(QPaintEvent*) {
    QPainter painter(viewport());
    painter.fillRect(viewport()->rect(), palette().color(QPalette::Window));
    const SheetPage* page = current();
    if (page != nullptr) {
        painter.setRenderHint(QPainter::Antialiasing);
        const double scale = pixelsPerMm();
        const double wide = page->drawing.size.width * scale;
        const double high = page->drawing.size.height * scale;
        const double left =
            std::max(static_cast<double>(margin_px), (viewport()->width() - wide) / 2.0) -
            horizontalScrollBar()->value();
        const double top =
            std::max(static_cast<double>(margin_px), (viewport()->height() - high) / 2.0) -
            verticalScrollBar()->value();
        const QRectF paper(left, top, wide, high);
        painter.fillRect(paper, Qt::white);
        painter.setPen(coloursFor(palette()).line);
        painter.drawRect(paper);
        painter.setClipRect(paper);
        painter.translate(left, top);
        paintPage(painter, *page, scale);
        painter.resetTransform();
        painter.setClipping(false);
    }
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
        painter.drawRect(QRectF(viewport()->rect()).adjusted(1, 1, -1, -1));
    }
}

void PaperView::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    layBars();
}

void PaperView::scrollContentsBy(int, int) {
    viewport()->update();
}

void PaperView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_PageDown:
        case Qt::Key_Space:
            setPage(page_ + 1);
            return;
        case Qt::Key_PageUp:
        case Qt::Key_Backspace:
            setPage(page_ - 1);
            return;
        case Qt::Key_Home:
            setPage(0);
            return;
        case Qt::Key_End:
            setPage(pageCount() - 1);
            return;
        default:
            QAbstractScrollArea::keyPressEvent(event);
    }
}

void PaperView::wheelEvent(QWheelEvent* event) {
    if (event->modifiers().testFlag(Qt::ControlModifier)) {
        setZoom(zoom_ * (event->angleDelta().y() > 0 ? 1.25 : 0.8));
        event->accept();
        return;
    }
    QAbstractScrollArea::wheelEvent(event);
}

void PaperView::focusInEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusInEvent(event);
    viewport()->update();
}
void PaperView::focusOutEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusOutEvent(event);
    viewport()->update();
}

}  // namespace fayline
