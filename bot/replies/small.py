"""One-line replies: settings, notes, shorthands."""

from __future__ import annotations

from collections.abc import Sequence

from bot.messages import Button
from bot.replies.names import listed, title
from bot.replies.reply import UNDO, Reply, row
from bot.replies.trouble import quoted
from engine.values.exercise import Exercise
from engine.values.ids import ExerciseName
from engine.values.load import Load, Unit
from engine.values.problem import Problem


def weight_kept(load: Load) -> Reply:
    """Body weight kept."""
    return Reply(f"Body weight {load} kept.", row(UNDO))


def note_kept(exercise: ExerciseName | None) -> Reply:
    """A note kept."""
    return Reply(f"Note kept{f' with {exercise}' if exercise else ''}. Only you see it.", row(UNDO))


def shared(text: str, coaches: Sequence[str]) -> Reply:
    """A note shared."""
    return Reply(f"Shared with {listed(coaches)}: {quoted(text, 60)}", row(UNDO))


def no_coach() -> Reply:
    """Nobody to share with."""
    return Reply("Not shared: you have no coach here. Nothing changed.")


def nothing_to_share() -> Reply:
    """No private note."""
    return Reply("Nothing to share: no private note is left.")


def unit_set(unit: Unit) -> Reply:
    """Bare numbers mean this unit from now on."""
    return Reply(f"From now on bare numbers are {unit.value}. Sets already saved keep their unit.", row(UNDO))


def unit_is(unit: Unit) -> Reply:
    """The unit as it is, and how to change it."""
    other = Unit.LB if unit is Unit.KG else Unit.KG
    return Reply(
        f"Bare numbers are {unit.value}. To change: units {other.value}",
        row(Button("kg", "v1:unit:kg"), Button("lb", "v1:unit:lb")),
    )


def taught(shorthand: str, exercise: ExerciseName) -> Reply:
    """A shorthand learnt."""
    return Reply(f"From now on “{shorthand}” means {exercise}. forget {shorthand} takes it back.", row(UNDO))


def forgot(word: str) -> Reply:
    """A shorthand forgotten."""
    return Reply(f"Forgotten: “{word}” means what it means for everybody; where it is open, I ask.", row(UNDO))


def order_words(first: bool) -> str:
    """The order of a pair, in the words that set it."""
    return "load first" if first else "reps first"


def order_set(first: bool) -> Reply:
    """An order kept."""
    example = "12x10 is 10 reps at 12" if first else "12x10 is 12 reps at 10"
    words = order_words(first)
    return Reply(f"Where a pair is open, {words} from now on: {example}. forget {words} takes it back.", row(UNDO))


def order_forgotten(first: bool) -> Reply:
    """An order kept no more."""
    return Reply(f"Forgotten: {order_words(first)}. Where a pair is open, I ask.", row(UNDO))


def knows_nothing(word: str) -> Reply:
    """There is nothing to forget."""
    return Reply(f"Nothing changed: I keep nothing special for {quoted(word)}. /settings lists what I keep.")


def exercise_added(exercise: Exercise) -> Reply:
    """An exercise of her own."""
    movers = listed([muscle.value for muscle in exercise.prime])
    return Reply(f"{title(exercise.name)} added, for {movers}. Log it: {exercise.name} 3x12 20", row(UNDO))


def exercise_problem(problem: Problem) -> Reply:
    """Why an exercise was not added."""
    return Reply(f"Not added: {problem}")
