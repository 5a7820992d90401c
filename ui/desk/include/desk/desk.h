#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "catalogue/catalogue.h"
#include "derive/derive.h"
#include "project/journal.h"
#include "project/project.h"
#include "quantity/result.h"
#include "store/store_thread.h"

namespace fayline {

/// What a desk is given: nothing it could not be given otherwise in a test.
struct DeskSetup {
    std::shared_ptr<const Catalogue> catalogue;
    std::string program;               ///< kept in files made here: "fayline 0.1.0"
    std::string who;                   ///< stands beside every decision
    std::function<std::string()> now;  ///< UTC, ISO 8601
};

/// Decisions as typed: name and text; an empty text takes the decision back to the rule.
using Typed = std::vector<std::pair<std::string, std::string>>;

/// One open project: its journal, what it folds to, and everything worked out from it. Every edit
/// of the window goes through here. The window's thread decides and derives; a thread of the
/// store's own writes each step as it is made.
class Desk : public QObject {
    Q_OBJECT

  public:
    explicit Desk(DeskSetup setup, QObject* parent = nullptr);
    ~Desk() override;

    /// Opens a file for editing; for reading only when it is in use or cannot be written (see
    /// outcome()). The project open before is closed first, once the new one has opened.
    Result<void> open(const QString& path);
    /// Makes a new file from steps and opens it. Never replaces a file.
    Result<void> create(const QString& path, const std::vector<Step>& steps);
    /// Writes what is left and lets the file go. Returns how many steps could not be written.
    int close();

    [[nodiscard]] bool isOpen() const { return store_ != nullptr; }
    [[nodiscard]] bool isReadOnly() const;
    [[nodiscard]] FileOutcome outcome() const;
    /// Why the file is read-only, what was put right on opening; empty when all is well.
    [[nodiscard]] QString says() const;
    [[nodiscard]] QString path() const;
    /// The boat's name, else the file's.
    [[nodiscard]] QString boatName() const;

    [[nodiscard]] const Journal& journal() const { return journal_; }
    [[nodiscard]] const Project& project() const { return project_; }
    /// Never null.
    [[nodiscard]] const std::shared_ptr<const Results>& results() const { return results_; }
    [[nodiscard]] const Catalogue& catalogue() const { return *setup_.catalogue; }
    /// Decisions in the file that no longer read; left out of the project value.
    [[nodiscard]] const Problems& unread() const { return unread_; }

    /// One step. Nothing to change is no problem and no step.
    Result<void> decide(const Typed& typed, const QString& why = {});
    /// Whether decide() would take it, without doing it.
    [[nodiscard]] Result<void> wouldTake(const Typed& typed) const;
    Result<void> undo();
    Result<void> redo();
    Result<void> note(const QString& text);
    /// Something that has happened, with its name and text: one step that undo passes over.
    Result<void> record(const Typed& happened, const QString& title);
    /// What undo and redo would act on; empty when there is nothing.
    [[nodiscard]] QString undoTitle() const;
    [[nodiscard]] QString redoTitle() const;

    /// Whether every step is on the disk, as a few words: "settled 10:42", "settling…", "not
    /// settled".
    [[nodiscard]] QString settledMark() const;
    /// Why steps are not on the disk; nothing while saving works.
    [[nodiscard]] std::optional<Problem> trouble() const;
    void retrySaving();
    /// A whole copy under a new name, all steps made here included; never replaces a file.
    Result<void> saveCopy(const QString& path) const;
    bool waitUntilSettled(int milliseconds);

  signals:
    /// Another project, or none, is on the desk.
    void projectChanged();
    void resultsChanged();
    /// After all the rest of another project, or none, has been told.
    void projectArrived();
    void decisionsChanged(const QStringList& whats);
    /// Something was recorded; what is worked out is as before.
    void recordsChanged();
    void settledChanged(const QString& mark);
    /// Saving fails, or works again.
    void troubleChanged();

  private:
    StoreThread::Callbacks callbacks();
    void adopt(std::unique_ptr<StoreThread> store);
    Result<void> take(Result<Step> step);
    void stepSettled(int generation, std::int64_t number);
    void stepFailed(int generation, const Problem& problem);
    [[nodiscard]] StepBy by(const QString& why = {}) const;

    DeskSetup setup_;
    Deriver deriver_;
    std::unique_ptr<StoreThread> store_;
    int generation_ = 0;  ///< counts projects, so that late news of a closed one is known as such
    Journal journal_;
    Project project_;
    Problems unread_;
    std::shared_ptr<const Results> results_;
    std::int64_t settled_ = 0;
    std::optional<Problem> trouble_;
};

/// The local time of day of an ISO 8601 UTC time, with the date when that is not `today`'s:
/// "10:42", "14 Nov 10:42". Empty when the text is no time.
QString clockText(const std::string& utc, const std::string& today);

/// The decisions that replace a project's offsets with a table read from a file; points the table
/// lacks go back to nothing decided.
ResultAll<Typed> offsetDecisions(const QString& file, const Project& present);

}  // namespace fayline
