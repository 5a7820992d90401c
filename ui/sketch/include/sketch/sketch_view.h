#pragma once

#include <QAbstractScrollArea>
#include <QString>
#include <functional>
#include <memory>
#include <optional>

#include "paint/paint.h"
#include "sheet/drawing.h"

class QMouseEvent;
class QTimer;

namespace fayline {

class SketchTiles;

/// What a drawing made for a view should be: its room, and the height of capitals in the view's
/// font.
struct SketchRoom {
    SizeMm size;
    double letterMm = 2.1;
};

/// Shows a drawing and lets one look around in it and choose things.
///
/// Ctrl+wheel zooms at the pointer, the wheel scrolls, Shift+wheel scrolls sideways; dragging with
/// the middle button, or with Space held, pans; Ctrl++, Ctrl+−, Ctrl+0 zoom about the middle and
/// back to fit. Left and Right go from stop to stop of a row, Home and End to its ends, Up and Down
/// to the nearest stop of the next row, Enter activates; Tab leaves. Choosing repaints over a kept
/// picture.
/// When zoomed in so far that the names of the first row are out of sight, they stand along the
/// lower edge.
class SketchView : public QAbstractScrollArea {
    Q_OBJECT

  public:
    using Maker = std::function<Drawing(const SketchRoom&)>;

    explicit SketchView(QWidget* parent = nullptr);
    ~SketchView() override;

    /// Makes the drawing anew for each size and zoom, so that text keeps its size and more of it
    /// fits when zoomed in.
    void setMaker(Maker maker);
    /// Shows one drawing as it is, text growing with the zoom.
    void setDrawing(Drawing drawing);
    /// Has the maker make the drawing again because what it shows has changed; zoom, place and
    /// choice stay.
    void refresh();
    [[nodiscard]] const Drawing& drawing() const { return drawing_; }

    /// Chooses without a signal. An id that is not in the drawing is kept and shown when it is.
    void setSelected(const QString& id);
    [[nodiscard]] QString selectedId() const { return selected_; }
    /// Scrolls so far that an id's items are in view.
    void reveal(const QString& id);

    /// The text shown when the pointer rests on an id, and told to screen readers when it is
    /// chosen; none: the id.
    void setTip(std::function<QString(const QString& id)> tip);
    /// In place of the style that follows the palette.
    void setPaintStyle(std::function<PaintStyle(const QPalette&)> style);

    /// 1: the whole drawing fits.
    [[nodiscard]] double zoom() const { return zoom_; }
    void setZoom(double zoom);
    static constexpr double leastZoom = 1.0, mostZoom = 40.0;

    /// The id at a place of the viewport.
    [[nodiscard]] std::optional<QString> idAt(QPoint place) const;
    /// Where a place of the drawing lies in the viewport.
    [[nodiscard]] QPointF placeOf(PointMm place) const;

    [[nodiscard]] QSize sizeHint() const override;

    void zoomIn();
    void zoomOut();
    void zoomToFit();

  signals:
    /// The user chose something.
    void selected(const QString& id);
    /// The user pressed Enter on what is chosen, or double-clicked it.
    void activated(const QString& id);
    void zoomChanged(double zoom);

  protected:
    bool event(QEvent* event) override;
    bool viewportEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void changeEvent(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    [[nodiscard]] SketchRoom room() const;
    void remake();
    void prepareAround();
    void forgetPicture();
    void layScrollBars();
    void zoomAt(double zoom, QPointF place);
    void choose(const QString& id);
    bool step(int key);
    [[nodiscard]] QPointF contentOrigin() const;
    [[nodiscard]] double pixelsPerMm() const;
    [[nodiscard]] QString tipFor(const QString& id) const;
    [[nodiscard]] bool startsPan(const QMouseEvent& event) const;
    void setPointer();

    Maker maker_;
    Drawing drawing_;
    std::vector<DrawItem> chosenItems_;
    std::function<QString(const QString&)> tip_;
    std::function<PaintStyle(const QPalette&)> styleMaker_;
    PaintStyle style_;
    std::unique_ptr<SketchTiles> tiles_;
    QTimer* idle_;
    QString selected_;
    double zoom_ = 1.0;
    std::optional<QPoint> panFrom_;
    bool spaceHeld_ = false;
};

}  // namespace fayline
