#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>

#include "main_window.h"
#include "notice_bar.h"
#include "start_page.h"
#include "words/values.h"

namespace fayline {
namespace {

constexpr int patience_ms = 5000;

QStringList linesOf(const Problems& problems) {
    QStringList lines;
    for (const Problem& problem : problems) lines.append(asText(problem.line()));
    return lines;
}

/// The first of "name.fayline", "name 2.fayline" … that is free.
QString freeName(const QDir& folder, const QString& name) {
    for (int number = 1;; ++number) {
        const QString tail = number == 1 ? QString() : QStringLiteral(" %1").arg(number);
        const QString path = folder.filePath(name + tail + QStringLiteral(".fayline"));
        if (!QFileInfo::exists(path)) return path;
    }
}

/// The user's documents; where there is no such folder, the home folder.
QString usualFolder() {
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return QDir(documents).exists() ? documents : QDir::homePath();
}

}  // namespace

bool MainWindow::openFile(const QString& path) {
    settlePages();
    if (!letGo()) return false;
    notice_->clear();
    if (const auto done = desk_.open(path); !done) {
        notice_->showNotice(asText(done.error().line()));
        return false;
    }
    settings_.addRecent(desk_.path());
    fillRecent();
    noticeAboutFile();
    return true;
}

void MainWindow::noticeAboutFile() {
    if (desk_.says().isEmpty() && desk_.outcome() == FileOutcome::ok) return;
    QString says = desk_.says();
    std::vector<NoticeBar::Deed> deeds;
    if (desk_.isReadOnly()) {
        if (says.isEmpty())
            says = desk_.outcome() == FileOutcome::inUse
                       ? tr("This file is open for editing elsewhere; here it can only be read.")
                       : tr("This file can only be read here.");
        deeds.emplace_back(tr("Save a copy…"), [this] { saveCopy(); });
    }
    if (!says.isEmpty()) notice_->showNotice(says, {}, deeds);
}

bool MainWindow::createFile(const QString& path, const ResultAll<std::vector<Step>>& steps) {
    settlePages();
    if (!letGo()) return false;
    notice_->clear();
    if (!steps) {
        notice_->showNotice(
            tr("No project was made: there are problems in what it was to be made from."),
            linesOf(steps.error()));
        return false;
    }
    if (const auto done = desk_.create(path, *steps); !done) {
        notice_->showNotice(asText(done.error().line()));
        return false;
    }
    settings_.addRecent(desk_.path());
    fillRecent();
    return true;
}

QString MainWindow::askForNewFile(const QString& title, const QString& name) {
    const QDir folder(usualFolder());
    QFileDialog dialog(this, title, folder.path(), tr("Fayline projects (*.fayline)"));
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(QStringLiteral("fayline"));
    dialog.setOption(QFileDialog::DontConfirmOverwrite);  // a file that is there is never replaced
    dialog.selectFile(freeName(folder, name));
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) return {};
    return dialog.selectedFiles().front();
}

void MainWindow::newProject() {
    const QString path = askForNewFile(tr("Where to keep the new project"), tr("boat"));
    if (!path.isEmpty()) createFile(path, services_.blank());
}

void MainWindow::newFromOffsets() {
    const QString offsets =
        QFileDialog::getOpenFileName(this, tr("Table of offsets"), usualFolder(),
                                     tr("Tables of offsets (*.csv *.txt);;All files (*)"));
    if (offsets.isEmpty()) return;
    const auto steps = services_.fromOffsets(std::filesystem::path(offsets.toStdString()));
    if (!steps) {
        notice_->showNotice(tr("No project was made: the offsets cannot be read."),
                            linesOf(steps.error()));
        return;
    }
    const QString path =
        askForNewFile(tr("Where to keep the new project"), QFileInfo(offsets).completeBaseName());
    if (!path.isEmpty()) createFile(path, steps);
}

void MainWindow::open() {
    const QString folder = desk_.isOpen() ? QFileInfo(desk_.path()).absolutePath() : usualFolder();
    const QString path = QFileDialog::getOpenFileName(
        this, tr("Open a project"), folder, tr("Fayline projects (*.fayline);;All files (*)"));
    if (!path.isEmpty()) openFile(path);
}

void MainWindow::openRecent(const QString& path) {
    if (QFileInfo::exists(path)) {
        openFile(path);
        return;
    }
    notice_->showNotice(tr("%1 is no longer there.").arg(path), {},
                        {{tr("Take it off the list"), [this, path] {
                              settings_.dropRecent(path);
                              fillRecent();
                              notice_->clear();
                          }}});
}

void MainWindow::demo() {
    const QString path = askForNewFile(tr("Where to keep the demo hull"), tr("Hollin, demo"));
    if (!path.isEmpty()) createFile(path, services_.demo());
}

void MainWindow::saveCopy() {
    const QString path = askForNewFile(tr("Where to keep the copy"),
                                       QFileInfo(desk_.path()).completeBaseName() + tr(", copy"));
    if (path.isEmpty()) return;
    if (const auto done = desk_.saveCopy(path); !done) {
        notice_->showNotice(asText(done.error().line()));
        return;
    }
    if (desk_.isReadOnly() || desk_.trouble()) {
        desk_.close();
        openFile(path);
        return;
    }
    notice_->showNotice(tr("Copied to %1.").arg(path));
}

void MainWindow::closeProject() {
    if (!letGo()) return;
    desk_.close();
    notice_->clear();
}

/// Whether the project may be let go: every step is on the disk, or the user accepts that some are
/// not.
bool MainWindow::letGo() {
    if (!desk_.isOpen() || desk_.waitUntilSettled(patience_ms)) return true;
    QMessageBox box(
        QMessageBox::Warning, tr("Not all is on the disk"),
        tr("The last changes could not be written to %1. What was written before is safe.")
            .arg(desk_.path()),
        QMessageBox::NoButton, this);
    box.setInformativeText(tr("Save a copy elsewhere to keep them."));
    const auto* copy = box.addButton(tr("Save a copy…"), QMessageBox::AcceptRole);
    const auto* lose = box.addButton(tr("Lose the last changes"), QMessageBox::DestructiveRole);
    box.setEscapeButton(box.addButton(tr("Go back"), QMessageBox::RejectRole));
    box.exec();
    if (box.clickedButton() == copy) {
        saveCopy();
        return !desk_.trouble();
    }
    return box.clickedButton() == lose;
}

}  // namespace fayline
