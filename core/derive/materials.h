#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>

#include "catalogue/catalogue.h"
#include "joint/rod.h"
#include "joint/washer.h"
#include "project/project.h"

namespace fayline {

/// The woods and metals of one project: the rows it keeps, else the catalogue's, with the builder's
/// own figures on top.
struct Materials {
    std::map<std::string, Wood> woods;
    std::map<std::string, Metal> metals;
    Problems problems;
    bool operator==(const Materials&) const = default;
};

struct MaterialsInput {
    std::map<std::string, std::string> kept;
    std::map<std::string, WoodDecisions> wood;
    std::map<std::string, MetalDecisions> metal;
    bool operator==(const MaterialsInput&) const = default;
};

Materials resolveMaterials(const MaterialsInput& input, const Catalogue& catalogue);

const Wood* findWood(const Materials& materials, const std::optional<std::string>& name);
const Metal* findMetal(const Materials& materials, const std::optional<std::string>& name);

/// A rod of this metal for the metal set; nothing when yield or ultimate is not known.
std::optional<RodInput> rodOf(const Metal& metal, Length root, Length corrosion,
                              const std::optional<double>& factor);

/// The wood under a washer; what is not published for it stays out. Sizes are left to the caller.
WasherInput bearingWood(const Wood& wood);

/// Stiffness of wet keel timber across the grain.
std::optional<Stress> wetAcrossGrain(const Wood& wood);

}  // namespace fayline
