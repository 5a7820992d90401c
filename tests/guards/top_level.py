#!/usr/bin/env -S python3 -B
"""The top of the tree holds these names, dotfiles, and nothing else."""

import sys

import tree

ALLOWED = {"CMakeLists.txt", "README.md", "DEVELOPERS.md",
           "app", "core", "ui", "resources", "tests", "docs"}


def problems(root):
    names = {path.parts[0] for path in tree.files(root)}
    for name in sorted(names - ALLOWED):
        if not name.startswith("."):
            yield f"{name}: does not belong at the top level; only {', '.join(sorted(ALLOWED))} and dotfiles do"


if __name__ == "__main__":
    sys.exit(tree.report("top level", list(problems(tree.root_from_arguments()))))
