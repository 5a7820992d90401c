#pragma once

#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "row_reader.h"

namespace fayline {

/// One property of an entry that is written one property a row: its name, what is plausible, and
/// the place it goes to.
template <typename Entry, typename T>
struct Property {
    std::string_view name;
    Limits<T> limits;
    std::optional<Figure<T>>& (*slot)(Entry&);
};

template <typename Entry>
std::optional<Stress> valueOf(RowReader& row, const Property<Entry, Stress>& property) {
    return row.stress("value", property.limits);
}
template <typename Entry>
std::optional<Density> valueOf(RowReader& row, const Property<Entry, Density>& property) {
    return row.density("value", property.limits);
}
template <typename Entry>
std::optional<double> valueOf(RowReader& row, const Property<Entry, double>& property) {
    return row.ratio("value", property.limits);
}

/// Puts the row's value where the property of this name keeps it; false when no property of this
/// list has that name.
template <typename Entry, typename T, std::size_t N>
bool take(RowReader& row, Entry& entry, std::string_view name,
          const std::array<Property<Entry, T>, N>& properties) {
    for (const auto& property : properties) {
        if (property.name != name) continue;
        property.slot(entry) = row.figure(valueOf(row, property));
        return true;
    }
    return false;
}

template <typename Entry, typename T, std::size_t N>
void addNames(std::vector<std::string>& names,
              const std::array<Property<Entry, T>, N>& properties) {
    for (const auto& property : properties) names.emplace_back(property.name);
}

/// Where each key was first seen.
class SeenRows {
  public:
    /// True the first time; later it refuses the row and names the first.
    bool first(RowReader& row, const std::string& key, std::string_view column) {
        const auto [place, isNew] = lines_.try_emplace(key, row.line());
        if (!isNew) {
            row.refuse("catalogue.twice", column, key + " is here a second time",
                       "one row; the first is in line " + std::to_string(place->second));
        }
        return isNew;
    }

  private:
    std::map<std::string, int> lines_;
};

}  // namespace fayline
