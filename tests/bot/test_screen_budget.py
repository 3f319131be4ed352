"""Every message of every conversation fits a small phone: lines wrapped at 34 characters, two for each row of buttons.

The figures are the project's own estimate for a screen of 360 by 640: 6 lines in the middle of a session, 10 for a
question, an error or a reminder, 14 for a card. Common practice, no source: no emoji, no markup, no tables, few and
short buttons.
"""

from __future__ import annotations

import re
import textwrap
import unicodedata
from datetime import UTC, datetime, timedelta
from functools import cache

import pytest

from bot.demo import DEMO_ATHLETE, seed
from bot.replies.screen import fitting
from bot.taps import TAPS
from storage.envelopes import Delivery
from tests.bot.chatting import Chats
from tests.bot.stories import NAMES, outgoing
from tests.databases import in_memory

WIDE = 34
SESSION, QUESTION, CARD = 6, 10, 14
LONGEST_LABEL = 14
CARDS = re.compile(
    r"(Mon|Tue|Wed|Thu|Fri|Sat|Sun) \d|Week \d|This week|Session saved|I keep|Saved \d+ sets|Plan saved|.+, week \d|"
    r".+ gave you a plan|.+, lately|Hard sets|Unit: |If I |For |Warm up|Your gym|Kept:|\d+ (things?|lines?) |"
    r".+: \d+ thing|.+, not saved yet: |Nothing new in "
)
SAFETY = re.compile(r"Stop training now|Stop or ease|Stop what hurts")
"""What to do about pain, where help is, and the choice: longer than a question may be, and read for once."""
MAY_BE_LONGER = re.compile(r"Log: row|plan: |No plan yet\. Send one|Saved \d+ sets:\n(?s:.)*\nNot read: ")
"""The examples of help, a plan's own text and the example of a plan: they are asked for, and read at leisure. So is the
answer to a pasted workout with lines that were not read: each is quoted, however many there are."""
MARKUP = re.compile(r"</?[a-zA-Z][^>]*>|\*\*|__|```|&(?:lt|gt|amp|quot);")


def lines_of(delivery: Delivery) -> int:
    """Lines on the screen, buttons included."""
    words = delivery.outgoing.text
    wrapped = sum(max(1, len(textwrap.wrap(line, WIDE))) for line in words.splitlines())
    return wrapped + 2 * len(delivery.outgoing.buttons)


def most_lines(delivery: Delivery) -> int:
    """A question with a row for each long reading may take a card: the readings are the point."""
    words = delivery.outgoing.text
    asks = any(data.startswith("v1:pick") for row in delivery.outgoing.buttons for _, data in row)
    return CARD if asks or CARDS.match(words) or SAFETY.match(words) else QUESTION


@cache
def demo_day() -> tuple[Delivery, ...]:
    """The three weeks of the demo and the conversation that the README gives to copy."""
    database = in_memory()
    monday = datetime(2026, 3, 2, 17, 0, tzinfo=UTC)
    seed(database, monday, "Europe/London", source="test")
    chats = Chats(database, at=monday, zone="Europe/London")
    out = chats.join()
    for words in ("today", "squat 82.5 5", "5", "undo", "why squat", "next", "ohp 3x6 40", "week", "volume", "done"):
        out += chats.says(DEMO_ATHLETE, words)
    out += chats.says(DEMO_ATHLETE, "help") + chats.says(DEMO_ATHLETE, "/settings") + chats.says(DEMO_ATHLETE, "/plan")
    out += chats.until(monday + timedelta(days=8))
    database.close()
    return tuple(out)


def everything() -> list[tuple[str, Delivery]]:
    told = [(name, one) for name in NAMES for one in outgoing(name)]
    return [*told, *(("demo", one) for one in demo_day())]


def messages() -> list[tuple[str, Delivery]]:
    return [(name, one) for name, one in everything() if one.outgoing.kind != "react"]


@pytest.fixture(scope="module")
def sent() -> list[tuple[str, Delivery]]:
    return messages()


def told(found) -> str:
    return "\n\n".join(f"{name}: {why}\n{one.outgoing.text}" for name, one, why in found)


def test_every_message_fits_the_screen(sent):
    over = [
        (name, one, f"{lines_of(one)} lines of {most_lines(one)}")
        for name, one in sent
        if not MAY_BE_LONGER.match(one.outgoing.text) and lines_of(one) > most_lines(one)
    ]

    assert not over, told(over)


def test_the_line_of_a_lift_is_short(sent):
    over = [
        (name, one, f"{lines_of(one)} lines")
        for name, one in sent
        if re.search(r"\bSaved\.", one.outgoing.text)
        and "\n1 " not in one.outgoing.text
        and lines_of(one) > SESSION + 2
    ]

    assert not over, told(over)


def test_texts_are_plain_words(sent):
    marked = [
        (name, one, "markup or symbols")
        for name, one in sent
        if MARKUP.search(one.outgoing.text)
        or any(unicodedata.category(letter) in ("So", "Cs", "Co") for letter in one.outgoing.text)
    ]

    assert not marked, told(marked)


def test_no_line_aligns_columns_with_spaces(sent):
    aligned = [(name, one, "two spaces") for name, one in sent if re.search(r"\S {2,}\S|\t", one.outgoing.text)]

    assert not aligned, told(aligned)


def test_buttons_are_few_short_and_lead_somewhere(sent):
    wrong = []
    for name, one in sent:
        rows = one.outgoing.buttons
        asks_readings = any(data.startswith("v1:pick") for row in rows for _, data in row)
        for label, data in (button for row in rows for button in row):
            version, verb = data.split(":")[:2]
            if version != "v1" or verb not in TAPS or len(data.encode("ascii")) > 32:
                wrong.append((name, one, f"{label} leads nowhere: {data}"))
            if len(label) > LONGEST_LABEL and not asks_readings:
                wrong.append((name, one, f"{label} is long"))
        if any(len(row) > 3 for row in rows) or (len(rows) > 2 and not asks_readings):
            wrong.append((name, one, "too many buttons"))

    assert not wrong, told(wrong)


def test_the_first_words_hold_the_point_and_nothing_private(sent):
    private = re.compile(r"\b(pain|knee|elbow|body weight)\b", re.IGNORECASE)
    unprompted = [(name, one) for name, one in sent if one.inbound is None]
    wrong = [(name, one, "private") for name, one in unprompted if private.search(one.outgoing.text.splitlines()[0])]

    assert unprompted
    assert not wrong, told(wrong)


@pytest.mark.parametrize(
    ("words", "shown"),
    [
        pytest.param(10, 3, id="all that is wanted"),
        pytest.param(150, 2, id="less where it does not fit"),
        pytest.param(500, 1, id="the barest where nothing fits"),
    ],
)
def test_a_card_tells_as_much_as_fits(words, shown):
    assert len(fitting(lambda most: ["x" * words] * most)) == shown
