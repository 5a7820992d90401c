#pragma once

#include <QWidget>

#include "joints.h"

class QComboBox;
class QLabel;
class QLineEdit;

namespace fayline {

/// What of the margins is listed: group, load case, status, basis, text.
class FilterBar : public QWidget {
    Q_OBJECT

  public:
    explicit FilterBar(QWidget* parent = nullptr);

    /// Offers the groups and cases that occur; what was chosen stays.
    void offer(const Results& results);
    [[nodiscard]] MarginFilter filter() const;
    void setFilter(const MarginFilter& filter);
    void say(const QString& words);
    void focusText();
    void clear();

  signals:
    void changed();
    void left();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QLineEdit* text_;
    QComboBox* group_;
    QComboBox* case_;
    QComboBox* status_;
    QComboBox* basis_;
    QLabel* says_;
};

}  // namespace fayline
