#pragma once

#include <QString>
#include <string>
#include <vector>

#include "forms/field_row.h"
#include "theme/card.h"

namespace fayline {

/// One section of the decision table as a form. For sections of many places, like "bolt", `place`
/// says which one.
class FieldForm : public Card {
    Q_OBJECT

  public:
    FieldForm(Desk& desk, const QString& title, const std::string& section,
              const std::string& place = {}, QWidget* parent = nullptr);

    [[nodiscard]] FieldRow* row(const std::string& what) const;
    [[nodiscard]] const std::vector<FieldRow*>& rows() const { return rows_; }
    void commit();

  signals:
    void said(const QString& says);

  private:
    std::vector<FieldRow*> rows_;
};

/// The decision's name for a row of the table at a place: "K.#.diameter" at "K.5" is
/// "K.5.diameter".
std::string decisionAt(const Field& field, const std::string& place);

}  // namespace fayline
