#pragma once

#include <QString>
#include <string>
#include <vector>

#include "catalogue/catalogue.h"
#include "joint/joint.h"
#include "quantity/display.h"
#include "words/materials.h"

namespace fayline {

/// What a field of the panel holds.
enum class BenchKind {
    text,
    length,
    force,
    stress,
    density,
    area,
    ratio,
    degrees,
    count,
    gauge,
    word,
    wood,
    metal,
    lead,
    thread,
    nut,
    yesNo
};

/// One key of a joint file as a field.
struct BenchField {
    std::string key;  ///< "thickness" of a member, "fastener.length"
    QString label, help;
    BenchKind kind = BenchKind::text;
    std::vector<std::string> words{};  ///< of a choice, as the file writes them
    std::vector<FastenerKind> only{};  ///< kinds of fastening it means anything for; none: all
    bool more = false;                 ///< measured, declared or rare: shown on demand
};

const std::vector<BenchField>& memberFields();
const std::vector<BenchField>& fastenerFields();
const std::vector<BenchField>& loadFields();

bool isChosen(BenchKind kind);
/// What can be chosen for a field, without the empty choice.
std::vector<Choice> choicesFor(const BenchField& field, const Catalogue& catalogue);
/// The unit a bare number takes, as it is written behind it; empty where there is none.
QString unitOf(const BenchField& field, UnitSystem units);
/// What was typed as the joint file wants it: ids for names, a unit behind a bare number.
std::string fileText(const BenchField& field, const QString& typed, UnitSystem units,
                     const Catalogue& catalogue);
/// A joint file's text as the panel shows it.
QString shownText(const BenchField& field, const std::string& text, const Catalogue& catalogue);

}  // namespace fayline
