#include "catalogue/catalogue.h"

#include <array>

#include "readers.h"

namespace fayline {
namespace {

struct KindRow {
    CatalogueKind kind;
    std::string_view text;
    std::string_view file;
};

constexpr std::array<KindRow, 7> kinds{{
    {CatalogueKind::wood, "wood", "woods.csv"},
    {CatalogueKind::metal, "metal", "metals.csv"},
    {CatalogueKind::thread, "thread", "threads.csv"},
    {CatalogueKind::rod, "rod", "rods.csv"},
    {CatalogueKind::nut, "nut", "nuts.csv"},
    {CatalogueKind::washer, "washer", "washers.csv"},
    {CatalogueKind::rule, "rule", "rules.csv"},
}};

const KindRow& kindRow(CatalogueKind kind) {
    for (const auto& row : kinds) {
        if (row.kind == kind) return row;
    }
    return kinds.front();
}

/// Header and rows of each id, in the order of the file.
void keepRows(Catalogue& catalogue, CatalogueKind kind, const CsvFile& file) {
    const auto idColumn = file.column(catalogueKindText(kind));
    if (!idColumn) return;
    for (const auto& row : file.rows) {
        auto& text = catalogue.rowTexts[{kind, row.cells[*idColumn]}];
        if (text.empty()) text = csvLine(file.header);
        text += csvLine(row.cells);
    }
}

class FileSet {
  public:
    explicit FileSet(Problems& problems) : problems_(problems) {}

    CsvFile open(CatalogueKind kind, std::string_view text) {
        auto file = readCsv(text, catalogueFileName(kind));
        if (file) return *std::move(file);
        problems_.insert(problems_.end(), file.error().begin(), file.error().end());
        CsvFile none;
        none.name = catalogueFileName(kind);
        return none;
    }

  private:
    Problems& problems_;
};

}  // namespace

std::string_view catalogueKindText(CatalogueKind kind) {
    return kindRow(kind).text;
}
std::string_view catalogueFileName(CatalogueKind kind) {
    return kindRow(kind).file;
}

std::optional<CatalogueKind> catalogueKindFromText(std::string_view text) {
    for (const auto& row : kinds) {
        if (row.text == text) return row.kind;
    }
    return std::nullopt;
}

ResultAll<Catalogue> readCatalogue(const CatalogueTexts& texts) {
    Problems problems;
    FileSet files(problems);
    const CsvFile woods = files.open(CatalogueKind::wood, texts.woods);
    const CsvFile metals = files.open(CatalogueKind::metal, texts.metals);
    const CsvFile threads = files.open(CatalogueKind::thread, texts.threads);
    const CsvFile rods = files.open(CatalogueKind::rod, texts.rods);
    const CsvFile nuts = files.open(CatalogueKind::nut, texts.nuts);
    const CsvFile washers = files.open(CatalogueKind::washer, texts.washers);
    const CsvFile rules = files.open(CatalogueKind::rule, texts.rules);
    if (!problems.empty()) return tl::unexpected(problems);

    Catalogue catalogue;
    catalogue.woods = readWoods(woods, problems);
    catalogue.metals = readMetals(metals, problems);
    catalogue.threads = readThreads(threads, problems);
    catalogue.rods = readRods(rods, problems);
    catalogue.nuts = readNuts(nuts, problems);
    catalogue.washers = readWashers(washers, problems);
    catalogue.rules = readRules(rules, problems);
    if (problems.empty()) checkReferences(catalogue, rods, nuts, problems);
    if (!problems.empty()) return tl::unexpected(problems);

    keepRows(catalogue, CatalogueKind::wood, woods);
    keepRows(catalogue, CatalogueKind::metal, metals);
    keepRows(catalogue, CatalogueKind::thread, threads);
    keepRows(catalogue, CatalogueKind::rod, rods);
    keepRows(catalogue, CatalogueKind::nut, nuts);
    keepRows(catalogue, CatalogueKind::washer, washers);
    keepRows(catalogue, CatalogueKind::rule, rules);
    return catalogue;
}

}  // namespace fayline
