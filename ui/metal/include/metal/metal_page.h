#pragma once

#include "desk/desk.h"
#include "desk/page.h"

class QLabel;
class QPushButton;
class QStackedWidget;
class QTableView;

namespace fayline {

class MetalModel;

/// What to order for all holes of the hull, with spares and weight. Follows the results while it is
/// in front.
class MetalPage : public Page {
    Q_OBJECT

  public:
    explicit MetalPage(Desk& desk, QWidget* parent = nullptr);

    void settle() override {}
    [[nodiscard]] bool does(PageCommand command) const override;
    void run(PageCommand command) override;

    /// Writes the whole table; false when the file cannot be written, and says so.
    bool saveCsv(const QString& path);
    [[nodiscard]] MetalModel& model() { return *model_; }
    [[nodiscard]] QTableView& table() { return *table_; }
    [[nodiscard]] QString totals() const;

  signals:
    void hullWanted(const QString& what);
    void cautionsWanted();
    void done(const QString& says);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void refresh();
    void fitColumns();
    void copy(bool headings);
    void askWhere();

    Desk& desk_;
    MetalModel* model_;
    QTableView* table_;
    QStackedWidget* tableOrWords_;
    QLabel* totals_;
    QLabel* rules_;
    QPushButton* save_;
};

}  // namespace fayline
