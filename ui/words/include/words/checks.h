#pragma once

#include <QString>
#include <map>
#include <string>
#include <vector>

#include "derive/results.h"
#include "words/values.h"

namespace fayline {

/// "rod", "rod, pull and shear", "washer", "keel timber crushed" …
QString limitStateWords(LimitStateKind kind);
/// "US", "Eurocode 5", "metal".
QString basisWords(Basis basis);
/// "×0.84"; "unknown", "not loaded" when there is no figure.
QString marginWords(const Check& check);
/// "×0.84 rod, knocked down to port".
QString checkLine(const Check& check);
/// A limit state as it is called for this group: a rod is a ballast bolt's.
QString stateWords(const Check& check);
/// "knockdown port", "grounding up".
QString caseShort(LoadCase loadCase);
/// The same for narrow places: "×0.84 rod + shear, knockdown port".
QString shortCheckLine(const Check& check);
/// Demand, what can be carried and what that means, as one or two plain sentences.
QString plainSentence(const Check& check, UnitSystem units);

/// Whether a check counts on screen while this basis leads; metal counts under either.
bool counts(const Check& check, Basis leading);

/// The worst check that counts for these things (fastenings, "keel"); null when there is none.
const Check* worstOf(const Results& results, const std::vector<std::string>& ids, Basis leading);

/// The worst check that counts of anything at this frame; null when nothing is checked there.
const Check* worstAtFrame(const Results& results, const std::string& frame, Basis leading);

/// The same limit state of the same thing in the same case under the other timber basis; null for
/// metal.
const Check* otherBasis(const Results& results, const Check& check);

/// How many things stand at each status, each thing by its worst check that counts.
std::map<Status, int> statusCounts(const Results& results, Basis leading);
/// "2 short · 5 near · 1 unknown", "all ok", "nothing checked yet".
QString countsLine(const std::map<Status, int>& counts);

}  // namespace fayline
