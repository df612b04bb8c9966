"""True size on the bound charts, measured from a rendering by poppler at 600 dpi, within 0.1 mm.

usage: chart_size_check.py FOLDER CONTENT

What each ring, section and bar has to measure comes from the records as a YAML reader of others has them, and from the
figure printed beside it: a cell is laid on its ring, a gasket on its circle.
"""

import pathlib
import sys

import chart_check
import picture
import records
import tools

DPI = 600
NEAR_MM = 0.1
MM = picture.MM
BAR_MM = 100
# How far from where it is looked for a line may lie, so that one of a wrong size is found and told.
REACH_MM = 1.2
FEWEST = {"cells": 12, "gaskets-and-crystals": 30, "one-sheet": 5}


def measured(runs, at, first, last):
    """Distance in mm between the dark runs nearest to two places, or None."""
    places = [at(run) for run in runs]
    ends = [min(places, key=lambda place: abs(place - wanted), default=None) for wanted in (first, last)]
    if None in ends or any(abs(end - wanted) > REACH_MM * MM for end, wanted in zip(ends, (first, last))):
        return None
    return (ends[1] - ends[0]) / MM


def across(pdf, page, y, left, right):
    """Width in mm of what begins near `left` and ends near `right` at a height from the top."""
    box = (left - 3 * MM, y - 0.2 * MM, right + 3 * MM, y + 0.2 * MM)
    part = picture.Picture(pdf, page, DPI, box)
    return measured(picture.dark_runs(part.row(y)), part.along_x, left, right)


def told(name, wanted, found):
    if found is None:
        return [f"{name}: no lines where {wanted} mm should be"]
    return [] if abs(found - wanted) <= NEAR_MM else [f"{name}: {found:.3f} mm instead of {wanted}"]


def diameters(content):
    return {fields["size"]["diameter"].split()[0] for kind, _, fields in records.read(content) if kind == "cell" and "size" in fields}


def ring_sizes(pdf, number, left, below, size):
    """Height and width in mm of the first ring under a figure."""
    wide = size * MM
    part = picture.Picture(pdf, number, DPI, (left - 2 * MM, below, left + wide + 2 * MM, below + wide + 8 * MM))
    down = picture.dark_runs(part.column(left + wide / 2))
    if not down:
        return None, None
    top = part.along_y(down[0])
    level = picture.dark_runs(part.row(top + wide / 2))
    return measured(down, part.along_y, top, top + wide), measured(level, part.along_x, left, left + wide)


def rings(pdf, page, number, wanted):
    """Every figure of a diameter with a ring under it: (figure, faults)."""
    if not any(word["text"].strip() == "across" for word in page["words"]):
        return
    columns = [word["x"] for word in page["words"] if word["text"].strip() == "across"]
    for word in page["words"]:
        text = word["text"].strip()
        if text not in wanted or min(abs(word["x"] - x) for x in columns) > 0.5 * MM:
            continue
        left, below = word["x"] + 0.3 * MM, page["height"] - word["y"] + 0.4 * MM  # 0.3 mm of paper round the ring
        name = f"{pdf.name} side {number}: ring {text}"
        high, wide = ring_sizes(pdf, number, left, below, float(text))
        yield text, told(name, float(text), high) + told(name, float(text), wide)


def nest_circles(pdf, page, number):
    """Every whole figure inside a circle of the nest: (figure, faults)."""
    for word in page["words"]:
        text = word["text"].strip()
        if not text.isdigit() or not 8 <= int(text) <= 60 or abs(word["size"] - 14) > 0.05 or word["width"] == 0:
            continue
        size = float(text)
        middle = word["x"] + word["width"] / 2
        centre = page["height"] - word["y"] - 0.71 * word["size"] / 2 + (size / 2 - 2.1) * MM
        name = f"{pdf.name} side {number}: circle {text}"
        yield text, told(name, size, across(pdf, number, centre, middle - size / 2 * MM, middle + size / 2 * MM))


def bar(pdf, page, number):
    words = [word for word in page["words"] if word["text"].startswith("100")]
    if not words:
        return [f"{pdf.name} side {number}: no words under the bar"]
    under = min(words, key=lambda word: word["y"])
    left, y = under["x"], page["height"] - under["y"] - (4.4 + 1.0) * MM
    return told(f"{pdf.name} side {number}: bar", BAR_MM, across(pdf, number, y, left, left + BAR_MM * MM))


def faults_of(pdf, wanted):
    chart = pdf.stem.removeprefix("chart-").rsplit("-", 1)[0]
    seen, found = set(), []
    for number, page in enumerate(chart_check.pages_of(pdf), 1):
        found += bar(pdf, page, number)
        for text, faults in [*rings(pdf, page, number, wanted), *nest_circles(pdf, page, number)]:
            seen.add(text)
            found += faults
    if len(seen) < FEWEST.get(chart, 0):
        found.append(f"{pdf.name}: only {len(seen)} rings and circles")
    return found, len(seen)


def main(folder, content):
    wanted = diameters(content)
    charts = sorted(folder.glob("chart-*.pdf"))
    found = [] if len(charts) >= 10 else [f"only {len(charts)} charts"]
    looked = 0
    for pdf in charts:
        faults, seen = faults_of(pdf, wanted)
        found += faults
        looked += seen
    tools.finish(found, f"{looked} rings and circles and the bars of {len(charts)} charts")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
