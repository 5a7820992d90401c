#pragma once

#include <QAbstractScrollArea>
#include <optional>

#include "sheet/paper.h"

namespace fayline {

/// One page of a sheet as paper on a desk. Page Down and Page Up go from page to page, Ctrl+wheel
/// and the zoom commands zoom, arrows scroll.
class PaperView : public QAbstractScrollArea {
    Q_OBJECT

  public:
    explicit PaperView(QWidget* parent = nullptr);

    /// Shows a sheet; the page stays where it was when the same sheet is shown again.
    void setSheet(std::optional<Sheet> sheet);
    [[nodiscard]] const std::optional<Sheet>& sheet() const { return sheet_; }
    [[nodiscard]] int page() const { return page_; }
    [[nodiscard]] int pageCount() const;
    void setPage(int page);

    /// 1: the page fits the view. Otherwise the number of times that.
    [[nodiscard]] double zoom() const { return zoom_; }
    void setZoom(double zoom);
    static constexpr double leastZoom = 1.0, mostZoom = 8.0;

  signals:
    void pageChanged(int page);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    [[nodiscard]] const SheetPage* current() const;
    [[nodiscard]] double pixelsPerMm() const;
    void layBars();

    std::optional<Sheet> sheet_;
    int page_ = 0;
    double zoom_ = 1.0;
};

}  // namespace fayline
