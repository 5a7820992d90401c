#include "guards.h"

#include <sqlite3.h>

#include <array>
#include <string_view>
#include <utility>

namespace fayline::store {
namespace {

bool isOneOf(const char* name, std::initializer_list<std::string_view> names) {
    if (name == nullptr) return false;
    for (const std::string_view one : names)
        if (one == name) return true;
    return false;
}

int authorize(void* mayWrite, int action, const char* first, const char* second, const char*,
              const char*) {
    const bool writing = mayWrite != nullptr;
    const auto allowIf = [](bool allowed) { return allowed ? SQLITE_OK : SQLITE_DENY; };
    switch (action) {
        case SQLITE_SELECT:
        case SQLITE_READ:
        case SQLITE_TRANSACTION:
            return SQLITE_OK;
        case SQLITE_PRAGMA:
            return allowIf(isOneOf(first, {"quick_check"}));
        case SQLITE_FUNCTION:
            return allowIf(isOneOf(second, {"count"}));
        case SQLITE_INSERT:
            return allowIf(writing && isOneOf(first, {"journal", "change", "snapshot"}));
        case SQLITE_UPDATE:
            return allowIf(writing && isOneOf(first, {"head"}));
        case SQLITE_DELETE:
            return allowIf(writing && isOneOf(first, {"snapshot"}));
        default:
            return SQLITE_DENY;
    }
}

}  // namespace

bool harden(sqlite3* native) {
    constexpr std::array switches = {std::pair{SQLITE_DBCONFIG_DEFENSIVE, 1},
                                     std::pair{SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0},
                                     std::pair{SQLITE_DBCONFIG_ENABLE_TRIGGER, 0},
                                     std::pair{SQLITE_DBCONFIG_ENABLE_VIEW, 0},
                                     std::pair{SQLITE_DBCONFIG_WRITABLE_SCHEMA, 0},
                                     std::pair{SQLITE_DBCONFIG_DQS_DDL, 0},
                                     std::pair{SQLITE_DBCONFIG_DQS_DML, 0},
                                     std::pair{SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0}};
    for (const auto& [what, wanted] : switches) {
        int now = -1;
        if (sqlite3_db_config(native, what, wanted, &now) != SQLITE_OK || now != wanted)
            return false;
    }
    constexpr std::array limits = {std::pair{SQLITE_LIMIT_LENGTH, 16 * 1024 * 1024},
                                   std::pair{SQLITE_LIMIT_SQL_LENGTH, 100'000},
                                   std::pair{SQLITE_LIMIT_COLUMN, 100},
                                   std::pair{SQLITE_LIMIT_EXPR_DEPTH, 50},
                                   std::pair{SQLITE_LIMIT_COMPOUND_SELECT, 10},
                                   std::pair{SQLITE_LIMIT_VDBE_OP, 25'000},
                                   std::pair{SQLITE_LIMIT_FUNCTION_ARG, 16},
                                   std::pair{SQLITE_LIMIT_ATTACHED, 0},
                                   std::pair{SQLITE_LIMIT_LIKE_PATTERN_LENGTH, 100},
                                   std::pair{SQLITE_LIMIT_VARIABLE_NUMBER, 64},
                                   std::pair{SQLITE_LIMIT_TRIGGER_DEPTH, 1}};
    for (const auto& [what, most] : limits) sqlite3_limit(native, what, most);
    return true;
}

void allowOnlyOwnStatements(sqlite3* native, bool mayWrite) {
    sqlite3_set_authorizer(native, authorize, mayWrite ? native : nullptr);
}

}  // namespace fayline::store
