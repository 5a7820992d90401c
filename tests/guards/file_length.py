#!/usr/bin/env -S python3 -B
"""No source file has grown past the length a reader can hold."""

import sys

import tree

LIMIT = {".cpp": 800, ".h": 400}
EXCEPTIONS = {}  # path: reason


def problems(root):
    for path in tree.files(root):
        if path.suffix not in LIMIT or str(path) in EXCEPTIONS:
            continue
        count = len(tree.text(root, path).splitlines())
        if count > LIMIT[path.suffix]:
            yield f"{path}: {count} lines; at most {LIMIT[path.suffix]}, so split it by idea"


if __name__ == "__main__":
    sys.exit(tree.report("file length", list(problems(tree.root_from_arguments()))))
