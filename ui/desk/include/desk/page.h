#pragma once

#include <QPointer>
#include <QStringList>
#include <QWidget>

namespace fayline {

/// What the window's menus ask of the page in front.
enum class PageCommand {
    copy,
    copyWithHeadings,
    paste,
    fillDown,
    find,
    findNext,
    findPrevious,
    zoomIn,
    zoomOut,
    zoomToFit
};

/// One page of the window.
class Page : public QWidget {
    Q_OBJECT

  public:
    using QWidget::QWidget;

    /// Where the keyboard begins when the page comes to the front. A focus proxy would not do: Tab
    /// would jump to it over all that stands before.
    void setFirst(QWidget* first) { first_ = first; }

    /// Ends whatever is being typed, before any command: taken if it can be, else kept where it is
    /// to be seen.
    virtual void settle() = 0;
    [[nodiscard]] virtual bool does(PageCommand command) const = 0;
    virtual void run(PageCommand command) = 0;

    /// Where the user left splitters and columns; empty when there is nothing to keep.
    [[nodiscard]] virtual QByteArray arrangement() const { return {}; }
    virtual void arrange(const QByteArray&) {}

  signals:
    /// Something could not be done: a sentence, and details a user may want to read.
    void stopped(const QString& says, const QStringList& details);

  protected:
    void focusInEvent(QFocusEvent* event) override;

  private:
    QPointer<QWidget> first_;
};

}  // namespace fayline
