"""What people ask for instead of telling sets: intents, by whole phrase, by the beginning of one, or as /commands.

request = [ polite ] ( phrase | head argument ) [ polite ]
The intent's word in other uses is talk: "what a week" is no request for the week.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.catalogue.catalogue import Catalogue
from engine.reading.kinds import K
from engine.reading.phrasebook import MOST_WORDS_OF_A_PHRASE, Phrasebook, phrasebook, spoken_words
from engine.reading.pieces import Piece
from engine.reading.prepare import Prepared
from engine.reading.requests_spelt import spelt
from engine.reading.requests_told import ARGUMENTS, Said, adjusts, asks_history, repeat_told
from engine.reading.teaching import taught_of
from engine.reading.tokens import Token, tokenize
from engine.reading.values import Act, Context

LONGEST_REQUEST = 24
LONGEST_MENDED = 4
PLANNED = "planned"
COMMANDS_ALIKE = {"redo": "redo", "stop": "quiet", "cancel": "undo", "log": "history"}


def request_of(prepared: Prepared, context: Context, catalogue: Catalogue) -> Act | None:
    """The intent that the message states, or None where it states none."""
    cleaned, pieces = prepared.cleaned, prepared.spoken
    book = phrasebook()
    if pieces and _is_plainly_sets(pieces, book):
        return None
    told = spelt(cleaned, context, catalogue)
    if told is not None:
        return told
    if cleaned.startswith("/"):
        return _command(cleaned, pieces, context, catalogue)
    if cleaned.strip() == "?":
        return Act("help")
    if len(pieces) > LONGEST_REQUEST * 2:
        return None
    words = spoken_words(prepared.tokens)
    if not words or len(words) > LONGEST_REQUEST or "\n" in cleaned.strip():
        return None
    bare = _without_politeness(words, book)
    told = _by_phrase(bare, cleaned, pieces, context, catalogue, book)
    return (
        told
        or _last_clause(cleaned, pieces, context, catalogue, book)
        or _mended(bare, cleaned, pieces, context, catalogue, book)
    )


def _is_plainly_sets(pieces: Sequence[Piece], book: Phrasebook) -> bool:
    """Whether a message with sets in it begins in a way that no request does."""
    kinds = {piece.kind for piece in pieces}
    if K.TIMES not in kinds or kinds & REQUEST_KINDS:
        return False
    first = pieces[0]
    return first.kind is K.NUMBER or (first.kind in (K.NAME, K.DATE) and first.text.split()[0] not in book.openers)


REQUEST_KINDS = frozenset((K.EQUALS, K.MORE, K.SAME, K.SAYING, K.QUESTION))


def _command(cleaned: str, pieces: Sequence[Piece], context: Context, catalogue: Catalogue) -> Act | None:
    word, _, rest = cleaned[1:].partition(" ")
    name = word.partition("@")[0].lower().strip()
    if not name or name not in NAMES:
        return None
    name = COMMANDS_ALIKE.get(name, name)
    words = tuple(word for word, _ in spoken_words(tokenize(rest)))
    behind = [piece for piece in pieces if piece.start > len(word)]
    said = Said(name, rest.strip(), words, behind, context, catalogue)
    recognise = ARGUMENTS.get(name)
    found = recognise(said) if recognise is not None and rest.strip() else None
    return found or _plain(name, rest.strip(), context)


def _without_politeness(words: list[tuple[str, Token]], book: Phrasebook) -> list[tuple[str, Token]]:
    polite = book.cues["polite"] | book.cues["slip"]
    start, end = 0, len(words)
    while start < end and (step := _polite_at(words, start, polite)):
        start += step
    while end > start + 1 and words[end - 1][0] in book.cues["polite"]:
        end -= 1
    return words[start:end] if start < end else words


def _polite_at(words: list[tuple[str, Token]], at: int, polite: frozenset[str]) -> int:
    for length in (3, 2, 1):
        if at + length < len(words) and " ".join(word for word, _ in words[at : at + length]) in polite:
            return length
    return 0


def _by_phrase(
    words: list[tuple[str, Token]],
    cleaned: str,
    pieces: Sequence[Piece],
    context: Context,
    catalogue: Catalogue,
    book: Phrasebook,
) -> Act | None:
    phrase = " ".join(word for word, _ in words)
    name = book.said.get(phrase) or book.said.get(" ".join(cleaned.lower().split()))
    if name is not None:
        return _plain(name, "", context)
    for length in range(min(MOST_WORDS_OF_A_PHRASE, len(words)), 0, -1):
        head = " ".join(word for word, _ in words[:length])
        for named in book.heads.get(head, ()):
            end = words[length - 1][1].end
            rest = cleaned[end:].lstrip(" :,-=").rstrip(" ?!.")
            behind = [piece for piece in pieces if piece.start >= end]
            said = Said(named, rest, tuple(word for word, _ in words[length:]), behind, context, catalogue)
            recognise = ARGUMENTS.get(named)
            found = recognise(said) if recognise is not None else None
            if found is not None:
                return found
    return (
        repeat_told(words, pieces, context)
        or taught_of(cleaned, catalogue)
        or asks_history(words, pieces, context)
        or adjusts(cleaned, pieces)
    )


def _last_clause(
    cleaned: str, pieces: Sequence[Piece], context: Context, catalogue: Catalogue, book: Phrasebook
) -> Act | None:
    """ "rack is taken, swap squat for leg press": a request behind a reason, where no numbers stand in front."""
    at = max(cleaned.rfind(mark) for mark in (",", ".", ";", " - ", "!"))
    if at <= 0 or at >= len(cleaned) - 2 or any(p.kind is K.NUMBER and p.start < at for p in pieces):
        return None
    behind = [piece for piece in pieces if piece.start > at]
    words = _without_politeness([(w, t) for w, t in spoken_words(tokenize(cleaned)) if t.start > at], book)
    if not words:
        return None
    # The clause keeps its place in the text, so that the pieces still fit it.
    clause = " " * (at + 1) + cleaned[at + 1 :]
    found = _by_phrase(words, clause, behind, context, catalogue, book)
    return found if found is not None and found.name in BEHIND_A_REASON else None


BEHIND_A_REASON = frozenset(
    ("swap", "skip", "undo", "redo", "next", "today", "done", "repeat", "why", "rest", "pause", "snooze")
)


def _mended(
    words: list[tuple[str, Token]],
    cleaned: str,
    pieces: Sequence[Piece],
    context: Context,
    catalogue: Catalogue,
    book: Phrasebook,
) -> Act | None:
    """A short message with a slip of the thumb in it: "udno", "nxet"."""
    if len(words) > LONGEST_MENDED or any(piece.kind in (K.NUMBER, K.NAME) for piece in pieces):
        return None
    if not any(piece.kind is K.PLAIN for piece in pieces):
        return None
    mended = book.slips.mended([word for word, _ in words], book.said)
    names = {book.said[phrase] for phrase in mended}
    return _plain(names.pop(), "", context) if len(names) == 1 else None


def _plain(name: str, rest: str, context: Context) -> Act | None:
    if name == PLANNED:
        return Act("done", exercise=context.doing, as_planned=True)
    if name == "skip" and not rest:
        return Act("skip", exercise=context.doing)
    return Act(name, text=rest)


NAMES = frozenset(
    (
        *ARGUMENTS,
        *COMMANDS_ALIKE,
        "next",
        "done",
        "repeat",
        "undo",
        "redo",
        "erase",
        "help",
        "start",
        "privacy",
        "settings",
        "share",
    )
) | frozenset(("resume", "clients", "invite", "adjust")) - {"instead"}
