"""Every word of the bound charts stands at 7:1 or more against its ground.

usage: chart_contrast_check.py FOLDER

Colours are those that poppler paints; the contrast is that of npm wcag-contrast (WCAG 2.2, success criterion 1.4.6, where
7:1 is asked of text of any size below large).
"""

import json
import pathlib
import sys

import chart_check
import picture
import tools

DPI = 150
LEAST = 7
FEWEST = 40


def colours_of(page, word, height):
    """The lightest and the darkest colour in the box of a word: its ground and its ink, whichever is which."""
    along = (word["x"], word["x"] + max(word["width"], 1))
    upright = (height - word["y"] - 0.7 * word["size"], height - word["y"])
    left, right = (round(place * page.scale) for place in along)
    top, bottom = (round(place * page.scale) for place in upright)
    seen = set()
    for y in range(max(top, 0), min(bottom, page.height)):
        row = page.samples[(y * page.width + left) * 3:(y * page.width + right) * 3]
        seen |= {row[at:at + 3] for at in range(0, len(row) - 2, 3)}
    ordered = sorted(seen, key=lambda rgb: 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2])
    return "#" + ordered[0].hex(), "#" + ordered[-1].hex()


def contrasts(pairs):
    read = tools.node(pathlib.Path(__file__).with_name("contrast.mjs"), input=json.dumps(pairs))
    if read.returncode != 0:
        raise ValueError(f"wcag-contrast: {read.stderr.strip()}")
    return json.loads(read.stdout)


def faults_of(pdf):
    found, seen = [], 0
    for number, words in enumerate(chart_check.pages_of(pdf), 1):
        page = picture.Picture(pdf, number, DPI, colour=True)
        level = [word for word in words["words"] if word["width"] > 0]
        pairs = [colours_of(page, word, words["height"]) for word in level]
        for word, pair, contrast in zip(level, pairs, contrasts(pairs)):
            if contrast < LEAST:
                found.append(f'{pdf.name} side {number}: "{word["text"]}" stands at {contrast:.2f} to 1, {pair[0]} on {pair[1]}')
        seen += len(level)
    return found, seen


def main(folder):
    charts = sorted(folder.glob("chart-*.pdf"))
    found = [] if len(charts) >= 10 else [f"only {len(charts)} charts"]
    looked = 0
    for pdf in charts:
        faults, seen = faults_of(pdf)
        found += faults if seen >= FEWEST else [f"{pdf.name}: only {seen} words"]
        looked += seen
    tools.finish(found, f"{looked} words of {len(charts)} charts")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]))
