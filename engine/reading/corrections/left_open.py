"""What begins as a correction and leaves open what is to be put right: nothing is changed, and it is asked.

open = "set" NUMBER "and" NUMBER | POINTING NUMBER [ "are" ] | [ "the" ] NUMBER "was" "wrong"
     | "the bar" "was" NUMBER | HAD NUMBER "on" "the bar"
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.reading.corrections.nothing_changed import WEIGHT_OF_THE_BAR, nothing_changed, unclear
from engine.reading.corrections.parts import is_be
from engine.reading.marks.said_of_things import tells_its_weight
from engine.reading.prepare import Prepared
from engine.reading.talk.statements import names_sets_alone
from engine.reading.values import Context, NoSets
from engine.reading.words.cues import any_cued, is_cued
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, Role, texts_in_order

POINTING, WRONGLY, HAD, ONTO = (frozenset((cue,)) for cue in ("those", "wrongly", "had", "onbar"))
LINKS = frozenset((K.FILLER, K.WITH, K.OF, K.FOR, K.AT))
UNITS = frozenset((K.REPS, K.KG, K.LB, K.NUMBER))
ENDS = frozenset((K.STOP, K.COMMA))


def left_open(prepared: Prepared, context: Context) -> NoSets | None:
    """Why nothing is changed, where the message leaves open what of the sets that stand it puts right."""
    if not context.recent or K.TIMES in prepared.told:
        return None
    if K.BAR in prepared.told and (_weighs_the_bar(prepared) or _had_on_the_bar(prepared.spoken)):
        return nothing_changed(prepared, WEIGHT_OF_THE_BAR)
    if K.NUMBER not in prepared.told:
        return None
    alone = K.SETS in prepared.told and names_sets_alone(prepared.spoken)
    alone = alone or _points_at_so_many(prepared.spoken) or _blames_a_number(prepared.spoken)
    return unclear(prepared) if alone else None


def _weighs_the_bar(prepared: Prepared) -> bool:
    """ "the bar was 15": what was lifted with it, nobody can say."""
    bar = next(at for at, piece in enumerate(prepared.spoken) if piece.kind in (K.BAR, K.NUMBER))
    return prepared.spoken[bar].kind is K.BAR and tells_its_weight(prepared.spoken, bar + 1)


def _had_on_the_bar(pieces: Sequence[Piece]) -> bool:
    """ "had 20 on the bar": in all, or beside it; and no reps with it."""
    at = next((at for at, piece in enumerate(pieces) if piece.kind is K.NUMBER), 0)
    links = pieces[at + 1 : -1]
    if not at or pieces[-1].kind is not K.BAR or not any_cued(pieces[at - 1].text.split(), HAD):
        return False
    return {piece.kind for piece in links} <= LINKS and any(is_cued(piece.text, ONTO) for piece in links)


def _points_at_so_many(pieces: Sequence[Piece]) -> bool:
    """ "those two are", "the last two": so many of the sets that stand, and nothing told of them."""
    at = next((at for at, piece in enumerate(pieces) if piece.kind is K.NUMBER), 0)
    number, pointing = pieces[at], pieces[at - 1]
    if (
        not at
        or not all(is_cued(piece.text, ARTICLES) for piece in pieces[: at - 1])
        or not {piece.kind for piece in pieces[at + 1 :]} <= NOTHING_TOLD
    ):
        return False
    if not 1 < number.value <= MOST or number.role not in (Role.BARE, Role.SETS):
        return False
    return is_cued(pointing.text, POINTING) or (pointing.kind in (K.LAST, K.FIRST) and number.spelled)


NOTHING_TOLD = ENDS | {K.FILLER, K.SETS, K.ASKS}
ARTICLES = frozenset(("the", "and", "but", "my"))
MOST = 5


def _blames_a_number(pieces: Sequence[Piece]) -> bool:
    """ "8 was wrong", "delete that, 8 was wrong": what it was instead is not told."""
    if not any_cued(texts_in_order(pieces), WRONGLY):
        return False
    numbers = [at for at, piece in enumerate(pieces) if piece.kind is K.NUMBER]
    behind = [piece for piece in pieces[numbers[0] + 1 :] if piece.kind not in ENDS | UNITS]
    blamed = len(behind) == 2 and is_be(behind[0]) and is_cued(behind[1].text, WRONGLY)
    return len(numbers) == 1 and blamed and not (numbers[0] and pieces[numbers[0] - 1].kind is K.SETS)
