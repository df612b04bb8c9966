"""Every value that is set as a fact, on screen and on paper, is the fact of facts.jsonl with the same printed text.

usage: fact_check.py FOLDER
"""

import html.parser
import json
import pathlib
import sys

import plain_text
import structure
import tools

FEWEST = 300  # facts set in one output: with fewer the marks were lost


class DataElements(html.parser.HTMLParser):
    """Collects (fact id, text, value) of each element that carries data-fact; they do not nest in each other."""

    def __init__(self):
        super().__init__()
        self.found = []
        self.tag, self.depth = None, 0

    def handle_starttag(self, tag, attrs):
        attributes = dict(attrs)
        if self.tag is None and "data-fact" in attributes:
            self.tag, self.depth = tag, 0
            self.found.append([attributes["data-fact"], "", attributes.get("value")])
        if tag == self.tag:
            self.depth += 1

    def handle_endtag(self, tag):
        if tag == self.tag:
            self.depth -= 1
            if self.depth == 0:
                self.tag = None

    def handle_data(self, data):
        if self.tag is not None:
            self.found[-1][1] += data


def facts_on_screen(text):
    """(fact id, text) pairs; the machine-readable value of an element counts as a second text."""
    reader = DataElements()
    reader.feed(text)
    reader.close()
    for name, printed, value in reader.found:
        yield name, printed
        if value is not None:
            yield name, value


def facts_on_paper(root):
    """(fact id, text) of each Span whose title is the id of a fact."""
    for element in root.elements():
        if element.kind == "Span" and element.title and "#" in element.title:
            yield element.title, element.text()


def read_facts(path):
    with open(path, encoding="utf-8") as lines:
        facts = [json.loads(line) for line in lines]
    return {fact["id"]: plain_text.plain(fact["printed"]) for fact in facts}


def without_unit(facts):
    """As a chart sets a measure or a charge: the head of its column or panel has the unit."""
    return {name: printed.removesuffix("mm").removesuffix("mAh").rstrip() for name, printed in facts.items()}


def faults_of(where, seen, facts, in_millimetres=None):
    found = []
    for name, printed in seen:
        if name not in facts:
            found.append(f"{where}: {name} is no fact")
        elif plain_text.plain(printed) not in (facts[name], (in_millimetres or facts)[name]):
            found.append(f'{where}: {name} is set as "{plain_text.plain(printed)}", the fact is "{facts[name]}"')
    return found


def main(folder):
    facts = read_facts(folder / "facts.jsonl")
    found, total = [], 0
    outputs = {"html": [], **{pdf.name: list(facts_on_paper(structure.read(pdf))) for pdf in sorted(folder.glob("*.pdf"))}}
    for page in sorted(folder.rglob("*.html")):
        seen = list(facts_on_screen(page.read_text(encoding="utf-8")))
        found += faults_of(page.relative_to(folder), seen, facts)
        outputs["html"] += seen
    for name, seen in outputs.items():
        if name != "html":
            found += faults_of(name, seen, facts, without_unit(facts) if name.startswith("chart-") else None)
        if (name == "html" or name.startswith("handbook")) and len(seen) < FEWEST:
            found.append(f"{name}: only {len(seen)} values are set as facts")
        total += len(seen)
        print(f"{name}: {len(seen)} values, {len({fact for fact, _ in seen})} facts")
    tools.finish(found, f"{total} values against {len(facts)} facts")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]))
