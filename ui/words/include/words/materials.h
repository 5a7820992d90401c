#pragma once

#include <QString>
#include <string>
#include <vector>

#include "catalogue/catalogue.h"
#include "project/fields.h"
#include "project/project.h"

namespace fayline {

/// One wood or metal that can be chosen: what is written in the decision, and what is read on
/// screen.
struct Choice {
    std::string id;
    QString name;
};

/// What a field offers to choose from; empty for fields that are typed. Ballast metals for ballast,
/// rod metals for rods.
std::vector<Choice> choicesFor(const Field& field, const Catalogue& catalogue,
                               const Project& project);

/// The name shown for a decided text of a field: a wood's without its botanical name. Other texts
/// as they are.
QString shownName(const Field& field, const std::string& typed, const Catalogue& catalogue);

/// The id for a name read on screen, whatever its case; any other text as typed.
std::string idForName(const std::vector<Choice>& choices, const std::string& typed);

}  // namespace fayline
