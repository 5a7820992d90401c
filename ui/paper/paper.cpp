#include "paper/paper.h"

#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

#include "paint/font.h"
#include "paint/paint.h"

namespace fayline {
namespace {

constexpr int dotsPerInch = 600;
constexpr double millimetresPerInch = 25.4;

Problem cannotWrite(const QString& path, const QString& why) {
    return {"file.write", path.toStdString(),
            "the sheet could not be written: " + why.toStdString(),
            "a folder that can be written to, with room in it"};
}

QPageSize pageSizeOf(const Drawing& drawing) {
    for (const auto& [paper, id] : {std::pair(PaperSize::a4, QPageSize::A4),
                                    std::pair(PaperSize::letter, QPageSize::Letter)}) {
        if (sizeOf(paper) == drawing.size) return QPageSize(id);
    }
    return QPageSize(QSizeF(drawing.size.width, drawing.size.height), QPageSize::Millimeter);
}

void prepare(QPdfWriter& writer, const SheetPage& page) {
    writer.setPageSize(pageSizeOf(page.drawing));
    writer.setPageMargins(QMarginsF(0.0, 0.0, 0.0, 0.0), QPageLayout::Millimeter);
}

}  // namespace

void paintPage(QPainter& painter, const SheetPage& page, double perMm) {
    registerBundledFont();
    paintDrawing(painter, page.drawing, PaintMap{perMm, {}}, printStyle());
}

bool paintSheet(QPagedPaintDevice& printer, int printerDotsPerInch, const Sheet& sheet) {
    if (sheet.pages.empty()) return false;
    printer.setPageSize(pageSizeOf(sheet.pages.front().drawing));
    printer.setPageMargins(QMarginsF(0.0, 0.0, 0.0, 0.0), QPageLayout::Millimeter);
    QPainter painter;
    if (!painter.begin(&printer)) return false;
    bool first = true;
    for (const SheetPage& page : sheet.pages) {
        if (!first && !printer.newPage()) return false;
        first = false;
        paintPage(painter, page, printerDotsPerInch / millimetresPerInch);
    }
    return painter.end();
}

Result<void> writePdf(const QString& path, const std::vector<const SheetPage*>& pages,
                      const QString& title) {
    if (pages.empty())
        return tl::unexpected(Problem{"pdf.empty", path.toStdString(), "there is no page to write",
                                      "at least one page"});
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return tl::unexpected(cannotWrite(path, file.errorString()));
    {
        QPdfWriter writer(&file);
        writer.setTitle(title);
        writer.setCreator(QStringLiteral("Fayline"));
        writer.setResolution(dotsPerInch);
        prepare(writer, *pages.front());
        QPainter painter;
        if (!painter.begin(&writer))
            return tl::unexpected(cannotWrite(path, QStringLiteral("no page could be begun")));
        for (std::size_t i = 0; i < pages.size(); ++i) {
            if (i > 0) {
                prepare(writer, *pages[i]);
                if (!writer.newPage())
                    return tl::unexpected(
                        cannotWrite(path, QStringLiteral("no further page could be begun")));
            }
            paintPage(painter, *pages[i], dotsPerInch / millimetresPerInch);
        }
        if (!painter.end())
            return tl::unexpected(cannotWrite(path, QStringLiteral("the page could not be ended")));
    }
    if (!file.commit()) return tl::unexpected(cannotWrite(path, file.errorString()));
    return {};
}

Result<void> writePdf(const QString& path, const Sheet& sheet) {
    std::vector<const SheetPage*> pages;
    for (const SheetPage& page : sheet.pages) pages.push_back(&page);
    return writePdf(path, pages, QString::fromStdString(sheet.title + ", " + sheet.revision));
}

Result<void> writePdf(const QString& path, const std::vector<Sheet>& sheets, const QString& title) {
    std::vector<const SheetPage*> pages;
    for (const Sheet& sheet : sheets) {
        for (const SheetPage& page : sheet.pages) pages.push_back(&page);
    }
    return writePdf(path, pages, title);
}

}  // namespace fayline
