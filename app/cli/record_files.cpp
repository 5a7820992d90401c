#include "record_files.h"

#include <QSaveFile>
#include <algorithm>
#include <filesystem>

#include "joint/work_joint.h"
#include "quantity/text.h"

namespace fayline::cli {
namespace {

enum class Form { text, pdf, printed };

Result<Form> formOf(const RecordWish& wish, const PdfWriter& write) {
    if (wish.to.empty()) return Form::printed;
    const std::string ending = lowered(std::filesystem::path(wish.to).extension().string());
    if (ending == ".txt") return Form::text;
    if (ending != ".pdf")
        return tl::unexpected(Problem{"option.value", wish.to,
                                      "a record is written as PDF or as text",
                                      "a name that ends in .pdf or .txt"});
    if (!write)
        return tl::unexpected(Problem{"record.no_printing", wish.to,
                                      "this build of the program cannot print",
                                      "a name that ends in .txt"});
    return Form::pdf;
}

Result<PaperSize> paperOf(const RecordWish& wish) {
    if (const auto paper = paperNamed(wish.paper.empty() ? "a4" : wish.paper)) return *paper;
    return tl::unexpected(Problem{"option.value", "--paper",
                                  "there is no paper " + quotable(wish.paper), "a4 or letter"});
}

RecordOptions optionsFor(const std::string& subject) {
    RecordOptions options;
    options.subject = subject;
    options.program = programName();
    options.printed = timeNow();
    if (options.printed.size() >= 16) {
        options.printed[10] = ' ';
        options.printed = options.printed.substr(0, 16) + " UTC";
    }
    return options;
}

Result<std::string> writeOut(const Record& record, Form form, PaperSize paper,
                             const std::string& path, const PdfWriter& write) {
    if (form == Form::printed) return textOf(record);
    if (form == Form::pdf) {
        const Sheet sheet = layOut(record, paper);
        if (const auto written = write(path, sheet); !written)
            return tl::unexpected(written.error());
        const std::size_t pages = sheet.pages.size();
        return path + ": " + std::to_string(pages) + (pages == 1 ? " page" : " pages") +
               ", revision " + sheet.revision + "\n";
    }
    const std::string text = textOf(record);
    QSaveFile file(QString::fromStdString(path));
    const auto size = static_cast<qint64>(text.size());
    if (file.open(QIODevice::WriteOnly) && file.write(text.data(), size) == size && file.commit())
        return path + ": revision " + revisionOf(record) + "\n";
    return tl::unexpected(Problem{"file.write", path,
                                  "it could not be written: " + file.errorString().toStdString(),
                                  "a folder that can be written to, with room in it"});
}

}  // namespace

NamedJoint namedJoint(const JointFile& file) {
    return {file.joint, file.woods, file.metal, file.thread, file.zone, file.basis, file.units};
}

Result<std::string> writeJointRecord(const JointFile& file, const std::string& name,
                                     const RecordWish& wish, const PdfWriter& write) {
    const auto form = formOf(wish, write);
    if (!form) return tl::unexpected(form.error());
    const auto paper = paperOf(wish);
    if (!paper) return tl::unexpected(paper.error());
    JointTraces traces;
    const auto result = workJoint(file.joint, &traces);
    if (!result) return tl::unexpected(result.error());
    const std::string subject =
        "one joint, from " + std::filesystem::path(name).filename().string();
    return writeOut(jointRecord(namedJoint(file), *result, traces, optionsFor(subject)), *form,
                    *paper, wish.to, write);
}

Result<std::string> writeRecord(const Session& session, const RecordWish& wish,
                                const PdfWriter& write) {
    const auto form = formOf(wish, write);
    if (!form) return tl::unexpected(form.error());
    const auto paper = paperOf(wish);
    if (!paper) return tl::unexpected(paper.error());
    const RecordOptions options =
        optionsFor(session.name() + ", step " + std::to_string(session.journal().tip()));
    if (wish.station.empty()) {
        const auto& all = session.journal().decided();
        return writeOut(hullRecord(session.project, *session.results, *session.catalogue,
                                   {all.begin(), all.end()}, options),
                        *form, *paper, wish.to, write);
    }
    auto frames = framesNamed(session.project, wish.station);
    if (!frames || frames->size() != 1) {
        Problem problem =
            frames ? Problem{"option.value", "",
                             "one station is meant, not " + std::to_string(frames->size()),
                             "one frame, such as F8"}
                   : frames.error();
        problem.where = "--station";
        return tl::unexpected(std::move(problem));
    }
    const auto record = stationRecord(frames->front(), session.project, *session.results,
                                      *session.catalogue, options);
    if (!record)
        return tl::unexpected(Problem{"frames.unknown", "--station",
                                      "there is no frame " + frames->front(), "a frame there is"});
    return writeOut(*record, *form, *paper, wish.to, write);
}

}  // namespace fayline::cli
