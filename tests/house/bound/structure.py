"""The structure tree of a tagged PDF, as other programs read it.

Two ways: the tree by qpdf with the words by pdf.js, which takes seconds; and all of it by `pdfinfo -struct-text` of
poppler, which reads a page anew for each of its elements and so takes many minutes for a handbook.
"""

import json
import pathlib
import re

import tools

# What stands in a line of text (ISO 32000-1, 14.8.4.4); everything else parts the text before from the text after.
INLINE = {"Span", "Quote", "Note", "Reference", "Link", "Code"}

ELEMENT = re.compile(r'^( *)([A-Z]\w*)(?: <[^>]*>)?(?: "(.*)")?(?: \(revision \d+\))?(?: \((block|inline)\))?:?$')
CONTENT = re.compile(r'^( *)"(.*)"$', re.DOTALL)


class Element:
    def __init__(self, kind, title, inline):
        self.kind, self.title, self.inline = kind, title, inline
        self.parts = []  # strings and elements, in reading order
        self.pages = set()  # those that it has words on, from 0; known to `read` alone

    def text(self):
        return "".join(part if isinstance(part, str) else part.text() for part in self.parts)

    def elements(self):
        yield self
        for part in self.parts:
            if isinstance(part, Element):
                yield from part.elements()

    def blocks(self):
        """The texts of the tree, parted where a block begins or ends."""
        run = ""
        for part in self.parts:
            if isinstance(part, str):
                run += part
            elif part.inline:
                first, *rest = list(part.blocks()) or [""]
                run += first
                for text in rest:
                    yield run
                    run = text
            else:
                yield run
                yield from part.blocks()
                run = ""
        yield run


def parse(printed):
    """The tree, its root an element of no kind."""
    root = Element("", None, False)
    open_elements = [(-1, root)]
    for line in printed.splitlines():
        content, element = CONTENT.match(line), ELEMENT.match(line)
        match = content or element
        if not match:
            continue
        depth = len(match.group(1))
        while open_elements[-1][0] >= depth:
            open_elements.pop()
        parent = open_elements[-1][1]
        if content:
            parent.parts.append(content.group(2))
        else:
            child = Element(element.group(2), element.group(3), element.group(4) == "inline")
            parent.parts.append(child)
            open_elements.append((depth, child))
    return root


def read_by_poppler(pdf):
    printed = tools.run("pdfinfo", "-enc", "UTF-8", "-struct-text", pdf)
    if printed.returncode != 0:
        raise ValueError(f"{pdf}: pdfinfo: {printed.stderr.strip()}")
    return parse(printed.stdout)


class Tree:
    """Builds elements from the objects of a file and the words of its marked content."""

    def __init__(self, objects, words, pages=None):
        self.objects, self.words = objects, words
        self.pages = pages or {}  # number of a page's object: place of the page

    def value(self, thing):
        """What a reference leads to, or the thing itself."""
        while isinstance(thing, str) and re.fullmatch(r"\d+ \d+ R", thing):
            thing = self.objects[f"obj:{thing}"].get("value")
        return thing

    def element(self, node):
        kind = node["/S"][1:]
        title = node.get("/T")
        element = Element(kind, title[2:] if title else None, kind in INLINE)
        self.add_parts(element, node.get("/K", []), node.get("/Pg"))
        for part in element.parts:
            element.pages |= part.pages if isinstance(part, Element) else set()
        return element

    def add_parts(self, element, kids, page):
        for kid in kids if isinstance(kids, list) else [kids]:
            thing = self.value(kid)
            if isinstance(thing, list):
                self.add_parts(element, thing, page)
            elif isinstance(thing, int):
                self.add_words(element, page, thing)
            elif "/S" in thing:
                element.parts.append(self.element(thing))
            elif "/MCID" in thing:
                self.add_words(element, thing.get("/Pg", page), thing["/MCID"])

    def add_words(self, element, page, content):
        number = page.split()[0]
        element.parts.append(self.words.get(f"{number} {content}", ""))
        if number in self.pages:
            element.pages.add(self.pages[number])


def page_places(tree, node, places):
    """Number of each page's object: its place, from 0, in the order of the page tree."""
    for kid in tree.value(node)["/Kids"]:
        if "/Kids" in tree.value(kid):
            page_places(tree, kid, places)
        else:
            places[kid.split()[0]] = len(places)
    return places


def read(pdf):
    printed = tools.run("qpdf", "--json=2", "--json-key=qpdf", pdf)
    words = tools.node(pathlib.Path(__file__).with_name("marked_words.mjs"), pdf)
    for program, name in ((printed, "qpdf"), (words, "pdf.js")):
        if program.returncode != 0:
            raise ValueError(f"{pdf}: {name}: {program.stderr.strip()}")
    objects = json.loads(printed.stdout)["qpdf"][1]
    tree = Tree(objects, json.loads(words.stdout))
    catalog = tree.value(tree.value(objects["trailer"]["value"])["/Root"])
    tree.pages = page_places(tree, catalog["/Pages"], {})
    root = Element("", None, False)
    tree.add_parts(root, tree.value(catalog["/StructTreeRoot"])["/K"], None)
    return root
