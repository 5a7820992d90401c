#!/usr/bin/env -S python3 -B
"""Every header compiles by itself. A header that some source includes first is proved by the build; the others are
compiled here, with the flags of their own target."""

import re
import sys
from pathlib import Path

import commands
import tree

INCLUDE = re.compile(r'^\s*#\s*include\s*[<"]([^>"]+)[>"]', re.M)


def proved_by_sources(root, compiled):
    """Headers that a compiled source names in its first include."""
    proved = set()
    for source, _ in compiled:
        if not source.is_file() or root not in source.parents:
            continue
        first = INCLUDE.search(source.read_text(encoding="utf-8"))
        if not first:
            continue
        beside = (source.parent / first[1]).resolve()
        public = [root / part / Path(first[1]).parts[0] / "include" / first[1] for part in ("core", "ui")]
        proved.update(path.relative_to(root) for path in (beside, *public)
                      if path.is_file() and root in path.parents)
    return proved


def command_for(root, header, compiled):
    """The words that compile HEADER: its folder's probe when public in core, else those of the nearest source, one that
    includes it before one that does not."""
    parts = header.parts
    if parts[0] == "core" and len(parts) > 3 and parts[2] == "include":
        return commands.probe_words(compiled, parts[1])
    best, best_rank = None, (1, False)
    for source, words in compiled:
        if root not in source.parents or not source.is_file():
            continue
        shared = 0
        for mine, other in zip(parts[:-1], source.relative_to(root).parts[:-1]):
            if mine != other:
                break
            shared += 1
        named = any(Path(name).name == header.name for name in INCLUDE.findall(source.read_text(encoding="utf-8")))
        if (shared, named) > best_rank:
            best, best_rank = words, (shared, named)
    return best


def problems(root, build):
    compiled = commands.load(build)
    proved = proved_by_sources(root, compiled)
    headers = [path for path in tree.files(root) if path.suffix == ".h"]
    with_window = any(root / "ui" in source.parents for source, _ in compiled)
    alone, jobs, found = [], [], []
    for header in headers:
        if header in proved:
            continue
        words = command_for(root, header, compiled)
        if words is None:
            if with_window or header.parts[0] != "ui":
                found.append(f"{header}: no target compiles anything near it, so nothing is known")
            continue
        alone.append(header)
        jobs.append((words, f'#include "{root / header}"\n'))
    print(f"{len(headers)} headers: {len(proved & set(headers))} are first in a source, {len(alone)} compiled here" +
          ("" if with_window else "; this build leaves ui out"))
    return found + [f"{header}: does not compile alone: {error}"
                    for header, (code, error) in zip(alone, commands.check_all(jobs)) if code != 0]


if __name__ == "__main__":
    sys.exit(tree.report("headers alone", problems(tree.root_from_arguments(), Path(sys.argv[2]).resolve())))
