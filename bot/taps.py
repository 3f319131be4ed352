"""A tapped button is the same as its typed words; what it points at is looked up, never trusted."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from bot import asking, imports, onboarding, open_questions, plan_or_sets, proposals, swap_offers
from bot.intents import (
    accept,
    digest,
    done,
    erase,
    export,
    invite,
    more,
    remind,
    rest,
    share,
    skip,
    snooze,
    swap,
    undo,
    units,
    volume,
    why,
)
from bot.preferences import SUMMARY
from bot.replies.coaching import not_now
from bot.replies.privacy import kept
from bot.replies.settings import switched
from bot.replies.trouble import stale_button
from bot.sessions import session_of
from bot.turn import Turn
from engine.reading.values import Act
from engine.values.ids import AthleteId, ExerciseName
from engine.values.load import Unit
from storage.records import ChangeId, ChangeKind

VERSION = "v1"
Tap = Callable[[Turn, list[str]], None]


def tapped(turn: Turn) -> None:
    """Nothing; the button's deed is done, or it is said that the button is stale."""
    version, _, rest_of = turn.inbound.text.partition(":")
    verb, *arguments = rest_of.split(":")
    deed = TAPS.get(verb)
    if version != VERSION or deed is None:
        turn.say(stale_button())
        return
    deed(turn, arguments)


def _act(intent: Callable[[Turn, Act], None], name: str, text: str = "") -> Tap:
    return lambda turn, arguments: intent(turn, Act(name, text=text))


def _pick(turn: Turn, arguments: list[str]) -> None:
    if len(arguments) == 2 and all(one.isdecimal() for one in arguments):
        asking.tapped(turn, int(arguments[0]), int(arguments[1]))
    else:
        turn.say(stale_button())


def _undo(turn: Turn, arguments: list[str]) -> None:
    """The button takes back its own change; a plain one the latest."""
    if len(arguments) == 2 and all(one.isdecimal() for one in arguments):
        undo.undo_own(turn, AthleteId(int(arguments[0])), ChangeId(int(arguments[1])))
    else:
        undo.undo(turn, Act("undo"))


def _unit(turn: Turn, arguments: list[str]) -> None:
    units.set_unit(turn, Unit.LB if arguments == ["lb"] else Unit.KG)


def _first_unit(turn: Turn, arguments: list[str]) -> None:
    open_questions.close_of_kind(turn, onboarding.ASK_UNIT)
    onboarding.choose_unit(turn, "lb" if arguments == ["lb"] else "kg")


def _skip_zone(turn: Turn, arguments: list[str]) -> None:
    if open_questions.close_of_kind(turn, onboarding.ASK_ZONE):
        onboarding.skip(turn, onboarding.ASK_ZONE)
    else:
        turn.say(stale_button())


def _consent(turn: Turn, arguments: list[str]) -> None:
    question = open_questions.open_of_kind(turn, accept.CONSENT)
    if question is None:
        turn.say(stale_button())
    elif arguments == ["yes"]:
        open_questions.close(turn)
        accept.agree(turn, str(question.payload["code"]))
    else:
        open_questions.close(turn)
        turn.say(not_now())


def _swap_to(turn: Turn, arguments: list[str]) -> None:
    question = open_questions.open_of_kind(turn, swap.SWAP)
    options = list(question.payload["options"]) if question is not None else []
    place = int(arguments[0]) if arguments and arguments[0].isdecimal() else len(options)
    if question is None or place >= len(options):
        turn.say(stale_button())
        return
    open_questions.close(turn)
    swap_offers.swap_or_offer(turn, ExerciseName(question.payload["exercise"]), ExerciseName(options[place]))


def _swap_skip(turn: Turn, arguments: list[str]) -> None:
    question = open_questions.open_of_kind(turn, swap.SWAP)
    if question is None:
        turn.say(stale_button())
        return
    open_questions.close(turn)
    skip.skip_lift(turn, ExerciseName(question.payload["exercise"]))


def _pained(turn: Turn) -> ExerciseName | None:
    """The lift of the latest pain note, if today's plan has it."""
    notes = [note for note in turn.store.notes.latest(turn.athlete, 10) if note.pain and note.exercise]
    planned = [one.exercise for one in session_of(turn).prescriptions]
    return next((note.exercise for note in notes if note.exercise in planned), None)


def _skip_pain(turn: Turn, arguments: list[str]) -> None:
    skip.skip(turn, Act("skip", exercise=_pained(turn)))


def _swap_pain(turn: Turn, arguments: list[str]) -> None:
    swap.swap(turn, Act("swap", exercise=_pained(turn)))


def _stop_summary(turn: Turn, arguments: list[str]) -> None:
    change = turn.begin(ChangeKind.SETTING, "stopping the summary")
    turn.store.settings.put(change, SUMMARY, False)
    turn.store.due.cancel(turn.athlete, "summary")
    turn.say(switched("summary", False))


def _client(turn: Turn, arguments: list[str]) -> None:
    digest.digest(turn, Act("digest", text=arguments[0] if arguments else ""))


def _proposal(turn: Turn, arguments: list[str]) -> None:
    question = open_questions.open_of_kind(turn, proposals.PROPOSAL)
    if question is None:
        turn.say(stale_button())
    else:
        proposals.settle(turn, question, taken=arguments == ["yes"])


def _keep(turn: Turn, arguments: list[str]) -> None:
    open_questions.close_of_kind(turn, erase.ERASE)
    turn.say(kept())


TAPS: Mapping[str, Tap] = {
    "undo": _undo,
    "pick": _pick,
    "why": _act(why.why, "why"),
    "done": _act(done.done, "done"),
    "skip-next": _act(skip.skip, "skip"),
    "skip-day": lambda turn, arguments: skip.skip_day(turn),
    "skip-pain": _skip_pain,
    "swap-pain": _swap_pain,
    "swap-to": _swap_to,
    "swap-skip": _swap_skip,
    "swap-offer": swap_offers.tapped,
    "share": _act(share.share, "share"),
    "snooze": _act(snooze.snooze, "snooze"),
    "stop-reminders": lambda turn, arguments: remind.stop(turn),
    "stop-summary": _stop_summary,
    "rest-stop": _act(rest.rest, "rest", "stop"),
    "volume": _act(volume.volume, "volume"),
    "unit": _unit,
    "first-unit": _first_unit,
    "skip-zone": _skip_zone,
    "consent": _consent,
    "proposal": _proposal,
    "plan-or-sets": plan_or_sets.tapped,
    "more": more.tapped,
    "invite": _act(invite.invite, "invite"),
    "digest": _act(digest.digest, "digest"),
    "client": _client,
    "export": _act(export.export, "export"),
    "erase": _act(erase.erase, "erase"),
    "keep": _keep,
    "import-yes": imports.tapped_yes,
    "import-no": imports.tapped_no,
}
