#pragma once

#include <QToolButton>

namespace fayline {

/// An undo or redo button that names what it would act on, shortened to the room there is.
class DeedButton : public QToolButton {
    Q_OBJECT

  public:
    DeedButton(QAction* action, bool back, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    bool back_;
};

}  // namespace fayline
