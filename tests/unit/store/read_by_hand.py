#!/usr/bin/env python3
"""Reads a project with nothing of this program: Python's sqlite3 and hashlib, after docs/file-format.md. Prints the last
step's number and hash, then what is decided, one "WHAT=TEXT" a line; stops at the first step that does not fit."""

import hashlib
import sqlite3
import sys


def field(value):
    raw = str(value).encode()
    return len(raw).to_bytes(8, "big") + raw


def maybe(value):
    return field(0) if value is None else field(1) + field(value)


def digest(*parts):
    return hashlib.sha256(b"".join(parts)).hexdigest()


def main(path):
    database = sqlite3.connect(f"file:{path}?mode=ro", uri=True)
    previous, count, decided, recorded = "", 0, {}, {}
    rows = database.execute("SELECT step, at, who, why, title, kind, target, hash FROM journal ORDER BY step").fetchall()
    for step, at, who, why, title, kind, target, found in rows:
        changes = database.execute("SELECT what, old, new FROM change WHERE step = ? ORDER BY n", (step,)).fetchall()
        parts = [field(text) for text in ("fayline.step/1", previous, step, at, who, why, title, kind)]
        parts += [maybe(target), field(len(changes))]
        for what, old, new in changes:
            parts += [field(what), maybe(old), maybe(new)]
        if step != count + 1 or digest(*parts) != found:
            sys.exit(f"step {step} does not fit")
        previous, count = found, step
        where = recorded if kind == "record" else decided
        for what, _, new in changes:
            where.pop(what, None)
            if new is not None:
                where[what] = new
        kept = database.execute("SELECT decisions, state FROM snapshot WHERE step = ?", (step,)).fetchone()
        if kept:
            state = [field("fayline.state/1")]
            for texts in (decided, recorded):
                state.append(field(len(texts)))
                for what in sorted(texts, key=str.encode):
                    state += [field(what), field(texts[what])]
            if kept != (len(decided), digest(*state)):
                sys.exit(f"the snapshot of step {step} does not fit")
    facts = database.execute("SELECT key, value FROM project ORDER BY key").fetchall()
    seal = digest(field("fayline.project/1"), field(len(facts)), *(field(text) for fact in facts for text in fact))
    if database.execute("SELECT step, hash, project FROM head").fetchall() != [(count, previous, seal)]:
        sys.exit("the head does not fit")
    print(count, previous)
    for what in sorted(decided, key=str.encode):
        print(f"{what}={decided[what]}")


main(sys.argv[1])
