#pragma once

struct sqlite3;

namespace fayline::store {

/// Turns off what a project file has no use for (triggers, views, extensions, schema edits, double
/// quoted text) and caps lengths and depths, before anything is read. False if SQLite refuses.
bool harden(sqlite3* native);

/// From here on only the statements the store itself uses are accepted: reading, quick_check and
/// transactions; and with `mayWrite` adding steps and moving the head.
void allowOnlyOwnStatements(sqlite3* native, bool mayWrite);

}  // namespace fayline::store
