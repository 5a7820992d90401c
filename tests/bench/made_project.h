#pragma once

#include <memory>
#include <string>

#include "catalogue/catalogue.h"
#include "project/journal.h"
#include "project/project.h"

namespace fayline::bench {

/// A made hull as a journal and the project it folds into. What goes wrong throws: a benchmark of
/// nothing must not print a time.
struct Made {
    std::shared_ptr<const Catalogue> catalogue;
    Journal journal;
    Project project;

    explicit Made(int frames, int strakes = 14, int eachCrossing = 2);
    /// The next step, not yet added.
    [[nodiscard]] Step prepared(const std::string& what, const std::string& text) const;
    /// Adds it and sets the project.
    void decide(const std::string& what, const std::string& text);
    /// Decides on until the journal has so many steps.
    void growTo(std::size_t steps);
};

/// One of two diameters that bolt K.5 changes between.
inline const char* diameterOf(long turn) {
    return turn % 2 == 0 ? "3/4 in" : "7/8 in";
}

}  // namespace fayline::bench
