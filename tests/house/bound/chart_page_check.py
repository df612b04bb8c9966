"""The page that a chart names at the end of a row is where the printed handbook of its paper has that liquid or crust.

usage: chart_page_check.py FOLDER CONTENT

The chart is read by pdf.js, the handbook by poppler, and its index from the structure tree.
"""

import pathlib
import re
import sys

import chart_check
import index_check
import plain_text
import records
import structure
import tools

BOOKS = {"a4": "a4", "a3": "a4", "letter": "letter", "tabloid": "letter"}
CHARTS = ("one-sheet", "liquids")
PAGE = re.compile(r"(?:p\.\s)?(\d+)")
LINE_PT = 4  # words of one row stand on one line within this
FEWEST = {"one-sheet": 8, "liquids": 15}


def titles_of(content):
    """What a row says -> the title that the book has: liquids, by their short name where they have one."""
    titles = {}
    for kind, _, fields in records.read(content):
        if kind == "chemistry":
            name = fields.get("short-name", fields["title"])
            titles[name[:1].upper() + name[1:]] = fields["title"]
    return titles


def pages_named(words, titles):
    """(title, page) of each row that begins with the name of a liquid: the first number to the right of it on its line."""
    found = []
    for word in words:
        title = titles.get(word["text"].strip())
        if title is None:
            continue
        line = [other for other in words if abs(other["y"] - word["y"]) < LINE_PT and other["x"] > word["x"]]
        numbers = [PAGE.fullmatch(other["text"].strip()) for other in sorted(line, key=lambda other: other["x"])]
        page = next((match[1] for match in numbers if match), None)
        if page is not None:
            found.append((title, page))
    return found


def faults_of(name, named, index, pages):
    faults = []
    for title, label in named:
        if label not in pages or not pages[label].has(title.lower()):
            faults.append(f'{name}: "{title}" is not on page {label}')
        elif label not in index.get(plain_text.plain(title).lower(), []):
            faults.append(f'{name}: the index does not lead "{title}" to page {label}')
    return faults


def main(folder, content):
    titles = titles_of(content)
    books = {pdf.stem.removeprefix("handbook-"): (index_check.printed_index(structure.read(pdf)), index_check.pages_of(pdf))
             for pdf in folder.glob("handbook-*.pdf")}
    faults, looked = [], 0
    for chart in CHARTS:
        for pdf in sorted(folder.glob(f"chart-{chart}-*.pdf")):
            book = books.get(BOOKS[pdf.stem.rsplit("-", 1)[1]])
            if book is None:
                faults.append(f"{pdf.name}: there is no handbook whose pages it names")
                continue
            named = [one for page in chart_check.pages_of(pdf) for one in pages_named(page["words"], titles)]
            faults += faults_of(pdf.name, named, *book)
            if len(named) < FEWEST[chart]:
                faults.append(f"{pdf.name}: only {len(named)} rows name a page")
            looked += len(named)
    tools.finish(faults, f"{looked} pages named by charts")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
