#pragma once

#include "prepared.h"

namespace fayline {

GeometryFinding notLess(std::string_view what, Length has, Length needs, Standing standing);
GeometryFinding notMore(std::string_view what, Length has, Length needs, Standing standing);

void screwSizes(const Prepared& prepared, std::vector<GeometryFinding>& findings);
void addGeometry(const Prepared& prepared, std::vector<GeometryFinding>& findings);

}  // namespace fayline
