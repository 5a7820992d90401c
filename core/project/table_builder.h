#pragma once

#include <string>
#include <utility>
#include <vector>

#include "project/fields.h"

namespace fayline::table {

/// Makes rows of the decision table. Each takes a function that finds the optional a row stands
/// for.
template <typename T, typename Find>
std::function<void(Project&, const Address&, const Value*)> setter(Find find) {
    return [find](Project& project, const Address& address, const Value* value) {
        std::optional<T>& slot = find(project, address);
        if (value == nullptr) {
            slot.reset();
        } else {
            slot = std::get<T>(*value);
        }
    };
}

/// The same for entries of a map: an entry with nothing decided in it goes away, so equal projects
/// compare equal.
template <typename T, typename Entry, typename Map, typename Member>
std::function<void(Project&, const Address&, const Value*)> entrySetter(Map map, Member member) {
    return [map, member](Project& project, const Address& address, const Value* value) {
        auto& entries = map(project);
        std::optional<T>& slot = member(entries[address.place]);
        if (value == nullptr) {
            slot.reset();
        } else {
            slot = std::get<T>(*value);
        }
        if (entries[address.place] == Entry{}) entries.erase(address.place);
    };
}

struct Span {
    double low;
    double high;
    const char* words;
};

std::vector<Field> hullRows();
std::vector<Field> structureRows();
std::vector<Field> ballastRows();
std::vector<Field> fasteningRows();
std::vector<Field> figureRows();

}  // namespace fayline::table
