"""A coach and clients: nothing is seen or changed before consent, nothing after she leaves, and nobody is mixed up."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from bot.messages import InboundKind
from tests.bot.chatting import PLAN, buttons, said, texts, to


def code_of(chats, coach="kit"):
    return said(chats.says(coach, "invite")).split("/start ")[1].split()[0]


def links(chats, coach="kit"):
    kit = chats.person(coach).id
    with chats.store() as store:
        return [link.athlete for link in store.coaching.clients(kit)]


def linked(chats, *names):
    chats.says("kit", "/start")
    for who in names:
        chats.says(who, "/start", "skip", "skip", f"/start {code_of(chats)}", "yes")


def called(chats, *names):
    """Clients who go by these names, alike or not, each in a chat of her own: ann#0, ann#1."""
    chats.says("kit", "/start")
    for place, name in enumerate(names):
        for words in ("/start", "skip", "skip", f"/start {code_of(chats)}", "yes", PLAN):
            chats.give(replace(chats.inbound(f"{name}#{place}", InboundKind.MESSAGE, words), name=name))


@pytest.mark.parametrize(
    ("answer", "is_linked", "reply"),
    [
        pytest.param("yes", True, "is your coach here now", id="yes"),
        pytest.param("Accept", True, "is your coach here now", id="the button's words"),
        pytest.param("tap: v1:consent:yes", True, "is your coach here now", id="the button"),
        pytest.param("not now", False, "Nothing is shared", id="not now"),
        pytest.param("tap: v1:consent:no", False, "Nothing is shared", id="not now by the button"),
        pytest.param("squat 90x5", False, "Saved", id="a set instead"),
    ],
)
def test_a_coach_sees_her_only_after_a_yes(chats, answer, is_linked, reply):
    chats.says("ana", "/start", f"/start {code_of(chats)}")
    out = chats.taps("ana", answer[5:]) if answer.startswith("tap: ") else chats.says("ana", answer)

    assert reply in said(out)
    assert (links(chats) != []) == is_linked
    assert ("ana" in said(chats.says("kit", "clients"))) == is_linked


def test_consent_names_what_is_seen_and_what_is_not(chats):
    chats.says("ana", "hello")
    out = said(chats.says("ana", f"/start {code_of(chats)}"))

    assert "sessions and sets" in out
    assert "Not your notes or pain" in out
    assert "leave coach" in out


@pytest.mark.parametrize(
    ("trouble", "reply"),
    [
        pytest.param("unknown", "I know no such invitation code", id="never given out"),
        pytest.param("used", "used already", id="used by another"),
        pytest.param("expired", "has run out", id="after seven days"),
        pytest.param("own", "your own invitation", id="her own"),
    ],
)
def test_a_code_that_does_not_work_says_why_and_links_nobody(chats, trouble, reply):
    code = code_of(chats)
    who = "kit" if trouble == "own" else "ana"
    if trouble == "used":
        chats.says("ben", f"/start {code}", "yes")
    if trouble == "expired":
        chats.at += timedelta(days=7, minutes=1)
    out = chats.says(who, f"/start {'nonesuch' if trouble == 'unknown' else code}")
    chats.says(who, "yes")

    assert reply in said(out)
    assert len(links(chats)) == (1 if trouble == "used" else 0)


def test_a_code_used_up_between_question_and_yes_links_nobody_twice(chats):
    code = code_of(chats)
    chats.says("ana", f"/start {code}")
    chats.says("ben", f"/start {code}", "yes")
    out = chats.says("ana", "yes")

    assert "used already" in said(out)
    assert links(chats) == [chats.person("ben").id]


def test_not_now_leaves_the_code_good(chats):
    code = code_of(chats)
    chats.says("ana", f"/start {code}", "not now", f"/start {code}", "yes")

    assert links(chats) == [chats.person("ana").id]


@pytest.mark.parametrize("words", ["digest ana", "plan for ana", "ana: +2 sets quads", "note to ana: hello"])
def test_a_stranger_reaches_no_athlete(chats, words):
    chats.says("ana", "/start", PLAN)
    before = chats.standing("ana")
    out = chats.says("eve", words)

    assert to(out, chats.parties["ana"].chat) == []
    assert "squat" not in said(out)
    assert chats.standing("ana") == before


@pytest.mark.parametrize(
    "words", ["digest ana", "plan for ana", f"plan for ana\n{PLAN}", "ana: +2 sets quads", "note to ana: hello"]
)
def test_after_leaving_the_coach_reaches_her_no_more(chats, words):
    linked(chats, "ana")
    chats.says("ana", PLAN, "/accept leave coach")
    before = chats.standing("ana")
    out = chats.says("kit", words)

    assert to(out, chats.parties["ana"].chat) == []
    assert chats.standing("ana") == before
    assert "squat 3" not in said(out)


def test_what_was_asked_before_she_left_is_not_done_after(chats):
    linked(chats, "ana", "ben")
    chats.says("ana", PLAN)
    chats.says("kit", "ana: +2 sets quads")
    chats.says("ana", "/accept leave coach")
    plans = chats.standing("ana")["plans"]
    accepted = chats.says("kit", "accept")
    chats.says("kit", "plan for ben")
    chats.says("ben", "/accept leave coach")
    handed = chats.says("kit", PLAN)

    assert chats.standing("ana")["plans"] == plans
    assert chats.standing("ben")["plans"] == []
    assert "No plan saved" in said(accepted)
    assert "No plan saved" in said(handed)


@pytest.mark.parametrize(
    ("answer", "changed"),
    [
        pytest.param("accept", True, id="accepted"),
        pytest.param("tap: v1:proposal:yes", True, id="accepted by the button"),
        pytest.param("leave it", False, id="left"),
        pytest.param("tap: v1:proposal:no", False, id="left by the button"),
        pytest.param("clients", False, id="something else instead"),
    ],
)
def test_a_change_for_a_client_is_shown_first_and_made_only_when_accepted(chats, answer, changed):
    linked(chats, "ana")
    chats.says("ana", PLAN)
    before = chats.standing("ana")["plans"]
    shown = chats.says("kit", "ana: +2 sets quads")
    untouched = chats.standing("ana")["plans"]
    out = chats.taps("kit", answer[5:]) if answer.startswith("tap: ") else chats.says("kit", answer)
    told = to(out, chats.parties["ana"].chat)

    assert "Not saved yet" in said(shown)
    assert untouched == before
    assert (chats.standing("ana")["plans"] != before) == changed
    assert bool(told) == changed


@pytest.mark.parametrize(
    "how",
    [
        pytest.param([f"plan for ana\n{PLAN}"], id="in one message"),
        pytest.param(["plan for ana", PLAN], id="asked for, then sent"),
        pytest.param(["plan for ana", "file"], id="asked for, then as a file"),
        pytest.param(["plan for an", PLAN], id="by a unique beginning of her name"),
    ],
)
def test_a_coach_hands_a_plan_to_a_client_and_not_to_herself(chats, how):
    linked(chats, "ana")
    for words in how:
        out = chats.sends("kit", "plan.txt", PLAN.encode()) if words == "file" else chats.says("kit", words)

    assert "kit gave you a plan" in said(to(out, chats.parties["ana"].chat))
    assert len(chats.standing("ana")["plans"]) == 1
    assert chats.standing("kit")["plans"] == []


@pytest.mark.parametrize("first", ["ann", "Ann Lee", "today", "max", "row", "Will", "done", "Zoë", "May"])
def test_a_client_may_be_called_anything(chats, first):
    called(chats, first, "kim")
    mine, others = (chats.parties[f"{name}#{place}"].chat for place, name in enumerate((first, "kim")))
    digest = chats.says("kit", f"digest {first}")
    noted = chats.says("kit", f"note to {first}: soft elbows")
    proposed = chats.says("kit", f"{first}: +2 sets quads")
    accepted = chats.says("kit", "accept")
    handed = chats.says("kit", f"plan for {first}\n{PLAN}")

    assert said(digest).startswith(f"{first}, week 10")
    assert texts(to(noted, mine)) == ["From kit: soft elbows"]
    assert f"For {first}, quads" in said(proposed)
    assert "kit changed your plan" in said(to(accepted, mine))
    assert "kit gave you a plan" in said(to(handed, mine))
    assert to([*digest, *noted, *proposed, *accepted, *handed], others) == []


@pytest.mark.parametrize(
    ("names", "meant", "alone"),
    [
        pytest.param(("ann", "ann"), ("ann 1", "ann 2"), "ann", id="the same first name"),
        pytest.param(("Ann Lee", "Ann Berg"), ("Ann Lee", "ann berg"), "ann", id="the same first of two"),
        pytest.param(("ann", "annika"), ("ann", "annika"), "an", id="one beginning with the other"),
    ],
)
def test_clients_with_like_names_are_told_apart(chats, names, meant, alone):
    called(chats, *names)
    first, second = (chats.parties[f"{name}#{place}"].chat for place, name in enumerate(names))
    one = chats.says("kit", f"note to {meant[0]}: soft elbows")
    two = chats.says("kit", f"note to {meant[1]}: hips back")
    nobody = chats.says("kit", f"note to {alone}: chin up")

    assert (texts(to(one, first)), to(one, second)) == (["From kit: soft elbows"], [])
    assert (texts(to(two, second)), to(two, first)) == (["From kit: hips back"], [])
    assert to(nobody, first) == to(nobody, second) == []
    assert "no single client" in said(nobody)


def test_the_digest_tells_namesakes_apart_and_its_buttons_open_the_one_meant(chats):
    called(chats, "ann", "ann")
    chats.give(replace(chats.inbound("ann#1", InboundKind.MESSAGE, "squat 3x5 90"), name="ann"))
    card = chats.says("kit", "digest")
    shown = {label: said(chats.taps("kit", data)) for label, data in buttons(card).items()}

    assert "ann 1: " in said(card)
    assert "ann 2: " in said(card)
    assert "Sets: 0" in shown["ann 1"]
    assert "Sets: 3" in shown["ann 2"]


def test_a_coach_without_clients_is_told_how_to_get_one(chats):
    for words in ("clients", "digest", "digest ann", "plan for ann", "note to ann: hi"):
        assert "invite" in said(chats.says("kit", words))


def test_a_coach_without_a_plan_is_asked_whose_sets_are_meant(chats):
    linked(chats, "ana", "bea")
    chats.says("ana", PLAN)

    out = said(chats.says("kit", "+2 sets quads"))
    assert "No plan" not in out
    assert "Send: ana: +2 sets quads" in out


def test_a_coach_who_trains_herself_changes_her_own_plan(chats):
    linked(chats, "ana")
    chats.says("kit", PLAN)

    assert "ana" not in said(chats.says("kit", "+2 sets quads"))


def test_a_digest_that_waits_is_made_again_without_the_client_who_erased_herself(chats):
    linked(chats, "ana", "bea")
    sunday = chats.at + timedelta(days=6)
    digest = [one for one in chats.until(sunday.replace(hour=23)) if "ana" in one.outgoing.text]
    assert [one.athlete for one in digest if "bea" in one.outgoing.text] == [chats.person("kit").id]

    kit = chats.person("kit").id
    chats.says("ana", "erase everything", "erase all")
    with chats.store() as store:
        told = [one.outgoing.text for one in store.outbox.latest(kit, 100)]

    assert not [text for text in told if "ana" in text and "bea" in text]
    assert [text for text in told if "bea" in text and "ana" not in text and text.startswith("Week 10")]


@pytest.mark.parametrize("words", ["why squat ana", "why ana", "why barbell back squat ana"])
def test_a_coach_is_told_no_reasons_of_a_client(chats, words):
    linked(chats, "ana")
    chats.says("ana", PLAN)
    chats.says("kit", PLAN)
    out = said(chats.says("kit", words))

    assert "Only ana is told why" in out
    assert "90" not in out


def test_a_coach_is_told_the_reasons_of_her_own_plan(chats):
    linked(chats, "ana")
    chats.says("kit", PLAN)

    assert "90" in said(chats.says("kit", "why squat"))
