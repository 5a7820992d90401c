#include "disk_log.h"

#include <fcntl.h>
#include <sys/syscall.h>
#include <unistd.h>

#include <cstdarg>
#include <fstream>
#include <iterator>

namespace fayline::test {
namespace {

using Kind = DiskCall::Kind;

constexpr int theFolder = -1;
constexpr std::size_t sector = 512;

struct Recorder {
    std::string folder;
    std::map<std::string, int> names;
    std::map<int, int> opened;  ///< descriptor → file
    std::vector<DiskCall> calls;
    int nextFile = 0;
    bool on = false;
};

Recorder& recorder() {
    static Recorder one;
    return one;
}

void noteOpened(const char* path, int flags, int descriptor, bool wasThere) {
    Recorder& log = recorder();
    const std::filesystem::path opened(path);
    if (opened == log.folder) {
        log.opened[descriptor] = theFolder;
        return;
    }
    if (opened.parent_path() != log.folder) return;
    const std::string name = opened.filename().string();
    if (!wasThere && (flags & O_CREAT) != 0) {
        log.names[name] = log.nextFile++;
        log.calls.push_back({Kind::create, log.names[name], name, 0, {}});
    }
    log.opened[descriptor] = log.names.at(name);
}

void noteCall(int descriptor, DiskCall call) {
    Recorder& log = recorder();
    const auto found = log.opened.find(descriptor);
    if (!log.on || found == log.opened.end()) return;
    call.file = found->second;
    if (call.kind == Kind::syncFile && call.file == theFolder) call.kind = Kind::syncFolder;
    log.calls.push_back(std::move(call));
}

void apply(std::string& content, const DiskCall& call) {
    if (call.kind == Kind::truncate) {
        content.resize(call.at, '\0');
        return;
    }
    if (content.size() < call.at + call.bytes.size())
        content.resize(call.at + call.bytes.size(), '\0');
    content.replace(call.at, call.bytes.size(), call.bytes);
}

/// Some sectors of a write arrive, some do not.
void applyTorn(std::string& content, const DiskCall& call, std::mt19937& random) {
    for (std::size_t done = 0; done < call.bytes.size();) {
        const std::size_t room = sector - (call.at + done) % sector;
        const std::size_t size = std::min(room, call.bytes.size() - done);
        if (random() % 2 == 0)
            apply(content,
                  {Kind::write, call.file, {}, call.at + done, call.bytes.substr(done, size)});
        done += size;
    }
}

void applyName(Disk& disk, const DiskCall& call) {
    if (call.kind == Kind::create)
        disk.names[call.name] = call.file;
    else
        disk.names.erase(call.name);
}

}  // namespace

Disk readDisk(const std::filesystem::path& folder) {
    Disk disk;
    int file = 0;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        std::ifstream in(entry.path(), std::ios::binary);
        disk.names[entry.path().filename().string()] = file;
        disk.contents[file++].assign(std::istreambuf_iterator<char>(in),
                                     std::istreambuf_iterator<char>());
    }
    return disk;
}

void writeDisk(const Disk& disk, const std::filesystem::path& folder) {
    for (const auto& [name, file] : disk.names) {
        std::ofstream out(folder / name, std::ios::binary | std::ios::trunc);
        out << disk.contents.at(file);
    }
}

void startDiskLog(const std::filesystem::path& folder, const Disk& start) {
    Recorder& log = recorder();
    log = {};
    log.folder = folder.string();
    log.names = start.names;
    log.nextFile = static_cast<int>(start.contents.size());
    log.on = true;
}

void notePromise(std::int64_t step) {
    recorder().calls.push_back({Kind::promise, 0, {}, static_cast<std::size_t>(step), {}});
}

std::vector<DiskCall> stopDiskLog() {
    recorder().on = false;
    return recorder().calls;
}

Disk afterPowerCut(const Disk& start, const std::vector<DiskCall>& calls, std::size_t cut,
                   Syncs syncs, std::mt19937& random) {
    Disk disk = start;
    std::map<int, std::vector<DiskCall>> writes;
    std::vector<DiskCall> names;
    for (std::size_t i = 0; i < cut; ++i) {
        const DiskCall& call = calls[i];
        switch (call.kind) {
            case Kind::create:
                disk.contents[call.file];
                [[fallthrough]];
            case Kind::remove:
                names.push_back(call);
                break;
            case Kind::write:
            case Kind::truncate:
                writes[call.file].push_back(call);
                break;
            case Kind::syncFile:
                if (syncs == Syncs::ignored) break;
                for (const DiskCall& write : writes[call.file])
                    apply(disk.contents[call.file], write);
                writes[call.file].clear();
                break;
            case Kind::syncFolder:
                if (syncs != Syncs::kept) break;
                for (const DiskCall& name : names) applyName(disk, name);
                names.clear();
                break;
            case Kind::promise:
                break;
        }
    }
    for (const auto& [file, unsynced] : writes)
        for (const DiskCall& write : unsynced) {
            const auto fate = random() % 3;
            if (fate == 0) apply(disk.contents[file], write);
            if (fate == 1 && write.kind == Kind::write)
                applyTorn(disk.contents[file], write, random);
        }
    const std::size_t kept = random() % (names.size() + 1);
    for (std::size_t i = 0; i < kept; ++i) applyName(disk, names[i]);
    return disk;
}

}  // namespace fayline::test

// The calls taken over. The program's own definitions come before those of the C library.
extern "C" {

int open64(const char* path, int flags, ...) {
    va_list rest;
    va_start(rest, flags);
    // NOLINTNEXTLINE(clang-analyzer-valist.Uninitialized): clang 14 does not see va_start here
    const mode_t mode = (flags & O_CREAT) != 0 ? va_arg(rest, mode_t) : 0;
    va_end(rest);
    const bool on = fayline::test::recorder().on;
    const bool wasThere = on && ::access(path, F_OK) == 0;
    const int descriptor =
        static_cast<int>(::syscall(SYS_openat, AT_FDCWD, path, flags | O_LARGEFILE, mode));
    if (on && descriptor >= 0) fayline::test::noteOpened(path, flags, descriptor, wasThere);
    return descriptor;
}

int close(int descriptor) {
    if (fayline::test::recorder().on) fayline::test::recorder().opened.erase(descriptor);
    return static_cast<int>(::syscall(SYS_close, descriptor));
}

ssize_t pwrite64(int descriptor, const void* bytes, size_t count, off64_t at) {
    const auto done = ::syscall(SYS_pwrite64, descriptor, bytes, count, at);
    if (done > 0)
        fayline::test::noteCall(descriptor, {fayline::test::DiskCall::Kind::write,
                                             0,
                                             {},
                                             static_cast<std::size_t>(at),
                                             std::string(static_cast<const char*>(bytes),
                                                         static_cast<std::size_t>(done))});
    return done;
}

int ftruncate64(int descriptor, off64_t size) noexcept {
    const auto done = static_cast<int>(::syscall(SYS_ftruncate, descriptor, size));
    if (done == 0)
        fayline::test::noteCall(
            descriptor,
            {fayline::test::DiskCall::Kind::truncate, 0, {}, static_cast<std::size_t>(size), {}});
    return done;
}

int fdatasync(int descriptor) {
    fayline::test::noteCall(descriptor, {fayline::test::DiskCall::Kind::syncFile, 0, {}, 0, {}});
    return static_cast<int>(::syscall(SYS_fdatasync, descriptor));
}

int fsync(int descriptor) {
    fayline::test::noteCall(descriptor, {fayline::test::DiskCall::Kind::syncFile, 0, {}, 0, {}});
    return static_cast<int>(::syscall(SYS_fsync, descriptor));
}

int unlink(const char* path) noexcept {
    const auto done = static_cast<int>(::syscall(SYS_unlink, path));
    auto& log = fayline::test::recorder();
    const std::filesystem::path removed(path);
    if (done == 0 && log.on && removed.parent_path() == log.folder) {
        log.names.erase(removed.filename().string());
        log.calls.push_back(
            {fayline::test::DiskCall::Kind::remove, 0, removed.filename().string(), 0, {}});
    }
    return done;
}
}
