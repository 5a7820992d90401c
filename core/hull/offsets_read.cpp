#include <algorithm>
#include <array>
#include <utility>

#include "hull/offsets.h"
#include "offsets_check.h"
#include "quantity/csv.h"
#include "quantity/reading.h"
#include "quantity/text.h"

namespace fayline {
namespace {

struct FileUnit {
    std::string_view name;
    LengthUnit unit;
};
constexpr std::array<FileUnit, 6> fileUnits{{{"mm", LengthUnit::mm},
                                             {"cm", LengthUnit::cm},
                                             {"m", LengthUnit::m},
                                             {"in", LengthUnit::in},
                                             {"ft", LengthUnit::ft},
                                             {"ft-in-8ths", LengthUnit::feetInchesEighths}}};
constexpr std::string_view unitsAllowed = "mm, cm, m, in, ft or ft-in-8ths";

constexpr std::array<std::string_view, 4> columnNames{"station", "x", "half_breadth", "height"};
enum Column : std::size_t { station, x, halfBreadth, height };
/// May be left out.
constexpr std::string_view lineColumn = "line";

class OffsetsReader {
  public:
    explicit OffsetsReader(CsvFile file) : file_(std::move(file)) {
        lines_.file = file_.name;
        lines_.header = file_.headerLine;
    }

    ResultAll<Offsets> run() {
        readUnit();
        findColumns();
        if (problems_.empty()) {
            readWaterline();
            for (const auto& row : file_.rows) readRow(row);
        }
        if (problems_.empty()) problems_ = detail::checkTable(offsets_, &lines_);
        if (!problems_.empty()) return tl::unexpected(std::move(problems_));
        return std::move(offsets_);
    }

  private:
    struct Setting {
        int line;
        std::string value;
    };

    void refuse(int line, std::string code, std::string what, std::string allowed) {
        problems_.push_back(
            {std::move(code), file_.where(line), std::move(what), std::move(allowed)});
    }

    /// The comment "name: value" above the header; a second one is a problem.
    std::optional<Setting> setting(std::string_view name) {
        std::optional<Setting> found;
        for (const auto& comment : file_.comments) {
            const auto colon = comment.text.find(':');
            if (comment.line > file_.headerLine || colon == std::string::npos) continue;
            const std::string_view text = comment.text;
            if (lowered(trimmed(text.substr(0, colon))) != name) continue;
            if (found) {
                refuse(comment.line, "offsets.setting_twice",
                       "\"# " + std::string(name) + ":\" stands a second time",
                       "once above the header");
                continue;
            }
            found = Setting{comment.line, std::string(trimmed(text.substr(colon + 1)))};
        }
        return found;
    }

    void readUnit() {
        const auto unit = setting("unit");
        if (!unit) {
            refuse(1, "offsets.unit_missing", "the line that names the unit is missing",
                   "\"# unit: mm\" above the header (" + std::string(unitsAllowed) + ")");
            return;
        }
        const auto known = std::find_if(fileUnits.begin(), fileUnits.end(),
                                        [&](const FileUnit& u) { return u.name == unit->value; });
        if (known == fileUnits.end()) {
            refuse(unit->line, "offsets.unit_unknown", "unit is \"" + quotable(unit->value) + "\"",
                   std::string(unitsAllowed));
            return;
        }
        unit_ = known->unit;
    }

    void findColumns() {
        std::vector<std::string> names(columnNames.begin(), columnNames.end());
        names.emplace_back(lineColumn);
        for (const auto& title : file_.header) {
            if (std::find(names.begin(), names.end(), title) != names.end()) continue;
            const auto meant = didYouMean(title, names);
            refuse(file_.headerLine, "offsets.column_unknown",
                   "\"" + quotable(title) + "\" is not a column of a table of offsets",
                   (meant ? "did you mean " + *meant + "? " : "") +
                       std::string("station, x, half_breadth, height and line"));
        }
        for (std::size_t c = 0; c < columnNames.size(); ++c) {
            const auto found = file_.column(columnNames[c]);
            if (!found) {
                refuse(file_.headerLine, "offsets.column_missing",
                       "the column " + names[c] + " is missing", "station,x,half_breadth,height");
            }
            column_[c] = found.value_or(0);
        }
        line_ = file_.column(lineColumn);
    }

    struct Typed {
        Length value;
        std::string text;
    };

    std::optional<Typed> read(const std::string& text, const std::string& name, int line) {
        const std::string where = file_.where(line);
        if (auto own = readLength(text, where)) return Typed{*own, text};
        auto value = readLength(text, where, unit_);
        if (!value) {
            Problem problem = std::move(value.error());
            problem.what = name + ": " + problem.what;
            problems_.push_back(std::move(problem));
            return std::nullopt;
        }
        return Typed{*value, text + " " + std::string(unitText(unit_))};
    }

    void readWaterline() {
        const auto waterline = setting("waterline");
        if (!waterline) return;
        lines_.waterline = waterline->line;
        if (auto typed = read(waterline->value, "waterline", waterline->line)) {
            offsets_.waterline = typed->value;
            offsets_.waterlineText = std::move(typed->text);
        }
    }

    void readRow(const CsvRow& row) {
        const auto cell = [&](Column c) -> const std::string& { return row.cells[column_[c]]; };
        auto at = read(cell(x), "x", row.line);
        auto out = read(cell(halfBreadth), "half_breadth", row.line);
        auto up = read(cell(height), "height", row.line);
        if (!at || !out || !up) return;

        auto& stations = offsets_.stations;
        if (stations.empty() || stations.back().id != cell(station)) {
            stations.push_back({cell(station), at->value, at->text, {}});
            lines_.points.emplace_back();
        } else if (stations.back().x != at->value) {
            refuse(row.line, "offsets.x_differs",
                   "x of " +
                       (cell(station).empty() ? "the station without a name"
                                              : "station " + quotable(cell(station))) +
                       " is " + at->text + ", in line " +
                       std::to_string(lines_.points.back().front()) + " it is " +
                       stations.back().xText,
                   "one x for all points of a station");
            return;
        }
        stations.back().points.push_back(
            {out->value, up->value, std::move(out->text), std::move(up->text)});
        lines_.points.back().push_back(row.line);
        if (line_) readLine(row.cells[*line_], row.line);
    }

    void readLine(const std::string& mark, int line) {
        OffsetStation& at = offsets_.stations.back();
        if (mark.empty()) return;
        if (mark != "rabbet") {
            refuse(line, "offsets.line", "line is \"" + quotable(mark) + "\"",
                   "rabbet, or nothing");
        } else if (at.rabbet) {
            refuse(line, "offsets.rabbet_twice",
                   "the rabbet of station " + quotable(at.id) + " is marked a second time",
                   "one point of each station");
        } else {
            at.rabbet = static_cast<int>(at.points.size());
        }
    }

    CsvFile file_;
    LengthUnit unit_ = LengthUnit::mm;
    std::array<std::size_t, 4> column_{};
    std::optional<std::size_t> line_;
    Offsets offsets_;
    detail::SourceLines lines_;
    Problems problems_;
};

}  // namespace

ResultAll<Offsets> readOffsets(std::string_view text, std::string_view fileName) {
    auto file = readCsv(text, fileName);
    if (!file) return tl::unexpected(std::move(file.error()));
    return OffsetsReader(std::move(*file)).run();
}

}  // namespace fayline
