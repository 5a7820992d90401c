#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "catalogue/catalogue.h"
#include "project/fields.h"
#include "project/journal.h"

namespace fayline {

/// The one gateway for decisions, whoever asks: command line, grid, form. Ranges become one change
/// per frame or bolt; an empty text takes a decision back to the rule; texts must read and lie
/// within limits; woods and metals must be in the catalogue or have the builder's own figures. The
/// catalogue rows a decision relies on are kept with it, in the same step. `note` is always
/// allowed: alone it makes a note step, beside decisions it is their reason. Nothing to change: a
/// Problem with the code "nothing".
Result<Step> prepareDecisions(const Journal& journal, const Project& project,
                              const Catalogue& catalogue,
                              const std::vector<std::pair<std::string, std::string>>& typed,
                              StepBy by);

/// The catalogue id a typed name means: "White oak" and "white-oak" are white_oak.
std::string materialId(std::string_view name);

/// The decision under which a project keeps a catalogue row: "catalogue.wood.white_oak".
std::string keptName(CatalogueKind kind, std::string_view id);

}  // namespace fayline
