"""Text as a reader compares it: what only sets type (thin spaces, soft hyphens, ligatures, curled quotes) is levelled."""

import re
import unicodedata

# Allowed breaks and joiners; figure and punctuation spaces, which only align numbers.
UNSEEN = dict.fromkeys(map(ord, "\u00ad\u200b\u2060\ufeff\u2007\u2008"))
LEVELLED = str.maketrans({"\u2212": "-", "\u2018": "'", "\u2019": "'", "\u201c": '"', "\u201d": '"'})


def plain(text):
    """Words parted by single spaces."""
    return " ".join(unicodedata.normalize("NFKC", text.translate(UNSEEN)).translate(LEVELLED).split())


class Page:
    """A long text that finds a wording whatever its line breaks and end-of-line hyphens."""

    def __init__(self, blocks):
        self.text = "\n".join(plain(block) for block in blocks)
        self.places = [place for place, sign in enumerate(self.text) if not self.skipped(sign)]
        self.packed = "".join(self.text[place] for place in self.places)

    @staticmethod
    def skipped(sign):
        return sign.isspace() or sign in "-\u2010"

    def has(self, wording):
        """Whether the wording stands there as whole words: SR41 is not found in SR416."""
        packed = re.sub(r"[\s\-\u2010]", "", plain(wording))
        at = self.packed.find(packed)
        while at >= 0:
            if self.whole(self.places[at], self.places[at + len(packed) - 1]):
                return True
            at = self.packed.find(packed, at + 1)
        return False

    def whole(self, first, last):
        before = self.text[first - 1] if first > 0 else " "
        after = self.text[last + 1] if last + 1 < len(self.text) else " "
        return not (before.isalnum() and self.text[first].isalnum()) and not (after.isalnum() and self.text[last].isalnum())
