#pragma once

#include <QFrame>

class QLabel;
class QVBoxLayout;

namespace fayline {

/// A sheet of paper on the desk: an edge, a ground, and a quiet title.
class Card : public QFrame {
    Q_OBJECT

  public:
    explicit Card(const QString& title = {}, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    /// Where its contents go, below the title.
    [[nodiscard]] QVBoxLayout* contents() const { return contents_; }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QLabel* title_;
    QVBoxLayout* contents_;
};

}  // namespace fayline
