"""Requests with something behind them: skip what, swap what for what, pause until when."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from engine.reading.entries.names import narrowed
from engine.reading.requests import of_time
from engine.reading.requests.lifts_mended import (
    leaving_by_a_word,
    one_planned,
    planned_lifts,
    skipped_as_mended,
    words_for_lifts,
)
from engine.reading.requests.moved_sessions import move
from engine.reading.requests.part_read import SOME_SETS, UNCLEAR, counts_sets
from engine.reading.requests.quiet import quiet_behind
from engine.reading.requests.said import Said
from engine.reading.requests.teaching import taught_of
from engine.reading.requests.to_people import code_told, digest_of, plan_for, told_person
from engine.reading.requests.weight import bodyweight, weighed, weight
from engine.reading.values import Act, Context
from engine.reading.words.cues import CUES_OF, any_cued
from engine.reading.words.kinds import K
from engine.reading.words.phrasebook import phrasebook
from engine.reading.words.pieces import Piece, Role
from engine.reading.words.tokens import Token
from engine.values.ids import ExerciseName

WHOLE = frozenset(("all", "everything", "every", "whole", "full", "rest"))
THIS_ONE = frozenset(("this", "it", "that", "one", "exercise", "current"))
NOTHING_MORE = frozenset(("today", "now", "please", "for", "the", "my", "sets", "set", "on", "in"))


# ---- requests with something behind them


def _skip(said: Said) -> Act | None:
    named = planned_lifts(said)
    others = words_for_lifts(said)
    if named and others:
        found = [one_planned(word, said.context) for word in others]
        if None in found:
            return Act(
                UNCLEAR, text=f"I know no lift of today's by {others[found.index(None)]}: name all of them in full"
            )
        named += [one for one in found if one is not None and one not in named]
    if named and not said.numbers() and (others or _little_else(said)):
        return Act("skip", exercise=named[0], text=said.rest, also=tuple(named[1:]))
    if named and counts_sets(said.pieces, said.head):
        return Act(UNCLEAR, text=SOME_SETS)
    words = set(said.rest_words)
    if words and words <= THIS_ONE | NOTHING_MORE and words & (THIS_ONE | {"today"}):
        return Act("skip", exercise=said.context.doing, text=said.rest)
    alone = one_planned(said.rest_words[0], said.context) if len(said.rest_words) == 1 and not named else None
    return Act("skip", exercise=alone, text=said.rest) if alone is not None else skipped_as_mended(said)


def skipped_but(words: Sequence[str], pieces: Sequence[Piece], context: Context) -> Act | None:
    """ "everything except bench": the planned lifts that are not named; what cannot be told apart is not skipped."""
    named = {narrowed(piece.names, context)[0] for piece in pieces if piece.kind is K.NAME}
    if WHOLE.isdisjoint(words) or not named:
        return None
    others = [slot.exercise for slot in context.plan if slot.exercise not in named]
    if not others or len(others) == len(context.plan):
        return Act(UNCLEAR, text="what is kept must be a lift of today's plan: skip all except squat")
    return Act("skip", exercise=others[0], also=tuple(others[1:]))


def _little_else(said: Said) -> bool:
    """Whether hardly more than the exercise was said."""
    return sum(1 for piece in said.pieces if piece.kind in (K.PLAIN, K.STORY, K.PAIN)) <= 1


def _swap(said: Said) -> Act | None:
    named = said.exercises()
    short = _linked_by_a_figure(said.pieces)
    if (said.numbers() and not short) or not 1 <= len(named) <= 2:
        return None
    if len(named) == 1 and (leaving := leaving_by_a_word(said)) is not None:
        return Act("swap", exercise=leaving, to=named[0], text=said.rest) if leaving != named[0] else None
    if len(named) == 1:
        doing = said.context.doing
        onto = bool(said.rest_words) and said.rest_words[0] in ONTO
        if onto and doing is not None and doing != named[0]:
            return Act("swap", exercise=doing, to=named[0], text=said.rest)
        return None if onto else Act("swap", exercise=named[0], text=said.rest)
    linked = short or any(
        piece.kind in (K.FOR, K.WITH, K.BY, K.THEN, K.NOT, K.AND, K.ARROW) or "swapinto" in CUES_OF[piece.text]
        for piece in said.pieces
    )
    old, new = in_and_out(named[0], named[1], said.context)
    return Act("swap", exercise=old, to=new, text=said.rest) if linked else None


def _linked_by_a_figure(pieces: Sequence[Piece]) -> bool:
    """ "row 4 pulldown" behind a word that swaps: "for" and "to" as they sound, and no other number."""
    kinds = [piece.kind for piece in pieces if piece.kind is not K.FILLER]
    numbers = [piece for piece in pieces if piece.kind is K.NUMBER]
    between = [K.NAME, K.NUMBER, K.NAME]
    bare = len(numbers) == 1 and numbers[0].role is Role.BARE and numbers[0].value in SOUNDING
    return bare and kinds[:3] == between and K.TIMES not in kinds


SOUNDING = (2, 4)


def in_and_out(first: ExerciseName, second: ExerciseName, context: Context) -> tuple[ExerciseName, ExerciseName]:
    """The lift to leave and the one to do: the first and the second, unless only the second is on for today ("sub
    hammer curls for preacher curls").
    """
    on = {slot.exercise for slot in context.plan} | ({context.doing} if context.doing else set())
    return (second, first) if second in on and first not in on else (first, second)


ONTO = frozenset(("to", "for", "with", "this", "it", "that", "those", "these", "them", "out"))


def _instead(said: Said) -> Act | None:
    """ "can i do B instead of A"."""
    named = said.exercises()
    if said.numbers() or not any(piece.kind is K.NOT or piece.text == "instead" for piece in said.pieces):
        return None
    if len(named) >= 2:
        return Act("swap", exercise=named[1], to=named[0], text=said.rest)
    doing = said.context.doing
    return Act("swap", exercise=doing, to=named[0], text=said.rest) if named and doing else None


def _with_exercise(said: Said) -> Act | None:
    """History, best, why of an exercise: named, and nothing said that is more than a question."""
    named = said.exercises()
    if len(named) != 1 or any(piece.role is not Role.BARE for piece in said.numbers()):
        return None
    if len(said.numbers()) > (1 if said.name == "why" else 0) or not _little_else(said):
        return None
    if said.name == "history" and any(_is_felt(said.pieces, at) for at in range(len(said.pieces))):
        return None
    return Act(said.name, exercise=named[0], text=said.rest)


def _is_felt(pieces: Sequence[Piece], at: int) -> bool:
    """Whether the piece tells how a set felt; "how much", "how heavy" ask for the load."""
    piece = pieces[at]
    asks = at > 0 and pieces[at - 1].kind is K.ASKS
    return piece.kind is K.NOTE and piece.text not in BEST_WORDS and not asks


def _why(said: Said) -> Act | None:
    words = set(said.rest_words)
    if not phrasebook().cues["complains"].isdisjoint(words):
        return None  # "why do i stall on bench" asks about her, and about no load
    if said.exercises():
        return _with_exercise(said)
    few = len(said.rest_words) <= 5 and len(said.numbers()) <= 1
    if few and said.numbers() and all(piece.role in (Role.BARE, Role.LOAD) for piece in said.numbers()):
        return Act("why", exercise=said.context.doing, text=said.rest)
    if words and words <= ABOUT_NEXT:
        return Act("why", exercise=said.context.doing, text=said.rest)
    return None


ABOUT_NEXT = frozenset(
    ("this", "that", "the", "load", "weight", "reps", "so", "much", "little", "heavy", "light", "only", "less", "more",
     "is", "it", "many", "few", "sets")
)  # fmt: skip


def _history(said: Said) -> Act | None:
    found = _with_exercise(said)
    if found is None:
        return None
    short = (
        said.name == "best" and said.rest_words and said.rest_words[-1] in ("pr", "pb", "best", "max", "record", "1rm")
    )
    if said.name == "best" and not short and not _is_about_best(said):
        return None
    return found


def _is_about_best(said: Said) -> bool:
    """ "my squat" alone asks for nothing; "best squat", "my squat pr" do."""
    bare_heads = any(piece.kind is K.NOTE for piece in said.pieces)
    return (
        not bare_heads
        and len(said.rest_words) <= 4
        and all(piece.kind in (K.NAME, K.FILLER, K.EACH) for piece in said.pieces)
    )


def asks_history(words: list[tuple[str, Token]], pieces: Sequence[Piece], context: Context) -> Act | None:
    """ "squat last time?", "bench history": the exercise in front."""
    kinds = [piece.kind for piece in pieces]
    if kinds.count(K.NAME) != 1 or K.NUMBER in kinds or len(words) > 9:
        return None
    named = [narrowed(piece.names, context)[0] for piece in pieces if piece.kind is K.NAME]
    phrase = " ".join(word for word, _ in words)
    felt = any(piece.kind is K.PAIN or (piece.kind is K.NOTE and piece.text not in BEST_WORDS) for piece in pieces)
    if felt:
        return None  # "squats felt heavy last time" tells, and asks for nothing
    if (
        phrase.endswith((" last time", " history", " last session", " log", " last week", " stats", " progress"))
        and " last " not in phrase[:4]
    ):
        return Act("history", exercise=named[0])
    if phrase.endswith((" pr", " best", " record", " pb", " max", " records")) and len(words) <= 6:
        return Act("best", exercise=named[0])
    return None


BEST_WORDS = frozenset(("pr", "pb", "best", "record", "max", "records"))


def _units(said: Said) -> Act | None:
    kinds = [piece.kind for piece in said.pieces]
    units = [kind for kind in kinds if kind in (K.KG, K.LB)]
    if len(set(units)) != 1 or len(kinds) > 3 or K.NUMBER in kinds:
        return None
    return Act("units", text="kg" if units[0] is K.KG else "lb")


def _teach(said: Said) -> Act | None:
    return taught_of(said.rest, said.catalogue, plainly=True)


def _text(said: Said) -> Act | None:
    return Act(said.name, text=said.rest) if said.rest else None


def _what_if(said: Said) -> Act | None:
    """A change of the plan; "what if i can't get 5 at 100?" is a question."""
    changes = not said.numbers() or not PLAN_CHANGES.isdisjoint(said.rest_words)
    return Act(said.name, text=said.rest) if said.rest and changes else None


PLAN_CHANGES = frozenset(
    ("swap", "swapped", "replace", "replaced", "change", "changed", "add", "added", "drop", "dropped", "remove",
     "removed", "skip", "skipped", "cut", "move", "moved", "shift", "shifted", "train", "trained", "leave", "left",
     "stop", "stopped", "lose", "delete", "take", "without", "more", "fewer", "less", "extra", "instead", "set", "sets")
)  # fmt: skip


def _forget(said: Said) -> Act | None:
    """A taught word; "forget the curls today" leaves them out."""
    return None if any(piece.kind is K.TODAY for piece in said.pieces) else of_time.short_text(said)


def _dated_text(said: Said) -> Act | None:
    """Today, week: only a day, a number of weeks, or "all of it" may stand behind them; "last week 9" tells of reps."""
    kinds = [piece.kind for piece in said.pieces]
    if K.NUMBER in kinds and set(kinds) <= COUNTED_ALONE and said.name == "week":
        return None
    told = any(kind is not K.FILLER for kind in kinds) or not WHOLE.isdisjoint(said.rest_words)
    known = told and all(kind in DAY_WORDS for kind in kinds)
    return Act(said.name, text=said.rest) if said.rest_words and known else None


COUNTED_ALONE = frozenset((K.NUMBER, K.FILLER, K.REPS, K.SETS))
DAY_WORDS = frozenset(
    (
        K.WEEKDAY,
        K.TODAY,
        K.YESTERDAY,
        K.TOMORROW,
        K.FILLER,
        K.DATE,
        K.MONTH,
        K.AGO,
        K.WEEKS_AGO,
        K.HEADING,
        K.LAST,
        K.NUMBER,
        K.DASH,
        K.SLASH,
    )
)


def _muscle_text(said: Said) -> Act | None:
    """More of a muscle: "more side delts"; "more of that" asks for nothing."""
    telling = any(piece.kind in (K.MUSCLE, K.PLAIN, K.NAME, K.VARIANT, K.JOINT) for piece in said.pieces)
    return Act(said.name, text=said.rest) if telling and not said.numbers() and 0 < len(said.rest_words) <= 5 else None


def _volume(said: Said) -> Act | None:
    """Of a muscle; "volume 1" asks for the week's, and tells no reps; "squats is too many" asks what one thinks."""
    said = said.without("ofthedone")
    if any_cued(said.rest.split(), OF_AN_OPINION):
        return None
    return Act(said.name) if len(said.pieces) == 1 and said.numbers() else _muscle_text(said)


OF_AN_OPINION = frozenset(("advised",))


def _note(said: Said) -> Act | None:
    if _is_set_line(said):
        return None
    return taught_of(said.rest, said.catalogue) or (Act("note", text=said.rest) if said.rest else None)


def _is_set_line(said: Said) -> bool:
    """ "note bench 3x8 80": a lift and its sets right behind the word, and no other words; "note: ..." is a note."""
    kinds = [piece.kind for piece in said.pieces]
    return kinds[:1] == [K.NAME] and K.TIMES in kinds and len(said.numbers()) > 1 and SET_WORDS.issuperset(kinds)


SET_WORDS = frozenset(
    (K.NAME, K.NUMBER, K.TIMES, K.AT, K.COMMA, K.AND, K.SLASH, K.DASH, K.FILLER, K.KG, K.LB, K.EACH, K.FOR, K.SETS,
     K.REPS, K.WITH, K.RPE, K.RIR, K.STOP)
)  # fmt: skip


def _export(said: Said) -> Act | None:
    return Act(said.name, text=said.rest) if said.rest_words and set(said.rest_words) <= EXPORTED else None


EXPORTED = frozenset(
    ("csv", "json", "excel", "xlsx", "file", "text", "log", "sets", "plan", "data", "all", "everything", "my", "the",
     "as", "to", "a", "in", "please", "diary", "history", "records", "notes")
)  # fmt: skip


def _add_lift(said: Said) -> Act | None:
    """ "add face pulls today": a lift is added by logging it."""
    named = said.exercises()
    if len(named) != 1 or said.numbers() or len(said.rest_words) > LONGEST_ADDED:
        return None
    shown = f"what if I add 2 sets of {named[0]} shows the plan with it"
    return Act(UNCLEAR, text=f"log it and it counts, for instance {named[0]} 3x12 20; {shown}")


def _unskip(said: Said) -> Act | None:
    """ "unskip squat": what was left out comes back by an undo."""
    back = "what was skipped comes back with undo while that was the last change; else log the lift, and it counts"
    return Act(UNCLEAR, text=back) if len(said.exercises()) <= 1 and not said.numbers() else None


LONGEST_ADDED = 6


ARGUMENTS: dict[str, Callable[[Said], Act | None]] = {
    "skip": _skip,
    "swap": _swap,
    "instead": _instead,
    "why": _why,
    "history": _history,
    "best": _history,
    "rest": of_time.rest,
    "bodyweight": bodyweight,
    "weighed": weighed,
    "weight": weight,
    "pause": of_time.pause,
    "remind": of_time.remind,
    "reminded": of_time.reminded,
    "units": _units,
    "teach": _teach,
    "add_exercise": _text,
    "note": _note,
    "add_lift": _add_lift,
    "unskip": _unskip,
    "move": move,
    "snooze": of_time.snooze,
    "quiet": quiet_behind,
    "check": _dated_text,
    "preview": of_time.short_text,
    "what_if": _what_if,
    "more": _muscle_text,
    "digest": digest_of,
    "plan_for": plan_for,
    "note_to": told_person,
    "accept": code_told,
    "forget": _forget,
    "today": _dated_text,
    "week": _dated_text,
    "volume": _volume,
    "export": _export,
    "plan": _dated_text,
}
