"""Shorthands taught: "sq means front squat", "from now on sq is front squat", "call front squat sq".

taught = [ lasting ] short link name [ lasting ] | "call" name short
"is" and "be" link only where the message says that it is for good, or begins as teaching does.
"""

from __future__ import annotations

from engine.catalogue.catalogue import Catalogue
from engine.reading.values import Act

MOST_WORDS = 3
LASTING = (
    "from now on", "from here on", "from here on out", "in future", "in the future", "going forward", "for me",
    "for the future", "please remember that", "please remember", "remember that", "remember", "note that", "please",
    "teach", "learn", "always", "in my log", "just so you know", "fyi", "ab jetzt", "künftig", "a partir de ahora",
    "para mí", "à partir de maintenant", "desormais", "désormais", "pour moi", "d'ora in poi", "per me",
    "daqui em diante", "para mim", "vanaf nu", "voor mij", "od teraz", "dla mnie", "отныне", "теперь", "для меня",
    "från och med nu", "för mig",
)  # fmt: skip
PLAIN_LINKS = (
    "always means", "will always mean", "will mean", "should mean", "means", "stands for", "is short for",
    "short for", "is shorthand for", "=", "is always", "bedeutet", "heißt", "steht für", "significa",
    "quiere decir", "quer dizer", "veut dire", "signifie", "vuol dire", "betekent", "staat voor", "oznacza",
    "to znaczy", "означает", "значит", "betyder", "står för",
)  # fmt: skip
LOOSE_LINKS = (
    "i mean", "will be", "should be", "is my", "is", "it's", "its", "as", "be", "mean", "for", "ist", "es", "est",
    "è", "é", "to", "это", "är",
)  # fmt: skip
OPENINGS = (
    "when i say", "when i write", "when i type", "if i say", "if i write", "if i type", "whenever i say", "let",
    "treat", "read", "take", "log", "i use", "i write", "i say", "by", "with",
)  # fmt: skip
ARTICLES = ("the ", "a ", "an ", "my ")
CALLED = ("i call", "call", "let's call", "lets call")
TEACHING = frozenset(phrase.split()[0] for phrase in (*LASTING, *OPENINGS, *CALLED, *PLAIN_LINKS))
"""A message that teaches has one of these words in it."""


def taught_of(text: str, catalogue: Catalogue, plainly: bool = False) -> Act | None:
    """The shorthand and its exercise; None where the message teaches none. `plainly`: its beginning has said so."""
    words = text.lower().split()
    may_teach = plainly or not TEACHING.isdisjoint([word.strip(",:.!") for word in words])
    return _taught(" ".join(words).strip(" .!"), catalogue, plainly) if may_teach else None


def _taught(said: str, catalogue: Catalogue, plainly: bool) -> Act | None:
    said, lasting = _without_lasting(said)
    for opening in OPENINGS:
        if said.startswith(f"{opening} "):
            said, plainly = said[len(opening) + 1 :], True
            break
    for called in CALLED:
        if said.startswith(f"{called} ") and (found := _called(said[len(called) + 1 :], catalogue)) is not None:
            return found
    for link in PLAIN_LINKS + (LOOSE_LINKS if plainly or lasting else ()):
        if said.count(f" {link} ") == 1:
            short, _, long = said.partition(f" {link} ")
            if (found := _pair(short, long, catalogue)) is not None:
                return found
    return None


def _without_lasting(said: str) -> tuple[str, bool]:
    lasting = False
    if not said.startswith(LASTING) and not said.endswith(LASTING):
        return said, lasting
    for _ in range(2):
        for phrase in LASTING:
            if said.startswith((f"{phrase} ", f"{phrase}, ", f"{phrase}: ")):
                said, lasting = said[len(phrase) :].lstrip(" ,:"), lasting or phrase != "please"
            if said.endswith((f" {phrase}", f", {phrase}")):
                said, lasting = said[: -len(phrase)].rstrip(" ,"), lasting or phrase != "please"
    return said, lasting


def _pair(short: str, long: str, catalogue: Catalogue) -> Act | None:
    short, long = short.strip(" \"'“”,:"), long.strip(" \"'“”.,!:")
    for article in ARTICLES:
        long, short = long.removeprefix(article), short.removeprefix(article)
    if not short or len(short.split()) > MOST_WORDS or any(letter.isdigit() for letter in short + long):
        return None
    owners = catalogue.owners(long) or catalogue.closest(long)
    return Act("teach", exercise=owners[0], text=short) if len(owners) == 1 else None


def _called(said: str, catalogue: Catalogue) -> Act | None:
    """ "call front squat sq": the name first."""
    words = said.split()
    for length in range(len(words) - 1, 0, -1):
        short = " ".join(words[length:]).removeprefix("as ")
        found = _pair(short, " ".join(words[:length]), catalogue)
        if found is not None and catalogue.owners(" ".join(words[:length]).removeprefix("the ")):
            return found
    return None
