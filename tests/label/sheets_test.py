"""Labels as the program prints them, measured on the PDF by poppler.

Arguments: the program, the content, the schema. Places of the labels are those of the formats as stationers sell them, recalled:
width, height, pitch and the count of labels, centred on ISO 216 and ANSI/ASME Y14.1 paper. What a bottle must say is what
`reckon mixture-class --json` answers, its codes put into the words of Regulation (EC) No 1272/2008, annex III, as the table
hazard-statements has them.
"""

import json
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import unittest

import yaml

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parents[1] / "house" / "bound"))
import picture  # noqa: E402

MM = 72 / 25.4
NEAR_MM = 0.3
DPI = 600
A4, LETTER = (210, 297), (215.9, 279.4)
# paper, columns, rows, width, height, across, down, in mm
GRIDS = {
    "70x37": (A4, 3, 8, 70, 37, 70, 37),
    "63.5x38.1": (A4, 3, 7, 63.5, 38.1, 66.04, 38.1),
    "99.1x57": (A4, 2, 5, 99.1, 57, 101.6, 57),
    "2.625x1in": (LETTER, 3, 10, 66.675, 25.4, 69.85, 25.4),
    "4x2in": (LETTER, 2, 5, 101.6, 50.8, 106.3625, 50.8),
}
OWN = {"own": (A4, 4, 10, 45, 25, 47, 26)}
OWN_WORDS = ["--label", "45x25", "--columns", "4", "--rows", "10", "--pitch", "47x26"]


def corners(grid):
    paper, columns, rows, width, height, across, down = grid
    left = (paper[0] - (columns - 1) * across - width) / 2
    top = (paper[1] - (rows - 1) * down - height) / 2
    return [(left + column * across, top + row * down) for row in range(rows) for column in range(columns)]


class Labels(unittest.TestCase):
    program, content, schema = None, None, None

    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = pathlib.Path(folder.name)

    def run_program(self, *words, code=0):
        shutil.rmtree(self.folder / "out", ignore_errors=True)
        run = subprocess.run([self.program, *words, "--content", self.content, "--schema", self.schema], cwd=self.folder,
                             capture_output=True, text=True, check=False)
        self.assertEqual(run.returncode, code, run.stderr)
        return run

    def pdf(self):
        return next((self.folder / "out" / "labels").glob("*.pdf"))

    def words(self):
        """(page, text, left, top) of every word, in mm."""
        printed = subprocess.run(["pdftotext", "-bbox", str(self.pdf()), "-"], capture_output=True, text=True, check=True).stdout
        page, found = 0, []
        for line in printed.splitlines():
            page += "<page " in line
            word = re.search(r'xMin="([\d.]+)" yMin="([\d.]+)" .*>(.*)</word>', line)
            if word:
                found.append((page, word[3], float(word[1]) / MM, float(word[2]) / MM))
        return found

    def text(self):
        return " ".join(subprocess.run(["pdftotext", "-raw", str(self.pdf()), "-"], capture_output=True, text=True, check=True).stdout.split())

    def test_each_label_lies_on_its_place_on_every_sheet(self):
        for name, grid in {**GRIDS, **OWN}.items():
            with self.subTest(name):
                places = corners(grid)
                self.run_program("label", "393", "--copies", str(len(places) + 2), *(OWN_WORDS if name == "own" else ["--grid", name]))
                heads = [word for word in self.words() if word[1] == "393"]
                self.assertEqual(len(heads), len(places) + 2)
                self.assertEqual([head[0] for head in heads], [1] * len(places) + [2, 2])
                first = (heads[0][2] - places[0][0], heads[0][3] - places[0][1])
                for head, place in zip(heads, [*places, *places[:2]]):
                    self.assertAlmostEqual(head[2] - place[0], first[0], delta=NEAR_MM)
                    self.assertAlmostEqual(head[3] - place[1], first[1], delta=NEAR_MM)
                # within the label, 4 mm and more from the edge of the paper
                self.assertGreater(first[0], 1.5)
                self.assertGreater(min(head[2] for head in heads), 4)

    def measured(self, grid, place):
        """Edges of a label as lines of the page: (wanted, nearest found) in mm. What lies on the edge of the paper is not printed."""
        paper, _, _, width, height, _, _ = grid
        left, top = place
        box = [max(0, (left - 1) * MM), max(0, (top - 1) * MM), min(paper[0], left + width + 1) * MM, min(paper[1], top + height + 1) * MM]
        part = picture.Picture(self.pdf(), 1, DPI, box)
        across = [part.along_x(run) / MM for run in picture.dark_runs(part.row((top + height / 2) * MM))]
        down = [part.along_y(run) / MM for run in picture.dark_runs(part.column((left + width / 2) * MM))]
        for wanted, found, end in ((left, across, paper[0]), (left + width, across, paper[0]), (top, down, paper[1]), (top + height, down, paper[1])):
            if 0.2 < wanted < end - 0.2:
                yield wanted, min(found, key=lambda one: abs(one - wanted), default=None)

    def test_outlines_are_the_edges_of_the_first_and_the_last_label(self):
        for name, grid in {**GRIDS, **OWN}.items():
            with self.subTest(name):
                places = corners(grid)
                # empty labels are looked at: the words stand on one in the middle
                self.run_program("label", "393", "--outlines", "--start", str(len(places) // 2 + 1),
                                 *(OWN_WORDS if name == "own" else ["--grid", name]))
                edges = [edge for place in (places[0], places[-1]) for edge in self.measured(grid, place)]
                self.assertGreaterEqual(len(edges), 4)
                for wanted, found in edges:
                    self.assertIsNotNone(found, f"no line at {wanted}")
                    self.assertLessEqual(abs(found - wanted), NEAR_MM)

    def test_the_help_names_every_grid_of_the_table(self):
        words = subprocess.run([self.program, "help", "label"], capture_output=True, text=True, check=True).stdout
        table = yaml.safe_load((pathlib.Path(self.schema) / "tables" / "label-grids.yaml").read_text(encoding="utf-8"))
        self.assertEqual({row["grid"] for row in table["rows"]}, set(GRIDS))
        for grid in GRIDS:
            self.assertIn(grid, words)

    def statements(self):
        table = yaml.safe_load((pathlib.Path(self.schema) / "tables" / "hazard-statements.yaml").read_text(encoding="utf-8"))
        return {row["code"]: " ".join(row["text"].split()) for row in table["rows"]}

    def figures(self):
        """What the pictures of the PDF are said to show."""
        whole = json.loads(subprocess.run(["qpdf", "--json=2", "--json-key=qpdf", str(self.pdf())], capture_output=True, text=True,
                                          check=True).stdout)
        values = [entry.get("value") for entry in whole["qpdf"][1].values()]
        return [value["/Alt"][2:] for value in values if isinstance(value, dict) and value.get("/S") == "/Figure"]

    def held(self, answer):
        outputs = {output["name"]: output["printed"] for output in answer["outputs"]}
        codes = {name: [] if outputs[name] == "none" else outputs[name].split(", ") for name in ("statements", "perhaps", "pictograms")}
        words, text = self.statements(), self.text()
        said = {*codes["statements"], *codes["perhaps"]}  # a graver one that is in doubt does not take away one that is sure
        for code, statement in words.items():
            if code in said:
                self.assertIn(statement, text)
            elif not any(statement in words[other] for other in said):
                self.assertNotIn(statement, text, code)
        signal = outputs["signal"]
        for word in ("Danger.", "Warning."):
            self.assertEqual(word in text, word == signal.capitalize() + ".", word)
        drawn = [code for alt in self.figures() for code in re.findall(r"GHS\d\d", alt)]
        self.assertEqual(drawn, codes["pictograms"])

    def test_a_bottle_says_and_shows_what_mixture_class_answers(self):
        large = ["--grid", "99.1x57"]
        for parts, more in (("acetic-acid:30", []), ("acetic-acid:5", ["flash=none"]), ("propan-2-ol:70", ["flash=18 °C", "boiling=80 °C"]),
                            ("sodium-hypochlorite:4.5", ["ph=12"])):
            with self.subTest(parts):
                answer = json.loads(self.run_program("reckon", "--json", "mixture-class", f"part={parts}", *more).stdout)
                self.run_program("label", "--mixture", parts, "--name", "Bath", *large,
                                 *[word for one in more for word in ("--" + one.split("=")[0], one.split("=")[1])])
                self.held(answer)
                self.assertIn("For this bench, not for sale.", self.text())

    def test_a_refused_mixture_gives_no_label_and_says_why(self):
        for parts, why in (("sodium-hypochlorite:5, acetic-acid:5", "must never meet"), ("no-such:5", "nothing is known"),
                           ("acetic-acid:130", "no share lies outside"), ("acetic-acid:70, propan-2-ol:70", "more than 100 %")):
            with self.subTest(parts):
                run = self.run_program("label", "393", "--mixture", parts, "--name", "Bath", code=1)
                self.assertIn(why, run.stderr)
                self.assertEqual(run.stdout, "")
                self.assertEqual(len(run.stderr.splitlines()), 1, run.stderr)
                self.assertFalse((self.folder / "out").exists())

    def test_what_cannot_be_printed_gets_one_line(self):
        calls = {
            2: [[], ["393", "--grid", "nowhere"], ["393", "--start", "25"], ["393", "--start", "x" * 300], ["393", "--copies", "1e9"],
                ["393", "--date", "2026-13-01"], ["393", "--date", "\x1b[31m"], ["--mixture", "acetic-acid:5"], ["393", "--name", "x"],
                ["393", "--rows", "3"], ["393", "--label", "50x30"],
                ["--stock", "no-such.yaml"], ["--watch", "/dev/null"], ["--mixture", "acetic-acid:5", "--name", "x" * 81]],
            1: [["393:5"], ["round-0-7:900"], ["fepa-p:P3"], ["\u202e\x07"], ["x" * 5000], [":"],
                ["household-bleach", "--grid", "2.625x1in"], ["--mixture", "acetic-acid:5", "--name", "W" * 80, "--grid", "2.625x1in"]],
        }
        for code, wrong in calls.items():
            for words in wrong:
                with self.subTest(words):
                    run = self.run_program("label", *words, code=code)
                    self.assertEqual(len(run.stderr.splitlines()), 1, run.stderr)
                    self.assertTrue(run.stderr.startswith("benchleaf: "))
                    self.assertNotRegex(run.stderr, "[\x00-\x09\x0b-\x1f\u202e]")
                    self.assertFalse((self.folder / "out").exists())

    def test_a_drawer_gives_a_label_for_each_item_that_is_left(self):
        drawer = pathlib.Path(self.content) / "stock" / "quillfen-drawer.yaml"
        items = [item for item in yaml.safe_load(drawer.read_text(encoding="utf-8"))["items"] if item["count"] > 0]
        run = self.run_program("label", "--stock", str(drawer), "--start", "4")
        listed = [line for line in run.stdout.splitlines() if line.startswith("  ")]
        self.assertEqual(len(listed), len(items))
        self.assertTrue(listed[0].startswith("  4  "))
        text = self.text()
        for item in items:
            self.assertIn(item["place"], text) if not item["item"].startswith("chemistry/") else None
        self.assertIn("28 × 0.7 mm", text.replace("\u2009", " ").replace("\u00a0", " "))

    def test_the_same_call_gives_the_same_bytes(self):
        calls = []
        for _ in range(2):
            self.run_program("label", "isopropanol", "cr2032", "--date", "2026-11")
            calls.append(self.pdf().read_bytes())
        self.assertEqual(*calls)


if __name__ == "__main__":
    Labels.program, Labels.content, Labels.schema = sys.argv[1:4]
    unittest.main(argv=sys.argv[:1])
