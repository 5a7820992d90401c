#include "commands.h"

#include <ostream>

#include "derive/old_paper.h"
#include "joint/work_joint.h"
#include "joint_file.h"
#include "joint_report.h"
#include "new_project.h"
#include "project/decide.h"
#include "quantity/text.h"
#include "record_files.h"
#include "reports.h"
#include "session.h"
#include "sheets_files.h"

namespace fayline::cli {
namespace {

using Done = ResultAll<void>;

Done failed(Problem problem) {
    return tl::unexpected(Problems{std::move(problem)});
}

void noteProblems(const Session& session, std::ostream& err) {
    if (!session.opened.says.empty()) err << "fayline: note: " << session.opened.says << "\n";
    for (const Problems* problems : {&session.problems, &session.results->problems}) {
        for (const Problem& problem : *problems)
            err << "fayline: note: " << quotable(problem.line(), 4000) << "\n";
    }
}

/// The result is out only when the last byte of it is: a full disk is a failure.
Done printed(const std::string& text, std::ostream& out) {
    out << text << std::flush;
    if (out) return {};
    return failed({"output.write", "standard output", "the result could not be written to it",
                   "a place with room"});
}

ResultAll<Catalogue> catalogueOrProblems() {
    return builtInCatalogue();
}

Done createAt(const std::string& path, const std::vector<Step>& steps, std::ostream& out) {
    const auto created = ProjectFile::create(path, steps, programName());
    if (!created) return failed(created.error());
    out << path << ": " << steps.size() << (steps.size() == 1 ? " step\n" : " steps\n");
    return {};
}

Result<std::string> wanted(const Arguments& arguments, const char* option) {
    if (auto value = arguments.value(option)) {
        if (!value->empty()) return *value;
        return tl::unexpected(Problem{"option.value", option, "it is empty", "a file's name"});
    }
    return tl::unexpected(
        Problem{"option.needed", option, "it is not given", std::string(option) + " FILE"});
}

Done demo(const Arguments& arguments, std::ostream& out, std::ostream&) {
    const auto to = wanted(arguments, "--to");
    if (!to) return failed(to.error());
    const auto catalogue = catalogueOrProblems();
    if (!catalogue) return tl::unexpected(catalogue.error());
    const auto steps = demoSteps(*catalogue);
    if (!steps) return tl::unexpected(steps.error());
    return createAt(*to, *steps, out);
}

Done import(const Arguments& arguments, std::ostream& out, std::ostream&) {
    const auto to = wanted(arguments, "--to");
    if (!to) return failed(to.error());
    const auto catalogue = catalogueOrProblems();
    if (!catalogue) return tl::unexpected(catalogue.error());
    const auto steps = stepsFromOffsetsFile(arguments.operands[0], *catalogue);
    if (!steps) return tl::unexpected(steps.error());
    return createAt(*to, *steps, out);
}

/// Opens for reading, works everything out, prints.
template <typename Print>
Done show(const Arguments& arguments, std::ostream& out, std::ostream& err, Print print) {
    if (arguments.has("--json") && arguments.has("--csv"))
        return failed({"option.together", "--csv", "it stands beside --json", "one of the two"});
    const auto session = openSession(arguments.operands[0], OpenMode::readOnly);
    if (!session) return tl::unexpected(session.error());
    noteProblems(*session, err);
    const Result<std::string> text = print(*session);
    if (!text) return failed(text.error());
    return printed(*text, out);
}

Done hull(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    return show(arguments, out, err, [&](const Session& s) {
        return arguments.has("--json") ? hullJson(s) : hullText(s);
    });
}

Done margins(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    return show(arguments, out, err, [&](const Session& s) -> Result<std::string> {
        return arguments.has("--json")  ? marginsJson(s)
               : arguments.has("--csv") ? marginsCsv(s)
                                        : marginsText(s);
    });
}

Done holes(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    return show(arguments, out, err, [&](const Session& s) -> Result<std::string> {
        return arguments.has("--json")  ? holesJson(s)
               : arguments.has("--csv") ? holesCsv(s)
                                        : holesText(s);
    });
}

Done metal(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    return show(arguments, out, err, [&](const Session& s) -> Result<std::string> {
        return arguments.has("--json")  ? metalJson(s)
               : arguments.has("--csv") ? metalCsv(s)
                                        : metalText(s);
    });
}

Done joint(const Arguments& arguments, std::ostream& out, std::ostream&, const PdfWriter& pdf) {
    const auto catalogue = catalogueOrProblems();
    if (!catalogue) return tl::unexpected(catalogue.error());
    if (!arguments.has("--record") && arguments.has("--paper"))
        return failed({"option.together", "--paper", "there is nothing to print it on",
                       "--record FILE beside it"});
    if (arguments.has("--record") && arguments.has("--json"))
        return failed({"option.together", "--json", "it stands beside --record", "one of the two"});
    const auto file = readJointFile(arguments.operands[0], *catalogue);
    if (!file) return tl::unexpected(file.error());
    if (arguments.has("--record")) {
        const auto to = wanted(arguments, "--record");
        if (!to) return failed(to.error());
        const auto text = writeJointRecord(*file, arguments.operands[0],
                                           {*to, arguments.value("--paper").value_or(""), ""}, pdf);
        if (!text) return failed(text.error());
        return printed(*text, out);
    }
    const auto result = workJoint(file->joint);
    if (!result) return failed(result.error());
    const auto moisture = moistureRows(file->joint, file->zone);
    if (!moisture) return failed(moisture.error());
    return printed(arguments.has("--json") ? jointJson(*file, *result, *moisture)
                                           : jointText(*file, *result, *moisture),
                   out);
}

Done record(const Arguments& arguments, std::ostream& out, std::ostream& err,
            const PdfWriter& pdf) {
    if (arguments.has("--station") && arguments.has("--all"))
        return failed({"option.together", "--all", "it stands beside --station", "one of the two"});
    for (const char* option : {"--station", "--to"}) {
        if (!arguments.has(option)) continue;
        if (const auto given = wanted(arguments, option); !given) return failed(given.error());
    }
    return show(arguments, out, err, [&](const Session& s) {
        return writeRecord(
            s,
            {arguments.value("--to").value_or(""), arguments.value("--paper").value_or(""),
             arguments.value("--station").value_or("")},
            pdf);
    });
}

Done journal(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    return show(arguments, out, err, [&](const Session& s) -> Result<std::string> {
        return arguments.has("--json") ? journalJson(s) : journalText(s);
    });
}

StepBy byOf(const Arguments& arguments) {
    return {arguments.value("--who").value_or(personNow()), arguments.value("--why").value_or(""),
            timeNow()};
}

/// With --printed the project keeps which sheet went out with which code.
Done sheets(const Arguments& arguments, std::ostream& out, std::ostream& err,
            const PdfWriter& pdf) {
    const auto to = wanted(arguments, "--to");
    if (!to) return failed(to.error());
    const bool keep = arguments.has("--printed");
    const auto session =
        openSession(arguments.operands[0], keep ? OpenMode::readWrite : OpenMode::readOnly);
    if (!session) return tl::unexpected(session.error());
    if (keep && session->opened.file->isReadOnly())
        return failed({"file.read_only", arguments.operands[0], session->opened.says,
                       "a file that can be written"});
    noteProblems(*session, err);
    const auto written = writeSheets(
        *session,
        {*to, arguments.value("--paper").value_or(""), arguments.value("--frames").value_or("")},
        pdf);
    if (!written) return failed(written.error());
    if (keep) {
        std::vector<Journal::NewText> codes;
        for (const Sheet& sheet : written->sheets)
            codes.emplace_back(paperRecord(sheet.id), sheet.revision);
        const auto step = session->journal().prepareRecord(
            codes,
            std::to_string(codes.size()) + (codes.size() == 1 ? " sheet" : " sheets") +
                " put on paper",
            byOf(arguments));
        if (!step) return failed(step.error());
        if (const auto done = session->opened.file->append(*step); !done)
            return failed(done.error());
    }
    return printed(written->says, out);
}

/// Opens for editing, makes one step, writes it.
template <typename Prepare>
Done oneStep(const Arguments& arguments, std::ostream& out, std::ostream& err, Prepare prepare) {
    const auto session = openSession(arguments.operands[0], OpenMode::readWrite);
    if (!session) return tl::unexpected(session.error());
    if (session->opened.file->isReadOnly()) {
        return failed({"file.read_only", arguments.operands[0], session->opened.says,
                       "a file that can be written"});
    }
    const Result<Step> step = prepare(*session);
    if (!step) {
        if (step.error().code != "nothing") return failed(step.error());
        err << "fayline: note: " << step.error().line() << "\n";
        return {};
    }
    if (const auto written = session->opened.file->append(*step); !written)
        return failed(written.error());
    out << "step " << step->number << ": " << step->title << "\n";
    return {};
}

Done decide(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    std::vector<std::pair<std::string, std::string>> typed;
    for (std::size_t i = 1; i < arguments.operands.size(); ++i) {
        const std::string& word = arguments.operands[i];
        const auto equals = word.find('=');
        if (equals == std::string::npos || equals == 0)
            return failed({"decide.form", word, "it decides nothing",
                           "WHAT=VALUE, like \"K.5.diameter=5/8 in\""});
        typed.emplace_back(trimmed(std::string_view(word).substr(0, equals)),
                           word.substr(equals + 1));
    }
    return oneStep(arguments, out, err, [&](const Session& s) {
        return prepareDecisions(s.journal(), s.project, *s.catalogue, typed, byOf(arguments));
    });
}

Done undo(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    return oneStep(arguments, out, err,
                   [&](const Session& s) { return s.journal().prepareUndo(byOf(arguments)); });
}

Done redo(const Arguments& arguments, std::ostream& out, std::ostream& err) {
    return oneStep(arguments, out, err,
                   [&](const Session& s) { return s.journal().prepareRedo(byOf(arguments)); });
}

Done verify(const Arguments& arguments, std::ostream& out, std::ostream&) {
    const auto verified = ProjectFile::verify(arguments.operands[0]);
    if (!verified) return failed(verified.error());
    using enum FileOutcome;
    const FileOutcome outcome = verified->outcome;
    if (outcome != missing) {
        auto done = printed(arguments.has("--json") ? verifyJson(*verified)
                                                    : verifyText(arguments.operands[0], *verified),
                            out);
        const bool sound =
            outcome == ok || outcome == migrated || outcome == inUse || outcome == readOnly;
        if (!done || sound) return done;
    }
    return failed({"file." + std::string(fileOutcomeName(outcome)), arguments.operands[0],
                   verified->says,
                   outcome == missing ? "the name of a project that is there"
                   : outcome == newer ? "the version of this program that wrote it, or a later one"
                   : outcome == damaged ? "a copy that is whole"
                                        : "a .fayline file made by this program"});
}

/// A command that prints no sheets.
template <typename Run>
auto quiet(Run run) {
    return [run](const Arguments& arguments, std::ostream& out, std::ostream& err,
                 const PdfWriter&) { return run(arguments, out, err); };
}

}  // namespace

const std::vector<Command>& commands() {
    static const OptionSpec to{"--to", true, "the project file to make"};
    static const OptionSpec json{"--json", false, "as JSON"};
    static const OptionSpec csv{"--csv", false, "as comma separated text"};
    static const OptionSpec who{"--who", true, "who decides; not given: the user's name"};
    static const OptionSpec why{"--why", true, "the reason, kept in the journal"};
    static const std::vector<Command> all{
        {{"demo", "--to FILE", 0, 0, {to}, "make the demo hull's project file"}, quiet(demo)},
        {{"import",
          "OFFSETS.csv --to FILE",
          1,
          1,
          {to},
          "make a project file from a table of offsets"},
         quiet(import)},
        {{"hull", "FILE", 1, 1, {json}, "the hull afloat: displacement, centre, sections"},
         quiet(hull)},
        {{"margins", "FILE", 1, 1, {json, csv}, "loads, equilibrium and every margin, worst first"},
         quiet(margins)},
        {{"holes", "FILE", 1, 1, {json, csv}, "where each hole is, and what is wrong with it"},
         quiet(holes)},
        {{"metal", "FILE", 1, 1, {json, csv}, "what to order: counts, spares, lengths, weight"},
         quiet(metal)},
        {{"sheets",
          "FILE --to DIR",
          1,
          1,
          {{"--to", true, "the folder to write to"},
           {"--paper", true, "a4 or letter; not given: a4"},
           {"--frames", true, "only these frames and their floors, like 8-10"},
           {"--printed", false, "keep that these sheets went out with these codes"},
           who,
           why},
          "print the drilling sheets, one PDF each, and sheets.csv that lists them"},
         sheets},
        {{"record",
          "FILE [--to OUT.pdf]",
          1,
          1,
          {{"--station", true, "only this frame and what stands at it, like F8"},
           {"--all", false, "the whole hull; so it is when no station is named"},
           {"--to", true, "the .pdf or .txt to write; not given: text to standard output"},
           {"--paper", true, "a4 or letter; not given: a4"}},
          "the calculation record: every working, to be checked by hand"},
         record},
        {{"joint",
          "FILE",
          1,
          1,
          {json,
           {"--record", true, "the .pdf or .txt to write the calculation record to"},
           {"--paper", true, "a4 or letter; not given: a4"}},
          "one joint, from a JSON file: every way it can let go"},
         joint},
        {{"decide",
          "FILE WHAT=VALUE…",
          2,
          10000,
          {who, why},
          "make one step of decisions; an empty VALUE goes back to the rule"},
         quiet(decide)},
        {{"undo", "FILE", 1, 1, {who, why}, "take the last decision back"}, quiet(undo)},
        {{"redo", "FILE", 1, 1, {who, why}, "bring the decision taken back into force again"},
         quiet(redo)},
        {{"journal", "FILE", 1, 1, {json}, "every step: what, who, when, why"}, quiet(journal)},
        {{"verify", "FILE", 1, 1, {json}, "check a project file whole"}, quiet(verify)},
    };
    return all;
}

}  // namespace fayline::cli
