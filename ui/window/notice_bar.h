#pragma once

#include <QFrame>
#include <QStringList>
#include <functional>
#include <utility>
#include <vector>

class QHBoxLayout;
class QLabel;
class QPlainTextEdit;
class QToolButton;

namespace fayline {

/// One notice across the window: what happened, what is safe, what to do. It never blocks.
class NoticeBar : public QFrame {
    Q_OBJECT

  public:
    using Deed = std::pair<QString, std::function<void()>>;

    explicit NoticeBar(QWidget* parent = nullptr);

    void showNotice(const QString& says, const QStringList& details = {},
                    const std::vector<Deed>& deeds = {}, bool closable = true);
    /// The same for something that could not be done: goes away with the next thing that can.
    void showRefusal(const QString& says, const QStringList& details = {});
    void clearRefusal();
    void clear();
    [[nodiscard]] QString says() const;
    [[nodiscard]] QStringList details() const { return details_; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QLabel* text_;
    QPlainTextEdit* list_;
    QToolButton* more_;
    QToolButton* close_;
    QHBoxLayout* deeds_;
    QStringList details_;
    bool refusal_ = false;
};

}  // namespace fayline
