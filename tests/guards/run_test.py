#!/usr/bin/env -S python3 -B
"""tests/run with the tools replaced by small stand-ins: whichever step fails, the run fails and says which; a good run
ends with ctest's closing line."""

import shutil
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

ROOT = Path(sys.argv[1] if len(sys.argv) > 1 else ".").resolve()
REAL = ("bash", "env", "dirname", "basename", "mktemp", "tail", "head", "mkdir", "cat", "rm", "awk", "nproc", "sort", "grep",
        "xargs", "find", "wc", "date", "cut", "sed")
CLOSING = "Total Test time (real) =   0.01 sec"
STUBS = {
    "dpkg-query": "printf installed\n",
    "apt-get": "exit 100\n",
    "id": "echo 0\n",
    "git": "exit 1\n",
    "clang-format": '[ "$FAIL" != format ]\n',
    "clang-tidy": 'for file; do :; done\necho "tidy read $file"\n[ "$FAIL" != tidy ]\n',
    "cmake": '''echo "cmake $*"
case "$*" in
    *-C*dev.cmake*)
        [ "$FAIL" = configure ] && exit 1
        mkdir -p "$FAYLINE_BUILD/dev/tests/ui"
        echo >"$FAYLINE_BUILD/dev/tests/ui/CTestTestfile.cmake"
        echo >"$FAYLINE_BUILD/dev/tests/ui/cmake_install.cmake"
        for file in ${IN_BUILD:-core/hull/hull.cpp}; do echo "\\"file\\": \\"$TREE/$file\\""; done \\
            >"$FAYLINE_BUILD/dev/compile_commands.json" ;;
    *-C*sanitize.cmake*)
        mkdir -p "$FAYLINE_BUILD/sanitize/tests/unit/hull"
        echo >"$FAYLINE_BUILD/sanitize/tests/unit/hull/CTestTestfile.cmake" ;;
    *--build*/dev*) [ "$FAIL" != build ] ;;
    *--build*/sanitize*--target\\ tests/unit/hull/all) [ "$FAIL" != sanitize-build ] ;;
    *) exit 9 ;;
esac
''',
    "ctest": '''echo "ctest $*"
case "$*" in
    *sanitized*) name=sanitize ;;
    *" -L "*) name=guards ;;
    *) name=tests ;;
esac
echo "long is ${FAYLINE_LONG:-no}"
printf '100%% tests passed\\n\\n%s\\n' "''' + CLOSING + '''"
[ "$FAIL" != "$name" ]
''',
}


class RunTest(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.top = Path(folder.name).resolve()
        self.tree, self.bin = self.top / "a tree", self.top / "bin"
        for name in ("app/machine.sh", "app/packages.txt", "tests/run"):
            (self.tree / name).parent.mkdir(parents=True, exist_ok=True)
            shutil.copy(ROOT / name, self.tree / name)
        for name in ("core/hull/hull.cpp", "ui/page.cpp"):
            (self.tree / name).parent.mkdir(parents=True, exist_ok=True)
            (self.tree / name).write_text("\n")
        self.stub(self.tree / "tests/fresh-root", 'echo "fresh root"\n[ "$FAIL" != fresh-root ]\n')
        self.bin.mkdir()
        for name in REAL:
            (self.bin / name).symlink_to(shutil.which(name))
        for name, body in STUBS.items():
            self.stub(self.bin / name, body)

    def stub(self, path, body):
        path.write_text("#!/usr/bin/env bash\n" + body)
        path.chmod(0o755)

    def run_it(self, *arguments, fail="nothing", **settings):
        variables = {"PATH": str(self.bin), "HOME": str(self.top), "FAIL": fail, "TREE": str(self.tree),
                     "FAYLINE_BUILD": str(self.top / "build"), **settings}
        return subprocess.run([str(self.tree / "tests/run"), *arguments], cwd=self.top, env=variables, text=True,
                              stdout=subprocess.PIPE, stderr=subprocess.STDOUT, stdin=subprocess.DEVNULL, check=False)

    def test_a_good_run_ends_with_ctests_closing_line(self):
        done = self.run_it()
        self.assertEqual(done.returncode, 0, done.stdout)
        self.assertEqual(done.stdout.splitlines()[-1], CLOSING)
        for step in ("packages", "format", "configure", "guards", "sanitize", "build", "tidy"):
            self.assertRegex(done.stdout, rf"(?m)^{step} +\d+ s  passed$")
        self.assertIn("tidy read core/hull/hull.cpp", done.stdout)
        self.assertNotIn("tidy read ui/page.cpp", done.stdout, "not part of the build")
        self.assertNotIn("fresh root", done.stdout)
        self.assertIn("long is no", done.stdout)

    def test_any_failing_step_fails_the_run(self):
        for fail, step in (("format", "format"), ("configure", "configure"), ("guards", "guards"), ("build", "build"),
                           ("sanitize-build", "sanitize"), ("tidy", "tidy"), ("tests", "tests")):
            with self.subTest(fail):
                done = self.run_it(fail=fail)
                self.assertEqual(done.returncode, 1, done.stdout)
                self.assertIn(f"run: FAILED: {step}\n", done.stdout)

    def test_a_failing_test_under_the_sanitizers_fails_the_run(self):
        for arguments in (["--only", "sanitize"], ["--all"]):
            with self.subTest(arguments):
                done = self.run_it(*arguments, fail="sanitize")
                self.assertEqual(done.returncode, 1, done.stdout)
                self.assertIn("run: FAILED: sanitize\n", done.stdout)

    def test_each_test_runs_once_or_with_all_also_without_sanitizers(self):
        self.run_it()
        listed = (self.top / "build/once/CTestTestfile.cmake").read_text()
        self.assertIn("dev/tests/ui", listed)
        self.assertIn("sanitize/sanitized", listed)
        sanitized = (self.top / "build/sanitize/sanitized/CTestTestfile.cmake").read_text()
        self.assertEqual(sanitized, f'subdirs("{self.top}/build/sanitize/tests/unit/hull")\n')
        self.assertIn(f"ctest --test-dir {self.top}/build/dev ", self.run_it("--all").stdout)
        self.run_it(fail="sanitize-build")
        self.assertNotIn("sanitized", (self.top / "build/once/CTestTestfile.cmake").read_text())

    def test_a_failed_build_runs_no_old_tests(self):
        done = self.run_it(fail="build")
        self.assertNotIn("== tests", done.stdout)
        self.assertIn("was not run", done.stdout)

    def test_missing_packages_stop_it(self):
        self.stub(self.bin / "dpkg-query", "exit 1\n")
        done = self.run_it()
        self.assertEqual(done.returncode, 1)
        self.assertNotIn("== configure", done.stdout)

    def test_all(self):
        done = self.run_it("--all")
        self.assertEqual(done.returncode, 0, done.stdout)
        self.assertIn("fresh root", done.stdout)
        self.assertIn("long is 1", done.stdout)
        self.assertEqual(done.stdout.splitlines()[-1], CLOSING)
        self.assertIn("run: FAILED: fresh-root\n", self.run_it("--all", fail="fresh-root").stdout)

    def test_only(self):
        for step, others in (("format", []), ("guards", ["configure"]), ("tests", ["configure", "build"]),
                             ("tidy", ["configure", "build"]), ("sanitize", []), ("fresh-root", [])):
            with self.subTest(step):
                done = self.run_it("--only", step)
                self.assertEqual(done.returncode, 0, done.stdout)
                ran = [line[3:] for line in done.stdout.splitlines() if line.startswith("== ")]
                self.assertEqual(set(ran) - {"packages", "so far"}, {step, *others})
        self.assertEqual(self.run_it("--only", "nothing").returncode, 2)
        self.assertEqual(self.run_it("--only").returncode, 2)

    def git(self, *arguments):
        subprocess.run(["git", "-C", str(self.tree), "-c", "user.name=T", "-c", "user.email=t@example.org", *arguments],
                       check=True, capture_output=True)

    def tidied(self, **settings):
        built = "core/hull/hull.cpp core/hull/shape.cpp ui/page.cpp"
        done = self.run_it("--only", "tidy", IN_BUILD=built, **settings)
        self.assertEqual(done.returncode, 0, done.stdout)
        return {line.split()[-1] for line in done.stdout.splitlines() if line.startswith("tidy read")}

    def test_tidy_reads_what_changed(self):
        (self.bin / "git").unlink()
        (self.bin / "git").symlink_to(shutil.which("git"))
        (self.tree / "core/hull/shape.cpp").write_text("// first\n")
        self.git("init", "-q")
        self.git("add", ".")
        self.git("commit", "-q", "-m", "first")
        each_folder = {"core/hull/hull.cpp", "ui/page.cpp"}
        self.assertEqual(self.tidied(), each_folder, "no commit to compare with")
        (self.tree / "README.md").write_text("text\n")
        self.git("add", ".")
        self.git("commit", "-q", "-m", "text only")
        self.assertEqual(self.tidied(), each_folder, "no code changed")
        (self.tree / "core/hull/shape.cpp").write_text("// second\n")
        self.assertEqual(self.tidied(), {"core/hull/shape.cpp"})
        self.git("checkout", "-q", ".")
        header = self.tree / "core/hull/include/hull/shape.h"
        header.parent.mkdir(parents=True)
        header.write_text("#pragma once\n")
        self.assertEqual(self.tidied(), {"core/hull/shape.cpp"}, "a header stands for its source")
        (self.tree / "ui/page.cpp").write_text("// second\n")
        self.git("add", ".")
        self.git("commit", "-q", "-m", "code")
        self.git("commit", "-q", "--allow-empty", "-m", "nothing")
        self.assertEqual(self.tidied(FAYLINE_BASE="HEAD~2"), {"core/hull/shape.cpp", "ui/page.cpp"})
        self.assertEqual(self.run_it("--only", "tidy", FAYLINE_BASE="nowhere").returncode, 1)

    def test_tidy_says_what_it_did_not_reach(self):
        done = self.run_it("--only", "tidy", FAYLINE_TIDY_SECONDS="0")
        self.assertIn("not reached in time: core/hull/hull.cpp", done.stdout)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=1)
