#pragma once

#include <QPalette>
#include <QString>
#include <optional>

#include "derive/results.h"
#include "words/values.h"

namespace fayline {

/// One check with everything that is said about it, both timber bases where it has two.
struct Working {
    Check check;
    std::optional<Trace> trace;
    std::optional<Check> other;  ///< the same limit state under the other timber basis
    std::vector<const Check*>
        others;  ///< everything else checked of the same thing, worst first; into the results
};
Working workingOf(const Results& results, const Check& check);

/// "Ballast bolt K.5: rod, pull and shear".
QString workingTitle(const Check& check);

/// The working as plain text: the margin in plain words first, then formula, figures, sources, what
/// lies outside.
QString workingText(const Working& working, const Speech& speech);
/// The same as rich text; the links are "check:N", N counting Working::others.
QString workingHtml(const Working& working, const Speech& speech, const QPalette& palette);
/// One working alone: formula, clause, figures, sources, what lies outside.
QString traceHtml(const Trace& trace, UnitSystem units, const QPalette& palette);

}  // namespace fayline
