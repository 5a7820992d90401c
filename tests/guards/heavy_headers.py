#!/usr/bin/env -S python3 -B
"""Headers of core, ui and app include no library that takes seconds to compile; no file there takes a whole Qt module."""

import re
import sys

import tree

INCLUDE = re.compile(r'^\s*#\s*include\s*[<"]([^>"]+)[>"]')
HEAVY = ("Eigen/", "boost/", "nlohmann/", "gtest/", "gmock/", "rapidcheck", "benchmark/")
LIGHT = {"nlohmann/json_fwd.hpp"}  # forward declarations only
WHOLE_MODULE = re.compile(r"^(Qt\w+/)?Qt(Core|Gui|Widgets|Sql|Charts|PrintSupport|Svg|Test)$")


def problems(root):
    for path in tree.files(root):
        if not tree.is_code(path) or not tree.under(path, "core", "ui", "app"):
            continue
        for number, line in tree.lines(root, path):
            match = INCLUDE.match(line)
            if not match:
                continue
            name = match[1]
            if WHOLE_MODULE.match(name):
                yield f"{path}:{number}: includes all of {name}; include the classes used"
            elif path.suffix == ".h" and name.startswith(HEAVY) and name not in LIGHT:
                yield f"{path}:{number}: a header includes {name}; include it in a .cpp file"


if __name__ == "__main__":
    sys.exit(tree.report("heavy headers", list(problems(tree.root_from_arguments()))))
