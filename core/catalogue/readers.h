#pragma once

#include <map>
#include <string>

#include "catalogue/catalogue.h"
#include "quantity/csv.h"

namespace fayline {

// One reader for each file; what is wrong is added to the problems, and entries with faults are
// left out or incomplete.

std::map<std::string, Wood> readWoods(const CsvFile& file, Problems& problems);
std::map<std::string, Metal> readMetals(const CsvFile& file, Problems& problems);
std::map<std::string, Thread> readThreads(const CsvFile& file, Problems& problems);
std::map<std::string, RodStock> readRods(const CsvFile& file, Problems& problems);
std::map<std::string, Nut> readNuts(const CsvFile& file, Problems& problems);
std::map<std::string, Washer> readWashers(const CsvFile& file, Problems& problems);
std::map<std::string, RuleLimit> readRules(const CsvFile& file, Problems& problems);

/// Whether every metal and thread named is there and fits: a rod is as thick as its thread, a nut
/// wider than its thread.
void checkReferences(const Catalogue& catalogue, const CsvFile& rods, const CsvFile& nuts,
                     Problems& problems);

}  // namespace fayline
