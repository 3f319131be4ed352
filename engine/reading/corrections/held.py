"""How the sets before were done, told afterwards: "that was seated", "did them with dumbbells", "sumo btw".

told = ( "did" those | [ that ] "was" | "used" | "with" ) manner | manner "by the way"
manner = equipment | a posture, a pause, a grip, a sort of the lift

The lift is another one where the catalogue knows it so; where it knows none, that is said, and nothing changes.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.names import with_name
from engine.reading.corrections.parts import part_told
from engine.reading.corrections.renaming import renamed
from engine.reading.corrections.said_to_be import is_be
from engine.reading.entries.names import EQUIPMENT, HELD
from engine.reading.values import Correction
from engine.reading.words.cues import CUES_OF, any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.lexicon import plain_word
from engine.reading.words.pieces import Piece
from engine.values.ids import ExerciseName

AROUND = frozenset((K.FILLER, K.WITH, K.COMMA, K.STOP, K.FOR, K.SETS, K.NUMBER))
POINTS = frozenset((K.LAST, K.FIRST, K.ORDINAL, K.MIDDLE, K.FROM_LAST))
OF_A_LIFT = frozenset((K.VARIANT, K.PAUSE, K.JOINT, K.NAME, K.NOTE))
POINTING = frozenset(("those", "that"))
USING = frozenset(("tookup",))
ASIDE = frozenset(("aside",))
SEATED = frozenset(("sitting",))
LITTLE = USING | SEATED | ASIDE | POINTING | {"down"}
MOST_OF_MANNER = 2


def done_otherwise(told: Told) -> Correction | None:
    """The sets under the lift that they were, in the manner told."""
    manner = _manner(told)
    part = part_told(told.pieces, told.context)
    if not manner or part.missing or part.both:
        return None
    old = part.named or told.context.recent[-1].done.exercise
    new = renamed(manner, old, told.context, told.catalogue)
    if new is None or not _is_the_same_movement(new.exercise, old, manner, told):
        return None
    reached = part.reached(told.context, plural=not part.single)
    for record in reached:
        if record.done.exercise == old:
            told.set_to(record, with_name(told.now(record), new))
    return told.correction()


def has_no_such_lift(told: Told) -> bool:
    """Whether other equipment is told, and the catalogue knows no such lift."""
    manner = [piece for piece in _manner(told) if piece.kind in EQUIPMENT]
    if not manner:
        return False
    part = part_told(told.pieces, told.context)
    old = part.named or told.context.recent[-1].done.exercise
    known = told.catalogue.get(old)
    if known is None or known.equipment in EQUIPMENT[manner[0].kind]:
        return False
    in_hand = manner[0].kind in (K.DUMBBELL, K.KETTLEBELL) and known.equipment in HELD
    return not in_hand and renamed(manner, old, told.context, told.catalogue) is None


def _manner(told: Told) -> list[Piece]:
    """The words that tell how it was done; none where the message tells more, or does not say that it was so."""
    if told.numbers() or _is_of_others(told) or K.QUESTION in told.kinds():
        return []
    asserted, denied = _parted(told.pieces)
    verb = next((at for at, piece in enumerate(asserted) if is_be(piece)), -1)
    named = [piece for piece in asserted[verb + 1 :] if _is_of_manner(piece)]
    if not 1 <= len(named) <= MOST_OF_MANNER or any(_is_of_manner(piece) for piece in asserted[: verb + 1]):
        return []  # "dumbbells were all taken"
    if not all(_may_stand_beside(piece, told) for piece in (*asserted, *denied)):
        return []
    return [_as_a_sort(piece) for piece in named] if _says_so(told, asserted, bool(denied)) else []


def _is_of_others(told: Told) -> bool:
    """Whether anyone else is spoken of; "them" are the sets."""
    return any(word in told.book.cues["others"] and "objects" not in CUES_OF[word] for word in told.words)


def _parted(pieces: Sequence[Piece]) -> tuple[list[Piece], list[Piece]]:
    """What is said to be so, and what not: "seated, not standing"."""
    at = next((at for at, piece in enumerate(pieces) if piece.kind is K.NOT), len(pieces))
    return list(pieces[:at]), list(pieces[at + 1 :])


def _is_of_manner(piece: Piece) -> bool:
    if piece.kind is K.NAME:
        return any(_typed(name).startswith(f"{_typed(piece.text)} ") for name in piece.names)
    return piece.kind in EQUIPMENT or piece.kind in OF_A_LIFT or is_cued(piece.text, SEATED)


def _typed(name: str) -> str:
    """The words of a name as they are typed."""
    return name.replace("-", " ")


def _may_stand_beside(piece: Piece, told: Told) -> bool:
    """Whether the word may stand in such a message: one that tells how, or says little; or a lift that was done."""
    known = piece.kind in AROUND | POINTS | OF_A_LIFT - {K.NAME} or piece.kind in EQUIPMENT
    if piece.kind is K.NAME and not _is_of_manner(piece):
        return any(record.done.exercise in piece.names for record in told.context.recent)
    return known or piece.kind is K.NAME or is_be(piece) or is_cued(piece.text, LITTLE)


def _as_a_sort(piece: Piece) -> Piece:
    """A posture as a pause is told, beside the sort of the lift and not in its place: the catalogue is asked for it."""
    if is_cued(piece.text, SEATED):
        return piece._replace(kind=K.PAUSE, text="seated")
    return piece._replace(kind=K.PAUSE) if piece.kind is K.NOTE else piece


def _says_so(told: Told, asserted: Sequence[Piece], turned: bool) -> bool:
    """Whether the words say that the sets before were so: a verb, the word that ties it to them, or an aside."""
    done = any_cued(told.words, frozenset(("did",))) and any_cued(told.words, POINTING)
    tied = bool(asserted) and asserted[0].kind is K.WITH
    used = any(is_cued(piece.text, USING) for piece in asserted)
    said = any(is_be(piece) for piece in asserted)
    aside = any(not ASIDE.isdisjoint(CUES_OF[plain_word(piece.text)]) for piece in asserted)
    return done or tied or used or said or aside or turned or told.slipped


def _is_the_same_movement(new: ExerciseName, old: ExerciseName, manner: Sequence[Piece], told: Told) -> bool:
    """A posture or a pause makes no other movement of it, and takes nothing else in the hands."""
    one, other = told.catalogue.get(new), told.catalogue.get(old)
    if one is None or other is None or one.pattern is not other.pattern:
        return False
    held = any(piece.kind in EQUIPMENT for piece in manner) or K.VARIANT in told.kinds()
    return held or one.equipment is other.equipment
