"""A lift of today's plan met with a slip of the thumb, behind a head that is sure: "skip crls".

Alone a short word may be any other word; behind "skip", with a lift of that name on for today, it is that lift, and the
reply says what was read.
"""

from __future__ import annotations

from rapidfuzz.distance import OSA

from engine.reading.requests.said import Said
from engine.reading.values import Act, Context
from engine.reading.words.kinds import K
from engine.values.ids import ExerciseName

SHORTEST = 4
LISTED = frozenset((K.PLAIN, K.FILLER, K.TODAY))


def skipped_as_mended(said: Said) -> Act | None:
    """The request to skip the one lift of the plan that the unknown word may be; None where none or several may be."""
    unknown = [piece for piece in said.pieces if piece.kind is K.PLAIN]
    if len(unknown) != 1 or any(piece.kind not in LISTED for piece in said.pieces):
        return None
    near = _near(unknown[0].text, said)
    lifts = set(near.values())
    if len(lifts) != 1:
        return None
    return Act("skip", exercise=lifts.pop(), text=said.rest, mended=f"skip {min(near)}")


def _near(word: str, said: Said) -> dict[str, ExerciseName]:
    """Names of today's lifts, one slip from the word and alike in the first letter, each with its lift."""
    planned = {slot.exercise for slot in said.context.plan}
    if len(word) < SHORTEST or not word.isalpha():
        return {}
    found: dict[str, ExerciseName] = {}
    for phrase, owners in said.catalogue.phrases.items():
        if phrase[0] != word[0] or " " in phrase or planned.isdisjoint(owners):
            continue
        fits = planned.intersection(owners)
        for known in (phrase, f"{phrase}s"):
            if len(fits) == 1 and OSA.distance(word, known, score_cutoff=1) <= 1:
                found[known] = next(iter(fits))
    return found


def one_planned(word: str, context: Context) -> ExerciseName | None:
    """The only lift of today whose name has the word, of one or of several: "raises"; None where none or two do."""
    said = word.casefold()
    alike = {said, said.removesuffix("s"), said.removesuffix("es")}
    fits = [slot.exercise for slot in context.plan if not alike.isdisjoint(slot.exercise.replace("-", " ").split())]
    return fits[0] if len(set(fits)) == 1 else None


def words_for_lifts(said: Said) -> list[str]:
    """Unknown words that stand in a list of lifts: "skip raises and push ups"."""
    kinds = [piece.kind for piece in said.pieces]
    found = []
    for at, piece in enumerate(said.pieces):
        ahead, behind = kinds[at - 1] if at else None, kinds[at + 1] if at + 1 < len(kinds) else None
        listed = (ahead in (None, K.AND, K.COMMA) and behind in (K.AND, K.COMMA)) or (ahead is K.AND and behind is None)
        if piece.kind is K.PLAIN and listed:
            found.append(piece.text)
    return found


def leaving_by_a_word(said: Said) -> ExerciseName | None:
    """The planned lift that an unknown word in front of "for" names: "swap raises for cable lateral raise"."""
    first, *behind = said.pieces
    linked = len(behind) > 1 and behind[0].kind in (K.FOR, K.WITH, K.BY) and behind[1].kind in (K.NAME, K.FILLER)
    return one_planned(first.text, said.context) if first.kind is K.PLAIN and linked else None


def planned_lifts(said: Said) -> list[ExerciseName]:
    """The lifts named; where no owner of a name is planned, the only planned lift with its word: hammer curls."""
    on = {slot.exercise for slot in said.context.plan}
    named = [piece for piece in said.pieces if piece.kind is K.NAME]
    found = zip(named, said.exercises(), strict=True)
    return [one if one in on else one_planned(piece.text.split()[-1], said.context) or one for piece, one in found]
