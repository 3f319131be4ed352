"""How a message was read, for a person: its pieces, the reading chosen, those rejected and why; a whole bug report.

What was taken for granted stands in it, too: the same words can mean something else with another lift in hand.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime
from itertools import groupby
from typing import assert_never

from engine.catalogue.catalogue import Catalogue
from engine.reading.prepare import Prepared, prepare
from engine.reading.values import LOADS_IN_DOUBT, Act, Asked, Context, Correction, Logged, NoSets, Outcome, Reading
from engine.reading.weighing.deciding import CLEAR_BY, ENOUGH
from engine.reading.weighing.reasons import against
from engine.reading.wording import describe
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role
from engine.values.sets import SetDone

WIDE = 10
LEAST_SHARE = 0.01
NUMBERS = {
    Role.BARE: "a number",
    Role.LOAD: "a load",
    Role.REPS: "reps",
    Role.SETS: "a number of sets",
    Role.SECONDS: "seconds",
    Role.METRES: "metres",
    Role.PLURAL: "a number with an s: two implements of that load, or seconds",
    Role.CHANGE: "a number with a sign: added or taken off",
    Role.TIMES: "how many times",
    Role.BAR: "the empty bar",
    Role.BODY: "body weight",
    Role.UNREADABLE: "no number that can be read",
    Role.NOT_A_SET: "a number of something else",
}
SIGNS = frozenset(
    (K.TIMES, K.AT, K.SLASH, K.DASH, K.PLUS, K.COMMA, K.OPEN, K.CLOSE, K.ARROW, K.COLON, K.EQUALS, K.STOP, K.QUESTION)
)
COMPUTED = {
    K.PLAIN: "a word that means nothing in a set",
    K.EFFORT: "an effort",
    K.LINE: "the end of the line",
    K.OTHER_SIGN: "a sign without meaning",
    K.MULTIPLIER: "how many times",
}


def explanation(text: str, outcome: Outcome, known: Catalogue, context: Context) -> str:
    """How the message was read, line by line."""
    prepared = prepare(text, context, known)
    lines = [
        _line("message", repr(text)),
        _line("given", _given(context)),
        *_labelled("pieces", _pieces(prepared, known)),
        *_told(outcome, known, context),
    ]
    return "\n".join(lines)


def _line(label: str, words: str) -> str:
    return f"{label:<{WIDE}}{words}"


def _labelled(label: str, lines: Sequence[str]) -> list[str]:
    """The lines under one label."""
    return [_line(label if place == 0 else "", line) for place, line in enumerate(lines)]


def _given(context: Context) -> str:
    """What was known beside the message."""
    told = [f"bare loads in {context.unit.value}"]
    told.append(f"now {context.now:%Y-%m-%d %H:%M}" if context.now is not None else "no day")
    told.append(f"{context.doing} in hand" if context.doing else "no exercise in hand")
    told.append(f"{len(context.plan)} lifts planned" if context.plan else "no plan")
    told.append(f"loads known of {', '.join(context.last)}" if context.last else "no loads known")
    return ", ".join(told)


def _pieces(prepared: Prepared, known: Catalogue) -> list[str]:
    """What each piece was taken for; numbers and signs on end together."""
    told: list[str] = []
    for plain, run in groupby(prepared.pieces, key=_is_plain):
        pieces = list(run)
        if plain:
            told.append(f"“{prepared.cleaned[pieces[0].start : pieces[-1].end].strip()}” {_plain_name(pieces)}")
        else:
            told += [_piece(piece, prepared, known) for piece in pieces]
    return told or ["none"]


def _is_plain(piece: Piece) -> bool:
    return piece.kind in SIGNS or (piece.kind is K.NUMBER and piece.role is Role.BARE and not piece.spelled)


def _plain_name(pieces: Sequence[Piece]) -> str:
    kinds = {piece.kind for piece in pieces}
    if kinds == {K.NUMBER}:
        return "a number" if len(pieces) == 1 else "numbers"
    return "numbers and signs" if K.NUMBER in kinds else "a sign" if len(pieces) == 1 else "signs"


def _piece(piece: Piece, prepared: Prepared, known: Catalogue) -> str:
    if piece.kind is K.LINE:
        return COMPUTED[K.LINE]
    said = prepared.cleaned[piece.start : piece.end].strip() or piece.text
    return f"“{said}” {_meaning(piece, said, known)}"


def _meaning(piece: Piece, said: str, known: Catalogue) -> str:
    if piece.kind is K.NAME:
        mended = "" if known.owners(said) or len(piece.names) > 1 else ", a slip mended"
        return f"{' or '.join(piece.names)}{mended}"
    if piece.kind is K.NUMBER:
        unit = f" in {piece.unit.value}" if piece.unit is not None else ""
        return NUMBERS[piece.role] + unit
    if piece.kind is K.DATE:
        return f"the day {piece.day.isoformat()}" if piece.day is not None else "a day that is not known or cannot be"
    if piece.kind in SIGNS:
        return "a sign"
    return COMPUTED.get(piece.kind, f"a word of the kind “{piece.kind.value}”")


def _told(outcome: Outcome, known: Catalogue, context: Context) -> list[str]:
    match outcome:
        case Logged():
            return _told_logged(outcome, known, context)
        case Asked():
            return _told_asked(outcome, known, context)
        case NoSets():
            pain = [_line("pain", "yes")] if outcome.pain else []
            return [_line("outcome", f"nothing to save: {outcome.why}"), *pain, *_not_read(outcome)]
        case Act():
            return _told_act(outcome)
        case Correction():
            return [_line("outcome", "a correction of sets that stand; which it reaches depends on the log")]
        case _:
            assert_never(outcome)


def _told_logged(logged: Logged, known: Catalogue, context: Context) -> list[str]:
    lines = [_line("outcome", "would be saved: " + ("no other reading fits" if not logged.rejected else _clear()))]
    lines += _labelled("sets", _by_day(logged))
    lines += [_line("note", logged.note)] if logged.note else []
    lines += [_line("pain", "yes")] if logged.pain else []
    rejected = [f"{share(one)} {describe(one.sets)}: {against(one.sets, context, known)}" for one in logged.rejected]
    return lines + (_labelled("rejected", rejected) if rejected else []) + _not_read(logged)


def _by_day(logged: Logged) -> list[str]:
    """The sets, each day's on a line of its own."""
    days = logged.days or (logged.on,) * len(logged.sets)
    told: list[str] = []
    for day, both in groupby(zip(days, logged.sets, strict=True), key=lambda one: one[0]):
        sets: list[SetDone] = [done for _, done in both]
        told.append(f"{_on(day)}{describe(sets)}")
    return told


def _on(day: date | None) -> str:
    return f"{day.isoformat()}: " if day is not None else ""


def _clear() -> str:
    return f"one reading is clear (at least {ENOUGH:.0%} likely, and {CLEAR_BY:.0%} ahead of the next)"


def _told_asked(asked: Asked, known: Catalogue, context: Context) -> list[str]:
    if not asked.readings:
        return [_line("outcome", "asked: nothing to choose from"), _line("question", asked.question)]
    return [
        _line("outcome", f"asked: {_why_asked(asked, known, context)}"),
        _line("question", asked.question),
        *_labelled("readings", [f"{share(one)} {describe(one.sets)}" for one in asked.readings]),
    ]


def _why_asked(asked: Asked, known: Catalogue, context: Context) -> str:
    best = max(one.plausibility for one in asked.readings)
    if asked.doubt in LOADS_IN_DOUBT:
        return f"is the load right? {against(asked.readings[0].sets, context, known)}"
    if best < ENOUGH:
        return f"no reading is clear; the best is {best:.0%} likely, {ENOUGH:.0%} is needed ({asked.doubt.value})"
    return f"not all of it is clear ({asked.doubt.value})"


def _told_act(act: Act) -> list[str]:
    told = {
        "exercise": act.exercise,
        "to": act.to,
        "when": f"{act.when:%Y-%m-%d %H:%M}" if isinstance(act.when, datetime) else act.when,
        "count": act.count,
        "as planned": "yes" if act.as_planned else None,
        "text": act.text,
    }
    lines = [_line("outcome", f"a request, nothing to save: {act.name}")]
    return lines + [_line(label, str(words)) for label, words in told.items() if words]


def _not_read(outcome: Logged | NoSets) -> list[str]:
    return _labelled("not read", [f"{piece.text!r}: {piece.why}" for piece in outcome.unread]) if outcome.unread else []


def share(reading: Reading) -> str:
    """A reading's plausibility as a percentage."""
    return "under 1%" if reading.plausibility < LEAST_SHARE else f"{reading.plausibility:.0%}"
