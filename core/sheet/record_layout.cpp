// Blocks to pages: opening, contents, then the rest, each heading with the page it stands on.

#include <algorithm>

#include "record_flow.h"
#include "record_table.h"
#include "sheet/font_metrics.h"
#include "wrap.h"

namespace fayline {
namespace {

using record_page::letter;
using record_page::line;
using shape::Across;
using shape::Weight;

struct Entry {
    int level = 1;
    std::string text;
    int page = 0;
};

class Body {
  public:
    explicit Body(RecordFlow& flow) : flow_(flow) {}

    void operator()(const record::Heading& heading) {
        const bool first = heading.level == 1;
        // A heading stands with what it heads.
        flow_.need(first ? 45.0 : 32.0);
        const double size = first ? 3.5 : 2.8;
        if (!flow_.fresh()) flow_.down(first ? 4.5 : 3.2);
        entries_.push_back({heading.level, heading.text, flow_.page()});
        for (const std::string& one : wrapped(heading.text, size, Weight::bold, recordWidth_mm)) {
            flow_.down(size + 1.8);
            flow_.text({flow_.left(), flow_.y() - 0.8}, one, size, Weight::bold);
        }
        if (first) flow_.rule(flow_.y() + 0.4, 0.35, flow_.left(), flow_.right());
        flow_.down(1.6);
    }

    void operator()(const record::Paragraph& paragraph) {
        const Weight weight = paragraph.heavy ? Weight::bold : Weight::regular;
        lines(paragraph.label, paragraph.text, weight, 0.0);
        flow_.down(0.9);
    }

    void operator()(const record::Table& table) {
        put(flow_, FlowTable{table.heads, table.rows, table.heavy, {}, false});
        flow_.down(2.0);
    }

    void operator()(const record::Working& working) {
        FlowTable figures;
        figures.heads = {"", "figure", "or", "standing", "what it is, and where it is from"};
        figures.widths_mm = {19.0, 25.5, 25.5, 25.0, 69.4};
        for (const record::Figure& f : working.figures)
            figures.rows.push_back({f.symbol, f.value, f.other, f.standing,
                                    f.source.empty() ? f.meaning : f.meaning + "; " + f.source});
        flow_.need(4.0 * line + 6.0 + heightOf(figures, 3));
        if (!flow_.fresh()) flow_.down(2.4);
        lines({}, working.title, Weight::bold, 0.0);
        lines("Formula", working.formula, Weight::regular, 0.0);
        lines("Clause", working.clause + ", " + working.standing, Weight::regular, 0.0);
        flow_.down(0.6);
        put(flow_, figures);
        flow_.down(0.6);
        if (!working.result.empty()) lines("Result", working.result, Weight::bold, 0.0);
        for (const std::string& outside : working.outside)
            lines("Outside the range", outside, Weight::bold, 0.0);
        for (const std::string& note : working.notes) lines("Note", note, Weight::regular, 0.0);
        flow_.down(1.4);
    }

    void operator()(const record::Picture& picture) {
        const SizeMm size = picture.drawing.size;
        flow_.need(size.height + 2.0);
        for (const DrawItem& item : picture.drawing.items) {
            DrawItem moved = item;
            std::visit(Move{flow_.left(), flow_.y()}, moved.shape);
            flow_.add(moved.role, std::move(moved.shape));
        }
        flow_.down(size.height + 2.0);
    }

    [[nodiscard]] const std::vector<Entry>& entries() const { return entries_; }

  private:
    struct Move {
        double x, y;
        void at(PointMm& p) const {
            p.x += x;
            p.y += y;
        }
        void all(std::vector<PointMm>& points) const {
            for (PointMm& p : points) at(p);
        }
        void operator()(shape::Line& s) const {
            at(s.from);
            at(s.to);
        }
        void operator()(shape::Polyline& s) const { all(s.points); }
        void operator()(shape::Polygon& s) const { all(s.points); }
        void operator()(shape::Hatch& s) const { all(s.points); }
        void operator()(shape::Text& s) const { at(s.anchor); }
        void operator()(shape::Mark& s) const { at(s.at); }
        void operator()(shape::Dimension& s) const {
            at(s.from);
            at(s.to);
        }
    };

    void lines(const std::string& label, const std::string& text, Weight weight, double indent) {
        const double taken = label.empty() ? 0.0 : widthMm(label, letter, Weight::bold) + 2.0;
        auto all = wrapped(text, letter, weight, recordWidth_mm - indent - taken);
        if (all.size() > 1 && taken > 0.0) {
            const std::string rest = text.substr(std::min(text.size(), all.front().size() + 1));
            const auto behind = wrapped(rest, letter, weight, recordWidth_mm - indent);
            all.resize(1);
            all.insert(all.end(), behind.begin(), behind.end());
        }
        bool first = true;
        for (const std::string& one : all) {
            flow_.need(line);
            flow_.down(line);
            const double base = flow_.y() - 1.1;
            if (first && !label.empty())
                flow_.text({flow_.left() + indent, base}, label, letter, Weight::bold);
            flow_.text({flow_.left() + indent + (first ? taken : 0.0), base}, one, letter, weight);
            first = false;
        }
    }

    RecordFlow& flow_;
    std::vector<Entry> entries_;
};

/// One line for each heading: text, dots, page.
void putContents(RecordFlow& flow, const std::vector<Entry>& entries) {
    flow.down(8.0);
    flow.text({flow.left(), flow.y() - 1.2}, "Contents", 3.5, Weight::bold);
    flow.rule(flow.y() + 0.2, 0.35, flow.left(), flow.right());
    flow.down(1.5);
    constexpr double numberRoom_mm = 9.0;
    for (const Entry& entry : entries) {
        const bool first = entry.level == 1;
        const Weight weight = first ? Weight::bold : Weight::regular;
        flow.need(line + (first ? 1.0 : 0.0));
        flow.down(line + (first && !flow.fresh() ? 1.0 : 0.0));
        const double from = flow.left() + (first ? 0.0 : 5.0), base = flow.y() - 1.1;
        shape::Text words;
        words.text = entry.text;
        words.letterMm = letter;
        words.weight = weight;
        const std::string shown = elided(words, {flow.right() - numberRoom_mm - from, letter});
        flow.text({from, base}, shown, letter, weight);
        flow.text({flow.right(), base}, std::to_string(entry.page), letter, weight, Across::right);
        const double dots = from + widthMm(shown, letter, weight) + 2.0;
        if (dots < flow.right() - numberRoom_mm)
            flow.add(Role::label, shape::Line{{dots, base},
                                              {flow.right() - numberRoom_mm + 2.0, base},
                                              {0.2, LineStyle::dotted}});
    }
}

std::vector<SheetPage> front(const Record& record, const std::string& revision, PaperSize paper,
                             const std::vector<Entry>& entries) {
    RecordFlow flow(record, revision, paper, 1);
    flow.startPage();
    Body opening(flow);
    for (const record::Block& block : record.opening) std::visit(opening, block);
    if (record.contents) putContents(flow, entries);
    return flow.take();
}

std::vector<Entry> namesOf(const Record& record) {
    std::vector<Entry> entries;
    for (const record::Block& block : record.blocks) {
        if (const auto* heading = std::get_if<record::Heading>(&block))
            entries.push_back({heading->level, heading->text, 0});
    }
    return entries;
}

}  // namespace

Sheet layOut(const Record& record, PaperSize paper) {
    Sheet sheet;
    sheet.id = record.id;
    sheet.kind = SheetKind::record;
    sheet.title = record.title;
    sheet.fileName = record.fileName;
    sheet.revision = revisionOf(record);
    if (record.contents) {
        // How many pages the contents take does not hang on the numbers in them.
        sheet.pages = front(record, sheet.revision, paper, namesOf(record));
        RecordFlow flow(record, sheet.revision, paper, static_cast<int>(sheet.pages.size()) + 1);
        flow.startPage();
        Body body(flow);
        for (const record::Block& block : record.blocks) std::visit(body, block);
        sheet.pages = front(record, sheet.revision, paper, body.entries());
        auto rest = flow.take();
        sheet.pages.insert(sheet.pages.end(), std::make_move_iterator(rest.begin()),
                           std::make_move_iterator(rest.end()));
    } else {
        RecordFlow flow(record, sheet.revision, paper, 1);
        flow.startPage();
        Body body(flow);
        for (const auto* blocks : {&record.opening, &record.blocks}) {
            for (const record::Block& block : *blocks) std::visit(body, block);
        }
        sheet.pages = flow.take();
    }
    numberPages(sheet.pages, paper);
    return sheet;
}

}  // namespace fayline
