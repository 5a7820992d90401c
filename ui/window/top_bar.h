#pragma once

#include <QFrame>

#include "desk/desk.h"

class QAction;
class QComboBox;
class QLabel;
class QPushButton;

namespace fayline {

/// Across the top: the boat, whether all is on the disk, what undo and redo would do, units and
/// leading basis, and how many fastenings stand where.
class TopBar : public QFrame {
    Q_OBJECT

  public:
    TopBar(Desk& desk, QAction* undo, QAction* redo, QWidget* parent = nullptr);

    [[nodiscard]] QComboBox* units() const { return units_; }
    [[nodiscard]] QComboBox* basis() const { return basis_; }
    [[nodiscard]] QString settledText() const;
    [[nodiscard]] QString countsText() const;

  signals:
    void countsClicked();
    /// Something was chosen here: name of the decision and its text.
    void decided(const QString& what, const QString& text);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void refresh();
    void inkCounts();

    Desk& desk_;
    QLabel* boat_;
    QLabel* settled_;
    QComboBox* units_;
    QComboBox* basis_;
    QPushButton* counts_;
};

}  // namespace fayline
