"""No file of the project names a place that exists on one machine only.

In: the project's root. Out: one line for each such name.
"""

import os
import re

# Places of the distribution (/usr/share/fonts and the like) are the same on every machine and are allowed.
PLACES = ("work", "root", "home", "tmp", "mnt", "media", "opt", "srv", "Users")
PATTERN = re.compile(rb"(?<![\w.~*}\-])/(?:" + "|".join(PLACES).encode() + rb")/\w[\w./-]*")
NOT_OURS = {".git", "node_modules", "__pycache__", "out", ".cache"}


def faults_in(name, data):
    """`data` is the bytes of the file `name`."""
    return [f"{name}:{number}: {match.group().decode(errors='replace')}"
            for number, line in enumerate(data.splitlines(), 1) for match in PATTERN.finditer(line)]


def files(root):
    for folder, folders, names in os.walk(root):
        folders[:] = sorted(set(folders) - NOT_OURS)
        # In a second worktree .git is a file.
        for name in sorted(set(names) - NOT_OURS):
            yield os.path.join(folder, name)


def faults(root):
    found = []
    for path in files(root):
        with open(path, "rb") as file:
            found += faults_in(os.path.relpath(path, root), file.read())
    return found
