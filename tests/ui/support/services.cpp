#include "services.h"

#include <QFile>
#include <stdexcept>

#include "new_project.h"
#include "record_files.h"
#include "session.h"
#include "store/project_file.h"

namespace fayline::test {

std::shared_ptr<const Catalogue> catalogue() {
    static const auto known = [] {
        auto read = cli::builtInCatalogue();
        if (!read) throw std::runtime_error(read.error().front().line());
        return std::make_shared<const Catalogue>(std::move(*read));
    }();
    return known;
}

namespace {

/// The demo hull with nothing decided but what hangs her ballast.
ResultAll<std::vector<Step>> ballastHullSteps() {
    const auto textOf = [](const char* name) {
        QFile file(QStringLiteral(FAYLINE_SOURCE_DIR) + QString::fromLatin1(name));
        if (!file.open(QIODevice::ReadOnly)) throw std::runtime_error(name);
        return file.readAll().toStdString();
    };
    auto steps = cli::stepsFromOffsets(textOf("/resources/demo/hollin-offsets.csv"),
                                       "hollin-offsets.csv", *catalogue());
    if (!steps) return steps;
    return cli::stepsFromDecisions(std::move(*steps),
                                   textOf("/tests/hulls/hollin-ballast.decisions"),
                                   "hollin-ballast.decisions", *catalogue());
}

}  // namespace

DeskSetup deskSetup() {
    return {catalogue(), "fayline test", "the builder",
            [] { return std::string("2026-11-25T10:42:07Z"); }};
}

WindowServices services() {
    const DeskSetup setup = deskSetup();
    WindowServices given;
    given.catalogue = setup.catalogue;
    given.program = setup.program;
    given.who = setup.who;
    given.now = setup.now;
    given.blank = [] { return ResultAll<std::vector<Step>>(std::vector<Step>{}); };
    given.fromOffsets = [](const std::filesystem::path& path) {
        return cli::stepsFromOffsetsFile(path, *catalogue());
    };
    given.demo = ballastHullSteps;
    given.readJoint = [](const std::string& text,
                         const std::string& name) -> ResultAll<NamedJoint> {
        const auto read = cli::readJointText(text, name, *catalogue());
        if (!read) return tl::unexpected(read.error());
        return cli::namedJoint(*read);
    };
    return given;
}

DemoFile::DemoFile() {
    const auto steps = ballastHullSteps();
    if (!steps) throw std::runtime_error(steps.error().front().line());
    const auto made = ProjectFile::create(path().toStdString(), *steps, "fayline test");
    if (!made) throw std::runtime_error(made.error().line());
}

Typed everyGroup() {
    Typed typed{{"planking.wood", "white_oak"},
                {"planking.thickness", "1 1/8 in"},
                {"planking.strakes", "14"},
                {"frames.heel_detail", "socketed"},
                {"butt.kind", "wood_screw"},
                {"butt.count", "4"},
                {"butt.gauge", "14"},
                {"butt.length", "2 1/2 in"},
                {"B.stem_to_keel.kind", "bolt"},
                {"B.stem_to_keel.count", "3"},
                {"B.stem_to_keel.diameter", "5/8 in"},
                {"B.stem_to_keel.metal", "c65500_h02"},
                {"B.stem_to_keel.fore_x", "2400 mm"},
                {"B.stem_to_keel.fore_height", "900 mm"},
                {"B.stem_to_keel.aft_x", "3200 mm"},
                {"B.stem_to_keel.aft_height", "860 mm"}};
    const auto screws = [&](const std::string& group, const char* count, const char* gauge,
                            const char* length) {
        typed.emplace_back(group + ".kind", "wood_screw");
        typed.emplace_back(group + ".count", count);
        typed.emplace_back(group + ".gauge", gauge);
        typed.emplace_back(group + ".length", length);
        typed.emplace_back(group + ".metal", "c65500_h02");
    };
    screws("heel", "2", "No. 14", "3 in");
    screws("plank", "2", "No. 12", "2 1/4 in");
    screws("hood", "4", "No. 12", "2 1/4 in");
    screws("garboard", "9", "No. 12", "2 1/4 in");
    typed.insert(typed.end(), {{"arm.kind", "bolt"},
                               {"arm.count", "3"},
                               {"arm.diameter", "3/8 in"},
                               {"arm.metal", "c65500_h02"},
                               {"floor_bolt.kind", "drift"},
                               {"floor_bolt.count", "2"},
                               {"floor_bolt.diameter", "1/2 in"},
                               {"floor_bolt.length", "10 in"},
                               {"floor_bolt.metal", "c65500_h02"}});
    return typed;
}

void decideFastenings(const QString& path) {
    Desk desk(deskSetup());
    if (const auto opened = desk.open(path); !opened)
        throw std::runtime_error(opened.error().line());
    if (const auto done = desk.decide(everyGroup()); !done)
        throw std::runtime_error(done.error().line());
    desk.close();
}

QString decided(const Desk& desk, const char* what) {
    const auto found = desk.journal().decided().find(what);
    return found == desk.journal().decided().end() ? QString()
                                                   : QString::fromStdString(found->second);
}

}  // namespace fayline::test
