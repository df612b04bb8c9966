#!/usr/bin/env python3
"""Holds every value of records and tables whose source is a Debian package against that package.

Masses of the elements: bodr 10-2, elements.xml. Molar masses: the same, or python3-periodictable 1.6.0, by the record's source.
Moduli and Poisson's ratios of plastics: the material cards of freecad-common 0.20.2. Constants: GNU units. Grain sizes and
statement texts, which come from packages as well, are held by outside_tables.py. Cells of the open cell tables are held
against cell_rows.txt, which was copied from the public file and not from the records. Run in the project's root.
"""
import configparser
import glob
import re
import subprocess
import sys
import xml.etree.ElementTree

import yaml

sys.path.append("/usr/lib/python3/dist-packages")  # where Debian's packages lie, whichever interpreter was found
import periodictable  # noqa: E402

ELEMENTS = "/usr/share/bodr/elements.xml"
CARDS = ".ci/node_modules/.cards"
CARD_OF = {"polyamide": "PA6-Generic", "ptfe": "PTFE-Generic"}
CARD_FIELD = {"modulus": "YoungsModulus", "poisson": "PoissonRatio", "density": "Density"}
GPA = {"GPa": 1, "MPa": 1e-3, "kPa": 1e-6}
WITHIN = 5e-5  # of a molar mass: the spread of five libraries is 1.3e-5, a record prints three decimals
SEEN = {"element": 31, "molar mass": 27, "card": 4, "constant": 2, "cell row": 167}  # a check that looks at less has looked at nothing

failures, counted = [], dict.fromkeys(SEEN, 0)


def compare(kind, name, found, expected, within):
    counted[kind] += 1
    if abs(found - expected) > within * abs(expected):
        failures.append(f"{name}: found {found:g}, but the package has {expected:g}")


def number(text):
    return float(re.match(r"-?[\d.]+", text).group())


def bodr_masses():
    space = "{http://www.xml-cml.org/schema}"
    masses = {}
    for atom in xml.etree.ElementTree.parse(ELEMENTS).getroot().iter(space + "atom"):
        for scalar in atom.iter(space + "scalar"):
            if scalar.get("dictRef") == "bo:mass":
                masses[atom.get("id")] = float(scalar.text)
    return masses


def mass_by(masses, formula):
    parts = re.findall(r"([A-Z][a-z]?)(\d*)", formula)
    if "".join(element + many for element, many in parts) != formula:
        sys.exit(f"the formula {formula} has a form that this script does not read")
    return sum(masses[element] * int(many or 1) for element, many in parts)


def records(kind):
    for path in sorted(glob.glob(f"content/{kind}/*.yaml")):
        with open(path, encoding="utf-8") as file:
            yield yaml.safe_load(file)


def source_of(record, field):
    basis = record.get("basis", {}).get(field, {})
    return basis.get("source") if basis.get("trust") == "dataset" else None


def table(name):
    with open(f"schema/tables/{name}.yaml", encoding="utf-8") as file:
        return yaml.safe_load(file)


def check_masses():
    masses = bodr_masses()
    for row in table("atomic-masses")["rows"]:
        compare("element", "table atomic-masses, " + row["symbol"], number(row["mass"]), masses[row["symbol"]], 1e-9)
    for record in records("substance"):
        source = source_of(record, "molar-mass")
        if source == "blue-obelisk-data":
            expected = mass_by(masses, record["formula"])
        elif source == "open-element-data":
            expected = periodictable.formula(record["formula"]).mass
        else:
            continue
        compare("molar mass", "substance/" + record["id"], number(record["molar-mass"]), expected, WITHIN)


def check_cards():
    for record in records("material"):
        for field, name in CARD_FIELD.items():
            if source_of(record, field) != "material-cards":
                continue
            card = configparser.ConfigParser(interpolation=None, comment_prefixes=(";",), strict=False)
            card.read(f"{CARDS}/{CARD_OF[record['id']]}.FCMat", encoding="utf-8")
            text = card["Mechanical"][name]
            unit = text.split()[-1] if field == "modulus" else ""
            ends = [float(part) for part in re.findall(r"\d+(?:\.\d+)?", record[field])][:2]
            expected = number(text) * GPA.get(unit, 1)
            counted["card"] += 1
            if not min(ends) * (1 - 1e-9) <= expected <= max(ends) * (1 + 1e-9):
                failures.append(f"material/{record['id']}: found {record[field]}, but the card has {text}")


def check_constants():
    asked = {"molar-volume": ("R 293.15 K / 101.325 kPa", "L/mol"), "gravity": ("gravity", "m/s^2")}
    rows = {row["name"]: row["value"] for row in table("physical-constants")["rows"] if "trust" not in row}
    for name, (expression, unit) in asked.items():
        printed = subprocess.run(["units", "-t", expression, unit], capture_output=True, text=True, check=True).stdout
        compare("constant", "table physical-constants, " + name, number(rows[name]), float(printed), 2e-5)
    if set(rows) != set(asked):
        failures.append(f"table physical-constants: rows of the package are {sorted(rows)}, and {sorted(asked)} are asked for")


def micro(text):
    return number(text) * (1000 if text.endswith("mA") else 1)


def check_cells():
    with open("tests/standards/cell_rows.txt", encoding="utf-8") as lines:
        rows = {row[0].lower(): [float(part) for part in row[1:]] for row in map(str.split, lines) if row[0] != "#"}
    for record in records("cell"):
        charge, load, diameter, height = rows.get(record["id"], [None] * 4)
        capacity = record.get("capacity")
        if charge is None:
            continue
        if source_of(record, "capacity") == "open-cell-tables":
            compare("cell row", f"cell/{record['id']}#capacity", number(capacity["value"]), charge, 0)
            compare("cell row", f"cell/{record['id']}#capacity.load", micro(capacity["load"]), load, 0)
        for field, expected in (("diameter", diameter), ("height", height)):
            sources = {source_of(record, "size." + field), source_of(record, "size")}
            if "open-cell-tables" in sources and source_of(record, "size." + field) in (None, "open-cell-tables"):
                compare("cell row", f"cell/{record['id']}#size.{field}", number(record["size"][field]), expected, 0)


check_cells()
check_masses()
check_cards()
check_constants()
for kind, least in SEEN.items():
    if counted[kind] < least:
        failures.append(f"only {counted[kind]} values of the kind {kind} were found, of {least} that there are at least")
print("\n".join(failures) if failures else f"{sum(counted.values())} values agree with their packages")
sys.exit(1 if failures else 0)
