#include "materials.h"

#include "catalogue/kept.h"
#include "material/across_grain.h"
#include "project/decide.h"

namespace fayline {
namespace {

constexpr const char* ownFigure = "the builder's own figure";

template <typename T>
void put(std::optional<Figure<T>>& slot, const std::optional<T>& own) {
    if (own) slot = Figure<T>{*own, Standing::judgement, ownFigure};
}

void readKept(const std::string& name, const std::string& text, Materials& materials) {
    const auto dot = name.find('.');
    const auto kind = catalogueKindFromText(name.substr(0, dot));
    if (!kind || dot == std::string::npos) {
        materials.problems.push_back({"kept.kind", "catalogue." + name,
                                      "there is no catalogue of this name", "wood or metal"});
        return;
    }
    const auto entry = readKeptRow(*kind, name.substr(dot + 1), text);
    if (!entry) {
        materials.problems.insert(materials.problems.end(), entry.error().begin(),
                                  entry.error().end());
    } else if (const auto* wood = std::get_if<Wood>(&*entry)) {
        materials.woods[wood->id] = *wood;
    } else if (const auto* metal = std::get_if<Metal>(&*entry)) {
        materials.metals[metal->id] = *metal;
    }
}

}  // namespace

Materials resolveMaterials(const MaterialsInput& input, const Catalogue& catalogue) {
    Materials materials{catalogue.woods, catalogue.metals, {}};
    for (const auto& [name, text] : input.kept) readKept(name, text, materials);
    for (const auto& [id, own] : input.wood) {
        Wood& wood = materials.woods[id];
        if (wood.id.empty()) {
            wood.id = id;
            wood.name = {id, Standing::judgement, ownFigure};
            wood.family = WoodFamily::hardwood;
        }
        if (own.density)
            wood.ec5.density =
                Figure<CharacteristicDensity>{{*own.density}, Standing::judgement, ownFigure};
        if (own.specificGravity) {
            wood.us.specificGravity = Figure<SpecificGravityOvenDry>{
                {*own.specificGravity}, Standing::judgement, ownFigure};
        }
        put(wood.us.compressionPerpendicular, own.acrossGrain);
    }
    for (const auto& [id, own] : input.metal) {
        Metal& metal = materials.metals[id];
        if (metal.id.empty()) {
            metal.id = id;
            metal.name = {id, Standing::judgement, ownFigure};
        }
        put(metal.yieldMin, own.yield);
        put(metal.ultimateMin, own.ultimate);
        put(metal.density, own.density);
    }
    return materials;
}

const Wood* findWood(const Materials& materials, const std::optional<std::string>& name) {
    if (!name) return nullptr;
    const auto found = materials.woods.find(materialId(*name));
    return found == materials.woods.end() ? nullptr : &found->second;
}

const Metal* findMetal(const Materials& materials, const std::optional<std::string>& name) {
    if (!name) return nullptr;
    const auto found = materials.metals.find(materialId(*name));
    return found == materials.metals.end() ? nullptr : &found->second;
}

std::optional<RodInput> rodOf(const Metal& metal, Length root, Length corrosion,
                              const std::optional<double>& factor) {
    const auto yield = designYield(metal);
    const auto ultimate = designUltimate(metal);
    if (!yield || !ultimate) return std::nullopt;
    RodInput rod;
    rod.root = root;
    rod.corrosion = corrosion;
    rod.yield = yield->value;
    rod.ultimate = ultimate->value;
    if (metal.yieldTypical) rod.yieldTypical = metal.yieldTypical->value;
    if (metal.ultimateTypical) rod.ultimateTypical = metal.ultimateTypical->value;
    rod.strengthStanding = std::max(yield->standing, ultimate->standing);
    rod.strengthSource = metal.name.value + ": " + yield->source;
    if (factor) {
        rod.factor = *factor;
        rod.factorStanding = Standing::judgement;
        rod.factorSource = "the builder's decision, metal_set.factor";
    } else {
        rod.factorSource =
            "near the product of factors of ISO 12215-9:2012 for a ductile bolt, 1/0.402";
    }
    return rod;
}

WasherInput bearingWood(const Wood& wood) {
    WasherInput washer;
    if (const auto us = compressionPerpendicularUs(wood)) {
        washer.usAllowable = us->value;
        washer.usSource = wood.name.value + ": " + us->source;
        washer.usStanding = us->standing;
    }
    if (const auto ec5 = compressionPerpendicularEc5(wood)) {
        washer.ec5Characteristic = ec5->value;
        washer.ec5Source = wood.name.value + ": " + ec5->source;
        washer.ec5Standing = ec5->standing;
    }
    if (wood.green.compressionPerpendicular)
        washer.meanWet = wood.green.compressionPerpendicular->value;
    return washer;
}

std::optional<Stress> wetAcrossGrain(const Wood& wood) {
    for (const WoodMoisture moisture : {WoodMoisture::green, WoodMoisture::twelve}) {
        if (const auto modulus = modulusAcrossGrain(wood, AcrossGrain::unknown, moisture))
            return modulus->value;
    }
    if (wood.ec5.modulusPerpendicular) return wood.ec5.modulusPerpendicular->value;
    return std::nullopt;
}

}  // namespace fayline
