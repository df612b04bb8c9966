"""Binds in different folders, time zones and languages give the same bytes.

usage: same_bytes_check.py BENCHLEAF PROJECT
"""

import pathlib
import shutil
import sys
import tempfile

import tools

# Fourteen hours apart and more, so that the day differs as well; no zone file is needed for these names.
ZONES = {"C": "AAA0", "de_DE.UTF-8": "BBB-14", "tr_TR.UTF-8": "CCC+12"}


def locale_fault(language):
    """A language that is not installed would leave the program in C and prove nothing."""
    comma = "." if language == "C" else ","
    shown = tools.run("bash", "-c", "printf %.1f 1", environment={"LC_ALL": language}).stdout
    return [] if shown == f"1{comma}0" else [f"{language} does not work here: printf gives {shown}"]


def tree_of(folder):
    return {str(path.relative_to(folder)): path.read_bytes() for path in sorted(folder.rglob("*")) if path.is_file()}


def differences(one, other):
    return [f"{name} differs" for name in sorted(one.keys() | other.keys()) if one.get(name) != other.get(name)]


def bind(benchleaf, project, language, home):
    """The bound files; content and schema lie in a folder of their own each time."""
    for part in ("content", "schema"):
        shutil.copytree(project / part, home / part)
    run = tools.run(benchleaf, "bind", "content", "--to", "bound", cwd=home, environment={"LC_ALL": language, "TZ": ZONES[language]})
    if run.returncode != 0:
        return {}, [f"{language}: exit {run.returncode}: {run.stderr.strip()[-2000:]}"]
    return tree_of(home / "bound"), []


def main(benchleaf, project):
    found, trees = [], {}
    for language in ZONES:
        found += locale_fault(language)
        with tempfile.TemporaryDirectory(prefix="bound-" + language.lower()) as home:
            trees[language], faults = bind(benchleaf, project, language, pathlib.Path(home))
            found += faults
    if not found:
        for language, tree in trees.items():
            found += [f"{language}: {fault}" for fault in differences(trees["C"], tree)]
        if len(trees["C"]) < 100:
            found.append(f"only {len(trees['C'])} files were bound")
    tools.finish(found, f"{len(trees)} binds of {len(trees['C'])} files")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]).resolve(), pathlib.Path(sys.argv[2]).resolve())
