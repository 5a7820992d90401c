#include "holds_list.h"

#include <QKeyEvent>
#include <QPainter>
#include <QStringList>
#include <QTextLayout>
#include <algorithm>
#include <tuple>

#include "theme/colours.h"
#include "theme/status.h"

namespace fayline {
namespace {

constexpr int pad = 8;

/// Lays a text over as many lines as it needs; paints it when there is a painter. Returns its
/// height.
int flow(QPainter* painter, const QString& text, const QFont& font, const QRect& area) {
    const QFontMetrics metrics(font);
    const QRect bounds =
        metrics.boundingRect(QRect(0, 0, area.width(), 10000), Qt::TextWordWrap, text);
    if (painter != nullptr) {
        painter->setFont(font);
        painter->drawText(QRect(area.left(), area.top(), area.width(), bounds.height()),
                          Qt::TextWordWrap, text);
    }
    return bounds.height();
}

class HoldDelegate : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        const Hold& hold = static_cast<const HoldsModel*>(index.model())->hold(index.row());
        painter->save();
        const bool chosen = option.state.testFlag(QStyle::State_Selected);
        if (chosen) painter->fillRect(option.rect, coloursFor(option.palette).chosenRow);
        lay(painter, option, hold);
        painter->setPen(coloursFor(option.palette).line);
        painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
        if (chosen && option.state.testFlag(QStyle::State_HasFocus)) {
            painter->setPen(QPen(option.palette.color(QPalette::Highlight), 2));
            painter->drawRect(option.rect.adjusted(1, 1, -2, -2));
        }
        painter->restore();
    }

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        const Hold& hold = static_cast<const HoldsModel*>(index.model())->hold(index.row());
        QStyleOptionViewItem wide = option;
        const auto* list = qobject_cast<const QListView*>(option.widget);
        wide.rect = QRect(0, 0, list != nullptr ? list->viewport()->width() : 300, 10);
        return {wide.rect.width(), lay(nullptr, wide, hold)};
    }

  private:
    static int lay(QPainter* painter, const QStyleOptionViewItem& option, const Hold& hold) {
        const Colours colours = coloursFor(option.palette);
        QFont bold = option.font;
        bold.setBold(true);
        const int side = option.fontMetrics.ascent();
        const QRect area = option.rect.adjusted(pad + side + pad, pad, -pad, 0);
        const auto pen = [&](const QColor& ink) {
            if (painter != nullptr) painter->setPen(ink);
        };
        if (painter != nullptr && hold.status) {
            paintStatusMark(*painter, QRect(option.rect.left() + pad, area.top() + 1, side, side),
                            *hold.status, option.palette);
        }
        const int verdictWidth = QFontMetrics(bold).horizontalAdvance(hold.verdict);
        pen(hold.status ? statusInk(*hold.status, option.palette).ink : colours.muted);
        if (painter != nullptr) {
            painter->setFont(hold.status ? bold : option.font);
            painter->drawText(QRect(area.right() - verdictWidth, area.top(), verdictWidth + 1,
                                    option.fontMetrics.height()),
                              Qt::AlignRight, hold.verdict);
        }
        pen(option.palette.color(QPalette::Text));
        int y = area.top();
        y += flow(painter, hold.title, bold,
                  QRect(area.left(), y, area.width() - verdictWidth - pad, 0)) +
             2;
        const auto line = [&](const QString& text, const QColor& ink) {
            if (text.isEmpty()) return;
            pen(ink);
            y += flow(painter, text, option.font, QRect(area.left(), y, area.width(), 0)) + 2;
        };
        line(hold.why, option.palette.color(QPalette::Text));
        line(hold.size, colours.muted);
        line(hold.dissent,
             hold.dissentMatters ? statusInk(Status::near, option.palette).ink : colours.muted);
        if (hold.check != nullptr) line(HoldsList::tr("show working ›"), colours.link);
        line(hold.cureWords, colours.link);
        return y + pad - option.rect.top();
    }
};

bool looksAs(const Hold& a, const Hold& b) {
    const auto seen = [](const Hold& h) {
        return std::tie(h.title, h.size, h.verdict, h.why, h.dissent, h.dissentMatters, h.status,
                        h.cure, h.cureWords);
    };
    return seen(a) == seen(b) && (a.check == nullptr) == (b.check == nullptr);
}

}  // namespace

int HoldsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(holds_.size());
}

QVariant HoldsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Hold& here = hold(index.row());
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) return {};
    QStringList parts;
    for (const QString& part :
         {here.title, here.verdict, here.why, here.size, here.dissent, here.cureWords}) {
        if (!part.isEmpty()) parts.append(part);
    }
    return parts.join(QStringLiteral(", "));
}

/// True when there was something to tell of.
bool HoldsModel::setHolds(std::vector<Hold> holds, std::shared_ptr<const Results> results) {
    const bool same = std::equal(holds.begin(), holds.end(), holds_.begin(), holds_.end(), looksAs);
    if (!same) beginResetModel();
    holds_ = std::move(holds);
    results_ = std::move(results);
    if (!same) endResetModel();
    return !same;
}

HoldsList::HoldsList(QWidget* parent) : QListView(parent) {
    setModel(&model_);
    setItemDelegate(new HoldDelegate(this));
    setFrameShape(QFrame::NoFrame);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setMouseTracking(true);
    setAccessibleName(tr("What holds here"));
    setUniformItemSizes(false);
    connect(this, &QListView::clicked, this, &HoldsList::act);
}

void HoldsList::setHolds(std::vector<Hold> holds, std::shared_ptr<const Results> results) {
    const int row = currentIndex().row();
    if (!model_.setHolds(std::move(holds), std::move(results))) return;
    if (model_.rowCount() > 0) setCurrentIndex(model_.index(qBound(0, row, model_.rowCount() - 1)));
}

void HoldsList::act(const QModelIndex& index) {
    if (!index.isValid()) return;
    const Hold& hold = model_.hold(index.row());
    if (hold.check != nullptr) {
        const Check check = *hold.check;
        emit workingWanted(check);
    } else if (!hold.cure.empty()) {
        const Typed cure = hold.cure;
        emit cureWanted(cure);
    }
}

void HoldsList::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        act(currentIndex());
        return;
    }
    QListView::keyPressEvent(event);
}

void HoldsList::paintEvent(QPaintEvent* event) {
    QListView::paintEvent(event);
    if (model_.rowCount() > 0) return;
    QPainter painter(viewport());
    painter.setPen(coloursFor(palette()).muted);
    painter.drawText(viewport()->rect(),
                     static_cast<int>(Qt::AlignTop | Qt::AlignLeft) | Qt::TextWordWrap, emptyText_);
}

void HoldsList::resizeEvent(QResizeEvent* event) {
    QListView::resizeEvent(event);
    doItemsLayout();
}

}  // namespace fayline
