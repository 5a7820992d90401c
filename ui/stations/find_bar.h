#pragma once

#include <QWidget>

class QLabel;
class QLineEdit;

namespace fayline {

/// A line to look for frames and figures with. Esc closes it.
class FindBar : public QWidget {
    Q_OBJECT

  public:
    explicit FindBar(QWidget* parent = nullptr);

    void open();
    [[nodiscard]] QString wanted() const;
    void say(const QString& says);

  signals:
    void searched(bool forward);
    void closed();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QLineEdit* entry_;
    QLabel* says_;
};

}  // namespace fayline
