"""load first, reps first: which number of a light pair is the load, where nothing else tells; forgotten like a word."""

from __future__ import annotations

from dataclasses import replace

from bot.context import context_of
from bot.preferences import LOAD_FIRST
from bot.replies.small import order_forgotten, order_set, order_words
from bot.turn import Turn
from engine.catalogue.catalogue import normalise
from engine.reading import read
from engine.reading.values import Act, Asked, Doubt, Logged
from storage.records import Change, ChangeKind


def load_first(turn: Turn, act: Act) -> None:
    """Nothing; the first number of a pair that is open is the load from now on."""
    _set(turn, first=True)


def reps_first(turn: Turn, act: Act) -> None:
    """Nothing; the first number of a pair that is open is the reps from now on."""
    _set(turn, first=False)


def _set(turn: Turn, *, first: bool) -> None:
    change = turn.begin(ChangeKind.TEACH, order_words(first))
    turn.store.settings.put(change, LOAD_FIRST, first)
    turn.forget_lookups()
    turn.say(order_set(first))


def forgets_order(turn: Turn, words: str) -> bool:
    """Whether the words name the order that is kept, which is then kept no more."""
    kept = turn.preferences.load_first
    if kept is None or normalise(words) != normalise(order_words(kept)):
        return False
    change = turn.begin(ChangeKind.TEACH, f"forgetting {order_words(kept)}")
    turn.store.settings.clear(change, LOAD_FIRST)
    turn.forget_lookups()
    turn.say(order_forgotten(kept))
    return True


def read_so(turn: Turn, text: str, asked: Asked, *, first: bool) -> Logged | None:
    """The open message under this order, its words as answers have settled them; None where that does not settle it."""
    known = context_of(turn)
    taught = {**known.taught, **dict(asked.learnt)}
    outcome = read(text, replace(known, load_first=first, taught=taught), turn.catalogue)
    return outcome if isinstance(outcome, Logged) else None


def order_shown(turn: Turn, text: str, asked: Asked, chosen: Logged) -> bool | None:
    """Whether a chosen reading has the load first; None where the question was of something else, or settled before."""
    if asked.doubt is not Doubt.NUMBERS or turn.preferences.load_first is not None:
        return None
    ways = {first: read_so(turn, text, asked, first=first) for first in (True, False)}
    fitting = [first for first, told in ways.items() if told is not None and told.sets == chosen.sets]
    return fitting[0] if len(fitting) == 1 else None


def keep(turn: Turn, change: Change, first: bool) -> list[str]:
    """What is taken for granted from now on, in words."""
    turn.store.settings.put(change, LOAD_FIRST, first)
    turn.forget_lookups()
    return [f"Where a pair is open, {order_words(first)} from now on (forget {order_words(first)})."]
