#pragma once

#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "catalogue/catalogue.h"
#include "project/project.h"

namespace fayline::test {

/// The catalogue as shipped.
std::shared_ptr<const Catalogue> shippedCatalogue();

using Decisions = std::vector<std::pair<std::string, std::string>>;

/// A small made-up hull, decided from nothing to ballast bolts: 12 frames, 8 floors, 6 bolts.
Decisions smallHullDecisions();
Project projectOf(const Decisions& decisions);
inline Project smallHull() {
    return projectOf(smallHullDecisions());
}

/// Sets one decision; a text that is refused fails the test.
void decide(Project& project, const std::string& what, const std::string& text);

}  // namespace fayline::test
