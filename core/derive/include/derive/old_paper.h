#pragma once

#include <map>
#include <string>
#include <vector>

namespace fayline {

/// A sheet put on paper that says something else now.
struct OldPaper {
    std::string sheet;    ///< its id: "F8", "keel"
    std::string onPaper;  ///< the revision code it was put on paper under
    std::string now;      ///< the code it has; empty: there is no such sheet any more
    bool operator==(const OldPaper&) const = default;
};

/// The name under which a journal records that a sheet was put on paper; the text beside it is the
/// revision code: "sheet.F8.paper".
std::string paperRecord(const std::string& sheet);

/// The code a sheet was last put on paper under; empty when it never was.
std::string codeOnPaper(const std::map<std::string, std::string>& recorded,
                        const std::string& sheet);

/// Sheets on paper whose code is another now, in the order of their ids. `recorded`: of a journal;
/// `codes`: by id, of every sheet there is.
std::vector<OldPaper> oldPaper(const std::map<std::string, std::string>& recorded,
                               const std::map<std::string, std::string>& codes);

}  // namespace fayline
