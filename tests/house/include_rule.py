"""The direction of dependencies: a folder of src includes itself and what the table folders.txt lets it see.

In: the table and a src tree. Out: one line for each #include that breaks the rule.
"""

import pathlib
import re

INCLUDE = re.compile(r'^\s*#\s*include\s*"([^"]*)"')
SUFFIXES = {".h", ".cc", ".def"}


def read_table(path):
    """Folder -> set of folders that it may include, itself among them."""
    table = {}
    for line in path.read_text(encoding="utf-8").splitlines():
        if line and not line.startswith("#"):
            folder, _, allowed = line.partition(":")
            table[folder] = {folder, *allowed.split()}
    return table


def faults(src, table):
    """Every breach below `src`, as `file:line: what`."""
    found = [f"{path.name}: a folder that the table does not have" for path in sorted(src.iterdir())
             if path.is_dir() and path.name not in table]
    for path in sorted(src.rglob("*")):
        if path.suffix not in SUFFIXES:
            continue
        name = path.relative_to(src)
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            match = INCLUDE.match(line)
            if match:
                fault = fault_of(folder_of(name, table), match.group(1), table)
                if fault:
                    found.append(f"{name}:{number}: {fault}")
    return found


def folder_of(path, table):
    """The innermost folder of the table that holds a path below src; else its first part."""
    for parent in pathlib.PurePosixPath(path).parents:
        if str(parent) in table:
            return str(parent)
    return pathlib.PurePosixPath(path).parts[0]


def fault_of(folder, included, table):
    target = folder_of(included, table)
    if "/" not in included or target not in table:
        return f'"{included}" does not start with a folder of src'
    if target not in table.get(folder, {folder}):
        return f'{folder} may not include "{included}"'
    return None
