"""Each thing that readers look for stands in the index of the printed handbook, and the page that it gives has the answer.

usage: looked_for_check.py FOLDER LIST

LIST has a line for each: what is wanted, subject, sub-entry or `-`, words of the answer; parted by tabs.
"""

import pathlib
import sys

import index_check
import plain_text
import structure
import tools

FEWEST = 20


def wanted(text):
    """(thing, words of the index line, words of the answer)"""
    rows = [line.split("\t") for line in text.splitlines() if line and not line.startswith("#")]
    return [(thing, subject if under == "-" else under, subject, answer) for thing, subject, under, answer in rows]


def faults_of(name, rows, index, pages):
    faults = []
    for thing, line, subject, answer in rows:
        labels = index.get(plain_text.plain(line).lower(), [])
        if not labels:
            faults.append(f'{name}: {thing}: no page at "{line}" under "{subject}" in the index')
        elif not any(label in pages and pages[label].has(answer.lower()) for label in labels):
            faults.append(f'{name}: {thing}: "{answer}" is not on page {", ".join(labels)}')
    return faults


def main(folder, listed):
    rows = wanted(listed.read_text(encoding="utf-8"))
    faults = [] if len(rows) >= FEWEST else [f"only {len(rows)} things"]
    handbooks = sorted(folder.glob("handbook-*.pdf"))
    if not handbooks:
        faults.append("no handbook")
    for pdf in handbooks:
        faults += faults_of(pdf.name, rows, index_check.printed_index(structure.read(pdf)), index_check.pages_of(pdf))
    tools.finish(faults, f"{len(rows)} things, {len(handbooks)} handbooks")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
