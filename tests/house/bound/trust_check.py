"""Half or more of the numeric facts that records state rest on a standard, a handbook or a data set.

usage: trust_check.py FOLDER CONTENT

Counted over stated facts with a number, one for each record and path: the rows of a list within a record count once, derived facts and the
published tables not at all. Invented facts of the demonstration count as weak. The shares are printed, chapter by chapter.
"""

import collections
import json
import pathlib
import re
import sys

import yaml

import tools

STRONG = ("standard", "handbook", "dataset")
FEWEST = 500  # numeric facts of the whole content: with fewer the count has lost them
ROW = re.compile(r"\.\d+(?=\.|$)")


def trust_of_facts(lines):
    """(record, path) -> trust; of several rows under one path the first one stands for all."""
    found = {}
    for line in lines:
        fact = json.loads(line)
        number = any(fact[end] is not None for end in ("value", "low", "high"))
        record, _, path = fact["id"].partition("#")
        if number and not fact["derived"] and not record.startswith("table/"):
            found.setdefault((record, ROW.sub("", path)), fact["trust"])
    return found


def shares(trusts, chapters):
    """Chapter -> how many facts of each trust, `all` last."""
    counted = collections.defaultdict(collections.Counter)
    for (record, _), trust in trusts.items():
        counted[chapters.get(record.split("/")[0], "none")][trust] += 1
    counted["all"] = sum(counted.values(), collections.Counter())
    return counted


def strong_share(counter):
    return sum(counter[trust] for trust in STRONG) / max(1, sum(counter.values()))


def faults_in(lines, chapters, fewest=FEWEST):
    counted = shares(trust_of_facts(lines), chapters)
    for chapter, counter in counted.items():
        print(f"{chapter}: {strong_share(counter):.0%} of {sum(counter.values())}, {dict(sorted(counter.items()))}")
    faults = []
    if sum(counted["all"].values()) < fewest:
        faults.append(f"only {sum(counted['all'].values())} numeric facts were found")
    if strong_share(counted["all"]) < 0.5:
        faults.append(f"{strong_share(counted['all']):.1%} of the numeric facts rest on a standard, a handbook or a data set")
    return faults


def chapters_of(content):
    handbook = yaml.safe_load((content / "handbook.yaml").read_text(encoding="utf-8"))
    return {kind: chapter["id"] for chapter in handbook["chapters"] for kind in chapter["kinds"]}


if __name__ == "__main__":
    folder, content = map(pathlib.Path, sys.argv[1:3])
    facts = (folder / "facts.jsonl").read_text(encoding="utf-8").splitlines()
    tools.finish(faults_in(facts, chapters_of(content)), f"{len(facts)} facts")
