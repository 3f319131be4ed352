"""Requests that name somebody: a coach's client, or the coach who invited."""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.requests.said import Said
from engine.reading.values import Act
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role


def person_named(said: Said) -> Act | None:
    """Plan for who, note to who, digest who: a short unknown name first."""
    first = said.pieces[0] if said.pieces else None
    if first is None or first.kind not in (K.PLAIN, K.NAME, K.FILLER, K.OTHERS, K.MONTH, K.WEEKDAY):
        return None
    told = ":" in said.rest or "\n" in said.rest
    if first.kind is K.WEEKDAY and (not told or said.name == "plan_for"):
        return None
    return None if not told and any(piece.kind is K.TIMES for piece in said.pieces) else Act(said.name, text=said.rest)


def digest_of(said: Said) -> Act | None:
    """ "how is ann doing"; "how's the weather" asks about nobody."""
    first = said.pieces[0] if said.pieces else None
    somebody = first is not None and first.kind not in (K.FILLER, K.OTHERS) and len(said.rest_words) <= MOST_ABOUT_ONE
    return person_named(said) if somebody and not _is_a_lift(said) else None


def _is_a_lift(said: Said) -> bool:
    """ "hows deadlift progress": more words than a name, or a lift that is on for today."""
    named = set(said.exercises())
    on = {slot.exercise for slot in said.context.plan} | {said.context.doing}
    return bool(named) and said.pieces[0].kind is K.NAME and (len(said.rest_words) > 1 or bool(named & on))


MOST_ABOUT_ONE = 4


def code_told(said: Said) -> Act | None:
    """An invitation's code: one word with a digit in it, or in capitals; "join us" is none."""
    code = said.rest.strip()
    coded = any(letter.isdigit() for letter in code) or (code.isupper() and len(code) >= SHORTEST_CODE)
    return Act(said.name, text=said.rest) if len(code.split()) == 1 and coded else None


SHORTEST_CODE = 4


def plan_for(said: Said) -> Act | None:
    """A client's plan; "the plan for friday" is the session of that day."""
    days = [piece for piece in said.pieces if piece.kind in (K.WEEKDAY, K.TODAY, K.TOMORROW)]
    if len(days) == 1 and all(piece in days or piece.kind is K.FILLER for piece in said.pieces):
        return Act("today", text=days[0].text)
    return person_named(said)


def told_person(said: Said) -> Act | None:
    """ "note to ann: great week"; "tell my coach my knee hurts"."""
    if said.rest_words[:1] == ("coach",) or said.rest_words[:2] == ("my", "coach"):
        return Act(said.name, text=said.rest)
    return person_named(said) if ":" in said.rest else None


def adjusts(cleaned: str, pieces: Sequence[Piece]) -> Act | None:
    """ "ann: +2 sets side delts": a coach's change for one client."""
    who, colon, what = cleaned.partition(":")
    change = what.strip()
    if not colon or not 0 < len(who.split()) <= 2 or change[:1] not in ("+", "-") or not change[1:2].isdigit():
        return None
    if any(piece.kind is K.TIMES for piece in pieces):
        return None  # "skull crushers: -15 x 5, then 5 sets of 20"
    told = "set" in change.split()[1:2] or "sets" in change.split()[1:2] or any(p.role is Role.SETS for p in pieces)
    return Act("adjust", text=cleaned.strip()) if told else None
