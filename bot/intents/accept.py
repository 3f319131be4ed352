"""accept CODE: lets a coach see sessions and sets, after consent; leave coach ends it."""

from __future__ import annotations

from datetime import timedelta

from bot.preferences import preferences
from bot.replies.coaching import consent, invitation_trouble, linked, linked_coach, no_coaches, not_now, parted
from bot.schedule import plan_person
from bot.turn import Turn
from engine.reading.values import Act
from storage.records import InvitationTrouble, Permission, Question, QuestionState

OPEN_FOR = timedelta(days=2)
CONSENT = "consent"
YES = ("yes", "accept", "ok", "okay", "yes please", "sure")
NO = ("no", "not now", "no thanks", "later")


def accept(turn: Turn, act: Act) -> None:
    """Nothing; consent is asked for, or the coach is left."""
    words = act.text.split()
    if words and words[0].casefold() in ("leave", "stop"):
        leave(turn)
        return
    offer(turn, words[-1] if words else "")


def offer(turn: Turn, code: str) -> None:
    """Nothing; what the coach would see is said, and she is asked."""
    invitation = turn.store.coaching.invitation(code, turn.at)
    if isinstance(invitation, InvitationTrouble):
        turn.say(invitation_trouble(invitation))
        return
    if invitation.coach == turn.athlete:
        turn.say(invitation_trouble(InvitationTrouble.OWN))
        return
    coach = turn.store.people.get(invitation.coach)
    payload = {"kind": CONSENT, "code": code}
    turn.store.questions.ask(turn.athlete, payload, at=turn.at, expires_at=turn.at + OPEN_FOR)
    turn.say(consent(coach.name))


def answered(turn: Turn, question: Question, text: str) -> bool:
    """Whether the words were a yes or a no; anything else leaves the question open."""
    said = text.strip().casefold().rstrip(".!")
    if said not in (*YES, *NO):
        return False
    turn.store.questions.close(question, QuestionState.ANSWERED)
    if said in YES:
        agree(turn, str(question.payload["code"]))
    else:
        turn.say(not_now())
    return True


def agree(turn: Turn, code: str) -> None:
    """Nothing; the coach sees sessions and sets from now on."""
    granted = (Permission.SEE_LOG, Permission.SEE_NOTES, Permission.CHANGE_PLAN)
    link = turn.store.coaching.accept(code, turn.athlete, granted, turn.at)
    if isinstance(link, InvitationTrouble):
        turn.say(invitation_trouble(link))
        return
    coach = turn.store.people.get(link.coach)
    turn.say(linked(coach.name))
    turn.tell(coach.id, linked_coach(turn.me.name))
    own = preferences(turn.store.settings.all(coach.id), turn.default_zone)
    plan_person(turn.store, turn.memory, coach, own, turn.at)


def leave(turn: Turn) -> None:
    """Nothing; no coach sees anything from now on."""
    links = turn.store.coaching.coaches(turn.athlete)
    for link in links:
        turn.store.coaching.withdraw(link.coach, turn.athlete)
    turn.say(parted() if links else no_coaches())
