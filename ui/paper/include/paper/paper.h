#pragma once

#include <QString>
#include <vector>

#include "quantity/result.h"
#include "sheet/paper.h"

class QPagedPaintDevice;
class QPainter;

namespace fayline {

/// Paints a page black on white, as it is printed. The painter's origin is the paper's top left
/// corner; `perMm` of its units make a millimetre.
void paintPage(QPainter& painter, const SheetPage& page, double perMm);

/// Paints every page of a sheet on a printer whose full page, margins and all, is its own; false
/// when it cannot be reached.
bool paintSheet(QPagedPaintDevice& printer, int printerDotsPerInch, const Sheet& sheet);

/// Writes pages of one size into one PDF. The whole file is written aside and then renamed, so that
/// a failure leaves what was there. Problem codes: pdf.empty, file.write.
Result<void> writePdf(const QString& path, const std::vector<const SheetPage*>& pages,
                      const QString& title);
Result<void> writePdf(const QString& path, const Sheet& sheet);
/// Several sheets in one file, one after another.
Result<void> writePdf(const QString& path, const std::vector<Sheet>& sheets, const QString& title);

}  // namespace fayline
