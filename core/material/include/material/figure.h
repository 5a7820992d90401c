#pragma once

#include <string>

#include "material/standing.h"

namespace fayline {

/// A value with where it comes from and how far to trust it.
template <typename T>
struct Figure {
    T value{};
    Standing standing = Standing::judgement;
    std::string source;

    bool operator==(const Figure&) const = default;
};

}  // namespace fayline
