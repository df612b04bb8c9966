"""The figures of a tagged PDF as qpdf reads them: what they say in words, and where they stand."""

import json
import typing

import tools


class Figure(typing.NamedTuple):
    page: int  # the first is 1
    alt: str
    box: tuple  # left, top, right, bottom in points from the top left of the page


def text_of(value):
    """A string of qpdf's JSON, which marks text with `u:`."""
    return value.removeprefix("u:")


def read(pdf):
    parts = json.loads(tools.output("qpdf", "--json", "--json-key=qpdf", "--json-key=pages", pdf))
    objects = parts["qpdf"][1]
    numbers = {page["object"]: number for number, page in enumerate(parts["pages"], 1)}

    def value(reference):
        return objects[f"obj:{reference}"]["value"] if isinstance(reference, str) else reference

    def height_of(page):
        """Of its own box, or of one that pages share."""
        return value(page["/MediaBox"])[3] if "/MediaBox" in page else height_of(value(page["/Parent"]))

    heights = {name: height_of(value(name)) for name in numbers}
    for entry in objects.values():
        element = entry.get("value")
        if not isinstance(element, dict) or element.get("/S") != "/Figure" or element.get("/Pg") not in numbers:
            continue
        attributes = value(element.get("/A", {}))
        if "/BBox" not in attributes:
            continue
        left, low, right, high = attributes["/BBox"]
        height = heights[element["/Pg"]]
        yield Figure(numbers[element["/Pg"]], text_of(element.get("/Alt", "")), (left, height - high, right, height - low))
