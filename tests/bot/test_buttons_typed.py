"""Every button has a typed form: its label, typed, does what the tap does."""

from __future__ import annotations

import pytest

from bot.taps import TAPS
from storage.envelopes import OutboxId
from tests.bot.chatting import PLAN, Chats, buttons, said
from tests.databases import in_memory

BEGUN = ["/start", "skip", "skip", PLAN]


def invitation(chats):
    return said(chats.says("kit", "/start", "invite")).split("/start ")[1].split()[0]


def asked_for_consent(chats):
    chats.says("ana", "/start", f"/start {invitation(chats)}")


def reminded(chats):
    chats.says("ana", *BEGUN, "remind me 18:30 mon")
    chats.tick(chats.at.replace(hour=18, minute=30))


def summed_up(chats):
    chats.says("ana", "/start", "London", "kg", PLAN, "squat 3x5 90")
    chats.tick(chats.at.replace(day=8, hour=19))


CASES = [
    pytest.param(lambda chats: chats.says("ana", "squat 90x5"), "Undo", id="undo"),
    pytest.param(lambda chats: chats.says("ana", *BEGUN, "today"), "Why", id="why"),
    pytest.param(lambda chats: chats.says("ana", *BEGUN, "today"), "Skip today", id="skip today"),
    pytest.param(lambda chats: chats.says("ana", *BEGUN, "next"), "Skip", id="skip what is next"),
    pytest.param(lambda chats: chats.says("ana", "/start"), "Skip", id="skip the first question"),
    pytest.param(lambda chats: chats.says("ana", "/start", "London"), "lb", id="the first unit"),
    pytest.param(lambda chats: chats.says("ana", "hello", "erase"), "Keep my data", id="keep my data"),
    pytest.param(lambda chats: chats.says("ana", "hello", "squat 90x5", "erase"), "Export", id="export"),
    pytest.param(lambda chats: chats.says("ana", "/privacy"), "Erase", id="erase"),
    pytest.param(lambda chats: chats.says("ana", "hello", "press 3x8 40"), "None of these", id="no reading"),
    pytest.param(lambda chats: chats.says("ana", "hello", "press 3x8 40"), "barbell overhead press", id="a reading"),
    pytest.param(asked_for_consent, "Accept", id="consent"),
    pytest.param(asked_for_consent, "Not now", id="no consent"),
    pytest.param(lambda chats: chats.says("ana", *BEGUN, "more quads"), "Accept", id="a proposal"),
    pytest.param(lambda chats: chats.says("ana", *BEGUN, "more quads"), "Leave it", id="a proposal left"),
    pytest.param(lambda chats: chats.says("ana", *BEGUN, "swap leg extension"), "Leg press", id="what to swap in"),
    pytest.param(lambda chats: chats.says("ana", *BEGUN, "swap leg extension"), "Skip it", id="skip it instead"),
    pytest.param(lambda chats: chats.says("ana", *BEGUN, "squat 90x5", "knee hurts"), "Skip it", id="skip what hurts"),
    pytest.param(lambda chats: chats.says("ana", *BEGUN, "squat 90x5", "rest 2 min"), "Stop", id="stop the rest"),
    pytest.param(reminded, "Snooze 1 h", id="snooze"),
    pytest.param(summed_up, "Volume", id="volume"),
    pytest.param(lambda chats: chats.says("ana", "clients"), "Invite", id="invite"),
]


def done(set_up, deed):
    """What stands, what waits and what was answered once the deed is done."""
    database = in_memory()
    chats = Chats(database)
    set_up(chats)
    with chats.store() as store:
        latest = list(store.outbox.after(OutboxId(0)))
    shown = buttons(latest)
    chats.fresh()
    out = deed(chats, shown)
    me = chats.person("ana").id
    with chats.store() as store:
        waiting = [due.kind.split(" ")[0] for due in store.due.planned(me)]
    left = (dict(chats.standing("ana")), waiting, said(out).split(". ")[0])
    database.close()
    return left


@pytest.mark.parametrize(("set_up", "label"), CASES)
def test_a_label_typed_does_what_its_button_does(set_up, label):
    tapped = done(set_up, lambda chats, shown: chats.taps("ana", shown[label]))
    typed = done(set_up, lambda chats, shown: chats.says("ana", label))

    assert typed == tapped


def test_every_verb_of_a_button_is_known_by_its_deed():
    assert all(verb.isascii() and callable(deed) for verb, deed in TAPS.items())
