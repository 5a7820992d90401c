#pragma once

#include <chrono>
#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "project/journal.h"
#include "quantity/result.h"
#include "store/project_file.h"

namespace fayline {

/// One project file on a thread of its own, so that typing never waits for the disk.
///
/// Steps are written in the order posted. The first that fails stops the row: it and those behind
/// it are kept, and tried again by retry(), by close(), or when a further step is posted. All
/// functions may be called from any thread, close() and the destructor not from a callback.
class StoreThread {
  public:
    /// Called on the store's thread, one at a time; a window passes them on to its own thread.
    struct Callbacks {
        /// The step is on the disk and survives a power cut.
        std::function<void(const Step&)> settled;
        /// The step is not in the file; it is kept for another try.
        std::function<void(const Step&, const Problem&)> failed;
    };

    /// The file as it was when opened.
    struct Opened {
        FileOutcome outcome = FileOutcome::ok;
        std::string says;
        std::filesystem::path path;
        bool readOnly = true;
        Journal journal;
        std::map<std::string, std::string> facts;
    };

    /// As ProjectFile::open and ProjectFile::create; waits for the outcome.
    static Result<std::unique_ptr<StoreThread>> open(const std::filesystem::path& path,
                                                     OpenMode mode, Callbacks callbacks);
    static Result<std::unique_ptr<StoreThread>> create(const std::filesystem::path& path,
                                                       const std::vector<Step>& firstSteps,
                                                       const std::string& program,
                                                       Callbacks callbacks);

    StoreThread(const StoreThread&) = delete;
    StoreThread& operator=(const StoreThread&) = delete;
    ~StoreThread();  ///< close()

    [[nodiscard]] const Opened& opened() const;

    /// Puts the step in the row and returns at once.
    void post(Step step);
    /// Tries again after a failure.
    void retry();
    /// Copies the file (ProjectFile::copyTo) after the steps posted so far, or at once and without
    /// the unsettled ones if the row stands still. `done` is called on the store's thread.
    void copyTo(std::filesystem::path target, std::function<void(const Result<void>&)> done);

    /// Waits until nothing is left to do or a step has failed; true if all posted is on the disk.
    bool waitUntilSettled(std::chrono::milliseconds atMost);
    /// Why the row stands still; nothing while it moves.
    [[nodiscard]] std::optional<Problem> trouble() const;
    /// The steps posted that are not in the file.
    [[nodiscard]] std::vector<Step> unsettled() const;
    /// When the last step was settled; nothing before the first.
    [[nodiscard]] std::optional<std::chrono::system_clock::time_point> lastSettled() const;

    /// Writes what is left, closes the file and ends the thread. The steps that could not be
    /// written are returned (and stay in unsettled()). A second call does nothing.
    std::vector<Step> close();

  private:
    struct Shared;
    explicit StoreThread(std::unique_ptr<Shared> shared);
    static Result<std::unique_ptr<StoreThread>> start(std::function<Result<OpenResult>()> opening,
                                                      Callbacks callbacks);
    std::unique_ptr<Shared> shared_;
};

}  // namespace fayline
