#pragma once

#include "theme/still_box.h"

namespace fayline {

/// A field to choose from or type in; typing finds what contains the letters. The wheel never
/// changes it; its list opens with Alt+Down or F4.
class TypedBox : public StillBox {
  public:
    /// Wide enough for so many letters at least.
    explicit TypedBox(int letters, QWidget* parent = nullptr);
};

}  // namespace fayline
