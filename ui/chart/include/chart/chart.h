#pragma once

#include <QString>
#include <QStringList>
#include <QWidget>
#include <memory>
#include <optional>
#include <vector>

class QLabel;

namespace fayline {

/// One line, or one bar at each place. Numbers are in the unit the chart names; nothing where there
/// is no figure: a gap is shown as a gap.
struct ChartSeries {
    QString name;
    std::vector<std::optional<double>> values;  ///< one for each place
    bool operator==(const ChartSeries&) const = default;
};

/// A line across the whole chart, such as a target.
struct ChartLimit {
    double at = 0.0;
    QString name;
    bool operator==(const ChartLimit&) const = default;
};

struct ChartData {
    enum class Kind { lines, bars };
    enum class Figures { plain, margins };  ///< margins are written ×0.99, cut and never rounded up

    QString title;
    QString across;  ///< what the places are: "frame"
    QString up;      ///< what is shown: "keel moment"
    QString unit;    ///< "kNm"; empty for ratios
    Kind kind = Kind::lines;
    Figures figures = Figures::plain;
    QStringList places;
    std::vector<ChartSeries> series;  ///< four at most, so that they can be told apart
    std::vector<ChartLimit> limits;
    std::optional<double>
        top;            ///< the axis ends here; what is higher leaves the picture, not the words
    QString emptyText;  ///< what is missing while there is nothing to show
    bool operator==(const ChartData&) const = default;
};

class ChartLegend;

/// Figures over places. Series differ by hue, dash, mark and hatch. The pointer or Left, Right,
/// Home and End move a cursor; the figures there stand in words below. Enter or a click chooses the
/// place.
class Chart : public QWidget {
    Q_OBJECT

  public:
    explicit Chart(QWidget* parent = nullptr);
    ~Chart() override;

    void setData(ChartData data);
    [[nodiscard]] const ChartData& data() const { return data_; }

    /// The place the cursor is at; -1 when there is none.
    [[nodiscard]] int place() const { return place_; }
    /// Moves the cursor without a signal.
    void setPlace(int place);
    /// The figures at the cursor: "F20: knocked down to port 12.3 kNm".
    [[nodiscard]] QString reading() const;

    [[nodiscard]] QSize sizeHint() const override { return {480, 260}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {280, 190}; }

  signals:
    void chosen(int place);

  protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* object, QEvent* event) override;

  private:
    class Plot;

    void tell();
    void embolden();
    [[nodiscard]] QString figure(double value) const;

    ChartData data_;
    std::unique_ptr<Plot> plot_;
    QLabel* title_;
    ChartLegend* legend_;
    QLabel* reading_;
    QLabel* empty_;
    int place_ = -1;
};

}  // namespace fayline
