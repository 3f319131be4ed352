"""An answer under way, and what settles the question."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

from engine.catalogue.catalogue import Catalogue, normalise
from engine.reading.answers.words import ANSWER_FILLERS
from engine.reading.asking import question_of
from engine.reading.prepare import Prepared
from engine.reading.values import Answer, Asked, Context, Doubt, Logged, Reading, Settled, StillOpen
from engine.reading.wording import label_of
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook, spoken
from engine.reading.words.pieces import Piece, Role
from engine.values.ids import ExerciseName
from engine.values.load import Basis
from engine.values.sets import SetDone


@dataclass(frozen=True, slots=True)
class Answering:
    """An answer under way."""

    text: str
    words: tuple[str, ...]
    prepared: Prepared
    asked: Asked
    context: Context
    catalogue: Catalogue

    def numbers(self) -> list[Piece]:
        """The numbers said; "the cable one" says none, nor does "all three"."""
        pieces = self.prepared.pieces
        return [
            piece
            for at, piece in enumerate(pieces)
            if piece.kind is K.NUMBER and not (piece.spelled and _says_none(piece, pieces[at - 1] if at else None))
        ]

    def tells_sets(self) -> bool:
        """Whether sets are told by their signs: "3x12", "4 sets", "12 at 15"."""
        return any(piece.kind in SET_SIGNS or piece.role is Role.SETS for piece in self.prepared.pieces)

    def names(self) -> set[ExerciseName]:
        """The exercises named; the "oh" in front names none."""
        chatter = phrasebook().cues["polite"] | phrasebook().cues["slip"]
        named = (piece for piece in self.prepared.pieces if piece.kind is K.NAME and piece.text not in chatter)
        return {name for piece in named for name in piece.names}

    def only_names(self) -> bool:
        """Whether nothing is said beside the lift but what answers are told with: "no sorry, i meant bench"."""
        return not self.heads_a_request() and all(_belongs_to_an_answer(piece) for piece in self.prepared.pieces)

    def explains(self) -> bool:
        """Whether an unknown name is explained by a lift, in whatever words: "same as leg press", "a kind of row"."""
        return not self.heads_a_request() and TALKING.isdisjoint([piece.kind for piece in self.prepared.pieces])

    def heads_a_request(self) -> bool:
        """Whether the first word asks for a session, a plan or a week: "today bench", "plan bench"."""
        return bool(self.words) and not SHOWING.isdisjoint(phrasebook().heads.get(self.words[0], ()))


SHOWING = frozenset(("today", "plan", "week", "volume", "preview", "check"))
ANSWERING = frozenset(
    (K.NAME, K.FILLER, K.COMMA, K.STOP, K.COLON, K.DASH, K.OTHER_SIGN, K.LINE, K.NOT, K.DENY, K.WITH, K.ONLY, K.VARIANT,
     K.DUMBBELL, K.BARBELL, K.CABLE, K.MACHINE, K.KETTLEBELL, K.BAR, K.NOTE, K.NUMBER, K.KG, K.LB, K.REPS, K.SETS,
     K.EACH)
)  # fmt: skip
TALKING = frozenset((K.FUTURE, K.TOMORROW, K.ASKS, K.STORY, K.OTHERS, K.SAYING, K.PAIN, K.NEVER, K.QUESTION))
CUES_OF_ANSWERS = ("polite", "please", "slip", "mean", "tail", "be", "yes", "no", "instead")


def _belongs_to_an_answer(piece: Piece) -> bool:
    known = _words_of_answers()
    return piece.kind in ANSWERING or all(spoken(word) in known for word in piece.text.split())


@lru_cache(maxsize=1)
def _words_of_answers() -> frozenset[str]:
    cues = phrasebook().cues
    phrases = [phrase for name in CUES_OF_ANSWERS for phrase in cues.get(name, ())]
    return ANSWER_FILLERS | {word for phrase in phrases for word in phrase.split()}


SET_SIGNS = frozenset((K.TIMES, K.FOR, K.AT, K.SETS, K.COUNT))


def _says_none(number: Piece, before: Piece | None) -> bool:
    if number.role is not Role.BARE:
        return False
    return number.value == 1 or (before is not None and before.text in ("all", "of", "both"))


def settle(told: Answering, readings: Sequence[Reading]) -> Answer | None:
    """One reading left settles the question; fewer than before narrow it."""
    asked = told.asked
    if len(readings) == 1:
        return settled(told, readings[0].sets)
    if 1 < len(readings) < len(asked.readings):
        rivals = [reading.sets for reading in readings]
        left = tuple(replace(reading, label=label_of(reading.sets, rivals)) for reading in readings)
        doubt = Doubt.NUMBERS if len({exercises(reading) for reading in left}) == 1 else Doubt.EXERCISE
        return StillOpen(
            replace(asked, readings=left, doubt=doubt, question=question_of(doubt, asked.typed or asked.term, left))
        )
    return None


def settled(told: Answering, sets: Sequence[SetDone]) -> Settled | StillOpen:
    """The sets that the answer came to; or the question about their numbers, where only the exercise was settled."""
    asked = told.asked
    if not told.tells_sets() and (left := numbers_left(asked, sets) or words_left(told, sets)) is not None:
        return left
    logged = Logged(tuple(sets), asked.on, asked.note, asked.pain, why="answered")
    return Settled(logged, taught_by(asked, sets))


def taught_by(asked: Asked, sets: Sequence[SetDone]) -> dict[str, ExerciseName]:
    """The word in doubt and the exercise it was settled to; nothing where the doubt was another."""
    if asked.doubt is not Doubt.EXERCISE or not asked.term:
        return {}
    doubtful = {one.exercise for reading in asked.readings for one in reading.sets} - fixed_lifts(asked.readings)
    chosen = {one.exercise for one in sets if one.exercise in doubtful}
    return {normalise(asked.term): chosen.pop()} if len(chosen) == 1 else {}


def numbers_left(asked: Asked, sets: Sequence[SetDone]) -> StillOpen | None:
    """The question about the numbers of a lift that was chosen, where they were in doubt as well; None where not."""
    chosen = next((reading for reading in asked.readings if reading.sets == tuple(sets)), None)
    rivals = [reading for reading in asked.behind if exercises(reading) == exercises_of(sets)]
    if chosen is None and (renamed := _rivals_of_another(asked, sets)):
        chosen, rivals = Reading(tuple(sets), asked.readings[0].plausibility, ""), renamed
    if chosen is None or not rivals:
        return None
    told = [reading.sets for reading in (chosen, *rivals)]
    left = tuple(replace(reading, label=label_of(reading.sets, told)) for reading in (chosen, *rivals))
    question = question_of(Doubt.NUMBERS, "", left)
    learnt = (*asked.learnt, *taught_by(asked, sets).items())
    return StillOpen(replace(asked, readings=left, behind=(), doubt=Doubt.NUMBERS, question=question, learnt=learnt))


def _rivals_of_another(asked: Asked, sets: Sequence[SetDone]) -> list[Reading]:
    """The other ways to take the numbers, of a lift that was none of those offered: "curl 12x10", and then "cable"."""
    names, first = exercises_of(sets), asked.readings[0] if asked.readings else None
    if first is None or len(names) != 1 or len(exercises(first)) != 1 or not _alike(sets, first.sets):
        return []
    basis = {one.load.basis for one in sets if one.load is not None}
    if len(basis) != 1:
        return []
    put = basis.pop()
    rivals = [reading.sets for reading in asked.behind if exercises(reading) == exercises(first)]
    told = [tuple(_put_to(one, names[0], put) for one in rival) for rival in rivals]
    return [Reading(rival, first.plausibility, "") for rival in told]


def _put_to(one: SetDone, name: ExerciseName, basis: Basis) -> SetDone:
    return replace(one, exercise=name, load=replace(one.load, basis=basis) if one.load is not None else None)


def _alike(sets: Sequence[SetDone], others: Sequence[SetDone]) -> bool:
    """Whether they are the same numbers."""
    told = [[(one.reps, one.load.amount if one.load else None) for one in group] for group in (sets, others)]
    return told[0] == told[1]


def words_left(told: Answering, sets: Sequence[SetDone]) -> StillOpen | None:
    """The question about words that may change the sets, where only the lift was settled; None where all is clear."""
    asked = told.asked
    if not asked.unclear or told.numbers():
        return None
    left = (Reading(tuple(sets), 1.0, label_of(sets)),)
    question = question_of(Doubt.WORDS, asked.unclear, left)
    learnt = (*asked.learnt, *taught_by(asked, sets).items())
    now = replace(asked, readings=left, behind=(), doubt=Doubt.WORDS, typed=asked.unclear, unclear="")
    return StillOpen(replace(now, question=question, learnt=learnt))


def fixed_lifts(readings: Sequence[Reading]) -> frozenset[ExerciseName]:
    """The lifts that all readings have, where they have different ones: of those nothing is in doubt."""
    lifts = [frozenset(exercises(reading)) for reading in readings]
    return frozenset.intersection(*lifts) if len(set(lifts)) > 1 else frozenset()


def exercises_of(sets: Sequence[SetDone]) -> tuple[ExerciseName, ...]:
    return tuple(dict.fromkeys(one.exercise for one in sets))


def exercises(reading: Reading) -> tuple[ExerciseName, ...]:
    return tuple(dict.fromkeys(one.exercise for one in reading.sets))
