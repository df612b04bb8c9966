"""The bound charts: paper, size of type, leading, room between panels, cover and clear edge, as pdf.js and poppler read them.

usage: chart_check.py FOLDER CONTENT

The floors are those of reading at 60 cm: 16 minutes of arc of capital height for words, 20 for keys (common practice for
signs, no source); captions, which are read with the chart in the hand, may be smaller. The papers are ISO 216 and ANSI/ASME Y14.1.
"""

import json
import pathlib
import re
import statistics
import sys
import typing

import picture
import records
import tools

MM = 72 / 25.4
PAPERS = {"a4": (210, 297), "letter": (215.9, 279.4), "a3": (297, 420), "tabloid": (279.4, 431.8)}
CAPTION, WORDS, LOOK_UP, TRADE_NUMBER = 9.5, 11.2, 14.0, 18.0
LEADING = 1.15  # baseline to baseline by size of type: common practice, no source
BETWEEN_MM = 2
LINE = 0.25  # pt: common practice of print shops, no source
COVER = 0.8  # of the live area by the boxes of the panels, as MANIFEST tells
INKED = 0.75  # of it on the rendering, so that no box is a box of air
# Paper nearer than this to ink belongs to a panel; columns of a table and unknown squares of a matrix are no further apart.
REACH_MM = 10
SIDES = {"cells": 1}  # all others have two
# From the edge of the paper: check bar and legend, title and imprint. Captions stand there, and under a number: what the cell
# holds and the short name of its size.
BANDS_MM = {"foot": 22, "head": 21}
CLEAR_MM = 8
FEWEST = 40  # words on a side: with fewer, nothing was looked at


def pages_of(pdf):
    """Width, height and words (text, size, x, y from the foot) of each page."""
    read = tools.node(pathlib.Path(__file__).with_name("sized_words.mjs"), pdf)
    if read.returncode != 0:
        raise ValueError(f"{pdf}: pdf.js: {read.stderr.strip()}")
    return json.loads(read.stdout)


class Keys(typing.NamedTuple):
    """What a chart is looked up by, as the records have it: trade numbers, keys of rows, heads that run up, panels."""

    numbers: set
    rows: set = frozenset()
    heads: set = frozenset()
    titles: set = frozenset()
    captions: set = frozenset()
    kinds: set = frozenset()  # heads above columns, no keys


def captions_of(cell):
    charge = cell.get("capacity", {}).get("value")
    if charge is not None:
        words = str(charge).replace("..", " to ")
        yield from (words, words.removesuffix(" mAh"))
    if "short" in cell:
        yield cell["short"]


def keys_of(content):
    numbers, rows, heads, titles, captions, kinds = set(), set(), set(), set(), set(), set()
    for kind, _, fields in records.read(content):
        if kind == "cell":
            numbers |= {fields[key] for key in ("trade-number", "consumer-number") if key in fields}
            captions |= set(captions_of(fields))
        if kind == "chart":
            titles |= {panel["title"] for panel in fields["panels"]}
            rows |= {row["key"] for panel in fields["panels"] for row in panel.get("rows", [])}
        if kind == "material":
            kinds.add(fields["kind"].capitalize())
        if kind in ("chemistry", "material"):
            name = fields.get("short-name", fields["title"])
            (rows if kind == "chemistry" else heads).add(name[:1].upper() + name[1:])
    return Keys(numbers, rows, heads, titles, captions, kinds)


def least_size(word, height, captions=frozenset()):
    if word["text"].strip() in captions:
        return CAPTION
    in_band = word["y"] < BANDS_MM["foot"] * MM or word["y"] > height - BANDS_MM["head"] * MM
    return CAPTION if in_band else WORDS


def type_faults(words, keys, height):
    for word in words:
        if not word["text"].strip():
            continue
        if word["size"] < least_size(word, height, keys.captions) - 0.01:
            yield f'"{word["text"]}" is set at {word["size"]:.2f} pt'
        text = word["text"].strip()
        if text in keys.numbers and word["size"] < TRADE_NUMBER - 0.01:
            yield f'number "{word["text"]}" is set at {word["size"]:.2f} pt'
        is_key = (text in keys.rows and text not in keys.titles | keys.kinds) or (text in keys.heads and word["width"] == 0)
        if is_key and text[:1].isupper() and word["size"] < LOOK_UP - 0.01:
            yield f'key "{word["text"]}" is set at {word["size"]:.2f} pt'


def leadings(words):
    """Baseline to baseline by size, of words of one size that begin under each other."""
    lines = {}
    for word in words:
        if word["width"] > 0:
            lines.setdefault((round(word["x"]), round(word["size"], 2)), []).append(word["y"])
    for (_, size), places in lines.items():
        places = sorted(set(places))
        yield from (step / size for step in (b - a for a, b in zip(places, places[1:])) if step < 2 * size)


def leading_faults(words):
    found = list(leadings(words))
    if len(found) >= 5 and statistics.mean(found) < LEADING:
        yield f"mean leading of {len(found)} lines is {statistics.mean(found):.2f}"


def between_faults(words, titles):
    """Titles of panels that stand too near to what is above them."""
    for title in words:
        if title["text"].strip() not in titles or title["width"] == 0:
            continue
        top = title["y"] + 0.72 * title["size"]
        above = [word["y"] - 0.2 * word["size"] for word in words
                 if title["x"] - MM < word["x"] < title["x"] + title["width"] and word["y"] > top and word["width"] > 0]
        if above and min(above) - top < BETWEEN_MM * MM:
            yield f'"{title["text"]}" stands {(min(above) - top) / MM:.1f} mm under what is above it'


def near(samples, reach):
    """Which places of a row lie within reach of ink."""
    marked = bytearray(len(samples))
    for way in (1, -1):
        last = None
        for at in range(len(samples))[::way]:
            if samples[at]:
                last = at
            if last is not None and abs(at - last) <= reach:
                marked[at] = 1
    return marked


def cover(pdf, number, page):
    """Share of the area between the bands that lies within REACH_MM of ink."""
    box = (CLEAR_MM * MM, BANDS_MM["head"] * MM, page["width"] - CLEAR_MM * MM, page["height"] - BANDS_MM["foot"] * MM)
    painted = picture.Picture(pdf, number, 30, box)
    reach = round(REACH_MM * MM * painted.scale)
    rows = [near(bytes(sample < 200 for sample in painted.samples[y * painted.width:(y + 1) * painted.width]), reach)
            for y in range(painted.height)]
    columns = [near(bytes(column), reach) for column in zip(*rows)]
    return sum(sum(column) for column in columns) / (painted.width * painted.height)


def line_faults(pdf):
    """Lines that a printer may lose."""
    content = tools.output("qpdf", "--qdf", "--object-streams=disable", pdf, "-")
    widths = {float(width) for width in re.findall(rb"^([0-9.]+) w$", content, re.M)}
    if not widths:
        yield f"{pdf.name}: no lines at all"
    yield from (f"{pdf.name}: a line of {width} pt" for width in widths if width < LINE - 0.001)


def edge_faults(page):
    edge = (CLEAR_MM - 0.02) * MM  # what rounding to thousandths of a point takes
    for word in page["words"]:
        left, right = word["x"], word["x"] + word["width"]
        low, high = word["y"], word["y"] + 0.72 * word["size"]  # capital height
        if left < edge or low < edge or right > page["width"] - edge or high > page["height"] - edge:
            yield f'"{word["text"]}" stands within {CLEAR_MM} mm of the edge'


def paper_faults(name, page):
    wanted = sorted(side * MM for side in PAPERS[name])
    if any(abs(a - b) > 0.1 * MM for a, b in zip(sorted([page["width"], page["height"]]), wanted)):
        yield f'{page["width"] / MM:.1f} x {page["height"] / MM:.1f} mm is not {name}'


def page_faults(pdf, number, page, keys):
    paper = pdf.stem.rsplit("-", 1)[1]
    words = page["words"]
    yield from paper_faults(paper, page)
    yield from type_faults(words, keys, page["height"])
    yield from leading_faults(words)
    yield from between_faults(words, keys.titles - keys.rows)
    yield from edge_faults(page)
    if len(words) < FEWEST:
        yield f"only {len(words)} words"
    covered = cover(pdf, number, page)
    if covered < INKED:
        yield f"ink and what is near it fill only {covered:.1%} of the live area"


def sides_of(pdf):
    return SIDES.get(pdf.stem.removeprefix("chart-").rsplit("-", 1)[0], 2)


def faults_of(pdf, keys):
    yield from line_faults(pdf)
    pages = pages_of(pdf)
    if len(pages) != sides_of(pdf):
        yield f"{pdf.name}: {len(pages)} sides"
    for number, page in enumerate(pages, 1):
        yield from (f"{pdf.name} side {number}: {fault}" for fault in page_faults(pdf, number, page, keys))


def cover_faults(manifest, charts):
    """What each side says of itself: `type NAME side 1 ... covers 97 % ...`."""
    told = {(name, int(side)): int(share) for name, side, share in
            re.findall(r"^type (\S+) side (\d) .* covers (\d+) % ", manifest, re.M)}
    for pdf in charts:
        for side in range(1, sides_of(pdf) + 1):
            share = told.get((pdf.name, side))
            if share is None or share < 100 * COVER:
                yield f"{pdf.name} side {side}: panels cover {share} % of the live area"


def main(folder, content):
    keys = keys_of(content)
    charts = sorted(folder.glob("chart-*.pdf"))
    found = [] if len(charts) >= 10 else [f"only {len(charts)} charts"]
    for pdf in charts:
        found += faults_of(pdf, keys)
    found += cover_faults((folder / "MANIFEST").read_text(encoding="utf-8"), charts)
    tools.finish(found, f"{len(charts)} charts")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
