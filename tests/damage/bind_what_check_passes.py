#!/usr/bin/env python3
"""Damages the content one place at a time; whatever `check` passes, `bind` must bind, and neither may crash.

bind_what_check_passes.py PROGRAM CONTENT SCHEMA COUNT [SEED]: the same seed draws the same damages. The ordinary run takes a few;
a long one takes 2,000.
"""

import os
import pathlib
import random
import re
import shutil
import subprocess
import sys
import tempfile

POSITION = re.compile(r"^\S+:\d+:\d+: error: .+ \[[a-z0-9.-]+\]$", re.M)
# Signs that a copied page may bring along: no font of the book has most of them.
STRANGE = ["\u2603", "\U0001F600", "\u0627", "\u4E2D", "\u0301", "\u200B", "\u2044", "\u00AD", "\uFB01", "\u03A9", "\u2212"]


def numbers(text):
    return list(re.finditer(r"\d+(?:\.\d+)?", text))


def words(text):
    return list(re.finditer(r"[A-Za-z][A-Za-z-]{2,}", text))


def spliced(text, match, new):
    return text[: match.start()] + new + text[match.end() :]


def digit_changed(draw, text):
    found = numbers(text)
    if not found:
        return text
    match = draw.choice(found)
    digits = list(match.group())
    place = draw.choice([i for i, sign in enumerate(digits) if sign.isdigit()])
    digits[place] = str(draw.randrange(10))
    return spliced(text, match, "".join(digits))


def number_scaled(draw, text):
    found = numbers(text)
    match = draw.choice(found) if found else None
    return spliced(text, match, draw.choice(["-", "0", "1000", "9" * 9]) + match.group()) if match else text


def letter_changed(draw, text):
    match = draw.choice(words(text))
    word = match.group()
    place = draw.randrange(len(word))
    return spliced(text, match, word[:place] + draw.choice("abcdefghijklmnopqrstuvwxyz") + word[place + 1 :])


def word_dropped(draw, text):
    return spliced(text, draw.choice(words(text)), "")


def word_exchanged(draw, text):
    found = words(text)
    return spliced(text, draw.choice(found), draw.choice(found).group())


def strange_sign(draw, text):
    place = draw.choice([match.end() for match in words(text)])
    return text[:place] + draw.choice(STRANGE) + text[place:]


def long_word(draw, text):
    place = draw.choice([match.end() for match in words(text)])
    return text[:place] + "x" * draw.choice([40, 90, 400]) + text[place:]


def by_lines(change):
    def damage(draw, text):
        lines = text.split("\n")
        change(draw, lines, draw.randrange(len(lines)))
        return "\n".join(lines)

    return damage


def drop_line(_, lines, at):
    del lines[at]


def double_line(_, lines, at):
    lines.insert(at, lines[at])


def exchange_lines(draw, lines, at):
    other = draw.randrange(len(lines))
    lines[at], lines[other] = lines[other], lines[at]


def cut_list(draw, text):
    found = list(re.finditer(r"\[([^\[\]\n]+)\]", text))
    if not found:
        return text
    match = draw.choice(found)
    items = match.group(1).split(",")
    items.pop(draw.randrange(len(items)))
    return spliced(text, match, "[" + ",".join(items) + "]")


DAMAGES = [
    digit_changed, number_scaled, letter_changed, letter_changed, word_dropped, word_exchanged, strange_sign, long_word,
    by_lines(drop_line), by_lines(double_line), by_lines(exchange_lines), cut_list,
]  # fmt: skip


def block_damaged(damage):
    """The same damage within a fenced block alone, where one is in the text."""

    def change(draw, text):
        blocks = list(re.finditer(r"(?<=```bench\n).*?(?=```)", text, re.S))
        if not blocks:
            return damage(draw, text)
        match = draw.choice(blocks)
        return spliced(text, match, damage(draw, match.group()))

    return change


TOGETHER = 24  # so many damages are bound at once


class Trial:
    """A copy of the content, damaged and mended again."""

    def __init__(self, program, content, schema, folder):
        self.program, self.schema, self.folder = program, schema, folder
        self.content = folder / "content"
        # A build without the program of the pages binds no pages.
        has_pages = (pathlib.Path(program).parent / "program.js").exists()
        self.bound = ["--to", "bound"] + ([] if has_pages else ["--only", "pdf,chart,facts"])
        shutil.copytree(content, self.content)
        files = sorted(path for path in self.content.rglob("*") if path.suffix in (".yaml", ".md") and path.name != "README.md")
        self.whole = {path: path.read_text(encoding="utf-8") for path in files}
        composed = [path for path in files if path.parent.name in ("page", "chart") or path.name == "handbook.yaml"]
        self.pools = [files, composed]

    def run(self, *words):
        command = [self.program, *words, str(self.content), "--schema", str(self.schema), "--quiet"]
        ran = subprocess.run(command, cwd=self.folder, capture_output=True, text=True, env={**os.environ, "COLUMNS": "100"})
        return ran.returncode, ran.stderr

    def run_on(self, damaged, *words):
        for path, text in damaged.items():
            path.write_text(text, encoding="utf-8")
        try:
            return self.run(*words)
        finally:
            for path in damaged:
                path.write_text(self.whole[path], encoding="utf-8")

    def draw(self, draw):
        path = draw.choice(draw.choice(self.pools))
        damage = draw.choice(DAMAGES)
        if path.parent.name == "page" and draw.random() < 0.5:
            damage = block_damaged(damage)
        return path, damage(draw, self.whole[path])

    def told(self, damaged):
        return "".join(f"{path.relative_to(self.content)} {difference(self.whole[path], text)}\n" for path, text in damaged.items())

    def bind(self, damaged):
        """What `bind` refuses of damages that `check` passes one by one: found by halves, since most bind together."""
        code, said = self.run_on(damaged, "check")
        if code == 0:
            code, said = self.run_on(damaged, "bind", *self.bound)
        if code == 0:
            return []
        if len(damaged) == 1:
            return [f"{self.told(damaged)}check passed it, bind: {code}\n{said}"]
        items = list(damaged.items())
        return self.bind(dict(items[: len(items) // 2])) + self.bind(dict(items[len(items) // 2 :]))


def difference(whole, text):
    old, new = whole.split("\n"), text.split("\n")
    for i, (one, other) in enumerate(zip(old, new)):
        if one != other:
            return f"line {i + 1}: {one!r} -> {other!r}"
    return f"{len(old)} -> {len(new)} lines"


def refused_well(code, said):
    return code == 1 and POSITION.search(said) is not None


def tell(faults):
    for fault in faults:
        print(fault, flush=True)
    return len(faults)


def main(program, content, schema, count, seed="1"):
    draw = random.Random(int(seed))
    passed = wrong = 0
    together = {}
    with tempfile.TemporaryDirectory() as folder:
        trial = Trial(str(pathlib.Path(program).resolve()), content, pathlib.Path(schema).resolve(), pathlib.Path(folder))
        for _ in range(int(count)):
            path, text = trial.draw(draw)
            code, said = trial.run_on({path: text}, "check")
            if code != 0:
                wrong += tell([] if refused_well(code, said) else [f"{trial.told({path: text})}check: {code}\n{said}"])
                continue
            passed += 1
            if path in together or len(together) == TOGETHER:
                wrong += tell(trial.bind(together))
                together = {}
            together[path] = text
        wrong += tell(trial.bind(together))
    print(f"{count} damaged contents: {passed} passed by check and bound, {wrong} wrong")
    # A run in which check refuses everything would show nothing.
    return 1 if wrong or passed * 20 < int(count) else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
