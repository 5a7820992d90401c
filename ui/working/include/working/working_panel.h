#pragma once

#include <QWidget>
#include <memory>
#include <optional>

#include "working/working_text.h"

class QLabel;
class QPushButton;
class QTextBrowser;

namespace fayline {

/// The working behind one margin. Follows the results: after an edit it shows the same check anew.
class WorkingPanel : public QWidget {
    Q_OBJECT

  public:
    explicit WorkingPanel(QWidget* parent = nullptr);

    /// `check` is of `results`.
    void showCheck(std::shared_ptr<const Results> results, const Check& check,
                   const Speech& speech);
    void follow(std::shared_ptr<const Results> results, const Speech& speech);
    /// Whether there is something to go back to; shown unless told otherwise.
    void setBackVisible(bool visible);
    /// What "copy as text" puts on the clipboard; empty when nothing is shown.
    [[nodiscard]] QString plainText() const;

  signals:
    void left();

  protected:
    void changeEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void render(bool toTop);

    QPushButton* back_;
    QLabel* title_;
    QTextBrowser* text_;
    QPushButton* copy_;
    std::shared_ptr<const Results> results_;
    std::optional<Working> working_;
    Speech speech_;
    QString html_;  ///< what is shown, and in which font
    QFont font_;
};

}  // namespace fayline
