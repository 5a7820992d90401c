#pragma once

#include <filesystem>
#include <string>

#include "connection.h"
#include "quantity/result.h"

namespace fayline::store {

/// A failed call as a problem: its cause, then `consequence` (what is safe: "step 12 is not in the
/// file; the 11 before it are"), then what to do.
Problem problemOf(const SqlFailure& failure, const std::filesystem::path& path,
                  const std::string& consequence);

/// The same for a system call that set errno.
Problem problemOfSystem(int systemError, const std::filesystem::path& path,
                        const std::string& consequence);

Problem movedProblem(const std::filesystem::path& path, const std::string& consequence);
Problem changedOutsideProblem(const std::filesystem::path& path, const std::string& consequence);
Problem existsProblem(const std::filesystem::path& path);

/// Whether a failure means that what is in the file is broken, not that reading it went wrong.
bool isDamage(const SqlFailure& failure);

}  // namespace fayline::store
