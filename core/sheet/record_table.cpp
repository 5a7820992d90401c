#include "record_table.h"

#include <algorithm>
#include <cmath>

#include "quantity/text.h"
#include "wrap.h"

namespace fayline {
namespace {

using record_page::letter;
using shape::Weight;

constexpr double gap_mm = 2.4;
constexpr double rowPad_mm = 0.9;
constexpr double least_mm = 9.0;

double widestWord(const std::string& text, Weight weight) {
    double widest = 0.0;
    for (const std::string_view word : splitAt(text, ' '))
        widest = std::max(widest, widthMm(word, letter, weight));
    return widest;
}

double greed(double open_mm) {
    return std::pow(std::max(0.0, open_mm), 0.75);
}

/// Every column gets at least its longest word; what is left goes to those that want more, the
/// greedy ones less than in proportion. Words are broken only where not even that fits.
std::vector<double> widthsOf(const FlowTable& table) {
    const std::size_t columns = table.heads.size();
    if (!table.widths_mm.empty()) return table.widths_mm;
    std::vector<double> wanted(columns, least_mm), widths(columns, least_mm);
    const auto see = [&](std::size_t i, const std::string& cell, Weight weight) {
        wanted[i] = std::max(wanted[i], widthMm(cell, letter, weight));
        widths[i] = std::max(widths[i], widestWord(cell, weight));
    };
    for (std::size_t i = 0; i < columns; ++i) {
        see(i, table.heads[i], Weight::bold);
        for (std::size_t k = 0; k < table.rows.size(); ++k) {
            const bool heavy = k < table.heavy.size() && table.heavy[k];
            see(i, table.rows[k][i], heavy ? Weight::bold : Weight::regular);
        }
    }
    const double room = recordWidth_mm - gap_mm * static_cast<double>(columns - 1);
    double left = room;
    for (const double width : widths) left -= width;
    if (left < 0.0) {
        for (double& width : widths) width *= room / (room - left);
        return widths;
    }
    for (int round = 0; round < 12 && left > 0.01; ++round) {
        double weights = 0.0;
        for (std::size_t i = 0; i < columns; ++i) weights += greed(wanted[i] - widths[i]);
        if (weights <= 0.0) break;
        const double share = left / weights;
        for (std::size_t i = 0; i < columns; ++i) {
            const double open = wanted[i] - widths[i];
            const double more = std::min(open, share * greed(open));
            widths[i] += more;
            left -= more;
        }
    }
    return widths;
}

using Lines = std::vector<std::vector<std::string>>;

Lines linesOf(const std::vector<std::string>& cells, const std::vector<double>& widths,
              Weight weight) {
    Lines lines;
    for (std::size_t i = 0; i < cells.size(); ++i)
        lines.push_back(wrapped(cells[i], letter, weight, widths[i]));
    return lines;
}

double heightOf(const Lines& lines, double pad_mm) {
    std::size_t most = 1;
    for (const auto& cell : lines) most = std::max(most, cell.size());
    return static_cast<double>(most) * record_page::line + pad_mm;
}

void putLines(RecordFlow& flow, const Lines& lines, const std::vector<double>& widths,
              Weight weight, double pad_mm) {
    double x = flow.left();
    for (std::size_t i = 0; i < lines.size(); ++i) {
        double base = flow.y() + pad_mm / 2.0 + letter + 0.7;
        for (const std::string& one : lines[i]) {
            if (!one.empty()) flow.text({x, base}, one, letter, weight);
            base += record_page::line;
        }
        x += widths[i] + gap_mm;
    }
    flow.down(heightOf(lines, pad_mm));
}

void putHeads(RecordFlow& flow, const FlowTable& table, const std::vector<double>& widths) {
    if (table.bare) return;
    putLines(flow, linesOf(table.heads, widths, Weight::bold), widths, Weight::bold, rowPad_mm);
    flow.rule(flow.y(), 0.35, flow.left(), flow.right());
}

}  // namespace

double heightOf(const FlowTable& table, std::size_t rows) {
    const auto widths = widthsOf(table);
    double height =
        table.bare ? 0.0 : heightOf(linesOf(table.heads, widths, Weight::bold), rowPad_mm);
    for (std::size_t i = 0; i < std::min(rows, table.rows.size()); ++i)
        height += heightOf(linesOf(table.rows[i], widths, Weight::bold), rowPad_mm);
    return height;
}

void put(RecordFlow& flow, const FlowTable& table) {
    const auto widths = widthsOf(table);
    const double pad_mm = table.bare ? 0.0 : rowPad_mm;
    flow.need(heightOf(table, 1));
    putHeads(flow, table, widths);
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const bool heavy = i < table.heavy.size() && table.heavy[i];
        const Weight weight = heavy ? Weight::bold : Weight::regular;
        const auto lines = linesOf(table.rows[i], widths, weight);
        if (flow.need(heightOf(lines, pad_mm))) putHeads(flow, table, widths);
        const double top = flow.y();
        putLines(flow, lines, widths, weight, pad_mm);
        if (heavy)
            flow.add(Role::label, shape::Line{{flow.left() - 2.0, top + 0.5},
                                              {flow.left() - 2.0, flow.y() - 0.5},
                                              {1.2, LineStyle::solid}});
        if (!table.bare) flow.rule(flow.y(), 0.15, flow.left(), flow.right());
    }
}

}  // namespace fayline
