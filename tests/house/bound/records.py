"""The records of a content folder as plain strings, read without any code of ours."""

import yaml

# The field that heads a record on the page; `title` where a kind is not named here.
HEADING = {"cell": "designation", "term": "term"}
CAUTION_TEXTS = ("hazard", "harm", "avoid", "first-aid")


def read(content):
    """(kind, id, fields) for each record, in order of names."""
    for path in sorted(content.glob("*/*")):
        text = path.read_text(encoding="utf-8")
        if path.suffix == ".md":
            text = text.split("---\n")[1]
        elif path.suffix != ".yaml":
            continue
        yield path.parent.name, path.stem, yaml.load(text, Loader=yaml.BaseLoader)


# What paper leaves to the screen: the demonstration and what describes the charts. What plans a ticket has no entry anywhere.
SCREEN_KINDS = {"chart", "watch", "stock"}
TICKET_KINDS = {"job", "hold", "question", "look"}


def screen_pages(content):
    """Ids of the pages of chapters that handbook.yaml keeps to the screen."""
    head = content / "handbook.yaml"
    if not head.exists():
        return set()
    handbook = yaml.load(head.read_text(encoding="utf-8"), Loader=yaml.BaseLoader)
    return {page for chapter in handbook["chapters"] if chapter.get("part") == "screen" for page in chapter.get("pages", [])}


def on_paper(kind, fields):
    invented = any(basis.get("trust") == "invented" for basis in fields.get("basis", {}).values())
    return kind not in SCREEN_KINDS | TICKET_KINDS and not invented


def wordings(content):
    """(where, wording) for every heading of a record on paper and every text of a caution."""
    kept = screen_pages(content)
    for kind, name, fields in read(content):
        if not on_paper(kind, fields) or (kind == "page" and name in kept):
            continue
        heading = HEADING.get(kind, "title")
        yield f"{kind}/{name} {heading}", fields[heading]
        if kind == "caution":
            for field in CAUTION_TEXTS:
                if field in fields:
                    yield f"{kind}/{name} {field}", fields[field]
