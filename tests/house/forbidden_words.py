"""No brand, maker or person is named in the project, except in the title of a cited work.

The names themselves stand nowhere: `forbidden_words.sha256` holds the SHA-256 of each, in small letters, two words parted by one blank.
In: the project's root. Out: one line for each word of a file whose hash is in the list. To add a name, add its hash:

    printf %s 'two words' | sha256sum
"""

import hashlib
import os
import re

HERE = os.path.dirname(os.path.abspath(__file__))
LIST = os.path.join(HERE, "forbidden_words.sha256")
FOLDERS = ("content", "schema", "src", "tests", ".ci", ".github")
NOT_OURS = {"node_modules", "__pycache__", ".cache"}
PICTURE = ".webp"  # its bytes spell short words by chance
WORD = re.compile(r"[^\W\d_]+")
HUMP = re.compile(r"(?<=[a-z])(?=[A-Z])")


def read_list(path=LIST):
    with open(path, encoding="ascii") as file:
        return {line.strip() for line in file if line.strip()}


def hash_of(text):
    return hashlib.sha256(text.encode("utf-8")).hexdigest()


def words_of(line):
    """Words of a line in small letters, `TwoWords` as one word and as two."""
    words = []
    for match in WORD.finditer(line):
        whole = match.group()
        words.append(whole.lower())
        humps = HUMP.split(whole)
        if len(humps) > 1:
            words += [hump.lower() for hump in humps]
    return words


def faults_in(name, text, forbidden, known):
    """`known` keeps the verdict on each word, since most words come back."""
    found = []
    for number, line in enumerate(text.splitlines(), 1):
        words = words_of(line)
        for said in words + [f"{one} {other}" for one, other in zip(words, words[1:])]:
            if said not in known:
                known[said] = hash_of(said) in forbidden
            if known[said]:
                found.append(f"{name}:{number}: {said}")
    return found


def files(root):
    for folder in FOLDERS:
        for place, folders, names in os.walk(os.path.join(root, folder)):
            folders[:] = sorted(set(folders) - NOT_OURS)
            yield from (os.path.join(place, name) for name in sorted(names))
    for name in sorted(os.listdir(root)):
        path = os.path.join(root, name)
        if os.path.isfile(path) and not name.startswith(".git"):
            yield path


def faults(root):
    forbidden, known, found = read_list(), {}, []
    for path in files(root):
        name = os.path.relpath(path, root)
        if not name.endswith(PICTURE):
            with open(path, encoding="utf-8", errors="replace") as file:
                found += faults_in(name, file.read(), forbidden, known)
        found += faults_in("file name", name, forbidden, known)
    return found
