#include "profile_rows.h"

#include <algorithm>
#include <array>
#include <utility>

#include "plan.h"
#include "sheet/font_metrics.h"
#include "sheet/labels.h"
#include "sheet/marks.h"

namespace fayline::plan {

namespace {

int urgencyOf(Status status) {
    if (status == Status::isShort) return 2;
    return status == Status::near ? 1 : 0;
}

/// Later ones are painted over earlier ones.
constexpr std::array paintOrder{Status::unloaded, Status::ok,   Status::outside,
                                Status::unknown,  Status::near, Status::isShort};

constexpr std::array<std::pair<Status, const char*>, 6> words{
    {{Status::isShort, "short"},
     {Status::near, "near"},
     {Status::unknown, "unknown"},
     {Status::outside, "outside the formula's range"},
     {Status::ok, "ok"},
     {Status::unloaded, "unloaded"}}};

bool occurs(const ProfileInput& input, Status status) {
    return std::any_of(input.frames.begin(), input.frames.end(),
                       [&](const ProfileFrame& f) { return f.worst == status; }) ||
           std::any_of(input.bolts.begin(), input.bolts.end(),
                       [&](const ProfileBolt& b) { return b.status == status; });
}

/// Wishes of one row, each with the status of its owner.
struct Wishes {
    std::vector<LabelWish> row;
    std::vector<Status> status;
};

void sortByPlace(Wishes& wishes) {
    std::vector<std::size_t> order(wishes.row.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return wishes.row[a].atMm < wishes.row[b].atMm;
    });
    Wishes sorted;
    for (const std::size_t i : order) {
        sorted.row.push_back(wishes.row[i]);
        sorted.status.push_back(wishes.status[i]);
    }
    wishes = std::move(sorted);
}

void addWish(Wishes& wishes, const std::string& id, double at_mm, Status status,
             const DrawFormat& format) {
    const auto weight = status == Status::isShort ? shape::Weight::bold : shape::Weight::regular;
    wishes.row.push_back({id, at_mm, widthMm(id, format, weight), urgencyOf(status)});
    wishes.status.push_back(status);
}

void addNames(Drawing& drawing, Wishes wishes, double y_mm, const DrawFormat& format) {
    sortByPlace(wishes);
    for (const std::size_t i : labelsThatFit(wishes.row, {1.0 * format.letterMm})) {
        const LabelWish& wish = wishes.row[i];
        const bool isShort = wishes.status[i] == Status::isShort;
        shape::Text name = note(wish.text, {wish.atMm, y_mm}, format);
        name.across = shape::Across::centre;
        if (isShort) name.weight = shape::Weight::bold;
        drawing.items.push_back({isShort ? Role::label : Role::muted, wish.text, name});
    }
}

constexpr double wordAt = 1.5;  ///< letters from a sign's left edge to its word

double entryWidthMm(const char* word, const DrawFormat& format) {
    return wordAt * format.letterMm + widthMm(word, format);
}

void addEntry(Drawing& drawing, Status status, const char* word, PointMm at,
              const DrawFormat& format) {
    const double letter_mm = format.letterMm;
    for (DrawItem& item :
         statusMark(status, {at.x + 0.5 * letter_mm, at.y}, {letter_mm, letter_mm}, {})) {
        drawing.items.push_back(std::move(item));
    }
    drawing.items.push_back(
        {Role::muted, {}, note(word, {at.x + wordAt * letter_mm, at.y}, format)});
}

}  // namespace

double Rows::heightMm(const ProfileInput& input, const DrawFormat& format) {
    return (input.bolts.empty() ? 4.2 : 5.9) * format.letterMm;
}

double Rows::xOf(const ProfileFrame& frame) const {
    return scale_.toDrawing({frame.x, Length{}}).x;
}

double Rows::captionAtMm() const {
    return left_mm_ - widthMm(caption(), format_) - format_.letterMm;
}

double Rows::signsAtMm() const {
    return top_mm_ + (in_.bolts.empty() ? 1.5 : 3.2) * format_.letterMm;
}

void Rows::addTo(Drawing& drawing) const {
    if (!in_.bolts.empty()) boltNames(drawing);
    frameSigns(drawing);
    frameNames(drawing);
    stops(drawing);
}

void Rows::boltNames(Drawing& drawing) const {
    Wishes wishes;
    for (const ProfileBolt& bolt : in_.bolts) {
        addWish(wishes, bolt.id, scale_.toDrawing({bolt.end.x, bolt.end.z}).x, bolt.status,
                format_);
    }
    addNames(drawing, std::move(wishes), top_mm_ + 1.3 * format_.letterMm, format_);
}

void Rows::frameSigns(Drawing& drawing) const {
    const double letter_mm = format_.letterMm;
    const double y = signsAtMm();
    if (in_.frames.empty()) {
        drawing.items.push_back(
            {Role::muted, {}, note("no frames placed yet", {captionAtMm(), y}, format_)});
        return;
    }
    if (std::none_of(in_.frames.begin(), in_.frames.end(),
                     [](const ProfileFrame& f) { return f.worst.has_value(); })) {
        return;
    }
    drawing.items.push_back({Role::muted, {}, note(caption(), {captionAtMm(), y}, format_)});

    std::vector<double> places;
    for (const ProfileFrame& frame : in_.frames) places.push_back(xOf(frame));
    std::sort(places.begin(), places.end());
    double spacing_mm = 1.15 * letter_mm;
    for (std::size_t i = 1; i < places.size(); ++i) {
        spacing_mm = std::min(spacing_mm, places[i] - places[i - 1]);
    }
    // Frames closer than the smallest sign that can be told from another take turns in two rows.
    const double least_mm = 0.8 * letter_mm;
    const double size_mm = std::max(0.96 * spacing_mm, least_mm);
    const bool staggered = spacing_mm < least_mm;
    for (const Status status : paintOrder) {
        for (std::size_t i = 0; i < in_.frames.size(); ++i) {
            const ProfileFrame& frame = in_.frames[i];
            if (frame.worst != status) continue;
            const double shift_mm = staggered ? (i % 2 == 0 ? -0.45 : 0.45) * letter_mm : 0.0;
            for (DrawItem& item :
                 statusMark(status, {xOf(frame), y + shift_mm}, {size_mm, size_mm}, frame.id)) {
                drawing.items.push_back(std::move(item));
            }
        }
    }
}

void Rows::frameNames(Drawing& drawing) const {
    Wishes wishes;
    for (const ProfileFrame& frame : in_.frames) {
        addWish(wishes, frame.id, xOf(frame), frame.worst.value_or(Status::ok), format_);
    }
    addNames(drawing, std::move(wishes), signsAtMm() + 1.9 * format_.letterMm, format_);
}

void Rows::stops(Drawing& drawing) const {
    const auto leftToRight = [](const DrawStop& a, const DrawStop& b) { return a.at.x < b.at.x; };
    std::vector<DrawStop> frames;
    for (const ProfileFrame& frame : in_.frames) {
        frames.push_back({frame.id, {xOf(frame), signsAtMm()}});
    }
    std::vector<DrawStop> bolts;
    for (const ProfileBolt& bolt : in_.bolts) {
        bolts.push_back({bolt.id, scale_.toDrawing({bolt.start.x, bolt.start.z})});
    }
    for (std::vector<DrawStop>* row : {&frames, &bolts}) {
        std::stable_sort(row->begin(), row->end(), leftToRight);
        if (!row->empty()) drawing.rows.push_back(std::move(*row));
    }
}

void addLegendColumn(Drawing& drawing, const ProfileInput& input, const DrawFormat& format,
                     PointMm foot) {
    const double pitch_mm = 1.75 * format.letterMm;
    const auto count = std::count_if(words.begin(), words.end(),
                                     [&](const auto& word) { return occurs(input, word.first); });
    PointMm at{foot.x, foot.y - pitch_mm * static_cast<double>(count - 1)};
    for (const auto& [status, word] : words) {
        if (!occurs(input, status)) continue;
        addEntry(drawing, status, word, at, format);
        at.y += pitch_mm;
    }
}

void addLegendLine(Drawing& drawing, const ProfileInput& input, const DrawFormat& format,
                   PointMm start, double rightMm) {
    PointMm at = start;
    for (const auto& [status, word] : words) {
        if (!occurs(input, status)) continue;
        const double end = at.x + entryWidthMm(word, format);
        if (end > rightMm) return;
        addEntry(drawing, status, word, at, format);
        at.x = end + 1.5 * format.letterMm;
    }
}

double legendWidthMm(const ProfileInput& input, const DrawFormat& format) {
    double width_mm = 0.0;
    for (const auto& [status, word] : words) {
        if (occurs(input, status)) width_mm = std::max(width_mm, entryWidthMm(word, format));
    }
    return width_mm;
}

}  // namespace fayline::plan
