"""What swapping one exercise for another would do to spacing, told before the swap is made."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace

from engine.values.exercise import Exercise
from engine.values.ids import ExerciseName
from engine.volume.session_work import Session
from engine.volume.spacing import Caution, cautions


@dataclass(frozen=True, slots=True)
class SwapAdvice:
    """What a swap would bring: the cautions it adds, and exercises to take instead that add none."""

    cautions: tuple[Caution, ...]
    instead: tuple[ExerciseName, ...]

    @property
    def text(self) -> str:
        """The weightiest caution in one sentence, with what to take instead; empty where there is none."""
        if not self.cautions:
            return ""
        first = self.cautions[0]
        others = f", or take {self.instead[0]} instead" if self.instead else ""
        return f"{first.reason} Keep {first.spare} reps in reserve on {first.after}{others}."


def swap_advice(
    sessions: Sequence[Session],
    at: int,
    old: ExerciseName,
    new: ExerciseName,
    exercises: Mapping[ExerciseName, Exercise],
    candidates: Sequence[ExerciseName] = (),
    known: Collection[ExerciseName] | None = None,
) -> SwapAdvice:
    """What swapping `old` for `new` in session number `at` would bring, before it is made.

    Shape: `instead` keeps the order of `candidates` and is empty where the swap adds no caution. `known` are the
    exercises the athlete is used to; None: all of them.
    """
    had = {_key(one) for one in cautions(sessions, exercises)}

    def added(other: ExerciseName) -> tuple[Caution, ...]:
        swapped = _swapped(sessions[at], old, other, known)
        after = cautions([*sessions[:at], swapped, *sessions[at + 1 :]], exercises)
        return tuple(one for one in after if _key(one) not in had)

    brought = added(new)
    if not brought:
        return SwapAdvice((), ())
    others = (name for name in candidates if name not in (old, new) and name in exercises)
    return SwapAdvice(brought, tuple(name for name in others if not added(name)))


def _swapped(session: Session, old: ExerciseName, new: ExerciseName, known: Collection[ExerciseName] | None) -> Session:
    strange = known is not None and new not in known
    work = (replace(one, exercise=new, new=strange) if one.exercise == old else one for one in session.work)
    return replace(session, work=tuple(work))


def _key(caution: Caution) -> tuple[object, ...]:
    # Long-length work where there was none is a burden of its own, whatever caution stood there before.
    return caution.ground, caution.earlier, caution.later, caution.muscles, caution.long
