"""What people ask for instead of telling sets: intents, by whole phrase, by the beginning of one, or as /commands.

request = [ polite ] ( phrase | head argument ) [ polite ]
The intent's word in other uses is talk: "what a week" is no request for the week.
"""

from __future__ import annotations

import re
from collections.abc import Sequence, Set
from dataclasses import replace

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.names import EQUIPMENT
from engine.reading.prepare import Prepared, prepare
from engine.reading.requests.again import repeat_told, sets_added, several_steps
from engine.reading.requests.around import among_reasons, led
from engine.reading.requests.begun import NEEDS
from engine.reading.requests.by_time import told_by_the_day
from engine.reading.requests.free import (
    again_told,
    asked_freely,
    asked_of_a_day,
    asks_what_to_say,
    is_done,
    lacks_time,
    told_freely,
    undoes,
)
from engine.reading.requests.lifts import asked_of_a_lift, with_equipment_behind
from engine.reading.requests.mended import head_mended, is_sure_of_all, without_stress, word_mended
from engine.reading.requests.of_days import of_another_day
from engine.reading.requests.part_read import UNCLEAR, in_full
from engine.reading.requests.pausing import denies_a_pause
from engine.reading.requests.politeness import without_politeness
from engine.reading.requests.quiet import quiet_asked
from engine.reading.requests.rest import rest_asked
from engine.reading.requests.said import Said
from engine.reading.requests.something_else import best_ever, else_asked
from engine.reading.requests.spelt import spelt
from engine.reading.requests.teaching import taught_of
from engine.reading.requests.to_people import adjusts
from engine.reading.requests.told import ARGUMENTS, asks_history, skipped_but
from engine.reading.requests.units import units_wished
from engine.reading.values import Act, Context
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import MOST_WORDS_OF_A_PHRASE, Phrasebook, phrasebook, spoken_words
from engine.reading.words.pieces import Piece, Role, first_word
from engine.reading.words.spoken_clauses import Words
from engine.reading.words.tokens import tokenize

LONGEST_REQUEST = 24
LONGEST_MENDED = 4
PLANNED = "planned"
HISTORY_OF_THIS = "history_of_this"
REST_STOP, SKIP_DAYS, ADD_LIFT = "rest_stop", "skip_days", "add_lift"
WHOLE_SKIPS = {"skip_day": "today", "skip_left": "left"}
MENDABLE = frozenset(
    ("swap", "skip", "why", "history", "best", "rest", "bodyweight", "pause", "remind", "units", "move", "snooze",
     "week", "volume", "plan", "today", "check", "preview", "digest", "plan_for", "more", "export", "add_exercise",
     "what_if", "warmup", "plates", "done", "repeat")
)  # fmt: skip
"""Requests that a mistyped word may be mended to: none that takes away, falls silent, or writes to somebody."""
LIFTS_NAMED = frozenset(("swap", "skip"))
"""Requests whose lifts show that a short word with another letter in it was meant so: "swsp squat for leg press"."""
COMMANDS_ALIKE = {"redo": "redo", "stop": "quiet", "cancel": "undo", "log": "history"}


LED = re.compile(r"^(?:[ :,=-]*(?=-\d)|[ :,=-]+)")
"""What leads from a request to what it is of, but the sign of its number: "what if i -1 set squat"."""


def request_of(prepared: Prepared, context: Context, catalogue: Catalogue) -> Act | None:
    """The intent that the message states, or None where it states none."""
    pieces = prepared.spoken
    if pieces and is_plainly_sets(pieces, prepared.told, phrasebook()):
        return None
    asked = asked_for(prepared, context, catalogue)
    return None if asked is not None and asked.name == "pause" and denies_a_pause(pieces) else asked


def asked_for(prepared: Prepared, context: Context, catalogue: Catalogue) -> Act | None:
    """The intent of a message that may tell sets or ask for something; None where it asks for nothing."""
    cleaned, pieces = prepared.cleaned, prepared.spoken
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
    return _told(prepared, words, context, catalogue, phrasebook())


def _told(prepared: Prepared, words: Words, context: Context, catalogue: Catalogue, book: Phrasebook) -> Act | None:
    """The request of a short message in words."""
    cleaned, pieces = prepared.cleaned, prepared.spoken
    if prepared.told >= SETS_OF_A_LIFT and not _begins(words[0][0], book):
        return taught_of(cleaned, catalogue) or adjusts(cleaned, pieces)
    bare = without_politeness(words, book)
    if K.NAME in prepared.told and not EQUIPMENT.keys().isdisjoint(prepared.told):
        pieces = with_equipment_behind(pieces, catalogue)

    def recognised(said: Words, text: str, of: Sequence[Piece], known: Context) -> Act | None:
        plain = without_politeness(said, book)
        return (
            by_phrase(plain, text, of, known)
            or led(plain, text, of, known, book, by_phrase)
            or _in_any_order(said, of, known, book)
        )

    def by_phrase(said: Words, text: str, of: Sequence[Piece], known: Context) -> Act | None:
        return _by_phrase(said, text, of, known, catalogue, book)

    return (
        _of_all_but(words, pieces, context, book)
        or _denied(words, pieces, context, book)
        or _by_phrase(bare, cleaned, pieces, context, catalogue, book)
        or led(bare, cleaned, pieces, context, book, by_phrase)
        or asked_freely([word for word, _ in words], pieces, book)
        or asked_of_a_day([word for word, _ in words], pieces, book)
        or _in_any_order(words, pieces, context, book)
        or units_wished(words, pieces, book)
        or among_reasons(prepared, words, context, book, recognised)
        or _mended(bare, pieces, context, book)
        or _head_mended(bare, cleaned, pieces, context, catalogue)
        or _word_mended(words, cleaned, pieces, context, catalogue)
    )


def _of_all_but(words: Words, pieces: Sequence[Piece], context: Context, book: Phrasebook) -> Act | None:
    """ "skip everything except bench": the other lifts of today; never the one named."""
    said = [word for word, _ in words]
    if book.cues["leftout"].isdisjoint(said) or not any(
        piece.kind is K.EXCEPT or "but" in CUES_OF[piece.text] for piece in pieces
    ):
        return None
    return skipped_but(said, pieces, context)


def _denied(words: Words, pieces: Sequence[Piece], context: Context, book: Phrasebook) -> Act | None:
    """What is asked for by a no, which is no politeness then: "no reminders after 9", "no training for a week"."""
    said = [word for word, _ in words]
    if book.cues["hushes"].isdisjoint(said) and book.cues["messaging"].isdisjoint(said):
        return None
    away = told_by_the_day(words, pieces, context, book) if words[0][0] in book.cues["denies"] else None
    return quiet_asked(words, pieces, book) or (away if away is not None and away.name == "pause" else None)


def _in_any_order(words: Words, pieces: Sequence[Piece], context: Context, book: Phrasebook) -> Act | None:
    """The request that the words make wherever they stand, those that only ask for it politely among them."""
    return (
        asked_of_a_lift(words, pieces, context, book)
        or asks_what_to_say([word for word, _ in words], pieces, book)
        or rest_asked(words, pieces, book)
        or else_asked(words, pieces, context, book)
        or best_ever(words, pieces, context, book)
    )


SETS_OF_A_LIFT = frozenset((K.NAME, K.NUMBER, K.TIMES))
"""Whoever tells these and begins like no request may teach a word or change a client's sets, and asks for nothing."""


def _begins(word: str, book: Phrasebook) -> bool:
    """Whether a request, or what people put in front of one, may begin with the word."""
    return (
        word in book.openers or word in book.polite_openers or word in book.lead_openers or word in book.cues["please"]
    )


def is_plainly_sets(pieces: Sequence[Piece], kinds: Set[K], book: Phrasebook) -> bool:
    """Whether a message tells sets in a way that no request is told: it begins like none, or it has no word in it but
    the names of lifts.
    """
    first = pieces[0]
    if (
        kinds & REQUEST_KINDS
        or first.role is Role.UNREADABLE
        or not (first.kind is K.NUMBER or (first.kind in NAMING and not _opens(first, book)))
    ):
        return False
    return K.TIMES in kinds or (
        K.NUMBER in kinds and kinds <= WORDLESS and True not in [_asks(p, book) for p in pieces]
    )


def _asks(piece: Piece, book: Phrasebook) -> bool:
    """Whether the piece may belong to a request: a lift whose name begins one, or a number with a sign: "back +2"."""
    return piece.role is Role.CHANGE if piece.kind is K.NUMBER else piece.kind is K.NAME and _opens(piece, book)


def _opens(piece: Piece, book: Phrasebook) -> bool:
    return first_word(piece) in book.openers


NAMING = frozenset((K.NAME, K.DATE))
WORDLESS = frozenset((K.NAME, K.NUMBER, K.COMMA, K.SLASH, K.AT, K.LINE))
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


def _by_phrase(
    words: Words,
    cleaned: str,
    pieces: Sequence[Piece],
    context: Context,
    catalogue: Catalogue,
    book: Phrasebook,
) -> Act | None:
    plain = [word for word, _ in words]
    phrase = " ".join(plain)
    name = book.said.get(phrase) or book.said.get(" ".join(cleaned.lower().split()))
    if name is not None and not (name == "repeat" and cleaned.rstrip().endswith("?")):
        whole = name == PLANNED and not (book.cues["all"] | book.cues["allofit"]).isdisjoint(plain)
        return _plain(name, "all" if whole else "", context)
    if is_done(plain, pieces, book):
        return Act("done")
    asked = of_another_day(plain, pieces, context, book) or asked_freely(plain, pieces, book)
    asked = asked or lacks_time(plain, pieces, book)
    if asked is not None:
        return asked
    if undoes(plain, book):
        return Act("undo")
    longest = min(MOST_WORDS_OF_A_PHRASE, len(words)) if plain and plain[0] in book.openers else 0
    for length in range(longest, 0, -1):
        head = " ".join(plain[:length])
        for named in book.heads.get(head, ()):
            end = words[length - 1][1].end
            rest = LED.sub("", cleaned[end:]).rstrip(" ?!.")
            within = named == ADD_LIFT  # "add face pull" is a name, too
            behind = [piece for piece in pieces if piece.start >= end or (within and piece.end > end)]
            said = Said(named, rest, tuple(plain[length:]), behind, context, catalogue, tuple(plain[:length]))
            recognise = ARGUMENTS.get(named)
            apart = within or not _is_in_a_name(end, pieces)
            found = recognise(said) if recognise is not None and apart else None
            if found is not None:
                return in_full(
                    found, [piece for piece in pieces if piece.start >= words[0][1].start], context, catalogue
                )
    told = (
        repeat_told(words, pieces, context)
        or sets_added(plain, pieces, context)
        or several_steps(plain, pieces)
        or again_told(plain, pieces, context, book)
        or told_freely(plain, pieces, context, book)
        or told_by_the_day(words, pieces, context, book)
        or units_wished(words, pieces, book)
        or taught_of(cleaned, catalogue)
        or asks_history(words, pieces, context)
        or adjusts(cleaned, pieces)
    )
    return in_full(told, pieces, context, catalogue) if told is not None else None


def _is_in_a_name(end: int, pieces: Sequence[Piece]) -> bool:
    """ "push" of "push ups"."""
    return any(piece.kind is K.NAME and piece.start < end < piece.end for piece in pieces)


def _mended(words: Words, pieces: Sequence[Piece], context: Context, book: Phrasebook) -> Act | None:
    """A short message with a slip of the thumb in it: "udno", "nxet"; or with letters held down: "undooo"."""
    if len(words) > LONGEST_MENDED or any(piece.kind in (K.NUMBER, K.NAME) for piece in pieces):
        return None
    typed = [word for word, _ in words]
    # A mistyped day was put right as one: "todya".
    if not any(piece.kind is K.PLAIN or (piece.kind is K.TODAY and piece.text in typed) for piece in pieces):
        return None
    stressed = book.said.get(" ".join(word if word in book.slips.words else without_stress(word) for word in typed))
    if stressed is not None:
        return _plain(stressed, "", context)
    mended = [phrase for phrase in book.slips.mended(typed, book.said) if is_sure_of_all(typed, phrase.split())]
    names = {book.said[phrase] for phrase in mended}
    return replace(_plain(names.pop(), "", context), mended=mended[0]) if len(names) == 1 else None


def _head_mended(
    words: Words, cleaned: str, pieces: Sequence[Piece], context: Context, catalogue: Catalogue
) -> Act | None:
    """A request whose first words hold a slip, where what it needs stands behind them: "untis lb", "hisory squat"."""
    book = phrasebook()
    for text, sure in head_mended(words, cleaned, pieces, book):
        prepared = prepare(text, context, catalogue)
        bare = without_politeness(spoken_words(prepared.tokens), book)
        told = spelt(text, context, catalogue) or _by_phrase(bare, text, prepared.spoken, context, catalogue, book)
        if told is not None and told.name in (MENDABLE if sure else LIFTS_NAMED):
            return replace(told, mended=" ".join(text.split()))
    return None


def _word_mended(
    words: Words, cleaned: str, pieces: Sequence[Piece], context: Context, catalogue: Catalogue
) -> Act | None:
    """A request told in any order with a slip in one of its words: "start a 2 min tiemr", "takin two weeks of"."""
    book = phrasebook()
    for text in word_mended(words, cleaned, pieces):
        prepared = prepare(text, context, catalogue)
        said = spoken_words(prepared.tokens)
        bare = without_politeness(said, book)
        told = quiet_asked(said, prepared.spoken, book) or _in_any_order(said, prepared.spoken, context, book)
        told = told or told_by_the_day(bare, prepared.spoken, context, book)
        told = told or (Act("undo") if undoes([word for word, _ in bare], book) else None)
        if told is not None:
            return replace(told, mended=" ".join(text.split()))
    return None


def _plain(name: str, rest: str, context: Context) -> Act:
    if name == SKIP_DAYS:
        return Act(UNCLEAR, text=NEEDS["skip"])
    if name in WHOLE_SKIPS:
        return Act("skip", text=WHOLE_SKIPS[name])
    if name == REST_STOP:
        return Act("rest", text="stop")
    if name == HISTORY_OF_THIS:
        return Act("history", exercise=context.doing)
    if name == PLANNED:
        whole = rest if context.doing is None else ""
        return Act("done", exercise=context.doing, as_planned=True, text=whole)
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
) | frozenset(("resume", "clients", "invite", "adjust")) - {
    "instead",
    "weighed",
    "weight",
    "reminded",
    "add_lift",
    "unskip",
}
