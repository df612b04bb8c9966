"""What the printed handbook costs its reader, counted on the bound files: pages of both parts, blank paper, small letters, the
accent; jobs over a page turn, rows of tables over two pages, sections that do not begin with their heading, messages on
another page than the step that they guard.

usage: count_pages.py FOLDER

Letters and their colours are those of `pdftohtml -xml`, blank paper is counted on pages drawn by `pdftoppm`, the rest is
read from the structure tree.
"""

import pathlib
import re
import sys

import box_check
import structure
import tools

MM = 72 / 25.4
BARS = {
    "pages of part A": 128,  # 108 are wanted
    "pages of part B": 50,
    "blank in part A, %": 25,
    "letters under 9 pt in part A, %": 8,
    "letters in the accent in part A, %": 6,
    "jobs over a page turn": 0,
    "rows over two pages": 0,
    "sections with text before their heading": 0,
    "messages parted from their step": 0,
    "pages under a third full inside a chapter": 0,
}
LONGER_ON_LETTER = 1.1
LARGEST_FILE = 3_500_000

ACCENT = (0x5B, 0x26, 0x50)
NEAR = 3  # of a channel: readers round
SMALL = 9
ZOOM = 3  # of pdftohtml, its most: it rounds sizes to whole units
DPI = 36
LINE_MM = 4.5
BLOCK_HEIGHT = {"a4": 262, "letter": 244.4}
BLOCK_TOP = 20
INK = 200  # grey below which paper is printed on
SIGNAL = re.compile(r"\s*(DANGER|WARNING|CAUTION|NOTICE)")
HEADINGS = {"H1", "H2", "H3", "H4", "H5", "H6"}


def part_of(text):
    """`A`, `B` or nothing, from the line at the foot of a page."""
    found = re.search(r"Part\s([AB]), ", text)
    return found[1] if found else None


class Letters:
    """Letters of a page by size and colour."""

    def __init__(self):
        self.all = self.small = self.accent = 0

    def add(self, count, size, color):
        self.all += count
        self.small += count if size < SMALL else 0
        channels = [int(color[at:at + 2], 16) for at in (1, 3, 5)]
        self.accent += count if all(abs(one - wanted) <= NEAR for one, wanted in zip(channels, ACCENT)) else 0


def letters_of(printed):
    """One for each page of `pdftohtml -xml`."""
    pages, fonts = [], {}
    for line in printed.splitlines():
        if "<page number=" in line:
            pages.append(Letters())
        font = re.search(r'<fontspec id="(\d+)" size="(-?\d+)".* color="(#\w+)"', line)
        if font:
            fonts[font[1]] = (int(font[2]) / ZOOM, font[3].lower())
        text = re.search(r'<text .*font="(\d+)">(.*)</text>', line)
        if text:
            words = re.sub(r"&\w+;", "x", re.sub(r"<[^>]*>", "", text[2]))
            pages[-1].add(sum(not sign.isspace() for sign in words), *fonts[text[1]])
    return pages


def grey_pages(data):
    """(width, height, rows of bytes) of the pages of a stream of portable grey maps."""
    pages, at = [], 0
    while at < len(data):
        head = re.compile(rb"P5\s(\d+)\s(\d+)\s255\s").match(data, at)
        width, height = int(head[1]), int(head[2])
        pages.append((width, height, data[head.end():head.end() + width * height]))
        at = head.end() + width * height
    return pages


def bands_of(page, recto, paper):
    """For each line of the block whether its left and its right half are printed on."""
    width, height, dots = page
    dot = DPI / 25.4
    inner = box_check.INNER[paper] * dot
    block = box_check.BLOCK * dot
    left = inner if recto else width - inner - block
    bands = []
    lines = int(BLOCK_HEIGHT[paper] / LINE_MM)
    for line in range(lines):
        rows = range(int((BLOCK_TOP + line * LINE_MM) * dot), min(height, int((BLOCK_TOP + (line + 1) * LINE_MM) * dot)))
        bands.append(tuple(
            any(min(dots[row * width + int(left + half * block / 2):row * width + int(left + (half + 1) * block / 2)]) < INK for row in rows)
            for half in (0, 1)))
    return bands


def blank_of(bands):
    return sum(not half for band in bands for half in band) / (2 * len(bands))


def fill_of(bands):
    """How far down the block is printed on."""
    return max((at + 1 for at, band in enumerate(bands) if any(band)), default=0) / len(bands)


def first_words(element):
    """The first element that holds words itself, and those words."""
    for part in element.parts:
        if isinstance(part, str):
            if part.strip():
                return element
        else:
            found = first_words(part)
            if found is not None:
                return found
    return None


def headless_sections(root):
    def is_heading(section):
        for part in section.parts:
            if isinstance(part, str):
                if part.strip():
                    return False
            elif part.text().strip():
                return part.kind in HEADINGS
        return True

    return [section for section in root.elements() if section.kind == "Sect" and not is_heading(section)]


def is_message(element):
    return isinstance(element, structure.Element) and element.kind == "Div" and SIGNAL.match(element.text()) is not None


def parted_messages(root):
    """Messages with a step behind them that begins on another page."""
    found = []
    for section in root.elements():
        waiting = []
        for part in section.parts:
            if is_message(part):
                waiting.append(part)
            elif isinstance(part, structure.Element) and part.kind == "L" and waiting:
                step = next((item for item in part.elements() if item.kind == "LI"), None)
                if step is not None and step.pages:
                    found += [message for message in waiting if message.pages and max(message.pages) != min(step.pages)]
                waiting = []
            elif isinstance(part, structure.Element) and part.text().strip():
                waiting = []
    return found


def split_rows(root):
    return [row for row in root.elements() if row.kind == "TR" and len(row.pages) > 1]


def turned_jobs(root, front):
    """Sections with steps that lie neither on one page nor on two that face each other; `front` pages stand before page 1."""
    found = []
    for section in root.elements():
        is_job = section.kind == "Sect" and any(
            isinstance(part, structure.Element) and part.kind == "P" and part.text().strip() in ("Stop if", "Done when")
            or isinstance(part, structure.Element) and part.kind in HEADINGS and part.text().strip() in ("Stop if", "Done when", "Lay out")
            for part in section.elements() if part is not section)
        if not is_job or any(part.kind == "Sect" for part in section.elements() if part is not section):
            continue
        first, last = min(section.pages), max(section.pages)
        facing = last == first + 1 and (first - front) % 2 == 1  # counted from 0: left pages have even numbers
        if first != last and not facing:
            found.append(section)
    return found


def counted(pdf):
    """The figures of a handbook, and what each of them counts."""
    paper = pdf.stem.rsplit("-", 1)[1]
    texts = tools.output("pdftotext", "-enc", "UTF-8", pdf, "-").decode().split("\f")[:-1]
    parts = [part_of(text) for text in texts]
    front = next((at for at, part in enumerate(parts) if part), len(parts))
    letters = letters_of(tools.output("pdftohtml", "-xml", "-i", "-stdout", "-zoom", str(ZOOM), pdf).decode())
    pages = grey_pages(tools.output("pdftoppm", "-r", str(DPI), "-gray", pdf))
    bands = [bands_of(page, (at - front) % 2 == 0, paper) for at, page in enumerate(pages)]
    bench = [at for at, part in enumerate(parts) if part == "A"]
    chapters = [chapter_of(text) for text in texts]
    thin = [at for at in range(front, len(pages) - 1) if chapters[at] is not None and chapters[at] == chapters[at + 1] and fill_of(bands[at]) < 1 / 3]
    root = structure.read(pdf)
    total = sum(letters[at].all for at in bench)
    kinds = {
        "jobs over a page turn": turned_jobs(root, front),
        "rows over two pages": split_rows(root),
        "sections with text before their heading": headless_sections(root),
        "messages parted from their step": parted_messages(root),
    }
    figures = {
        "pages of part A": len(bench),
        "pages of part B": parts.count("B"),
        "blank in part A, %": 100 * sum(blank_of(bands[at]) for at in bench) / max(1, len(bench)),
        "letters under 9 pt in part A, %": 100 * sum(letters[at].small for at in bench) / max(1, total),
        "letters in the accent in part A, %": 100 * sum(letters[at].accent for at in bench) / max(1, total),
        "pages under a third full inside a chapter": len(thin),
        **{name: len(found) for name, found in kinds.items()},
    }
    examples = {name: [f'"{one.text().strip()[:40]}" on {sorted(one.pages)}' for one in found[:5]] for name, found in kinds.items()}
    examples["pages under a third full inside a chapter"] = [f"page {at - front + 1}" for at in thin]
    return figures, examples


def chapter_of(text):
    """Number and title of the chapter as the running head has them, or nothing."""
    found = re.search(r"^(\d+)\u2002(\S.*)$", text, re.MULTILINE)
    return found[0] if found else None


def faults_of(name, figures, examples):
    return [f"{name}: {what}: {figures[what]:.4g}, at most {most}; " + "; ".join(examples.get(what, []))
            for what, most in BARS.items() if figures[what] > most]


def faults_of_letter(a4, letter):
    both = [sum(figures[f"pages of part {part}"] for part in "AB") for figures in (a4, letter)]
    return [f"letter: {both[1]} pages, more than a tenth over {both[0]}"] if both[1] > LONGER_ON_LETTER * both[0] else []


def main(folder):
    faults, all_figures = [], {}
    for pdf in sorted(folder.glob("handbook-*.pdf")):
        figures, examples = counted(pdf)
        all_figures[pdf.stem] = figures
        for what in BARS:
            print(f"{pdf.stem}: {what}: {figures[what]:.4g}")
        bars = {what for what in BARS if what != "pages of part A" and what != "pages of part B"} if pdf.stem.endswith("letter") else set(BARS)
        faults += [fault for what in bars for fault in faults_of(pdf.stem, figures, examples) if f": {what}: " in fault]
        if pdf.stat().st_size > LARGEST_FILE:
            faults.append(f"{pdf.name}: {pdf.stat().st_size} bytes, at most {LARGEST_FILE}")
    if len(all_figures) != 2:
        faults.append(f"{len(all_figures)} handbooks")
    else:
        faults += faults_of_letter(all_figures["handbook-a4"], all_figures["handbook-letter"])
    tools.finish(faults, f"{len(all_figures)} handbooks")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]))
