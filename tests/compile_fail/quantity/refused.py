#!/usr/bin/env -S python3 -B
"""One misuse of quantities does not compile, and for no other reason than its own line.

refused.py misuse.cpp CASE compiler arguments...   CASE "none" is the control: the file compiles.
"""

import re
import subprocess
import sys


def marked_line(lines, case):
    """The number of the REFUSED line behind `defined(CASE)`."""
    for number, line in enumerate(lines, 1):
        if f"defined({case})" in line:
            if "// REFUSED" not in lines[number]:
                sys.exit(f"the line behind {case} is not marked")
            return number + 1
    sys.exit(f"no case {case}")


def main():
    source, case, *compiler = sys.argv[1:]
    with open(source, encoding="utf-8") as file:
        lines = file.read().splitlines()
    wanted = None if case == "none" else marked_line(lines, case)
    define = [] if wanted is None else [f"-D{case}"]
    run = subprocess.run([*compiler, *define, "-fsyntax-only", source], text=True,
                         capture_output=True, env={"LC_ALL": "C", "PATH": "/usr/bin:/bin"})
    if wanted is None:
        sys.exit(f"the control does not compile:\n{run.stderr}" if run.returncode else 0)
    if run.returncode == 0:
        sys.exit(f"line {wanted} compiles: {lines[wanted - 1].strip()}")
    # A refusal inside a template names the marked line as the place it was required from.
    errors = [line for line in run.stderr.splitlines() if " error: " in line]
    here = re.compile(re.escape(source) + rf":{wanted}:\d+:")
    if not any(here.search(line) for line in run.stderr.splitlines()):
        sys.exit(f"refused, but not for line {wanted}:\n{run.stderr}")
    others = [line for line in errors
              if line.startswith(source) and not here.match(line)]
    if others:
        sys.exit("also refused elsewhere:\n" + "\n".join(others))


if __name__ == "__main__":
    main()
