"""Terms, numbers and designations, picked with a fixed seed, stand on the pages that the printed index gives for them.

usage: index_check.py FOLDER CONTENT

The index is read from the structure tree; the pages are read by poppler.
"""

import json
import pathlib
import random
import re
import sys

import plain_text
import records
import structure
import tools

SEED = 8
PICKED = 200
ENTRY = re.compile(r"^(?P<word>.*?)\s*(?:\u2002|(?<=\S) )(?P<pages>\d+(?:, \d+)*)$")


def wanted(content):
    """Every term and title of the records that the index is there for; cells have a table of their own."""
    words = set()
    for kind, _, fields in records.read(content):
        if kind in ("term", "tool", "material", "substance", "symptom", "residue", "part", "procedure", "chemistry"):
            words.add(fields[records.HEADING.get(kind, "title")])
    return sorted(words)


def printed_index(root):
    """word -> page labels, as the elements of the index say it."""
    found = {}
    for index in (element for element in root.elements() if element.kind == "Index"):
        for line in (element for element in index.elements() if element.kind == "P"):
            match = ENTRY.match(line.text().strip())
            if match:
                found.setdefault(plain_text.plain(match["word"]).lower(), []).extend(match["pages"].split(", "))
    return found


def pages_of(pdf):
    """The text of each numbered page, lower case, by its label: the front matter has as many pages as stand before page 1."""
    texts = tools.output("pdftotext", "-enc", "UTF-8", pdf, "-").decode().split("\f")
    front = len(texts) - 1 - last_number(pdf)
    return {str(at - front + 1): plain_text.Page([text.lower()]) for at, text in enumerate(texts) if at >= front}


def last_number(pdf):
    """How many pages have arabic numbers, from the ranges of labels as qpdf gives them."""
    ranges = json.loads(tools.run("qpdf", "--json=2", "--json-key=pagelabels", "--json-key=pages", pdf).stdout)
    first = next(one["index"] for one in ranges["pagelabels"] if one["label"].get("/S") == "/D")
    return len(ranges["pages"]) - first


def faults_of(name, words, index, pages):
    faults = []
    for word in words:
        labels = index.get(plain_text.plain(word).lower())
        if labels is None:
            faults.append(f'{name}: "{word}" is not in the index')
            continue
        faults += [f'{name}: "{word}" is not on page {label}' for label in labels if label not in pages or not pages[label].has(word.lower())]
    return faults


def main(folder, content):
    words = wanted(content)
    picked = random.Random(SEED).sample(words, min(PICKED, len(words)))
    faults = [] if len(picked) == PICKED else [f"only {len(picked)} words to pick from"]
    handbooks = sorted(folder.glob("handbook-*.pdf"))
    if not handbooks:
        faults.append("no handbook")
    for pdf in handbooks:
        faults += faults_of(pdf.name, picked, printed_index(structure.read(pdf)), pages_of(pdf))
    tools.finish(faults, f"{len(picked)} of {len(words)} words, {len(handbooks)} handbooks")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
