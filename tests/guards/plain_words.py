#!/usr/bin/env -S python3 -B
"""The tree speaks of itself alone: no path of somebody's machine, no pointer to papers that are not in it."""

import re
import sys
from pathlib import Path

import tree

# Written in pieces, so that this file does not trip over itself.
MACHINE_PATH = re.compile(r"(?<![\w.\-/}~$])/(?:home|root|work|Users|tmp|mnt|media|srv)" + r"/\w|\b[A-Z]:\\Users")
OUTSIDE_PAPERS = re.compile(r"\btran" + r"scripts?\b|\bseed " + r"documents?\b|\bresearch " + r"files?\b|\bissue\s*" + r"#?\d+\b|\bissue\s*#", re.I)
OWN_TESTS = Path("tests/guards/guards_test.py")  # plants these words on purpose
BINARY = {".png", ".ttf", ".fayline", ".pdf", ".ico"}


def problems(root):
    for path in tree.files(root):
        if path.suffix in BINARY or path == OWN_TESTS:
            continue
        if MACHINE_PATH.search(str(path)) or OUTSIDE_PAPERS.search(str(path)):
            yield f"{path}: the name itself points outside the tree"
        try:
            numbered = list(tree.lines(root, path))
        except UnicodeDecodeError:
            yield f"{path}: is not UTF-8 text; add its ending to BINARY in {Path(__file__).name} if it is no text"
            continue
        for number, line in numbered:
            found = MACHINE_PATH.search(line)
            if found:
                yield f"{path}:{number}: '{found[0]}' is a path of one machine"
            found = OUTSIDE_PAPERS.search(line)
            if found:
                yield f"{path}:{number}: '{found[0]}' points to something outside the tree"


if __name__ == "__main__":
    sys.exit(tree.report("plain words", list(problems(tree.root_from_arguments()))))
