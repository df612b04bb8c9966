"""How the facts that a bench uses are trusted, by kind: trust_by_kind.py FACTS.jsonl [MOST].

Prints a table. With MOST, a percentage, it fails where more of all these facts rest on memory than that.
"""

import collections
import json
import pathlib
import sys

KINDS = "cell module gasket crystal chemistry residue material abrasive procedure symptom caution".split()
TRUSTS = "standard handbook dataset trade memory invented given".split()
# Fewer than the content has had since its first edition: a count of next to nothing proves nothing.
FEWEST = 3000


def count(lines):
    """Facts by kind and trust; records of other kinds, tables and pages are left out."""
    counted = {kind: collections.Counter() for kind in KINDS}
    for line in lines:
        fact = json.loads(line)
        kind = fact["id"].split("/", 1)[0]
        if kind in counted:
            counted[kind][fact["trust"]] += 1
    return counted


def memory_share(counted):
    """Percentage of all facts that rest on memory."""
    facts = sum(sum(row.values()) for row in counted.values())
    return 100 * sum(row["memory"] for row in counted.values()) / facts if facts else 0.0


def table(counted):
    rows = [["kind", "facts", *TRUSTS]]
    for kind, row in counted.items():
        rows.append([kind, sum(row.values()), *(row[trust] for trust in TRUSTS)])
    rows.append(["all", *(sum(row[at] for row in rows[1:]) for at in range(1, len(rows[0])))])
    lines = ["| " + " | ".join(map(str, row)) + " |" for row in rows]
    lines.insert(1, "|---" + "|---:" * (len(rows[0]) - 1) + "|")
    return "\n".join(lines)


def faults(counted, most, fewest=FEWEST):
    found = []
    facts = sum(sum(row.values()) for row in counted.values())
    if facts < fewest:
        found.append(f"only {facts} facts of these kinds")
    if memory_share(counted) > most:
        found.append(f"{memory_share(counted):.1f} % of {facts} facts rest on memory, expected at most {most:g} %")
    return found


if __name__ == "__main__":
    counts = count(pathlib.Path(sys.argv[1]).read_text(encoding="utf-8").splitlines())
    print(table(counts))
    print(f"on memory: {memory_share(counts):.1f} %")
    wrong = faults(counts, float(sys.argv[2])) if len(sys.argv) > 2 else []
    sys.exit("\n".join(wrong) if wrong else 0)
