#include "desk/desk.h"

#include <QFileInfo>
#include <QMetaObject>
#include <utility>

#include "project/decide.h"
#include "project/fields.h"

namespace fayline {
namespace {

std::filesystem::path pathOf(const QString& path) {
    return QFileInfo(path).absoluteFilePath().toStdString();
}

Problem nothingOpen() {
    return {"desk.empty", "", "no project is open", "open one, or begin a new one"};
}

Problem readingOnly() {
    return {"file.read_only", "", Desk::tr("this file is open for reading only").toStdString(),
            Desk::tr("save a copy to change it").toStdString()};
}

}  // namespace

Desk::Desk(DeskSetup setup, QObject* parent)
    : QObject(parent),
      setup_(std::move(setup)),
      deriver_(setup_.catalogue),
      results_(deriver_.derive(project_)) {}

Desk::~Desk() {
    if (store_) store_->close();
}

StoreThread::Callbacks Desk::callbacks() {
    const int generation = generation_ + 1;
    StoreThread::Callbacks calls;
    calls.settled = [this, generation](const Step& step) {
        QMetaObject::invokeMethod(
            this, [this, generation, number = step.number] { stepSettled(generation, number); },
            Qt::QueuedConnection);
    };
    calls.failed = [this, generation](const Step&, const Problem& why) {
        QMetaObject::invokeMethod(
            this, [this, generation, why] { stepFailed(generation, why); }, Qt::QueuedConnection);
    };
    return calls;
}

Result<void> Desk::open(const QString& path) {
    if (store_ && QFileInfo(path) == QFileInfo(this->path())) return {};
    auto store = StoreThread::open(pathOf(path), OpenMode::readWrite, callbacks());
    if (!store) return tl::unexpected(store.error());
    adopt(std::move(*store));
    return {};
}

Result<void> Desk::create(const QString& path, const std::vector<Step>& steps) {
    auto store = StoreThread::create(pathOf(path), steps, setup_.program, callbacks());
    if (!store) return tl::unexpected(store.error());
    adopt(std::move(*store));
    return {};
}

void Desk::adopt(std::unique_ptr<StoreThread> store) {
    if (store_) store_->close();
    ++generation_;
    store_ = std::move(store);
    journal_ = store_->opened().journal;
    const auto& decided = journal_.decided();
    Folded folded = foldDecisions({decided.begin(), decided.end()});
    project_ = std::move(folded.project);
    unread_ = std::move(folded.problems);
    settled_ = journal_.tip();
    trouble_.reset();
    results_ = deriver_.derive(project_);
    emit projectChanged();
    emit resultsChanged();
    emit settledChanged(settledMark());
    emit troubleChanged();
    emit projectArrived();
}

int Desk::close() {
    if (!store_) return 0;
    const auto left = static_cast<int>(store_->close().size());
    store_.reset();
    ++generation_;
    journal_ = {};
    project_ = {};
    unread_.clear();
    trouble_.reset();
    results_ = deriver_.derive(project_);
    emit projectChanged();
    emit resultsChanged();
    emit settledChanged(settledMark());
    emit troubleChanged();
    emit projectArrived();
    return left;
}

bool Desk::isReadOnly() const {
    return store_ == nullptr || store_->opened().readOnly;
}
FileOutcome Desk::outcome() const {
    return store_ ? store_->opened().outcome : FileOutcome::missing;
}
QString Desk::says() const {
    return store_ ? QString::fromStdString(store_->opened().says) : QString();
}
QString Desk::path() const {
    return store_ ? QString::fromStdString(store_->opened().path.string()) : QString();
}

QString Desk::boatName() const {
    if (project_.hull.name) return QString::fromStdString(*project_.hull.name);
    return QFileInfo(path()).completeBaseName();
}

StepBy Desk::by(const QString& why) const {
    return {setup_.who, why.toStdString(), setup_.now()};
}

Result<void> Desk::decide(const Typed& typed, const QString& why) {
    if (!store_) return tl::unexpected(nothingOpen());
    return take(prepareDecisions(journal_, project_, *setup_.catalogue, typed, by(why)));
}

Result<void> Desk::wouldTake(const Typed& typed) const {
    if (!store_) return tl::unexpected(nothingOpen());
    const auto step = prepareDecisions(journal_, project_, *setup_.catalogue, typed, by());
    if (!step && step.error().code != "nothing") return tl::unexpected(step.error());
    return {};
}

Result<void> Desk::undo() {
    if (!store_) return tl::unexpected(nothingOpen());
    return take(journal_.prepareUndo(by()));
}

Result<void> Desk::redo() {
    if (!store_) return tl::unexpected(nothingOpen());
    return take(journal_.prepareRedo(by()));
}

Result<void> Desk::note(const QString& text) {
    return decide({{"note", text.toStdString()}});
}

Result<void> Desk::record(const Typed& happened, const QString& title) {
    if (!store_) return tl::unexpected(nothingOpen());
    if (isReadOnly()) return tl::unexpected(readingOnly());
    std::vector<Journal::NewText> texts;
    for (const auto& [what, text] : happened) texts.emplace_back(what, text);
    auto step = journal_.prepareRecord(texts, title.toStdString(), by());
    if (!step) return tl::unexpected(step.error());
    if (auto added = journal_.append(*step); !added) return added;
    store_->post(std::move(*step));
    emit recordsChanged();
    emit settledChanged(settledMark());
    return {};
}

Result<void> Desk::take(Result<Step> step) {
    if (!step) {
        if (step.error().code == "nothing") return {};
        return tl::unexpected(step.error());
    }
    if (isReadOnly()) return tl::unexpected(readingOnly());
    Project next = project_;
    QStringList whats;
    for (const Change& change : step->changes) {
        if (auto done = applyChange(next, change.what, change.newText); !done) return done;
        whats.append(QString::fromStdString(change.what));
    }
    if (auto added = journal_.append(*step); !added) return added;
    project_ = std::move(next);
    results_ = deriver_.derive(project_);
    store_->post(std::move(*step));
    emit decisionsChanged(whats);
    emit resultsChanged();
    emit settledChanged(settledMark());
    return {};
}

QString Desk::undoTitle() const {
    return QString::fromStdString(journal_.nextUndoTitle());
}
QString Desk::redoTitle() const {
    return QString::fromStdString(journal_.nextRedoTitle());
}

QString Desk::settledMark() const {
    if (!store_) return {};
    if (isReadOnly()) return tr("reading only");
    if (trouble_) return tr("not settled");
    if (settled_ < journal_.tip()) return tr("settling…");
    if (journal_.steps().empty()) return tr("settled");
    return tr("settled %1").arg(clockText(journal_.steps().back().at, setup_.now()));
}

void Desk::stepSettled(int generation, std::int64_t number) {
    if (generation != generation_) return;
    settled_ = std::max(settled_, number);
    if (trouble_) {
        trouble_.reset();
        emit troubleChanged();
    }
    emit settledChanged(settledMark());
}

void Desk::stepFailed(int generation, const Problem& why) {
    if (generation != generation_) return;
    trouble_ = why;
    emit troubleChanged();
    emit settledChanged(settledMark());
}

std::optional<Problem> Desk::trouble() const {
    return trouble_;
}

void Desk::retrySaving() {
    if (store_) store_->retry();
}

Result<void> Desk::saveCopy(const QString& path) const {
    if (!store_) return tl::unexpected(nothingOpen());
    auto file = ProjectFile::create(pathOf(path), journal_.steps(), setup_.program);
    if (!file) return tl::unexpected(file.error());
    return {};
}

bool Desk::waitUntilSettled(int milliseconds) {
    return !store_ || store_->waitUntilSettled(std::chrono::milliseconds(milliseconds));
}

}  // namespace fayline
