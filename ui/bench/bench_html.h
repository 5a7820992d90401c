#pragma once

#include <QPalette>
#include <QString>

#include "bench_lines.h"

namespace fayline {

/// The workings of one limit state under both bases.
QString workingHtml(const BenchResult& worked, LimitStateKind kind, UnitSystem units,
                    const QPalette& palette);
/// The order in which limit states let go, under both bases.
QString orderHtml(const BenchResult& worked, UnitSystem units, const QPalette& palette);
/// What it can carry in each of the four states of moisture.
QString moistureHtml(const BenchResult& worked, UnitSystem units, const QPalette& palette);
/// Sizes against what they should be, what driving takes, cautions.
QString sizesHtml(const BenchResult& worked, UnitSystem units, const QPalette& palette);

}  // namespace fayline
