#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "catalogue/catalogue.h"
#include "derive/derive.h"
#include "project/fields.h"
#include "store/project_file.h"

namespace fayline::cli {

/// "fayline 0.1.0": written into files and results.
std::string programName();

/// Text of a file built into the program; a missing one is our own fault and ends the program.
std::string builtInText(const std::string& path);

/// The catalogues built into the program.
ResultAll<Catalogue> builtInCatalogue();

/// One project as a command sees it.
struct Session {
    OpenResult opened;
    Project project;
    Problems problems;  ///< decisions that no longer read
    std::shared_ptr<const Catalogue> catalogue;
    std::shared_ptr<const Results> results;

    [[nodiscard]] const Journal& journal() const { return opened.file->journal(); }
    [[nodiscard]] std::string name() const;  ///< the boat's, else the file's
};

/// Folds a journal into a project value.
Folded foldJournal(const Journal& journal);

/// Opens a project and works everything out.
ResultAll<Session> openSession(const std::filesystem::path& path, OpenMode mode);

/// UTC now, ISO 8601.
std::string timeNow();
/// Who is at the keyboard, as the system knows them.
std::string personNow();

}  // namespace fayline::cli
