#!/usr/bin/env -S python3 -B
"""shellcheck has nothing to say about any shell script of the tree."""

import subprocess
import sys

import tree


def is_script(root, path):
    if path.suffix == ".sh":
        return True
    with (root / path).open("rb") as opened:
        first = opened.readline(80)
    return first.startswith(b"#!") and first.rstrip().endswith((b"bash", b"/sh"))


def problems(root):
    scripts = [str(path) for path in tree.files(root) if is_script(root, path)]
    if not scripts:
        return
    checked = subprocess.run(["shellcheck", "--external-sources", "--format=gcc", *scripts],
                             cwd=root, capture_output=True, text=True, check=False)
    yield from checked.stdout.splitlines()
    if checked.returncode > 1:
        yield f"shellcheck: {checked.stderr.strip()}"


if __name__ == "__main__":
    sys.exit(tree.report("scripts", list(problems(tree.root_from_arguments()))))
