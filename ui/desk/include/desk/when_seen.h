#pragma once

#include <QObject>
#include <functional>

#include "desk/desk.h"

class QWidget;

namespace fayline {

/// Lets a widget follow the results while it is seen. What is hidden does nothing at an edit and
/// follows once, when it is shown; but when no project is open it follows at once, so that
/// nothing of a closed one is held on to.
class WhenSeen : public QObject {
    Q_OBJECT

  public:
    /// Belongs to the widget. `follow` is not run by the constructor.
    WhenSeen(const Desk& desk, QWidget* widget, std::function<void()> follow);

    /// Whether it has still to follow.
    [[nodiscard]] bool isStale() const { return stale_; }
    /// How often it followed, for tests of what an edit costs.
    [[nodiscard]] int runs() const { return runs_; }
    /// Follows now if it is stale, though it is not seen.
    void catchUp();

  protected:
    bool eventFilter(QObject* object, QEvent* event) override;

  private:
    void resultsChanged();
    void run();

    const Desk& desk_;
    QWidget* widget_;
    std::function<void()> follow_;
    bool stale_ = true;
    int runs_ = 0;
};

}  // namespace fayline
