"""What README and DEVELOPERS.md tell to type, typed in a fresh clone.

Arguments: the program. Every line of a code block and every command between backquotes is run, or stands in a list of those that are
not, with the reason. A command that is in neither fails the test, and so does a line of the list that the two files have no longer.
"""

import os
import pathlib
import re
import shlex
import shutil
import subprocess
import sys
import tempfile
import unittest

import command_words

ROOT = pathlib.Path(__file__).resolve().parents[2]
FILES = ("README.md", "DEVELOPERS.md")
# A word that begins a command, among all that stands between backquotes.
PROGRAMS = ("benchleaf", "cmake", "ctest", "git", "ninja", "man", "clang-format-14", "slips_test")

WHOLE_BUILD = "builds or tests the whole project: the build service runs it on a bare Debian"
BUILT = "needs the tree of a whole build; the presets and scripts that it names are held against the project"
NOT_RUN = {
    ".ci/install && cmake --workflow --preset handbook": WHOLE_BUILD,
    ".ci/install test && cmake --workflow --preset test": WHOLE_BUILD,
    "cmake --preset dev && cmake --build --preset dev": WHOLE_BUILD,
    "ctest --preset dev": WHOLE_BUILD,
    "cmake --workflow --preset package": WHOLE_BUILD,
    ".ci/run": WHOLE_BUILD,
    ".ci/run wide": WHOLE_BUILD,
    ".ci/review COMMIT": BUILT,
    "ctest -R NAME": BUILT,
    "slips_test '[.table]'": BUILT,
    "ninja -C out/build/release pictures": BUILT,
    "cmake --install": "named, not typed; the block below Install has it in full",
    "cmake --install out/build/release --prefix ~/.local": "installs; the test of the installation runs it from a tree that is built",
    "man benchleaf": "needs an installation; the test of the manual sets the same page",
    "man benchleaf-record": "needs an installation; the test of the manual sets the same page",
}
# Words of the guide that stand for something of the reader's.
STAND_FOR = {
    "WATCH": "content/watch/quillfen-d-001.yaml", "COMMAND": "find", "KIND": "cell", "ID": "sr999w", "FILE": "src/base/id.cc",
    "[CONTENT]": "", "WORDS…": "393", "[NAME]": "", "[KEY=VALUE…]": "", "[WHAT…]": "393",
    "OLD/content": "content", "OLD": "content", "NEW": "content", "--explain": "--explain cell.voltage",
}
# Exit codes other than 0 that are answers: `changes` tells a difference by 1.
ANSWERS = {"changes": (0, 1)}


def commands_of(text):
    """The lines of code blocks that begin with a command, and the commands between backquotes outside them."""
    found, prose = [], []
    for line in text.splitlines():
        if line.startswith("    "):
            if re.match(r"(\.ci/\S+|%s)( |$)" % "|".join(PROGRAMS), line[4:]):
                found.append(line.strip())
        else:
            prose.append(line)
    for span in re.findall(r"(?<!`)`([^`\n]+)`(?!`)", "\n".join(prose)):
        words = span.split()
        if re.match(r"\.ci/(run|review|install)$", words[0]) or (words[0] in PROGRAMS and len(words) > 1):
            found.append(span)
    return list(dict.fromkeys(found))


def filled_in(command):
    return " ".join(part for part in (STAND_FOR.get(word, word) for word in command.split()) if part)


class Guide(unittest.TestCase):
    program = None

    @classmethod
    def setUpClass(cls):
        cls.folder = pathlib.Path(tempfile.mkdtemp(prefix="guide-"))
        cls.clone = cls.folder / "clone"
        cls.environment = {**os.environ, "GIT_CONFIG_GLOBAL": "/dev/null", "GIT_CONFIG_SYSTEM": "/dev/null", "LC_ALL": "C.UTF-8",
                           "PATH": f"{cls.folder / 'bin'}:{os.environ['PATH']}"}
        run = subprocess.run(["git", "clone", "--quiet", "--no-hardlinks", ROOT, cls.clone], env=cls.environment, check=False,
                             capture_output=True, text=True)
        if run.returncode != 0:
            raise unittest.SkipTest(f"the tree cannot be cloned: {run.stderr.strip()}")
        # What is written and not committed is typed as well.
        for name in FILES:
            shutil.copy(ROOT / name, cls.clone / name)
        for name in ("content", "schema"):
            shutil.rmtree(cls.clone / name)
            shutil.copytree(ROOT / name, cls.clone / name)
        subprocess.run(["git", "-C", cls.clone, "remote", "set-head", "origin", "--auto"], env=cls.environment, check=False,
                       capture_output=True)
        (cls.folder / "bin").mkdir()
        (cls.folder / "bin" / "benchleaf").symlink_to(cls.program)
        club = cls.clone / "club"  # the overlay whose file README prints
        club.mkdir()
        block = re.search(r"\n    name: .*?(?=\n\n)", (ROOT / "README.md").read_text(encoding="utf-8"), re.S)[0]
        (club / "overlay.yaml").write_text(re.sub(r"^    ", "", block.strip("\n"), flags=re.M) + "\n", encoding="utf-8")

    @classmethod
    def tearDownClass(cls):
        shutil.rmtree(cls.folder, ignore_errors=True)

    def fault_of(self, command):
        """What is wrong with a command when it is typed, or nothing."""
        words = shlex.split(command)
        if words[:2] == ["benchleaf", "bind"]:  # a whole book takes minutes: its facts go the same way
            command += " --only facts"
        run = subprocess.run(["bash", "-c", command], cwd=self.clone, env=self.environment, check=False, capture_output=True,
                             text=True, timeout=300)
        if words[:2] == ["benchleaf", "draft"]:  # nobody fills it in here, and what follows needs sound records
            (self.clone / "content" / words[2] / f"{words[3]}.yaml").unlink(missing_ok=True)
        allowed = ANSWERS.get(words[1] if len(words) > 1 else "", (0,))
        return None if run.returncode in allowed else f"{command}: exit {run.returncode}: {run.stderr.strip()[-300:]}"

    def commands(self):
        return list(dict.fromkeys(command for name in FILES for command in commands_of((ROOT / name).read_text(encoding="utf-8"))))

    def test_each_command_runs_or_has_a_reason(self):
        typed = [filled_in(command) for command in self.commands() if command not in NOT_RUN]
        self.assertGreaterEqual(len(typed), 12)
        faults = [fault for fault in map(self.fault_of, typed) if fault]
        self.assertEqual(faults, [])
        print(f"typed in a fresh clone: {len(typed)}; not typed: {len(NOT_RUN)}")

    def test_what_is_not_typed_is_named_by_the_guide_and_known_to_the_project(self):
        self.assertEqual(sorted(set(NOT_RUN) - set(self.commands())), [])
        project = command_words.Project(ROOT, self.program)
        for command in NOT_RUN:
            for words in command_words.parts_of(command.replace("COMMIT", "main")):
                if words[0].startswith(".ci/") or "--preset" in words:
                    self.assertEqual(project.faults(words), [], command)

    def test_a_change_is_checked_where_it_was_made(self):
        """A number that stands twice is reported at the file that git does not have yet, although the other comes later by name."""
        record = (self.clone / "content/cell/sr754w.yaml").read_text(encoding="utf-8")
        copy = self.clone / "content/cell/sr000w.yaml"
        copy.write_text(record.replace("id: sr754w", "id: sr000w"), encoding="utf-8")
        check = [self.program, "check", "--quiet", "--changed-since"]
        run = subprocess.run([*check, "HEAD"], cwd=self.clone, env=self.environment, check=False, capture_output=True, text=True)
        copy.unlink()
        places = re.findall(r"^(\S+?):\d+:\d+: error: .*\[number.unique\]$", run.stderr, re.M)
        self.assertEqual((run.returncode, set(places)), (1, {"content/cell/sr000w.yaml"}))
        unknown = subprocess.run([*check, "no-such-commit"], cwd=self.clone, env=self.environment, check=False, capture_output=True)
        self.assertEqual(unknown.returncode, 2)

    def test_a_command_that_is_wrong_is_found(self):
        text = "Type `benchleaf chekc`, or\n\n    benchleaf find 393 --jsno\n    git worktree add ../before no-such-branch\n\nand `cell`.\n"
        commands = commands_of(text)
        self.assertEqual(commands, ["benchleaf find 393 --jsno", "git worktree add ../before no-such-branch", "benchleaf chekc"])
        for command in commands:
            self.assertIsNotNone(self.fault_of(command), command)


if __name__ == "__main__":
    Guide.program = str(pathlib.Path(sys.argv[1]).resolve())
    unittest.main(argv=sys.argv[:1])
