"""What a chart does when records go or come: it is laid anew by itself, and what has no room is told, never set smaller.

usage: chart_fill_check.py BENCHLEAF PROJECT

Works on copies of the content: with one cell less, with six sizes more, which fit, and with forty, which do not.
"""

import pathlib
import re
import shutil
import sys
import tempfile

import chart_check
import tools

GONE = "cr2477"
LITHIUM = """id: {id}
designation: CR24{height:02d}
system: lithium-manganese
size: {{ diameter: 24.5 mm, height: {tenths:.1f} mm }}
nominal: 3 V
drain: not stated
capacity: {{ value: not stated, load: not stated }}
status: current
uses: Invented for a test.
basis:
  size: {{ trust: memory }}
  nominal: {{ trust: memory }}
  capacity: {{ trust: memory }}
"""
# Heights in tenths of a millimetre that no record of the content has.
HEIGHTS = [height for height in range(13, 76) if height not in (20, 25, 30, 50)]


def bind(benchleaf, content, schema, folder):
    return tools.run(benchleaf, "bind", content, "--schema", schema, "--only", "chart", "--to", folder)


def words_of(folder, chart):
    pages = chart_check.pages_of(folder / "handbook" / f"chart-{chart}.pdf")
    return [[word["text"].strip() for word in page["words"]] for page in pages]


def add_sizes(content, count):
    for height in HEIGHTS[:count]:
        name = f"cr24{height:02d}"
        (content / "cell" / f"{name}.yaml").write_text(LITHIUM.format(id=name, height=height, tenths=height / 10), encoding="utf-8")


def one_less(benchleaf, content, schema, folder):
    (content / "cell" / f"{GONE}.yaml").unlink()
    run = bind(benchleaf, content, schema, folder)
    if run.returncode != 0:
        return [f"one cell less: {run.stderr.strip()[-400:]}"]
    if any(GONE.upper() in side for side in words_of(folder, "cells-a3")):
        return ["one cell less: it still stands on the chart"]
    return []


def some_more(benchleaf, content, schema, folder, count=6):
    add_sizes(content, count)
    run = bind(benchleaf, content, schema, folder)
    if run.returncode != 0:
        return [f"{count} sizes more: {run.stderr.strip()[-400:]}"]
    small = list(chart_check.faults_of(folder / "handbook" / "chart-cells-a3.pdf", chart_check.keys_of(content)))
    if small:
        return small
    words = words_of(folder, "cells-a3")[1]
    missing = [height for height in HEIGHTS[:count] if f"CR24{height:02d}" not in words]
    return [f"{count} sizes more: CR24{height:02d} is not on the chart" for height in missing]


def too_many(benchleaf, content, schema, folder):
    add_sizes(content, 40)
    run = bind(benchleaf, content, schema, folder)
    told = re.search(r"chart 'cells' on a3 landscape: what must stay is ([0-9]+) mm too high", run.stderr)
    if run.returncode != 1 or not told:
        return [f"forty sizes more: exit {run.returncode}, and no word of how much is missing"]
    return [] if int(told[1]) > 20 else [f"forty sizes more: only {told[1]} mm are said to be missing"]


def main(benchleaf, project):
    found = []
    for change in (one_less, some_more, too_many):
        with tempfile.TemporaryDirectory() as place:
            content, folder = pathlib.Path(place) / "content", pathlib.Path(place) / "out"
            shutil.copytree(project / "content", content)
            found += change(benchleaf, content, project / "schema", folder)
    tools.finish(found, "3 changed contents")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
