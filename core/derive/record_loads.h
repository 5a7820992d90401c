#pragma once

#include <string>
#include <vector>

#include "derive/record.h"

namespace fayline {

/// Every case with its factors, what it puts on the keel, and what is left over when all forces
/// are added up.
void addCases(std::vector<record::Block>& blocks, const Results& results, UnitSystem units);

/// How the keel's load is shared along the keel and among the ballast bolts. `frame`: only what
/// belongs to it; empty: all.
void addShares(std::vector<record::Block>& blocks, const Results& results, const std::string& frame,
               UnitSystem units);

}  // namespace fayline
