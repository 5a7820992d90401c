#include "cell_delegate.h"

#include <QAbstractItemView>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>

#include "stations_model.h"
#include "theme/colours.h"
#include "theme/row_delegate.h"
#include "theme/status.h"

namespace fayline {
namespace {

constexpr int pad = 6;

void outline(QPainter& painter, const QRect& rect, const QColor& ink, double width) {
    painter.setPen(QPen(ink, width));
    const double inset = width / 2.0;
    painter.drawRect(QRectF(rect).adjusted(inset, inset, -inset - 1, -inset - 1));
}

/// A corner turned down: something here was not taken.
void flag(QPainter& painter, const QRect& rect, const QColor& ink) {
    constexpr double side = 9.0;
    const QPointF corner = QRectF(rect).topRight();
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    painter.drawPolygon(QPolygonF({corner, corner - QPointF(side, 0), corner + QPointF(0, side)}));
    painter.setBrush(Qt::NoBrush);
}

void paintWorst(QPainter& painter, QRect area, const QStyleOptionViewItem& option,
                const QString& shown, Status status) {
    const int side = option.fontMetrics.ascent();
    const QRect mark(area.left(), area.center().y() - side / 2, side, side);
    paintStatusMark(painter, mark, status, option.palette);
    area.setLeft(mark.right() + pad);
    const qsizetype space = shown.indexOf(QLatin1Char(' '));
    const bool quiet = status == Status::ok || status == Status::unloaded;
    QFont bold = option.font;
    bold.setBold(!quiet);
    painter.setFont(bold);
    painter.setPen(quiet ? option.palette.color(QPalette::Text)
                         : statusInk(status, option.palette).ink);
    const QString margin = shown.left(space < 0 ? shown.size() : space);
    painter.drawText(area, Qt::AlignVCenter | Qt::AlignLeft, margin);
    const int used = QFontMetrics(bold).horizontalAdvance(margin);
    painter.setFont(option.font);
    painter.setPen(option.palette.color(QPalette::Text));
    area.setLeft(area.left() + used);
    painter.drawText(
        area, Qt::AlignVCenter | Qt::AlignLeft,
        option.fontMetrics.elidedText(shown.mid(margin.size()), Qt::ElideRight, area.width()));
}

}  // namespace

CellDelegate::CellDelegate(StationsModel& model, QObject* parent)
    : QStyledItemDelegate(parent), model_(model) {}

void CellDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const {
    const Colours colours = coloursFor(option.palette);
    const QString shown = index.data(Qt::DisplayRole).toString();
    const bool refused = index.data(StationsModel::refusedRole).isValid();
    const bool chosen = option.state.testFlag(QStyle::State_Selected);
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    const bool current = view != nullptr && view->currentIndex() == index;
    const bool inRow = view != nullptr && view->currentIndex().row() == index.row();
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing, false);
    if (inRow) painter->fillRect(option.rect, colours.chosenRow);
    if (chosen && !current) painter->fillRect(option.rect, colours.chosenCell);
    QRect area = option.rect.adjusted(pad, 0, -pad, 0);
    const QVariant status = index.data(StationsModel::statusRole);
    if (status.isValid()) {
        paintWorst(*painter, area, option, shown, static_cast<Status>(status.toInt()));
    } else {
        const bool decided = index.data(StationsModel::decidedRole).toBool();
        const bool worked = !index.flags().testFlag(Qt::ItemIsEditable);
        painter->setFont(option.font);
        painter->setPen(refused             ? colours.refused
                        : decided || worked ? option.palette.color(QPalette::Text)
                                            : colours.muted);
        const QString text =
            shown.isEmpty() ? QStringLiteral("–")
                            : option.fontMetrics.elidedText(shown, Qt::ElideRight, area.width());
        if (shown.isEmpty()) painter->setPen(colours.muted);
        painter->drawText(area, Qt::AlignVCenter | Qt::AlignLeft, text);
    }
    painter->setPen(colours.line);
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
    if (refused) {
        outline(*painter, option.rect, colours.refused, 2.0);
        flag(*painter, option.rect, colours.refused);
    }
    if (current) outline(*painter, option.rect, option.palette.color(QPalette::Highlight), 2.0);
    painter->restore();
}

bool CellDelegate::helpEvent(QHelpEvent* event, QAbstractItemView* view,
                             const QStyleOptionViewItem& option, const QModelIndex& index) {
    if (event->type() != QEvent::ToolTip) return false;
    QToolTip::showText(event->globalPos(),
                       tipOf(index, option.fontMetrics, option.rect.width() - 2 * pad), view,
                       view->visualRect(index));
    return true;
}

QSize CellDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QSize size = QStyledItemDelegate::sizeHint(option, index);
    size.setHeight(qMax(size.height(), option.fontMetrics.height() + 12));
    return size;
}

QWidget* CellDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                    const QModelIndex& index) const {
    auto* editor = new CellEditor(index.data(StationsModel::choicesRole).toStringList(), parent);
    editor->setAccessibleName(index.data(Qt::AccessibleTextRole).toString());
    editor_ = editor;
    edited_ = index;
    return editor;
}

void CellDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    if (auto* cell = qobject_cast<CellEditor*>(editor))
        cell->seed(index.data(Qt::EditRole).toString());
}

void CellDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                const QModelIndex& index) const {
    if (const auto* cell = qobject_cast<CellEditor*>(editor))
        model->setData(index, cell->text(), Qt::EditRole);
}

void CellDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                        const QModelIndex&) const {
    const auto* cell = qobject_cast<CellEditor*>(editor);
    QRect rect = option.rect;
    if (cell != nullptr) {
        const int wanted = cell->fontMetrics().horizontalAdvance(cell->text()) + 4 * pad;
        const int room = editor->parentWidget()->width();
        const int wide = qMin(qMax(rect.width(), wanted), qMax(room, rect.width()));
        rect.setLeft(qMax(0, qMin(rect.left(), room - wide)));  // near the edge it grows leftward
        rect.setWidth(wide);
    }
    editor->setGeometry(rect);
}

bool CellDelegate::eventFilter(QObject* object, QEvent* event) {
    if (object != editor_.data()) return QStyledItemDelegate::eventFilter(object, event);
    if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        return keyPressed(key->key(), key->modifiers());
    }
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Escape) {
            event->accept();
            return true;
        }
    }
    if (event->type() == QEvent::FocusOut) {
        const auto reason = static_cast<QFocusEvent*>(event)->reason();
        const bool stays = reason == Qt::ActiveWindowFocusReason ||
                           reason == Qt::PopupFocusReason || editor_->isListing();
        if (!stays) settleEditor();
        return false;
    }
    return false;
}

bool CellDelegate::keyPressed(int key, Qt::KeyboardModifiers modifiers) {
    const bool plain = (modifiers & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier;
    switch (key) {
        case Qt::Key_Enter:
        case Qt::Key_Return:
            if (modifiers.testFlag(Qt::ControlModifier)) {
                emit wantedEverywhere(editor_->text());
                return true;
            }
            return enter(modifiers.testFlag(Qt::ShiftModifier) ? Move::up : Move::down);
        case Qt::Key_Tab:
            return plain && enter(Move::next);
        case Qt::Key_Backtab:
            return enter(Move::previous);
        case Qt::Key_Down:
            return plain && enter(Move::down);
        case Qt::Key_Up:
            return plain && enter(Move::up);
        case Qt::Key_Escape:
            model_.refuse(edited_, {}, {});
            emit objected({});
            abandonEditor();
            return true;
        default:
            return false;
    }
}

bool CellDelegate::enter(Move move) {
    if (editor_->isTouched()) {
        const QString says = model_.objection(edited_, editor_->text());
        editor_->showObjection(says);
        emit objected(says);
        if (!says.isEmpty()) return true;
        closing_ = true;
        emit commitData(editor_);
        closing_ = false;
    } else if (model_.data(edited_, StationsModel::refusedRole).isValid()) {
        const QString says = model_.data(edited_, StationsModel::refusedRole).toString();
        editor_->showObjection(says);
        emit objected(says);
        return true;
    }
    abandonEditor();
    emit moved(move);
    return true;
}

void CellDelegate::settleEditor() {
    if (editor_.isNull() || closing_) return;
    closing_ = true;
    if (editor_->isTouched() && edited_.isValid()) {
        emit commitData(editor_);  // what is not taken, the model keeps beside the cell
        emit objected(model_.data(edited_, StationsModel::refusedRole).toString());
    }
    closing_ = false;
    abandonEditor();
}

void CellDelegate::abandonEditor() {
    if (editor_.isNull()) return;
    CellEditor* open = editor_;
    editor_.clear();
    edited_ = QPersistentModelIndex();
    emit closeEditor(open, QAbstractItemDelegate::NoHint);
}

}  // namespace fayline
