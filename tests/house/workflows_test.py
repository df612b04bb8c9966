"""Workflows, hooks and the scripts in .ci call only what is there, with words that it takes.

Arguments: the program, ctest's build tree. The workflows are read with Debian's python3-yaml, the scripts by bash -n.
"""

import pathlib
import re
import subprocess
import sys
import unittest

import yaml

import command_words

ROOT = pathlib.Path(__file__).resolve().parents[2]
WORKFLOWS = ROOT / ".github" / "workflows"


class Workflows(unittest.TestCase):
    program, tree = None, None

    def setUp(self):
        self.project = command_words.Project(ROOT, self.program)

    def test_each_command_of_a_workflow_is_known(self):
        texts = {path.name: path.read_text(encoding="utf-8") for path in sorted(WORKFLOWS.glob("*.yml"))}
        found, looked = command_words.workflow_faults(self.project, texts)
        self.assertEqual(found, [])
        self.assertGreaterEqual(looked, 15)

    def test_each_hook_is_known(self):
        hooks = yaml.safe_load((ROOT / ".pre-commit-hooks.yaml").read_text(encoding="utf-8"))
        self.assertGreaterEqual(len(hooks), 2)
        for hook in hooks:
            self.assertEqual(self.project.faults(hook["entry"].split()), [])

    def test_scripts_call_what_is_there(self):
        looked = 0
        for name in ("run", "review", "install"):
            path = ROOT / ".ci" / name
            self.assertEqual(subprocess.run(["bash", "-n", path], check=False).returncode, 0)
            lines = path.read_text(encoding="utf-8").replace('"$program"', "$program").splitlines()
            text = "\n".join(line for line in lines if not line.startswith("#"))
            calls = re.findall(r"(?:\$program (?=[a-z])|\bcmake --|\bctest --|(?<!usage: )(?<=' )\.ci/)[^|&;>\n]*", text)
            for call in calls:
                looked += 1
                self.assertEqual(self.project.faults(re.sub(r"\"[^\"]*\"", "x", call).replace("]", "").strip("\" ").split()), [], call)
        self.assertGreaterEqual(looked, 9)

    def test_the_long_tests_are_there(self):
        pattern = re.search(r"ctest --preset tested -C wide -R '([^']+)'", (ROOT / ".ci" / "run").read_text(encoding="utf-8"))[1]
        for one in pattern.split("|"):
            run = subprocess.run(["ctest", "--test-dir", self.tree, "-N", "-C", "wide", "-R", one], capture_output=True, text=True, check=True)
            self.assertNotIn("Total Tests: 0", run.stdout, one)

    def test_the_handbook_target_makes_all_that_is_installed(self):
        """What `cmake --install` takes is there after the README's first command alone."""
        run = subprocess.run(["ninja", "-C", self.tree, "-t", "commands", "handbook"], capture_output=True, text=True, check=True)
        packed = {pathlib.PurePosixPath(name).name for name in re.findall(r"gzip -9 -n -k -f (\S+)", run.stdout)}
        self.assertEqual(packed, {"benchleaf.1", "benchleaf-record.5", "changelog"})
        self.assertIn("benchleaf_describe", run.stdout)

    def test_faults_are_found(self):
        sample = """
name: sample
on: {workflow_run: {workflows: [chekc]}}
jobs:
  one:
    steps:
      - uses: actions/download-artifact@v4
        with: {name: reveiw}
      - run: |
          bash .ci/run widee
          .ci/gone
          benchleaf check --stritc
          benchleaf chekc
          cmake --workflow --preset hanbook
          ctest --preset dve
          frobnicate now && bash .ci/run wide
"""
        found, looked = command_words.workflow_faults(self.project, {"sample.yml": sample})
        self.assertEqual(looked, 8)
        self.assertEqual([re.sub(r": takes.*", "", fault) for fault in found], [
            "sample.yml: one step 2: .ci/run widee",
            "sample.yml: one step 2: .ci/gone: .ci/gone is no program of the project",
            "sample.yml: one step 2: benchleaf check --stritc: no option --stritc",
            "sample.yml: one step 2: benchleaf chekc: no such command",
            "sample.yml: one step 2: cmake --workflow --preset hanbook: no preset hanbook among workflowPresets",
            "sample.yml: one step 2: ctest --preset dve: no preset dve among testPresets",
            "sample.yml: one step 2: frobnicate now: frobnicate is not known",
            "sample.yml: actions/download-artifact@v4 is not pinned by commit",
            "sample.yml: waits for chekc, which no workflow is called",
            "nobody leaves the artifact reveiw",
        ])


if __name__ == "__main__":
    Workflows.program, Workflows.tree = sys.argv[1:3]
    unittest.main(argv=sys.argv[:1])
