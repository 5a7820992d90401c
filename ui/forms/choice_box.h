#pragma once

#include <QComboBox>
#include <vector>

#include "words/materials.h"

namespace fayline {

/// A field to choose from or type in. The wheel never changes it; its list opens with Alt+Down or
/// F4.
class ChoiceBox : public QComboBox {
    Q_OBJECT

  public:
    explicit ChoiceBox(QWidget* parent = nullptr);

    /// The names to choose from, after an empty one that means the rule.
    void offer(const std::vector<Choice>& choices);

  protected:
    void wheelEvent(QWheelEvent* event) override;
};

}  // namespace fayline
