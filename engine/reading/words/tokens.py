"""Text to tokens, in one pass: numbers, clock times, words, signs and line ends, each with its place.

number = digits [ "." digits ]        a letter O among digits is a zero; a half sign adds a half
hours  = 1h10 | 1 h 10 min                hours and minutes: 1.10
clock  = 1:30 | 1'30" | 40"           in seconds
word   = letters, with ' or & inside (farmer's, c&j), or a letter and a digit (A1, t2b)
sign   = x @ , / - + > ( ) : ; | = ? ! . # % & ~ $ (of any money)

All the signs that people use for one thing become one: × ✕ * х (Cyrillic) are "x", · and • are ";", all dashes "-".
A decimal comma is left as a comma here: whether it parts two numbers is a question of grammar.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Callable, Mapping
from decimal import Decimal
from functools import lru_cache, partial
from operator import itemgetter
from typing import NamedTuple

from engine.reading.words.kept import Kept
from engine.reading.words.token_shapes import Shape

LONGEST_TEXT = 4_096
LONGEST_NUMBER = 9
"""A number with more digits than this is no amount of anything lifted: it is kept as text, never as a quantity."""

TOO_BIG = Decimal(10) ** LONGEST_NUMBER
HALF = Decimal("0.5")


class Token(NamedTuple):
    """`glued`: no space stood before it. `value`: of a number, clock (seconds) or ordinal."""

    shape: Shape
    text: str
    start: int
    end: int
    glued: bool
    value: Decimal | None = None


SHAPE: Callable[[Token], Shape] = itemgetter(Token._fields.index("shape"))
WRITTEN: Callable[[Token], str] = itemgetter(Token._fields.index("text"))
"""A field taken of all tokens at once takes a fifth of a look at each."""


FULL_WIDTH = range(0xFF01, 0xFF5F)
"""Letters, digits and signs as wide as those of East Asian writing; the plain ones follow in the same order."""

CROSS = "❌"
"""Behind a set it says that it was missed; a tick says nothing more than the set does."""
# One character each way.
SIGNS = {
    **{chr(wide): chr(wide - FULL_WIDTH.start + ord("!")) for wide in FULL_WIDTH},
    **dict.fromkeys("×✕✖∗⋅╳＊", "×"),
    **dict.fromkeys("–—−‐‑‒―﹣－", "-"),
    **dict.fromkeys("·•‣▪●◦", ";"),
    **dict.fromkeys("→➔➜⇒»", ">"),
    **dict.fromkeys("’‘`´′ʼ", "'"),
    **dict.fromkeys("“”„″«", '"'),
    **dict.fromkeys("\t\u00a0\u202f\u2009\u2007\u2003\u2002\u3000", " "),
    **dict.fromkeys("\r\u2028\u2029\v\f\x85", "\n"),
    **dict.fromkeys("\u200b\u200c\u200d\u2060\ufeff\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u00ad", " "),
    "、": ",",
    **dict.fromkeys("✗✘☒", CROSS),
    "⁄": "/",
}
NOT_SEEN = "\u00ad\u200b\u200c\u200d\u2060\ufeff"
UNSEEN = re.compile(rf"(?<=[^\W\d_])[{NOT_SEEN}]+(?=[^\W\d_])|(?<=\d)[{NOT_SEEN}]+(?=\d)")
"""Signs that nobody sees, within a word or a number; elsewhere they part as a space does."""
POINT = re.compile(r"(?:(?<=\d[27])·(?=5)|(?<=\d)·(?=[27]5))(?=\d{1,2}\ ?(?:[xXхХ×*]|kg|lb|кг))")
"""A middle dot that is a decimal point: "62·5 x 8". In "60·5 x 3" it parts the load from its reps."""
CLEAN = str.maketrans(SIGNS)
CONTROL = {code: " " for code in (*range(9), *range(14, 32), 127)}

LETTER = r"[^\W\d_½]"
UNITS_AHEAD = ("kg", "kgs", "kilos", "lb", "lbs", "pounds", "кг", r"\ds", r"\dm", r"\d\ s", r"\d\ m", "bw", "bar",
               r"\do")  # fmt: skip
AFTER_NO_WORD = "|".join((rf"(?:(?<!{LETTER})", *(f"(?<={unit})" for unit in UNITS_AHEAD))) + ")"
"""An x counts as the sign behind a unit too: 80kgx5, 80 kgx5."""

# The first groups are short roads: most of a message is plain numbers, plain words, and an x between digits. They take
# only what the groups below them would take alike.
PATTERN = re.compile(
    rf"""
    \ ?+(?:
    (?P<plainnumber>\d++(?:\.\d++)?(?:(?=[x,@/)+;kl\n]|-(?![йяюг])|\Z|\ (?!\ ?[h½]))
      |(?![ho'"½\ \-ªº]|[.:]\d|st|nd|rd|th|i?[èe]me|[èe]re|ste|de|:[ea](?!{LETTER})|[ea](?!{LETTER}))))
  | (?P<plaintimes>(?<=\d)x(?=\d)|(?<=\d\ )x(?=\ \d))
  | (?P<plainsign>[,@/+():;|?!.#%&~\[\]°>"'$€£❌]|[-=](?!>))
  | (?P<plainword>(?![xх]){LETTER}++(?![\d'&]))
  | (?P<line>\n)
  | (?P<hours>\d{{1,2}}h[0-5]\d(?!\d)(?:\ ?min(?!{LETTER}))?|\d{{1,2}}\ ?h\ [0-5]?\d\ ?min(?!{LETTER}))
  | (?P<clock>\d{{1,3}}:[0-5]\d(?!\d|:\d|[.,]\d)|\d{{1,2}}'[0-5]?\d(?:"|'')?(?!\d)|\d{{1,3}}(?:"|''))
  | (?P<ordinal>\d{{1,2}}(?:st|nd|rd|th|i?[èe]me|[èe]re|ste|de|ª|:[ea]|-(?:й|я|ю|го|ой))(?!{LETTER})
      |[1-9]º|(?<=(?:la|de)\ )\d{{1,2}}[ea](?!{LETTER}))
  | (?P<number>\d+(?:[oO]{{1,2}}\d{{0,6}}(?!(?![xX](?:\d|\b)|[kK][gG][sS]?\b|[lL][bB][sS]?\b){LETTER}))?
      (?:\.\d+)?(?:\ ?½)?|½)
  | (?P<bullet>^\ *\*(?=\ ))
  | (?P<times>×+|(?=[xх]){AFTER_NO_WORD}[xх]{{1,2}}(?!{LETTER})|(?<=\d)x(?=(?:amrap|max)\b)|(?<=\d)[cCzZ](?=\d)|\*)
  | (?P<label>(?:wk?|s)\d{{1,2}}[dj]\d(?!\w)|[A-Za-z]\d(?!\w|[.,]\d|\ ?[xXхХ×]\ ?\d))
  | (?P<unitword>(?:kgs?|kilos|lbs?|pounds|кг|bw|bar|se[ck]|s|m)(?=[xXхХ]\d))
  | (?P<word>{LETTER}\d{LETTER}(?![\w])|{LETTER}(?:{LETTER}|['&](?={LETTER}))*)
  | (?P<sign>->|=>)
    )
    """,
    re.VERBOSE | re.IGNORECASE | re.MULTILINE,
)

MONEY = "$"
ONE_SIGN = {
    **{sign: sign for sign in ">@,/-+():;|=?!.#%&~\"'°❌"},
    **dict.fromkeys("$€£", MONEY),
    "->": ">",
    "=>": ">",
    "[": "(",
    "]": ")",
}


def clean(text: str) -> str:
    """The text with its many signs for one thing made one, and cut at what a chat may send."""
    text = text[:LONGEST_TEXT]
    if text.isascii():
        return text if text.isprintable() else text.replace("\r", "\n").replace("\t", " ").translate(CONTROL)
    seen = UNSEEN.sub("", unicodedata.normalize("NFC", text))
    return POINT.sub(".", seen).translate(CLEAN).translate(CONTROL)


LOOKS_BESIDE = re.compile(
    r"^$|^[×*½]|^[xх](?!\d)|^h$|^[sm][xх]|^\d{1,2}[ea]|\dh|[*×]$|(?<!\w)[a-wyz]\d$", re.IGNORECASE
)
"""What stands between two spaces and may be told by what stands beyond them: "80 x 5", "1 h 10", "7 ½", "la 4a",
"a1 x5".
"""


def tokenize(cleaned: str) -> list[Token]:
    """The tokens of a cleaned text, in order. Characters that belong to no token are passed over."""
    found: list[Token] = []
    ahead = 0
    for part in cleaned.split(" "):
        tokens = PARTS[part]
        if tokens is None:
            return cut(cleaned)
        for shape, text, start, end, glued, value in tokens:
            found.append(tuple.__new__(Token, (shape, text, ahead + start, ahead + end, glued, value)))
        ahead += len(part) + 1
    return found


def _part(text: str) -> tuple[Token, ...] | None:
    """The tokens of what stands between two spaces; None where they may be others beside what stands around it."""
    return None if LOOKS_BESIDE.search(text) else tuple(cut(text))


def cut(cleaned: str) -> list[Token]:
    """The tokens of a cleaned text, by one walk over the whole of it."""
    found: list[Token] = []
    before = -1
    for match in PATTERN.finditer(cleaned):
        group = match.lastindex or 0
        start, end = match.span(group)
        shape, text, value = TOLD[group][match[group]]
        found.append(tuple.__new__(Token, (shape, text, start, end, start == before, value)))
        before = end
    return found


def told(group: str, text: str) -> tuple[Shape, str, Decimal | None]:
    """What a group of the pattern tells by this text: its shape, how it is spelled everywhere, what it counts."""
    shape, spelled, counted = GROUPS[group]
    text = text if spelled is None else spelled(text)
    return shape, text, None if counted is None else counted(text)


@lru_cache(maxsize=4_096)
def amount(text: str) -> Decimal:
    """What a written number counts; TOO_BIG for one that no lifter means."""
    half = text.endswith("½")
    digits = text.rstrip("½ ").replace("o", "0").replace("O", "0") or "0"
    if len(digits) > LONGEST_NUMBER:
        return TOO_BIG
    value = Decimal(digits)
    return value + HALF if half else value


def _clock_seconds(text: str) -> Decimal:
    if ":" in text or text.rstrip("\"'").count("'") == 1:
        minutes, _, seconds = text.rstrip("\"'").replace(":", "'").partition("'")
        return Decimal(int(minutes) * 60 + int(seconds or 0))
    return Decimal(int(text.rstrip("\"'")))


def _hours(text: str) -> Decimal:
    """ "1h10" is 1.10: hours, then minutes."""
    hours, _, minutes = text.lower().partition("h")
    return Decimal(f"{hours.strip()}.{int(minutes.strip('min ')):02}")


def _place_counted(text: str) -> Decimal:
    return Decimal(text[: 1 + text[1:2].isdecimal()])


def _bullet(text: str) -> str:
    return "*"


def _times(text: str) -> str:
    return "x"


GROUPS: Mapping[str, tuple[Shape, Callable[[str], str] | None, Callable[[str], Decimal] | None]] = {
    "plainnumber": (Shape.NUMBER, None, amount),
    "plaintimes": (Shape.SIGN, _times, None),
    "plainsign": (Shape.SIGN, ONE_SIGN.__getitem__, None),
    "plainword": (Shape.WORD, str.lower, None),
    "hours": (Shape.HOURS, None, _hours),
    "clock": (Shape.CLOCK, None, _clock_seconds),
    "ordinal": (Shape.ORDINAL, None, _place_counted),
    "number": (Shape.NUMBER, None, amount),
    "bullet": (Shape.SIGN, _bullet, None),
    "times": (Shape.SIGN, _times, None),
    "label": (Shape.WORD, str.lower, None),
    "unitword": (Shape.WORD, str.lower, None),
    "word": (Shape.WORD, str.lower, None),
    "line": (Shape.LINE, None, None),
    "sign": (Shape.SIGN, ONE_SIGN.__getitem__, None),
}
"""What a group of the pattern tells: its shape, how it is spelled everywhere, and what it counts."""
TOLD: Mapping[int, Kept[tuple[Shape, str, Decimal | None]]] = {
    place: Kept(partial(told, group)) for group, place in PATTERN.groupindex.items()
}
"""What the groups told before, by the place of the group in the pattern."""
PARTS = Kept(_part)
