#include "derive/old_paper.h"

#include <algorithm>
#include <string_view>

#include "quantity/text.h"

namespace fayline {
namespace {

constexpr std::string_view front = "sheet.", back = ".paper";

}  // namespace

std::string paperRecord(const std::string& sheet) {
    return std::string(front) + sheet + std::string(back);
}

std::string codeOnPaper(const std::map<std::string, std::string>& recorded,
                        const std::string& sheet) {
    const auto found = recorded.find(paperRecord(sheet));
    return found == recorded.end() ? std::string() : found->second;
}

std::vector<OldPaper> oldPaper(const std::map<std::string, std::string>& recorded,
                               const std::map<std::string, std::string>& codes) {
    std::vector<OldPaper> old;
    for (const auto& [what, code] : recorded) {
        const bool ofSheet = what.size() > front.size() + back.size() &&
                             what.compare(0, front.size(), front) == 0 &&
                             what.compare(what.size() - back.size(), back.size(), back) == 0;
        if (!ofSheet) continue;
        const std::string sheet =
            what.substr(front.size(), what.size() - front.size() - back.size());
        const auto now = codes.find(sheet);
        if (now == codes.end()) {
            old.push_back({sheet, code, {}});
        } else if (now->second != code) {
            old.push_back({sheet, code, now->second});
        }
    }
    std::stable_sort(old.begin(), old.end(), [](const OldPaper& a, const OldPaper& b) {
        return naturalOrder(a.sheet, b.sheet) < 0;
    });
    return old;
}

}  // namespace fayline
