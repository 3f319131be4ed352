"""Pain and warning signs: logging goes on, load is no longer pushed, a professional is named, urgent signs first.

The note is hers alone until she shares it. The movement's load is held until she says that it is over.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from bot.context import context_of
from bot.pain_spans import PAIN_HELD_FOR, days_over
from bot.preferences import PAIN_OVER
from bot.replies.pain import noted, over
from bot.sessions import forget_plan, session_of
from bot.turn import Turn
from engine.catalogue.catalogue import normalise
from engine.reading.pain_told import is_of_whole_days
from engine.values.ids import ExerciseName
from storage.records import Change, ChangeKind, Note

RELIEF = re.compile(
    r"\b(?:no (?:more |longer (?:in )?)?pain|pain.?free|free of pain|without pain"
    r"|pain (?:is |has )?(?:gone|over|away|better)"
    r"|(?:doesn'?t|don'?t|not|no longer|stopped) hurt(?:s|ing)?(?: any ?more)?"
    r"|(?:knee|shoulder|back|elbow|wrist|hip|ankle|neck)s? (?:is |are |feels? )?(?:fine|ok|okay|good|better|healed)\b)",
    re.IGNORECASE,
)
LONGEST_NOTE = 1_000


PAIN_NOTE = "the pain note"


def take_note(turn: Turn) -> None:
    """Nothing; the pain is noted with the lift it is about, and answered."""
    note_on(turn, lift_of(turn), turn.inbound.message, PAIN_NOTE)


def note_on(turn: Turn, exercise: ExerciseName | None, message: int, label: str = "the note") -> None:
    """Nothing; her words are a pain note of that lift, kept with a message of hers, and answered."""
    change = turn.begin(ChangeKind.ASIDE, label)
    turn.store.notes.add(
        change,
        turn.inbound.text[:LONGEST_NOTE],
        on=turn.today,
        at=turn.at,
        exercise=exercise,
        pain=True,
        message=message,
    )
    forget_plan(turn)
    respond(turn, exercise)


def lift_of(turn: Turn) -> ExerciseName | None:
    """The lift named, else the one in hand: but pain of a whole day, "back is sore today", is of no lift alone."""
    named = named_in(turn, turn.inbound.text)
    if named is not None or is_of_whole_days(turn.inbound.text, context_of(turn), turn.catalogue):
        return named
    return session_of(turn).latest_exercise or context_of(turn).doing


def take_back(turn: Turn) -> Change | None:
    """Takes back the note of a pain that nothing was said or undone behind; None where there is none."""
    latest = next(iter(turn.store.changes.latest(turn.athlete)), None)
    undone = turn.store.changes.to_redo(turn.athlete)
    if latest is None or latest.kind is not ChangeKind.ASIDE or latest.label != PAIN_NOTE:
        return None
    if undone is not None and undone.undone_at is not None and undone.undone_at > latest.at:
        return None
    forget_plan(turn)
    return turn.store.changes.take_back(latest, turn.at)


def respond(turn: Turn, exercise: ExerciseName | None, *, shared: bool = False) -> None:
    """Nothing; she is told to stop or ease, and where help is; `shared`: her coach sees the note."""
    turn.say(noted(exercise, turn.inbound.text, shared=shared))


def named_in(turn: Turn, text: str) -> ExerciseName | None:
    """The lift that the words name: of several that a name may mean, the one of today that was done last, else the
    first one planned; None where that settles nothing.
    """
    words = normalise(text).split()
    done = [record.done.exercise for record in reversed(session_of(turn).sets_today)]
    today = list(dict.fromkeys((*done, *(one.exercise for one in session_of(turn).prescriptions))))
    for length in range(min(turn.catalogue.longest_phrase, len(words)), 0, -1):
        for start in range(len(words) - length + 1):
            owners = _owners(turn, words[start : start + length])
            fits = [name for name in today if name in owners] or (owners if len(owners) == 1 else ())
            if fits:
                return fits[0]
    return None


DOING = "ing"


def _owners(turn: Turn, words: Sequence[str]) -> Sequence[ExerciseName]:
    """The lifts of a name, told as a thing or as what is done: "presses", "pressing", "lunging"."""
    phrase = " ".join(words)
    spelt = (phrase, *(phrase[: -len(DOING)] + end for end in ("", "e") if phrase.endswith(DOING)))
    return next((owners for one in spelt if (owners := turn.catalogue.phrases.get(one))), ())


def is_over(turn: Turn) -> bool:
    """Whether her words said that a pain which holds a lift back is over, and were answered."""
    held = _held(turn)
    if not held or not RELIEF.search(turn.inbound.text):
        return False
    named = named_in(turn, turn.inbound.text)
    exercises = {note.exercise for note in held if note.exercise is not None and named in (None, note.exercise)}
    if not exercises:
        return False
    change = turn.begin(ChangeKind.SETTING, "the end of the pain")
    ended = dict(turn.store.settings.get(turn.athlete, PAIN_OVER, {}))
    days = {name: sorted({*days_over(ended, name), turn.today}) for name in exercises}
    turn.store.settings.put(
        change, PAIN_OVER, ended | {name: [day.isoformat() for day in over_on] for name, over_on in days.items()}
    )
    forget_plan(turn)
    turn.say(over(sorted(exercises)))
    return True


def _held(turn: Turn) -> list[Note]:
    return list(turn.store.notes.between(turn.athlete, turn.today - PAIN_HELD_FOR, turn.today, pain=True))
