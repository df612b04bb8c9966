#!/usr/bin/env python3
"""measure.py TABLE [PROGRAM [ARGUMENT...]]: how many queries of a table bring what is right first.

A line of the table is query, kind and what is right, parted by tabs; lines that start with # and a head `query` are passed over. What is
right is a list parted by bars: a record; `verdict:LIQUID+MATERIAL=CODE`; `mix:ONE+OTHER=CODE`; `not-known:MATERIAL` (a liquid that is
not on file); `none` (nothing may come). PROGRAM reads one query a line and writes one answer a line, in the JSON of `find --json`; without
one, `benchleaf find --json` is asked for each query.
"""
import json
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

FIND = ["out/build/quick/benchleaf", "find", "--json"]
CODES = {"never": "never", "with care": "with-care", "on a swab only": "with-care", "rinse between": "with-care",
         "no harm": "ok", "no harm in the open": "ok", "not known": "not-known"}


def table(path):
    for line in Path(path).read_text(encoding="utf-8").splitlines():
        parts = line.split("\t")
        if line and not line.startswith("#") and parts[0] != "query" and len(parts) > 2:
            yield parts[0], parts[1], parts[2]


def ask_find(query):
    done = subprocess.run([*FIND, "--", query], capture_output=True, text=True)
    try:
        return json.loads(done.stdout)
    except json.JSONDecodeError:
        return {"hits": [], "fault": done.stderr}


def answers(queries, program):
    if not program:
        with ThreadPoolExecutor(2) as pool:
            return list(pool.map(ask_find, queries))
    done = subprocess.run(program, input="\n".join(queries) + "\n", capture_output=True, text=True, check=True)
    return [json.loads(line) for line in done.stdout.splitlines()]


def said(answer):
    """What stands first, in the words of the table."""
    hits = answer.get("hits", [])
    if not hits:
        return {"none"}
    first = hits[0]
    names = {first["record"]}
    one = first.get("verdicts") or []
    if not first.get("pair") and " on " not in first["title"] and " and " not in first["title"]:
        return names
    for verdict in one[:1]:
        code = CODES.get(verdict["verdict"], verdict["verdict"])
        names.add(f"verdict:{first['record']}+{verdict['record'].split('/')[-1]}={code}".replace("chemistry/", ""))
        pair = [first["record"].split("/")[-1], verdict["record"].split("/")[-1]]
        names.update(f"mix:{a}+{b}={code}" for a, b in (pair, pair[::-1]))
        if code == "not-known":
            names.add(f"not-known:{pair[1]}")
    return names


def main():
    rows = list(table(sys.argv[1]))
    kinds, missed = {}, []
    for (query, kind, right), answer in zip(rows, answers([row[0] for row in rows], sys.argv[2:])):
        good = bool(said(answer) & set(right.split("|")))
        of_kind = kinds.setdefault(kind, [0, 0])
        of_kind[0] += good
        of_kind[1] += 1
        if not good:
            missed.append(f"  {kind}: {query}: {' '.join(sorted(said(answer)))[:70]} (right: {right[:90]})")
    print("\n".join(missed))
    for kind, (good, all_of_kind) in kinds.items():
        print(f"{kind:20}{good:4} of {all_of_kind}")
    good, count = (sum(pair[i] for pair in kinds.values()) for i in (0, 1))
    print(f"{'all':20}{good:4} of {count}  {100 * good / count:.1f} %")


if __name__ == "__main__":
    main()
