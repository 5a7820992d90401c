#include "session.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QFile>
#include <cstdlib>

#include "version.h"

namespace fayline::cli {

std::string programName() {
    return "fayline " FAYLINE_VERSION;
}

std::string builtInText(const std::string& path) {
    QFile file(QString::fromStdString(":/fayline/" + path));
    if (!file.open(QIODevice::ReadOnly)) qFatal("built-in file missing: %s", path.c_str());
    return file.readAll().toStdString();
}

ResultAll<Catalogue> builtInCatalogue() {
    CatalogueTexts texts;
    texts.woods = builtInText("catalogue/woods.csv");
    texts.metals = builtInText("catalogue/metals.csv");
    texts.threads = builtInText("catalogue/threads.csv");
    texts.rods = builtInText("catalogue/rods.csv");
    texts.nuts = builtInText("catalogue/nuts.csv");
    texts.washers = builtInText("catalogue/washers.csv");
    texts.rules = builtInText("catalogue/rules.csv");
    return readCatalogue(texts);
}

std::string Session::name() const {
    return project.hull.name.value_or(opened.file->path().stem().string());
}

Folded foldJournal(const Journal& journal) {
    const auto& decided = journal.decided();
    return foldDecisions({decided.begin(), decided.end()});
}

ResultAll<Session> openSession(const std::filesystem::path& path, OpenMode mode) {
    auto catalogue = builtInCatalogue();
    if (!catalogue) return tl::unexpected(catalogue.error());
    auto opened = ProjectFile::open(path, mode);
    if (!opened) return tl::unexpected(Problems{opened.error()});
    Session session;
    session.opened = std::move(*opened);
    session.catalogue = std::make_shared<const Catalogue>(std::move(*catalogue));
    Folded folded = foldJournal(session.journal());
    session.project = std::move(folded.project);
    session.problems = std::move(folded.problems);
    session.results = Deriver(session.catalogue).derive(session.project);
    return session;
}

std::string timeNow() {
    return QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toStdString();
}

std::string personNow() {
    for (const char* name : {"FAYLINE_WHO", "USER", "LOGNAME"}) {
        const char* value = std::getenv(name);
        if (value != nullptr && *value != '\0') return value;
    }
    return "builder";
}

}  // namespace fayline::cli
