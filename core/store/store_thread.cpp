#include "store/store_thread.h"

#include <condition_variable>
#include <csignal>
#include <deque>
#include <future>
#include <map>
#include <mutex>
#include <thread>
#include <utility>

namespace fayline {
namespace {

struct Copy {
    std::filesystem::path target;
    std::function<void(const Result<void>&)> done;
    std::size_t afterSteps = 0;  ///< how many posted steps come first
};

/// A write past a size limit then fails with an error instead of ending the program.
void blockSizeSignal() {
    sigset_t signals;
    sigemptyset(&signals);
    sigaddset(&signals, SIGXFSZ);
    pthread_sigmask(SIG_BLOCK, &signals, nullptr);
}

}  // namespace

struct StoreThread::Shared {
    Callbacks callbacks;
    Opened opened;
    std::thread thread;

    mutable std::mutex mutex;
    std::condition_variable work;  ///< something to do
    std::condition_variable rest;  ///< nothing to do, or a step failed
    std::deque<Step> steps;        ///< posted, not in the file; the first may be being written
    std::deque<Copy> copies;
    std::size_t stepsTaken = 0;  ///< settled so far
    bool busy = false;
    bool closing = false;
    std::optional<Problem> trouble;
    std::optional<std::chrono::system_clock::time_point> lastSettled;

    [[nodiscard]] bool stepDue() const { return !steps.empty() && !trouble; }
    [[nodiscard]] bool copyDue() const {
        return !copies.empty() && (copies.front().afterSteps <= stepsTaken || trouble);
    }
    [[nodiscard]] bool idle() const { return !busy && !stepDue() && !copyDue(); }

    void run(ProjectFile& file);
    void writeOne(ProjectFile& file, std::unique_lock<std::mutex>& lock);
    void copyOne(const ProjectFile& file, std::unique_lock<std::mutex>& lock);
};

void StoreThread::Shared::writeOne(ProjectFile& file, std::unique_lock<std::mutex>& lock) {
    const Step step = steps.front();
    lock.unlock();
    const auto written = file.append(step);
    lock.lock();
    if (written) {
        steps.pop_front();
        ++stepsTaken;
        lastSettled = std::chrono::system_clock::now();
    } else {
        trouble = written.error();
    }
    lock.unlock();
    if (written && callbacks.settled) callbacks.settled(step);
    if (!written && callbacks.failed) callbacks.failed(step, written.error());
    lock.lock();
}

void StoreThread::Shared::copyOne(const ProjectFile& file, std::unique_lock<std::mutex>& lock) {
    const Copy copy = std::move(copies.front());
    copies.pop_front();
    lock.unlock();
    const auto copied = file.copyTo(copy.target);
    if (copy.done) copy.done(copied);
    lock.lock();
}

void StoreThread::Shared::run(ProjectFile& file) {
    std::unique_lock lock(mutex);
    for (;;) {
        work.wait(lock, [&] { return stepDue() || copyDue() || closing; });
        if (!stepDue() && !copyDue()) break;
        busy = true;
        if (copyDue())
            copyOne(file, lock);
        else
            writeOne(file, lock);
        busy = false;
        if (idle()) rest.notify_all();
    }
}

StoreThread::StoreThread(std::unique_ptr<Shared> shared) : shared_(std::move(shared)) {}

StoreThread::~StoreThread() {
    close();
}

Result<std::unique_ptr<StoreThread>> StoreThread::start(std::function<Result<OpenResult>()> opening,
                                                        Callbacks callbacks) {
    auto shared = std::make_unique<Shared>();
    shared->callbacks = std::move(callbacks);
    std::promise<Result<void>> promise;
    auto outcome = promise.get_future();
    shared->thread = std::thread(
        [promise = std::move(promise), at = shared.get(), open = std::move(opening)]() mutable {
            blockSizeSignal();
            auto opened = open();
            if (!opened) {
                promise.set_value(tl::unexpected(opened.error()));
                return;
            }
            const std::unique_ptr<ProjectFile> file = std::move(opened->file);
            at->opened = {opened->outcome,    std::move(opened->says), file->path(),
                          file->isReadOnly(), file->journal(),         file->facts()};
            promise.set_value({});
            at->run(*file);
        });
    const auto started = outcome.get();
    if (!started) {
        shared->thread.join();
        return tl::unexpected(started.error());
    }
    return std::unique_ptr<StoreThread>(new StoreThread(std::move(shared)));
}

Result<std::unique_ptr<StoreThread>> StoreThread::open(const std::filesystem::path& path,
                                                       OpenMode mode, Callbacks callbacks) {
    return start([path, mode] { return ProjectFile::open(path, mode); }, std::move(callbacks));
}

Result<std::unique_ptr<StoreThread>> StoreThread::create(const std::filesystem::path& path,
                                                         const std::vector<Step>& firstSteps,
                                                         const std::string& program,
                                                         Callbacks callbacks) {
    return start(
        [path, firstSteps, program] { return ProjectFile::create(path, firstSteps, program); },
        std::move(callbacks));
}

const StoreThread::Opened& StoreThread::opened() const {
    return shared_->opened;
}

void StoreThread::post(Step step) {
    const std::lock_guard lock(shared_->mutex);
    shared_->steps.push_back(std::move(step));
    shared_->trouble.reset();
    shared_->work.notify_one();
}

void StoreThread::retry() {
    const std::lock_guard lock(shared_->mutex);
    shared_->trouble.reset();
    shared_->work.notify_one();
}

void StoreThread::copyTo(std::filesystem::path target,
                         std::function<void(const Result<void>&)> done) {
    const std::lock_guard lock(shared_->mutex);
    shared_->copies.push_back(
        {std::move(target), std::move(done), shared_->stepsTaken + shared_->steps.size()});
    shared_->work.notify_one();
}

bool StoreThread::waitUntilSettled(std::chrono::milliseconds atMost) {
    std::unique_lock lock(shared_->mutex);
    shared_->rest.wait_for(lock, atMost, [&] { return shared_->idle(); });
    return shared_->steps.empty();
}

std::optional<Problem> StoreThread::trouble() const {
    const std::lock_guard lock(shared_->mutex);
    return shared_->trouble;
}

std::vector<Step> StoreThread::unsettled() const {
    const std::lock_guard lock(shared_->mutex);
    return {shared_->steps.begin(), shared_->steps.end()};
}

std::optional<std::chrono::system_clock::time_point> StoreThread::lastSettled() const {
    const std::lock_guard lock(shared_->mutex);
    return shared_->lastSettled;
}

std::vector<Step> StoreThread::close() {
    {
        const std::lock_guard lock(shared_->mutex);
        if (!shared_->closing) shared_->trouble.reset();
        shared_->closing = true;
        shared_->work.notify_one();
    }
    if (shared_->thread.joinable()) shared_->thread.join();
    return unsettled();
}

}  // namespace fayline
