#pragma once

#include <QWidget>
#include <vector>

#include "desk/desk.h"
#include "forms/field_form.h"

class QScrollArea;

namespace fayline {

class OffsetsCard;

/// Particulars, timbers, ballast and bolts as forms, what is still missing, the offsets, and what
/// is worked out against what is stated.
class HullPage : public QWidget {
    Q_OBJECT

  public:
    explicit HullPage(Desk& desk, QWidget* parent = nullptr);

    /// Brings a decision's field into view and puts the cursor there.
    void show(const QString& what);
    /// Decides whatever stands typed in a field.
    void commit();
    bool importOffsets(const QString& file);
    [[nodiscard]] FieldRow* row(const std::string& what) const;

  signals:
    void stationsWanted(const QString& frame);
    void said(const QString& says);
    void stopped(const QString& says, const QStringList& details);

  private:
    QScrollArea* scroll_;
    OffsetsCard* offsets_;
    std::vector<FieldForm*> forms_;
};

}  // namespace fayline
