#pragma once

#include <vector>

#include "sheet/drawing.h"

namespace fayline {

/// A drawing's items of one kind of shape, of one role and, when named, of one id.
template <typename T>
std::vector<T> found(const Drawing& drawing, Role role, const std::string& id = {}) {
    std::vector<T> shapes;
    for (const DrawItem& item : drawing.items) {
        if (item.role != role || (!id.empty() && item.id != id)) continue;
        if (const T* shape = std::get_if<T>(&item.shape)) shapes.push_back(*shape);
    }
    return shapes;
}

inline std::vector<shape::Text> texts(const Drawing& drawing) {
    std::vector<shape::Text> all;
    for (const DrawItem& item : drawing.items) {
        if (const auto* text = std::get_if<shape::Text>(&item.shape)) all.push_back(*text);
    }
    return all;
}

inline const shape::Text* textSaying(const std::vector<shape::Text>& all,
                                     const std::string& words) {
    for (const shape::Text& text : all) {
        if (text.text == words) return &text;
    }
    return nullptr;
}

}  // namespace fayline
