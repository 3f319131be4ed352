"""A coach's "ann: +3 sets side delts": shown, accepted, edited, undone; and what her digest costs the database."""

from __future__ import annotations

from datetime import timedelta

import pytest
from sqlalchemy import Engine, event

from tests.bot.chatting import PLAN, said, to

BASE = """plan: base, 8 weeks, target side delts 8-14
day mon: push
barbell bench press 3x5 at 60 kg, then +2.5 kg
dumbbell lateral raise 3x12-15 at 8 kg, then +1 kg
day thu: legs
barbell back squat 3x5 at 80 kg, then +2.5 kg"""
ASKED = "ann: +3 sets side delts"


def link(chats, *names):
    for name in names:
        code = said(chats.says("kit", "invite")).split("/start ")[1].split()[0]
        chats.says(name, "/start", f"/start {code}", "yes")


@pytest.fixture
def coached(chats):
    chats.says("kit", "/start")
    link(chats, "ann")
    chats.says("kit", "plan for ann", BASE)
    return chats


def raises(chats):
    """The sets of lateral raises that her newest plan asks for, a number each line."""
    text = chats.standing("ann")["plans"][-1][0]
    return [int(line.split("raise ")[1].split("x")[0]) for line in text.splitlines() if "lateral raise" in line]


def test_nothing_changes_before_she_accepts(coached):
    before = coached.standing("ann")
    out = said(coached.says("kit", ASKED))

    assert out.startswith("For ann, side delts: +3 sets")
    assert coached.standing("ann") == before


def test_accepted_undone_and_brought_back_the_client_is_told(coached):
    out = coached.says("kit", ASKED, "accept")
    taken = raises(coached)
    back = coached.says("kit", "undo")
    undone = raises(coached)
    coached.says("kit", "redo")
    ann = coached.parties["ann"].chat

    assert (taken, undone, raises(coached)) == ([6], [3], [6])
    assert "kit changed your plan: +3 sets" in said(to(out, ann))
    assert "kit took back: +3 sets" in said(to(back, ann))


def test_the_message_edited_is_the_proposal_edited(coached):
    coached.says("kit", ASKED)
    out = said(coached.edits("kit", "ann: +1 set side delts"))
    coached.says("kit", "yes")

    assert "+1 set " in out
    assert raises(coached) == [4]


@pytest.mark.parametrize(
    ("words", "sets"),
    [("make it 2", 5), ("2 sets", 5), ("only 1 set", 4), ("+2 sets", 5), ("2 sets instead", 5), ("1", 4)],
)
def test_another_number_of_sets_is_proposed_instead(coached, words, sets):
    before = coached.standing("ann")
    out = said(coached.says("kit", ASKED, words))

    assert out.startswith("For ann, side delts: +")
    assert coached.standing("ann") == before
    coached.says("kit", "accept")
    assert raises(coached) == [sets]


def test_fewer_sets_stay_fewer(coached):
    assert "-1 set " in said(coached.says("kit", "ann: -2 sets side delts", "make it 1"))


def test_after_she_left_him_nothing_is_proposed_or_taken(coached):
    coached.says("kit", ASKED)
    coached.says("ann", "leave coach")
    before = coached.standing("ann")

    assert "For ann" not in said(coached.says("kit", "make it 2"))
    coached.says("kit", "accept")
    assert coached.standing("ann") == before


@pytest.mark.parametrize("words", ["8", "make it 8", "2 sets"])
def test_of_ones_own_proposal_a_bare_number_is_no_number_of_sets(chats, words):
    chats.says("ana", "/start", "London", "kg", PLAN, "squat 90x5", "more quads")

    assert "For quads" not in said(chats.says("ana", words))


def test_of_ones_own_proposal_the_sets_are_edited_by_name(chats):
    chats.says("ana", "/start", "London", "kg", PLAN, "more quads")

    assert "For quads: +1 set " in said(chats.says("ana", "make it 1 set"))


def weeks_read(chats):
    """How often a digest reads a range of days of the table of sets, for whichever clients."""
    told = []

    def note(connection, cursor, statement, parameters, context, executemany):
        told.append(statement)

    event.listen(Engine, "before_cursor_execute", note)
    try:
        chats.says("kit", "digest")
    finally:
        event.remove(Engine, "before_cursor_execute", note)
    of_sets = [one.partition("WHERE")[2] for one in told if "FROM set_record" in one]
    return sum("on_day BETWEEN" in where and "exercise" not in where for where in of_sets)


def test_a_coachs_week_reads_the_sets_of_five_clients_as_often_as_of_one(chats):
    chats.says("kit", "/start")
    link(chats, "ann")
    chats.says("ann", "squat 3x5 90", "bench 3x8 50")
    one = weeks_read(chats)
    link(chats, "bea", "cat", "dot", "eva")
    for name in ("bea", "cat", "dot", "eva"):
        chats.says(name, "squat 3x5 80")
    chats.at += timedelta(minutes=1)

    assert one == 1
    assert weeks_read(chats) == one
