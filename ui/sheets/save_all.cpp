#include "save_all.h"

#include <QDir>
#include <QSaveFile>
#include <QTimer>

#include "derive/old_paper.h"
#include "paper/paper.h"
#include "quantity/csv.h"
#include "words/values.h"

namespace fayline {

SaveAll::SaveAll(const Desk& desk, const PaperOptions& options, const QString& folder,
                 QObject* parent)
    : QObject(parent),
      project_(desk.project()),
      results_(desk.results()),
      catalogue_(desk.catalogue()),
      steps_(desk.journal().steps()),
      options_(options),
      folder_(folder),
      list_(csvLine({"sheet", "file", "page", "side", "revision"})),
      turn_(new QTimer(this)) {
    options_.steps = &steps_;
    maker_ = std::make_unique<const SheetMaker>(project_, *results_, catalogue_, options_);
    for (const SheetName& name : maker_->names()) {
        if (!name.empty) names_.push_back(name);
    }
    connect(turn_, &QTimer::timeout, this, &SaveAll::next);
    turn_->start(0);
}

void SaveAll::stop() {
    turn_->stop();
    emit finished(false);
}

void SaveAll::next() {
    if (at_ >= names_.size()) {
        turn_->stop();
        if (writeList()) emit finished(true);
        return;
    }
    const SheetName& name = names_[at_++];
    const auto sheet = maker_->sheet(name.id);
    if (!sheet || sheet->empty) return;
    const QString path = QDir(folder_).filePath(asText(sheet->fileName));
    if (const auto done = writePdf(path, *sheet); !done) {
        turn_->stop();
        emit failed(asText(done.error().line()));
        return;
    }
    for (const SheetPage& page : sheet->pages) {
        list_ += csvLine(
            {sheet->id, sheet->fileName, std::to_string(page.number), page.side, sheet->revision});
    }
    records_.emplace_back(paperRecord(sheet->id), sheet->revision);
    ++written_;
    emit progressed(static_cast<int>(at_), count());
}

bool SaveAll::writeList() {
    QSaveFile file(QDir(folder_).filePath(QStringLiteral("sheets.csv")));
    const auto size = static_cast<qint64>(list_.size());
    if (file.open(QIODevice::WriteOnly) && file.write(list_.data(), size) == size && file.commit())
        return true;
    emit failed(tr("sheets.csv was not written: %1.").arg(file.errorString()));
    return false;
}

}  // namespace fayline
