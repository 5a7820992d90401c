#pragma once

#include <QString>

#include "desk/desk.h"
#include "desk/page.h"

class QLabel;
class QPushButton;
class QScrollArea;
class QSplitter;
class QStackedWidget;

namespace fayline {

enum class ColumnSet;
class Card;
class FieldForm;
class FindBar;
class HoldsList;
class Segments;
class SketchView;
class StationsModel;
class StationsView;
class WhenSeen;
class WorkingPanel;

/// The grid, a row per frame, under the side profile; beside it the section at the chosen frame and
/// what holds there.
class StationsPage : public Page {
    Q_OBJECT

  public:
    explicit StationsPage(Desk& desk, QWidget* parent = nullptr);

    void settle() override;
    [[nodiscard]] bool does(PageCommand command) const override;
    void run(PageCommand command) override;
    [[nodiscard]] QByteArray arrangement() const override;
    void arrange(const QByteArray& state) override;

    void setFrame(const QString& frame);
    [[nodiscard]] QString frame() const;
    /// The sets of columns there are, for menus.
    static int setCount();
    static QString setTitle(int set);
    /// Which columns of the grid are shown.
    void showSet(ColumnSet set);
    /// Opens the working of the worst margin at the chosen frame; false when nothing is checked
    /// there.
    bool showWorking();

    [[nodiscard]] StationsView& grid() { return *grid_; }
    [[nodiscard]] StationsModel& model() { return *model_; }
    [[nodiscard]] SketchView& profile() { return *profile_; }
    [[nodiscard]] SketchView& section() { return *section_; }
    [[nodiscard]] HoldsList& holds() { return *holds_; }
    [[nodiscard]] WorkingPanel& working() { return *working_; }

  signals:
    void hullWanted(const QString& what);
    void cautionsWanted();

  protected:
    void changeEvent(QEvent* event) override;

  private:
    enum Side { sectionAndHolds, workingSide, detailsSide };

    void fitSide();
    QWidget* makeGrid();
    QWidget* makeSide();
    void connectParts();
    void refresh();
    void frameChosen(const QString& frame);
    void sketchChose(const QString& id);
    void openWorking(const Check& check);
    void openDetails();
    void showSide(Side which);
    void say(const QString& says);
    void search(bool forward);
    [[nodiscard]] QString tipFor(const QString& id) const;

    Desk& desk_;
    StationsModel* model_;
    StationsView* grid_;
    SketchView* profile_;
    SketchView* section_;
    HoldsList* holds_;
    WorkingPanel* working_;
    FindBar* find_;
    Segments* sets_;
    Card* sectionCard_;
    Card* holdsCard_;
    QStackedWidget* gridOrWords_;
    QStackedWidget* side_;
    QScrollArea* details_;
    QPushButton* all_;
    QLabel* missing_;
    QLabel* line_;
    QLabel* nothing_;
    QSplitter* across_;
    QSplitter* upright_;
    std::vector<FieldForm*> detailForms_;
    bool fromSketch_ = false;
    WhenSeen* follow_;
    int sideBefore_ = 0;  ///< width to go back to after a working
};

}  // namespace fayline
