"""The bound charts: paper, size of type, clear edge and true size, as pdf.js and poppler read them.

usage: chart_check.py FOLDER CONTENT

The floors are those of reading at 60 cm: 16 minutes of arc of capital height for words, 20 for keys (common practice for
signs, no source); captions, which are read with the chart in the hand, may be smaller. The papers are ISO 216 and ANSI/ASME Y14.1.
"""

import json
import pathlib
import sys

import records
import tools

MM = 72 / 25.4
PAPERS = {"a4": (210, 297), "letter": (215.9, 279.4), "a3": (297, 420), "tabloid": (279.4, 431.8)}
CAPTION, WORDS, TRADE_NUMBER = 9.5, 11.2, 18.0
# From the edge of the paper: check bar and legend, title and imprint. Captions stand there and nowhere else.
BANDS_MM = {"foot": 22, "head": 21}
CLEAR_MM = 6
FEWEST = 40  # words on a side: with fewer, nothing was looked at


def pages_of(pdf):
    """Width, height and words (text, size, x, y from the foot) of each page."""
    read = tools.node(pathlib.Path(__file__).with_name("sized_words.mjs"), pdf)
    if read.returncode != 0:
        raise ValueError(f"{pdf}: pdf.js: {read.stderr.strip()}")
    return json.loads(read.stdout)


def trade_numbers(content):
    """What a cell is looked up by, as its record has it."""
    keys = ("trade-number", "consumer-number")
    return {fields[key] for kind, _, fields in records.read(content) if kind == "cell" for key in keys if key in fields}


def least_size(word, height):
    in_band = word["y"] < BANDS_MM["foot"] * MM or word["y"] > height - BANDS_MM["head"] * MM
    return CAPTION if in_band else WORDS


def type_faults(words, numbers, height):
    for word in words:
        if not word["text"].strip():
            continue
        if word["size"] < least_size(word, height) - 0.01:
            yield f'"{word["text"]}" is set at {word["size"]:.2f} pt'
        if word["text"].strip() in numbers and word["size"] < TRADE_NUMBER - 0.01:
            yield f'number "{word["text"]}" is set at {word["size"]:.2f} pt'


def edge_faults(page):
    edge = CLEAR_MM * MM
    for word in page["words"]:
        left, right = word["x"], word["x"] + word["width"]
        low, high = word["y"], word["y"] + 0.72 * word["size"]  # capital height
        if left < edge or low < edge or right > page["width"] - edge or high > page["height"] - edge:
            yield f'"{word["text"]}" stands within {CLEAR_MM} mm of the edge'


def paper_faults(name, page):
    wanted = sorted(side * MM for side in PAPERS[name])
    if any(abs(a - b) > 0.1 * MM for a, b in zip(sorted([page["width"], page["height"]]), wanted)):
        yield f'{page["width"] / MM:.1f} x {page["height"] / MM:.1f} mm is not {name}'


def faults_of(pdf, numbers):
    paper = pdf.stem.rsplit("-", 1)[1]
    for number, page in enumerate(pages_of(pdf), 1):
        found = [*paper_faults(paper, page), *type_faults(page["words"], numbers, page["height"]), *edge_faults(page)]
        if len(page["words"]) < FEWEST:
            found.append(f'only {len(page["words"])} words')
        yield from (f"{pdf.name} side {number}: {fault}" for fault in found)


def main(folder, content):
    numbers = trade_numbers(content)
    charts = sorted(folder.glob("chart-*.pdf"))
    found = [] if len(charts) >= 10 else [f"only {len(charts)} charts"]
    for pdf in charts:
        found += faults_of(pdf, numbers)
    tools.finish(found, f"{len(charts)} charts")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
