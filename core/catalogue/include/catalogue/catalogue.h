#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "catalogue/rule.h"
#include "fastener/bolt.h"
#include "fastener/thread.h"
#include "material/metal.h"
#include "material/wood.h"
#include "quantity/result.h"

namespace fayline {

enum class CatalogueKind { wood, metal, thread, rod, nut, washer, rule };

/// "wood", "metal", "thread", "rod", "nut", "washer", "rule".
std::string_view catalogueKindText(CatalogueKind kind);
std::optional<CatalogueKind> catalogueKindFromText(std::string_view text);
/// "woods.csv" …: the file of resources/catalogue that holds this kind.
std::string_view catalogueFileName(CatalogueKind kind);

/// The text of each catalogue file.
struct CatalogueTexts {
    std::string woods, metals, threads, rods, nuts, washers, rules;
};

/// Everything the catalogue files say, by id.
struct Catalogue {
    std::map<std::string, Wood> woods;
    std::map<std::string, Metal> metals;
    std::map<std::string, Thread> threads;
    std::map<std::string, RodStock> rods;
    std::map<std::string, Nut> nuts;
    std::map<std::string, Washer> washers;
    std::map<std::string, RuleLimit> rules;
    /// Header and rows of each entry, as comma separated text (see catalogueRow).
    std::map<std::pair<CatalogueKind, std::string>, std::string> rowTexts;
};

/// Reads all files or says everything that is wrong with them, each with file, line and column.
/// Refused besides broken text: columns or properties unknown or missing, rows without source or
/// standing, ids used twice or not made of small letters, digits and _, a quantity outside what is
/// plausible, a rod, nut or washer that does not fit its own thread or hole, a metal or thread
/// named that is not in the catalogue.
ResultAll<Catalogue> readCatalogue(const CatalogueTexts& texts);

}  // namespace fayline
