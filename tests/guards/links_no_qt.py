#!/usr/bin/env -S python3 -B
"""A program holding all of core but core/store, whole, loads no library of Qt."""

import subprocess
import sys
from pathlib import Path

import tree


def problems(program):
    if not program.is_file():
        return [f"{program.name}: was not built, so nothing is known"]
    listed = subprocess.run(["ldd", str(program)], capture_output=True, text=True, check=False)
    if listed.returncode != 0 or "libc.so" not in listed.stdout:
        return [f"{program.name}: ldd does not read it: {listed.stderr.strip()}"]
    return [f"{program.name}: loads {line.split()[0]}" for line in listed.stdout.splitlines()
            if line.strip().lower().startswith("libqt")]


if __name__ == "__main__":
    if len(sys.argv) != 2:
        sys.exit(f"usage: {sys.argv[0]} PROGRAM")
    sys.exit(tree.report("core links no Qt", problems(Path(sys.argv[1]))))
