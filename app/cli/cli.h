#pragma once

#include <iosfwd>
#include <string>
#include <vector>

#include "sheets_files.h"

namespace fayline::cli {

/// Whether the words are for the command line (a command, --help, --version) rather than the
/// window.
bool isCommandLine(const std::vector<std::string>& words);

/// Runs one command. Results go to `out`, messages to `err`. Exit: 0 done, 1 refused or failed with
/// nothing written, 2 the command line was wrong. Sheets need a writer of PDF.
int runCommandLine(const std::vector<std::string>& words, std::ostream& out, std::ostream& err,
                   const PdfWriter& pdf = {});

}  // namespace fayline::cli
