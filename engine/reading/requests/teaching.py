"""Shorthands taught: "sq means front squat", "from now on sq is front squat", "call front squat sq".

taught = [ chatter ] [ lasting ] short [ lasting ] link name [ "not" name ] [ lasting ] | "call" name short
       | name "=" short
"is" and "be" link only where the message says that it is for good, or begins as teaching does.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import lru_cache

from engine.catalogue.catalogue import Catalogue
from engine.reading.values import Act
from engine.reading.words.kept import Kept
from engine.reading.words.lexicon import plain_word
from engine.reading.words.phrasebook import phrasebook, spoken

MOST_WORDS = 3
ARTICLES = ("the ", "a ", "an ", "my ")
CALLED = ("i call", "call", "lets call")
EQUALS = "="


def taught_of(text: str, catalogue: Catalogue, plainly: bool = False) -> Act | None:
    """The shorthand and its exercise; None where the message teaches none. `plainly`: its beginning has said so."""
    words = text.lower().split()
    if not plainly and not _may_teach(words):
        return None
    said = " ".join(words).replace("'", "").strip(" .!")
    alike = len(plain_word(said)) == len(said)
    return _taught(said if alike else plain_word(said), catalogue, plainly)


def _may_teach(words: Sequence[str]) -> bool:
    """Whether a word links a shorthand and a name, or may link them beside one that makes it last or denies."""
    told: frozenset[str] = frozenset().union(*[TEACHING[word.strip(",:.!")] for word in words])
    return LINKS in told or (MAY_LINK in told and OPENS in told)


def _teaching(word: str) -> frozenset[str]:
    said = spoken(word)
    return frozenset(use for use, words in _telling_words().items() if said in words)


TEACHING = Kept(_teaching)
"""What a word may do where a message teaches: link, perhaps link, or make it last, open it or deny."""
LINKS, MAY_LINK, OPENS = "links", "may link", "opens"


@lru_cache(maxsize=1)
def _telling_words() -> Mapping[str, frozenset[str]]:
    """The longest word of each phrase of each use: without it the phrase cannot stand."""
    uses = {
        LINKS: (*CALLED, *_phrases("means"), EQUALS),
        MAY_LINK: _phrases("maymean"),
        OPENS: (*_phrases("lasting"), *_phrases("teaches"), *[denying.strip() for denying in DENYING]),
    }
    return {use: frozenset(max(phrase.split(), key=len) for phrase in phrases) for use, phrases in uses.items()}


@lru_cache(maxsize=8)
def _phrases(cue: str) -> tuple[str, ...]:
    """The phrases of a cue, longer ones first."""
    return tuple(sorted(phrasebook().cues[cue], key=lambda phrase: (-len(phrase), phrase)))


def _taught(said: str, catalogue: Catalogue, plainly: bool) -> Act | None:
    said, lasting = _without_lasting(_without_chatter(said))
    said, contrasted = _without_contrast(said, catalogue)
    said, within = _without_lasting_within(said)
    lasting = lasting or within
    plain = plain_word(said)
    opening = next((opening for opening in _phrases("teaches") if plain.startswith(f"{opening} ")), "")
    if opening:
        said, plainly = said[len(opening) + 1 :], True
    plain = plain_word(said)
    for called in CALLED:
        if plain.startswith(f"{called} ") and (found := _called(said[len(called) + 1 :], catalogue)) is not None:
            return found
    may_mean = _phrases("maymean") if plainly or lasting else _copulas() if contrasted else ()
    for link in (EQUALS, *_phrases("means"), *may_mean):
        if plain.count(f" {link} ") == 1:
            at = plain.index(f" {link} ")
            turned = link == EQUALS or lasting
            if (found := _pair(said[:at], said[at + len(link) + 2 :], catalogue, turned=turned)) is not None:
                return found
    return None


def _without_chatter(said: str) -> str:
    """ "ok so pc means preacher curl": what is said in front of a sentence says nothing."""
    chatter = phrasebook().cues["chatter"]
    while not plain_word(said).startswith((*CALLED, *_phrases("teaches"))):
        first, _, behind = said.partition(" ")
        if spoken(first.strip(",.!")) not in chatter or behind.count(" ") < LEAST_TAUGHT - 1:
            return said
        said = behind
    return said


def _without_lasting_within(said: str) -> tuple[str, bool]:
    """ "pc for me means preacher curl": without what makes it last in front of the link, and whether that was told."""
    for lasting in _lasting_within():
        before, told, behind = said.partition(lasting)
        if told and before and behind.startswith(_links()):
            return f"{before} {behind}", True
    return said, False


@lru_cache(maxsize=1)
def _lasting_within() -> tuple[str, ...]:
    return tuple(f" {lasting} " for lasting in _phrases("lasting"))


@lru_cache(maxsize=1)
def _links() -> tuple[str, ...]:
    return tuple(f"{link} " for link in (*_phrases("means"), *_phrases("maymean")))


@lru_cache(maxsize=1)
def _copulas() -> tuple[str, ...]:
    return tuple(link for link in _phrases("maymean") if link in phrasebook().copulas)


def _without_contrast(said: str, catalogue: Catalogue) -> tuple[str, bool]:
    """ "pc is preacher curl not power clean": without the lift that it is not, and whether one was told."""
    for denying in DENYING:
        head, told, tail = said.rpartition(denying)
        if told and catalogue.owners(tail.strip(" .!")):
            return head.rstrip(" ,"), True
    return said, False


LEAST_TAUGHT = 3
"""Words: a short one, what links them, and a name."""
DENYING = (" not ", " instead of ", " rather than ")


def _without_lasting(said: str) -> tuple[str, bool]:
    lasting = False
    plain, phrases = plain_word(said), _phrases("lasting")
    if not plain.startswith(phrases) and not plain.endswith(phrases):
        return said, lasting
    for _ in range(2):
        for phrase in phrases:
            if plain_word(said).startswith((f"{phrase} ", f"{phrase}, ", f"{phrase}: ")):
                said, lasting = said[len(phrase) :].lstrip(" ,:"), lasting or phrase != "please"
            if plain_word(said).endswith((f" {phrase}", f", {phrase}")):
                said, lasting = said[: -len(phrase)].rstrip(" ,"), lasting or phrase != "please"
    return said, lasting


def _pair(short: str, long: str, catalogue: Catalogue, *, turned: bool = False) -> Act | None:
    """The shorthand and its lift; `turned`: the name may stand first, "preacher curl = pc"."""
    if turned and len(long.split()) == 1 < len(short.split()):
        short, long = long, short
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
