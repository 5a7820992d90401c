#!/usr/bin/env -S python3 -B
"""Each guard finds what it is there to find: a small clean tree passes, and the same tree with one fault planted fails
and names the place."""

import json
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

HERE = Path(__file__).resolve().parent
LAYERS = HERE.parent / "compile_fail/layers/layers_test.py"

CLEAN = {
    "CMakeLists.txt": "project(x)\n",
    "README.md": "Read me.\n",
    ".gitignore": "/build/\n",
    "core/CMakeLists.txt": "# order\n" + "".join(
        f"add_subdirectory({folder})\n" for folder in ("quantity", "material", "hull", "project", "check", "store")),
    "core/quantity/CMakeLists.txt": "fayline_core(NAME quantity)\n",
    "core/material/CMakeLists.txt": "fayline_core(NAME material USES quantity)\n",
    "core/hull/CMakeLists.txt": "fayline_core(NAME hull SOURCES hull.cpp USES quantity # above\n material)\n",
    "core/project/CMakeLists.txt": "fayline_core(NAME project USES quantity)\n",
    "core/check/CMakeLists.txt": "fayline_core(NAME check USES quantity hull)\n",
    "core/store/CMakeLists.txt": "fayline_core(NAME store USES project LINKS Qt6::Sql)\n",
    "core/quantity/include/quantity/length.h": "#pragma once\nstruct Length { double mm = 0; };\n",
    "core/material/include/material/wood.h": "#pragma once\n#include \"quantity/length.h\"\nstruct Wood { Length l; };\n",
    "core/hull/include/hull/hull.h": "#pragma once\n#include \"material/wood.h\"\nstruct Hull { Wood w; };\n",
    "core/hull/hull.cpp": '#include "hull/hull.h"\n\nnamespace {\nconst int kCount = 3;\nconstexpr double kPi{3.14};\n'
                          "struct Local {\n    static Local make();\n    int n = 0;\n};\n}  // namespace\n",
    "core/project/include/project/project.h": "#pragma once\nstruct Project {};\n",
    "core/check/include/check/check.h": "#pragma once\n#include \"hull/hull.h\"\nstruct Check { Hull h; };\n",
    "core/store/include/store/store.h": "#pragma once\nstruct Store {};\n",
    "core/store/store.cpp": "#include <QSqlDatabase>\n#include <QString>\n",
    "ui/page.h": "#pragma once\nclass QWidget;\n",
    "app/start": "#!/usr/bin/env bash\necho \"hello\"\n",
}
USES = {"quantity": [], "material": ["quantity"], "hull": ["quantity", "material"], "project": ["quantity"],
        "check": ["quantity", "hull", "material"], "store": ["project", "quantity"]}


class GuardsTest(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.addCleanup(self.folder.cleanup)
        self.root = Path(self.folder.name).resolve() / "tree"
        self.build = Path(self.folder.name).resolve() / "built"
        for name, text in CLEAN.items():
            self.plant(name, text)

    def plant(self, name, text):
        path = self.root / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")

    def write_commands(self, seen):
        """A compile_commands.json with a probe for each folder of core, and hull.cpp, seeing the folders in SEEN."""
        entries = []
        for folder, used in seen.items():
            includes = " ".join(f"-I{self.root}/core/{name}/include" for name in [folder, *used])
            entries.append({"directory": str(self.build), "file": "probe.cpp",
                            "command": f"g++ -std=c++20 {includes} -o x/probe_{folder}.dir/probe.o -c probe.cpp"})
            if folder == "hull":
                entries.append({"directory": str(self.build), "file": str(self.root / "core/hull/hull.cpp"),
                                "command": f"g++ -std=c++20 {includes} -o hull.o -c hull.cpp"})
        self.build.mkdir(exist_ok=True)
        (self.build / "compile_commands.json").write_text(json.dumps(entries), encoding="utf-8")

    def run_guard(self, script, *arguments):
        return subprocess.run([sys.executable, "-B", str(script), *map(str, arguments)],
                              capture_output=True, text=True, check=False)

    def assert_clean(self, guard, *arguments):
        done = self.run_guard(HERE / guard, self.root, *arguments)
        self.assertEqual(done.returncode, 0, done.stdout + done.stderr)

    def assert_finds(self, guard, place, *arguments):
        done = self.run_guard(HERE / guard, self.root, *arguments)
        self.assertEqual(done.returncode, 1, f"{guard} did not fail:\n{done.stdout}{done.stderr}")
        self.assertIn(place, done.stdout)
        self.assertNotIn("Traceback", done.stderr)

    def check(self, guard, faults, *arguments):
        """The clean tree passes; with each (file, text, place to be named) planted alone, it fails."""
        self.assert_clean(guard, *arguments)
        for name, text, place in faults:
            with self.subTest(fault=text or name):
                path = self.root / name
                before = path.read_text(encoding="utf-8") if path.exists() else None
                self.plant(name, text)
                self.assert_finds(guard, place, *arguments)
                if before is None:
                    path.unlink()
                else:
                    self.plant(name, before)
        self.assert_clean(guard, *arguments)

    def test_top_level(self):
        self.check("top_level.py", [("notes.txt", "x\n", "notes.txt"), ("lib/a.cpp", "\n", "lib")])

    def test_file_length(self):
        self.check("file_length.py", [("core/hull/long.cpp", "\n" * 801, "core/hull/long.cpp"),
                                      ("ui/long.h", "\n" * 401, "ui/long.h")])
        self.plant("core/hull/full.cpp", "\n" * 800)
        self.assert_clean("file_length.py")

    def test_heavy_headers(self):
        self.plant("core/hull/solve.cpp", "#include <Eigen/Sparse>\n#include <boost/rational.hpp>\n")
        self.plant("ui/forward.h", "#include <nlohmann/json_fwd.hpp>\n")
        self.check("heavy_headers.py", [
            ("core/hull/include/hull/solve.h", "#pragma once\n#include <Eigen/Dense>\n", "solve.h:2"),
            ("core/hull/ratio.h", "# include <boost/rational.hpp>\n", "ratio.h:1"),
            ("ui/read.h", '#include "nlohmann/json.hpp"\n', "read.h:1"),
            ("app/t.h", "#include <gtest/gtest.h>\n", "t.h:1"),
            ("core/hull/p.h", "#include <rapidcheck.h>\n", "p.h:1"),
            ("core/hull/b.h", "#include <benchmark/benchmark.h>\n", "b.h:1"),
            ("ui/all.cpp", "#include <QtWidgets>\n", "all.cpp:1"),
            ("ui/all.h", "#include <QtWidgets/QtWidgets>\n", "all.h:1")])

    def test_core_layers(self):
        self.plant("core/CMakeLists.txt", CLEAN["core/CMakeLists.txt"])
        self.check("core_layers.py", [
            ("core/hull/a.cpp", "#include <QString>\n", "a.cpp:1"),
            ("core/hull/a.cpp", "#include <QtCore/qstring.h>\n", "a.cpp:1"),
            ("core/hull/a.cpp", '\n#include "ui/desk.h"\n', "a.cpp:2"),
            ("core/hull/a.cpp", '#include "../quantity/length.h"\n', "a.cpp:1"),
            ("core/hull/a.cpp", '#include "check/check.h"\n', "a.cpp:1"),
            ("core/project/a.cpp", '#include "material/wood.h"\n', "a.cpp:1"),
            ("core/hull/CMakeLists.txt", "fayline_core(NAME hull LINKS Qt6::Core)\n", "core/hull/CMakeLists.txt:1"),
            ("core/material/CMakeLists.txt", "fayline_core(NAME material USES hull)\n", "uses hull"),
            ("core/hull/CMakeLists.txt", "add_library(hull hull.cpp)\n", "core/hull/CMakeLists.txt")])

    def test_core_layers_of_the_guide(self):
        rows = [f"| `core/{folder}` | text | {' '.join(used)} |" for folder, used in (
            ("quantity", ()), ("material", ("quantity",)), ("hull", ("quantity", "material")),
            ("project", ("quantity",)), ("check", ("quantity", "hull")), ("store", ("project",)))]
        self.plant("DEVELOPERS.md", "\n".join(rows) + "\n")
        self.check("core_layers.py", [
            ("DEVELOPERS.md", "\n".join(rows[:-1]) + "\n", "DEVELOPERS.md: its table"),
            ("DEVELOPERS.md", "\n".join(rows).replace("quantity hull", "quantity"), "core/check uses 'quantity hull'")])

    def test_no_globals(self):
        self.check("no_globals.py", [
            ("core/hull/g.cpp", "extern int counter;\n", "g.cpp:1"),
            ("core/hull/g.cpp", "namespace {\nint counter = 0;\n}\n", "g.cpp:2"),
            ("core/hull/g.cpp", "std::map<int, std::string> cache;\n", "g.cpp:1"),
            ("core/hull/g.cpp", "inline double scale{1};\n", "g.cpp:1"),
            ("core/hull/g.cpp", "void f() {\n    static std::vector<int> seen;\n}\n", "g.cpp:2"),
            ("core/hull/g.cpp", "void f() {\n    thread_local int depth = 0;\n}\n", "g.cpp:2"),
            ("core/hull/g.cpp", "void f() {\n    Settings::instance().set(1);\n}\n", "g.cpp:2")])

    def test_plain_words(self):
        self.check("plain_words.py", [
            ("docs/a.md", "see /home/somebody/fayline\n", "a.md:1"),
            ("docs/a.md", "\n(/work/notes.md)\n", "a.md:2"),
            ("core/hull/a.cpp", "// read from /tmp/x.csv\n", "a.cpp:1"),
            ("docs/a.md", "as in the transcript\n", "a.md:1"),
            ("docs/a.md", "the Seed document says\n", "a.md:1"),
            ("docs/a.md", "fixes issue #12\n", "a.md:1"),
            ("docs/a.md", "fixes issue 12\n", "a.md:1")])
        self.plant("docs/ok.md", "https://example.org/home/page and \"${TMPDIR:-/tmp/x}\" and core/work/hardening\n")
        self.assert_clean("plain_words.py")

    def test_scripts(self):
        self.check("scripts.py", [("tests/run", "#!/bin/bash\nrm -rf $1/*\n", "tests/run:2")])

    def test_headers_alone(self):
        self.write_commands(USES)
        self.check("headers_alone.py", [
            ("core/material/include/material/bad.h", "#pragma once\nstruct Bad { Length l; };\n", "material/bad.h"),
            ("core/hull/private.h", "#pragma once\ninline std::string f();\n", "core/hull/private.h")], self.build)

    def test_headers_alone_knows_what_it_left_out(self):
        self.write_commands(USES)
        self.assert_clean("headers_alone.py", self.build)
        self.plant("tests/support.h", "#pragma once\n")
        self.assert_finds("headers_alone.py", "tests/support.h: no target", self.build)

    def test_headers_alone_trusts_only_first_includes(self):
        self.write_commands(USES)
        self.plant("core/hull/include/hull/hull.h", "#pragma once\nstruct Hull { Wood w; };\n")
        self.plant("core/hull/hull.cpp", '#include "material/wood.h"\n#include "hull/hull.h"\n')
        self.assert_finds("headers_alone.py", "hull/hull.h", self.build)

    def test_layers(self):
        self.write_commands(USES)
        self.assert_clean(LAYERS, self.build)
        for lower, upper in (("quantity", "hull"), ("material", "project"), ("hull", "check")):
            with self.subTest(lower=lower, upper=upper):
                self.write_commands({**USES, lower: USES[lower] + [upper]})
                self.assert_finds(LAYERS, f"core/{lower}: the compiler finds {upper}/", self.build)
        self.write_commands({**USES, "hull": ["quantity"]})
        self.assert_finds(LAYERS, "core/hull: may include material/wood.h", self.build)

    def test_links_no_qt(self):
        plain, with_qt = (Path(self.folder.name) / name for name in ("plain", "with_qt"))
        for program, flags in ((plain, []), (with_qt, ["-Wl,--no-as-needed", "-lQt6Core"])):
            subprocess.run(["g++", "-x", "c++", "-", "-o", str(program), *flags], input="int main() {}",
                           text=True, check=True)
        self.assertEqual(self.run_guard(HERE / "links_no_qt.py", plain).returncode, 0)
        found = self.run_guard(HERE / "links_no_qt.py", with_qt)
        self.assertEqual(found.returncode, 1)
        self.assertIn("libQt6Core", found.stdout)
        self.assertEqual(self.run_guard(HERE / "links_no_qt.py", self.root / "absent").returncode, 1)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=1)
