// The calculation record of the hull, or of one station, as a file.

#include <QDateTime>
#include <QFileDialog>
#include <QFileInfo>
#include <QSaveFile>

#include "derive/record.h"
#include "main_window.h"
#include "notice_bar.h"
#include "paper/paper.h"
#include "words/values.h"

namespace fayline {

bool MainWindow::saveRecord(const QString& frame, const QString& path) {
    settlePages();
    const Project& project = desk_.project();
    const Results& results = *desk_.results();
    RecordOptions options;
    options.subject =
        tr("%1, step %2").arg(desk_.boatName()).arg(desk_.journal().tip()).toStdString();
    options.printed =
        QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-dd HH:mm")).toStdString();
    options.program = services_.program;
    std::optional<Record> record;
    if (frame.isEmpty()) {
        const auto& all = desk_.journal().decided();
        record = hullRecord(project, results, desk_.catalogue(), {all.begin(), all.end()}, options);
    } else {
        record = stationRecord(frame.toStdString(), project, results, desk_.catalogue(), options);
    }
    if (!record) {
        notice_->showRefusal(tr("There is no frame %1.").arg(frame));
        return false;
    }
    if (path.endsWith(QLatin1String(".txt"), Qt::CaseInsensitive)) {
        const std::string text = textOf(*record);
        const auto size = static_cast<qint64>(text.size());
        QSaveFile file(path);
        if (!file.open(QIODevice::WriteOnly) || file.write(text.data(), size) != size ||
            !file.commit()) {
            notice_->showRefusal(tr("%1 was not written: %2").arg(path, file.errorString()));
            return false;
        }
    } else {
        const PaperSize paper =
            speechOf(project).units == UnitSystem::inches ? PaperSize::letter : PaperSize::a4;
        if (const auto written = writePdf(path, fayline::layOut(*record, paper)); !written) {
            notice_->showRefusal(asText(written.error().line()));
            return false;
        }
    }
    notice_->showNotice(tr("The calculation record stands in %1.").arg(path));
    return true;
}

void MainWindow::askAndSaveRecord(const QString& frame) {
    const QString name = frame.isEmpty() ? QStringLiteral("record-hull.pdf")
                                         : QStringLiteral("record-%1.pdf").arg(frame);
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Where to keep the calculation record"),
        QFileInfo(desk_.path()).absolutePath() + QLatin1Char('/') + name,
        tr("PDF (*.pdf);;Text (*.txt)"));
    if (!path.isEmpty()) saveRecord(frame, path);
}

}  // namespace fayline
