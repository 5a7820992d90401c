#include "touched.h"

#include <algorithm>
#include <cctype>

namespace fayline {
namespace {

bool isDigit(char letter) {
    return std::isdigit(static_cast<unsigned char>(letter)) != 0;
}

bool sameCheck(const Check* a, const Check* b) {
    return a == b || (a != nullptr && b != nullptr && *a == *b);
}

void addBoltFrames(const Results& results, std::set<std::string>& frames) {
    for (const PlacedBolt& placed : results.ballastBolts->placed) frames.insert(placed.frame);
}

}  // namespace

void Touched::add(const QStringList& whats) {
    for (const QString& each : whats) {
        const std::string what = each.toStdString();
        const std::size_t dot = what.find('.');
        if (dot != std::string::npos && dot > 1 && what[0] == 'F' && isDigit(what[1])) {
            frames_.insert(what.substr(0, dot));
        } else if (what.size() > 2 && what.rfind("K.", 0) == 0 && isDigit(what[2])) {
            bolts_.insert(what.substr(0, what.find('.', 2)));
        } else {
            all_ = true;
        }
    }
}

/// The frames whose rows may be others than before, their worst margin apart.
std::set<std::string> Touched::dirty(const Results& before, const Results& now) const {
    std::set<std::string> frames = frames_;
    const bool otherBolts =
        before.ballastBolts != now.ballastBolts || before.boltInputs != now.boltInputs;
    if (otherBolts || !bolts_.empty()) {
        addBoltFrames(before, frames);
        addBoltFrames(now, frames);
    }
    if (before.structure == now.structure) return frames;
    const auto& old = before.structure->frames;
    const auto& places = now.structure->frames;
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (i >= old.size() || !(old[i] == places[i])) frames.insert(places[i].id);
    }
    return frames;
}

int Touched::bring(std::vector<StationRow>& rows, const Desk& desk) {
    const RowMaker maker(desk);
    const Results& now = *desk.results();
    const Speech speech = speechOf(desk.project());
    const bool all = all_ || made_ == nullptr || !(speech == speech_);
    std::set<std::string> frames;
    std::unordered_map<std::string_view, const Check*> worst;
    if (!all) {
        frames = dirty(*made_, now);
        worst = worstByFrame(*made_, speech.basis);
    }
    int made = 0;
    for (StationRow& row : rows) {
        if (all || frames.count(row.frame) > 0) {
            row = maker.row(row.frame);
            ++made;
            continue;
        }
        const auto before = worst.find(row.frame);
        if (!sameCheck(before == worst.end() ? nullptr : before->second, maker.worst(row.frame)))
            maker.putWorst(row);
    }
    settle(desk);
    return made;
}

void Touched::settle(const Desk& desk) {
    all_ = false;
    frames_.clear();
    bolts_.clear();
    made_ = desk.results();
    speech_ = speechOf(desk.project());
}

}  // namespace fayline
