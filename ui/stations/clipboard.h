#pragma once

#include <QItemSelection>
#include <QMimeData>
#include <QString>
#include <memory>
#include <vector>

#include "block.h"
#include "stations_model.h"

namespace fayline {

/// The selected rectangle as text and HTML: every cell as typed, with its unit, so that it can be
/// pasted back; in HTML a number stands beside it in the column's unit for spreadsheets. `headings`
/// adds a row of them, and the frames.
/// `shown` are the columns in sight; others are passed over.
std::unique_ptr<QMimeData> copyCells(const StationsModel& model, const QItemSelection& selection,
                                     const std::vector<int>& shown, bool headings);

/// What a paste would do.
struct PastePlan {
    std::vector<CellText> texts;
    QString refusal;  ///< one sentence; empty when the block fits
};

/// Lays a block on the grid: one cell fills the whole selection, a selection that is a multiple of
/// the block is tiled, else the block starts at the selection's first cell. Cells that cannot be
/// edited are passed over when the text is what they show, or empty.
PastePlan planPaste(const StationsModel& model, const QItemSelection& selection,
                    const std::vector<int>& shown, const Block& block);

}  // namespace fayline
