#!/usr/bin/env -S python3 -B
"""core knows nothing of ui and app, of Qt only in core/store, and each of its folders includes only from itself and
from those it names in USES, all above it in core/CMakeLists.txt."""

import re
import sys
from pathlib import Path

import tree

INCLUDE = re.compile(r'^\s*#\s*include\s*[<"]([^>"]+)[>"]')
QT_NAME = re.compile(r"^(Qt\w*/|Q[A-Z]\w*$|q[a-z]+\.h$)")
WITH_QT = "core/store"
CORE_CALL = re.compile(r"fayline_core\(([^)]*)\)")
KEYWORDS = {"NAME", "SOURCES", "USES", "LINKS", "PRIVATE"}


def without_comments(cmake):
    return re.sub(r"#.*", "", cmake)


def uses(root, folder):
    """The folders that core/FOLDER names in USES."""
    call = CORE_CALL.search(without_comments(tree.text(root, Path("core") / folder / "CMakeLists.txt")))
    if not call:
        return None
    found, keyword = [], None
    for word in call[1].split():
        if word in KEYWORDS:
            keyword = word
        elif keyword == "USES":
            found.append(word)
    return found


def include_problems(root):
    order = tree.core_folders(root)
    for path in tree.files(root):
        if not tree.under(path, "core"):
            continue
        if path.name == "CMakeLists.txt" and not tree.under(path, WITH_QT):
            for number, line in enumerate(without_comments(tree.text(root, path)).splitlines(), start=1):
                if re.search(r"\bQt6?::", line):
                    yield f"{path}:{number}: links Qt; only {WITH_QT} may"
        if not tree.is_code(path):
            continue
        for number, line in tree.lines(root, path):
            match = INCLUDE.match(line)
            if not match:
                continue
            name = match[1]
            if QT_NAME.match(name) and not tree.under(path, WITH_QT):
                yield f"{path}:{number}: includes {name} of Qt; only {WITH_QT} may"
            if name.startswith(("ui/", "app/")):
                yield f"{path}:{number}: core includes {name}; core knows nothing of ui and app"
            folder, first = path.parts[1], Path(name).parts[0]
            if first in order and first != folder and first not in (uses(root, folder) or []):
                yield f"{path}:{number}: includes {name}, but {first} is not in USES of core/{folder}/CMakeLists.txt"
            if ".." in Path(name).parts:
                yield f"{path}:{number}: includes {name}; name the folder, as in \"hull/hull.h\""


def order_problems(root):
    order = tree.core_folders(root)
    for position, folder in enumerate(order):
        named = uses(root, folder)
        if named is None:
            yield f"core/{folder}/CMakeLists.txt: does not call fayline_core()"
            continue
        for used in named:
            if used not in order[:position]:
                yield f"core/{folder}/CMakeLists.txt: uses {used}, which is not above {folder} in core/CMakeLists.txt"


def table_problems(root):
    """The contributor's guide tells the same folders, order and uses."""
    guide = Path("DEVELOPERS.md")
    if not (root / guide).is_file():
        return
    told = {}
    for _, line in tree.lines(root, guide):
        row = re.match(r"\| `core/(\w+)` \|[^|]*\|([^|]*)\|$", line)
        if row:
            told[row[1]] = row[2].split()
    order = tree.core_folders(root)
    if list(told) != order:
        yield f"{guide}: its table has core's folders as {' '.join(told)}; core/CMakeLists.txt as {' '.join(order)}"
    for folder in order:
        real = uses(root, folder) or []
        if told.get(folder, real) != real:
            yield f"{guide}: core/{folder} uses '{' '.join(real)}', the table says '{' '.join(told[folder])}'"


def problems(root):
    yield from table_problems(root)
    yield from include_problems(root)
    yield from order_problems(root)


if __name__ == "__main__":
    sys.exit(tree.report("core layers", list(problems(tree.root_from_arguments()))))
