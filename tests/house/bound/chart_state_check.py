"""What is coded on the bound charts stays apart in grey and for red-green blind eyes, and the matrix says what records say.

usage: chart_state_check.py FOLDER CONTENT

Deuteranopia: the matrix of severity 1.0 of Machado, Oliveira, Fernandes, A Physiologically-based Model for Simulation of
Color Vision Deficiency, IEEE TVCG 15 (2009), for linear RGB. Grey: relative luminance of WCAG 2.2. Both are of others; so
are the painter (poppler) and the reader of words (pdf.js).
"""

import itertools
import pathlib
import sys

import chart_check
import picture
import records
import tools

DPI = 100
MM = picture.MM
DEUTERANOPIA = ((0.367322, 0.860646, -0.227968), (0.280085, 0.672501, 0.047413), (-0.011820, 0.042940, 0.968881))
LUMINANCE = (0.2126, 0.7152, 0.0722)
SIDE = 12  # a patch is compared on so many fields a side
# Share of the range from black to white by which two states differ at the place where they differ most.
LEAST = 0.25
FEWEST = {"never": 20, "with-care": 20, "ok": 20}


def linear(value):
    value /= 255
    return value / 12.92 if value <= 0.04045 else ((value + 0.055) / 1.055) ** 2.4


LINEAR = [linear(value) for value in range(256)]


def as_grey(rgb):
    grey = sum(part * LINEAR[value] for part, value in zip(LUMINANCE, rgb))
    return (grey, grey, grey)


def as_deuteranope(rgb):
    light = [LINEAR[value] for value in rgb]
    return tuple(min(1, max(0, sum(part * value for part, value in zip(row, light)))) for row in DEUTERANOPIA)


def difference(one, other):
    return max(max(abs(a - b) for a, b in zip(p, q)) for p, q in zip(one, other))


def fields_of(page, box, seen):
    """The patch of a painted page on SIDE times SIDE fields, each the mean of what an eye sees there."""
    left, top = round(box[0] * page.scale) - page.left, round(box[1] * page.scale) - page.top
    width, height = round((box[2] - box[0]) * page.scale), round((box[3] - box[1]) * page.scale)
    patch = []
    for row in range(SIDE):
        for column in range(SIDE):
            x, y = left + width * (2 * column + 1) // (2 * SIDE), top + height * (2 * row + 1) // (2 * SIDE)
            at = (y * page.width + x) * 3
            patch.append(seen(page.samples[at:at + 3]))
    return patch


def short(fields):
    name = fields.get("short-name", fields["title"])
    return name[:1].upper() + name[1:]


def verdicts(content):
    """{(liquid, material): verdict} by the names that stand on the chart."""
    all_records = list(records.read(content))
    materials = {name: short(fields) for kind, name, fields in all_records if kind == "material"}
    found = {}
    for kind, _, fields in all_records:
        if kind != "chemistry":
            continue
        stated = {item["material"].removeprefix("material/"): item["verdict"] for item in fields.get("on-materials", [])}
        for name, title in materials.items():
            found[(short(fields), title)] = stated.get(name)
    return found


def squares(page, stated):
    """(verdict or None, box) of each square of the matrix of liquids on materials."""
    height = page["height"]
    heads = [word for word in page["words"] if word["width"] == 0]
    legend = max(word["y"] for word in page["words"] if "no harm" in word["text"])
    within = [word for word in page["words"] if word["width"] > 0 and heads and heads[0]["y"] > word["y"] > legend]
    for liquid, material in stated:
        rows = [word for word in within if word["text"].strip() == liquid]
        columns = [word for word in heads if word["text"].strip() == material]
        if not rows or not columns:
            continue
        middle_x, middle_y = columns[0]["x"] - 0.36 * columns[0]["size"], height - rows[0]["y"] - 0.36 * rows[0]["size"]
        half = 1.9 * MM
        yield stated[(liquid, material)], (middle_x - half, middle_y - half, middle_x + half, middle_y + half)


def faults_of(pdf, stated):
    words = chart_check.pages_of(pdf)[0]
    page = picture.Picture(pdf, 1, DPI, colour=True)
    found = []
    for eye, seen in (("grey", as_grey), ("deuteranopia", as_deuteranope)):
        states = {}
        for verdict, box in squares(words, stated):
            states.setdefault(verdict, []).append(fields_of(page, box, seen))
        for verdict, fewest in FEWEST.items():
            if pdf.stem.startswith("chart-liquids") and len(states.get(verdict, [])) < fewest:
                found.append(f"{pdf.name}: only {len(states.get(verdict, []))} squares of {verdict}")
        for (one, patches), (other, others) in itertools.combinations(states.items(), 2):
            least = min(difference(patches[i], others[i % len(others)]) for i in range(len(patches)))
            if least < LEAST:
                found.append(f"{pdf.name}: {one} and {other} differ by {least:.2f} in {eye}")
        found += unlike_its_like(pdf, eye, states)
    return found, sum(len(patches) for patches in states.values())


def unlike_its_like(pdf, eye, states):
    """A square that looks like another state than the records give it."""
    models = {verdict: patches[0] for verdict, patches in states.items()}
    for verdict, patches in states.items():
        for patch in patches:
            nearest = min(models, key=lambda state: sum(abs(a[1] - b[1]) for a, b in zip(models[state], patch)))
            if nearest != verdict:
                yield f"{pdf.name}: a square of {verdict} looks like {nearest} in {eye}"


def main(folder, content):
    stated = verdicts(content)
    charts = [*sorted(folder.glob("chart-liquids-*.pdf")), *sorted(folder.glob("chart-one-sheet-*.pdf"))]
    found = [] if len(charts) >= 6 else [f"only {len(charts)} charts"]
    looked = 0
    for pdf in charts:
        faults, seen = faults_of(pdf, stated)
        found += faults
        looked += seen
    tools.finish(found, f"{looked} squares of {len(charts)} charts")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
