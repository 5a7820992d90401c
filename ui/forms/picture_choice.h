#pragma once

#include <QWidget>
#include <vector>

#include "project/fields.h"

class QToolButton;

namespace fayline {

/// What a decision offers, side by side as small pictures with their names. One stop of the Tab
/// key; arrows go from one to the next, Space decides. What only stands by the rule has a dashed
/// edge.
class PictureChoice : public QWidget {
    Q_OBJECT

  public:
    explicit PictureChoice(const Field& field, QWidget* parent = nullptr);

    /// The word decided, and the one that stands by the rule; either may be empty.
    void follow(const std::string& decided, const std::string& byRule);

  signals:
    void chosen(const QString& word);

  protected:
    bool eventFilter(QObject* object, QEvent* event) override;

  private:
    std::vector<QToolButton*> tiles_;
};

}  // namespace fayline
