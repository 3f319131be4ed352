"""Requests of an hour, a length or a day behind a word: a rest, a pause, a reminder, once more later."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from engine.reading.days.hours_ahead import moment_told
from engine.reading.requests.part_read import TAKES, UNCLEAR
from engine.reading.requests.pausing import pause_told, rest_of_the_week
from engine.reading.requests.said import Said
from engine.reading.values import Act
from engine.reading.words.cues import CUES_OF
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import Piece, Role


def rest(said: Said) -> Act | None:
    """ "rest 90s", "rest 2 min"."""
    numbers = said.numbers()
    if any(piece.kind is K.PLAIN or piece.text in ("was", "were", "is") for piece in said.pieces):
        return None  # "rest times were 3 min"
    if (seconds := _decimal_minutes(said.pieces)) is not None:
        return Act("rest", count=seconds, text=f"{seconds}s")
    if len(numbers) != 1 or len(said.rest_words) > 4 or numbers[0].role not in (Role.BARE, Role.SECONDS, Role.PLURAL):
        return None
    return Act("rest", count=int(numbers[0].value), text=said.rest)


LONGEST_REST_S = 900
"""Nobody rests longer between two sets. Common practice, no source."""


def _decimal_minutes(pieces: Sequence[Piece]) -> int | None:
    """ "1,5 min": one number, whose comma is no list's."""
    if [piece.kind for piece in pieces if piece.kind is not K.FOR] != [K.NUMBER, K.COMMA, K.NUMBER]:
        return None
    whole, comma, tenths = pieces[-3:]
    timed = tenths.role is Role.SECONDS and whole.role is Role.BARE and tenths.text.isdigit() and comma.glued
    unit = tenths.value / int(tenths.text) if timed and int(tenths.text) else 0
    return int((whole.value + tenths.value / unit / 10 ** len(tenths.text)) * unit) if unit else None


def pause(said: Said) -> Act | None:
    """ "pause until monday"; "Pause 2 min" is a rest."""
    timed = [piece for piece in said.pieces if piece.kind is K.NUMBER and piece.role is Role.SECONDS]
    alone = len(timed) == len(said.numbers()) == len(said.head) == 1
    if alone and timed[0].value <= LONGEST_REST_S:
        return rest(replace(said, name="rest"))  # "Pause 2 min"
    book = phrasebook()
    week = rest_of_the_week(said.rest_words, said.context, book)
    told = week or pause_told(said.pieces, said.context, book, said.head)
    return Act("pause", when=told.until, start=told.start, text=said.rest) if told is not None else None


def remind(said: Said) -> Act | None:
    """ "remind me at 7"."""
    kinds = {piece.kind for piece in said.pieces}
    if not said.rest_words or ({K.NAME, K.TIMES} <= kinds and "to" not in said.rest_words):
        return None  # "remind me later but bench was 3x8 80"
    when = moment_told(said.pieces, said.context, said.rest_words)
    asked = next((word for word in said.rest_words if word not in ("me", "again")), "")
    if when is None and asked in phrasebook().cues["askword"]:
        return None  # "remind me what i squatted last time"
    return Act("remind", when=when, text=said.rest)


def reminded(said: Said) -> Act | None:
    """ "text me at 7pm": a reminder where an hour is told."""
    told = remind(said)
    return replace(told, name="remind") if told is not None and told.when is not None else None


def snooze(said: Said) -> Act | None:
    """ "snooze 20 min", "snooze until 8pm": a length, or an hour."""
    found = short_text(said)
    until = moment_told(said.pieces, said.context, said.rest_words) if found and "untilday" in _cues(said) else None
    if found is not None and "untilday" in _cues(said) and until is None:
        return Act(UNCLEAR, text=TAKES["snooze"])
    return replace(found, when=until) if found is not None else None


def _cues(said: Said) -> frozenset[str]:
    return CUES_OF[said.rest_words[0]] if said.rest_words else frozenset()


def short_text(said: Said) -> Act | None:
    """A few words behind the head, as they are."""
    few = len(said.rest_words) <= 5 and not any(piece.kind is K.TIMES for piece in said.pieces)
    return Act(said.name, text=said.rest) if said.rest and few else None
