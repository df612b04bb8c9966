"""The questions of the bench are answered: the program's `find` brings the wanted record first or second.

Arguments: the program, the content, the schema. The questions stand in tests/spec/questions.md, which says how a line is read.
Every eighth is asked here; tests/command/questions_test.cc asks them all.
"""

import concurrent.futures
import json
import pathlib
import re
import subprocess
import sys
import unittest

ROOT = pathlib.Path(__file__).resolve().parents[2]
SPEC = ROOT / "tests" / "spec" / "questions.md"
LINE = re.compile(r"^\| (\d+) \| ([^|]+) \| ([^|]+) \| ([^|]+) \|$")
RECORD = re.compile(r"^[a-z]+/[a-z][a-z0-9]*(-[a-z0-9]+)*$")
PAGE_LINE = re.compile(r"^  handbook \(A4\), page [0-9]+\n", re.M)
PLACES = 2
EACH = 8


def questions(text):
    """(number, question, words, wanted records) of each line of the tables."""
    found = []
    for line in text.splitlines():
        match = LINE.match(line)
        if match:
            found.append((int(match[1]), match[2].strip(), match[3].split(), [name.strip() for name in match[4].split(",")]))
    return found


def look_up(program, content, schema, words):
    """References of the answers, the best first."""
    run = subprocess.run([program, "--content", content, "--schema", schema, "--quiet", "find", "--json", *words],
                         capture_output=True, text=True, check=False)
    if run.returncode not in (0, 1):
        raise RuntimeError(f"find {' '.join(words)}: {run.stderr}")
    answer = json.loads(run.stdout)
    return [hit["record"] for hit in answer["hits"] + answer["others"]]


class Questions(unittest.TestCase):
    program, content, schema = None, None, None

    @classmethod
    def setUpClass(cls):
        cls.lines = questions(SPEC.read_text(encoding="utf-8"))

    def test_fifty_are_asked_and_each_line_is_read(self):
        self.assertEqual([number for number, *_ in self.lines], list(range(1, len(self.lines) + 1)))
        self.assertGreaterEqual(len(self.lines), 50)
        for number, _, words, wanted in self.lines:
            self.assertTrue(words, number)
            for record in wanted:
                self.assertRegex(record, RECORD)

    def test_wanted_record_stands_first_or_second(self):
        missed = []
        asked = self.lines[::EACH]
        self.assertGreaterEqual(len(asked), 7)
        with concurrent.futures.ThreadPoolExecutor(max_workers=2) as pool:
            answers = pool.map(lambda line: look_up(self.program, self.content, self.schema, line[2]), asked)
            for (number, question, words, wanted), found in zip(asked, answers):
                if not set(wanted) & set(found[:PLACES]):
                    missed.append(f"{number}. {question} find {' '.join(words)}: wanted {wanted}, got {found[:4]}")
        self.assertEqual(missed, [], "\n" + "\n".join(missed))

    def test_a_question_without_an_answer_is_found(self):
        self.assertEqual(look_up(self.program, self.content, self.schema, ["helicopter", "gearbox"]), [])


class Readme(unittest.TestCase):
    """What the README shows of an answer is the answer."""

    def test_the_sample_is_what_find_prints(self):
        text = (ROOT / "README.md").read_text(encoding="utf-8")
        block = re.search(r"^    benchleaf find (\S+)\n\n((?:    .*\n)+)", text, re.M)
        self.assertIsNotNone(block)
        shown = "".join(line[4:] for line in block[2].splitlines(keepends=True))
        run = subprocess.run([Questions.program, "--content", Questions.content, "--schema", Questions.schema, "--quiet", "find", block[1]],
                             capture_output=True, text=True, check=True)
        # A page is named where a handbook is bound, and moves with every layout: the sample has some page, the answer this one.
        self.assertRegex(shown, PAGE_LINE)
        self.assertEqual(PAGE_LINE.sub("", shown), PAGE_LINE.sub("", run.stdout))


if __name__ == "__main__":
    Questions.program, Questions.content, Questions.schema = sys.argv[1:4]
    unittest.main(argv=sys.argv[:1])
