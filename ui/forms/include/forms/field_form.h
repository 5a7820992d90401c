#pragma once

#include <QString>
#include <string>
#include <vector>

#include "forms/field_row.h"
#include "theme/card.h"

class QLabel;

namespace fayline {

/// One section of the decision table as a form. For sections of many places, like "bolt", `place`
/// says which one.
class FieldForm : public Card {
    Q_OBJECT

  public:
    /// `within`: only rows whose pattern begins so.
    FieldForm(Desk& desk, const QString& title, const std::string& section,
              const std::string& place = {}, const std::string& within = {},
              QWidget* parent = nullptr);

    [[nodiscard]] FieldRow* row(const std::string& what) const;
    [[nodiscard]] const std::vector<FieldRow*>& rows() const { return rows_; }
    void commit();

    /// Shows only the rows that matter for the kind of fastening that stands; `group` as decisions
    /// name it, at a frame and side or, without, for the whole hull.
    void followKind(const std::string& group, const std::string& frame = {},
                    const std::string& side = {});
    /// A line below the title; empty hides it.
    void setNote(const QString& note);

  signals:
    void said(const QString& says);

  private:
    void refresh();

    Desk& desk_;
    QLabel* note_;
    std::string group_, frame_, side_;
    std::vector<FieldRow*> rows_;
};

/// The decision's name for a row of the table at a place: "K.#.diameter" at "K.5" is
/// "K.5.diameter".
std::string decisionAt(const Field& field, const std::string& place);

}  // namespace fayline
