#pragma once

#include <functional>
#include <string>
#include <vector>

#include "session.h"
#include "sheet/paper.h"

namespace fayline::cli {

/// What `fayline sheets` is asked for.
struct SheetsWish {
    std::string folder;
    std::string paper;   ///< "a4", "letter"
    std::string frames;  ///< "8-10", "F8", "8,12-14"; empty: the whole hull
};

/// Writes one sheet to a path, whole or not at all. The window's painter does it; a program without
/// one has none.
using PdfWriter = std::function<Result<void>(const std::string& path, const Sheet& sheet)>;

/// What was written.
struct SheetsWritten {
    std::string says;
    std::vector<Sheet> sheets;
};

/// Writes one PDF for each sheet and sheets.csv, which lists their pages; each file whole or not at
/// all. Says what was written, and which sheets printed before bear a code they
/// no longer have. Refused: a paper or frame that does not exist, a folder that cannot
/// be made or written to.
Result<SheetsWritten> writeSheets(const Session& session, const SheetsWish& wish,
                                  const PdfWriter& write);

/// The frames a text names: "8-10" means F8, F9, F10 and any lettered between. Codes: option.value.
Result<std::vector<std::string>> framesNamed(const Project& project, const std::string& text);

}  // namespace fayline::cli
