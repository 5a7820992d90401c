#pragma once

#include <filesystem>
#include <string>

#include "session.h"

namespace fayline::cli {

std::string marginsJson(const Session& session);
std::string marginsCsv(const Session& session);
std::string marginsText(const Session& session);

std::string holesJson(const Session& session);
std::string holesCsv(const Session& session);
std::string holesText(const Session& session);

/// The hull's figures; the problem when it has none.
Result<std::string> hullJson(const Session& session);
Result<std::string> hullText(const Session& session);

std::string metalJson(const Session& session);
std::string metalCsv(const Session& session);
std::string metalText(const Session& session);

std::string journalJson(const Session& session);
std::string journalText(const Session& session);

std::string verifyJson(const VerifyResult& verified);
std::string verifyText(const std::filesystem::path& path, const VerifyResult& verified);

}  // namespace fayline::cli
