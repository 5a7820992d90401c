#include "check_sets.h"

#include <algorithm>
#include <iterator>
#include <string_view>
#include <unordered_map>
#include <unordered_set>

namespace fayline {
namespace {

bool worse(const Check* a, const Check* b) {
    return worseThan(*a, *b);
}

std::vector<std::size_t> firstOfEach(const std::vector<Check>& checks, Basis otherBasis) {
    std::unordered_set<std::string_view> seen;
    std::vector<std::size_t> first;
    for (std::size_t i = 0; i < checks.size(); ++i) {
        if (checks[i].basis != otherBasis && seen.insert(checks[i].id).second) first.push_back(i);
    }
    return first;
}

/// Where the checks of some sets stand in memory, to be told by their address.
class Places {
  public:
    void add(const CheckSet& set) {
        if (!set.checks.empty()) runs_.emplace_back(set.checks.data(), set.checks.size());
    }
    void sort() {
        std::sort(runs_.begin(), runs_.end(), [](const Run& a, const Run& b) {
            return std::less<const Check*>()(a.first, b.first);
        });
    }
    [[nodiscard]] bool empty() const { return runs_.empty(); }
    [[nodiscard]] bool hold(const Check* check) const {
        auto after = std::upper_bound(runs_.begin(), runs_.end(), check,
                                      [](const Check* at, const Run& run) {
                                          return std::less<const Check*>()(at, run.first);
                                      });
        if (after == runs_.begin()) return false;
        const Run& run = *std::prev(after);
        return std::less<const Check*>()(check, run.first + run.second);
    }

  private:
    using Run = std::pair<const Check*, std::size_t>;
    std::vector<Run> runs_;
};

/// `kept` with `fresh` put in, both worst first.
std::vector<const Check*> merged(const std::vector<const Check*>& kept,
                                 const std::vector<const Check*>& fresh) {
    std::vector<const Check*> all;
    all.reserve(kept.size() + fresh.size());
    auto from = kept.begin();
    for (const Check* check : fresh) {
        const auto to = std::upper_bound(from, kept.end(), check, worse);
        all.insert(all.end(), from, to);
        all.push_back(check);
        from = to;
    }
    all.insert(all.end(), from, kept.end());
    return all;
}

}  // namespace

CheckSet::CheckSet(std::vector<Check> found) : checks(std::move(found)) {
    // By address first: a check is long to move.
    std::vector<const Check*> order;
    order.reserve(checks.size());
    for (const Check& check : checks) order.push_back(&check);
    std::sort(order.begin(), order.end(), worse);
    std::vector<Check> sorted;
    sorted.reserve(checks.size());
    for (const Check* check : order) sorted.push_back(*check);
    checks = std::move(sorted);
    worstUs = firstOfEach(checks, Basis::ec5);
    worstEc5 = firstOfEach(checks, Basis::us);
    const bool one = std::all_of(checks.begin(), checks.end(), [this](const Check& check) {
        return check.frame == checks.front().frame;
    });
    if (one && !checks.empty()) frame = checks.front().frame;
}

void putWorstFirst(Results& results, const Results* before) {
    std::unordered_set<const CheckSet*> had, has;
    if (before != nullptr) {
        for (const auto& set : before->checkSets) had.insert(set.get());
    }
    std::vector<const Check*> fresh;
    for (const auto& set : results.checkSets) {
        has.insert(set.get());
        if (had.count(set.get()) > 0) continue;
        for (const Check& check : set->checks) fresh.push_back(&check);
    }
    std::sort(fresh.begin(), fresh.end(), worse);
    if (before == nullptr || before->worstFirst.empty()) {
        results.worstFirst = std::move(fresh);
        return;
    }
    Places gone;
    for (const auto& set : before->checkSets) {
        if (has.count(set.get()) == 0) gone.add(*set);
    }
    gone.sort();
    std::vector<const Check*> kept;
    kept.reserve(before->worstFirst.size());
    std::copy_if(before->worstFirst.begin(), before->worstFirst.end(), std::back_inserter(kept),
                 [&](const Check* check) { return !gone.hold(check); });
    results.worstFirst = merged(kept, fresh);
}

std::vector<const CheckSet*> setsAtFrame(const Results& results, const std::string& frame) {
    std::vector<const CheckSet*> sets;
    for (const auto& set : results.checkSets) {
        const auto here = [&](const Check& check) { return check.frame == frame; };
        if (set->frame == frame
                ? !frame.empty()
                : set->frame.empty() && std::any_of(set->checks.begin(), set->checks.end(), here))
            sets.push_back(set.get());
    }
    return sets;
}

std::vector<const Check*> checksOf(const Results& results, const std::string& id) {
    std::vector<const Check*> checks;
    for (const auto& set : results.checkSets) {
        for (const Check& check : set->checks) {
            if (check.id == id) checks.push_back(&check);
        }
    }
    std::sort(checks.begin(), checks.end(), worse);
    return checks;
}

std::vector<const Check*> worstOfEach(const Results& results, Basis leading) {
    std::size_t most = 0;
    for (const auto& set : results.checkSets) most += set->worst(leading).size();
    std::vector<const Check*> each;
    each.reserve(most);
    std::unordered_map<std::string_view, std::size_t> places;
    places.reserve(most);
    for (const auto& set : results.checkSets) {
        for (const std::size_t place : set->worst(leading)) {
            const Check* check = &set->checks[place];
            const auto [known, isNew] = places.try_emplace(check->id, each.size());
            if (isNew) {
                each.push_back(check);
            } else if (worse(check, each[known->second])) {
                each[known->second] = check;
            }
        }
    }
    return each;
}

std::unordered_map<std::string_view, const Check*> worstByFrame(const Results& results,
                                                                Basis leading) {
    std::unordered_map<std::string_view, const Check*> worst;
    for (const auto& set : results.checkSets) {
        for (const std::size_t place : set->worst(leading)) {
            const Check* check = &set->checks[place];
            if (check->frame.empty()) continue;
            const auto [known, isNew] = worst.try_emplace(check->frame, check);
            if (!isNew && worse(check, known->second)) known->second = check;
            if (!set->frame.empty())
                break;  // the rest of this set is at the same frame, and no worse
        }
    }
    return worst;
}

}  // namespace fayline
