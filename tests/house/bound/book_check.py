"""How long each handbook is, how full its pages are, and what breaks where it must not: counted on the bound file.

usage: book_check.py FOLDER

Pages and their labels are read by qpdf, type sizes by pdf.js, ink by poppler, the order of reading from the structure tree.
The limits are those that the edition set itself (no outside source); a share of blank counts what lies farther than REACH from
any ink in its half of the text block.
"""

import json
import pathlib
import re
import sys

import picture
import structure
import tools

MM = 72 / 25.4
INNER = {"a4": 20, "letter": 22}
BLOCK = (174, {"a4": 262, "letter": 244.4})  # mm, wide and high
TOP = 20
DPI = 25.4  # a sample a millimetre
REACH = 4  # mm: the white between two lines or two paragraphs belongs to them
SMALL = 9  # pt
SIGNAL_WORDS = {"DANGER", "WARNING", "CAUTION", "NOTICE"}
HEADINGS = {"H1", "H2", "H3", "H4"}

# What each count may come to. Pages of part A count from the cover.
LIMITS = json.loads(pathlib.Path(__file__).with_name("book_limits.json").read_text())


def labels(pdf):
    """How many pages have roman numbers, how many there are."""
    ranges = json.loads(tools.run("qpdf", "--json=2", "--json-key=pagelabels", "--json-key=pages", pdf).stdout)
    first = next(one["index"] for one in ranges["pagelabels"] if one["label"].get("/S") == "/D")
    return first, len(ranges["pages"])


def first_of_part_b(pages):
    """Index of the first page whose foot says that it belongs to part B; pages as pdf.js reads them."""
    for at, page in enumerate(pages):
        if any("Part\u00a0B, reference" in word["text"] or "Part B, reference" in word["text"] for word in page["words"]):
            return at
    return len(pages)


def small_share(pages):
    """Share of letters below SMALL points."""
    counts = [0, 0]
    for page in pages:
        for word in page["words"]:
            letters = len(word["text"].replace(" ", ""))
            counts[word["size"] < SMALL - 0.05] += letters
    return counts[1] / max(1, sum(counts))


def blank_rows(rows):
    """How many of rows of a half page (true: ink) lie farther than REACH from any row with ink."""
    blank = 0
    for at in range(len(rows)):
        blank += not any(rows[max(0, at - REACH):at + REACH + 1])
    return blank


def blank_share(pdf, paper, first, last):
    """Share of the text block without ink, by halves, on pages from first to last, counted from 1."""
    blank = total = 0
    wide, high = BLOCK[0], BLOCK[1][paper]
    for number in range(first, last + 1):
        seen = picture.Picture(pdf, number, DPI)
        page_width = seen.width
        left = INNER[paper] if number % 2 == 1 else page_width - INNER[paper] - wide
        for half in (0, 1):
            start = int(left + half * wide / 2)
            rows = []
            for y in range(TOP, int(TOP + high)):
                line = seen.samples[y * seen.width + start:y * seen.width + start + wide // 2]
                rows.append(min(line, default=255) < 235)
            blank += blank_rows(rows)
            total += len(rows)
    return blank / max(1, total)


def accent_share(pdf, paper, first, last):
    """Share of inked samples of the text block that have the accent's hue."""
    counts = [0, 0]
    wide, high = BLOCK[0], BLOCK[1][paper]
    for number in range(first, last + 1):
        left = INNER[paper] if number % 2 == 1 else None
        box_left = left if left is not None else (210 if paper == "a4" else 215.9) - INNER[paper] - wide
        seen = picture.Picture(pdf, number, 60, (box_left * MM, TOP * MM, (box_left + wide) * MM, (TOP + high) * MM), colour=True)
        samples = seen.samples
        for at in range(0, len(samples) - 2, 3):
            red, green, blue = samples[at], samples[at + 1], samples[at + 2]
            if red + green + blue > 480:
                continue
            counts[red - green > 25 and blue - green > 18 and red < 190] += 1
    return counts[1] / max(1, sum(counts))


def texts_before_headings(root):
    """Sections in which words stand before the heading."""
    return [element for element in root.elements() if element.kind == "Sect" and not opens_with_heading(element)]


def opens_with_heading(section):
    for part in section.parts:
        if isinstance(part, str):
            if part.strip():
                return False
        elif part.kind in HEADINGS:
            return True
        elif part.text().strip() or part.kind == "Figure":
            return False
    return False


class Pages:
    """The pages that elements stand on, from the objects of a file."""

    def __init__(self, pdf):
        printed = tools.run("qpdf", "--json=2", "--json-key=qpdf", "--json-key=pages", pdf)
        if printed.returncode != 0:
            raise ValueError(f"{pdf}: qpdf: {printed.stderr.strip()}")
        read = json.loads(printed.stdout)
        self.objects = read["qpdf"][1]
        self.number = {page["object"]: at for at, page in enumerate(read["pages"], 1)}

    def value(self, thing):
        while isinstance(thing, str) and re.fullmatch(r"\d+ \d+ R", thing):
            thing = self.objects[f"obj:{thing}"].get("value")
        return thing

    def root(self):
        catalog = self.value(self.value(self.objects["trailer"]["value"])["/Root"])
        return self.value(catalog["/StructTreeRoot"])

    def kids(self, node):
        kids = node.get("/K", [])
        return kids if isinstance(kids, list) else [kids]

    def elements(self, node):
        """Every element below, in order."""
        for kid in self.kids(node):
            thing = self.value(kid)
            if isinstance(thing, dict) and "/S" in thing:
                yield thing
                yield from self.elements(thing)

    def of(self, node, page=None):
        """The pages on which an element has content."""
        page = node.get("/Pg", page)
        found = set()
        for kid in self.kids(node):
            thing = self.value(kid)
            if isinstance(thing, int):
                found.add(self.number.get(page))
            elif isinstance(thing, dict) and "/S" in thing:
                found |= self.of(thing, page)
            elif isinstance(thing, dict) and "/MCID" in thing:
                found.add(self.number.get(thing.get("/Pg", page)))
        return found - {None}


def split_rows(pages):
    """How many rows of tables stand on more than one page."""
    return sum(1 for one in pages.elements(pages.root()) if one["/S"] == "/TR" and len(pages.of(one)) > 1)


def is_message(pages, element, words):
    if element["/S"] != "/Div":
        return False
    first = next(iter(pages.elements(element)), None)
    return first is not None and words_of(pages, first, words).strip() in SIGNAL_WORDS


def words_of(pages, element, words):
    """The words of an element by page object and number of marked content, `{"12 3": "words"}`."""
    page = element.get("/Pg")
    text = ""
    for kid in pages.kids(element):
        thing = pages.value(kid)
        if isinstance(thing, int) and page:
            text += words.get(f"{page.split()[0]} {thing}", "")
        elif isinstance(thing, dict) and "/S" in thing:
            text += words_of(pages, thing, words)
        elif isinstance(thing, dict) and "/MCID" in thing:
            text += words.get(f'{thing.get("/Pg", page).split()[0]} {thing["/MCID"]}', "")
    return text


def parted_messages(pages, words):
    """Messages that stand on another page than the step after them, and how many were looked at."""
    parted = seen = 0
    for section in pages.elements(pages.root()):
        if section["/S"] != "/Sect":
            continue
        waiting = []
        for kid in pages.kids(section):
            element = pages.value(kid)
            if not isinstance(element, dict) or "/S" not in element:
                continue
            if is_message(pages, element, words):
                waiting.append(element)
                continue
            if waiting and element["/S"] == "/L":
                steps = [pages.value(one) for one in pages.kids(element)]
                step = min(pages.of(steps[0]), default=0) if steps else 0
                seen += len(waiting)
                parted += sum(1 for one in waiting if max(pages.of(one), default=0) != step)
            waiting = []
    return parted, seen


def turned_jobs(pages, words):
    """Jobs, sections with steps, that go over a page turn: on other pages than one, or than two that face each other."""
    turned = seen = 0
    for section in pages.elements(pages.root()):
        if section["/S"] != "/Sect" or not any(is_numbered(pages, pages.value(kid), words) for kid in pages.kids(section)):
            continue
        seen += 1
        on = sorted(pages.of(section))
        facing = len(on) == 2 and on[0] % 2 == 0 and on[1] == on[0] + 1
        turned += not (len(on) == 1 or facing)
    return turned, seen


def is_numbered(pages, element, words):
    """Whether it is the list of steps: its first label is a bare number."""
    if not isinstance(element, dict) or element.get("/S") != "/L":
        return False
    label = next((one for one in pages.elements(element) if one["/S"] == "/Lbl"), None)
    return label is not None and words_of(pages, label, words).strip().isdigit()


def counts_of(pdf):
    paper = pdf.stem.rsplit("-", 1)[1]
    front, total = labels(pdf)
    sized = json.loads(tools.node(pathlib.Path(__file__).with_name("sized_words.mjs"), pdf).stdout)
    words = json.loads(tools.node(pathlib.Path(__file__).with_name("marked_words.mjs"), pdf).stdout)
    part_b = first_of_part_b(sized)
    pages = Pages(pdf)
    parted, messages = parted_messages(pages, words)
    turned, jobs = turned_jobs(pages, words)
    counts = {
        "pages of part A": part_b, "pages of part B": total - part_b,
        "blank of part A, %": round(100 * blank_share(pdf, paper, front + 1, part_b), 1),
        "small letters of part A, %": round(100 * small_share(sized[front:part_b]), 1),
        "accent of part A, %": round(100 * accent_share(pdf, paper, front + 1, part_b), 1),
        "split rows": split_rows(pages), "messages parted from their step": parted,
        "sections with words before their heading": len(texts_before_headings(structure.read(pdf))),
        "jobs over a page turn": turned, "bytes": pdf.stat().st_size,
    }
    return counts, messages, jobs


def faults_of(name, counts, limits):
    return [f"{name}: {what}: {counts[what]}, at most {most}" for what, most in limits.items() if counts[what] > most]


def main(folder):
    handbooks = sorted(folder.glob("handbook-*.pdf"))
    faults = [] if handbooks else ["no handbook"]
    for pdf in handbooks:
        counts, messages, jobs = counts_of(pdf)
        print(pdf.name, json.dumps(counts))
        if messages < 40 or jobs < 40:
            faults.append(f"{pdf.name}: only {messages} messages before steps and {jobs} jobs were looked at")
        faults += faults_of(pdf.name, counts, LIMITS[pdf.stem.rsplit("-", 1)[1]])
    tools.finish(faults, f"{len(handbooks)} handbooks")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]))
