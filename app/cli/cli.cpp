#include "cli.h"

#include <algorithm>
#include <new>
#include <ostream>

#include "commands.h"
#include "derive/results.h"
#include "quantity/text.h"
#include "session.h"

namespace fayline::cli {
namespace {

void printHelp(std::ostream& out) {
    out << "Fayline plans the fastenings of a plank-on-frame hull.\n\n"
           "  fayline [FILE]             open the window\n";
    for (const Command& command : commands()) {
        std::string usage = "  fayline " + command.spec.name + " " + command.spec.operands;
        for (const OptionSpec& option : command.spec.options) {
            if (option.name != "--to")
                usage += " [" + option.name + (option.takesValue ? " TEXT]" : "]");
        }
        out << usage << "\n        " << command.spec.summary << "\n";
    }
    out << "  fayline --help | --version\n\n"
           "Quantities carry their unit: \"1 1/2 in\", \"38 mm\", \"250 lb\". Ranges: "
           "F8-F10.floor.kind=sawn, K.2-K.4.diameter=\"5/8 in\".\n"
           "Exit: 0 done, 1 refused or failed with nothing written, 2 the command line was "
           "wrong.\n\n";
    for (const std::string& caution : standingCautions()) out << caution << "\n";
}

/// One problem, one line, whatever bytes a file's name has.
void print(const Problem& problem, std::ostream& err) {
    err << "fayline: " << quotable(problem.line(), 4000) << "\n";
}

int wrong(const Problem& problem, std::ostream& err) {
    print(problem, err);
    return 2;
}

/// Problems that are about the words typed, not about what they were asked to do.
bool aboutTheCommandLine(const Problems& problems) {
    return problems.size() == 1 && (problems.front().code.rfind("option.", 0) == 0 ||
                                    problems.front().code == "decide.form");
}

int run(const Command& command, const Arguments& arguments, std::ostream& out, std::ostream& err,
        const PdfWriter& pdf) {
    const auto done = command.run(arguments, out, err, pdf);
    if (done) return 0;
    for (const Problem& problem : done.error()) print(problem, err);
    return aboutTheCommandLine(done.error()) ? 2 : 1;
}

}  // namespace

bool isCommandLine(const std::vector<std::string>& words) {
    if (words.empty()) return false;
    if (words.front().substr(0, 2) == "--") return true;
    return std::any_of(commands().begin(), commands().end(),
                       [&](const Command& c) { return c.spec.name == words.front(); });
}

int runCommandLine(const std::vector<std::string>& words, std::ostream& out, std::ostream& err,
                   const PdfWriter& pdf) {
    const bool asksHelp = std::find(words.begin(), words.end(), "--help") != words.end();
    if (words.empty() || asksHelp) {
        printHelp(out);
        return 0;
    }
    if (words.front() == "--version") {
        if (words.size() > 1)
            return wrong({"operands", "--version", "something stands after it", "the option alone"},
                         err);
        out << programName() << "\n";
        return 0;
    }
    const auto command = std::find_if(commands().begin(), commands().end(), [&](const Command& c) {
        return c.spec.name == words.front();
    });
    if (command == commands().end()) {
        std::vector<std::string> names;
        for (const Command& c : commands()) names.push_back(c.spec.name);
        const auto near = didYouMean(words.front(), names);
        return wrong({"command.unknown", words.front(), "there is no such command",
                      near ? "did you mean " + *near + "?" : "see fayline --help"},
                     err);
    }
    const auto arguments = readArguments(command->spec, {words.begin() + 1, words.end()});
    if (!arguments) return wrong(arguments.error(), err);
    // Whatever is thrown is a fault of the program or a machine out of memory.
    try {
        return run(*command, *arguments, out, err, pdf);
    } catch (const std::bad_alloc&) {
        print({"memory", command->spec.name, "memory ran out", "a smaller file"}, err);
    } catch (const std::exception& fault) {
        print({"fault", command->spec.name,
               std::string("a fault of the program stopped it: ") + fault.what(),
               "nothing was written; please report it"},
              err);
    }
    return 1;
}

}  // namespace fayline::cli
