#pragma once

#include <QString>
#include <optional>
#include <string>

#include "catalogue/catalogue.h"
#include "derive/results.h"
#include "project/journal.h"
#include "project/project.h"
#include "quantity/display.h"

namespace fayline {

/// What stands for a decision that has not been made: the value the rule gives, and in a few words
/// where from.
struct RuleText {
    QString value;  ///< empty when nothing stands
    QString from;   ///< "as for all bolts", "worked out from its shape"
};

RuleText ruleText(const std::string& what, const Project& project, const Journal& journal,
                  const Results& results, const Catalogue& catalogue, UnitMark mark);

}  // namespace fayline
