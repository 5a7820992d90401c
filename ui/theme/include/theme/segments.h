#pragma once

#include <QStringList>
#include <QWidget>
#include <vector>

class QAbstractButton;
class QButtonGroup;

namespace fayline {

/// A row of choices of which one is in force. One stop of the Tab key; Left and Right choose.
class Segments : public QWidget {
    Q_OBJECT

  public:
    explicit Segments(const QStringList& choices, QWidget* parent = nullptr);

    [[nodiscard]] int choice() const;
    /// Chooses without a signal.
    void setChoice(int choice);
    void setChoiceEnabled(int choice, bool enabled);

  signals:
    /// The user chose.
    void chosen(int choice);

  private:
    QButtonGroup* group_;
    std::vector<QAbstractButton*> buttons_;
};

}  // namespace fayline
