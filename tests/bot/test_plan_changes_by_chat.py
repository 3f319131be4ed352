"""Looking ahead, what-ifs, more or less of a muscle, and what check finds, as the athlete or her coach types them."""

from __future__ import annotations

import pytest

from bot.muscle_words import asked
from bot.replies.screen import fits_card
from engine.values.muscles import Muscle
from tests.bot.chatting import buttons, said

BASE = """plan: base, 8 weeks, deload week 8
target side delts 8-14
day mon: push
barbell bench press 3x5 at 60 kg, then +2.5 kg
dumbbell lateral raise 3x12-15 at 8 kg, then +1 kg
push-up 2x max, +1 rep each set
day wed: pull
barbell row 3x8-12 at 50 kg, then +2.5 kg
pull-up 3x6-8, then +2.5 kg
day fri: legs
barbell back squat 3x5 at 80 kg, then +2.5 kg
romanian deadlift 3x8 at 70 kg, then +5 kg
lying leg curl 3x10 at 30 kg, then +2.5 kg
dumbbell curl 3x10-12 at 12 kg, then +1 kg
triceps pushdown 3x10-12 at 20 kg, then +2.5 kg"""
ALTERNATING = """plan: two weeks, 8 weeks
target side delts 8-14
week A
day mon: a
dumbbell lateral raise 3x12-15 at 8 kg, then +1 kg
day thu: a two
plank 3x40 s
week B
day mon: b
barbell overhead press 3x6 at 40 kg, then +2.5 kg
day thu: b two
plank 3x40 s"""


@pytest.fixture
def ana(chats):
    chats.says("ana", "hello", BASE)
    return lambda *texts: said(chats.says("ana", *texts))


# ---- looking ahead


def test_one_day_of_a_week_can_be_seen(ana):
    out = ana("preview 6 fri")

    assert "legs" in out
    assert "triceps pushdown" in out
    assert "push" not in out.replace("pushdown", "")


def test_every_day_of_a_long_week_can_be_seen(chats, ana):
    out = chats.says("ana", "preview 6")
    text = out[-1].outgoing.attachment.decode()

    assert fits_card(said(out).split("\n"))
    assert all(lift in text for lift in ("bench", "barbell row", "triceps pushdown"))
    assert "preview 6 fri" in said(out)


def test_a_day_alone_is_the_coming_one(ana):
    assert "Week 1 of 8" in ana("preview fri")


def test_a_first_maximum_that_is_assumed_is_told(ana):
    assert "first set of 10 is assumed for push-up" in ana("preview 2 mon")
    assert "assumed" not in ana("push-up 14 12", "preview 2 mon")


@pytest.mark.parametrize("words", ["preview -1", "preview 0", "preview 99", "preview 9999"])
def test_a_week_that_is_none_is_refused(ana, words):
    assert "weeks 1 to 8" in ana(words)


def test_a_day_without_a_session_names_those_that_have_one(ana):
    assert "Mon, Wed and Fri" in ana("preview 6 tue")


def test_her_own_rate_can_be_asked_for(ana):
    assert "no rate of yours" in ana("preview 6 at my rate")

    out = ana("bench 60 5 5 5", "lateral raise 8 12 12 12", "push-up 12 10", "done", "preview 6 mon at my rate")

    assert "if you make" in out
    assert "% of sessions" in out


# ---- what if


def test_the_biggest_change_comes_first(ana):
    lines = ana("what if I swap romanian deadlift for leg extension").split("\n")
    changes = [line for line in lines if "sets a week" in line]
    by = [abs(float(line.split()[-4]) - float(line.split()[-6])) for line in changes]

    assert by == sorted(by, reverse=True)
    assert any(line.startswith("hamstrings") for line in changes)


@pytest.mark.parametrize(
    ("words", "told"),
    [
        pytest.param("what if i drop leg curl", "hamstrings: 6 to 3 sets a week", id="a lift dropped"),
        pytest.param("what if I move wed to tue", "spacing and minutes stay", id="a day moved"),
        pytest.param("what if I move mon to wed", "a day without a session", id="onto another session"),
        pytest.param("what if I move tue to thu", "mon, wed, fri", id="a day without a session"),
        pytest.param("what if I add 1000 sets", "of which lift or muscle", id="sets of nothing"),
        pytest.param("what if I add 1000 sets of bench", "1 to 30 sets", id="too many sets"),
        pytest.param("what if I add 3 sets of side delts", "side delts: ", id="sets of a muscle"),
        pytest.param("what if I add 2 sets of bench", "push: ", id="minutes by session"),
        pytest.param("what if I took a nap", "a lift to drop", id="something else"),
    ],
)
def test_what_if(ana, words, told):
    assert told in ana(words)


@pytest.mark.parametrize(
    ("both", "one", "other"),
    [
        ("drop leg curl and add 2 sets of bench", "drop leg curl", "add 2 sets of bench"),
        ("add 2 sets of bench, and drop leg curl", "add 2 sets of bench", "drop leg curl"),
        ("drop leg curl and bench", "drop leg curl", "drop bench"),
        ("add 3 sets of side delts then drop leg curl", "add 3 sets of side delts", "drop leg curl"),
    ],
)
def test_two_changes_are_told_together(ana, both, one, other):
    def changed(words):
        return {line for line in ana(f"what if I {words}").split("\n") if "sets a week" in line}

    told = changed(both)

    assert told & changed(one)
    assert told & changed(other)


@pytest.mark.parametrize("words", ["drop leg curl and juggle", "add 2 sets of bench and drop flurbs"])
def test_a_change_that_cannot_be_is_named_beside_one_that_can(ana, words):
    assert words.rsplit(" ", 1)[-1] in ana(f"what if I {words}")


def test_a_spacing_caution_is_told(chats):
    chats.says(
        "ana", "hello", "plan: x, 4 weeks\nday mon: a\npush-up 3x max\nday thu: b\nbench 3x8 at 60 kg, then +2.5 kg"
    )
    out = said(chats.says("ana", "what if I move thu to tue"))

    assert "Careful: push-up took chest" in out


def test_what_if_saves_nothing(chats, ana):
    before = chats.standing("ana")
    ana("what if i drop leg curl", "what if I move wed to tue", "what if I add 3 sets of side delts")

    assert chats.standing("ana") == before


# ---- more and less


@pytest.mark.parametrize(
    ("text", "muscles", "change"),
    [
        pytest.param("side delts", (Muscle.SIDE_DELTS,), None, id="a muscle"),
        pytest.param("+3 sets side delts", (Muscle.SIDE_DELTS,), 3, id="sets in front"),
        pytest.param("side delts +3", (Muscle.SIDE_DELTS,), 3, id="sets behind"),
        pytest.param("3 more sets of side delts", (Muscle.SIDE_DELTS,), 3, id="in words"),
        pytest.param("-2 sets chest", (Muscle.CHEST,), -2, id="fewer by sign"),
        pytest.param("take 2 sets off chest", (Muscle.CHEST,), -2, id="fewer in words"),
        pytest.param("my hamstrings please", (Muscle.HAMSTRINGS,), None, id="politely"),
        pytest.param("pecs", (Muscle.CHEST,), None, id="a trade word"),
        pytest.param("lateral delts", (Muscle.SIDE_DELTS,), None, id="another name"),
        pytest.param("arms", (Muscle.BICEPS, Muscle.TRICEPS, Muscle.FOREARMS), None, id="a group"),
        pytest.param("absolutely nothing", (), None, id="none"),
    ],
)
def test_what_is_asked_for(text, muscles, change):
    found = asked(text)

    assert (found.muscles, found.change) == (muscles, change)


def test_without_a_number_the_target_is_reached(ana):
    out = ana("more side delts")
    assert "side delts: 3 to 8 sets a week, target 8-14" in out
    after = ana("accept", "check")

    assert "Side delts" not in after


def test_each_kind_of_week_is_brought_to_the_target(chats):
    chats.says("ana", "hello", ALTERNATING)
    out = said(chats.says("ana", "more side delts"))

    assert "side delts, sets in week A 3 to 8, B 1.5 to 8.5, target 8-14" in out
    assert "Side delts" not in said(chats.says("ana", "accept", "check"))


def test_a_group_of_muscles_asks_which(chats, ana):
    out = chats.says("ana", "more shoulders")
    assert "side delts, rear delts and front delts" in said(out)
    answer = said(chats.taps("ana", buttons(out)["Rear delts"]))

    assert answer.startswith("For rear delts: +2 sets")


def linked(chats):
    code = said(chats.says("kit", "hello", "invite")).split("/start ")[1].split()[0]
    chats.says("ann", "hello", f"/start {code}", "yes")
    chats.says("kit", "plan for ann", BASE)


@pytest.mark.parametrize(
    ("words", "told"),
    [
        pytest.param("ann: +2 sets chest", "For ann, chest: +2 sets", id="by sets"),
        pytest.param("more side delts for ann", "side delts: 3 to 8 sets a week, target 8-14", id="for her"),
    ],
)
def test_a_coach_asks_for_a_client(chats, words, told):
    linked(chats)

    assert told in said(chats.says("kit", words))


def test_a_strangers_plan_cannot_be_changed_by_a_button(chats, ana):
    chats.says("bo", "hello", BASE)
    before = chats.standing("bo")
    out = said(chats.taps("ana", f"v1:more:+2:chest:{chats.person('bo').id}"))

    assert "Accept" not in out
    assert "Nothing changed" in out
    assert chats.standing("bo") == before


# ---- check


@pytest.mark.parametrize(
    ("lines", "told"),
    [
        pytest.param(
            "target side delts 8-14\nday mon: a\ndumbbell lateral raise 3x12-15 at 8 kg, then +1 kg",
            "Side delts: 3 sets a week, your target is 8-14. Send: more side delts",
            id="volume",
        ),
        pytest.param(
            "target chest 1-2\nday mon: a\nbench 4x8 at 60 kg, then +2.5 kg",
            "Chest: 4 sets a week, your target is 1-2. Send: less chest",
            id="too much volume",
        ),
        pytest.param(
            "day mon: pull\npull-up 4x6-8, then +2.5 kg\nromanian deadlift 4x8 at 70 kg, then +5 kg\n"
            "day tue: legs\nlying leg curl 3x10 at 30 kg, then +2.5 kg\nseated leg curl 3x10 at 30 kg, then +2.5 kg",
            "hamstrings",
            id="spacing",
        ),
        pytest.param(
            "day mon: a\npush-up 3x max\nday tue: b\nbench 3x8 at 60 kg, then +2.5 kg",
            "to failure",
            id="failure the day before",
        ),
        pytest.param("day mon: a\nbench 2x max at 60 kg, +1 rep each set", "spotter or safety pins", id="a spotter"),
        pytest.param("day mon: a\nbench 10x5 at 60 kg, then +2.5 kg", "another rep range", id="rep mix"),
        pytest.param(
            "day mon: a\nsquat 10x5 at 60 kg, then +2.5 kg, rest 5 min\nbench 10x8 at 60 kg, then +2.5 kg, rest 5 min",
            "minutes",
            id="minutes",
        ),
    ],
)
def test_check_finds_it_by_chat(chats, lines, told):
    chats.says("ana", "hello", f"plan: x, 4 weeks\n{lines}")

    assert told in said(chats.says("ana", "check"))


def test_all_findings_can_be_read(chats):
    muscles = ("side delts", "chest", "lats", "biceps", "triceps", "calves")
    targets = "\n".join(f"target {muscle} 8-14" for muscle in muscles)
    chats.says("ana", "hello", f"plan: x, 4 weeks\n{targets}\nday mon: a\nplank 3x40 s")
    out = chats.says("ana", "check")
    text = out[-1].outgoing.attachment.decode()

    assert all(f"more {muscle}" in text for muscle in muscles)


def test_what_check_says_to_send_reaches_the_target(ana):
    remedy = ana("check").split("Send: ")[1].splitlines()[0]

    assert "target 8-14" in ana(remedy)


@pytest.mark.parametrize(
    ("words", "told"),
    [
        pytest.param("/check with dumbbells", "equipment that is there, not barbell", id="what there is"),
        pytest.param("/check without cables", "equipment that is there, not cable", id="what there is not"),
        pytest.param("check 15 min", "better up to 15", id="a short hour"),
    ],
)
def test_a_plan_is_checked_against_what_there_is(ana, words, told):
    assert told in ana(words)


def test_the_share_of_weeks_that_differ_is_told_week_by_week(chats):
    chats.says("ana", "hello", ALTERNATING)

    assert "side delts, sets in week A 3 to 5, B 1.5 to 1.5" in said(
        chats.says("ana", "what if I add 2 sets of lateral raise")
    )


# ---- a long session


def test_every_lift_of_a_long_session_can_be_seen_with_its_load(chats):
    lifts = ("squat", "bench press", "lat pulldown", "rdl", "leg press", "front squat", "hip thrust", "deadlift")
    lines = [f"{lift} 3x5 at {40 + place} kg, then +2.5 kg" for place, lift in enumerate((*lifts, "leg extension"))]
    days = "\n".join([*lines, "lying leg curl 3x10 at 33 kg, then +2.5 kg", "seated leg curl 3x10 at 34 kg"])
    chats.says("ana", "hello", f"plan: long, 4 weeks\nday mon: all of it\n{days}")
    short = said(chats.says("ana", "today"))
    hint = short.split(" more lifts: ")[1].splitlines()[0]
    whole = said(chats.says("ana", hint))

    assert "11 Seated leg curl" not in short
    assert "10 Lying leg curl" in whole
    assert "11 Seated leg curl" in whole
