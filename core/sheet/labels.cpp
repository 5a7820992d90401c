#include "sheet/labels.h"

#include <algorithm>
#include <cctype>
#include <optional>

namespace fayline {

namespace {

/// The number a plain id ends in: 12 for F12, 5 for K.5; nothing for F9A.
std::optional<long> numberOf(const std::string& text) {
    std::size_t at = text.size();
    while (at > 0 && std::isdigit(static_cast<unsigned char>(text[at - 1])) != 0) --at;
    if (at == text.size() || text.size() - at > 9) return std::nullopt;
    return std::stol(text.substr(at));
}

bool collide(const LabelWish& a, const LabelWish& b, double gap_mm) {
    return std::max(a.atMm - a.widthMm / 2.0, b.atMm - b.widthMm / 2.0) <
           std::min(a.atMm + a.widthMm / 2.0, b.atMm + b.widthMm / 2.0) + gap_mm;
}

class Row {
  public:
    Row(const std::vector<LabelWish>& wishes, double gap_mm) : wishes_(wishes), gap_mm_(gap_mm) {}

    void place(std::size_t i) {
        const auto taken = [&](std::size_t k) {
            return k == i || collide(wishes_[k], wishes_[i], gap_mm_);
        };
        if (std::none_of(placed_.begin(), placed_.end(), taken)) placed_.push_back(i);
    }
    std::vector<std::size_t> inOrder() {
        std::sort(placed_.begin(), placed_.end());
        return placed_;
    }

  private:
    const std::vector<LabelWish>& wishes_;
    double gap_mm_;
    std::vector<std::size_t> placed_;
};

/// Indices of the labels of one step.
std::vector<std::size_t> ofStep(const std::vector<LabelWish>& row, long step) {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < row.size(); ++i) {
        const std::optional<long> number = numberOf(row[i].text);
        if (step == 1 || (number && *number % step == 0)) found.push_back(i);
    }
    return found;
}

bool clearOfEachOther(const std::vector<LabelWish>& row, const std::vector<std::size_t>& some,
                      double gap_mm) {
    for (std::size_t i = 1; i < some.size(); ++i) {
        if (collide(row[some[i - 1]], row[some[i]], gap_mm)) return false;
    }
    return true;
}

std::vector<std::size_t> plain(const std::vector<LabelWish>& row, double gap_mm) {
    for (long decade = 1; decade <= 1000; decade *= 10) {
        for (const long step : {decade, 2 * decade, 5 * decade}) {
            std::vector<std::size_t> some = ofStep(row, step);
            if (clearOfEachOther(row, some, gap_mm)) return some;
        }
    }
    return {};
}

}  // namespace

std::vector<std::size_t> labelsThatFit(const std::vector<LabelWish>& row, LabelGap gap) {
    Row fitted(row, gap.mm);
    std::vector<std::size_t> urgent;
    for (std::size_t i = 0; i < row.size(); ++i) {
        if (row[i].urgency > 0) urgent.push_back(i);
    }
    std::stable_sort(urgent.begin(), urgent.end(),
                     [&](std::size_t a, std::size_t b) { return row[a].urgency > row[b].urgency; });
    for (const std::size_t i : urgent) fitted.place(i);
    for (const std::size_t i : plain(row, gap.mm)) fitted.place(i);
    if (!row.empty()) {
        fitted.place(0);
        fitted.place(row.size() - 1);
    }
    return fitted.inOrder();
}

}  // namespace fayline
