"""The rules of the house, each held against the project and against a sample that breaks it."""

import pathlib
import subprocess
import tempfile
import unittest

import include_rule
import machine_paths

HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parents[1]
SAMPLES = HERE / "samples"


class IncludeRule(unittest.TestCase):
    def setUp(self):
        self.table = include_rule.read_table(ROOT / "src" / "folders.txt")

    def test_table_is_the_design(self):
        # The folders in their order, and for three of them what they may see: the design's own words.
        self.assertEqual(list(self.table), "base report model read standards bench derive prove compose page pdf html command".split())
        self.assertEqual(self.table["base"], {"base"})
        self.assertEqual(self.table["html"], {"html", "model", "report", "base"})
        self.assertNotIn("read", self.table["derive"])

    def test_project_keeps_it(self):
        self.assertEqual(include_rule.faults(ROOT / "src", self.table), [])

    def test_forbidden_include_is_found(self):
        self.assertEqual(include_rule.faults(SAMPLES / "forbidden" / "src", self.table), [
            'model/early.h:6: "../html/late.h" does not start with a folder of src',
            'model/early.h:7: "early.h" does not start with a folder of src',
            'model/early.h:8: model may not include "html/late.h"',
        ])

    def test_allowed_include_passes(self):
        self.assertEqual(include_rule.faults(SAMPLES / "allowed" / "src", self.table), [])

    def test_unknown_folder_is_found(self):
        self.assertIn("html: a folder that the table does not have",
                      include_rule.faults(SAMPLES / "allowed" / "src", {"model": {"model"}}))


class SourceLists(unittest.TestCase):
    """The build refuses a list of sources that is not the folder; the project itself is held to that by being configured."""

    def configure(self, listed):
        with tempfile.TemporaryDirectory() as build:
            return subprocess.run(
                ["cmake", "-S", SAMPLES / "source_lists", "-B", build, f"-DLISTED={listed}", f"-DSTAGE={ROOT / 'src' / 'stage.cmake'}"],
                capture_output=True, text=True, check=False)

    def test_matching_list_passes(self):
        run = self.configure("kept.cc;deeper/kept_too.cc")
        self.assertEqual(run.returncode, 0, run.stderr)

    def test_source_left_out_is_found(self):
        run = self.configure("kept.cc")
        self.assertNotEqual(run.returncode, 0)
        self.assertIn("model/deeper/kept_too.cc is not in the SOURCES", " ".join(run.stderr.split()))

    def test_source_that_is_gone_is_found(self):
        run = self.configure("kept.cc;deeper/kept_too.cc;gone.cc")
        self.assertNotEqual(run.returncode, 0)
        self.assertIn("lists gone.cc, which is not in model", " ".join(run.stderr.split()))


class MachinePaths(unittest.TestCase):
    def test_project_names_none(self):
        self.assertEqual(machine_paths.faults(ROOT), [])

    def test_planted_one_is_found(self):
        for place in machine_paths.PLACES:
            line = "see /" + place + "/somebody/notes.txt"
            self.assertEqual(machine_paths.faults_in("a.md", f"first\n{line}\n".encode()), [f"a.md:2: {line[4:]}"])

    def test_places_of_the_distribution_pass(self):
        self.assertEqual(machine_paths.faults_in("a.md", b"/usr/share/fonts/a.ttf out/tmp/a ../home/x ${TMP}/work/a"), [])


if __name__ == "__main__":
    unittest.main()
