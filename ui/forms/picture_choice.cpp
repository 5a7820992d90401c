#include "picture_choice.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QToolButton>
#include <algorithm>

#include "choice_pictures.h"
#include "theme/colours.h"
#include "words/things.h"

namespace fayline {
namespace {

constexpr int pictureWide = 60, pictureHigh = 44;

class Tile : public QToolButton {
  public:
    Tile(std::string name, std::string word) : name_(std::move(name)), word_(std::move(word)) {
        setText(kindWords(word_));
        setCheckable(true);
        setFocusPolicy(Qt::NoFocus);
        setCursor(Qt::PointingHandCursor);
        setAccessibleName(text());
    }

    [[nodiscard]] const std::string& word() const { return word_; }
    void setByRule(bool byRule) {
        byRule_ = byRule;
        update();
    }

    [[nodiscard]] QSize sizeHint() const override {
        return {std::max(pictureWide + 10, fontMetrics().horizontalAdvance(text()) + 8),
                pictureHigh + fontMetrics().height() + 14};
    }
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const QRectF edge = QRectF(rect()).adjusted(1, 1, -1, -1);
        QPen pen(palette().color(QPalette::Mid), 1.0);
        if (isChecked()) pen = QPen(palette().color(QPalette::Highlight), 2.0);
        if (hasFocus()) pen = QPen(palette().color(QPalette::Highlight), 3.0);
        if (byRule_ && !isChecked()) {
            pen.setColor(coloursFor(palette()).muted);
            pen.setWidthF(1.5);
            pen.setStyle(Qt::DashLine);
        }
        painter.setPen(pen);
        painter.setBrush(isChecked() || underMouse() ? palette().brush(QPalette::AlternateBase)
                                                     : palette().brush(QPalette::Base));
        painter.drawRoundedRect(edge, 3, 3);
        paintChoice(painter, QRectF(0, 5, width(), pictureHigh), name_, word_, palette());
        QFont words = font();
        words.setBold(isChecked());
        painter.setFont(words);
        painter.setPen(isChecked() || byRule_ ? palette().color(QPalette::Text)
                                              : coloursFor(palette()).muted);
        painter.drawText(QRect(0, pictureHigh + 6, width(), fontMetrics().height() + 4),
                         Qt::AlignCenter, text());
    }

  private:
    std::string name_, word_;
    bool byRule_ = false;
};

}  // namespace

PictureChoice::PictureChoice(const Field& field, QWidget* parent) : QWidget(parent) {
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 2, 0, 4);
    layout->setSpacing(4);
    for (const std::string& word : field.choices) {
        auto* tile = new Tile(lastName(field), word);
        tiles_.push_back(tile);
        tile->installEventFilter(this);
        layout->addWidget(tile);
        connect(tile, &QToolButton::clicked, this, [this, tile] {
            // Whether it is checked is told by what stands, not by the click.
            tile->setChecked(!tile->isChecked());
            emit chosen(QString::fromStdString(static_cast<Tile*>(tile)->word()));
        });
    }
    layout->addStretch(1);
    if (!tiles_.empty()) tiles_.front()->setFocusPolicy(Qt::StrongFocus);
}

void PictureChoice::follow(const std::string& decided, const std::string& byRule) {
    QToolButton* stop = tiles_.empty() ? nullptr : tiles_.front();
    for (QToolButton* tile : tiles_) {
        auto* each = static_cast<Tile*>(tile);
        each->setChecked(each->word() == decided);
        each->setByRule(decided.empty() && each->word() == byRule);
        if (each->isChecked()) stop = tile;
    }
    for (QToolButton* tile : tiles_)
        tile->setFocusPolicy(tile == stop ? Qt::StrongFocus : Qt::ClickFocus);
}

bool PictureChoice::eventFilter(QObject* object, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(object, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    const int by = key == Qt::Key_Right ? 1 : key == Qt::Key_Left ? -1 : 0;
    if (by == 0) return QWidget::eventFilter(object, event);
    const auto here = std::find(tiles_.begin(), tiles_.end(), object);
    const auto to = (here - tiles_.begin()) + by;
    if (to >= 0 && to < static_cast<std::ptrdiff_t>(tiles_.size()))
        tiles_[static_cast<std::size_t>(to)]->setFocus(Qt::TabFocusReason);
    return true;
}

}  // namespace fayline
