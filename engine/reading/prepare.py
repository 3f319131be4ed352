"""From text to pieces that only need grammar: cleaned, cut to tokens, names mended, days and marks gathered."""

from __future__ import annotations

from typing import NamedTuple

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.way_of_the_last import with_ways_of_all
from engine.reading.gathering import gathered
from engine.reading.lexing.lexer import Lexer
from engine.reading.lexing.marks_misspelt import with_marks_mended
from engine.reading.lexing.too_many import MOST_DAYS, MOST_NAMES, MOST_NUMBERS, too_many
from engine.reading.marks.ladders import BETWEEN_ENDS, with_rungs
from engine.reading.marks.reps_of_all_loads import with_reps_of_light_loads
from engine.reading.marks.reps_perhaps import BESIDE_REPS, with_a_miss_perhaps, with_other_reps
from engine.reading.marks.reps_spoken_of import may_speak_of_reps, with_reps_spoken_of
from engine.reading.marks.results_relisted import with_results_relisted
from engine.reading.marks.taken_back import may_take_back, without_sets_taken_back
from engine.reading.marks.weighted_from_there import with_weight_from_there
from engine.reading.naming import PLAINLY_SETS, named
from engine.reading.values import Context
from engine.reading.words.kinds import K
from engine.reading.words.pieces import Piece, kinds_in_order
from engine.reading.words.tokens import Token, clean, tokenize


class Prepared(NamedTuple):
    """`spoken`: the pieces before dates and marks were gathered, as intents and corrections want them.

    `other`: the same message read the other way, where "52,5" may be one number or two, a way that of the last sets
    alone, a rising list loads or reps, or two numbers the ends of a ladder.
    `told`: the kinds of the spoken pieces; most messages hold few, and most questions about a message are settled by
    them alone.
    """

    cleaned: str
    tokens: list[Token]
    spoken: list[Piece]
    pieces: list[Piece]
    other: list[Piece] | None = None
    told: frozenset[K] = frozenset()

    @property
    def is_too_much(self) -> bool:
        """Whether the message holds more numbers, signs, lifts or days than it may; none of it was read."""
        return bool(self.tokens) and not self.spoken


def prepare(text: str, context: Context, catalogue: Catalogue) -> Prepared:
    """The pieces of a message."""
    cleaned = clean(text)
    tokens = tokenize(cleaned)
    if len(tokens) > MOST_NUMBERS and too_many(tokens):
        return Prepared(cleaned, tokens, [], [])
    lexer = Lexer(tokens, catalogue, context.taught)
    spoken, told = named(lexer, cleaned, catalogue, context.called)
    listed, spelt = spoken, tokens
    right = with_marks_mended(tokens, spoken, catalogue) if K.PLAIN in told else None
    if right is not None:
        # Requests and corrections mend their own words, so they are shown what was typed.
        spelt, lexer = right, Lexer(right, catalogue, context.taught)
        listed, more = named(lexer, cleaned, catalogue, context.called)
        told |= more
    if len(spoken) > MOST_NAMES and kinds_in_order(spoken).count(K.NAME) > MOST_NAMES:
        return Prepared(cleaned, tokens, [], [])
    other = None
    if lexer.in_doubt:
        again = Lexer(spelt, catalogue, context.taught, lexer.comma_in_doubt, not lexer.comma_in_doubt)
        other = gathered(*named(again, cleaned, catalogue, context.called), context)
    elif K.NAME in told and (of_all := with_ways_of_all(listed)) is not None:
        other = gathered(of_all, told | {K.NOTE}, context)
    elif K.NUMBER in told and (put_in := _counted_otherwise(listed, told)) is not None:
        other = gathered(put_in, told | {K.TIMES, K.DASH}, context)
    if K.NUMBER in told and not told <= PLAINLY_SETS:
        listed = with_results_relisted(listed, cleaned) if K.TIMES in told else listed
        listed = without_sets_taken_back(listed, cleaned) if may_take_back(tokens) else listed
        listed = with_reps_spoken_of(listed, cleaned) if may_speak_of_reps(told, listed) else listed
    return _of_days(Prepared(cleaned, tokens, spoken, gathered(listed, told, context), other, frozenset(told)))


def _counted_otherwise(pieces: list[Piece], told: set[K]) -> list[Piece] | None:
    """The pieces, which are of these kinds, with numbers that may count something else read so; None where none may."""
    found = with_reps_of_light_loads(pieces)
    if told <= PLAINLY_SETS:
        return found
    if found is None and not told.isdisjoint(BETWEEN_ENDS):
        found = with_rungs(pieces)
    if found is None and not told.isdisjoint(BESIDE_REPS):
        found = with_other_reps(pieces)
    if found is None and K.ADDED in told:
        found = with_weight_from_there(pieces)
    return with_a_miss_perhaps(pieces) if found is None and K.FAILURE in told else found


def _of_days(prepared: Prepared) -> Prepared:
    """The same; without its pieces where they tell more days than a message may."""
    pieces = prepared.pieces
    too_many_days = len(pieces) > MOST_DAYS and kinds_in_order(pieces).count(K.DATE) > MOST_DAYS
    return Prepared(prepared.cleaned, prepared.tokens, [], []) if too_many_days else prepared
