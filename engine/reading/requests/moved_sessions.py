"""A session moved to another day: "move to friday", "move it to tomorrow"."""

from __future__ import annotations

from engine.reading.days.when import day_told
from engine.reading.requests.said import Said
from engine.reading.values import Act, Context
from engine.reading.words.kinds import K


def move(said: Said) -> Act | None:
    """The session to another day; sets that are logged are moved by a correction."""
    if said.numbers() and any(piece.kind is K.TIMES for piece in said.pieces):
        return None
    day = day_told(said.pieces, said.context)
    ahead = day is not None and said.context.now is not None and day > said.context.now.date()
    told = any(piece.kind in DAYS_TO_MOVE_TO or (piece.kind is K.FUTURE and piece.told) for piece in said.pieces)
    pointed = ("it" in said.rest_words[:1] and _began_today(said.context)) or any(
        piece.kind is K.NAME for piece in said.pieces
    )
    named = said.rest_words[:1] == ("day",)  # "push day tomorrow"
    return Act("move", when=day if ahead else None, text=said.rest) if told and not (pointed or named) else None


def _began_today(context: Context) -> bool:
    """Whether "it" may be sets of today."""
    return bool(context.recent) and (context.now is None or context.recent[-1].on == context.now.date())


DAYS_TO_MOVE_TO = frozenset((K.WEEKDAY, K.TOMORROW, K.TODAY, K.HEADING, K.MONTH, K.ORDINAL))
