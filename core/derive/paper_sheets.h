#pragma once

#include "paper_context.h"
#include "sheet/keel_sheet.h"
#include "sheet/plank_book.h"

/// What each sheet says, from the project and all that is worked out from it.
namespace fayline {

using HolesOf = std::vector<const Hole*>;

BenchSheet frameSheet(const PaperContext& paper, const SheetName& name, const HolesOf& holes);
BenchSheet floorSheet(const PaperContext& paper, const SheetName& name, const HolesOf& holes);
BenchSheet backboneSheet(const PaperContext& paper, const SheetName& name, const HolesOf& holes);
KeelSheet keelSheet(const PaperContext& paper, const SheetName& name, const HolesOf& holes);
PlankBook plankBook(const PaperContext& paper, const SheetName& name, const HolesOf& holes);

}  // namespace fayline
