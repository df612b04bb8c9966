"""The rules of the house, each held against the project and against a sample that breaks it."""

import pathlib
import subprocess
import unittest

import forbidden_words
import include_rule
import machine_paths
import spelling
import trust_by_kind

HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parents[1]
SAMPLES = HERE / "samples"


class IncludeRule(unittest.TestCase):
    def setUp(self):
        self.table = include_rule.read_table(ROOT / "src" / "folders.txt")

    def test_table_is_the_design(self):
        # The folders in their order, and for three of them what they may see: the design's own words.
        self.assertEqual(list(self.table), (
            "base report model read standards bench derive query prove compose compose/figures ticket label compose/charts compose/entries "
            "compose/changes page pdf html web command").split())
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


class MachinePaths(unittest.TestCase):
    def test_project_names_none(self):
        self.assertEqual(machine_paths.faults(ROOT), [])

    def test_planted_one_is_found(self):
        for place in machine_paths.PLACES:
            line = "see /" + place + "/somebody/notes.txt"
            self.assertEqual(machine_paths.faults_in("a.md", f"first\n{line}\n".encode()), [f"a.md:2: {line[4:]}"])

    def test_places_of_the_distribution_pass(self):
        allowed = ["/usr/share/fonts/a.ttf"] + [before + "/" + place + "/a" for before in ("out", "..", "${X}") for place in machine_paths.PLACES]
        self.assertEqual(machine_paths.faults_in("a.md", " ".join(allowed).encode()), [])


class ForbiddenWords(unittest.TestCase):
    """No brand, maker or person; the names stand as hashes only."""

    # Written in two pieces, so that this file does not hold them.
    PLANTED = "Zorble" + "quarz"
    PLANTED_PAIR = ("zor" + "ble", "quarz" + "ette")

    def found_in(self, text):
        return forbidden_words.faults_in("page.md", text, forbidden_words.read_list(), {})

    def test_list_holds_hashes_and_nothing_else(self):
        forbidden = forbidden_words.read_list()
        self.assertGreater(len(forbidden), 100)
        for line in forbidden:
            self.assertRegex(line, "^[0-9a-f]{64}$")

    def test_hash_is_the_one_of_the_shell_command(self):
        # FIPS 180-4, the example of one block: SHA-256 of "abc".
        self.assertEqual(forbidden_words.hash_of("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")

    def test_planted_word_is_found_however_it_is_written(self):
        word = self.PLANTED
        for text in (f"a {word.upper()}, worn", f"{word.lower()}-like", f"make{word}Case", f"'{word}'s"):
            self.assertEqual(self.found_in("fine\n" + text), [f"page.md:2: {word.lower()}"], text)

    def test_planted_pair_is_found_and_its_halves_are_not(self):
        first, second = self.PLANTED_PAIR
        self.assertEqual(self.found_in(f"{first.title()} {second}"), [f"page.md:1: {first} {second}"])
        self.assertEqual(self.found_in(f"{first} and {second}"), [])

    def test_project_names_none(self):
        self.assertEqual(forbidden_words.faults(ROOT), [])

    def test_every_kind_of_file_is_looked_at(self):
        seen = {path.relative_to(ROOT).parts[0] for path in map(pathlib.Path, forbidden_words.files(ROOT))}
        self.assertLessEqual({"content", "schema", "src", "tests", "README.md", "LICENSE"}, seen)


class Spelling(unittest.TestCase):
    def test_content_is_spelt(self):
        self.assertEqual(spelling.faults(ROOT), [])

    def test_house_list_is_sorted_and_each_word_is_needed(self):
        house = spelling.house_words()
        self.assertEqual(house, sorted(set(house)))
        used = set().union(*spelling.words_by_file(ROOT).values())
        self.assertEqual([word for word in house if not {word, word[0].upper() + word[1:]} & used], [])
        self.assertEqual(set(house) - spelling.unknown_to_hunspell(set(house)), set())

    def test_misspelt_and_american_words_are_found(self):
        self.assertEqual(spelling.misspelt({"crystal", "gaskett", "colour", "color"}), {"gaskett", "color"})

    def test_prose_is_read_and_references_are_not(self):
        record = "id: nonsens\ntitle: A titel\nsteps:\n  - { do: Lift itt, using: [swabb] }\n"
        self.assertEqual(spelling.words_of(spelling.prose_of("procedure/x.yaml", record)), {"titel", "Lift", "itt"})
        page = "---\nid: nonsens\ntitle: A titel\n---\n\nSee [thiss](cell/sr44w).\n\n```bench\nshow: messag\n```\n"
        self.assertEqual(spelling.words_of(spelling.prose_of("page/x.md", page)), {"titel", "See", "thiss"})


class Licences(unittest.TestCase):
    """Every source says under which licence it was read, or that it does not say."""

    def unlicensed(self, records):
        return sorted(name for name, text in records if not any(line.startswith("licence: ") for line in text.splitlines()))

    def test_content_keeps_it(self):
        records = [(path.name, path.read_text(encoding="utf-8")) for path in (ROOT / "content" / "source").glob("*.yaml")]
        self.assertGreater(len(records), 100)
        self.assertEqual(self.unlicensed(records), [])

    def test_source_without_one_is_found(self):
        self.assertEqual(self.unlicensed([("a.yaml", "id: a\nlicence: MIT\n"), ("b.yaml", "id: b\nread: All.\n")]), ["b.yaml"])


class TrustByKind(unittest.TestCase):
    """Four facts written by hand: three of the kinds counted, one of a table."""

    LINES = ['{"id": "cell/a#size", "trust": "memory"}', '{"id": "cell/b#size", "trust": "dataset"}',
             '{"id": "symptom/a#looks", "trust": "trade"}', '{"id": "table/t#r.c", "trust": "memory"}']

    def setUp(self):
        self.counted = trust_by_kind.count(self.LINES)

    def test_a_third_rests_on_memory(self):
        self.assertAlmostEqual(trust_by_kind.memory_share(self.counted), 100 / 3)
        self.assertIn("| all | 3 | 0 | 0 | 1 | 1 | 1 | 0 | 0 |", trust_by_kind.table(self.counted))

    def test_too_much_memory_is_found(self):
        self.assertEqual(trust_by_kind.faults(self.counted, 34, fewest=3), [])
        self.assertEqual(trust_by_kind.faults(self.counted, 33, fewest=3),
                         ["33.3 % of 3 facts rest on memory, expected at most 33 %"])

    def test_a_count_of_nothing_is_found(self):
        self.assertEqual(trust_by_kind.faults(self.counted, 34), ["only 3 facts of these kinds"])


if __name__ == "__main__":
    unittest.main()
