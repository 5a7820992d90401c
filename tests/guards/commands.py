"""How the build compiles: commands taken from compile_commands.json, turned into syntax checks of other text."""

import json
import os
import shlex
import subprocess
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path


def load(build):
    """The compile commands of a build tree as (source path, words) pairs."""
    listed = json.loads((Path(build) / "compile_commands.json").read_text(encoding="utf-8"))
    return [(Path(entry["directory"]) / entry["file"], shlex.split(entry["command"])) for entry in listed]


def probe_words(commands, folder):
    """The command of the empty source that sees exactly what users of core/FOLDER see, or None."""
    for _, words in commands:
        if any(f"/probe_{folder}.dir/" in word for word in words):
            return words
    return None


def syntax_check(words):
    """The same compiler and flags, reading C++ from standard input and writing nothing."""
    kept, skip = [], False
    for position, word in enumerate(words):
        if skip:
            skip = False
        elif word in ("-o", "-c", "-MF", "-MT"):
            skip = True
        elif word == "-MD" or (position == 0 and Path(word).name == "ccache"):
            pass
        else:
            kept.append(word)
    return kept + ["-fsyntax-only", "-x", "c++", "-"]


def check_all(jobs):
    """Runs (words, text) jobs on all cores; gives (return code, first error line or '') in the same order."""
    def one(job):
        words, text = job
        done = subprocess.run(syntax_check(words), input=text, text=True, capture_output=True, check=False,
                              env={**os.environ, "LC_ALL": "C"})
        errors = [line for line in done.stderr.splitlines() if "error:" in line]
        return done.returncode, errors[0] if errors else done.stderr.strip()[:300]

    with ThreadPoolExecutor(os.cpu_count()) as pool:
        return list(pool.map(one, jobs))
