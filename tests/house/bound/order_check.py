"""In the reading order of each handbook, every caution of a procedure stands after the step before it and before the step
that it guards; those of the head stand before the first step.

usage: order_check.py FOLDER CONTENT
"""

import pathlib
import re
import sys

import plain_text
import records
import structure
import tools


def packed(wording):
    return re.sub(r"[\s\-\u2010]", "", plain_text.plain(wording))


class Reading:
    """A text in reading order that is read forwards."""

    def __init__(self, text):
        self.text, self.at = text, 0

    def go_to(self, wording):
        """Whether the wording follows; then what comes after it is read next."""
        found = self.text.find(packed(wording), self.at)
        if found >= 0:
            self.at = found + len(packed(wording))
        return found >= 0

    def has_before(self, wording, next_step):
        """Whether the wording stands between here and the next step."""
        end = self.text.find(packed(next_step), self.at)
        return end >= 0 and self.text.find(packed(wording), self.at, end) >= 0


def wordings_of(caution):
    """What may stand before a step: the short form, harm and what keeps it off, or the hazard in full."""
    short = caution.get("short")
    return ([f"{short['harm']} {short['avoid']}"] if short else []) + [caution["hazard"]]


def faults_of(text, name, procedure, hazards):
    """What of one procedure is out of order in the packed text of a handbook, and how many cautions were looked at."""
    reading, faults, seen = Reading(text), [], 0
    if not reading.go_to(procedure.get("purpose", procedure["title"])):
        return [f"procedure/{name}: its purpose is not in the text"], 0
    waiting = [one.split("/")[-1] for one in procedure.get("cautions", [])]
    for item in procedure["steps"]:
        if "caution" in item:
            waiting.append(item["caution"].split("/")[-1])
            continue
        for caution in waiting:
            seen += 1
            if not any(reading.has_before(wording, item["do"]) for wording in hazards[caution]):
                faults.append(f'procedure/{name}: {caution} does not stand before "{item["do"][:40]}"')
        waiting = []
        if not reading.go_to(item["do"]):
            faults.append(f'procedure/{name}: "{item["do"][:40]}" does not follow')
    return faults, seen


def main(folder, content):
    read = list(records.read(content))
    hazards = {name: wordings_of(fields) for kind, name, fields in read if kind == "caution"}
    procedures = {name: fields for kind, name, fields in read if kind == "procedure"}
    handbooks = sorted(folder.glob("handbook-*.pdf"))
    faults = [] if handbooks else ["no handbook"]
    seen = 0
    for pdf in handbooks:
        text = plain_text.Page(structure.read(pdf).blocks()).packed
        for name, procedure in sorted(procedures.items()):
            found, cautions = faults_of(text, name, procedure, hazards)
            faults += [f"{pdf.name}: {fault}" for fault in found]
            seen += cautions
    if seen < 40:
        faults.append(f"only {seen} cautions were looked at")
    tools.finish(faults, f"{seen} cautions of {len(procedures)} procedures, {len(handbooks)} handbooks")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
