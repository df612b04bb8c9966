"""Every PDF of a bound folder is sound for qpdf and brings all its fonts along.

usage: pdf_check.py FOLDER
"""

import pathlib
import sys

import tools


def faults_of(pdf):
    found = []
    checked = tools.run("qpdf", "--check", pdf)
    if checked.returncode != 0:
        found.append(f"{pdf.name}: qpdf: {(checked.stdout + checked.stderr).strip()}")
    fonts = tools.run("pdffonts", pdf)
    table = fonts.stdout.splitlines()[2:]
    if fonts.returncode != 0 or not table:
        found.append(f"{pdf.name}: no font is listed {fonts.stderr.strip()}")
    # The last five columns are: emb sub uni object ID.
    found += [f"{pdf.name}: not embedded: {line}" for line in table if line.split()[-5] != "yes"]
    return found


def main(folder):
    pdfs = sorted(folder.glob("*.pdf"))
    found = [] if len(pdfs) >= 2 else [f"only {len(pdfs)} PDF in {folder.name}"]
    for pdf in pdfs:
        found += faults_of(pdf)
    tools.finish(found, f"{len(pdfs)} PDF files")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]))
