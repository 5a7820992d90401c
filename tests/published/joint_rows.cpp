#include "joint_rows.h"

#include <stdexcept>

#include "quantity/reading.h"

namespace fayline {

std::string Row::text(std::string_view column) const {
    const auto place = file_.column(column);
    if (!place) throw std::runtime_error(file_.name + " has no column " + std::string(column));
    return row_.cells[*place];
}
double Row::number(std::string_view column) const {
    return readRatio(text(column), where()).value();
}
Length Row::length(std::string_view column) const {
    return readLength(text(column), where()).value();
}
Stress Row::stress(std::string_view column) const {
    return readStress(text(column), where()).value();
}
Density Row::density(std::string_view column) const {
    return readDensity(text(column), where()).value();
}
Angle Row::angle(std::string_view column) const {
    return Angle::degrees(number(column));
}
std::string Row::where() const {
    return file_.where(row_.line) + " " + text("item");
}

}  // namespace fayline
