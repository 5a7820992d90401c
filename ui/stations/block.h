#pragma once

#include <QString>
#include <QStringList>
#include <vector>

namespace fayline {

/// A rectangle of texts as spreadsheets put it on the clipboard. Rows may differ in length.
using Block = std::vector<QStringList>;

/// Reads tab separated text: any line ends, none needed after the last row; a cell in double quotes
/// may hold tabs, line ends and doubled quotes. A quote inside a cell that does not start with one
/// is a plain letter: 1 1/2".
Block readBlock(const QString& text);

/// The same the other way; only cells that hold a tab or a line end, or start with a quote, are
/// quoted.
QString writeBlock(const Block& block);

}  // namespace fayline
