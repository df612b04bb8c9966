"""The tagged text of each handbook gives back every designation, record title and text of a caution.

usage: text_check.py FOLDER CONTENT [poppler]
"""

import pathlib
import sys

import plain_text
import records
import structure
import tools


def faults_of(page, wordings):
    return [f'{where}: "{wording}" is not in the text' for where, wording in wordings if not page.has(wording)]


def main(folder, content, read):
    wordings = list(records.wordings(content))
    found = [] if len(wordings) > 300 else [f"only {len(wordings)} wordings in the content"]
    handbooks = sorted(folder.glob("handbook-*.pdf"))
    if not handbooks:
        found.append("no handbook")
    for pdf in handbooks:
        page = plain_text.Page(read(pdf).blocks())
        found += [f"{pdf.name}: {fault}" for fault in faults_of(page, wordings)]
    tools.finish(found, f"{len(wordings)} wordings, {len(handbooks)} handbooks")


if __name__ == "__main__":
    reader = structure.read_by_poppler if sys.argv[3:] == ["poppler"] else structure.read
    main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]), reader)
