#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "catalogue/catalogue.h"

namespace fayline {

/// The header line and the rows of one entry, as a project keeps them. Code: catalogue.no_entry,
/// with the nearest id.
Result<std::string> catalogueRow(const Catalogue& catalogue, CatalogueKind kind,
                                 std::string_view id);

using CatalogueEntry = std::variant<Wood, Metal, Thread, RodStock, Nut, Washer, RuleLimit>;

/// The value of kept text; the same checks as for a catalogue file, but a metal or thread it names
/// need not be there. Refused when the text holds another entry, or more than this one.
ResultAll<CatalogueEntry> readKeptRow(CatalogueKind kind, std::string_view id,
                                      std::string_view text);

/// One cell that is not as it was kept. Missing = there was, or is, no such row or column.
struct EntryDifference {
    std::string what;  ///< "value of shear, green"; "height"; "entry" when the whole entry is gone
    std::optional<std::string> kept;
    std::optional<std::string> now;

    bool operator==(const EntryDifference&) const = default;
};

/// What the catalogue now says otherwise than the kept text; empty when nothing has changed. The
/// order of rows and columns does not matter. Problems only for kept text that cannot be read.
ResultAll<std::vector<EntryDifference>> compareKept(const Catalogue& catalogue, CatalogueKind kind,
                                                    std::string_view id, std::string_view keptText);

}  // namespace fayline
