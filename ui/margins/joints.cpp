#include "joints.h"

#include <QCoreApplication>
#include <algorithm>
#include <utility>

#include "words/checks.h"
#include "words/things.h"
#include "words/values.h"

namespace fayline {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("Joints", words);
}

bool worse(const Check* a, const Check* b) {
    return worseThan(*a, *b);
}

/// Finds texts in checks; words that many checks share are looked through once.
class Sought {
  public:
    explicit Sought(const QString& text) : text_(text.simplified()) {}

    bool in(const Check& check) {
        if (text_.isEmpty()) return true;
        return shared({0, check.group}, [&] { return groupWords(check.group); }) ||
               shared({1 + static_cast<int>(check.limitState), check.group},
                      [&] { return stateWords(check); }) ||
               shared({100 + static_cast<int>(check.loadCase), {}},
                      [&] { return asText(titleOf(check.loadCase)); }) ||
               shared({200 + static_cast<int>(check.basis), {}},
                      [&] { return basisWords(check.basis); }) ||
               asText(check.frame).compare(text_, Qt::CaseInsensitive) == 0 ||
               has(thingTitle(check.id)) || asText(check.id).contains(text_, Qt::CaseInsensitive);
    }

  private:
    [[nodiscard]] bool has(const QString& words) const {
        return words.contains(text_, Qt::CaseInsensitive);
    }
    template <typename Words>
    bool shared(const std::pair<int, std::string>& key, Words words) {
        const auto known = known_.find(key);
        if (known != known_.end()) return known->second;
        const bool found = has(words());
        known_.emplace(key, found);
        return found;
    }

    QString text_;
    std::map<std::pair<int, std::string>, bool> known_;
};

bool passes(const Check& check, const MarginFilter& filter, Sought& sought) {
    return (filter.group.empty() || check.group == filter.group) &&
           (!filter.loadCase || check.loadCase == *filter.loadCase) &&
           (!filter.status || check.status == *filter.status) &&
           (!filter.basis || counts(check, *filter.basis)) && sought.in(check);
}

/// Lists by key, in the order of each key's first check.
class Sorter {
  public:
    void add(std::string key, const Check* check) {
        const auto [place, isNew] = places_.try_emplace(key, lists_.size());
        if (isNew) lists_.emplace_back(std::move(key), CheckList{});
        lists_[place->second].second.push_back(check);
    }
    std::vector<MarginEntry> done() {
        std::vector<MarginEntry> entries;
        for (auto& [key, checks] : lists_)
            entries.push_back({key, std::make_shared<const CheckList>(std::move(checks))});
        return entries;
    }

  private:
    std::unordered_map<std::string, std::size_t> places_;
    std::vector<std::pair<std::string, CheckList>> lists_;
};

std::vector<MarginEntry> jointsIn(const CheckSet& set, const MarginFilter& filter, Sought& sought) {
    Sorter joints;
    for (const Check& check : set.checks) {
        if (passes(check, filter, sought)) joints.add(jointOf(check), &check);
    }
    return joints.done();
}

std::string questionOf(const Check& check) {
    std::string key = check.id;
    for (const int part : {static_cast<int>(check.loadCase), static_cast<int>(check.limitState),
                           static_cast<int>(check.basis)})
        key += "/" + std::to_string(part);
    return key + "/" + check.moisture;
}

}  // namespace

std::string jointOf(const Check& check) {
    if (check.group == "ballast" || check.frame.empty() || check.id == check.frame + ".floor")
        return check.group == "backbone" ? check.id.substr(0, check.id.rfind('.')) : check.id;
    if (check.group == "backbone") return check.id.substr(0, check.id.rfind('.'));
    return check.frame + " " + check.group;
}

QString jointTitle(const Check& check) {
    if (check.group == "backbone") {
        const QString title = thingTitle(check.id);
        return title.left(title.lastIndexOf(QLatin1Char(',')));
    }
    if (jointOf(check) == check.id) return thingTitle(check.id);
    return tr("%1 at %2").arg(groupWords(check.group), asText(check.frame));
}

std::vector<MarginEntry> JointLister::list(const Results& results, const MarginFilter& filter) {
    if (!(filter == filter_)) {
        known_.clear();
        filter_ = filter;
    }
    looked_ = 0;
    Sought sought(filter.text);
    std::unordered_map<const CheckSet*, Known> now;
    std::unordered_map<std::string, std::vector<MarginEntry>> byKey;
    std::vector<MarginEntry> all;
    for (const auto& set : results.checkSets) {
        auto& known = now[set.get()];
        if (const auto before = known_.find(set.get()); before != known_.end()) {
            known = std::move(before->second);
        } else {
            ++looked_;
            known = {set, jointsIn(*set, filter, sought)};
        }
        for (const MarginEntry& joint : known.joints) byKey[joint.key].push_back(joint);
    }
    known_ = std::move(now);
    std::map<std::string, MarginEntry> joined;
    for (auto& [key, parts] : byKey) {
        if (parts.size() == 1) {
            all.push_back(std::move(parts.front()));
            continue;
        }
        CheckList checks;
        for (const MarginEntry& part : parts)
            checks.insert(checks.end(), part.checks->begin(), part.checks->end());
        std::sort(checks.begin(), checks.end(), worse);
        const auto before = joined_.find(key);
        const bool same = before != joined_.end() && *before->second.checks == checks;
        all.push_back(same ? before->second
                           : MarginEntry{key, std::make_shared<const CheckList>(checks)});
        joined.emplace(key, all.back());
    }
    joined_ = std::move(joined);
    std::sort(all.begin(), all.end(), [](const MarginEntry& a, const MarginEntry& b) {
        return worseThan(a.governing(), b.governing());
    });
    return all;
}

std::vector<MarginEntry> within(const MarginEntry& entry) {
    if (entry.checks->size() < 2) return {};
    const std::string& first = entry.governing().id;
    const bool oneThing = std::all_of(entry.checks->begin(), entry.checks->end(),
                                      [&](const Check* check) { return check->id == first; });
    if (!oneThing) {
        Sorter things;
        for (const Check* check : *entry.checks) things.add(check->id, check);
        return things.done();
    }
    std::vector<MarginEntry> questions;
    for (const Check* check : *entry.checks) {
        questions.push_back(
            {questionOf(*check), std::make_shared<const CheckList>(CheckList{check})});
    }
    return questions;
}

}  // namespace fayline
