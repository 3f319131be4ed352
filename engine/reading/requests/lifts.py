"""What is said of one lift without a verb that asks: "how's my deadlift", "show me squats", "skipped the curls".

why     = name and a word that ASKS for its LOAD, of a set AHEAD, and only words AROUND it
history = name and a word that asks HOW it went, and only words AROUND it
skip    = name and what leaves it out (LEFT OVER), where it is on for today
Each part in capitals is a cue of the language files.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.catalogue.catalogue import Catalogue
from engine.reading.entries.names import EQUIPMENT, narrowed, of_equipment
from engine.reading.values import Act, Context
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import MOST_WORDS_OF_A_PHRASE, Phrasebook
from engine.reading.words.pieces import Piece
from engine.reading.words.tokens import Token

NO_QUESTION = frozenset(
    (K.NUMBER, K.COUNT, K.TIMES, K.PAIN, K.OTHERS, K.STORY, K.YESTERDAY, K.DATE, K.TOMORROW, K.SAYING)
)
LONGEST = 10
BESIDE = frozenset(
    ("i", "im", "ive", "the", "my", "today", "tonight", "now", "we", "just", "have", "had", "to", "please", "was",
     "were", "is", "are", "got", "so", "all", "any")
)  # fmt: skip


def asked_of_a_lift(
    words: Sequence[tuple[str, Token]], pieces: Sequence[Piece], context: Context, book: Phrasebook
) -> Act | None:
    """How one lift went, or that it is left out; None for anything else."""
    kinds = [piece.kind for piece in pieces]
    if kinds.count(K.NAME) != 1 or len(words) > LONGEST or not NO_QUESTION.isdisjoint(kinds):
        return None
    lift = pieces[kinds.index(K.NAME)]
    around = [word for word, token in words if not lift.start <= token.start < lift.end]
    if any(" ".join(around[:length]) in book.cues["howto"] for length in (2, 3)):
        return None  # "how do i deadlift"
    known, core = book.cues["aroundhistory"], book.cues["askedhistory"]
    if not core.isdisjoint(around) and all(word in known or word in core for word in around):
        return Act("history", exercise=narrowed(lift.names, context)[0])
    exercise = narrowed(lift.names, context)[0]
    if _asks_the_load(around, book):
        return Act("why", exercise=exercise)
    told = " ".join(word for word in around if word not in BESIDE)
    on = exercise == context.doing or any(slot.exercise == exercise for slot in context.plan)
    left_out = told in book.cues["leftover"] and on and K.QUESTION not in kinds
    return Act("skip", exercise=exercise) if left_out else None


def _asks_the_load(around: Sequence[str], book: Phrasebook) -> bool:
    """ "row next, which weight?": what to put on the bar for it; "how heavy was the row" is of a day before."""
    for at in range(len(around)):
        for length in range(min(MOST_WORDS_OF_A_PHRASE, len(around) - at), 0, -1):
            if " ".join(around[at : at + length]) in book.cues["askload"]:
                others = [*around[:at], *around[at + length :]]
                ahead = not book.cues["loadahead"].isdisjoint(others) or not book.cues["loadahead"].isdisjoint(
                    around[at + 1 : at + length]
                )
                return ahead and book.cues["aroundload"].issuperset(others)
    return False


def with_equipment_behind(pieces: Sequence[Piece], catalogue: Catalogue) -> list[Piece]:
    """ "press banca con mancuernas", "panca manubri": equipment right behind a name, where it makes another lift."""
    out: list[Piece] = []
    for piece in pieces:
        at = len(out) - 1
        if at > 0 and out[at].kind is K.WITH:
            at -= 1
        if piece.kind in EQUIPMENT and at >= 0 and out[at].kind is K.NAME:
            names = of_equipment(out[at].names, piece.kind, out[at].text, catalogue)
            if names:
                out[at:] = [out[at]._replace(names=names, end=piece.end)]
                continue
        out.append(piece)
    return out
