#include <QCoreApplication>
#include <csignal>
#include <filesystem>
#include <iostream>

#include "cli.h"
#include "new_project.h"
#include "record_files.h"
#include "session.h"

#ifdef FAYLINE_HAS_WINDOW
#include <QApplication>

#include "paper/paper.h"
#include "window/run.h"
#endif

namespace {

using namespace fayline;

#ifdef FAYLINE_HAS_WINDOW

Result<void> toPdf(const std::string& path, const Sheet& sheet) {
    return writePdf(QString::fromStdString(path), sheet);
}

/// Qt's remarks on the machine around it (no runtime folder, no display) are none of the reader's.
void quiet(QtMsgType type, const QMessageLogContext&, const QString& message) {
    if (type == QtCriticalMsg || type == QtFatalMsg) std::cerr << message.toStdString() << "\n";
}

bool hasDisplay() {
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

int openWindow(int argc, char** argv, const std::vector<std::string>& words) {
    if (!hasDisplay()) {
        std::cerr << "fayline: display: there is none for the window; give a command instead, see "
                     "fayline --help\n";
        return 1;
    }
    QApplication application(argc, argv);
    auto catalogue = cli::builtInCatalogue();
    if (!catalogue) {
        for (const Problem& problem : catalogue.error())
            std::cerr << "fayline: " << problem.line() << "\n";
        return 1;
    }
    WindowServices services;
    services.catalogue = std::make_shared<const Catalogue>(std::move(*catalogue));
    services.program = cli::programName();
    services.who = cli::personNow();
    services.now = cli::timeNow;
    services.blank = [] { return ResultAll<std::vector<Step>>(std::vector<Step>{}); };
    services.fromOffsets = [known = services.catalogue](const std::filesystem::path& path) {
        return cli::stepsFromOffsetsFile(path, *known);
    };
    services.demo = [known = services.catalogue] { return cli::demoSteps(*known); };
    services.readJoint = [known = services.catalogue](
                             const std::string& text,
                             const std::string& name) -> ResultAll<NamedJoint> {
        const auto read = cli::readJointText(text, name, *known);
        if (!read) return tl::unexpected(read.error());
        return cli::namedJoint(*read);
    };
    const auto file =
        words.empty() ? std::nullopt : std::optional(QString::fromStdString(words.front()));
    return runWindow(application, file, std::move(services));
}

#else

int openWindow(int, char**, const std::vector<std::string>&) {
    std::cerr << "fayline: window: this build has none; give a command, see fayline --help\n";
    return 1;
}

#endif

/// A word that is neither a command nor a file is a mistyped command.
bool namesAFile(const std::string& word) {
    std::error_code error;
    return std::filesystem::exists(word, error) ||
           std::filesystem::path(word).extension() == ".fayline";
}

}  // namespace

int main(int argc, char** argv) {
    // A file as long as the system allows is a failed write, told in a sentence, not a sudden end.
    std::signal(SIGXFSZ, SIG_IGN);
    const std::vector<std::string> words(argv + 1, argv + argc);
    if (cli::isCommandLine(words) || words.size() > 1 ||
        (words.size() == 1 && !namesAFile(words.front()))) {
#ifdef FAYLINE_HAS_WINDOW
        // Sheets and records are painted, with fonts but without a display.
        if (!words.empty() &&
            (words.front() == "sheets" || words.front() == "record" || words.front() == "joint")) {
            qputenv("QT_QPA_PLATFORM", "offscreen");
            qInstallMessageHandler(quiet);
            const QGuiApplication application(argc, argv);
            return cli::runCommandLine(words, std::cout, std::cerr, toPdf);
        }
#endif
        const QCoreApplication application(argc, argv);
        return cli::runCommandLine(words, std::cout, std::cerr);
    }
    return openWindow(argc, argv, words);
}
