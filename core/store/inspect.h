#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>

#include "connection.h"
#include "file_lock.h"
#include "rows.h"
#include "store/project_file.h"

namespace fayline::store {

enum class PageCheck { smallFiles, always };

/// A file looked at from all sides. The connection is there only if the file may be handed out.
struct Inspection {
    FileOutcome outcome = FileOutcome::ok;
    std::string what;     ///< for outcomes other than ok: why
    std::string allowed;  ///< what to do
    Rows rows;
    std::unique_ptr<Connection> connection;
    std::optional<FileLock> lock;  ///< held while the file is open for editing
};

/// The order is: name, lock, first bytes, right to write, hardened opening, tables, rows, pages.
Result<Inspection> inspect(const std::filesystem::path& path, OpenMode mode, PageCheck pages);

/// Whether SQLite's journal, which takes the name and "-journal", could not be made beside it.
bool nameTooLong(const std::filesystem::path& path);
/// A problem if SQLite cannot take a path of this length.
Result<void> pathFits(const std::filesystem::path& path, const std::string& consequence);
/// Whether an outcome comes with an open file.
bool isUsable(FileOutcome outcome);
/// A refusal as a problem.
Problem refusal(const Inspection& inspection, const std::filesystem::path& path);

}  // namespace fayline::store
