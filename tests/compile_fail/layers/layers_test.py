#!/usr/bin/env -S python3 -B
"""A wrong include between folders of core does not compile, and a right one does.

For each folder: the first public header of every folder that it neither names in USES nor reaches through them must be
out of sight of the compiler, with the flags of that folder's target; its own headers, and those it may use, must not."""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2] / "guards"))
import commands
import core_layers
import tree

NAMED = (("quantity", "hull"), ("material", "project"), ("hull", "check"))  # always among the pairs tried


def reach(uses, folder):
    """The folders that FOLDER may include from: itself, those in USES, and what they use."""
    found, waiting = set(), [folder]
    while waiting:
        name = waiting.pop()
        if name not in found:
            found.add(name)
            waiting += uses[name]
    return found


def first_header(root, folder):
    headers = sorted((root / "core" / folder / "include" / folder).glob("*.h"))
    return f"{folder}/{headers[0].name}" if headers else None


def problems(root, build):
    compiled = commands.load(build)
    folders = tree.core_folders(root)
    uses = {folder: core_layers.uses(root, folder) or [] for folder in folders}
    header = {folder: first_header(root, folder) for folder in folders}
    pairs, jobs = [], []
    for lower in folders:
        words = commands.probe_words(compiled, lower)
        if words is None:
            yield f"core/{lower}: the build has no target probe_{lower} to take flags from"
            continue
        for upper in folders:
            if header[upper]:
                pairs.append((lower, upper))
                jobs.append((words, f'#include "{header[upper]}"\n'))
    refused = allowed = 0
    for (lower, upper), (code, error) in zip(pairs, commands.check_all(jobs)):
        if upper in reach(uses, lower):
            allowed += 1
            if code != 0:
                yield f"core/{lower}: may include {header[upper]}, but it does not compile: {error}"
        elif code == 0 or not (error.startswith("<stdin>:1:")
                               and error.endswith(f"{header[upper]}: No such file or directory")):
            yield f"core/{lower}: the compiler finds {header[upper]}, which it must not see; {error or 'no error'}"
        else:
            refused += 1
    print(f"{refused} wrong includes refused, {allowed} right ones compiled")
    for folder in folders:
        if not header[folder]:
            yield f"core/{folder}: has no public header, so includes of it could not be tried"
    for pair in NAMED:
        if pair not in pairs:
            yield f"core/{pair[0]} including from core/{pair[1]} was not tried"


if __name__ == "__main__":
    sys.exit(tree.report("layers", list(problems(tree.root_from_arguments(), Path(sys.argv[2]).resolve()))))
