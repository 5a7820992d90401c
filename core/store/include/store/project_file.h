#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "project/journal.h"
#include "quantity/result.h"

namespace fayline {

enum class OpenMode { readOnly, readWrite };

/// How opening a file ended. A file is handed out only with ok, migrated, inUse and readOnly.
enum class FileOutcome {
    ok,
    migrated,  ///< an older format was brought up to date
    newer,     ///< written in a format this program does not know
    notOurs,   ///< not a project of this program, or with parts this program did not write
    damaged,
    inUse,     ///< open for editing elsewhere; readable here
    readOnly,  ///< the file or its folder cannot be written; readable
    missing
};

/// "ok", "not_ours", "in_use" …: the word in JSON.
std::string_view fileOutcomeName(FileOutcome outcome);

struct OpenResult;

/// What is wrong with a file, or that nothing is.
struct VerifyResult {
    FileOutcome outcome = FileOutcome::ok;  ///< what opening for editing would give
    std::int64_t step = 0;                  ///< the last step that reads whole and in order
    std::optional<std::int64_t> firstBadStep;
    std::string says;  ///< in plain words; empty when there is nothing to say
};

/// One open `.fayline` file: an SQLite database holding the journal of one project.
///
/// Belongs to the thread that opened it (see StoreThread for a window). Problems have the codes
/// file.missing, file.not_ours, file.newer, file.damaged, file.read_only, file.full, file.moved,
/// file.changed_outside, file.locked, file.exists, file.memory, file.io, file.driver; each says
/// what happened, what is safe and what to do. The format is described in docs/file-format.md.
class ProjectFile {
  public:
    /// Opens a file that exists, and checks it whole: header, tables, every step of the chain, and
    /// (up to 20 MB) every page. Never makes a file. A file that is refused is left as it was. The
    /// one write that opening may do, also for reading, is to take back a step cut off half-way.
    static Result<OpenResult> open(const std::filesystem::path& path, OpenMode mode);

    /// Makes a new file from steps (a fold of which must succeed) and opens it for editing. Written
    /// aside, then renamed; an existing file is never replaced. `program` is kept in the file.
    static Result<OpenResult> create(const std::filesystem::path& path,
                                     const std::vector<Step>& firstSteps,
                                     const std::string& program);

    /// Checks a file whole, every page whatever its size. Safe while this or another program has
    /// the file open.
    static Result<VerifyResult> verify(const std::filesystem::path& path);

    /// The steps of a damaged file that still read whole and in order, from the first on; enough to
    /// create() a new file from. Nothing is written.
    static Result<std::vector<Step>> readableSteps(const std::filesystem::path& path);

    ProjectFile(const ProjectFile&) = delete;
    ProjectFile& operator=(const ProjectFile&) = delete;
    ~ProjectFile();

    [[nodiscard]] const Journal& journal() const;
    [[nodiscard]] const std::vector<Step>& steps() const { return journal().steps(); }
    [[nodiscard]] const std::filesystem::path& path() const;
    [[nodiscard]] bool isReadOnly() const;
    /// uuid, created, program.
    [[nodiscard]] const std::map<std::string, std::string>& facts() const;

    /// Writes the next step; once this returns without a problem the step survives a power cut. A
    /// step that is in the file already (after a commit whose answer was lost) is not a problem.
    Result<void> append(const Step& step);

    /// A whole copy under a new name, checked before it takes that name. Never replaces a file.
    /// Works while the file is moved or deleted; what was changed outside is not copied (create() a
    /// file from steps() then, as for steps that could not be written).
    [[nodiscard]] Result<void> copyTo(const std::filesystem::path& target) const;

  private:
    struct Parts;
    explicit ProjectFile(std::unique_ptr<Parts> parts);
    std::unique_ptr<Parts> parts_;
};

/// A file as it was opened.
struct OpenResult {
    FileOutcome outcome = FileOutcome::ok;
    std::string says;  ///< why it is read-only, or what was put right; empty when all is well
    std::unique_ptr<ProjectFile> file;
};

}  // namespace fayline
