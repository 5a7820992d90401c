#pragma once

#include <set>
#include <utility>
#include <vector>

#include "derive/record.h"

namespace fayline {

/// What a joint is made of: picture, members, fastener, each figure with where it is from.
void addJointInput(std::vector<record::Block>& blocks, const NamedJoint& named);

/// "No. 14 wood screw, 2-1/2\", silicon bronze".
std::string fastenerWords(const NamedJoint& named);

/// The equations behind the modes of these bases, and the factors of duration and moisture.
void addEquations(std::vector<record::Block>& blocks, bool us, bool ec5);
void addFactorSets(std::vector<record::Block>& blocks);

/// What every record says about reading it.
void addReading(std::vector<record::Block>& blocks, UnitSystem units);

}  // namespace fayline
