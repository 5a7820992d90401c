#include <QFileDialog>
#include <QFileInfo>
#include <QPageLayout>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>

#include "derive/old_paper.h"
#include "derive/paper.h"
#include "paper/paper.h"
#include "paper_view.h"
#include "sheets/sheets_page.h"
#include "words/values.h"

namespace fayline {

std::optional<Sheet> SheetsPage::fresh() const {
    if (!preview_->sheet()) return std::nullopt;
    return sheetNamed(preview_->sheet()->id, desk_.project(), *desk_.results(), desk_.catalogue(),
                      options());
}

bool SheetsPage::print(QPrinter& printer) {
    const auto sheet = fresh();
    if (!sheet || sheet->pages.empty()) return false;
    printer.setFullPage(true);
    printer.setPageSize(QPageSize(paper_ == PaperSize::a4 ? QPageSize::A4 : QPageSize::Letter));
    printer.setPageMargins(QMarginsF(0, 0, 0, 0), QPageLayout::Millimeter);
    printer.setDocName(asText(sheet->title));
    QPainter painter;
    if (!painter.begin(&printer)) {
        emit stopped(
            tr("%1 was not printed: the printer cannot be reached.").arg(asText(sheet->title)), {});
        return false;
    }
    constexpr double mmPerInch = 25.4;
    const double perMm = printer.resolution() / mmPerInch;
    const int from = printer.fromPage() > 0 ? printer.fromPage() : 1;
    const int to = printer.toPage() > 0 ? printer.toPage() : preview_->pageCount();
    bool first = true;
    for (int page = from; page <= to && page <= preview_->pageCount(); ++page) {
        if (!first && !printer.newPage()) break;
        first = false;
        paintPage(painter, sheet->pages[static_cast<std::size_t>(page - 1)], perMm);
    }
    if (!painter.end()) return false;
    keepRecord({{paperRecord(sheet->id), sheet->revision}},
               tr("%1 put on paper").arg(asText(sheet->title)));
    return true;
}

void SheetsPage::askAndPrint() {
    if (!preview_->sheet()) return;
    QPrinter printer(QPrinter::HighResolution);
    QPrintDialog dialog(&printer, window());
    dialog.setWindowTitle(tr("Print %1").arg(asText(preview_->sheet()->title)));
    dialog.setOption(QAbstractPrintDialog::PrintPageRange);
    dialog.setMinMax(1, preview_->pageCount());
    if (dialog.exec() == QDialog::Accepted && print(printer))
        emit done(tr("%1 went to the printer. Printed at actual size, its check bars measure true.")
                      .arg(asText(preview_->sheet()->title)));
}

void SheetsPage::askAndSave() {
    if (!preview_->sheet()) return;
    const QString folder = QFileInfo(desk_.path()).absolutePath();
    const QString path = QFileDialog::getSaveFileName(
        window(), tr("Where to keep the sheet"),
        folder + QLatin1Char('/') + asText(preview_->sheet()->fileName), tr("PDF (*.pdf)"));
    if (!path.isEmpty()) savePdf(path);
}

void SheetsPage::askAndSaveAll() {
    const QString folder = QFileDialog::getExistingDirectory(
        window(), tr("Folder for all sheets"), QFileInfo(desk_.path()).absolutePath());
    if (!folder.isEmpty()) saveAll(folder);
}

bool SheetsPage::savePdf(const QString& path) {
    const auto sheet = fresh();
    if (!sheet) return false;
    if (const auto written = writePdf(path, *sheet); !written) {
        emit stopped(asText(written.error().line()), {});
        return false;
    }
    keepRecord({{paperRecord(sheet->id), sheet->revision}},
               tr("%1 put on paper").arg(asText(sheet->title)));
    emit done(tr("%1 stands in %2.").arg(asText(sheet->title), path));
    return true;
}

}  // namespace fayline
