#include "sheet/record.h"

#include "quantity/digest.h"

namespace fayline {
namespace {

struct Say {
    Digest& digest;

    void list(const std::vector<std::string>& texts) {
        digest.field(static_cast<std::int64_t>(texts.size()));
        for (const std::string& text : texts) digest.field(text);
    }
    void operator()(const record::Heading& heading) {
        digest.field("heading").field(std::int64_t{heading.level}).field(heading.text);
    }
    void operator()(const record::Paragraph& paragraph) {
        digest.field("paragraph").field(paragraph.label).field(paragraph.text);
    }
    void operator()(const record::Table& table) {
        digest.field("table");
        list(table.heads);
        digest.field(static_cast<std::int64_t>(table.rows.size()));
        for (const auto& row : table.rows) list(row);
    }
    void operator()(const record::Working& working) {
        digest.field("working").field(working.title).field(working.formula).field(working.clause);
        digest.field(working.standing).field(working.result);
        digest.field(static_cast<std::int64_t>(working.figures.size()));
        for (const record::Figure& f : working.figures)
            list({f.symbol, f.value, f.other, f.meaning, f.source, f.standing});
        list(working.notes);
        list(working.outside);
    }
    void operator()(const record::Picture& picture) { digest.field("picture").field(picture.says); }
};

}  // namespace

std::string revisionOf(const Record& record) {
    Digest digest;
    digest.field("fayline.record/1").field(record.id).field(record.title).field(record.subject);
    digest.field(record.caution);
    for (const auto* blocks : {&record.opening, &record.blocks}) {
        digest.field(static_cast<std::int64_t>(blocks->size()));
        for (const record::Block& block : *blocks) std::visit(Say{digest}, block);
    }
    return revisionCode(digest.hex());
}

}  // namespace fayline
