"""The checks of the bound handbook find what is planted for them, and pass what is right."""

import contextlib
import io
import json
import pathlib
import tempfile
import unittest
import unittest.mock

import box_check
import chart_check
import chart_page_check
import chart_reading_check
import chart_sign_check
import chart_size_check
import chart_state_check
import count_pages
import fact_check
import html_check
import index_check
import looked_for_check
import order_check
import pdf_check
import plain_text
import records
import same_bytes_check
import scale_check
import structure
import text_check
import tools
import trust_check

HERE = pathlib.Path(__file__).resolve().parent
SITE = HERE.parent / "samples" / "site"

# As poppler prints a tree: a heading, a paragraph with two facts (one over two lines), a table cell.
PRINTED = '''Document
  H2 "SR754W" (block)
    "SR754W"
  P (block)
    "It is "
    Span "cell/sr754w#size.diameter" (inline)
      "7.9\u2009mm"
    " wide and gives "
    Span "cell/sr754w#nominal" (inline)
      "1.55"
      "\u00a0V"
    ", "un\u00ad"
    "less it is spent."
  TD (block):
     /RowSpan 1
    "SR416"
'''
FACTS = {"cell/sr754w#size.diameter": "7.9 mm", "cell/sr754w#nominal": "1.55 V"}


def tiny_pdf(font, content=b"BT /F1 12 Tf 50 50 Td (a) Tj ET", size=b"99 99"):
    """A one-page PDF that shows a letter, or whatever else, in `font`, one of the fonts that readers are trusted to have."""
    objects = [
        b"<</Type/Catalog/Pages 2 0 R>>",
        b"<</Type/Pages/Kids[3 0 R]/Count 1>>",
        b"<</Type/Page/Parent 2 0 R/MediaBox[0 0 %s]/Contents 5 0 R/Resources<</Font<</F1 4 0 R>>>>>>" % size,
        b"<</Type/Font/Subtype/Type1/BaseFont/%s>>" % font,
        b"<</Length %d>>stream\n%s\nendstream" % (len(content), content),
    ]
    data, places = b"%PDF-1.4\n", []
    for number, body in enumerate(objects, 1):
        places.append(b"%010d 00000 n \n" % len(data))
        data += b"%d 0 obj\n%s\nendobj\n" % (number, body)
    table = b"xref\n0 %d\n0000000000 65535 f \n%s" % (len(objects) + 1, b"".join(places))
    return data + table + b"trailer<</Size %d/Root 1 0 R>>\nstartxref\n%d\n%%%%EOF\n" % (len(objects) + 1, len(data))


class Order(unittest.TestCase):
    PROCEDURE = {"title": "Wipe", "purpose": "To wipe.", "cautions": ["still"], "steps": [
        {"do": "Look."}, {"caution": "burns"}, {"do": "Wipe it."}]}
    HAZARDS = {"still": ["It stands."], "burns": ["It burns. Let it cool.", "It burns."]}

    def faults(self, text):
        return order_check.faults_of(order_check.packed(text), "wipe", self.PROCEDURE, self.HAZARDS)[0]

    def test_right(self):
        self.assertEqual(self.faults("To wipe. It stands. 1 Look. WARNING It burns. 2 Wipe it. It burns."), [])

    def test_below_its_step(self):
        self.assertEqual(len(self.faults("To wipe. It stands. 1 Look. 2 Wipe it. WARNING It burns.")), 1)

    def test_above_the_step_before(self):
        self.assertEqual(len(self.faults("To wipe. It stands. WARNING It burns. 1 Look. 2 Wipe it.")), 1)

    def test_head_below_the_first_step(self):
        self.assertEqual(len(self.faults("To wipe. 1 Look. It stands. WARNING It burns. 2 Wipe it.")), 1)


class Charts(unittest.TestCase):
    @staticmethod
    def word(text, size, x=100, y=100, width=20):
        return {"text": text, "size": size, "x": x, "y": y, "width": width}

    def test_small_type_is_found(self):
        words = [self.word("low", 11.2), self.word("mm", 11.1), self.word("393", 14)]
        self.assertEqual(list(chart_check.type_faults(words, chart_check.Keys({"393"}), 842)),
                         ['"mm" is set at 11.10 pt', 'number "393" is set at 14.00 pt'])

    def test_captions_stand_in_the_bands_only(self):
        words = [self.word("edition", 9.5, y=810), self.word("100 mm", 9.5, y=30), self.word("tiny", 9.4, y=30),
                 self.word("never", 9.5, y=70)]
        self.assertEqual(list(chart_check.type_faults(words, chart_check.Keys(set()), 842)),
                         ['"tiny" is set at 9.40 pt', '"never" is set at 9.50 pt'])

    def test_what_a_cell_holds_is_a_caption(self):
        words = [self.word("30 mAh", 9.5, y=70), self.word("31 mAh", 9.5, y=70)]
        keys = chart_check.Keys(set(), captions=set(chart_check.captions_of({"capacity": {"value": "30 mAh"}})))
        self.assertEqual(list(chart_check.type_faults(words, keys, 842)), ['"31 mAh" is set at 9.50 pt'])

    def test_small_keys_are_found(self):
        words = [self.word("Feel", 13.9), self.word("feel", 11.2)]
        self.assertEqual(list(chart_check.type_faults(words, chart_check.Keys(set(), {"Feel"}), 842)),
                         ['key "Feel" is set at 13.90 pt'])

    def test_tight_lines_are_found(self):
        words = [self.word(str(line), 12, y=100 + 13 * line) for line in range(9)]
        self.assertEqual(len(list(chart_check.leading_faults(words))), 1)
        words = [self.word(str(line), 12, y=100 + 14 * line) for line in range(9)]
        self.assertEqual(list(chart_check.leading_faults(words)), [])

    def test_panels_that_touch_are_found(self):
        words = [self.word("Gasket", 15, y=500), self.word("above", 12, y=517)]
        self.assertEqual(len(list(chart_check.between_faults(words, {"Gasket"}))), 1)
        words = [self.word("Gasket", 15, y=500), self.word("above", 12, y=521)]
        self.assertEqual(list(chart_check.between_faults(words, {"Gasket"})), [])

    def test_only_what_is_near_ink_is_covered(self):
        self.assertEqual(list(chart_check.near(bytes([0, 0, 0, 1, 0, 0, 0, 0]), 2)), [0, 1, 1, 1, 1, 1, 0, 0])

    def test_wrong_sizes_are_found(self):
        self.assertEqual(chart_size_check.told("ring", 11.6, 11.69), [])
        self.assertEqual(len(chart_size_check.told("ring", 11.6, 11.72)), 1)
        self.assertEqual(len(chart_size_check.told("ring", 11.6, None)), 1)

    def test_red_and_green_alike_are_found(self):
        # Two colours that only their red and green tell apart, each as light as the other.
        red, green = chart_state_check.as_deuteranope((200, 60, 60)), chart_state_check.as_deuteranope((110, 110, 60))
        self.assertLess(chart_state_check.difference([red], [green]), chart_state_check.LEAST)
        black, white = chart_state_check.as_deuteranope((0, 0, 0)), chart_state_check.as_deuteranope((255, 255, 255))
        self.assertGreater(chart_state_check.difference([black], [white]), 0.95)

    @staticmethod
    def painted(rows):
        """A picture of one sample a minute of arc, a word at its foot, as painted by hand."""
        shape = type("Painted", (), {"scale": chart_reading_check.DPI / 72, "width": len(rows[0]), "samples": b"".join(rows)})
        height = len(rows) * 72 / chart_reading_check.DPI
        return shape, {"text": "E", "size": 11.2, "x": 0, "y": 0, "width": 5, "length": 5}, height

    def test_letters_too_low_or_too_faint_at_arms_length_are_found(self):
        def faults(ink, high):
            blank, letter = bytes([255] * 20), bytes([255] * 4 + [ink] * 2 + [255] * 14)
            page, word, height = self.painted([blank] * (140 - high) + [letter] * high)
            above_captions = chart_check.BANDS_MM["foot"] * chart_check.MM + 1
            return chart_reading_check.faults_on(page, [{**word, "y": above_captions}], above_captions + height, (0.711, 0.528))[0]

        self.assertEqual(faults(0, 16), [])
        self.assertIn("is 14.0 minutes of arc high", faults(0, 14)[0])
        self.assertIn("at arm's length", faults(150, 16)[0])

    def test_a_font_of_low_capitals_needs_larger_type(self):
        page, word, height = self.painted([bytes(20)] * 40)
        faults = chart_reading_check.faults_on(page, [{**word, "y": 100}], height + 200, (0.65, 0.5))[0]
        self.assertIn("less than 16 minutes", faults[0])

    def test_signs_that_look_alike_are_found(self):
        ring = [(0, 0, 0), (1, 1, 1)]
        with unittest.mock.patch.object(chart_sign_check, "patch", lambda name, seen: ring if name != "leaf" else ring[::-1]):
            places = {name: (name,) for name in ("ring", "leaf", "other ring", "last")}
            faults = list(chart_sign_check.alike("signal words", places))
        self.assertEqual(len(faults), 6, faults)  # three pairs of rings, in either eye
        self.assertEqual(len(list(chart_sign_check.alike("marks", {}))), 1)

    def test_words_at_the_edge_are_found(self):
        page = {"width": 595, "height": 842, "words": [self.word("in", 12), self.word("out", 12, x=5), self.word("low", 12, y=3)]}
        self.assertEqual([fault.split('"')[1] for fault in chart_check.edge_faults(page)], ["out", "low"])

    def test_a_side_that_covers_too_little_or_says_nothing_is_found(self):
        charts = [pathlib.Path("chart-a-a4.pdf")]
        told = "type chart-a-a4.pdf side 1 words 12 pt columns 2 covers {} % limited by\ntype chart-a-a4.pdf side 2 words 12 pt columns 2 covers 90 % limited by\n"
        self.assertEqual(list(chart_check.cover_faults(told.format(80), charts)), [])
        self.assertEqual(len(list(chart_check.cover_faults(told.format(79), charts))), 1)
        self.assertEqual(len(list(chart_check.cover_faults("", charts))), 2)

    def test_a_chart_may_have_the_unit_in_a_head_and_nothing_else(self):
        facts = {"cell/a#size.height": "5.4 mm"}
        bare = fact_check.without_unit(facts)
        self.assertEqual(fact_check.faults_of("c", [("cell/a#size.height", "5.4")], facts, bare), [])
        self.assertEqual(len(fact_check.faults_of("c", [("cell/a#size.height", "5.5")], facts, bare)), 1)
        self.assertEqual(len(fact_check.faults_of("h", [("cell/a#size.height", "5.4")], facts)), 1)

    def test_wrong_paper_is_found(self):
        self.assertEqual(list(chart_check.paper_faults("a4", {"width": 595.276, "height": 841.89})), [])
        self.assertEqual(len(list(chart_check.paper_faults("a3", {"width": 595.276, "height": 841.89}))), 1)


class Boxes(unittest.TestCase):
    """Words planted on a page of A4, a recto: the spine is at the left."""

    def faults(self, *words):
        shown = b"".join(b"BT /F1 9 Tf %d %d Td (%s) Tj ET " % word for word in words)
        with tempfile.TemporaryDirectory() as folder:
            pdf = pathlib.Path(folder) / "a.pdf"
            pdf.write_bytes(tiny_pdf(b"Helvetica", shown, b"595.276 841.89"))
            printed = tools.output("pdftotext", "-bbox-layout", "-enc", "UTF-8", pdf, "-").decode()
        page = box_check.pages_of(printed)[0]
        return box_check.faults_of("a.pdf", [(page[0], page[1], []), (page[0], page[1], []), page], "a4")

    def test_words_side_by_side_and_lines_under_each_other_pass(self):
        self.assertEqual(self.faults((100, 700, b"393"), (130, 700, b"SR754W"), (100, 690, b"394")), [])

    def test_overlap_is_found(self):
        self.assertEqual(self.faults((100, 700, b"39300"), (115, 701, b"SR754W")), ['a.pdf page 3: "SR754W" and "39300" overlap'])

    def test_words_in_the_margins_are_found(self):
        found = self.faults((60, 700, b"block"), (490, 700, b"note"), (572, 700, b"tab"), (40, 600, b"spine"), (540, 500, b"across"),
                            (100, 820, b"high"), (100, 10, b"low"))
        self.assertEqual(sorted(fault.split('"')[1] for fault in found), ["across", "high", "low", "spine"])


class Index(unittest.TestCase):
    PAGES = {"7": plain_text.Page(["393 is the trade number of sr754w."]), "9": plain_text.Page(["sr7549"])}

    def test_right_pages_pass(self):
        self.assertEqual(index_check.faults_of("i", ["393", "SR754W"], {"393": ["7"], "sr754w": ["7"]}, self.PAGES), [])

    def test_wrong_page_missing_word_and_page_that_is_not_there_are_found(self):
        self.assertEqual(index_check.faults_of("i", ["393", "SR754", "SR41"], {"393": ["7", "9"], "sr754": ["9", "12"]}, self.PAGES),
                         ['i: "393" is not on page 9', 'i: "SR754" is not on page 9', 'i: "SR754" is not on page 12',
                          'i: "SR41" is not in the index'])

    def test_lines_are_taken_apart(self):
        for line, parts in {"SR41 12, 40": ("SR41", "12, 40"), "cell, 3 V\u200217": ("cell, 3 V", "17")}.items():
            match = index_check.ENTRY.match(line)
            self.assertEqual((match["word"], match["pages"]), parts)
        self.assertIsNone(index_check.ENTRY.match("battery see cell"))


class Scale(unittest.TestCase):
    """A circle of 20 mm at the top left of its box, drawn as large as asked, and its centre lines left out."""

    def faults(self, drawn):
        mm, k = scale_check.MM, 0.5523
        r, x, y = drawn / 2 * mm, 40 * mm, 841.89 - 40 * mm
        curves = ((r, k * r, k * r, r, 0, r), (-k * r, r, -r, k * r, -r, 0), (-r, -k * r, -k * r, -r, 0, -r), (k * r, -r, r, -k * r, r, 0))
        shown = b"0.7 w %.3f %.3f m " % (x + r, y)
        for curve in curves:
            shown += b"%.3f %.3f %.3f %.3f %.3f %.3f c " % tuple(place + (x, y)[at % 2] for at, place in enumerate(curve))
        box = (30 * mm, 30 * mm, 50 * mm, 50 * mm)
        with tempfile.TemporaryDirectory() as folder:
            pdf = pathlib.Path(folder) / "a.pdf"
            pdf.write_bytes(tiny_pdf(b"Helvetica", shown + b"s", b"595.276 841.89"))
            return scale_check.circle_faults(pdf, 1, box, 20.0, "circle")[0]

    def test_true_size_passes_and_a_percent_more_is_found(self):
        self.assertEqual(self.faults(20), [])
        self.assertEqual(len(self.faults(20.2)), 2)

    def test_the_longest_run_is_taken(self):
        self.assertEqual(scale_check.longest_run(bytes([0, 255, 0, 0, 255])), (2, 2, 3))


class Facts(unittest.TestCase):
    def on_paper(self):
        return list(fact_check.facts_on_paper(structure.parse(PRINTED)))

    def test_right_ones_pass(self):
        self.assertEqual(len(self.on_paper()), 2)
        self.assertEqual(fact_check.faults_of("p", self.on_paper(), FACTS), [])

    def test_wrong_one_on_paper_is_found(self):
        self.assertEqual(fact_check.faults_of("p", self.on_paper(), {**FACTS, "cell/sr754w#nominal": "1.5 V"}),
                         ['p: cell/sr754w#nominal is set as "1.55 V", the fact is "1.5 V"'])

    def test_wrong_one_on_screen_is_found(self):
        page = '<p><data class="fact" data-fact="cell/sr754w#size.diameter" value="7.8 mm"><b>7.9</b>&#8201;mm</data>, ' \
               '<data data-fact="cell/sr754w#nominal">1.65 V</data>, <data data-fact="cell/none#nominal">3 V</data></p>'
        self.assertEqual(fact_check.faults_of("h", fact_check.facts_on_screen(page), FACTS), [
            'h: cell/sr754w#size.diameter is set as "7.8 mm", the fact is "7.9 mm"',
            'h: cell/sr754w#nominal is set as "1.65 V", the fact is "1.55 V"',
            "h: cell/none#nominal is no fact",
        ])

    def test_lost_marks_are_found(self):
        with tempfile.TemporaryDirectory() as folder:
            (pathlib.Path(folder) / "facts.jsonl").write_text('{"id": "cell/a#b", "printed": "1"}\n', encoding="utf-8")
            (pathlib.Path(folder) / "index.html").write_text('<data data-fact="cell/a#b">1</data>', encoding="utf-8")
            said = io.StringIO()
            with contextlib.redirect_stdout(said), self.assertRaises(SystemExit) as ended:
                fact_check.main(pathlib.Path(folder))
            self.assertEqual(ended.exception.code, 1)
            self.assertIn("html: only 1 values are set as facts", said.getvalue())


class Texts(unittest.TestCase):
    def setUp(self):
        self.page = plain_text.Page(structure.parse(PRINTED).blocks())

    def test_text_over_lines_and_spans_is_found(self):
        self.assertEqual(text_check.faults_of(self.page, [("a", "It is 7.9 mm wide and gives 1.55 V"), ("b", "unless it is spent.")]), [])

    def test_missing_text_is_told(self):
        self.assertEqual(text_check.faults_of(self.page, [("caution/x hazard", "It burns.")]),
                         ['caution/x hazard: "It burns." is not in the text'])

    def test_part_of_a_longer_word_is_no_match(self):
        self.assertFalse(self.page.has("SR41"))
        self.assertTrue(self.page.has("SR416"))

    def test_two_blocks_do_not_make_one_word(self):
        self.assertTrue(plain_text.Page(["SR41", "6 pieces"]).has("SR41"))

    def test_wordings_come_from_the_records(self):
        with tempfile.TemporaryDirectory() as folder:
            content = pathlib.Path(folder)
            for name, text in {"cell/a.yaml": "designation: SR1\non: x\n", "caution/b.yaml": "title: T\navoid: Do not.\n",
                               "page/c.md": "---\ntitle: P\n---\n\nWords.\n"}.items():
                (content / name).parent.mkdir()
                (content / name).write_text(text, encoding="utf-8")
            self.assertEqual([wording for _, wording in records.wordings(content)], ["T", "Do not.", "SR1", "P"])


class Tools(unittest.TestCase):
    def test_font_left_out_is_found(self):
        with tempfile.TemporaryDirectory() as folder:
            pdf = pathlib.Path(folder) / "a.pdf"
            pdf.write_bytes(tiny_pdf(b"Helvetica"))
            faults = pdf_check.faults_of(pdf)
            self.assertEqual(len(faults), 1, faults)
            self.assertIn("a.pdf: not embedded: Helvetica", faults[0])

    def test_broken_pdf_is_found(self):
        with tempfile.TemporaryDirectory() as folder:
            pdf = pathlib.Path(folder) / "a.pdf"
            pdf.write_bytes(tiny_pdf(b"Helvetica")[:-60])
            self.assertTrue(any("qpdf" in fault for fault in pdf_check.faults_of(pdf)))

    def test_invalid_page_is_found_by_both_checkers(self):
        faults = html_check.validity_faults(SITE, every=True)
        for tool in ("html-validate", "vnu"):
            said = [fault for fault in faults if fault.startswith(tool)]
            self.assertTrue(any("index.html" in fault and "twice" in fault for fault in said), said)
            self.assertFalse(any("other.html" in fault for fault in said), said)

    def test_dead_links_are_found(self):
        faults, links = html_check.link_faults(SITE)
        self.assertGreaterEqual(links, 3)
        self.assertEqual(len(faults), 2, faults)
        self.assertTrue(any("gone.html" in fault for fault in faults), faults)
        self.assertTrue(any("other.html#gone" in fault for fault in faults), faults)


class Scripts(unittest.TestCase):
    def test_a_byte_too_many_and_a_program_that_is_missing_are_found(self):
        with tempfile.TemporaryDirectory() as folder, contextlib.redirect_stdout(io.StringIO()):
            site = pathlib.Path(folder)
            (site / "assets").mkdir()
            (site / "assets" / "page.js").write_bytes(b"a")
            self.assertEqual(html_check.script_faults(site), (["no program.js"], 1))
            program = site / "assets" / "program.js"
            program.write_bytes(b"a" * (html_check.LARGEST_SCRIPTS - 1))
            self.assertEqual(html_check.script_faults(site), ([], 2))
            program.write_bytes(b"a" * html_check.LARGEST_SCRIPTS)
            self.assertEqual(len(html_check.script_faults(site)[0]), 1)


class SameBytes(unittest.TestCase):
    def test_other_bytes_and_other_names_are_found(self):
        self.assertEqual(same_bytes_check.differences({"a": b"1", "b": b"2"}, {"a": b"1", "b": b"3", "c": b""}),
                         ["b differs", "c differs"])

    def test_language_that_is_not_installed_is_found(self):
        self.assertNotEqual(same_bytes_check.locale_fault("xx_XX.UTF-8"), [])

    def test_languages_of_the_check_work(self):
        for language in same_bytes_check.ZONES:
            self.assertEqual(same_bytes_check.locale_fault(language), [])


class Trust(unittest.TestCase):
    def fact(self, name, trust, value=1.0, derived=False):
        return json.dumps({"id": name, "value": value, "low": None, "high": None, "trust": trust, "derived": derived})

    def faults(self, *lines, fewest=1):
        with contextlib.redirect_stdout(io.StringIO()):
            return trust_check.faults_in(lines, {"cell": "cells"}, fewest)

    def test_a_half_is_enough_and_less_is_not(self):
        self.assertEqual(self.faults(self.fact("cell/a#nominal", "handbook"), self.fact("cell/b#nominal", "memory")), [])
        self.assertEqual(
            self.faults(self.fact("cell/a#nominal", "handbook"), self.fact("cell/b#nominal", "memory"), self.fact("cell/c#x", "invented")),
            ["33.3% of the numeric facts rest on a standard, a handbook or a data set"])

    def test_rows_count_once_and_words_derived_facts_and_tables_do_not(self):
        lines = [self.fact("cell/a#loads.0.current", "memory"), self.fact("cell/a#loads.1.current", "dataset"),
                 self.fact("cell/a#system", "dataset", value=None), self.fact("cell/a#life", "dataset", derived=True),
                 self.fact("table/codes#7.tolerance", "handbook")]
        self.assertEqual(trust_check.trust_of_facts(lines), {("cell/a", "loads.current"): "memory"})

    def test_lost_facts_are_found(self):
        self.assertEqual(self.faults(self.fact("cell/a#nominal", "handbook"), fewest=2), ["only 1 numeric facts were found"])


class BrowserTest(unittest.TestCase):
    """The browser's check finds what is planted, and passes the same page mended."""

    PAGE = ('<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>Planted</title></head><body><main><h1>Planted</h1>'
            '<p style="color: {colour}; background: #fff">Words to read.</p></main>{script}</body></html>')

    def faults(self, **parts):
        with tempfile.TemporaryDirectory() as folder:
            site = pathlib.Path(folder) / "html"
            site.mkdir()
            (site / "planted.html").write_text(self.PAGE.format(**parts), encoding="utf-8")
            return tools.node(HERE / "browser_check.mjs", folder, "-", "page", "planted.html").returncode

    def test_words_that_are_hard_to_read_are_found(self):
        self.assertNotEqual(self.faults(colour="#bbb", script=""), 0)
        self.assertEqual(self.faults(colour="#000", script=""), 0)

    def test_a_request_that_leaves_the_disk_and_a_fault_of_a_script_are_found(self):
        self.assertNotEqual(self.faults(colour="#000", script='<script src="https://example.invalid/x.js"></script>'), 0)
        self.assertNotEqual(self.faults(colour="#000", script="<script>nothing.at.all()</script>"), 0)


def element(kind, *parts, pages=()):
    """An element as the tree of a file has it; its pages are its own and those of its parts."""
    made = structure.Element(kind, None, kind in structure.INLINE)
    made.parts = list(parts)
    made.pages = set(pages).union(*(part.pages for part in parts if isinstance(part, structure.Element)))
    return made


def job(*pages):
    """A procedure with a message, a step and its end, each on its page."""
    first, middle, last = pages
    return element("Sect",
                   element("H3", "Change the cell", pages=[first]),
                   element("Div", element("P", "WARNING"), element("P", "A spring slips out."), pages=[middle]),
                   element("L", element("LI", element("LBody", "Lift it."), pages=[middle])),
                   element("H4", "Stop if", pages=[last]))


class LookedFor(unittest.TestCase):
    LIST = "# a remark\nlye in my eye\tFirst aid\tlye\tRunning water\nstatic\tStatic\t-\tStrap\n"
    PAGES = {"5": plain_text.Page(["running water at once"]), "8": plain_text.Page(["strap and mat"])}

    def test_an_answer_stands_where_the_index_says(self):
        rows = looked_for_check.wanted(self.LIST)
        self.assertEqual(looked_for_check.faults_of("a4", rows, {"lye": ["5"], "static": ["8"]}, self.PAGES), [])

    def test_a_missing_line_and_a_wrong_page_are_told(self):
        rows = looked_for_check.wanted(self.LIST)
        faults = looked_for_check.faults_of("a4", rows, {"static": ["5"]}, self.PAGES)
        self.assertEqual([fault.split(": ")[1] for fault in faults], ["lye in my eye", "static"])


class ChartPages(unittest.TestCase):
    TITLES = {"Vinegar": "White vinegar", "Bleach": "Household bleach"}
    WORDS = [{"text": "Vinegar", "x": 10, "y": 50}, {"text": "51", "x": 90, "y": 50.5}, {"text": "361", "x": 120, "y": 50},
             {"text": "Bleach", "x": 10, "y": 30}, {"text": "acetone", "x": 40, "y": 30}, {"text": "p.\u00a051", "x": 90, "y": 30}]

    def test_the_first_number_of_a_row_is_its_page(self):
        named = chart_page_check.pages_named(self.WORDS, self.TITLES)
        self.assertEqual(named, [("White vinegar", "51"), ("Household bleach", "51")])

    def test_a_page_without_the_liquid_or_unknown_to_the_index_is_told(self):
        named = chart_page_check.pages_named(self.WORDS, self.TITLES)
        pages = {"51": plain_text.Page(["white vinegar"])}
        self.assertEqual(chart_page_check.faults_of("a4", named[:1], {"white vinegar": ["51"]}, pages), [])
        self.assertEqual(len(chart_page_check.faults_of("a4", named, {"white vinegar": ["50"]}, pages)), 2)


class CountPages(unittest.TestCase):
    FRONT = 2  # so that page 0 of a file is a right one, 1 a left one, and 3 faces 4 on paper: 1 | 2 3

    def test_a_job_may_cross_the_fold_but_not_the_turn(self):
        def turned(*pages):
            return len(count_pages.turned_jobs(element("Document", job(*pages)), self.FRONT))

        self.assertEqual(turned(2, 2, 2), 0)
        self.assertEqual(turned(3, 3, 4), 0)  # pages 2 and 3 of the book
        self.assertEqual(turned(2, 3, 3), 1)  # pages 1 and 2
        self.assertEqual(turned(3, 4, 5), 1)

    def test_a_message_stands_on_the_page_of_its_step(self):
        whole = job(3, 3, 4)
        self.assertEqual(count_pages.parted_messages(element("Document", whole)), [])
        whole.parts[2].parts[0].pages = {4}
        self.assertEqual(len(count_pages.parted_messages(element("Document", whole))), 1)

    def test_a_row_stands_on_one_page(self):
        cells = [element("TD", "never", pages=[5]), element("TD", "It crazes.", pages=[5])]
        self.assertEqual(count_pages.split_rows(element("Table", element("TR", *cells))), [])
        cells[1].pages = {6}
        self.assertEqual(len(count_pages.split_rows(element("Table", element("TR", *cells)))), 1)

    def test_a_section_begins_with_its_heading(self):
        sound = element("Sect", element("Figure", ""), element("H3", "Acetone"), element("P", "It burns."))
        wrong = element("Sect", element("P", "It burns."), element("H3", "Acetone"))
        self.assertEqual(count_pages.headless_sections(element("Document", sound)), [])
        self.assertEqual(count_pages.headless_sections(element("Document", sound, wrong)), [wrong])

    def test_letters_are_counted_by_size_and_colour(self):
        printed = ('<page number="1" width="1785">\n<fontspec id="0" size="27" family="A" color="#16161a"/>\n'
                   '<fontspec id="1" size="24" family="A" color="#5b2650"/>\n'
                   '<text top="1" font="0"><b>abc d</b></text>\n<text top="2" font="1">e&amp;</text>\n</page>\n')
        (letters,) = count_pages.letters_of(printed)
        self.assertEqual((letters.all, letters.small, letters.accent), (6, 2, 2))

    def test_blank_paper_is_counted_in_half_lines(self):
        width, height = 298, 421  # A4 at 36 dots an inch
        white = bytearray(b"\xff" * width * height)
        self.assertEqual(count_pages.blank_of(count_pages.bands_of((width, height, bytes(white)), True, "a4")), 1)
        for row in range(40, 240):
            white[row * width + 40:row * width + 80] = bytes(40)  # in the left half, over half of the block
        bands = count_pages.bands_of((width, height, bytes(white)), True, "a4")
        self.assertAlmostEqual(count_pages.blank_of(bands), 0.73, delta=0.03)
        self.assertAlmostEqual(count_pages.fill_of(bands), 0.58, delta=0.03)  # 240 dots are 169 mm, of which 149 of 262

    def test_what_is_over_a_bar_is_told(self):
        sound = dict.fromkeys(count_pages.BARS, 0)
        self.assertEqual(count_pages.faults_of("a4", sound, {}), [])
        for what, most in count_pages.BARS.items():
            (fault,) = count_pages.faults_of("a4", {**sound, what: most + 1}, {})
            self.assertIn(what, fault)
        pages = {"pages of part A": 100, "pages of part B": 50}
        self.assertEqual(count_pages.faults_of_letter(pages, {**pages, "pages of part A": 115}), [])
        self.assertEqual(len(count_pages.faults_of_letter(pages, {**pages, "pages of part A": 116})), 1)


if __name__ == "__main__":
    unittest.main()
