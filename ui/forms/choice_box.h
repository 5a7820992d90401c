#pragma once

#include <vector>

#include "theme/typed_box.h"
#include "words/materials.h"

namespace fayline {

/// A field that offers choices, and the rule.
class ChoiceBox : public TypedBox {
    Q_OBJECT

  public:
    explicit ChoiceBox(QWidget* parent = nullptr);

    /// The names to choose from, after an empty one that means the rule.
    void offer(const std::vector<Choice>& choices);
};

}  // namespace fayline
