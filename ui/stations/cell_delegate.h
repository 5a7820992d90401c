#pragma once

#include <QPointer>
#include <QStyledItemDelegate>

#include "cell_editor.h"

namespace fayline {

class StationsModel;

/// Paints cells and lets one be typed in. An open editor is never written over from outside, and
/// nothing typed is lost: what is not taken stays open on Enter, and beside its cell when the focus
/// goes elsewhere.
class CellDelegate : public QStyledItemDelegate {
    Q_OBJECT

  public:
    /// Where the chosen cell goes after an entry.
    enum class Move { stay, down, up, next, previous };

    CellDelegate(StationsModel& model, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model,
                      const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

    bool helpEvent(QHelpEvent* event, QAbstractItemView* view, const QStyleOptionViewItem& option,
                   const QModelIndex& index) override;

    /// The editor that is open, or null.
    [[nodiscard]] CellEditor* editor() const { return editor_; }
    [[nodiscard]] QModelIndex editedIndex() const { return edited_; }
    /// Ends the open entry: decided if it is taken, else kept beside its cell.
    void settleEditor();
    /// Closes the open entry; what was typed in it is dropped.
    void abandonEditor();

  signals:
    void moved(fayline::CellDelegate::Move move);
    /// Ctrl+Enter: this text for every selected cell.
    void wantedEverywhere(const QString& text);
    /// A sentence about what is typed; empty when all is well.
    void objected(const QString& says);

  protected:
    bool eventFilter(QObject* object, QEvent* event) override;

  private:
    bool keyPressed(int key, Qt::KeyboardModifiers modifiers);
    bool enter(Move move);

    StationsModel& model_;
    mutable QPointer<CellEditor> editor_;
    mutable QPersistentModelIndex edited_;
    bool closing_ = false;
};

}  // namespace fayline
