"""Signs and signal words stay apart in grey and for red-green blind eyes, each pair of them, and so do the marks of charts.

usage: chart_sign_check.py BENCHLEAF FOLDER PROJECT

The eyes are those of chart_state_check.py, with the sources named there. Trust signs and the families of safety signs are
those of the bound handbook, marks those of the bound charts; for the signal words a chart is bound from a copy of the content
with one caution of each, since no caution of the content itself says DANGER. Words on their ground are large and bold: 4.5 to
1 is asked of them in either eye (WCAG 2.2, 1.4.6).
"""

import itertools
import pathlib
import re
import shutil
import sys
import tempfile

import yaml

import chart_check
import chart_fill_check
import chart_state_check
import figures
import picture
import tools

DPI = 600
MM = picture.MM
EYES = {"grey": chart_state_check.as_grey, "deuteranopia": chart_state_check.as_deuteranope}
LEAST = 0.5  # of the range from black to white, where two signs differ most
WORD_CONTRAST = 4.5
TRUSTS = ("standard", "handbook", "open data set", "trade practice", "recalled", "invented")
MARKS = ("never", "with care", "no harm")
WORDS = ("DANGER", "WARNING", "CAUTION", "NOTICE")
SIGN = re.compile(r'<word xMin="([^"]*)" yMin="([^"]*)" xMax="([^"]*)" yMax="([^"]*)">\(([^)]*)\)</word>')
WIDEST_SIGN = 9  # pt: the same words as text are wider
BEFORE_WORD_MM = 8  # the triangle, or the ground alone
FEWEST = {"trust signs": 8, "families of signs": 3, "marks": 3, "signal words": 4}


def patch(pdf, page, box, seen):
    """What an eye sees of a part of a page, on a grid of fields."""
    return chart_state_check.fields_of(picture.Picture(pdf, page, DPI, box, colour=True), box, seen)


def first_of_each(pdf, name_of):
    """{name: (pdf, page, box)}, the first figure of each name; `name_of` gives None for a figure that is not looked for."""
    found = {}
    for figure in figures.read(pdf):
        name = name_of(figure.alt)
        if name and name not in found:
            found[name] = (pdf, figure.page, figure.box)
    return found


def trust_signs(pdf):
    """{name: (pdf, page, box)}: letters of a font of signs, which a reader gets as their words in brackets."""
    found = {}
    text = tools.output("pdftotext", "-bbox", pdf, "-").decode()
    for page, part in enumerate(text.split("<page ")[1:], 1):
        for left, top, right, bottom, name in SIGN.findall(part):
            left, top, right, bottom = (float(end) for end in (left, top, right, bottom))
            if name.removesuffix(", worked out") in TRUSTS and right - left < WIDEST_SIGN:
                tall = bottom - top  # of the font's box; the sign stands in its middle
                found.setdefault(name, (pdf, page, (left, top + 0.2 * tall, right, bottom - 0.1 * tall)))
    return found


def family_of(project):
    rows = yaml.safe_load((project / "schema" / "tables" / "safety-signs.yaml").read_text(encoding="utf-8"))["rows"]
    families = {row["title"].lower(): row["family"] for row in rows}
    return lambda alt: families.get(alt.lower())


def four_words(content):
    """Has one chart show a caution of each word."""
    chart = content / "chart" / "liquids.yaml"
    named = ["never-neutralise-on-a-person", "silver-and-ammonia", "hot-tools", "thin-gold"]
    chart.write_text(chart.read_text(encoding="utf-8").replace(
        "records: [never-neutralise-on-a-person, silver-and-ammonia, bleach-makes-poison-gas]", f"records: [{', '.join(named)}]"),
        encoding="utf-8")
    caution = content / "caution" / f"{named[0]}.yaml"
    caution.write_text(caution.read_text(encoding="utf-8").replace("word: warning", "word: danger")
                       .replace("likelihood: could", "likelihood: will"), encoding="utf-8")


def signal_words(benchleaf, project, place):
    """{word: (pdf, page, box)} on a chart that shows all four."""
    content = place / "content"
    shutil.copytree(project / "content", content)
    four_words(content)
    chart_fill_check.bind(benchleaf, content, project / "schema", place)
    pdf = place / "handbook" / "chart-liquids-a3.pdf"
    if not pdf.exists():
        return {}
    page = chart_check.pages_of(pdf)[0]
    return {word["text"]: (pdf, 1, (word["x"] - BEFORE_WORD_MM * MM, page["height"] - word["y"] - word["size"],
                                    word["x"] + word["width"], page["height"] - word["y"] + 0.3 * word["size"]))
            for word in page["words"] if word["text"] in WORDS}


def alike(group, places):
    """Pairs that an eye does not tell apart."""
    if len(places) < FEWEST[group]:
        yield f"{group}: only {', '.join(places) or 'none'}"
    for eye, seen in EYES.items():
        patches = {name: patch(*place, seen) for name, place in places.items()}
        for (one, patch_of_one), (other, patch_of_other) in itertools.combinations(patches.items(), 2):
            apart = chart_state_check.difference(patch_of_one, patch_of_other)
            if apart < LEAST:
                yield f"{group}: {one} and {other} differ by {apart:.2f} in {eye}"


def faint(places):
    """Signal words that do not stand out from their ground."""
    for eye, seen in EYES.items():
        for word, place in places.items():
            page = picture.Picture(place[0], place[1], DPI / 2, place[2], colour=True)
            lights = [sum(part * light for part, light in zip(chart_state_check.LUMINANCE, seen(page.samples[at:at + 3])))
                      for at in range(0, len(page.samples), 3)]
            contrast = (max(lights) + 0.05) / (min(lights) + 0.05)
            if contrast < WORD_CONTRAST:
                yield f"{word} stands at {contrast:.1f} to 1 on its ground in {eye}"


def main(benchleaf, folder, project):
    handbook, liquids = folder / "handbook-a4.pdf", folder / "chart-liquids-a3.pdf"
    with tempfile.TemporaryDirectory() as place:
        words = signal_words(benchleaf, project, pathlib.Path(place))
        groups = {
            "trust signs": trust_signs(handbook),
            "families of signs": first_of_each(handbook, family_of(project)),
            "marks": first_of_each(liquids, lambda alt: alt if alt in MARKS else None),
            "signal words": words,
        }
        found = [fault for group, places in groups.items() for fault in alike(group, places)]
        found += faint(words)
    tools.finish(found, ", ".join(f"{len(places)} {group}" for group, places in groups.items()))


if __name__ == "__main__":
    main(*(pathlib.Path(argument) for argument in sys.argv[1:4]))
