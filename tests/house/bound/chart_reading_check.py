"""Every word of the bound charts can be read at 60 cm.

usage: chart_reading_check.py FOLDER PROJECT

Each sheet is painted by poppler with one sample for each minute of arc at 60 cm, which is what an eye of visual acuity 1.0
tells apart (ISO 8596). On that picture the capitals or small letters of each word are measured and its strokes held against
their ground. The heights asked for are those of signs (16 minutes, 20 for keys: common practice, no source), of the letters
and not of the type size: the fonts say how high theirs are.
"""

import collections
import math
import pathlib
import re
import struct
import sys

import yaml

import chart_check
import chart_state_check
import picture
import tools

DISTANCE_MM = 600
MINUTE_MM = DISTANCE_MM * math.tan(math.radians(1 / 60))
DPI = 25.4 / MINUTE_MM
MM = picture.MM
# Minutes of arc of capital height, by the least size in points that a class of words has.
MINUTES = {chart_check.TRADE_NUMBER: 20, chart_check.LOOK_UP: 20, chart_check.WORDS: 16}
CAPTION_MINUTES = 13  # read with the chart in the hand
BLUR = 0.7  # of a sample, at an edge that falls between two of them
CONTRAST = 4.5  # left of 7:1 where a thin stroke falls between two samples: WCAG 2.2, 1.4.3
TALL, SMALL = re.compile("[A-Z0-9bdfhkl]"), re.compile("[acemnorsuvwxz]")
FEWEST = 40


def font_heights(font):
    """Capital height and height of small letters, shares of the type size, as the file's tables OS/2 and head have them."""
    data = font.read_bytes()
    count = struct.unpack(">H", data[4:6])[0]
    places = {data[at:at + 4]: struct.unpack(">I", data[at + 8:at + 12])[0] for at in range(12, 12 + 16 * count, 16)}
    em = struct.unpack(">H", data[places[b"head"] + 18:places[b"head"] + 20])[0]
    small, capital = struct.unpack(">hh", data[places[b"OS/2"] + 86:places[b"OS/2"] + 90])
    return capital / em, small / em


def least_heights(project):
    fonts = yaml.safe_load((project / "schema" / "fonts.yaml").read_text(encoding="utf-8"))["fonts"]
    heights = [font_heights(pathlib.Path(font["path"])) for font in fonts if font["role"].startswith(("text", "condensed"))]
    return min(capital for capital, _ in heights), min(small for _, small in heights)


def minutes_asked(word, height, captions):
    if chart_check.least_size(word, height, captions) == chart_check.CAPTION:
        return CAPTION_MINUTES
    return next((minutes for size, minutes in MINUTES.items() if word["size"] >= size - 0.01), math.inf)


def rows_of(page, word, height):
    """Samples of a word from a little above its capitals down to its line, row by row; of a turned one from left to right."""
    size, x, y = word["size"], word["x"], height - word["y"]
    if word["width"] > 0:
        box = (x, y - 0.9 * size, x + word["length"], y)
    else:
        box = (x - 0.9 * size, y - word["length"], x, y)
    left, top, right, bottom = (round(place * page.scale) for place in box)
    rows = [page.samples[line * page.width + left:line * page.width + right] for line in range(top, bottom)]
    return rows if word["width"] > 0 else [bytes(column) for column in zip(*rows)]


def seen(rows):
    """(height of the letters in samples, contrast of their strokes). The ground is what there is most of: edges of strokes
    fall on other samples at each letter."""
    samples = b"".join(rows)
    ground = collections.Counter(samples).most_common(1)[0][0]
    ink = max(samples, key=lambda sample: abs(sample - ground))
    if ink == ground:
        return 0, 1
    height = sum(max(abs(sample - ground) for sample in row) / abs(ink - ground) for row in rows)
    light, dark = (chart_state_check.LINEAR[value] for value in (max(ink, ground), min(ink, ground)))
    return height, (light + 0.05) / (dark + 0.05)


def faults_on(page, words, sheet_height, heights, captions=frozenset()):
    """(faults, how many words were measured)"""
    capital, small = heights
    found, looked = [], 0
    for word in words:
        tall = TALL.search(word["text"])
        if not tall and not SMALL.search(word["text"]):
            continue
        looked += 1
        minutes = minutes_asked(word, sheet_height, captions)
        if word["size"] / MM / MINUTE_MM * capital < minutes:
            found.append(f'"{word["text"]}" of {word["size"]:.2f} pt has capitals of less than {minutes} minutes of arc')
            continue
        height, contrast = seen(rows_of(page, word, sheet_height))
        least = minutes * (1 if tall else small / capital) - BLUR
        if height < least:
            found.append(f'"{word["text"]}" is {height:.1f} minutes of arc high instead of {least:.1f}')
        if contrast < CONTRAST:
            found.append(f'"{word["text"]}" keeps {contrast:.1f} to 1 at arm\'s length')
    return found, looked


def faults_of(pdf, heights, captions):
    found, looked = [], 0
    for number, sheet in enumerate(chart_check.pages_of(pdf), 1):
        page = picture.Picture(pdf, number, DPI)
        faults, measured = faults_on(page, sheet["words"], sheet["height"], heights, captions)
        found += [f"{pdf.name} side {number}: {fault}" for fault in faults]
        if measured < FEWEST:
            found.append(f"{pdf.name} side {number}: only {measured} words")
        looked += measured
    return found, looked


def main(folder, project):
    heights = least_heights(project)
    captions = chart_check.keys_of(project / "content").captions
    charts = sorted(folder.glob("chart-*.pdf"))
    found = [] if len(charts) >= 10 else [f"only {len(charts)} charts"]
    looked = 0
    for pdf in charts:
        faults, measured = faults_of(pdf, heights, captions)
        found += faults
        looked += measured
    tools.finish(found, f"{looked} words of {len(charts)} charts, capitals at least {heights[0]:.3f} of their size")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
