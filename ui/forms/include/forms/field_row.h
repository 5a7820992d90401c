#pragma once

#include <QString>
#include <QWidget>
#include <string>

#include "desk/desk.h"
#include "project/fields.h"

class QLabel;
class QLineEdit;

namespace fayline {

class ChoiceBox;
class PictureChoice;

/// One decision in a form: label, what was typed or what the rule gives, unit, and below it why an
/// entry was not taken. An entry that is not taken stays visible; the old value stays in force. An
/// empty entry goes back to the rule.
class FieldRow : public QWidget {
    Q_OBJECT

  public:
    FieldRow(Desk& desk, std::string what, QWidget* parent = nullptr);
    ~FieldRow() override;

    [[nodiscard]] const std::string& what() const { return what_; }
    [[nodiscard]] QLineEdit* entry() const { return entry_; }
    [[nodiscard]] QLabel* label() const { return label_; }
    /// Why the entry was not taken; empty when all is well.
    [[nodiscard]] QString objection() const;

    /// Decides what stands in the field, if it is other than before.
    void commit();
    /// Shows what stands now, unless something is being typed or was not taken.
    void follow();

  signals:
    void said(const QString& says);

  protected:
    bool eventFilter(QObject* object, QEvent* event) override;

  private:
    void object(const QString& says);
    void revert();
    [[nodiscard]] QString standing() const;
    [[nodiscard]] QString beside() const;
    [[nodiscard]] bool isTouched() const;

    Desk& desk_;
    std::string what_;
    const Field* field_;
    QLabel* label_;
    QLineEdit* entry_ = nullptr;
    ChoiceBox* choices_ = nullptr;
    PictureChoice* pictures_ = nullptr;  ///< the same choices as pictures, where there are any
    QLabel* unit_;
    QLabel* below_;
    QString shown_;  ///< what the field was last filled with
};

}  // namespace fayline
