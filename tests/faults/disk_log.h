#pragma once

#include <filesystem>
#include <map>
#include <random>
#include <string>
#include <vector>

namespace fayline::test {

/// One call by which a program changed a folder or asked for it to be brought to the disk.
struct DiskCall {
    enum class Kind { create, write, truncate, syncFile, remove, syncFolder, promise };
    Kind kind = Kind::promise;
    int file = 0;        ///< a file made again under an old name is another file
    std::string name;    ///< create, remove
    std::size_t at = 0;  ///< write: where; truncate: the new size; promise: the number of the step
    std::string bytes;
};

/// A folder's names and the files behind them.
struct Disk {
    std::map<std::string, int> names;
    std::map<int, std::string> contents;
};

Disk readDisk(const std::filesystem::path& folder);
void writeDisk(const Disk& disk, const std::filesystem::path& folder);

/// From now on every call of this program that touches the folder is written down, whoever makes
/// it: open64, pwrite64, ftruncate64, fdatasync, fsync and unlink are taken over.
void startDiskLog(const std::filesystem::path& folder, const Disk& start);
/// Notes that the program was told that a step is safe.
void notePromise(std::int64_t step);
std::vector<DiskCall> stopDiskLog();

/// What the disk does of what it is asked.
enum class Syncs { kept, filesOnly, ignored };

/// What may be found after the power fails before call `cut`: all that was synced; of the rest each
/// write as it is, left out, or with some of its 512-byte sectors; of the changes of names that
/// were not synced the first few.
Disk afterPowerCut(const Disk& start, const std::vector<DiskCall>& calls, std::size_t cut,
                   Syncs syncs, std::mt19937& random);

}  // namespace fayline::test
