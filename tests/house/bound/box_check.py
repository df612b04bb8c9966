"""On no page of a handbook do words overlap, run out of the area for them, or stand in the margins.

usage: box_check.py FOLDER

Read by `pdftotext -bbox-layout`, whose boxes are as high as the font, not as the ink: of each, the middle half counts. The
areas are those of the page: block, running head, line of the folio, thumb tab.
"""

import html
import pathlib
import re
import sys

import tools

MM = 72 / 25.4
PAGE = re.compile(r'<page width="([\d.]+)" height="([\d.]+)">')
WORD = re.compile(r'<word xMin="(-?[\d.]+)" yMin="(-?[\d.]+)" xMax="(-?[\d.]+)" yMax="(-?[\d.]+)">(.*)</word>')
FEWEST_WORDS = 20_000
TOUCH = 0.35  # pt: neighbours may share their side bearings

# Millimetres: spine to block, block, tab at the outer edge; top and foot of the words.
INNER = {"a4": 20, "letter": 22}
BLOCK, TAB = 174, 9
TOP, FOOT = 10, 7


class Word:
    def __init__(self, left, top, right, bottom, text):
        self.left, self.right, self.text = left, right, text
        self.top, self.bottom = top + (bottom - top) / 4, bottom - (bottom - top) / 4

    def overlaps(self, other):
        return (min(self.right, other.right) - max(self.left, other.left) > TOUCH
                and min(self.bottom, other.bottom) - max(self.top, other.top) > TOUCH)


def pages_of(printed):
    """(width, height, words) of each page."""
    pages = []
    for line in printed.splitlines():
        page, word = PAGE.search(line), WORD.search(line)
        if page:
            pages.append((float(page[1]), float(page[2]), []))
        elif word:
            pages[-1][2].append(Word(*map(float, word.groups()[:4]), html.unescape(word[5])))
    return pages


def overlaps(words):
    """Pairs that overlap; words are compared with those that begin before they end."""
    ordered = sorted(words, key=lambda word: word.top)
    for at, word in enumerate(ordered):
        for other in ordered[at + 1:]:
            if other.top >= word.bottom:
                break
            if word.overlaps(other):
                yield word, other


def outside(word, number, width, height, paper):
    """Whether a word stands in no area of page `number`, counted from 1."""
    if word.top < TOP * MM or word.bottom > height - FOOT * MM:
        return True
    inner = INNER[paper] * MM
    recto = number % 2 == 1
    left, right = (word.left, word.right) if recto else (width - word.right, width - word.left)  # from the spine
    block = left >= inner - TOUCH and right <= inner + BLOCK * MM + TOUCH
    return not block and left < width - TAB * MM - TOUCH


def faults_of(name, pages, paper):
    faults = []
    for number, (width, height, words) in enumerate(pages, 1):
        faults += [f'{name} page {number}: "{one.text}" and "{other.text}" overlap' for one, other in overlaps(words)]
        if number > 1:  # the cover has areas of its own
            faults += [f'{name} page {number}: "{word.text}" stands in the margin' for word in words if outside(word, number, width, height, paper)]
    return faults


def main(folder):
    handbooks = sorted(folder.glob("handbook-*.pdf"))
    faults, seen = [] if handbooks else ["no handbook"], 0
    for pdf in handbooks:
        pages = pages_of(tools.output("pdftotext", "-bbox-layout", "-enc", "UTF-8", pdf, "-").decode())
        words = sum(len(page[2]) for page in pages)
        if words < FEWEST_WORDS:
            faults.append(f"{pdf.name}: only {words} words")
        seen += words
        faults += faults_of(pdf.name, pages, pdf.stem.rsplit("-", 1)[1])
    tools.finish(faults, f"{seen} words, {len(handbooks)} handbooks")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]))
