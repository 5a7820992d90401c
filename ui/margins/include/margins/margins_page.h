#pragma once

#include <QString>
#include <optional>

#include "desk/desk.h"
#include "desk/page.h"

class QLabel;
class QModelIndex;
class QSplitter;
class QStackedWidget;
class QTimer;

namespace fayline {

class Card;
class Chart;
class FilterBar;
class MarginsModel;
class MarginsView;
class Segments;
class SketchView;
class WorkingPanel;

/// The margins joint by joint, worst first, under the side profile; a chart over the frames, and
/// the working of the chosen check with both timber bases side by side. Follows the results while
/// it is in front.
class MarginsPage : public Page {
    Q_OBJECT

  public:
    explicit MarginsPage(Desk& desk, QWidget* parent = nullptr);

    void settle() override {}
    [[nodiscard]] bool does(PageCommand command) const override;
    void run(PageCommand command) override;
    [[nodiscard]] QByteArray arrangement() const override;
    void arrange(const QByteArray& state) override;

    /// Which chart: worst margins, keel moment, load shares.
    void showChart(int which);
    /// Chooses the worst check of a frame or fastening, if it is listed.
    void choose(const QString& idOrFrame);
    [[nodiscard]] MarginsView& table() { return *table_; }
    [[nodiscard]] MarginsModel& model() { return *model_; }
    [[nodiscard]] FilterBar& filter() { return *filter_; }
    [[nodiscard]] Chart& chart() { return *chart_; }
    [[nodiscard]] Segments& charts() { return *charts_; }
    [[nodiscard]] SketchView& profile() { return *profile_; }
    [[nodiscard]] WorkingPanel& working() { return *working_; }

  signals:
    void frameWanted(const QString& frame);
    void hullWanted(const QString& what);
    void cautionsWanted();
    /// Of a frame; empty: of the whole hull.
    void recordWanted(const QString& frame);

  private:
    void layOut();
    [[nodiscard]] QString chosenFrame() const;
    void connectParts();
    void refresh();
    void chooseFirst();
    void refreshChart();
    void filterChanged();
    void lineChosen(const QModelIndex& line);
    void showWorking();
    void sayWhatIsMissing();

    Desk& desk_;
    MarginsModel* model_;
    MarginsView* table_;
    FilterBar* filter_;
    SketchView* profile_;
    Chart* chart_;
    Segments* charts_;
    WorkingPanel* working_;
    Card* workingCard_;
    QLabel* nothing_;
    QLabel* missing_;
    QStackedWidget* tableOrWords_;
    QSplitter* across_;
    QSplitter* upright_;
    QSplitter* left_;
    QTimer* soon_;  ///< waits until a run through the lines has come to rest
};

}  // namespace fayline
