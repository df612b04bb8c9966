"""The square code of each bound chart says edition and chart: painted by poppler, read by zbarimg.

usage: chart_code_check.py FOLDER CONTENT
"""

import pathlib
import sys
import tempfile

import yaml

import tools

DPI = 300  # of an ordinary printer; the code is 11 mm wide
SIDES = 2


def told_by(picture):
    """What zbarimg reads, or what it says when it reads nothing."""
    read = tools.run("zbarimg", "--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", picture)
    return read.stdout.strip() or f"nothing ({read.stderr.strip()[:80]})"


def wanted(content, pdf):
    handbook = yaml.load((content / "handbook.yaml").read_text(encoding="utf-8"), Loader=yaml.BaseLoader)
    chart = pdf.stem.removeprefix("chart-").rsplit("-", 1)[0]
    return f"Benchleaf edition {handbook['edition']} {handbook['date']} chart {chart}"


def faults_of(pdf, content):
    with tempfile.TemporaryDirectory() as place:
        for side in range(1, SIDES + 1):
            target = pathlib.Path(place) / "side"
            tools.output("pdftoppm", "-gray", "-r", DPI, "-f", side, "-l", side, "-singlefile", pdf, target)
            said = told_by(target.with_suffix(".pgm"))
            if said != wanted(content, pdf):
                yield f'{pdf.name} side {side}: the code says {said}, not "{wanted(content, pdf)}"'


def main(folder, content):
    charts = sorted(folder.glob("chart-*.pdf"))
    found = [] if len(charts) >= 10 else [f"only {len(charts)} charts"]
    for pdf in charts:
        found += faults_of(pdf, content)
    tools.finish(found, f"the codes of {len(charts)} charts")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
