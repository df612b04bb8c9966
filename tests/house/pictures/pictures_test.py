"""The pictures of README are there, say in words what they show, and are as large as the target `pictures` makes them.

Sizes are read from the header of WebP (RFC 9649, sections 2.5 to 2.7).
"""

import json
import pathlib
import re
import unittest

HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parents[2]
FOLDER = ".github/pictures/"
IMAGE = re.compile(r"!\[([^\]]*)\]\(([^)\s]+)\)")
MOST_BYTES = 400_000


def size_of(data):
    """(width, height) in pixels of a WebP file."""
    if data[:4] != b"RIFF" or data[8:12] != b"WEBP":
        raise ValueError("no WebP")
    kind = data[12:16]
    if kind == b"VP8X":
        return tuple(int.from_bytes(data[at:at + 3], "little") + 1 for at in (24, 27))
    if kind == b"VP8L":
        bits = int.from_bytes(data[21:25], "little")
        return (bits & 0x3FFF) + 1, (bits >> 14 & 0x3FFF) + 1
    return tuple(int.from_bytes(data[at:at + 2], "little") & 0x3FFF for at in (26, 28))


def faults(text, wanted, files):
    """What is wrong with the pictures of a text: `wanted` as pictures.json has them, `files` by their paths."""
    found = []
    shown = {path: words for words, path in IMAGE.findall(text)}
    for path, words in shown.items():
        if len(words.split()) < 8:
            found.append(f"{path}: its words say too little: {words!r}")
        if path not in files:
            found.append(f"{path} is not there")
    for picture in wanted:
        path = FOLDER + picture["name"]
        if path not in shown:
            found.append(f"{path} is not shown")
        if path in files and size_of(files[path]) != (picture["width"], picture["height"]):
            found.append(f"{path} is {size_of(files[path])}, made as {picture['width']} x {picture['height']}")
    made = {FOLDER + picture["name"] for picture in wanted}
    found += [f"{path} is made by nobody" for path in sorted(set(files) - made)]
    if sum(map(len, files.values())) > MOST_BYTES:
        found.append(f"the pictures are larger than {MOST_BYTES} bytes together")
    return found


class Pictures(unittest.TestCase):
    def setUp(self):
        self.wanted = json.loads((HERE / "pictures.json").read_text(encoding="utf-8"))
        self.files = {FOLDER + path.name: path.read_bytes() for path in sorted((ROOT / FOLDER).iterdir())}
        self.readme = (ROOT / "README.md").read_text(encoding="utf-8")

    def test_readme_shows_what_is_made(self):
        self.assertGreaterEqual(len(self.wanted), 3)
        self.assertEqual(faults(self.readme, self.wanted, self.files), [])

    def test_faults_are_found(self):
        files = dict(self.files)
        first, second = sorted(files)[:2]
        files[first] = files[second] = max(files.values(), key=size_of)
        files[FOLDER + "old.webp"] = bytes(MOST_BYTES)
        text = self.readme + f"\n![a page]({FOLDER}gone.webp)\n"
        found = "\n".join(faults(text, self.wanted, files))
        for words in ("too little: 'a page'", "gone.webp is not there", "made as", "old.webp is made by nobody", "together"):
            self.assertIn(words, found)
        self.assertIn("is not shown", "\n".join(faults("", self.wanted, self.files)))


if __name__ == "__main__":
    unittest.main()
