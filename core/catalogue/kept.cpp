#include "catalogue/kept.h"

#include <algorithm>
#include <map>
#include <set>

#include "quantity/csv.h"
#include "quantity/text.h"
#include "readers.h"

namespace fayline {
namespace {

Problem noEntry(const Catalogue& catalogue, CatalogueKind kind, std::string_view id) {
    std::vector<std::string> ids;
    for (const auto& [key, text] : catalogue.rowTexts) {
        if (key.first == kind) ids.push_back(key.second);
    }
    const auto hint = didYouMean(id, ids);
    return {"catalogue.no_entry", std::string(catalogueFileName(kind)),
            "there is no " + std::string(catalogueKindText(kind)) + " " + quotable(id),
            hint ? "did you mean " + *hint + "?" : "an id of this file"};
}

std::string keptName(CatalogueKind kind, std::string_view id) {
    return "kept " + std::string(catalogueKindText(kind)) + " " + quotable(id);
}

template <typename Entry>
ResultAll<CatalogueEntry> only(std::map<std::string, Entry> entries, std::string_view id,
                               const std::string& name, Problems problems) {
    if (!problems.empty()) return tl::unexpected(std::move(problems));
    const auto found = entries.find(std::string(id));
    if (found == entries.end() || entries.size() != 1) {
        return tl::unexpected(Problems{{"catalogue.kept", name,
                                        found == entries.end() ? "the text does not hold it"
                                                               : "the text holds other entries too",
                                        "the header and the rows of this entry alone"}});
    }
    return CatalogueEntry(std::move(found->second));
}

/// Cells of one entry by what they say: "value of shear, green".
using CellsByName = std::map<std::string, std::string, NaturalLess>;

/// The property, and the moisture where there is one, tell the rows of one entry apart.
std::string rowName(const CsvFile& file, const CsvRow& row) {
    std::string name;
    for (const std::string_view column : {"property", "moisture"}) {
        const auto place = file.column(column);
        if (!place || row.cells[*place].empty()) continue;
        name += (name.empty() ? "" : ", ") + row.cells[*place];
    }
    return name;
}

CellsByName cellsOf(const CsvFile& file) {
    CellsByName cells;
    for (const auto& row : file.rows) {
        const auto of = rowName(file, row);
        for (std::size_t i = 0; i < file.header.size(); ++i) {
            const auto& column = file.header[i];
            if (column == "property" || column == "moisture") continue;
            cells[of.empty() ? column : column + " of " + of] = row.cells[i];
        }
    }
    return cells;
}

}  // namespace

Result<std::string> catalogueRow(const Catalogue& catalogue, CatalogueKind kind,
                                 std::string_view id) {
    const auto found = catalogue.rowTexts.find({kind, std::string(id)});
    if (found == catalogue.rowTexts.end()) return tl::unexpected(noEntry(catalogue, kind, id));
    return found->second;
}

ResultAll<CatalogueEntry> readKeptRow(CatalogueKind kind, std::string_view id,
                                      std::string_view text) {
    const auto name = keptName(kind, id);
    const auto file = readCsv(text, name);
    if (!file) return tl::unexpected(file.error());
    Problems problems;
    switch (kind) {
        case CatalogueKind::wood: {
            auto entries = readWoods(*file, problems);
            return only(std::move(entries), id, name, std::move(problems));
        }
        case CatalogueKind::metal: {
            auto entries = readMetals(*file, problems);
            return only(std::move(entries), id, name, std::move(problems));
        }
        case CatalogueKind::thread: {
            auto entries = readThreads(*file, problems);
            return only(std::move(entries), id, name, std::move(problems));
        }
        case CatalogueKind::rod: {
            auto entries = readRods(*file, problems);
            return only(std::move(entries), id, name, std::move(problems));
        }
        case CatalogueKind::nut: {
            auto entries = readNuts(*file, problems);
            return only(std::move(entries), id, name, std::move(problems));
        }
        case CatalogueKind::washer: {
            auto entries = readWashers(*file, problems);
            return only(std::move(entries), id, name, std::move(problems));
        }
        case CatalogueKind::rule:
            break;
    }
    auto entries = readRules(*file, problems);
    return only(std::move(entries), id, name, std::move(problems));
}

ResultAll<std::vector<EntryDifference>> compareKept(const Catalogue& catalogue, CatalogueKind kind,
                                                    std::string_view id,
                                                    std::string_view keptText) {
    const auto keptFile = readCsv(keptText, keptName(kind, id));
    if (!keptFile) return tl::unexpected(keptFile.error());
    const auto nowText = catalogueRow(catalogue, kind, id);
    std::vector<EntryDifference> differences;
    if (!nowText) {
        differences.push_back({"entry", std::string(id), std::nullopt});
        return differences;
    }
    const auto nowFile = readCsv(*nowText, catalogueFileName(kind));
    if (!nowFile) return tl::unexpected(nowFile.error());

    const auto kept = cellsOf(*keptFile);
    const auto now = cellsOf(*nowFile);
    std::set<std::string, NaturalLess> names;
    for (const auto& [name, cell] : kept) names.insert(name);
    for (const auto& [name, cell] : now) names.insert(name);
    for (const auto& name : names) {
        const auto cellIn = [&](const CellsByName& cells) {
            const auto found = cells.find(name);
            return found == cells.end() ? std::nullopt : std::optional(found->second);
        };
        EntryDifference difference{name, cellIn(kept), cellIn(now)};
        if (difference.kept != difference.now) differences.push_back(std::move(difference));
    }
    return differences;
}

}  // namespace fayline
