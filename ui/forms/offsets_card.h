#pragma once

#include <QString>

#include "desk/desk.h"
#include "theme/card.h"

class QLabel;
class QPushButton;
class QTableView;

namespace fayline {

class OffsetsModel;

/// The table of offsets: brought in from a file, shown for reading.
class OffsetsCard : public Card {
    Q_OBJECT

  public:
    explicit OffsetsCard(Desk& desk, QWidget* parent = nullptr);

    /// Replaces the project's offsets by a file's, as one step. Says what is wrong with the file
    /// otherwise.
    bool importFrom(const QString& file);
    void focusImport();

  signals:
    void stopped(const QString& says, const QStringList& details);

  private:
    void refresh();
    void askForFile();

    Desk& desk_;
    OffsetsModel* model_;
    QLabel* count_;
    QPushButton* import_;
    QTableView* table_;
};

}  // namespace fayline
