#!/usr/bin/env python3
"""Holds PDF files against those rules of PDF/UA-1 (ISO 14289-1) that a program can check.

    ua_rules.py FILE...        prints each fault; exit code 1 if there is one
    ua_rules.py --self FILE    plants faults into a sound file, one after the other, and fails unless each is found

The files are read by qpdf, so nothing here shares code with the writer.
"""
import base64
import copy
import json
import re
import subprocess
import sys

PAINTING = {"S", "s", "f", "F", "f*", "B", "B*", "b", "b*", "Tj", "TJ", "'", '"', "sh", "Do"}
TOKEN = re.compile(rb"\((?:\\.|[^\\()])*\)|<<|>>|<[0-9A-Fa-f\s]*>|[\[\]]|/[^\s()<>\[\]/%]*|[^\s()<>\[\]/%]+")
HEADINGS = ("/H1", "/H2", "/H3", "/H4", "/H5", "/H6")


class File:
    """The objects of a file as qpdf gives them."""

    def __init__(self, path):
        printed = subprocess.run(["qpdf", "--json=2", "--json-stream-data=inline", "--decode-level=all", path],
                                 check=True, capture_output=True)
        whole = json.loads(printed.stdout)
        self.objects = whole["qpdf"][1]
        self.page_numbers = [page["object"] for page in whole["pages"]]
        self.contents = [page["contents"] for page in whole["pages"]]

    def get(self, value):
        """The value behind a reference, or the value itself; a stream is given as its dictionary."""
        while isinstance(value, str) and re.fullmatch(r"\d+ 0 R", value):
            entry = self.objects.get("obj:" + value, {"value": None})
            value = entry["stream"]["dict"] if "stream" in entry else entry["value"]
        return value

    def kids(self, element):
        """What stands below an element, references as they are."""
        below = element.get("/K")
        return as_list(self.get(below) if isinstance(self.get(below), list) else below)

    def catalog(self):
        return self.get(self.objects["trailer"]["value"]["/Root"])

    def bytes_of(self, reference):
        return base64.b64decode(self.objects["obj:" + reference]["stream"]["data"])

    def content(self, page):
        return b"\n".join(self.bytes_of(reference) for reference in self.contents[page])


def as_list(value):
    if value is None:
        return []
    return value if isinstance(value, list) else [value]


def text_of(value):
    return value[2:] if isinstance(value, str) and value.startswith(("u:", "b:")) else ""


def tree_pairs(file, node, key):
    """The pairs of a name tree or number tree."""
    node = file.get(node) or {}
    flat = file.get(node.get(key)) or []
    yield from zip(flat[0::2], flat[1::2])
    for kid in file.get(node.get("/Kids")) or []:
        yield from tree_pairs(file, kid, key)


def content_faults(file, page):
    """Marked content of one page: its faults, and the identifiers it has."""
    faults, identifiers, open_marks, last = [], [], [], []
    for token in TOKEN.findall(file.content(page)):
        word = token.decode("latin-1")
        if word in ("BMC", "BDC"):
            open_marks.append("artifact" if "/Artifact" in last else "content" if "/MCID" in last else "other")
            if "/MCID" in last:
                identifiers.append(int(last[last.index("/MCID") + 1]))
        elif word == "EMC":
            if not open_marks:
                faults.append("a mark is closed that was never opened")
            else:
                open_marks.pop()
        elif word in PAINTING and not {"artifact", "content"} & set(open_marks):
            faults.append(f"{word} paints outside marked content (7.1)")
        if open_marks.count("content") > 1 or {"artifact", "content"} <= set(open_marks):
            faults.append("content and artifact are nested (7.1)")
        last = [] if re.fullmatch(r"[A-Za-z*'\"]+[01]?", word) else last + [word]
    if open_marks:
        faults.append("a mark stays open")
    if sorted(identifiers) != list(range(len(identifiers))):
        faults.append("identifiers of marked content are not 0, 1, 2 and so on")
    return [f"page {page + 1}: {fault}" for fault in faults], set(identifiers)


class Structure:
    """Walks the structure tree once, noting what every piece of content and every annotation belongs to."""

    def __init__(self, file):
        self.file = file
        self.faults = []
        self.content = {}      # (page reference, identifier) -> element reference
        self.annotations = {}  # annotation reference -> element reference
        self.names = {}
        self.heads_wanted = []
        self.headings = []
        root = file.catalog().get("/StructTreeRoot")
        self.root = file.get(root) or {}
        for kid in file.kids(self.root):
            self.walk(kid, root, None)
        for name in self.heads_wanted:
            if name not in self.names:
                self.faults.append(f"a cell refers to the head {name}, which is not there (7.5)")

    def walk(self, reference, parent, parent_role):
        element = self.file.get(reference)
        role = element.get("/S")
        if element.get("/P") != parent:
            self.faults.append(f"{role} {reference} names another parent than the one it hangs on")
        self.check_element(element, role, reference)
        for kid in self.file.kids(element):
            self.take_kid(kid, element, role, reference)

    def take_kid(self, kid, element, role, reference):
        value = self.file.get(kid)
        if isinstance(value, int):
            self.own((element.get("/Pg"), value), reference)
        elif value.get("/Type") == "/MCR":
            self.own((value.get("/Pg", element.get("/Pg")), value["/MCID"]), reference)
        elif value.get("/Type") == "/OBJR":
            if role != "/Link":
                self.faults.append(f"an annotation hangs on {role} (7.18.5)")
            self.annotations[value["/Obj"]] = reference
        else:
            self.walk(kid, reference, role)

    def own(self, piece, reference):
        if piece in self.content:
            self.faults.append(f"content {piece} belongs to two elements")
        self.content[piece] = reference

    def check_element(self, element, role, reference):
        attributes = {}
        for attribute in as_list(self.file.get(element.get("/A"))):
            attributes.update(self.file.get(attribute))
        if role in ("/Figure", "/Formula") and not text_of(element.get("/Alt")) and not text_of(element.get("/ActualText")):
            self.faults.append(f"{role} {reference} has no words (7.3, 7.7)")
        if role == "/Figure" and "/BBox" not in attributes:
            self.faults.append(f"{role} {reference} has no box (ISO 32000-1, 14.8.5.4.3)")
        if role == "/TH" and "/Scope" not in attributes and "/ID" not in element:
            self.faults.append(f"TH {reference} heads neither row nor column (7.5)")
        if role == "/Note" and "/ID" not in element:
            self.faults.append(f"Note {reference} has no name (7.9)")
        if role == "/L" and "/ListNumbering" not in attributes and self.has_labels(element):
            self.faults.append(f"L {reference} has labels but does not say how it is numbered (7.6)")
        if "/ID" in element:
            name = element["/ID"]
            if name in self.names:
                self.faults.append(f"two elements have the name {name} (7.9)")
            self.names[name] = reference
        self.heads_wanted += as_list(attributes.get("/Headers"))
        if role in HEADINGS:
            self.headings.append(int(role[2]))

    def has_labels(self, element):
        items = [self.file.get(item) for item in self.file.kids(element)]
        kids = [self.file.get(kid) for item in items if isinstance(item, dict) for kid in self.file.kids(item)]
        return any(isinstance(kid, dict) and kid.get("/S") == "/Lbl" for kid in kids)


def document_faults(file):
    catalog = file.catalog()
    info = file.get(file.objects["trailer"]["value"].get("/Info")) or {}
    if not text_of(info.get("/Title")):
        yield "the document has no title (7.1)"
    if not (file.get(catalog.get("/ViewerPreferences")) or {}).get("/DisplayDocTitle"):
        yield "the window does not show the title (7.1)"
    if not text_of(catalog.get("/Lang")):
        yield "the document has no language (7.2)"
    if not (file.get(catalog.get("/MarkInfo")) or {}).get("/Marked"):
        yield "the document does not say that it is tagged (7.1)"
    if b"pdfuaid:part>1<" not in file.bytes_of(catalog["/Metadata"]):
        yield "the metadata do not name PDF/UA-1 (clause 5)"


def parent_tree_faults(file, structure, identifiers):
    """The way back from content and annotations to their elements must match the way there."""
    parents = {key: file.get(value) if isinstance(file.get(value), list) else value
               for key, value in tree_pairs(file, structure.root.get("/ParentTree"), "/Nums")}
    for page, reference in enumerate(file.page_numbers):
        entries = file.get(reference)
        owners = parents.get(entries.get("/StructParents"), [])
        if len(owners) != len(identifiers[page]):
            yield f"page {page + 1}: {len(identifiers[page])} pieces of content, {len(owners)} in the parent tree"
        for identifier in identifiers[page]:
            owner = structure.content.get((reference, identifier))
            if owner is None:
                yield f"page {page + 1}: content {identifier} belongs to no element (7.1)"
            elif identifier < len(owners) and owners[identifier] != owner:
                yield f"page {page + 1}: the parent tree gives content {identifier} to another element"
        if "/Annots" in entries and entries.get("/Tabs") != "/S":
            yield f"page {page + 1}: annotations are not visited in order of structure (7.18.3)"
        for annotation in as_list(file.get(entries.get("/Annots"))):
            value = file.get(annotation)
            if annotation not in structure.annotations:
                yield f"page {page + 1}: a link hangs on no element (7.18.5)"
            elif parents.get(value.get("/StructParent")) != structure.annotations[annotation]:
                yield f"page {page + 1}: the parent tree gives a link to another element"
            if not text_of(value.get("/Contents")):
                yield f"page {page + 1}: a link says nothing (7.18.5)"
    pages = set(file.page_numbers)
    for page, identifier in structure.content:
        if page not in pages or identifier not in identifiers[file.page_numbers.index(page)]:
            yield f"an element has content {identifier} of {page}, which is not there"


def font_faults(file):
    for entry in file.objects.values():
        font = entry.get("value")
        if not isinstance(font, dict) or font.get("/Type") != "/Font":
            continue
        if font.get("/Subtype") in ("/Type0", "/Type3") and "/ToUnicode" not in font:
            yield f"{font.get('/BaseFont', 'the font of the signs')} has no map to texts (7.21.7)"
        if font.get("/Subtype") not in ("/Type0", "/Type3") and "/FontFile2" not in (file.get(font.get("/FontDescriptor")) or {}):
            yield f"{font['/BaseFont']} is not embedded (7.21.4)"


def heading_faults(headings):
    """Headings may go up any number of levels, but go down one at a time."""
    before = 0
    for level in headings:
        if level > before + 1:
            yield f"a heading of level {level} below one of level {before} (7.4.2)"
        before = level


def faults_of(file):
    faults, identifiers = list(document_faults(file)), []
    for page in range(len(file.page_numbers)):
        page_faults, found = content_faults(file, page)
        faults += page_faults
        identifiers.append(found)
    structure = Structure(file)
    return (faults + structure.faults + list(heading_faults(structure.headings)) + list(parent_tree_faults(file, structure, identifiers))
            + list(font_faults(file)))


def elements(file, role):
    return [entry["value"] for entry in file.objects.values()
            if isinstance(entry.get("value"), dict) and entry["value"].get("/S") == role]


def first_of(file, kind, key):
    return next(entry["value"] for entry in file.objects.values()
                if isinstance(entry.get("value"), dict) and entry["value"].get(kind[0]) == kind[1] and key in entry["value"])


def replace_content(file, old, new):
    stream = file.objects["obj:" + file.contents[0][0]]["stream"]
    data = base64.b64decode(stream["data"])
    assert old in data, old
    stream["data"] = base64.b64encode(data.replace(old, new, 1)).decode()


PLANTS = {
    "no title": lambda f: f.get(f.objects["trailer"]["value"]["/Info"]).pop("/Title"),
    "no language": lambda f: f.catalog().pop("/Lang"),
    "no mark of tagging": lambda f: f.catalog().pop("/MarkInfo"),
    "title not shown": lambda f: f.catalog().pop("/ViewerPreferences"),
    "figure without words": lambda f: elements(f, "/Figure")[0].pop("/Alt"),
    "figure without box": lambda f: elements(f, "/Figure")[0].pop("/A"),
    "head cell without scope and name": lambda f: next(e for e in elements(f, "/TH") if "/ID" not in e).pop("/A"),
    "head that is not there": lambda f: [e for e in elements(f, "/TH") if "/ID" in e][-1].pop("/ID"),
    "note without name": lambda f: elements(f, "/Note")[0].pop("/ID"),
    "list without numbering": lambda f: elements(f, "/L")[0].pop("/A"),
    "wrong parent": lambda f: elements(f, "/LBody")[0].update({"/P": "1 0 R"}),
    "content of no element": lambda f: elements(f, "/Caption")[0].pop("/K"),
    "content of two elements": lambda f: elements(f, "/Caption")[0].update({"/K": [0, 0]}),
    "heading level left out": lambda f: elements(f, "/H1")[-1].update({"/S": "/H3"}),
    "link without words": lambda f: first_of(f, ("/Subtype", "/Link"), "/Contents").pop("/Contents"),
    "link in no element": lambda f: elements(f, "/Link")[0].update({"/K": elements(f, "/Link")[0]["/K"][:-1]}),
    "link with a wrong key": lambda f: first_of(f, ("/Subtype", "/Link"), "/StructParent").update({"/StructParent": 0}),
    "tab order": lambda f: next(f.get(p) for p in f.page_numbers if "/Annots" in f.get(p)).pop("/Tabs"),
    "font not embedded": lambda f: first_of(f, ("/Type", "/FontDescriptor"), "/FontFile2").pop("/FontFile2"),
    "signs without words": lambda f: first_of(f, ("/Subtype", "/Type3"), "/ToUnicode").pop("/ToUnicode"),
    "font without texts": lambda f: first_of(f, ("/Subtype", "/Type0"), "/ToUnicode").pop("/ToUnicode"),
    "paint outside marks": lambda f: replace_content(f, b"/Artifact BMC", b"q Q"),
    "mark left open": lambda f: replace_content(f, b"EMC\n", b"\n"),
    "identifier twice": lambda f: replace_content(f, b"/MCID 1>>", b"/MCID 0>>"),
}


def self_test(path):
    """Every fault that is planted must be found, and the sound file must have none."""
    sound = File(path)
    failed = [f"the sound file: {fault}" for fault in faults_of(sound)]
    for name, plant in PLANTS.items():
        spoilt = copy.deepcopy(sound)
        plant(spoilt)
        if not faults_of(spoilt):
            failed.append(f"not found: {name}")
    return failed


def main(arguments):
    if arguments[:1] == ["--self"]:
        faults = self_test(arguments[1])
        print(f"{len(PLANTS)} faults planted")
    else:
        faults = [f"{path}: {fault}" for path in arguments for fault in faults_of(File(path))]
    print("\n".join(faults))
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
