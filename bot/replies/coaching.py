"""Words between a coach, the bot and clients."""

from __future__ import annotations

from collections.abc import Sequence
from typing import assert_never

from bot.messages import Button
from bot.replies.names import listed
from bot.replies.reply import UNDO, Reply, row
from bot.replies.trouble import quoted
from engine.progression.words import counted
from storage.records import InvitationTrouble


def invited(code: str) -> Reply:
    """A code for one athlete."""
    return Reply(
        f"Send your athlete this code. It works once, for 7 days:\n/start {code}\n"
        "They are asked before you see anything."
    )


def consent(coach: str) -> Reply:
    """What the coach would see, and the choice."""
    return Reply(
        f"{coach} invites you as coach. If you accept, {coach} sees your sessions and sets and may change your plan. "
        "Not your notes or pain, unless you share them one by one. You can stop this any time: leave coach",
        row(Button("Accept", "v1:consent:yes"), Button("Not now", "v1:consent:no")),
    )


def linked(coach: str) -> Reply:
    """The athlete's side of a new link."""
    return Reply(f"{coach} is your coach here now. To stop: leave coach")


def linked_coach(athlete: str) -> Reply:
    """The coach's side of a new link."""
    return Reply(f"{athlete} accepted: you see {athlete}'s sessions and sets. Give a plan: plan for {athlete}")


def not_now() -> Reply:
    """Consent was not given."""
    return Reply("Nothing is shared. The code stays good until it runs out, should you change your mind.")


def parted() -> Reply:
    """The coach sees nothing any more."""
    return Reply("Coach access is off. Your coach sees nothing from now on.")


def no_coaches() -> Reply:
    """There is no coach to leave."""
    return Reply("You have no coach here. Nothing changed.")


def invitation_trouble(trouble: InvitationTrouble) -> Reply:
    """Why a code does not work."""
    match trouble:
        case InvitationTrouble.UNKNOWN:
            why = "I know no such invitation code"
        case InvitationTrouble.USED:
            why = "This code was used already"
        case InvitationTrouble.EXPIRED:
            why = "This code has run out"
        case InvitationTrouble.OWN:
            return Reply("That is your own invitation: it is for your athlete. Nothing changed.")
        case _:
            assert_never(trouble)
    return Reply(f"{why}. Nothing changed. Ask your coach for a new one; it looks like: /start k7Q2xw9d")


def client_list(names: Sequence[str]) -> Reply:
    """Everyone a coach looks after."""
    if not names:
        return Reply("No clients yet. Send: invite", row(Button("Invite", "v1:invite")))
    return Reply(
        f"{counted(len(names), 'client')}: {listed(names, 40)}\n"
        f"digest {names[0]} shows one, plan for {names[0]} hands a plan over.",
        row(Button("Digest", "v1:digest"), Button("Invite", "v1:invite")),
    )


def which_client(verb: str, names: Sequence[str], read: str) -> Reply:
    """No client, or several, go by that name."""
    if not names:
        return Reply("Nothing changed: you have no clients yet. Send: invite")
    said = f"no single client goes by {quoted(read)}" if read.strip() else "I need a client's name"
    return Reply(f"Nothing changed: {said}. Clients: {listed(names, 20)}. Send: {verb.format(names[0])}")


def note_sent(name: str) -> Reply:
    """A note is on its way to a client."""
    return Reply(f"Sent to {name}.")


def not_yours(name: str) -> Reply:
    """Sets are told by the one who lifted them."""
    return Reply(
        f"Not saved: I record {name}'s sets only from {name}. Send: note to {name}: ... or {name}: +2 sets side delts"
    )


def not_yours_to_change(name: str, words: str) -> Reply:
    """Sets are put right by the one who lifted them."""
    return Reply(f"Nothing changed: {name}'s sets are put right only by {name}.\nTo write: note to {name}: {words}")


def no_request_of(name: str, words: str, said: str = "") -> Reply:
    """Words behind a client's name, or around it (`said`), that ask for nothing a coach can have done for her."""
    read = quoted(said or words)
    lines = [f"Nothing changed, nothing sent to {name}: I do not know what {read} asks for."] if words else []
    lines = lines or [f"Nothing changed: I need to know what for {name}."]
    lines += [
        f"To write: note to {name}: {words if words and len(words) <= LONGEST_SHOWN else 'great week'}",
        f"To change the plan: {name}: swap squat for leg press, {name}: -1 set squat, {name}: drop squat",
        f"A new plan: plan for {name}. To look: digest {name}",
    ]
    return Reply("\n".join(lines))


LONGEST_SHOWN = 60


def deload_of(name: str, weeks: Sequence[int]) -> Reply:
    """Where a client's lighter week is told: in the plan."""
    stands = f"{name}'s plan has its deload in week {listed(list(map(str, weeks)))}." if weeks else ""
    return Reply(
        f"Nothing changed. {stands or f'{name} has no deload week in the plan.'} Loads change with the plan alone: put "
        f"a line like deload week 4 under its name and send it again with plan for {name}.\n"
        f"For fewer sets: {name}: -1 set squat"
    )


def kept_about(name: str, words: str) -> Reply:
    """A coach's words with a client's name in them: a note of his own."""
    return Reply(f"Kept as a note of yours, nothing sent to {name}. To write: note to {name}: {words[:LONGEST_SHOWN]}")


def to_whom(name: str, words: str) -> Reply:
    """A note with a client's name in it and no colon: to her, or about her."""
    return Reply(
        f"Nothing kept, nothing sent: is that for {name}, or for yourself?\n"
        f"To {name}: note to {name}: {words}\nFor yourself: note: {name} {words}"
    )


def note_from(coach: str, text: str) -> Reply:
    """A coach's note, at the client's side."""
    return Reply(f"From {coach}: {text}")


def no_words(name: str) -> Reply:
    """A note needs words."""
    return Reply(f"Nothing sent: I need the words. Send: note to {name}: keep the row at 55")


def plan_handed(name: str, plan: str) -> Reply:
    """A plan went to a client."""
    return Reply(f"{name} has the plan “{plan}” now. They are told.", row(UNDO))


def changed_again(coach: str, label: str, *, undone: bool) -> Reply:
    """At the client's side: the coach took a change back, or made it again."""
    return Reply(f"{coach} {'took back' if undone else 'put back'}: {label}. today shows what that means.")


def no_plan_of(name: str) -> Reply:
    """A client's plan cannot be changed before there is one."""
    return Reply(f"Nothing changed: {name} has no plan yet. Send: plan for {name}")


def send_plan_for(name: str) -> Reply:
    """The next text or file is the client's plan."""
    return Reply(f"Send the plan for {name} now, as text or a file (.txt, .csv, .xlsx).")


def plan_or_own_sets(name: str) -> Reply:
    """Lines of sets, where a client's plan was asked for."""
    return Reply(
        f"Nothing saved, nothing sent: is that the plan for {name}, or sets of yours? A plan has a line like "
        "day mon: legs above its lifts. Send it so or, for your sets, send forget it and then the sets again."
    )


def no_plan_sent() -> Reply:
    """The plan that was asked for is not sent."""
    return Reply("Left. No plan was sent.")
