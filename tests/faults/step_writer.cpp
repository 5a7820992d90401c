// Opens a project and adds step upon step until it is killed. Prints "READY", then "ACK step hash"
// once the store says that a step is on the disk. With --ack-early it lies: it says so before the
// step is written.

#include <unistd.h>

#include <string>
#include <string_view>

#include "sample_steps.h"
#include "store/project_file.h"

namespace {

bool say(const std::string& line) {
    return ::write(STDOUT_FILENO, line.data(), line.size()) == static_cast<ssize_t>(line.size());
}

}  // namespace

int main(int argc, char** argv) {
    if (argc < 2) return 2;
    const bool early = argc > 2 && std::string_view(argv[2]) == "--ack-early";
    auto opened = fayline::ProjectFile::open(argv[1], fayline::OpenMode::readWrite);
    if (!opened || opened->outcome != fayline::FileOutcome::ok) return 3;
    if (!say("READY\n")) return 4;
    for (;;) {
        const fayline::Step step = fayline::test::nextStep(opened->file->journal());
        const std::string ack = "ACK " + std::to_string(step.number) + " " + step.hash + "\n";
        if (early && !say(ack)) return 4;
        if (!opened->file->append(step)) return 5;
        if (!early && !say(ack)) return 4;
    }
}
