"""True size on the bound charts, measured from a rendering by poppler at 600 dpi, within 0.1 mm.

usage: chart_size_check.py FOLDER CONTENT

What each ring, section and bar has to measure comes from the records as a YAML reader of others has them, and from the
figure printed beside it: a cell is laid on its ring, a gasket on its circle.
"""

import pathlib
import sys

import chart_check
import figures
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
FEWEST_SECTIONS = {"cells": 29, "one-sheet": 15}
SECTION = "Section at true size"
SECTION_LINES_MM = (0.2 + 0.12) / 2  # half the line of the can and half that of the cap


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


def figures_under(head, words):
    """What stands below a head, as far as figures go: another word at its left edge begins another panel."""
    column = sorted((word for word in words if abs(word["x"] - head["x"]) <= 0.5 * MM and word["y"] < head["y"]), key=lambda word: -word["y"])
    for word in column:
        if not word["text"].strip().replace(".", "").isdigit():
            return
        yield word


def rings(pdf, page, number, wanted):
    """Every figure of a diameter with a ring under it: (figure, faults)."""
    for head in page["words"]:
        if head["text"].strip() != "across":
            continue
        for word in figures_under(head, page["words"]):
            text = word["text"].strip()
            if text not in wanted:
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
        centre = page["height"] - word["y"] - 0.71 * word["size"] / 2 + (size / 2 - 2.6) * MM
        name = f"{pdf.name} side {number}: circle {text}"
        yield text, told(name, size, across(pdf, number, centre, middle - size / 2 * MM, middle + size / 2 * MM))


def sizes_of_cells(content):
    """(diameter, height) in mm of every cell of the records."""
    sizes = [fields["size"] for kind, _, fields in records.read(content) if kind == "cell" and "size" in fields]
    return {(float(size["diameter"].split()[0]), float(size["height"].split()[0])) for size in sizes
            if size["height"].split()[0].replace(".", "").isdigit()}


def section_size(pdf, section):
    """Width and height in mm of a cell in section: across the can, and from its face to that of the cap. The faces of thin
    cells run together, so heights are taken from edge to edge, less half of either line."""
    left, top, right, bottom = section.box
    part = picture.Picture(pdf, section.page, DPI, (left - 2 * MM, top - 0.6 * MM, right + 2 * MM, bottom + 0.6 * MM))
    level = picture.dark_runs(part.row(top + 0.4 * (bottom - top)))
    dark = [at for at, sample in enumerate(part.column((left + right) / 2)) if sample < 128]
    high = (dark[-1] + 1 - dark[0]) / part.scale / MM - SECTION_LINES_MM if dark else None
    return measured(level, part.along_x, left, right), high


def sections(pdf, page, number, cells):
    """Every section of a cell: (its height in the row that it stands in, faults). The cell is the one of that height whose
    diameter the section comes nearest to."""
    words = [word for word in page["words"] if word["width"] > 0]
    for section in figures.read(pdf):
        if section.page != number or not section.alt.startswith(SECTION):
            continue
        left, top, _, bottom = section.box
        middle = page["height"] - (top + bottom) / 2
        row = [word for word in words if word["x"] < left and -0.2 * word["size"] < middle - word["y"] < word["size"]]
        nearest = max(row, key=lambda word: word["x"], default=None)
        name = f"{pdf.name} side {number}: section beside {nearest and nearest['text']}"
        wide, high = section_size(pdf, section)
        fitting = [cell for cell in cells if nearest and f"{cell[1]:g}" == f"{float(nearest['text']):g}"]
        if not fitting or wide is None:
            yield None, [f"{name}: no such cell, or no lines"]
            continue
        cell = min(fitting, key=lambda size: abs(size[0] - wide))
        yield nearest["text"], told(f"{name}, across", cell[0], wide) + told(f"{name}, high", cell[1], high)


def bar(pdf, page, number):
    words = [word for word in page["words"] if word["text"].startswith("100")]
    if not words:
        return [f"{pdf.name} side {number}: no words under the bar"]
    under = min(words, key=lambda word: word["y"])
    left, y = under["x"], page["height"] - under["y"] - (4.4 + 1.0) * MM
    return told(f"{pdf.name} side {number}: bar", BAR_MM, across(pdf, number, y, left, left + BAR_MM * MM))


def faults_of(pdf, wanted, cells):
    chart = pdf.stem.removeprefix("chart-").rsplit("-", 1)[0]
    seen, found, cut = set(), [], 0
    for number, page in enumerate(chart_check.pages_of(pdf), 1):
        found += bar(pdf, page, number)
        for text, faults in [*rings(pdf, page, number, wanted), *nest_circles(pdf, page, number)]:
            seen.add(text)
            found += faults
        for _, faults in sections(pdf, page, number, cells):
            cut += 1
            found += faults
    if cut < FEWEST_SECTIONS.get(chart, 0):
        found.append(f"{pdf.name}: only {cut} sections")
    if len(seen) < FEWEST.get(chart, 0):
        found.append(f"{pdf.name}: only {len(seen)} rings and circles")
    return found, len(seen) + cut


def main(folder, content):
    wanted, cells = diameters(content), sizes_of_cells(content)
    charts = sorted(folder.glob("chart-*.pdf"))
    found = [] if len(charts) >= 10 else [f"only {len(charts)} charts"]
    looked = 0
    for pdf in charts:
        faults, seen = faults_of(pdf, wanted, cells)
        found += faults
        looked += seen
    tools.finish(found, f"{looked} rings, circles and sections, and the bars of {len(charts)} charts")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
