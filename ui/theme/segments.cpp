#include "theme/segments.h"

#include <QButtonGroup>
#include <QEvent>
#include <QPainter>
#include <QToolButton>

namespace fayline {
namespace {

constexpr int gap = 2;

/// Underlined and bold when chosen, so that the choice is seen without colour.
class Segment : public QToolButton {
  public:
    explicit Segment(const QString& words) {
        setText(words);
        setAccessibleName(words);
        setCheckable(true);
        setFocusPolicy(Qt::StrongFocus);
        setCursor(Qt::PointingHandCursor);
    }

    [[nodiscard]] QSize sizeHint() const override {
        QFont bold = font();
        bold.setBold(true);
        const QFontMetrics metrics(bold);
        return {metrics.horizontalAdvance(text()) + 18, qMax(24, metrics.height() + 8)};
    }
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const QRectF box = QRectF(rect()).adjusted(1, 1, -1, -1);
        painter.setPen(Qt::NoPen);
        if (isChecked() || underMouse()) {
            painter.setBrush(palette().color(QPalette::AlternateBase));
            painter.drawRoundedRect(box, 3, 3);
        }
        if (isChecked()) {
            painter.setBrush(palette().color(QPalette::Highlight));
            painter.drawRect(QRectF(box.left() + 4, box.bottom() - 2, box.width() - 8, 2));
        }
        QFont words = font();
        words.setBold(isChecked());
        painter.setFont(words);
        painter.setPen(palette().color(isEnabled() ? QPalette::Active : QPalette::Disabled,
                                       QPalette::ButtonText));
        painter.drawText(rect(), Qt::AlignCenter, text());
        if (hasFocus()) {
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
            painter.drawRoundedRect(box, 3, 3);
        }
    }
};

}  // namespace

Segments::Segments(const QStringList& choices, QWidget* parent)
    : QWidget(parent), group_(new QButtonGroup(this)) {
    for (const QString& words : choices) {
        auto* button = new Segment(words);
        button->setParent(this);
        group_->addButton(button, static_cast<int>(buttons_.size()));
        buttons_.push_back(button);
    }
    connect(group_, &QButtonGroup::idToggled, this, &Segments::stopAtChoice);
    if (!buttons_.empty()) buttons_.front()->setChecked(true);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(group_, &QButtonGroup::idClicked, this, &Segments::chosen);
}

/// Lays the buttons from left to right, over as many lines as they need. Returns the height.
int Segments::lay(int width, bool move) const {
    int x = 0;
    int y = 0;
    int line = 0;
    for (QAbstractButton* button : buttons_) {
        const QSize size = button->sizeHint();
        if (x > 0 && x + size.width() > width) {
            x = 0;
            y += line + gap;
        }
        if (move) button->setGeometry(x, y, size.width(), size.height());
        line = size.height();
        x += size.width() + gap;
    }
    return y + line;
}

QSize Segments::sizeHint() const {
    int wide = 0;
    for (const QAbstractButton* button : buttons_) wide += button->sizeHint().width() + gap;
    return {wide, lay(wide, false)};
}

QSize Segments::minimumSizeHint() const {
    int wide = 0;
    for (const QAbstractButton* button : buttons_) wide = qMax(wide, button->sizeHint().width());
    return {wide, lay(qMax(wide, width()), false)};
}

int Segments::heightForWidth(int width) const {
    return lay(width, false);
}

void Segments::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    lay(width(), true);
}

void Segments::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::FontChange) return;
    lay(width(), true);
    updateGeometry();
}

int Segments::choice() const {
    return group_->checkedId();
}

void Segments::setChoice(int choice) {
    if (choice < 0 || choice >= static_cast<int>(buttons_.size())) return;
    buttons_[static_cast<std::size_t>(choice)]->setChecked(true);
}

/// Tab stops at what is chosen; arrow keys go on from there.
void Segments::stopAtChoice() {
    QAbstractButton* chosen = group_->checkedButton();
    for (QAbstractButton* button : buttons_)
        button->setFocusPolicy(button == chosen ? Qt::StrongFocus : Qt::ClickFocus);
    setFocusProxy(chosen);
}

void Segments::setChoiceEnabled(int choice, bool enabled) {
    buttons_[static_cast<std::size_t>(choice)]->setEnabled(enabled);
}

}  // namespace fayline
