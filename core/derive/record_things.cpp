#include "record_things.h"

#include <algorithm>

namespace fayline {
namespace {

bool alike(const SetCheckInput& a, const SetCheckInput& b) {
    return a.set.group == b.set.group && a.metal == b.metal && a.joint == b.joint &&
           a.whyNoJoint == b.whyNoJoint;
}

bool alike(BoltCheckInput a, BoltCheckInput b) {
    a.id = b.id;
    a.frame = b.frame;
    return a == b;
}

bool alike(FloorCheckInput a, FloorCheckInput b) {
    a.id = b.id;
    a.frame = b.frame;
    return a == b;
}

void addPlace(RecordThing& thing, const std::string& id, const std::string& frame, int count) {
    thing.ids.push_back(id);
    thing.fastenings += count;
    if (!frame.empty() &&
        std::find(thing.frames.begin(), thing.frames.end(), frame) == thing.frames.end())
        thing.frames.push_back(frame);
}

/// The worst check of each limit state and basis.
void gatherWorst(RecordThing& thing, const Results& results) {
    for (const std::string& id : thing.ids) {
        for (const Check* check : checksOf(results, id)) {
            const auto same =
                std::find_if(thing.worst.begin(), thing.worst.end(), [&](const Check* other) {
                    return other->limitState == check->limitState && other->basis == check->basis;
                });
            if (same == thing.worst.end()) {
                thing.worst.push_back(check);
            } else if (worseThan(*check, **same)) {
                *same = check;
            }
        }
    }
    std::stable_sort(thing.worst.begin(), thing.worst.end(),
                     [](const Check* a, const Check* b) { return worseThan(*a, *b); });
}

int rankOf(const std::string& group) {
    static const std::vector<std::string> order{"ballast", "keel",     "floor timber", "arm",
                                                "heel",    "floor",    "plank",        "butt",
                                                "hood",    "garboard", "backbone"};
    return static_cast<int>(std::find(order.begin(), order.end(), group) - order.begin());
}

}  // namespace

std::vector<RecordThing> thingsOf(const Results& results, const std::string& frame) {
    std::vector<RecordThing> things;
    const auto wanted = [&](const std::string& at) { return frame.empty() || at == frame; };
    for (const auto& bolt : results.boltInputs) {
        if (!wanted(bolt->frame)) continue;
        auto found = std::find_if(things.begin(), things.end(), [&](const RecordThing& t) {
            return t.bolt != nullptr && alike(*t.bolt, *bolt);
        });
        if (found == things.end()) {
            things.push_back({"ballast"});
            found = things.end() - 1;
            found->bolt = bolt.get();
        }
        addPlace(*found, bolt->id, bolt->frame, 1);
    }
    if (frame.empty() && !checksOf(results, "keel").empty()) {
        things.push_back({"keel"});
        things.back().ids.emplace_back("keel");
    }
    for (const auto& checks : results.frameChecks) {
        if (!checks) continue;
        if (checks->floor && wanted(checks->floor->frame)) {
            const FloorCheckInput& floor = *checks->floor;
            auto found = std::find_if(things.begin(), things.end(), [&](const RecordThing& t) {
                return t.floor != nullptr && alike(*t.floor, floor);
            });
            if (found == things.end()) {
                things.push_back({"floor timber"});
                found = things.end() - 1;
                found->floor = &floor;
            }
            addPlace(*found, floor.id, floor.frame, 1);
        }
        for (const SetCheckInput& set : checks->sets) {
            if (!wanted(set.set.frame)) continue;
            auto found = std::find_if(things.begin(), things.end(), [&](const RecordThing& t) {
                return t.set != nullptr && alike(*t.set, set);
            });
            if (found == things.end()) {
                things.push_back({set.set.group});
                found = things.end() - 1;
                found->set = &set;
            }
            addPlace(*found, set.set.id, set.set.frame, set.set.count);
        }
    }
    for (RecordThing& thing : things) gatherWorst(thing, results);
    things.erase(std::remove_if(things.begin(), things.end(),
                                [](const RecordThing& thing) { return thing.worst.empty(); }),
                 things.end());
    std::stable_sort(things.begin(), things.end(), [](const RecordThing& a, const RecordThing& b) {
        if (a.group != b.group) return rankOf(a.group) < rankOf(b.group);
        return worseThan(*a.worst.front(), *b.worst.front());
    });
    return things;
}

std::string frameRanges(const std::vector<std::string>& frames, const Results& results) {
    std::string text;
    const auto& all = results.structure->frames;
    for (std::size_t i = 0; i < all.size();) {
        const auto stands = [&](std::size_t at) {
            return at < all.size() &&
                   std::find(frames.begin(), frames.end(), all[at].id) != frames.end();
        };
        if (!stands(i)) {
            ++i;
            continue;
        }
        std::size_t last = i;
        while (stands(last + 1)) ++last;
        text += (text.empty() ? "" : ", ") + all[i].id;
        if (last > i) text += (last == i + 1 ? ", " : " to ") + all[last].id;
        i = last + 1;
    }
    return text;
}

}  // namespace fayline
