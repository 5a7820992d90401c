#pragma once

#include <string>
#include <variant>
#include <vector>

#include "sheet/drawing.h"
#include "sheet/paper.h"

namespace fayline {

/// A calculation record as texts: what somebody who can reckon needs to do it all again by hand.
/// Nothing in it is looked up or worked out any more.
namespace record {

/// A heading of level 1 or 2; both stand in the table of contents.
struct Heading {
    int level = 1;
    std::string text;
    bool operator==(const Heading&) const = default;
};

/// A paragraph behind a bold label; either may be empty.
struct Paragraph {
    std::string label, text;
    bool heavy = false;  ///< printed so that it is not passed over
    bool operator==(const Paragraph&) const = default;
};

struct Table {
    std::vector<std::string> heads;
    std::vector<std::vector<std::string>> rows;  ///< as many cells each as there are heads
    std::vector<bool> heavy;                     ///< by row; may be shorter: the rest are not
    bool operator==(const Table&) const = default;
};

/// One figure put in, or worked out on the way.
struct Figure {
    std::string symbol;
    std::string value, other;  ///< in the record's units, and in the other system where it differs
    std::string meaning, source, standing;
    bool operator==(const Figure&) const = default;
};

/// One limit state under one basis: formula, figures, result.
struct Working {
    std::string title, formula, clause, standing;
    std::string result;  ///< "can carry 88.2 lb (392 N)"
    std::vector<Figure> figures;
    std::vector<std::string> notes, outside;
    bool operator==(const Working&) const = default;
};

/// A drawing in millimetres of paper, no wider than the text.
struct Picture {
    Drawing drawing;
    std::string says;  ///< in its place where there is only text
    bool operator==(const Picture&) const = default;
};

using Block = std::variant<Heading, Paragraph, Table, Working, Picture>;

}  // namespace record

struct Record {
    std::string id;                      ///< "joint", "F17", "hull"
    std::string title;                   ///< "Calculation record: station F17"
    std::string fileName;                ///< "record-F17.pdf"
    std::string subject;                 ///< boat, or the joint's file
    std::string caution;                 ///< at the foot of every page
    std::string printed, program;        ///< no part of the revision code
    std::vector<record::Block> opening;  ///< on the first page, before the contents
    std::vector<record::Block> blocks;
    bool contents = false;  ///< a table of contents before the blocks
    bool operator==(const Record&) const = default;
};

/// Width of text and pictures on either paper, in millimetres.
inline constexpr double recordWidth_mm = 174.0;

/// The revision code: a hash of all that the record says except when and by which program it was
/// printed.
std::string revisionOf(const Record& record);

/// The pages: title, revision code and caution on each, and "page 2 of 9".
Sheet layOut(const Record& record, PaperSize paper);

/// The same as plain text, lines of at most 100 letters where words allow it.
std::string textOf(const Record& record);

}  // namespace fayline
