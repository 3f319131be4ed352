"""share note: lets the coach see the last note."""

from __future__ import annotations

from bot.replies.small import no_coach, nothing_to_share, shared
from bot.turn import Turn
from engine.reading.values import Act
from storage.records import ChangeKind, Note


def share(turn: Turn, act: Act) -> None:
    """Nothing; the latest note that is still private is shared with the coach."""
    private = [one for one in turn.store.notes.latest(turn.athlete, 10) if not one.shared]
    pains = [one for one in private if one.pain]
    if not private:
        turn.say(nothing_to_share())
        return
    share_note(turn, (pains or private)[0])


def share_note(turn: Turn, chosen: Note) -> None:
    """Nothing; her coach sees this note."""
    coaches = turn.store.coaching.coaches(turn.athlete)
    if not coaches:
        turn.say(no_coach())
        return
    change = turn.begin(ChangeKind.NOTE, "sharing the note")
    turn.store.notes.share(change, chosen)
    names = [turn.store.people.get(link.coach).name for link in coaches]
    turn.say(shared(chosen.text, names))
