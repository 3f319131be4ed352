"""Plain words as Telegram takes them: nothing lost, nothing too long, nothing it cannot parse."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.messages import Attachment, Outgoing, OutgoingKind
from bot.telegram_text import CAPTION_LIMIT, TEXT_LIMIT, cleaned, escaped, parts, pieces, utf16_units
from tests.telegram.standin_markup import plain

FILE = Attachment("log.csv", b"date\n")


def sending(text: str, attachment: Attachment | None = None) -> Outgoing:
    return Outgoing(OutgoingKind.SEND, text, attachment=attachment)


@given(st.text())
def test_what_is_escaped_reads_as_it_was_written(text: str) -> None:
    assert plain(escaped(text)) == cleaned(text)


@given(st.text(alphabet=st.characters(), max_size=400), st.integers(2, 50))
def test_pieces_fit_and_lose_nothing_but_blanks(text: str, limit: int) -> None:
    cut = pieces(text, limit)

    assert all(utf16_units(piece) <= limit and piece.strip() for piece in cut)
    assert "".join("".join(cut).split()) == "".join(text.split())


@given(st.text())
def test_lengths_are_counted_as_the_platform_counts(text: str) -> None:
    assert utf16_units(text) == len(text.encode("utf-16-le", "surrogatepass")) // 2


@pytest.mark.parametrize(
    ("text", "limit", "expected"),
    [
        pytest.param("one\ntwo\nthree", 100, ("one\ntwo\nthree",), id="short text is left alone"),
        pytest.param("one\ntwo\nthree", 8, ("one\ntwo", "three"), id="cut between lines"),
        pytest.param("alpha beta gamma", 11, ("alpha beta", "gamma"), id="a long line at a space"),
        pytest.param("abcdefgh", 3, ("abc", "def", "gh"), id="a long word anywhere"),
        pytest.param("😀😀😀", 4, ("😀😀", "😀"), id="never inside a character"),
        pytest.param("a\n\n\nb", 2, ("a", "b"), id="blank pieces are left out"),
        pytest.param("", 10, (), id="nothing to say"),
    ],
)
def test_where_a_text_is_cut(text: str, limit: int, expected: tuple[str, ...]) -> None:
    assert pieces(text, limit) == expected


@pytest.mark.parametrize(
    ("outgoing", "expected"),
    [
        pytest.param(sending("a"), [("a", False, True)], id="words"),
        pytest.param(sending("a", FILE), [("a", True, True)], id="a file with its caption"),
        pytest.param(sending("", FILE), [("", True, True)], id="a file alone"),
        pytest.param(
            sending("a" * (CAPTION_LIMIT + 1), FILE),
            [("", True, False), ("a" * (CAPTION_LIMIT + 1), False, True)],
            id="words too long for a caption follow the file",
        ),
        pytest.param(
            sending("a" * TEXT_LIMIT + "\nb"), [("a" * TEXT_LIMIT, False, False), ("b", False, True)], id="long words"
        ),
        pytest.param(sending(" \n "), [], id="nothing"),
    ],
)
def test_the_calls_a_message_takes(outgoing: Outgoing, expected: list[tuple[str, bool, bool]]) -> None:
    assert [(part.text, part.attachment is not None, part.last) for part in parts(outgoing)] == expected


def test_halves_of_characters_and_nul_never_leave() -> None:
    assert escaped("a\ud83db\x00<") == "a\N{REPLACEMENT CHARACTER}b\N{REPLACEMENT CHARACTER}&lt;"
