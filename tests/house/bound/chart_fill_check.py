"""What a chart does when records go or come: it is laid anew by itself, and what has no room is told, never set smaller.

usage: chart_fill_check.py BENCHLEAF PROJECT

Works on copies of the content: with one cell less; with forty cells more, most of them in sizes that are there, which
take its back as well; and with more sizes than two sides hold.
"""

import pathlib
import re
import shutil
import sys
import tempfile

import chart_check
import records
import tools

GONE = "cr2477"
CELL = """id: {id}
designation: {designation}
system: {system}
size: {{ diameter: {diameter}, height: {height} }}
nominal: {nominal}
drain: not stated
capacity: {{ value: not stated, load: not stated }}
status: current
uses: Invented for a test.
basis:
  size: {{ trust: memory }}
  nominal: {{ trust: memory }}
  capacity: {{ trust: memory }}
"""
# The cell of another system in the size of a cell: how its designation begins, its system, its voltage.
TWINS = {"silver-oxide": ("LR", "alkaline", "1.5 V"), "lithium-manganese": ("BR", "lithium-carbon-monofluoride", "3 V")}
MORE = 40
# Heights in tenths of a millimetre that no record of the content has.
HEIGHTS = [height for height in range(13, 76) if height not in (20, 25, 30, 50)]


def bind(benchleaf, content, schema, folder):
    return tools.run(benchleaf, "bind", content, "--schema", schema, "--only", "chart", "--to", folder)


def words_of(folder, chart):
    pages = chart_check.pages_of(folder / "handbook" / f"chart-{chart}.pdf")
    return [[word["text"].strip() for word in page["words"]] for page in pages]


def add_cell(content, designation, **fields):
    name = designation.lower()
    (content / "cell" / f"{name}.yaml").write_text(CELL.format(id=name, designation=designation, **fields), encoding="utf-8")


def add_sizes(content, count):
    """Lithium cells of new heights; their designations."""
    added = []
    for height in HEIGHTS[:count]:
        added.append(f"CR24{height:02d}")
        add_cell(content, added[-1], system="lithium-manganese", diameter="24.5 mm", height=f"{height / 10:.1f} mm", nominal="3 V")
    return added


def add_twins(content):
    """A cell of another system in each size that has none; their designations."""
    cells = [fields for kind, _, fields in records.read(content) if kind == "cell"]
    names = {cell["designation"] for cell in cells}
    added = []
    for cell in cells:
        digits = re.match(r"[A-Z]+(\d+)", cell["designation"])
        start, system, nominal = TWINS.get(cell["system"], (None, None, None))
        if start is None or digits is None or start + digits[1] in names:
            continue
        names.add(start + digits[1])
        added.append(start + digits[1])
        add_cell(content, added[-1], system=system, nominal=nominal, **cell["size"])
    return added


def one_less(benchleaf, content, schema, folder):
    (content / "cell" / f"{GONE}.yaml").unlink()
    run = bind(benchleaf, content, schema, folder)
    if run.returncode != 0:
        return [f"one cell less: {run.stderr.strip()[-400:]}"]
    if any(GONE.upper() in side for side in words_of(folder, "cells-a3")):
        return ["one cell less: it still stands on the chart"]
    return []


def forty_more(benchleaf, content, schema, folder):
    added = add_twins(content)
    added += add_sizes(content, MORE - len(added))
    run = bind(benchleaf, content, schema, folder)
    if run.returncode != 0 or len(added) != MORE:
        return [f"{len(added)} cells more: {run.stderr.strip()[-400:]}"]
    small = list(chart_check.faults_of(folder / "handbook" / "chart-cells-a3.pdf", chart_check.keys_of(content)))
    small = [fault for fault in small if not fault.endswith(": 2 sides")]
    if small:
        return small
    words = {word for side in words_of(folder, "cells-a3") for text in side for word in text.split()}
    return [f"{MORE} cells more: {name} is not on the chart" for name in added if name not in words]


def too_many(benchleaf, content, schema, folder):
    added = add_sizes(content, len(HEIGHTS))
    run = bind(benchleaf, content, schema, folder)
    told = re.search(r"chart 'cells' on a3 landscape: what must stay is ([0-9]+) mm too high", run.stderr)
    if run.returncode != 1 or not told:
        return [f"{len(added)} sizes more: exit {run.returncode}, and no word of how much is missing"]
    return [] if int(told[1]) > 20 else [f"{len(added)} sizes more: only {told[1]} mm are said to be missing"]


def main(benchleaf, project):
    found = []
    for change in (one_less, forty_more, too_many):
        with tempfile.TemporaryDirectory() as place:
            content, folder = pathlib.Path(place) / "content", pathlib.Path(place) / "out"
            shutil.copytree(project / "content", content)
            found += change(benchleaf, content, project / "schema", folder)
    tools.finish(found, "3 changed contents")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
