"""True size in the handbooks, measured from a rendering by poppler at 600 dpi, within 0.1 mm.

usage: scale_check.py FOLDER

Every figure that says it is at true size is measured against the sizes that its own words name; on every page with such
figures, the bar of 100 mm. Figures are found by the boxes of the structure tree, as qpdf gives them.
"""

import json
import pathlib
import re
import sys

import picture
import tools

DPI = 600
NEAR_MM = 0.1
MM = picture.MM
ASIDE = 0.6  # mm from the middle, where centre lines run
CIRCLE = re.compile(r"true size.*a circle ([\d.]+)\s*mm across")
SECTION = re.compile(r"true size: plan, .*; section, ([\d.]+)\s*mm high")
FEWEST_BARS = 5
BAR_MM, BAR_WORDS = 100, "trust no outline."
TICK = 0.8  # mm above the bar, where all its ticks are


def cell_sizes(facts):
    """Sizes of the cells, diameter and height as they are printed: each is drawn once."""
    sizes = {}
    for line in facts.read_text(encoding="utf-8").splitlines():
        fact = json.loads(line)
        record, _, path = fact["id"].partition("#")
        if record.startswith("cell/") and path in ("size.diameter", "size.height"):
            sizes.setdefault(record, {})[path] = fact["printed"]
    return {tuple(sorted(size.items())) for size in sizes.values()}


def figures_of(pdf):
    """(page number, words, (left, top, right, bottom)) of each figure; places from the top left of its page."""
    whole = json.loads(tools.run("qpdf", "--json=2", "--json-key=qpdf", "--json-key=pages", pdf).stdout)
    objects = whole["qpdf"][1]
    numbers = {page["object"]: number for number, page in enumerate(whole["pages"], 1)}
    height = page_height(pdf)
    for entry in objects.values():
        value = entry.get("value")
        if not isinstance(value, dict) or value.get("/S") != "/Figure" or "/Alt" not in value:
            continue
        left, low, right, high = value["/A"]["/BBox"]
        page = value.get("/Pg") or objects[f"obj:{value['/P']}"]["value"].get("/Pg")
        yield numbers[page], value["/Alt"][2:], (left, height - high, right, height - low)


def page_height(pdf):
    line = next(line for line in tools.run("pdfinfo", pdf).stdout.splitlines() if line.startswith("Page size:"))
    return float(line.split("x")[1].split()[0])


def span(runs, at):
    """Distance in mm between the first and the last dark run."""
    return (at(runs[-1]) - at(runs[0])) / MM if len(runs) > 1 else 0.0


def told(name, wanted, found):
    return [] if abs(found - wanted) <= NEAR_MM else [f"{name}: {found:.3f} mm instead of {wanted:g}"]


def circle_faults(pdf, page, box, across, name):
    """Faults and the middle of the circle, which stands alone at the top of its box: a row and a column beside its middle
    are chords of known length."""
    radius = across / 2
    chord = 2 * (radius ** 2 - ASIDE ** 2) ** 0.5
    middle = box[1] + margin_above(box, across) + radius * MM
    part = picture.Picture(pdf, page, DPI, (box[0] - MM, middle - (radius + 0.5) * MM, box[0] + (across + 2.4) * MM, middle + (radius + 0.5) * MM))
    row = picture.dark_runs(part.row(middle + ASIDE * MM), 100)
    if len(row) < 2:
        return [f"{name}: no circle in its box"], box[0]
    centre_x = (part.along_x(row[0]) + part.along_x(row[-1])) / 2
    column = picture.dark_runs(part.column(centre_x + ASIDE * MM), 100)
    return told(f"{name}, level", chord, span(row, part.along_x)) + told(f"{name}, upright", chord, span(column, part.along_y)), centre_x


def margin_above(box, across):
    """What of the centre line stands above the circle; nothing where the circle is alone in its box."""
    return 0 if box[3] - box[1] < (across + 0.6) * MM else 0.8 * MM


def section_faults(pdf, page, box, across, high, centre_x, name):
    """The section stands 2.2 mm under the circle; its outline is the darkest there is."""
    top = box[1] + margin_above(box, across) + (across + 2.2) * MM
    part = picture.Picture(pdf, page, DPI, (centre_x - MM, top - 0.8 * MM, centre_x + MM, top + (high + 0.8) * MM))
    return told(f"{name}, section", high, span(picture.dark_runs(part.column(centre_x + 0.2 * MM), 90), part.along_y))


def figure_faults(pdf):
    """Faults, how many figures were measured, and their pages."""
    faults, pages, measured = [], set(), 0
    for page, words, box in figures_of(pdf):
        circle, section = CIRCLE.search(words), SECTION.search(words)
        if not circle:
            continue
        across = float(circle[1])
        name = f'{pdf.name} page {page}: "{words[:60]}"'
        found, centre_x = circle_faults(pdf, page, box, across, name)
        faults += found
        if section:
            faults += section_faults(pdf, page, box, across, float(section[1]), centre_x, name)
        pages.add(page)
        measured += 1
    return faults, measured, pages


def longest_run(samples, below=128):
    """(length, first, last) of the longest stretch of dark samples."""
    best, start = (0, 0, 0), None
    for at, sample in enumerate(samples + b"\xff"):
        if sample < below and start is None:
            start = at
        elif sample >= below and start is not None:
            best = max(best, (at - start, start, at - 1))
            start = None
    return best


def bar_faults(pdf):
    """The bar stands beside its words, on their baseline; it is measured from its first tick to its last."""
    faults, pages = [], set()
    printed = tools.output("pdftotext", "-bbox", "-enc", "UTF-8", pdf, "-").decode()
    number, before = 0, []
    for line in printed.splitlines():
        if "<page " in line:
            number += 1
        word = re.search(r'yMin="([\d.]+)" xMax="[\d.]+" yMax="([\d.]+)">(.*)</word>', line)
        if not word:
            continue
        before = [*before[-2:], word[3]]
        if " ".join(before) != BAR_WORDS:
            continue
        pages.add(number)
        part = picture.Picture(pdf, number, DPI, (0, float(word[1]) - MM, 1000, float(word[2]) + 2))
        rows = [part.samples[row * part.width:(row + 1) * part.width] for row in range(part.height)]
        # A rule of the page may lie close above the bar: the bar is the line that comes nearest its length.
        wanted = BAR_MM * MM * part.scale
        level = min(range(len(rows)), key=lambda row: abs(longest_run(rows[row])[0] - wanted))
        ticks = picture.dark_runs(rows[level - round(TICK * MM * part.scale)])
        first, last = longest_run(rows[level])[1:]
        ticks = [tick for tick in ticks if first - 2 <= tick <= last + 2]
        faults += told(f"{pdf.name} page {number}: bar", BAR_MM, span(ticks, part.along_x))
    return faults, pages


def faults_of(pdf, fewest):
    faults, measured, with_figures = figure_faults(pdf)
    more, with_bars = bar_faults(pdf)
    faults += more + [f"{pdf.name} page {page}: true size without a bar" for page in sorted(with_figures - with_bars)]
    if measured < fewest or len(with_bars) < FEWEST_BARS:
        faults.append(f"{pdf.name}: only {measured} figures and {len(with_bars)} bars")
    return faults, f"{measured} figures and {len(with_bars)} bars of {pdf.name}"


def main(folder):
    handbooks = sorted(folder.glob("handbook-*.pdf"))
    faults, seen = [] if handbooks else ["no handbook"], []
    for pdf in handbooks:
        found, looked = faults_of(pdf, len(cell_sizes(folder / "facts.jsonl")))
        faults += found
        seen.append(looked)
    tools.finish(faults, ", ".join(seen))


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]))
