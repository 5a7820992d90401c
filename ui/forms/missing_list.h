#pragma once

#include <QLabel>

#include "desk/desk.h"
#include "theme/card.h"

namespace fayline {

/// What is still missing on the way to margins, and what cannot be: each leads to its field.
class MissingList : public Card {
    Q_OBJECT

  public:
    explicit MissingList(Desk& desk, QWidget* parent = nullptr);

  signals:
    /// A decision to be shown: its name, or one that ends in ".…" for a group.
    void wanted(const QString& what);
    void stationsWanted();

  private:
    void refresh();

    Desk& desk_;
    QLabel* text_;
};

}  // namespace fayline
