#pragma once

#include <QStringList>
#include <QWidget>
#include <vector>

class QAbstractButton;
class QButtonGroup;

namespace fayline {

/// A row of choices of which one is in force; it breaks into several where there is no room. One
/// stop of the Tab key; Left and Right choose.
class Segments : public QWidget {
    Q_OBJECT

  public:
    explicit Segments(const QStringList& choices, QWidget* parent = nullptr);

    [[nodiscard]] int choice() const;
    /// Chooses without a signal.
    void setChoice(int choice);
    void setChoiceEnabled(int choice, bool enabled);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

  signals:
    /// The user chose.
    void chosen(int choice);

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    int lay(int width, bool move) const;
    void stopAtChoice();

    QButtonGroup* group_;
    std::vector<QAbstractButton*> buttons_;
};

}  // namespace fayline
