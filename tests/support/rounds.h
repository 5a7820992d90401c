#pragma once

#include <cstdlib>

namespace fayline {

/// How many of a test's FULL like rounds to run: all; under the sanitizers, where a round costs ten
/// times as much, a fifth, unless the long tests are asked for.
inline int rounds(int full) {
#ifdef __SANITIZE_ADDRESS__
    if (std::getenv("FAYLINE_LONG") == nullptr) return full / 5;
#endif
    return full;
}

}  // namespace fayline
