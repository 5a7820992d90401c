#include "new_project.h"

#include <fstream>
#include <sstream>

#include "project/decide.h"
#include "quantity/text.h"
#include "session.h"

namespace fayline::cli {
namespace {

struct Growing {
    Journal journal;
    Project project;
};

Result<void> decideInto(Growing& growing,
                        const std::vector<std::pair<std::string, std::string>>& typed,
                        const std::string& why, const std::string& title,
                        const Catalogue& catalogue) {
    auto step = prepareDecisions(growing.journal, growing.project, catalogue, typed,
                                 {personNow(), why, timeNow()});
    if (!step) return tl::unexpected(step.error());
    if (!title.empty()) {
        step->title = title;
        step->hash = stepHash(*step, growing.journal.tipHash());
    }
    for (const Change& change : step->changes) {
        if (auto done = applyChange(growing.project, change.what, change.newText); !done)
            return done;
    }
    return growing.journal.append(std::move(*step));
}

constexpr std::uintmax_t largestFile = 8U << 20U;

Result<std::string> readFile(const std::filesystem::path& path) {
    std::error_code error;
    if (!std::filesystem::exists(path, error))
        return tl::unexpected(
            Problem{"file.missing", path.string(), "there is no such file", "an existing file"});
    if (!std::filesystem::is_regular_file(path, error))
        return tl::unexpected(
            Problem{"file.kind", path.string(), "it is not a plain file", "a CSV file"});
    if (std::filesystem::file_size(path, error) > largestFile)
        return tl::unexpected(
            Problem{"file.large", path.string(), "it is over 8 MB", "a table of offsets"});
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    if (!file)
        return tl::unexpected(
            Problem{"file.read", path.string(), "it cannot be read", "a file you may read"});
    return text.str();
}

/// One block of a decisions text: its lines and the reason above it.
struct Block {
    int line = 0;
    std::string why;
    std::vector<std::pair<std::string, std::string>> typed;
};

ResultAll<std::vector<Block>> blocksOf(std::string_view text, const std::string& fileName) {
    std::vector<Block> blocks(1);
    Problems problems;
    int line = 0;
    for (const std::string_view raw : splitAt(text, '\n')) {
        ++line;
        const std::string_view row = trimmed(raw);
        if (row.empty()) {
            if (!blocks.back().typed.empty()) blocks.emplace_back();
        } else if (row.front() == '#') {
            std::string& why = blocks.back().why;
            why += (why.empty() ? "" : " ") + std::string(trimmed(row.substr(1)));
        } else if (const auto equals = row.find('='); equals != std::string_view::npos) {
            if (blocks.back().typed.empty()) blocks.back().line = line;
            blocks.back().typed.emplace_back(trimmed(row.substr(0, equals)),
                                             trimmed(row.substr(equals + 1)));
        } else {
            problems.push_back({"decisions.line", fileName + ":" + std::to_string(line),
                                quotable(row) + " decides nothing", "WHAT = VALUE"});
        }
    }
    if (blocks.back().typed.empty()) blocks.pop_back();
    if (!problems.empty()) return tl::unexpected(problems);
    return blocks;
}

ResultAll<Growing> grownFrom(std::vector<Step> steps) {
    Growing growing;
    FoldedJournal folded = Journal::fold(std::move(steps));
    if (folded.problem) return tl::unexpected(Problems{*folded.problem});
    growing.journal = std::move(folded.journal);
    growing.project = foldJournal(growing.journal).project;
    return growing;
}

}  // namespace

std::vector<std::pair<std::string, std::string>> offsetDecisions(const Offsets& offsets) {
    std::vector<std::pair<std::string, std::string>> decisions;
    if (offsets.waterline) decisions.emplace_back("hull.waterline", offsets.waterlineText);
    for (const OffsetStation& station : offsets.stations) {
        decisions.emplace_back("offsets." + station.id + ".x", station.xText);
        if (station.rabbet)
            decisions.emplace_back("offsets." + station.id + ".rabbet",
                                   std::to_string(*station.rabbet));
        for (std::size_t i = 0; i < station.points.size(); ++i) {
            const std::string place = "offsets." + station.id + "." + std::to_string(i + 1);
            decisions.emplace_back(place + ".half_breadth", station.points[i].halfBreadthText);
            decisions.emplace_back(place + ".height", station.points[i].heightText);
        }
    }
    return decisions;
}

ResultAll<std::vector<Step>> stepsFromOffsets(std::string_view text, const std::string& fileName,
                                              const Catalogue& catalogue) {
    const auto offsets = readOffsets(text, fileName);
    if (!offsets) return tl::unexpected(offsets.error());
    Growing growing;
    const std::string title =
        "offsets from " + fileName + ", " + std::to_string(offsets->stations.size()) + " stations";
    if (const auto done = decideInto(growing, offsetDecisions(*offsets), "", title, catalogue);
        !done) {
        return tl::unexpected(Problems{done.error()});
    }
    return growing.journal.steps();
}

ResultAll<std::vector<Step>> stepsFromOffsetsFile(const std::filesystem::path& path,
                                                  const Catalogue& catalogue) {
    const auto text = readFile(path);
    if (!text) return tl::unexpected(Problems{text.error()});
    return stepsFromOffsets(*text, path.filename().string(), catalogue);
}

ResultAll<std::vector<Step>> stepsFromDecisions(std::vector<Step> steps, std::string_view text,
                                                const std::string& fileName,
                                                const Catalogue& catalogue) {
    const auto blocks = blocksOf(text, fileName);
    if (!blocks) return tl::unexpected(blocks.error());
    auto growing = grownFrom(std::move(steps));
    if (!growing) return tl::unexpected(growing.error());
    for (const Block& block : *blocks) {
        if (const auto done = decideInto(*growing, block.typed, block.why, "", catalogue); !done) {
            Problem problem = done.error();
            problem.where = fileName + ":" + std::to_string(block.line) + ": " + problem.where;
            return tl::unexpected(Problems{problem});
        }
    }
    return growing->journal.steps();
}

ResultAll<std::vector<Step>> demoSteps(const Catalogue& catalogue) {
    auto steps =
        stepsFromOffsets(builtInText("demo/hollin-offsets.csv"), "hollin-offsets.csv", catalogue);
    if (!steps) return steps;
    return stepsFromDecisions(std::move(*steps), builtInText("demo/hollin.decisions"),
                              "hollin.decisions", catalogue);
}

}  // namespace fayline::cli
