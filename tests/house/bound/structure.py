"""The structure tree of a tagged PDF as poppler prints it: `pdfinfo -struct-text`."""

import re

import tools

ELEMENT = re.compile(r'^( *)([A-Z]\w*)(?: <[^>]*>)?(?: "(.*)")?(?: \(revision \d+\))?(?: \((block|inline)\))?:?$')
CONTENT = re.compile(r'^( *)"(.*)"$', re.DOTALL)


class Element:
    def __init__(self, kind, title, inline):
        self.kind, self.title, self.inline = kind, title, inline
        self.parts = []  # strings and elements, in reading order

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


def read(pdf):
    printed = tools.run("pdfinfo", "-enc", "UTF-8", "-struct-text", pdf)
    if printed.returncode != 0:
        raise ValueError(f"{pdf}: pdfinfo: {printed.stderr.strip()}")
    return parse(printed.stdout)
