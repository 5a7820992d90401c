#include <array>

#include "property.h"
#include "quantity/text.h"
#include "readers.h"

namespace fayline {
namespace {

constexpr Limits<Length> anyDiameter{millimetres(1.0), millimetres(100.0), "1 mm to 100 mm"};
constexpr Limits<Length> anyPitch{millimetres(0.2), millimetres(8.0), "0.2 mm to 8 mm"};
constexpr Limits<Length> anyWidth{millimetres(2.0), millimetres(400.0), "2 mm to 400 mm"};
constexpr Limits<Length> anyThickness{millimetres(0.3), millimetres(100.0), "0.3 mm to 100 mm"};
constexpr Limits<Length> anyStock{millimetres(100.0), metres(15.0), "100 mm to 15 m"};

/// Reads every row by `one`, which gives the entry or nothing; ids are the first column's.
template <typename Entry, std::size_t N, typename ReadOne>
std::map<std::string, Entry> readAll(const CsvFile& file, Problems& problems,
                                     const std::array<std::string_view, N>& columns, ReadOne one) {
    std::map<std::string, Entry> entries;
    if (!hasColumns(file, columns, problems)) return entries;
    SeenRows seen;
    for (const auto& csv : file.rows) {
        RowReader row(file, csv, problems);
        const auto id = row.id(columns.front());
        const auto name = row.words("name");
        const auto source = row.source();
        const auto standing = row.standing();
        Entry entry;
        const bool good = one(row, entry);
        if (!id || !seen.first(row, *id, columns.front())) continue;
        if (!name || !source || !standing || !good) continue;
        entry.id = *id;
        entry.name = *name;
        entry.source = *source;
        entry.standing = *standing;
        entries.emplace(*id, std::move(entry));
    }
    return entries;
}

std::optional<Length> pitchOf(RowReader& row, ThreadSeries series) {
    const bool unified = series == ThreadSeries::unifiedCoarse;
    const std::string_view unused = unified ? "pitch" : "per_inch";
    if (!row.isEmpty(unused)) {
        row.refuse("catalogue.contradiction", unused,
                   "a thread has either a pitch or a number per inch",
                   unified ? "per_inch for unified_coarse" : "pitch for metric_coarse");
        return std::nullopt;
    }
    if (!unified) return row.length("pitch", anyPitch);
    const auto perInch = row.count("per_inch", 4, 80);
    if (!perInch) return std::nullopt;
    return inches(1.0 / *perInch);
}

bool readThread(RowReader& row, Thread& thread) {
    const auto series = threadSeriesFromText(row.cell("series"));
    if (!series) {
        row.refuseWord("catalogue.series", "series", {"unified_coarse", "metric_coarse"});
    }
    const auto nominal = row.length("nominal", anyDiameter);
    const auto pitch = series ? pitchOf(row, *series) : std::nullopt;
    if (!series || !nominal || !pitch) return false;
    thread.series = *series;
    thread.nominal = *nominal;
    thread.pitch = *pitch;
    if (rootDiameter(thread) < *nominal * 0.5) {
        row.refuse("catalogue.contradiction", "nominal",
                   "the thread leaves less than half the diameter at its root",
                   "a pitch that belongs to this diameter");
        return false;
    }
    return true;
}

bool readRod(RowReader& row, RodStock& rod) {
    const auto metal = row.id("metal");
    const auto thread = row.id("thread");
    const auto diameter = row.length("diameter", anyDiameter);
    bool good = metal && thread && diameter;
    if (!row.isEmpty("stock_length")) {
        rod.stockLength = row.length("stock_length", anyStock);
        good = good && rod.stockLength;
    }
    if (!good) return false;
    rod.metal = *metal;
    rod.thread = *thread;
    rod.diameter = *diameter;
    return true;
}

bool readNut(RowReader& row, Nut& nut) {
    const auto kind = nutKindFromText(row.cell("kind"));
    if (!kind) row.refuseWord("catalogue.nut_kind", "kind", {"hex", "heavy_hex", "jam"});
    const auto thread = row.id("thread");
    const auto flats = row.length("across_flats", anyWidth);
    const auto height = row.length("height", anyThickness);
    if (!kind || !thread || !flats || !height) return false;
    nut.kind = *kind;
    nut.thread = *thread;
    nut.acrossFlats = *flats;
    nut.height = *height;
    return true;
}

bool readWasher(RowReader& row, Washer& washer) {
    const auto fits = row.length("fits", anyDiameter);
    const auto inside = row.length("inside", anyDiameter);
    const auto outside = row.length("outside", anyWidth);
    const auto thickness = row.length("thickness", anyThickness);
    if (!fits || !inside || !outside || !thickness) return false;
    if (*inside < *fits) {
        row.refuse("catalogue.contradiction", "inside", "the hole is smaller than the bolt it fits",
                   "inside at least as large as fits");
        return false;
    }
    if (*outside <= *inside) {
        row.refuse("catalogue.contradiction", "outside", "the washer is no wider than its hole",
                   "outside above inside");
        return false;
    }
    washer.fits = *fits;
    washer.inside = *inside;
    washer.outside = *outside;
    washer.thickness = *thickness;
    return true;
}

template <typename Entry>
std::string nearest(const std::map<std::string, Entry>& entries, const std::string& id,
                    std::string_view file) {
    std::vector<std::string> names;
    for (const auto& [name, entry] : entries) names.push_back(name);
    const auto hint = didYouMean(id, names);
    return hint ? "did you mean " + *hint + "?" : "an id of " + std::string(file);
}

const Thread* threadOf(const Catalogue& catalogue, RowReader& row, const std::string& id) {
    const auto found = catalogue.threads.find(id);
    if (found != catalogue.threads.end()) return &found->second;
    row.refuse("catalogue.reference", "thread", id + " is not in the catalogue",
               nearest(catalogue.threads, id, "threads.csv"));
    return nullptr;
}

}  // namespace

std::map<std::string, Thread> readThreads(const CsvFile& file, Problems& problems) {
    constexpr std::array<std::string_view, 8> columns{"thread",   "name",  "series", "nominal",
                                                      "per_inch", "pitch", "source", "standing"};
    return readAll<Thread>(file, problems, columns, readThread);
}

std::map<std::string, RodStock> readRods(const CsvFile& file, Problems& problems) {
    constexpr std::array<std::string_view, 8> columns{
        "rod", "name", "metal", "thread", "diameter", "stock_length", "source", "standing"};
    return readAll<RodStock>(file, problems, columns, readRod);
}

std::map<std::string, Nut> readNuts(const CsvFile& file, Problems& problems) {
    constexpr std::array<std::string_view, 8> columns{
        "nut", "name", "kind", "thread", "across_flats", "height", "source", "standing"};
    return readAll<Nut>(file, problems, columns, readNut);
}

std::map<std::string, Washer> readWashers(const CsvFile& file, Problems& problems) {
    constexpr std::array<std::string_view, 8> columns{"washer",  "name",      "fits",   "inside",
                                                      "outside", "thickness", "source", "standing"};
    return readAll<Washer>(file, problems, columns, readWasher);
}

void checkReferences(const Catalogue& catalogue, const CsvFile& rods, const CsvFile& nuts,
                     Problems& problems) {
    for (const auto& csv : rods.rows) {
        RowReader row(rods, csv, problems);
        const auto found = catalogue.rods.find(std::string(row.cell("rod")));
        if (found == catalogue.rods.end()) continue;
        const auto& rod = found->second;
        if (!catalogue.metals.contains(rod.metal)) {
            row.refuse("catalogue.reference", "metal", rod.metal + " is not in the catalogue",
                       nearest(catalogue.metals, rod.metal, "metals.csv"));
        }
        const auto* thread = threadOf(catalogue, row, rod.thread);
        if (thread && abs(thread->nominal - rod.diameter) > millimetres(0.01)) {
            row.refuse("catalogue.contradiction", "diameter",
                       "the rod is not as thick as its thread " + rod.thread,
                       "the nominal diameter of the thread");
        }
    }
    for (const auto& csv : nuts.rows) {
        RowReader row(nuts, csv, problems);
        const auto found = catalogue.nuts.find(std::string(row.cell("nut")));
        if (found == catalogue.nuts.end()) continue;
        const auto* thread = threadOf(catalogue, row, found->second.thread);
        if (thread && found->second.acrossFlats <= thread->nominal) {
            row.refuse("catalogue.contradiction", "across_flats",
                       "the nut is no wider than its bolt", "wider than " + found->second.thread);
        }
    }
}

}  // namespace fayline
