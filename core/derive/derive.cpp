#include "derive/derive.h"

#include <algorithm>

#include "check_sets.h"
#include "check_stage.h"
#include "derive/memo.h"
#include "layout_stage.h"
#include "stages.h"

namespace fayline {

namespace {

struct LoadKey {
    BallastLoadInput input;
    LoadCase loadCase = LoadCase::knockdownPort;
    CaseSettings settings;
    bool operator==(const LoadKey&) const = default;
};

struct BoltChecksKey {
    BoltCheckInput bolt;
    BoltForces forces;
    LoadCase loadCase = LoadCase::knockdownPort;
    CaseSettings settings;
    bool operator==(const BoltChecksKey&) const = default;
};

struct BedChecksKey {
    WasherInput wood;
    std::shared_ptr<const CaseLoads> loads;
    double target = 1;
    bool operator==(const BedChecksKey&) const = default;
};

}  // namespace

struct Deriver::Memory {
    Memo<int, MaterialsInput, Materials> materials;
    Memo<int, LoftInput, HullShape> loft;
    Memo<int, AfloatInput, Afloat> afloat;
    Memo<int, StructureInput, Structure> structure;
    Memo<int, BallastBoltInput, BallastBoltLayout> layout;
    LayoutMemory fastenings;
    Memo<int, LoadKey, CaseLoads> loads;
    Memo<std::string, BoltCheckInput, BoltCheckInput> boltInputs;
    Memo<std::string, BoltChecksKey, CheckSet> boltChecks;
    Memo<int, BedChecksKey, CheckSet> bedChecks;
    CheckMemory frameChecks;
    std::shared_ptr<const Results> last;  ///< in whose order the checks already stand

    void nextGeneration() {
        materials.nextGeneration();
        loft.nextGeneration();
        afloat.nextGeneration();
        structure.nextGeneration();
        layout.nextGeneration();
        fastenings.nextGeneration();
        loads.nextGeneration();
        boltInputs.nextGeneration();
        boltChecks.nextGeneration();
        bedChecks.nextGeneration();
        frameChecks.nextGeneration();
    }
};

namespace {

/// The mass the ground pushes up against: as stated, else what floats at the waterline.
std::optional<Mass> boatMass(const Project& project, const Afloat& afloat) {
    if (project.hull.displacement) return project.hull.displacement;
    if (afloat.body) return afloat.body->displacement;
    return std::nullopt;
}

void add(Problems& to, const Problems& from) {
    to.insert(to.end(), from.begin(), from.end());
}

}  // namespace

Deriver::Deriver(std::shared_ptr<const Catalogue> catalogue)
    : memory_(std::make_unique<Memory>()), catalogue_(std::move(catalogue)) {}
Deriver::~Deriver() = default;
Deriver::Deriver(Deriver&&) noexcept = default;
Deriver& Deriver::operator=(Deriver&&) noexcept = default;

std::shared_ptr<const Results> Deriver::derive(const Project& project) {
    Memory& memory = *memory_;
    memory.nextGeneration();
    auto results = std::make_shared<Results>();
    RunCounts& runs = results->runs;
    int uncounted = 0;
    results->cautions = standingCautions();

    const auto materials = memory.materials.get(
        0, MaterialsInput{project.kept, project.wood, project.metal},
        [&](const MaterialsInput& in) { return resolveMaterials(in, *catalogue_); }, uncounted);
    results->hull = memory.loft.get(0, LoftInput{project.offsets}, loftStage, runs.loft);
    results->afloat = memory.afloat.get(0,
                                        AfloatInput{results->hull, project.hull.waterline,
                                                    project.hull.waterDensity.value_or(seaWater)},
                                        afloatStage, runs.hydrostatics);
    std::optional<Density> ballastDensity;
    if (const Metal* metal = findMetal(*materials, project.ballast.metal);
        metal != nullptr && metal->density) {
        ballastDensity = metal->density->value;
    }
    results->structure = memory.structure.get(
        0,
        StructureInput{results->hull, project.keel, project.frames, project.frame, project.floors,
                       project.floor, project.ballast, ballastDensity},
        structureStage, runs.structure);
    const Structure& structure = *results->structure;
    results->missing = structure.missing;
    add(results->problems, materials->problems);
    add(results->problems, results->hull->problems);
    add(results->problems, structure.problems);

    BoltPlan plan = planBolts(project, structure, *catalogue_);
    results->missing.insert(results->missing.end(), plan.missing.begin(), plan.missing.end());
    results->ballastBolts =
        memory.layout.get(0, std::move(plan.layout), layOutBallastBolts, runs.layout);
    layOutFastenings(project, *materials, *catalogue_, memory.fastenings, *results);
    const auto boat = boatMass(project, *results->afloat);
    if (!boat)
        results->missing.push_back({"hull.displacement", "the boat's displacement, for grounding"});

    BallastLoadInput load = ballastLoadInput(project, structure, *results->ballastBolts, *materials,
                                             boat.value_or(Mass{}));
    if (results->afloat->body) load.waterline = results->afloat->body->wettedLength;
    for (const LoadCase loadCase : allCases) {
        if (!structure.keel || (!structure.ballast && !needsNoBallast(loadCase))) continue;
        if (weighsTheBoat(loadCase) && !boat) continue;
        results->cases.push_back(memory.loads.get(
            static_cast<int>(loadCase), LoadKey{load, loadCase, caseSettings(project, loadCase)},
            [](const LoadKey& key) { return ballastLoads(key.input, key.loadCase, key.settings); },
            runs.loads));
    }
    if (const Wood* wood = findWood(*materials, project.keel.wood))
        results->keelWood = bearingWood(*wood);
    for (std::size_t i = 0; i < results->ballastBolts->placed.size(); ++i) {
        const PlacedBolt& placed = results->ballastBolts->placed[i];
        const auto input = memory.boltInputs.get(
            placed.id, boltCheckInput(project, structure, placed, *materials, *catalogue_),
            [](const BoltCheckInput& in) { return in; }, uncounted);
        results->boltInputs.push_back(input);
        for (const auto& loads : results->cases) {
            if (!loads->settled || !loadsTheKeel(loads->loadCase)) continue;
            BoltChecksKey key{*input, loads->bolts[i], loads->loadCase, loads->settings};
            results->checkSets.push_back(memory.boltChecks.get(
                placed.id + "/" + std::string(nameOf(loads->loadCase)), std::move(key),
                [](const BoltChecksKey& k) {
                    return CheckSet(checkBallastBolt(k.bolt, k.forces, k.loadCase, k.settings));
                },
                runs.checks));
        }
    }
    for (const auto& loads : results->cases) {
        if (!results->keelWood || !loads->settled || !loads->carried || !loads->bed) continue;
        results->checkSets.push_back(memory.bedChecks.get(
            static_cast<int>(loads->loadCase),
            BedChecksKey{*results->keelWood, loads, targetOf(project, ConsequenceClass::keel)},
            [](const BedChecksKey& k) {
                return CheckSet(checkBallastBed(k.wood, *k.loads, k.target));
            },
            runs.checks));
    }
    checkFrames(project, *materials, memory.frameChecks, *results);
    putWorstFirst(*results, memory.last.get());
    memory.last = results;
    return results;
}

std::vector<const Hole*> allHoles(const Results& results) {
    std::vector<const Hole*> holes;
    for (const Hole& hole : results.ballastBolts->holes) holes.push_back(&hole);
    for (const auto& frame : results.frameFastenings) {
        for (const Hole& hole : frame->holes) holes.push_back(&hole);
    }
    for (const auto& part : {results.planking, results.backbone}) {
        if (!part) continue;
        for (const Hole& hole : part->holes) holes.push_back(&hole);
    }
    return holes;
}

std::vector<const Finding*> allFindings(const Results& results) {
    std::vector<const Finding*> findings;
    for (const Finding& finding : results.ballastBolts->findings) findings.push_back(&finding);
    for (const auto& frame : results.frameFastenings) {
        for (const Finding& finding : frame->findings) findings.push_back(&finding);
    }
    for (const auto& part : {results.planking, results.backbone}) {
        if (!part) continue;
        for (const Finding& finding : part->findings) findings.push_back(&finding);
    }
    return findings;
}

std::optional<Trace> explain(const Results& results, const Check& check) {
    const auto loads = std::find_if(results.cases.begin(), results.cases.end(),
                                    [&](const auto& l) { return l->loadCase == check.loadCase; });
    if (loads == results.cases.end()) return explainAtFrame(results, check);
    if (check.id == "keel" && results.keelWood)
        return explainBallastBed(*results.keelWood, **loads, check);
    for (const auto& input : results.boltInputs) {
        if (input->id == check.id) return explainBallastBolt(*input, **loads, check);
    }
    return explainAtFrame(results, check);
}

std::vector<std::string> standingCautions() {
    return {
        "Results guide, they do not certify. What holds a ballast keel is a matter of life: a "
        "naval architect, a surveyor or the class "
        "rules in force decide, and local codes prevail.",
        "Figures marked from memory or judgement are to be confirmed before metal is bought or "
        "wood is drilled.",
        "The checks assume new metal and sound wet timber. After any grounding, and before long "
        "passages, have the keel's fastenings looked at.",
    };
}

}  // namespace fayline
