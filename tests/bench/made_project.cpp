#include "made_project.h"

#include <stdexcept>

#include "made_hull.h"
#include "project/decide.h"
#include "session.h"

namespace fayline::bench {
namespace {

const StepBy by{"bench", "", "2026-11-25T12:00:00Z"};

template <typename Result>
auto valueOf(Result result) {
    if (!result) throw std::runtime_error(result.error().line());
    return std::move(*result);
}

}  // namespace

Made::Made(int frames, int strakes, int eachCrossing)
    : catalogue(std::make_shared<const Catalogue>(cli::builtInCatalogue().value())) {
    // Ranges need the frames they name: one step a decision would be slow, one for all cannot be.
    test::Decisions first, then;
    for (auto& decision : test::madeHull(frames, strakes, eachCrossing))
        (decision.first.find('-') == std::string::npos ? first : then).push_back(decision);
    for (const auto& typed : {first, then}) {
        Step step = valueOf(prepareDecisions(journal, project, *catalogue, typed, by));
        if (!journal.append(std::move(step))) throw std::runtime_error("the step does not fit");
        project = cli::foldJournal(journal).project;
    }
}

Step Made::prepared(const std::string& what, const std::string& text) const {
    return valueOf(prepareDecisions(journal, project, *catalogue, {{what, text}}, by));
}

void Made::decide(const std::string& what, const std::string& text) {
    if (!journal.append(prepared(what, text))) throw std::runtime_error("the step does not fit");
    if (!applyChange(project, what, text)) throw std::runtime_error(what);
}

void Made::growTo(std::size_t steps) {
    for (long turn = 0; journal.steps().size() < steps; ++turn)
        decide("K.5.diameter", diameterOf(turn));
}

}  // namespace fayline::bench
