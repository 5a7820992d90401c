#include "chart/chart.h"

#include <QAbstractScrollArea>
#include <QAccessible>
#include <QEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QMouseEvent>
#include <QPainter>
#include <QVBoxLayout>
#include <algorithm>

#include "legend.h"
#include "plot.h"
#include "quantity/display.h"

namespace fayline {
namespace {

bool isEmpty(const ChartData& data) {
    return data.places.isEmpty() ||
           std::all_of(data.series.begin(), data.series.end(), [](const ChartSeries& series) {
               return std::none_of(series.values.begin(), series.values.end(),
                                   [](const auto& value) { return value.has_value(); });
           });
}

}  // namespace

Chart::Chart(QWidget* parent)
    : QWidget(parent),
      plot_(std::make_unique<Plot>()),
      title_(new QLabel),
      legend_(new ChartLegend),
      reading_(new QLabel),
      empty_(new QLabel) {
    reading_->setWordWrap(true);
    reading_->setMinimumHeight(2 * fontMetrics().lineSpacing());
    reading_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    reading_->setContentsMargins(8, 0, 8, 0);
    empty_->setWordWrap(true);
    empty_->setAlignment(Qt::AlignCenter);
    empty_->setForegroundRole(QPalette::PlaceholderText);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(2, 2, 2, 2);
    layout->setSpacing(2);
    title_->setContentsMargins(8, 0, 8, 0);
    embolden();
    layout->addWidget(title_);
    layout->addWidget(legend_);
    layout->addWidget(plot_->widget(), 1);
    layout->addWidget(empty_, 1);
    layout->addWidget(reading_);
    setFocusPolicy(Qt::StrongFocus);
    qobject_cast<QAbstractScrollArea*>(plot_->widget())->viewport()->installEventFilter(this);
}

Chart::~Chart() = default;

void Chart::setData(ChartData data) {
    if (data == data_) return;
    const bool sameShape = plot_->canMove(data_, data);
    data_ = std::move(data);
    if (sameShape) {
        plot_->move(data_);
        tell();
        return;
    }
    const bool empty = isEmpty(data_);
    plot_->widget()->setVisible(!empty);
    reading_->setVisible(!empty);
    empty_->setVisible(empty);
    empty_->setText(data_.emptyText);
    title_->setText(data_.title);
    legend_->describe(data_);
    legend_->setVisible(!empty && data_.series.size() + data_.limits.size() > 1);
    setAccessibleName(data_.title);
    if (empty) {
        place_ = -1;
        setAccessibleDescription(data_.emptyText);
        return;
    }
    plot_->show(data_, palette(), font());
    setPlace(std::clamp(place_, 0, static_cast<int>(data_.places.size()) - 1));
}

void Chart::setPlace(int place) {
    place_ = isEmpty(data_) || place < 0 || place >= data_.places.size() ? -1 : place;
    plot_->markPlace(place_, palette());
    tell();
}

QString Chart::figure(double value) const {
    if (data_.figures == ChartData::Figures::margins)
        return QString::fromStdString(marginText(value));
    const QString number = QString::number(value, 'g', 3);
    return data_.unit.isEmpty() ? number : number + QLatin1Char(' ') + data_.unit;
}

void Chart::embolden() {
    QFont bold = font();
    bold.setBold(true);
    title_->setFont(bold);
}

QString Chart::reading() const {
    if (place_ < 0) return {};
    QStringList parts;
    for (const ChartSeries& series : data_.series) {
        const auto i = static_cast<std::size_t>(place_);
        const QString words = i < series.values.size() && series.values[i]
                                  ? figure(*series.values[i])
                                  : tr("no figure");
        parts.append(data_.series.size() > 1 ? tr("%1 %2").arg(series.name, words) : words);
    }
    return tr("%1: %2").arg(data_.places[place_], parts.join(QStringLiteral(" · ")));
}

void Chart::tell() {
    const QString says = reading();
    reading_->setText(says);
    setAccessibleDescription(says);
    if (hasFocus()) {
        QAccessibleEvent event(this, QAccessible::DescriptionChanged);
        QAccessible::updateAccessibility(&event);
    }
}

void Chart::keyPressEvent(QKeyEvent* event) {
    const int last = static_cast<int>(data_.places.size()) - 1;
    if (place_ < 0) {
        QWidget::keyPressEvent(event);
        return;
    }
    switch (event->key()) {
        case Qt::Key_Left:
            setPlace(std::max(0, place_ - 1));
            return;
        case Qt::Key_Right:
            setPlace(std::min(last, place_ + 1));
            return;
        case Qt::Key_Home:
            setPlace(0);
            return;
        case Qt::Key_End:
            setPlace(last);
            return;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            emit chosen(place_);
            return;
        default:
            QWidget::keyPressEvent(event);
    }
}

bool Chart::eventFilter(QObject* object, QEvent* event) {
    if (event->type() == QEvent::MouseMove || event->type() == QEvent::MouseButtonRelease) {
        const auto* mouse = static_cast<QMouseEvent*>(event);
        const int place = plot_->placeAt(mouse->position());
        if (place != place_) setPlace(place);
        if (event->type() == QEvent::MouseButtonRelease && mouse->button() == Qt::LeftButton &&
            place >= 0)
            emit chosen(place);
    }
    return QWidget::eventFilter(object, event);
}

void Chart::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::PaletteChange && event->type() != QEvent::FontChange) return;
    reading_->setMinimumHeight(2 * fontMetrics().lineSpacing());
    embolden();
    if (!isEmpty(data_)) plot_->show(data_, palette(), font());
    plot_->markPlace(place_, palette());
}

void Chart::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    layout()->activate();
    plot_->markPlace(place_, palette());
}

void Chart::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}
void Chart::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

void Chart::paintEvent(QPaintEvent* event) {
    QWidget::paintEvent(event);
    if (!hasFocus()) return;
    QPainter painter(this);
    painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
}

}  // namespace fayline
