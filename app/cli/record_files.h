#pragma once

#include <string>

#include "derive/record.h"
#include "joint_file.h"
#include "session.h"
#include "sheets_files.h"

namespace fayline::cli {

/// What is asked of a calculation record.
struct RecordWish {
    std::string to;       ///< a PDF or a text by its ending; empty: the text itself is wanted
    std::string paper;    ///< "a4", "letter"; empty: a4
    std::string station;  ///< "F17"; empty: the whole hull
};

/// A joint file's joint with its names.
NamedJoint namedJoint(const JointFile& file);

/// Writes the record of one joint, station or hull, whole or not at all, and says so; without a
/// place to write to, its text. Refused: an ending other than .pdf and .txt, a paper or frame that
/// does not exist, a place that cannot be written to.
Result<std::string> writeJointRecord(const JointFile& file, const std::string& name,
                                     const RecordWish& wish, const PdfWriter& write);
Result<std::string> writeRecord(const Session& session, const RecordWish& wish,
                                const PdfWriter& write);

}  // namespace fayline::cli
