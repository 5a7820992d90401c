#pragma once

#include <vector>

#include "desk/desk.h"
#include "desk/page.h"
#include "forms/field_form.h"

class QScrollArea;

namespace fayline {

class OffsetsCard;

/// Particulars, timbers, ballast and bolts as forms, what is still missing, the offsets, and what
/// is worked out against what is stated.
class HullPage : public Page {
    Q_OBJECT

  public:
    explicit HullPage(Desk& desk, QWidget* parent = nullptr);

    /// Brings a decision's field into view and puts the cursor there.
    void showField(const QString& what);
    void settle() override;
    [[nodiscard]] bool does(PageCommand command) const override;
    void run(PageCommand command) override;
    bool importOffsets(const QString& file);
    [[nodiscard]] FieldRow* row(const std::string& what) const;

  signals:
    void stationsWanted(const QString& frame);

  private:
    QScrollArea* scroll_;
    OffsetsCard* offsets_;
    std::vector<FieldForm*> forms_;
};

}  // namespace fayline
