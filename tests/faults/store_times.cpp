// How long the store takes on the disk under a folder: store_times FOLDER

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <vector>

#include "sample_steps.h"
#include "store/project_file.h"

namespace {

using namespace fayline;

double since(std::chrono::steady_clock::time_point begun) {
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begun)
        .count();
}

void print(const char* what, std::vector<double> ms) {
    std::sort(ms.begin(), ms.end());
    const auto at = [&](std::size_t percent) { return ms[(ms.size() - 1) * percent / 100]; };
    std::printf("%-32s n=%zu  p50 %.2f  p95 %.2f  p99 %.2f  max %.2f ms\n", what, ms.size(), at(50),
                at(95), at(99), ms.back());
}

}  // namespace

int main(int argc, char** argv) {
    if (argc < 2) return 2;
    const auto path = std::filesystem::path(argv[1]) / "store_times.fayline";
    std::filesystem::remove(path);
    const std::vector<Step> steps = test::journalOf(10'000).steps();
    auto begun = std::chrono::steady_clock::now();
    {
        const auto made = ProjectFile::create(path, steps, "store_times");
        if (!made) return 1;
        std::printf("create and open 10,000 steps: %.0f ms, %ju bytes\n", since(begun),
                    static_cast<std::uintmax_t>(std::filesystem::file_size(path)));
    }
    std::vector<double> ms;
    for (int i = 0; i < 11; ++i) {
        begun = std::chrono::steady_clock::now();
        if (!ProjectFile::open(path, OpenMode::readWrite)) return 1;
        ms.push_back(since(begun));
    }
    print("open, check, fold 10,000 steps", ms);
    ms.clear();
    for (int i = 0; i < 5; ++i) {
        begun = std::chrono::steady_clock::now();
        if (Journal::fold(steps).problem) return 1;
        ms.push_back(since(begun));
    }
    print("of which chain and fold alone", ms);
    ms.clear();
    auto opened = ProjectFile::open(path, OpenMode::readWrite);
    for (int i = 0; i < 300; ++i) {
        const Step step = test::nextStep(opened->file->journal());
        begun = std::chrono::steady_clock::now();
        if (!opened->file->append(step)) return 1;
        ms.push_back(since(begun));
    }
    print("commit one step", ms);
    const auto copy = std::filesystem::path(argv[1]) / "store_times_copy.fayline";
    std::filesystem::remove(copy);
    begun = std::chrono::steady_clock::now();
    if (!opened->file->copyTo(copy)) return 1;
    std::printf("copy, sync, check: %.0f ms\n", since(begun));
    opened->file.reset();
    std::filesystem::remove(path);
    std::filesystem::remove(copy);
}
