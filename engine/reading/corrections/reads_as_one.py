"""Whether a message reads as a correction, so that its numbers are no new sets, whatever comes of it."""

from __future__ import annotations

from engine.reading.corrections.correcting import Told
from engine.reading.corrections.deletes import deletes
from engine.reading.corrections.kinds_of_sets import is_of_one_of_its_kind
from engine.reading.corrections.marks import MARKS
from engine.reading.corrections.named_by_numbers import names_none
from engine.reading.corrections.open_numbers import denies_a_number
from engine.reading.corrections.parts import counts_too_many, part_told
from engine.reading.corrections.renamed_at_load import is_of_which_lift
from engine.reading.corrections.restated import is_of_one_of_several
from engine.reading.corrections.said_to_be import is_be
from engine.reading.corrections.told_by_parts import reps_by_parts
from engine.reading.corrections.values import TALK, says_after
from engine.reading.latest_sets import latest_of_it, run_of_it
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece

SHORT, WHOLE = 4, 7
"""Pieces of a single set, and of a line of sets with its load."""
MOST_TURNED = 7


def is_correcting(told: Told) -> bool:
    """Whether the message begins or ends as a correction does, so that its numbers are no new sets."""
    kinds = told.kinds()
    if not told.pieces or kinds & {K.QUESTION, K.TOMORROW} or told.pieces[0].kind is K.ASKS:
        return False
    counts = [piece for piece in told.pieces if piece.kind in (K.NUMBER, K.COUNT)]
    if len(counts) >= 2 and any(denies_a_number(told.pieces, at) for at in range(len(told.pieces))):
        return True
    if not counts:
        turned = told.has("swapped") and len(told.words) <= MOST_TURNED
        return turned or _is_blamed(told) or deletes(told) or _marks_what_is_not(told)
    if counts_too_many(told.pieces, told.context) or reps_by_parts(told) or names_none(told.pieces):
        return True
    longest = WHOLE if told.retracted else SHORT
    if told.slipped and K.TIMES in kinds and len(told.pieces) <= longest and _is_of_no_lift_done(told):
        return True  # "squat 100x5", then "no, bench 60x8": in its place, or one more
    if _tells_the_next(told):
        return False
    short = K.NAME not in kinds and len(told.pieces) <= SHORT
    if told.has("mean") or deletes(told) or (told.slipped and short) or (told.starts("make") and K.NAME not in kinds):
        return True
    return (
        is_of_one_of_several(told)
        or is_of_one_of_its_kind(told)
        or is_of_which_lift(told)
        or (K.TIMES not in kinds and _says_what_was(told))
    )


def _tells_the_next(told: Told) -> bool:
    """ "ugh third one only got 4", where two single sets stand: no correction, but one more."""
    places = [piece.told for piece in told.pieces if piece.kind is K.ORDINAL]
    single = len(latest_of_it(told.context)) == 1 and K.NAME not in told.kinds() and not told.retracted
    return single and not any(map(is_be, told.pieces)) and places == [len(run_of_it(told.context)) + 1]


def _is_of_no_lift_done(told: Told) -> bool:
    return any(_is_new(piece, told) for piece in told.pieces)


def _is_blamed(told: Told) -> bool:
    """ "that was wrong", and no more."""
    return told.has("wrongly") and len(told.words) <= SHORT and told.kinds() <= {K.FILLER, K.PLAIN, K.LAST, K.SETS}


def _marks_what_is_not(told: Told) -> bool:
    part = part_told(told.pieces, told.context)
    return part.missing and any(piece.kind in MARKS for piece in told.pieces)


def _says_what_was(told: Told) -> bool:
    """ "set 4 was 7" where there are three: a verb behind a part or a pronoun, and a number behind the verb."""
    verb = next((at for at, piece in enumerate(told.pieces) if is_be(piece)), None)
    if verb is None or any(piece.kind in TALK for piece in told.pieces):
        return False
    told_behind = says_after(told) or any(piece.kind in MARKS for piece in told.pieces[verb:])
    return told_behind and not any(_is_new(piece, told) for piece in told.pieces)


def _is_new(piece: Piece, told: Told) -> bool:
    """A lift that has no sets yet: "squat was 100 for 5" tells of new ones."""
    done = {record.done.exercise for record in told.context.recent}
    return piece.kind is K.NAME and not done & set(piece.names)
