// What the panel takes in and gives out: joint files, fastenings of the hull, records.

#include <QDateTime>
#include <QDialog>
#include <QDialogButtonBox>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QSaveFile>
#include <QVBoxLayout>
#include <algorithm>

#include "bench/bench_page.h"
#include "bench_work.h"
#include "check/fastening.h"
#include "paper/paper.h"
#include "words/checks.h"
#include "words/things.h"

namespace fayline {
namespace {

constexpr qint64 largestFile = 1 << 20;

/// The set of fastenings an id belongs to, with its frame's loads.
struct Found {
    const SetCheckInput* set = nullptr;
    const FrameChecks* frame = nullptr;
};

Found findSet(const Results& results, const std::string& id) {
    for (const auto& frame : results.frameChecks) {
        if (!frame) continue;
        for (const SetCheckInput& set : frame->sets) {
            if (set.set.id == id) return {&set, frame.get()};
        }
    }
    return {};
}

bool writeWhole(const QString& path, const std::string& text, QString& why) {
    QSaveFile file(path);
    const auto size = static_cast<qint64>(text.size());
    if (file.open(QIODevice::WriteOnly) && file.write(text.data(), size) == size && file.commit())
        return true;
    why = file.errorString();
    return false;
}

}  // namespace

std::string BenchPage::fileText() const {
    return work_->fileText();
}

bool BenchPage::load(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        emit stopped(tr("%1 was not read: %2").arg(path, file.errorString()), {});
        return false;
    }
    if (file.size() > largestFile) {
        emit stopped(tr("%1 was not read: it is over 1 MB, a joint file is smaller.").arg(path),
                     {});
        return false;
    }
    const std::string text = file.readAll().toStdString();
    const auto read = setup_.reader(text, QFileInfo(path).fileName().toStdString());
    if (!read) {
        QStringList details;
        for (const Problem& problem : read.error()) details.append(asText(problem.line()));
        emit stopped(tr("%1 was not taken: %2").arg(QFileInfo(path).fileName(), details.front()),
                     details);
        return false;
    }
    work_->replace(draftOf(text), tr("joint from %1").arg(QFileInfo(path).fileName()));
    emit done(tr("The joint of %1 is on the bench.").arg(QFileInfo(path).fileName()));
    return true;
}

bool BenchPage::save(const QString& path) {
    settle();
    QString why;
    if (!writeWhole(path, work_->fileText(), why)) {
        emit stopped(tr("%1 was not written: %2").arg(path, why), {});
        return false;
    }
    emit done(tr("The joint stands in %1.").arg(path));
    return true;
}

std::vector<std::string> BenchPage::takable() const {
    std::vector<std::string> ids;
    for (const auto& frame : desk_.results()->frameChecks) {
        if (!frame) continue;
        for (const SetCheckInput& set : frame->sets) {
            if (set.joint) ids.push_back(set.set.id);
        }
    }
    return ids;
}

bool BenchPage::takeFromHull(const std::string& id) {
    const Found found = findSet(*desk_.results(), id);
    if (found.set == nullptr || !found.set->joint) return false;
    const Speech speech = speechOf(desk_.project());
    Joint joint = *found.set->joint;
    for (const Check* check : checksOf(*desk_.results(), id)) {
        // Worst first: the case its joint is worst in is the one to look at.
        const auto load =
            std::find_if(found.frame->loads.begin(), found.frame->loads.end(),
                         [&](const FrameLoad& one) { return one.loadCase == check->loadCase; });
        if (load == found.frame->loads.end() || !check->margin) continue;
        const SetDemand demand = demandOn(found.set->set, *load);
        joint = inCase(joint, load->settings, demand);
        joint.load = JointLoad{demand.lateral, demand.axial};
        break;
    }
    NamedJoint named =
        namedJoint(joint, found.set->metal, desk_.catalogue(), speech.basis, speech.units);
    work_->replace(draftOf(named), tr("joint of %1").arg(thingTitle(id)));
    emit done(tr("%1 is on the bench, with the load of its worst case. Changes here leave the hull "
                 "as it is.")
                  .arg(thingTitle(id)));
    return true;
}

PaperSize BenchPage::usualPaper() const {
    return work_->units() == UnitSystem::inches ? PaperSize::letter : PaperSize::a4;
}

std::optional<Record> BenchPage::calculation() const {
    if (!work_->last()) return std::nullopt;
    const BenchResult& worked = *work_->last();
    RecordOptions options;
    options.subject = tr("one joint, from the bench").toStdString();
    options.printed =
        QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-dd HH:mm")).toStdString();
    options.program = setup_.program;
    return jointRecord(worked.named, worked.result, worked.traces, options);
}

QString BenchPage::plainResult() const {
    const auto record = calculation();
    return record ? asText(textOf(*record)) : QString();
}

bool BenchPage::saveRecord(const QString& path, PaperSize paper) {
    settle();
    const auto record = calculation();
    if (!record) return false;
    QString why;
    if (path.endsWith(QLatin1String(".txt"), Qt::CaseInsensitive)) {
        if (!writeWhole(path, textOf(*record), why)) {
            emit stopped(tr("%1 was not written: %2").arg(path, why), {});
            return false;
        }
    } else if (const auto written = writePdf(path, layOut(*record, paper)); !written) {
        emit stopped(asText(written.error().line()), {});
        return false;
    }
    emit done(tr("The calculation record stands in %1.").arg(path));
    return true;
}

bool BenchPage::print(QPrinter& printer, PaperSize paper) {
    settle();
    const auto record = calculation();
    if (!record) return false;
    printer.setFullPage(true);
    printer.setDocName(asText(record->title));
    if (!paintSheet(printer, printer.resolution(), layOut(*record, paper))) {
        emit stopped(tr("The record was not printed: the printer cannot be reached."), {});
        return false;
    }
    return true;
}

void BenchPage::startAfresh() {
    settle();
    work_->replace(firstDraft(), tr("the first example"));
}

void BenchPage::askAndLoad() {
    settle();
    const QString path = QFileDialog::getOpenFileName(window(), tr("Load a joint"),
                                                      QFileInfo(desk_.path()).absolutePath(),
                                                      tr("Joint files (*.json);;All files (*)"));
    if (!path.isEmpty()) load(path);
}

void BenchPage::askAndSave() {
    const QString path = QFileDialog::getSaveFileName(
        window(), tr("Save the joint"),
        QFileInfo(desk_.path()).absolutePath() + QStringLiteral("/joint.json"),
        tr("Joint files (*.json)"));
    if (!path.isEmpty()) save(path);
}

void BenchPage::askAndSaveRecord() {
    const QString path = QFileDialog::getSaveFileName(
        window(), tr("Where to keep the calculation record"),
        QFileInfo(desk_.path()).absolutePath() + QStringLiteral("/record-joint.pdf"),
        tr("PDF (*.pdf);;Text (*.txt)"));
    if (!path.isEmpty()) saveRecord(path, usualPaper());
}

void BenchPage::askAndPrint() {
    if (!work_->last()) return;
    QPrinter printer(QPrinter::HighResolution);
    QPrintDialog dialog(&printer, window());
    dialog.setWindowTitle(tr("Print the calculation record"));
    if (dialog.exec() != QDialog::Accepted) return;
    const bool a4 = printer.pageLayout().pageSize().id() == QPageSize::A4;
    if (print(printer, a4 ? PaperSize::a4 : PaperSize::letter))
        emit done(tr("The calculation record went to the printer."));
}

void BenchPage::askAndTake() {
    settle();
    const auto ids = takable();
    if (ids.empty()) {
        emit stopped(tr("There is no fastening to take: open a hull whose fastenings are decided. "
                        "Ballast bolts are worked as rods, on the Margins page."),
                     {});
        return;
    }
    QDialog dialog(window());
    dialog.setWindowTitle(tr("Take a joint from the hull"));
    auto* filter = new QLineEdit;
    filter->setPlaceholderText(tr("Part of its name, such as F17 or planks"));
    filter->setAccessibleName(tr("Part of its name"));
    filter->setClearButtonEnabled(true);
    auto* list = new QListWidget;
    list->setAccessibleName(tr("Fastenings of the hull"));
    list->setUniformItemSizes(true);
    for (const std::string& id : ids) {
        const auto checks = checksOf(*desk_.results(), id);
        QString words = thingTitle(id);
        if (!checks.empty()) words = tr("%1: %2").arg(words, checkLine(*checks.front()));
        auto* item = new QListWidgetItem(words, list);
        item->setData(Qt::UserRole, asText(id));
    }
    list->setCurrentRow(0);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    auto* layout = new QVBoxLayout(&dialog);
    layout->addWidget(filter);
    layout->addWidget(list, 1);
    auto* note = new QLabel(
        tr("With the load of its worst case. Ballast bolts are worked as rods, on the Margins "
           "page."));
    note->setWordWrap(true);
    layout->addWidget(note);
    layout->addWidget(buttons);
    connect(filter, &QLineEdit::textChanged, list, [list](const QString& part) {
        QListWidgetItem* first = nullptr;
        for (int i = 0; i < list->count(); ++i) {
            QListWidgetItem* item = list->item(i);
            const bool fits =
                item->text().contains(part, Qt::CaseInsensitive) ||
                item->data(Qt::UserRole).toString().contains(part, Qt::CaseInsensitive);
            item->setHidden(!fits);
            if (fits && first == nullptr) first = item;
        }
        list->setCurrentItem(first);
    });
    connect(buttons, &QDialogButtonBox::accepted, &dialog, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
    connect(list, &QListWidget::itemActivated, &dialog, &QDialog::accept);
    dialog.resize(fontMetrics().averageCharWidth() * 90, 460);
    if (dialog.exec() != QDialog::Accepted || list->currentItem() == nullptr) return;
    takeFromHull(list->currentItem()->data(Qt::UserRole).toString().toStdString());
}

}  // namespace fayline
