#include "rows.h"

#include "problems.h"
#include "quantity/digest.h"
#include "schema.h"

namespace fayline::store {
namespace {

/// Failures that mean damage go into the rows; others are passed on.
Sql<void> damagedOr(Rows& rows, const SqlFailure& failure) {
    if (!isDamage(failure)) return tl::unexpected(failure);
    if (rows.damage.empty()) rows.damage = "SQLite says: " + failure.message;
    return {};
}

void damageAt(Rows& rows, std::int64_t step, std::string what) {
    if (!rows.firstBadStep) rows.firstBadStep = step;
    if (rows.damage.empty()) rows.damage = std::move(what);
}

Sql<void> readFacts(Connection& connection, Rows& rows) {
    Query query(connection,
                "SELECT CAST(key AS BLOB), CAST(value AS BLOB) FROM project ORDER BY key");
    for (;;) {
        const auto more = query.next();
        if (!more) return damagedOr(rows, more.error());
        if (!*more) break;
        rows.facts.emplace(query.text(0), query.text(1));
    }
    rows.seal = sealOf(rows.facts);
    return {};
}

struct Snapshot {
    std::int64_t decisions = 0;
    std::string state;
};

Sql<std::map<std::int64_t, Snapshot>> readSnapshots(Connection& connection, Rows& rows) {
    std::map<std::int64_t, Snapshot> snapshots;
    Query query(connection, "SELECT step, decisions, CAST(state AS BLOB) FROM snapshot");
    for (;;) {
        const auto more = query.next();
        if (!more) {
            if (auto passed = damagedOr(rows, more.error()); !passed)
                return tl::unexpected(passed.error());
            return snapshots;
        }
        if (!*more) return snapshots;
        snapshots[query.integer(0)] = {query.integer(1), query.text(2)};
    }
}

/// The change rows in order, one looked at ahead.
class ChangeReader {
  public:
    explicit ChangeReader(const Connection& connection)
        : query_(connection,
                 "SELECT step, n, CAST(what AS BLOB), CAST(old AS BLOB), "
                 "CAST(new AS BLOB) FROM change ORDER BY step, n") {}

    Sql<void> advance() {
        const auto more = query_.next();
        if (!more) return tl::unexpected(more.error());
        there_ = *more;
        return {};
    }
    [[nodiscard]] bool there() const { return there_; }
    [[nodiscard]] std::int64_t step() const { return query_.integer(0); }
    [[nodiscard]] std::int64_t n() const { return query_.integer(1); }
    [[nodiscard]] Change change() const {
        return {query_.text(2), query_.maybeText(3), query_.maybeText(4)};
    }

  private:
    Query query_;
    bool there_ = false;
};

/// The changes of one step; false if the rows are out of order.
Sql<bool> readChanges(ChangeReader& reader, Step& step) {
    while (reader.there() && reader.step() == step.number) {
        if (reader.n() != static_cast<std::int64_t>(step.changes.size()) + 1) return false;
        step.changes.push_back(reader.change());
        if (auto moved = reader.advance(); !moved) return tl::unexpected(moved.error());
    }
    return !reader.there() || reader.step() > step.number;
}

Sql<void> readSteps(Connection& connection, const std::map<std::int64_t, Snapshot>& snapshots,
                    Rows& rows) {
    Query query(connection,
                "SELECT step, CAST(at AS BLOB), CAST(who AS BLOB), CAST(why AS BLOB), "
                "CAST(title AS BLOB), CAST(kind AS BLOB), target, CAST(hash AS BLOB) "
                "FROM journal ORDER BY step");
    ChangeReader reader(connection);
    const auto next = [&] { return rows.journal.tip() + 1; };
    const auto broken = [&](const SqlFailure& failure) {
        if (isDamage(failure)) damageAt(rows, next(), "SQLite says: " + failure.message);
        return damagedOr(rows, failure);
    };
    if (auto begun = reader.advance(); !begun) return broken(begun.error());
    for (;;) {
        const auto more = query.next();
        if (!more) return broken(more.error());
        if (!*more) break;
        Step step;
        step.number = query.integer(0);
        if (step.number != next()) {
            damageAt(rows, next(), "step " + std::to_string(next()) + " is not there");
            return {};
        }
        step.at = query.text(1);
        step.who = query.text(2);
        step.why = query.text(3);
        step.title = query.text(4);
        const auto kind = stepKindNamed(query.text(5));
        step.target = query.maybeInteger(6);
        step.hash = query.text(7);
        const auto ordered = readChanges(reader, step);
        if (!ordered) return broken(ordered.error());
        if (!kind || !*ordered) {
            damageAt(rows, next(), "step " + std::to_string(next()) + " is out of order");
            return {};
        }
        step.kind = *kind;
        if (auto added = rows.journal.append(std::move(step)); !added) {
            damageAt(rows, next(), added.error().line());
            return {};
        }
        const auto kept = snapshots.find(rows.journal.tip());
        if (kept != snapshots.end() && !rows.badSnapshot &&
            (kept->second.state != rows.journal.stateHash() ||
             kept->second.decisions != static_cast<std::int64_t>(rows.journal.decided().size())))
            rows.badSnapshot = kept->first;
    }
    if (reader.there()) damageAt(rows, next(), "changes stand there without their step");
    return {};
}

Sql<void> checkHead(Connection& connection, Rows& rows) {
    const auto head = readHead(connection);
    if (!head) return damagedOr(rows, head.error());
    const std::int64_t tip = rows.journal.tip();
    if (head->step > tip)
        damageAt(rows, tip + 1, "the file should hold " + std::to_string(head->step) + " steps");
    else if (rows.damage.empty() && (head->step != tip || head->hash != rows.journal.tipHash()))
        rows.damage = "what it says of its last step is not so, though every step reads whole";
    if (rows.damage.empty() && (head->project != rows.seal || !rows.facts.contains("uuid")))
        rows.damage = "the facts about the project itself have changed";
    return {};
}

Sql<void> readAll(Connection& connection, Rows& rows) {
    if (auto read = readFacts(connection, rows); !read) return read;
    const auto snapshots = readSnapshots(connection, rows);
    if (!snapshots) return tl::unexpected(snapshots.error());
    if (auto read = readSteps(connection, *snapshots, rows); !read) return read;
    if (rows.badSnapshot == std::nullopt)
        for (const auto& [step, snapshot] : *snapshots)
            if (step < 1 || step > rows.journal.tip()) rows.badSnapshot = step;
    return checkHead(connection, rows);
}

}  // namespace

std::string sealOf(const std::map<std::string, std::string>& facts) {
    Digest digest;
    digest.field("fayline.project/1").field(static_cast<std::int64_t>(facts.size()));
    for (const auto& [key, value] : facts) digest.field(key).field(value);
    return digest.hex();
}

Sql<Rows> readRows(Connection& connection) {
    if (auto begun = connection.run("BEGIN"); !begun) return tl::unexpected(begun.error());
    Rows rows;
    const auto read = readAll(connection, rows);
    connection.rollBack();
    if (!read) return tl::unexpected(read.error());
    return rows;
}

Sql<std::optional<std::string>> quickCheck(Connection& connection) {
    Query query(connection, "PRAGMA quick_check(1)");
    const auto more = query.next();
    if (!more) {
        if (isDamage(more.error())) return std::optional(more.error().message);
        return tl::unexpected(more.error());
    }
    std::string says = query.text(0);
    if (says == "ok") return std::optional<std::string>();
    return std::optional(std::move(says));
}

Sql<Head> readHead(const Connection& connection) {
    Query query(connection,
                "SELECT step, CAST(hash AS BLOB), CAST(project AS BLOB) FROM head WHERE id = 1");
    const auto there = query.next();
    if (!there) return tl::unexpected(there.error());
    if (!*there) return Head{-1, {}, {}};
    return Head{query.integer(0), query.text(1), query.text(2)};
}

Sql<void> writeHead(Connection& connection, const Head& head) {
    return Query(connection,
                 "UPDATE head SET step = ?, hash = CAST(? AS TEXT), project = CAST(? AS TEXT) "
                 "WHERE id = 1")
        .bind(head.step)
        .bind(head.hash)
        .bind(head.project)
        .run();
}

Sql<void> writeStep(Connection& connection, const Step& step) {
    auto written = Query(connection,
                         "INSERT INTO journal(step, at, who, why, title, kind, target, hash) "
                         "VALUES(?, CAST(? AS TEXT), CAST(? AS TEXT), CAST(? AS TEXT), "
                         "CAST(? AS TEXT), CAST(? AS TEXT), ?, CAST(? AS TEXT))")
                       .bind(step.number)
                       .bind(step.at)
                       .bind(step.who)
                       .bind(step.why)
                       .bind(step.title)
                       .bind(stepKindName(step.kind))
                       .bindMaybe(step.target)
                       .bind(step.hash)
                       .run();
    std::int64_t n = 0;
    for (const Change& change : step.changes) {
        if (!written) return written;
        written = Query(connection,
                        "INSERT INTO change(step, n, what, old, new) VALUES(?, ?, CAST(? AS TEXT), "
                        "CAST(? AS TEXT), CAST(? AS TEXT))")
                      .bind(step.number)
                      .bind(++n)
                      .bind(change.what)
                      .bindMaybe(change.oldText)
                      .bindMaybe(change.newText)
                      .run();
    }
    return written;
}

Sql<void> writeSnapshotIfDue(Connection& connection, const Journal& journal) {
    if (journal.tip() == 0 || journal.tip() % snapshotEvery != 0) return {};
    if (auto cleared =
            Query(connection, "DELETE FROM snapshot WHERE step = ?").bind(journal.tip()).run();
        !cleared)
        return cleared;
    return Query(connection,
                 "INSERT INTO snapshot(step, decisions, state) VALUES(?, ?, CAST(? AS TEXT))")
        .bind(journal.tip())
        .bind(static_cast<std::int64_t>(journal.decided().size()))
        .bind(journal.stateHash())
        .run();
}

}  // namespace fayline::store
