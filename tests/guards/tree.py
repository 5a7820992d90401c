"""The files of a source tree, and how a guard reports. Used by every guard in this folder."""

import os
import subprocess
import sys
from pathlib import Path

GENERATED = ("build", "out")  # top-level folders that .gitignore leaves out, with build-*


def is_generated(name):
    return name in GENERATED or name.startswith("build-") or name == ".git"


def files(root):
    """Every file of the tree as a relative path: what git keeps or would keep, else what lies there."""
    root = Path(root)
    if (root / ".git").exists():
        listed = subprocess.run(
            ["git", "-C", str(root), "ls-files", "-z", "--cached", "--others", "--exclude-standard"],
            capture_output=True, check=False)
        if listed.returncode == 0:
            names = {name for name in listed.stdout.decode().split("\0") if name}
            return sorted(Path(name) for name in names if (root / name).exists())
    found = []
    for folder, folders, names in os.walk(root):
        if Path(folder) == root:
            folders[:] = [name for name in folders if not is_generated(name)]
        found += [(Path(folder) / name).relative_to(root) for name in names]
    return sorted(found)


def text(root, path):
    return (Path(root) / path).read_text(encoding="utf-8")


def lines(root, path):
    """(number, line) pairs, counted from 1."""
    return enumerate(text(root, path).splitlines(), start=1)


def is_code(path):
    return path.suffix in (".cpp", ".h")


def under(path, *folders):
    return any(path.parts[: len(Path(folder).parts)] == Path(folder).parts for folder in folders)


def core_folders(root):
    """The folders of core in their order of use, as core/CMakeLists.txt adds them."""
    found = []
    for _, line in lines(root, Path("core/CMakeLists.txt")):
        if line.startswith("add_subdirectory("):
            found.append(line[len("add_subdirectory("):].split(")")[0].strip())
    return found


def report(title, problems):
    """Prints the problems and returns the exit code: 0 none, 1 some."""
    for problem in problems:
        print(problem)
    print(f"{title}: {len(problems)} problems" if problems else f"{title}: ok")
    return 1 if problems else 0


def root_from_arguments():
    if len(sys.argv) < 2 or not Path(sys.argv[1]).is_dir():
        sys.exit(f"usage: {sys.argv[0]} SOURCE_TREE [BUILD_TREE]")
    return Path(sys.argv[1]).resolve()
