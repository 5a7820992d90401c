#pragma once

#include <filesystem>
#include <map>
#include <memory>
#include <optional>
#include <string>

#include "connection.h"
#include "file_lock.h"
#include "project/journal.h"
#include "store/project_file.h"

namespace fayline {

/// The lock is let go after the connection is closed: members end in reverse order.
struct ProjectFile::Parts {
    std::filesystem::path path;
    std::optional<store::FileLock> lock;
    std::unique_ptr<store::Connection> connection;
    Journal journal;
    std::map<std::string, std::string> facts;
    std::string seal;
    bool readOnly = true;
};

}  // namespace fayline
