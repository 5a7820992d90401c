#include "sheets_files.h"

#include <QDir>
#include <QFileInfo>
#include <QSaveFile>
#include <algorithm>
#include <map>

#include "derive/old_paper.h"
#include "derive/paper.h"
#include "quantity/csv.h"
#include "quantity/text.h"

namespace fayline::cli {
namespace {

std::string printedNow() {
    std::string now = timeNow();
    if (now.size() < 16) return now;
    now[10] = ' ';
    return now.substr(0, 16) + " UTC";
}

Result<void> writeText(const QString& path, const std::string& text) {
    QSaveFile file(path);
    if (file.open(QIODevice::WriteOnly) &&
        file.write(text.data(), static_cast<qint64>(text.size())) ==
            static_cast<qint64>(text.size()) &&
        file.commit())
        return {};
    return tl::unexpected(Problem{"file.write", path.toStdString(),
                                  "it could not be written: " + file.errorString().toStdString(),
                                  "a folder that can be written to, with room in it"});
}

Result<void> makeFolder(const std::string& folder) {
    const QString path = QString::fromStdString(folder);
    if (QFileInfo(path).isDir() || QDir().mkpath(path)) return {};
    return tl::unexpected(Problem{"folder.make", folder, "the folder could not be made",
                                  "a folder, or the name of one that can be made"});
}

std::vector<Sheet> sheetsFor(const Session& session, const std::vector<std::string>& frames,
                             const PaperOptions& options) {
    if (frames.empty())
        return sheetsOf(session.project, *session.results, *session.catalogue, options);
    std::vector<Sheet> sheets;
    for (const std::string& frame : frames) {
        for (const std::string& id : {frame, frame + ".floor"}) {
            if (auto sheet =
                    sheetNamed(id, session.project, *session.results, *session.catalogue, options))
                sheets.push_back(std::move(*sheet));
        }
    }
    return sheets;
}

/// A line for each sheet that was printed with another code than it has.
std::string staleText(const Session& session, const std::vector<Sheet>& all) {
    std::map<std::string, std::string> codes;
    for (const Sheet& sheet : all) codes.emplace(sheet.id, sheet.revision);
    std::string text;
    for (const OldPaper& old : oldPaper(session.journal().recorded(), codes)) {
        text += "stale: " + old.sheet + " was printed as " + old.onPaper +
                (old.now.empty() ? ", and there is no such sheet any more"
                                 : ", it is " + old.now + " now") +
                "; throw the old one away\n";
    }
    return text;
}

}  // namespace

Result<std::vector<std::string>> framesNamed(const Project& project, const std::string& text) {
    std::vector<std::string> frames;
    for (const std::string_view part : splitAt(text, ',')) {
        std::string range(trimmed(part));
        if (range.empty() || range.front() != 'F') range.insert(0, 1, 'F');
        // A decision every frame has; its range is read as the command line reads all ranges.
        const std::string field = ".floor.kind";
        const auto named = expandRange(project, range + field);
        const auto known = frameIds(project);
        if (named) {
            for (const std::string& what : *named) {
                const std::string id = what.substr(0, what.size() - field.size());
                if (std::find(known.begin(), known.end(), id) == known.end())
                    return tl::unexpected(
                        Problem{"frames.unknown", "--frames", "there is no frame " + id,
                                known.empty() ? "a project with frames"
                                              : known.front() + " to " + known.back()});
                if (std::find(frames.begin(), frames.end(), id) == frames.end())
                    frames.push_back(id);
            }
            continue;
        }
        Problem problem = named.error();
        problem.where = "--frames";
        return tl::unexpected(std::move(problem));
    }
    return frames;
}

Result<SheetsWritten> writeSheets(const Session& session, const SheetsWish& wish,
                                  const PdfWriter& write) {
    if (!write)
        return tl::unexpected(Problem{"sheets.no_printing", "sheets",
                                      "this build of the program cannot print",
                                      "a build with the window"});
    PaperOptions options;
    const auto paper = paperNamed(wish.paper.empty() ? "a4" : wish.paper);
    if (!paper)
        return tl::unexpected(Problem{"option.value", "--paper",
                                      "there is no paper " + quotable(wish.paper), "a4 or letter"});
    std::vector<std::string> frames;
    if (!wish.frames.empty()) {
        const auto named = framesNamed(session.project, wish.frames);
        if (!named) return tl::unexpected(named.error());
        frames = *named;
    }
    if (const auto made = makeFolder(wish.folder); !made) return tl::unexpected(made.error());
    options.paper = *paper;
    options.printed = printedNow();
    options.program = programName();
    options.steps = &session.journal().steps();
    std::string list = csvLine({"sheet", "file", "page", "side", "revision"});
    std::size_t pages = 0;
    auto sheets = sheetsFor(session, frames, options);
    for (const Sheet& sheet : sheets) {
        const std::string path = wish.folder + "/" + sheet.fileName;
        if (const auto written = write(path, sheet); !written)
            return tl::unexpected(written.error());
        for (const SheetPage& page : sheet.pages)
            list += csvLine(
                {sheet.id, sheet.fileName, std::to_string(page.number), page.side, sheet.revision});
        pages += sheet.pages.size();
    }
    const auto written = writeText(QString::fromStdString(wish.folder + "/sheets.csv"), list);
    if (!written) return tl::unexpected(written.error());
    std::string says = wish.folder + ": " + std::to_string(sheets.size()) +
                       (sheets.size() == 1 ? " sheet, " : " sheets, ") + std::to_string(pages) +
                       (pages == 1 ? " page\n" : " pages\n");
    says += staleText(session, frames.empty() ? sheets : sheetsFor(session, {}, options));
    return SheetsWritten{std::move(says), std::move(sheets)};
}

}  // namespace fayline::cli
