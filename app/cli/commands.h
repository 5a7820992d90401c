#pragma once

#include <functional>
#include <iosfwd>
#include <vector>

#include "arguments.h"
#include "sheets_files.h"

namespace fayline::cli {

struct Command {
    CommandSpec spec;
    /// Prints its result to `out`, notes to `err`; every problem when it failed.
    std::function<ResultAll<void>(const Arguments&, std::ostream& out, std::ostream& err,
                                  const PdfWriter& pdf)>
        run;
};

const std::vector<Command>& commands();

}  // namespace fayline::cli
