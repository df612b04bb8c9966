"""The content is spelt as hunspell's British dictionary or the house's own list has it.

In: the project's root. Out: one line for each word of the content that neither knows.
The house's list is tests/house/house_words.txt, one word a line, sorted, each needed by the content.
"""

import os
import re
import subprocess

import yaml

HERE = os.path.dirname(os.path.abspath(__file__))
HOUSE = os.path.join(HERE, "house_words.txt")

# Values under these keys are names, codes and references and no prose.
NOT_PROSE = {
    "id", "aliases", "basis", "cas", "formula", "index-number", "address", "designation", "short", "short-name", "trade-number",
    "consumer-number", "signs", "statement", "class", "licence", "see", "using", "on", "with", "reaches", "inside", "meets", "next",
    "tools", "parts", "cells", "cautions", "procedure", "source", "sources", "record", "records", "shows", "papers", "language", "pages",
    "kinds", "grades", "item", "module", "display", "value", "shown-by", "verdict", "scale", "mark", "material", "substance", "allowed", "name", "caution", "left-by", "answers", "joined", "contact", "seats",
}
# A fenced block, the target of a link and an inline code are no prose either.
FENCE = re.compile(r"```.*?```", re.S)
TARGET = re.compile(r"\]\([^)]*\)")
CODE = re.compile(r"`[^`]*`")
# A word with a digit in it, a unit with a sign or a run of capitals is a code.
CODED = re.compile(r"\S*\d\S*|\b[A-Z]{2,}\b")
WORD = re.compile(r"[^\W\d_]+(?:['’][^\W\d_]+)*")


def texts_of(value, key=None):
    """Every string of a record that is prose."""
    if isinstance(value, dict):
        for name, inner in value.items():
            if name not in NOT_PROSE:
                yield from texts_of(inner, name)
    elif isinstance(value, list):
        for inner in value:
            yield from texts_of(inner, key)
    elif isinstance(value, str):
        yield value


def prose_of(path, text):
    if path.endswith(".yaml"):
        return "\n".join(texts_of(yaml.safe_load(text)))
    head, _, body = text.partition("\n---\n") if text.startswith("---\n") else ("", "", text)
    titles = "\n".join(texts_of(yaml.safe_load(head.lstrip("-\n")) or {})) if head else ""
    return titles + "\n" + CODE.sub(" ", TARGET.sub("]", FENCE.sub(" ", body)))


def words_of(prose):
    return {word.replace("’", "'") for word in WORD.findall(CODED.sub(" ", prose)) if len(word) > 1}


def unknown_to_hunspell(words):
    run = subprocess.run(["hunspell", "-d", "en_GB", "-i", "UTF-8", "-l"], input="\n".join(sorted(words)) + "\n",
                         capture_output=True, text=True, check=True)
    return set(run.stdout.split())


def house_words():
    with open(HOUSE, encoding="utf-8") as file:
        return [line.rstrip("\n") for line in file]


def words_by_file(root):
    found = {}
    for place, folders, names in os.walk(os.path.join(root, "content")):
        folders.sort()
        for name in sorted(names):
            path = os.path.join(place, name)
            with open(path, encoding="utf-8") as file:
                found[os.path.relpath(path, root)] = words_of(prose_of(path, file.read()))
    return found


def misspelt(words):
    """Of `words`, those that neither dictionary knows; a house word also stands at the beginning of a sentence."""
    house = set(house_words())
    house |= {word[0].upper() + word[1:] for word in house}
    return unknown_to_hunspell(words) - house


def faults(root):
    by_file = words_by_file(root)
    wrong = misspelt(set().union(*by_file.values()))
    return [f"{path}: {word}" for path, words in by_file.items() for word in sorted(words & wrong)]
