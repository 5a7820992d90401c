#include "limits_words.h"

#include "quantity/display.h"

namespace fayline::detail {

std::string inWords(Length value) {
    return displayLength(value, LengthStyle::millimetres, UnitMark::shown, {64, 1000});
}

void requireWithin(Problems& problems, Length value, Length low, Length high,
                   const std::string& where, const std::string& name) {
    if (value >= low && value <= high) return;
    problems.push_back({"hull.out_of_limits", where, name + " is " + inWords(value),
                        inWords(low) + " to " + inWords(high)});
}

}  // namespace fayline::detail
