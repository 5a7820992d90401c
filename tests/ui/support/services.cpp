#include "services.h"

#include <stdexcept>

#include "new_project.h"
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
    given.demo = [] { return cli::demoSteps(*catalogue()); };
    return given;
}

DemoFile::DemoFile() {
    const auto steps = cli::demoSteps(*catalogue());
    if (!steps) throw std::runtime_error(steps.error().front().line());
    const auto made = ProjectFile::create(path().toStdString(), *steps, "fayline test");
    if (!made) throw std::runtime_error(made.error().line());
}

QString decided(const Desk& desk, const char* what) {
    const auto found = desk.journal().decided().find(what);
    return found == desk.journal().decided().end() ? QString()
                                                   : QString::fromStdString(found->second);
}

}  // namespace fayline::test
