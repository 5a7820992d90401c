#!/usr/bin/env -S python3 -B
"""app/start with the system's tools and the program replaced by small stand-ins: what it installs, says, makes, keeps."""

import shutil
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

APP = Path(sys.argv[1] if len(sys.argv) > 1 else ".").resolve() / "app"
REAL = ("bash", "env", "dirname", "mktemp", "tail", "mkdir", "cat", "rm", "mv", "sha256sum", "awk", "nproc")
STUBS = {
    "dpkg-query": 'for name; do :; done\ncase " $MISSING " in *" $name "*) exit 1 ;; esac\nprintf installed\n',
    "apt-get": 'echo "apt-get $*" >>"$LOG"\nexit "${APT_EXIT:-0}"\n',
    "id": 'echo "${FAKE_UID:-0}"\n',
    "cmake": 'echo "cmake $*" >>"$LOG"\n[ "$1" != --build ] && exit "${CONFIGURE_EXIT:-0}"\n'
             '[ -n "${BUILD_EXIT:-}" ] && exit "$BUILD_EXIT"\n'
             'mkdir -p "$2/app"\ncp "$FAKE_PROGRAM" "$2/app/fayline"\nchmod +x "$2/app/fayline"\n',
}
PROGRAM = '''#!/usr/bin/env bash
echo "fayline $*" >>"$LOG"
[ "$1" = "${FAIL_ON:-}" ] && echo "half a result" && exit 1
case "$1" in
    demo) [ -e "$3" ] && exit 1; echo "demo made" >"$3" ;;
    margins | hull | holes | metal) cat "$2" && echo "result of $1 ${3:-text}" ;;
    sheets) mkdir -p "$4" && echo sheet >"$4/F1.pdf" ;;
    *) echo "window $1" ;;
esac
'''


class StartTest(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.top = Path(folder.name).resolve()
        self.root, self.log, self.bin = self.top / "a tree", self.top / "log", self.top / "bin"
        shutil.copytree(APP, self.root / "app")
        self.bin.mkdir()
        for name in REAL + ("cp", "chmod"):
            (self.bin / name).symlink_to(shutil.which(name))
        for name, body in STUBS.items():
            self.stub(name, body)
        (self.top / "program").write_text(PROGRAM)

    def stub(self, name, body):
        path = self.bin / name
        path.write_text("#!/usr/bin/env bash\n" + body)
        path.chmod(0o755)

    def start(self, *arguments, **settings):
        self.log.write_text("")
        variables = {"PATH": str(self.bin), "HOME": str(self.top / "user"), "LOG": str(self.log),
                     "FAKE_PROGRAM": str(self.top / "program"), **settings}
        elsewhere = self.top / "elsewhere"
        elsewhere.mkdir(exist_ok=True)
        done = subprocess.run([str(self.root / "app/start"), *arguments], cwd=elsewhere, env=variables, text=True,
                              capture_output=True, stdin=subprocess.DEVNULL, check=False)
        self.assertEqual(list(elsewhere.iterdir()), [], "the current folder is left alone")
        return done

    def logged(self, beginning):
        return [line for line in self.log.read_text().splitlines() if line.startswith(beginning)]

    def test_nothing_missing_means_no_apt(self):
        self.assertEqual(self.start().returncode, 0)
        self.assertEqual(self.logged("apt-get"), [])

    def test_installs_only_what_is_missing(self):
        self.assertEqual(self.start(MISSING="ninja-build nettle-dev").returncode, 0)
        self.assertEqual(self.logged("apt-get"), [
            "apt-get update", "apt-get install -y --no-install-recommends ninja-build nettle-dev"])

    def test_without_root_it_asks_sudo(self):
        self.stub("sudo", 'echo "sudo $1" >>"$LOG"\n"$@"\n')
        self.assertEqual(self.start(MISSING="cmake", FAKE_UID="1000").returncode, 0)
        self.assertEqual(len(self.logged("sudo")), 2)
        self.assertEqual(len(self.logged("apt-get install")), 1)

    def test_without_root_and_sudo_it_names_the_packages_in_one_sentence(self):
        done = self.start(MISSING="cmake nettle-dev", FAKE_UID="1000")
        self.assertEqual(done.returncode, 1)
        self.assertEqual(len(done.stderr.splitlines()), 1)
        self.assertIn("cmake nettle-dev", done.stderr)
        self.assertEqual(self.logged("cmake"), [])

    def test_failed_installation_stops_it(self):
        done = self.start(MISSING="cmake", APT_EXIT="100")
        self.assertEqual(done.returncode, 1)
        self.assertIn("could not install cmake", done.stderr)
        self.assertEqual(self.logged("cmake"), [])

    def test_failed_configure_and_build_stop_it(self):
        for setting, says in (("CONFIGURE_EXIT", "could not be configured"), ("BUILD_EXIT", "the build stopped")):
            with self.subTest(setting):
                done = self.start(**{setting: "1"})
                self.assertEqual(done.returncode, 1)
                self.assertIn(says, done.stderr)
                self.assertEqual(self.logged("fayline"), [])

    def test_release_build_without_tests(self):
        self.start()
        configure = self.logged("cmake -S")[0]
        for option in (f"-B {self.root}/build-release", "-DCMAKE_BUILD_TYPE=Release", "-DFAYLINE_TESTS=OFF",
                       "-DFAYLINE_WERROR=OFF", "-G Ninja"):
            self.assertIn(option, configure)

    def test_without_display_writes_results_into_out(self):
        done = self.start()
        out = self.root / "out"
        self.assertEqual((done.returncode, done.stderr), (0, ""))
        self.assertEqual({path.name for path in out.iterdir()}, {
            "hollin.fayline", "hollin.sha256", "margins.txt", "margins.csv", "margins.json", "hull.json", "holes.json",
            "metal.txt", "sheets"})
        self.assertEqual((out / "margins.csv").read_text(), "demo made\nresult of margins --csv\n")
        self.assertEqual((out / "margins.txt").read_text(), "demo made\nresult of margins text\n")
        for path in out.iterdir():
            if path.name != "hollin.sha256":
                self.assertIn(str(path), done.stdout)

    def test_a_second_run_makes_an_untouched_demo_anew(self):
        self.start()
        self.start()
        self.assertEqual(len(self.logged("fayline demo")), 1)

    def test_a_second_run_keeps_a_changed_demo_and_other_files(self):
        self.start()
        out = self.root / "out"
        (out / "hollin.fayline").write_text("my own work\n")
        (out / "notes.txt").write_text("mine\n")
        for _ in range(2):
            done = self.start()
            self.assertEqual(self.logged("fayline demo"), [])
            self.assertIn("is kept", done.stdout)
            self.assertEqual((out / "hollin.fayline").read_text(), "my own work\n")
            self.assertEqual((out / "margins.json").read_text(), "my own work\nresult of margins --json\n")
        self.assertEqual((out / "notes.txt").read_text(), "mine\n")

    def test_a_failed_result_leaves_no_half_file(self):
        done = self.start(FAIL_ON="hull")
        self.assertEqual(done.returncode, 1)
        self.assertIn("fayline hull", done.stderr)
        self.assertEqual([path for path in (self.root / "out").iterdir() if path.name.startswith("hull")], [])

    def test_with_a_display_opens_the_demo_among_the_users_data(self):
        for settings, data in (({"DISPLAY": ":1"}, self.top / "user/.local/share"),
                               ({"WAYLAND_DISPLAY": "w", "XDG_DATA_HOME": str(self.top / "data")}, self.top / "data")):
            with self.subTest(settings):
                project = data / "fayline/hollin.fayline"
                for count in (1, 0):  # made once, then opened as it is
                    done = self.start(**settings)
                    self.assertEqual(done.returncode, 0, done.stderr)
                    self.assertEqual(self.logged("fayline")[-1], f"fayline {project}")
                    self.assertEqual(len(self.logged("fayline demo")), count)
        self.assertFalse((self.root / "out").exists())

    def test_wayland_alone_needs_its_own_package(self):
        self.start(WAYLAND_DISPLAY="w", MISSING="qt6-wayland")
        self.assertEqual(len(self.logged("apt-get install")), 1)
        self.start(DISPLAY=":1", WAYLAND_DISPLAY="w", MISSING="qt6-wayland")
        self.assertEqual(self.logged("apt-get install"), [])

    def test_options(self):
        self.assertEqual(self.start("--no-window", DISPLAY=":1").returncode, 0)
        self.assertTrue((self.root / "out/margins.txt").exists())
        self.assertEqual(self.start("--windy").returncode, 2)
        self.assertEqual(self.start("--help").returncode, 0)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=1)
