#include "store/project_file.h"

#include <array>
#include <utility>

#include "inspect.h"
#include "parts.h"
#include "problems.h"
#include "rows.h"

namespace fayline {
namespace {

constexpr std::array outcomeNames = {
    std::pair{FileOutcome::ok, std::string_view("ok")},
    std::pair{FileOutcome::migrated, std::string_view("migrated")},
    std::pair{FileOutcome::newer, std::string_view("newer")},
    std::pair{FileOutcome::notOurs, std::string_view("not_ours")},
    std::pair{FileOutcome::damaged, std::string_view("damaged")},
    std::pair{FileOutcome::inUse, std::string_view("in_use")},
    std::pair{FileOutcome::readOnly, std::string_view("read_only")},
    std::pair{FileOutcome::missing, std::string_view("missing")},
};

/// What is safe when a step could not be written.
std::string stepNotWritten(const Step& step) {
    std::string says = "step " + std::to_string(step.number) + " is not in the file";
    if (step.number > 1)
        says += "; the steps before it, 1 to " + std::to_string(step.number - 1) + ", are safe";
    return says;
}

/// A link is followed once, so that the file, its journal and its lock stay together.
std::filesystem::path settledPath(const std::filesystem::path& path) {
    std::error_code error;
    auto real = std::filesystem::canonical(path, error);
    return error ? std::filesystem::absolute(path) : real;
}

/// A program killed before its journal counted for anything leaves it behind; SQLite clears it away
/// with the next change, so one is made that changes nothing.
void clearJournalLeftBehind(store::Connection& connection, const std::filesystem::path& path) {
    std::error_code error;
    if (!std::filesystem::exists(path.string() + "-journal", error)) return;
    // Setting a value to what it is would not do: SQLite then writes nothing.
    if (connection.run("BEGIN IMMEDIATE") &&
        connection.run("INSERT INTO snapshot(step, decisions, state) VALUES(-1, 0, '')") &&
        connection.run("DELETE FROM snapshot WHERE step = -1"))
        static_cast<void>(connection.run("COMMIT"));
    connection.rollBack();
}

}  // namespace

std::string_view fileOutcomeName(FileOutcome outcome) {
    for (const auto& [known, name] : outcomeNames)
        if (known == outcome) return name;
    return {};
}

ProjectFile::ProjectFile(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}
ProjectFile::~ProjectFile() = default;

const Journal& ProjectFile::journal() const {
    return parts_->journal;
}
const std::filesystem::path& ProjectFile::path() const {
    return parts_->path;
}
bool ProjectFile::isReadOnly() const {
    return parts_->readOnly;
}
const std::map<std::string, std::string>& ProjectFile::facts() const {
    return parts_->facts;
}

Result<OpenResult> ProjectFile::open(const std::filesystem::path& path, OpenMode mode) {
    const auto real = settledPath(path);
    auto inspection = store::inspect(real, mode, store::PageCheck::smallFiles);
    if (!inspection) return tl::unexpected(inspection.error());
    if (!store::isUsable(inspection->outcome))
        return tl::unexpected(store::refusal(*inspection, real));
    auto parts = std::make_unique<Parts>();
    parts->path = real;
    parts->readOnly = mode == OpenMode::readOnly || inspection->outcome != FileOutcome::ok;
    parts->lock = std::move(inspection->lock);
    parts->connection = std::move(inspection->connection);
    parts->journal = std::move(inspection->rows.journal);
    parts->facts = std::move(inspection->rows.facts);
    parts->seal = std::move(inspection->rows.seal);
    // What was kept to be compared is worth nothing once it differs; the steps are the truth.
    if (inspection->rows.badSnapshot && !parts->readOnly &&
        parts->connection->run("DELETE FROM snapshot"))
        inspection->what += "; the checks kept have been cleared";
    if (!parts->readOnly) clearJournalLeftBehind(*parts->connection, real);
    OpenResult result;
    result.outcome = inspection->outcome;
    result.says = std::move(inspection->what);
    result.file.reset(new ProjectFile(std::move(parts)));
    return result;
}

Result<VerifyResult> ProjectFile::verify(const std::filesystem::path& path) {
    const auto real = settledPath(path);
    auto inspection = store::inspect(real, OpenMode::readOnly, store::PageCheck::always);
    if (!inspection) return tl::unexpected(inspection.error());
    return VerifyResult{inspection->outcome, inspection->rows.journal.tip(),
                        inspection->rows.firstBadStep, inspection->what};
}

Result<std::vector<Step>> ProjectFile::readableSteps(const std::filesystem::path& path) {
    const auto real = settledPath(path);
    auto inspection = store::inspect(real, OpenMode::readOnly, store::PageCheck::smallFiles);
    if (!inspection) return tl::unexpected(inspection.error());
    if (!store::isUsable(inspection->outcome) && inspection->outcome != FileOutcome::damaged)
        return tl::unexpected(store::refusal(*inspection, real));
    return inspection->rows.journal.steps();
}

Result<void> ProjectFile::append(const Step& step) {
    Parts& parts = *parts_;
    const std::string consequence = stepNotWritten(step);
    if (parts.readOnly)
        return tl::unexpected(Problem{"file.read_only", parts.path.string(),
                                      "the project is open for reading only, so " + consequence,
                                      "open it for editing"});
    if (auto fit = parts.journal.fits(step); !fit) return fit;
    store::Connection& connection = *parts.connection;
    if (connection.hasMoved()) return tl::unexpected(store::movedProblem(parts.path, consequence));
    connection.forgetPages();
    const auto failed = [&](const store::SqlFailure& failure) {
        connection.rollBack();
        return tl::unexpected(store::problemOf(failure, parts.path, consequence));
    };

    if (auto begun = connection.run("BEGIN IMMEDIATE"); !begun) return failed(begun.error());
    const auto head = store::readHead(connection);
    if (!head) return failed(head.error());
    const store::Head before{parts.journal.tip(), parts.journal.tipHash(), parts.seal};
    const store::Head after{step.number, step.hash, parts.seal};
    if (*head == after) {
        connection.rollBack();
        return parts.journal.append(step);
    }
    if (*head != before) {
        connection.rollBack();
        return tl::unexpected(store::changedOutsideProblem(parts.path, consequence));
    }
    if (auto kept = store::writeSnapshotIfDue(connection, parts.journal); !kept)
        return failed(kept.error());
    if (auto written = store::writeStep(connection, step); !written) return failed(written.error());
    if (auto moved = store::writeHead(connection, after); !moved) return failed(moved.error());
    if (auto committed = connection.run("COMMIT"); !committed) return failed(committed.error());
    return parts.journal.append(step);
}

}  // namespace fayline
