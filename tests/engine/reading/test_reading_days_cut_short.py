"""Days of the week and months cut short, in ten languages, and days of a month behind their little words.

Names of days and months: Unicode CLDR, widths "abbreviated" and "wide" of the ten locales; from memory.
"""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta

import pytest

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Asked, Context, Logged, NoSets, Outcome

NOW = datetime(2026, 11, 28, 18, 0, tzinfo=UTC)
""" A Saturday. """
LIFT = {
    "en": "squat", "de": "kniebeuge", "es": "sentadilla", "fr": "squat", "pt": "agachamento", "it": "squat",
    "ru": "присед", "nl": "squat", "sv": "knäböj", "pl": "przysiad",
}  # fmt: skip
DAYS = {
    "en": "mon tue wed thu fri sat sun",
    "de": "mo di mi do fr sa so",
    "es": "lun mar mié jue vie sáb dom",
    "fr": "lun mar mer jeu ven sam dim",
    "pt": "seg ter qua qui sex sáb dom",
    "it": "lun mar mer gio ven sab dom",
    "nl": "ma di wo do vr za zo",
    "sv": "mån tis ons tors fre lör sön",
    "pl": "pon wt śr czw pt sob ndz",
    "ru": "пн вт ср чт пт сб вс",
}
WHOLE_DAYS = {
    "en": "monday tuesday wednesday thursday friday saturday sunday",
    "de": "montag dienstag mittwoch donnerstag freitag samstag sonntag",
    "es": "lunes martes miércoles jueves viernes sábado domingo",
    "fr": "lundi mardi mercredi jeudi vendredi samedi dimanche",
    "pt": "segunda terça quarta quinta sexta sábado domingo",
    "it": "lunedì martedì mercoledì giovedì venerdì sabato domenica",
    "nl": "maandag dinsdag woensdag donderdag vrijdag zaterdag zondag",
    "sv": "måndag tisdag onsdag torsdag fredag lördag söndag",
    "pl": "poniedziałek wtorek środa czwartek piątek sobota niedziela",
    "ru": "понедельник вторник среда четверг пятница суббота воскресенье",
}
MONTHS = {
    "en": "jan feb mar apr may jun jul aug sep oct nov dec",
    "de": "jan feb mär apr mai jun jul aug sep okt nov dez",
    "es": "ene feb mar abr may jun jul ago sep oct nov dic",
    "fr": "janv févr mars avr mai juin juil août sept oct nov déc",
    "pt": "jan fev mar abr mai jun jul ago set out nov dez",
    "it": "gen feb mar apr mag giu lug ago set ott nov dic",
    "nl": "jan feb mrt apr mei jun jul aug sep okt nov dec",
    "sv": "jan feb mar apr maj jun jul aug sep okt nov dec",
    "pl": "sty lut mar kwi maj cze lip sie wrz paź lis gru",
    "ru": "янв фев мар апр мая июн июл авг сен окт ноя дек",
}
NOVEMBER = 10
NO_MONTH_ALONE = {("it", "set"), ("pt", "set"), ("pt", "dez"), ("de", "dez")}
"""Words that count as well: only what leads to a day, or a year, makes a month of them."""


def outcome(text: str) -> Outcome:
    return read(text, Context(now=NOW), catalogue())


def day_read(text: str) -> date | None:
    """The day that the three sets were put on."""
    found = outcome(text)
    assert isinstance(found, Logged), found
    assert [(one.reps, one.load.amount if one.load else None) for one in found.sets] == [(5, 100)] * 3
    return found.on or NOW.date()


def latest(weekday: int) -> date:
    return NOW.date() - timedelta(days=(NOW.weekday() - weekday) % 7)


WEEKDAYS = [
    pytest.param(lang, word, number, id=f"{lang} {word}")
    for lang in LIFT
    for names in (DAYS, WHOLE_DAYS)
    for number, word in enumerate(names[lang].split())
]


@pytest.mark.parametrize(("lang", "word", "weekday"), WEEKDAYS)
def test_a_weekday_with_its_date_is_that_day(lang, word, weekday) -> None:
    day, month, lift = latest(weekday), MONTHS[lang].split()[NOVEMBER], LIFT[lang]
    dot = "" if word in WHOLE_DAYS[lang].split() else "."

    for told in (f"{day.day} {month}", f"{day.day}/11", f"{day.day}.11.", f"{day.day} {month} 2026"):
        assert day_read(f"{word} {told} {lift} 3x5 100") == day
        assert day_read(f"{word}{dot} {told} {lift} 3x5 100") == day
    if (lang, word) != ("pt", "seg"):  # seconds, behind a number
        assert day_read(f"{lift} 3x5 100 {word} {day.day} {month}") == day


@pytest.mark.parametrize(("lang", "word", "weekday"), WEEKDAYS)
def test_a_weekday_with_the_date_of_another_is_told(lang, word, weekday) -> None:
    day, month = latest(weekday) - timedelta(days=9), MONTHS[lang].split()[NOVEMBER]
    found = outcome(f"{word} {day.day} {month} {LIFT[lang]} 3x5 100")
    assert isinstance(found, NoSets)
    assert found.why == "that date is another day of the week"


@pytest.mark.parametrize(("lang", "word", "weekday"), WEEKDAYS)
def test_a_weekday_alone_is_never_today_in_silence(lang, word, weekday) -> None:
    """But for "fr squat", the front squat, and little words of several languages: so, man, son."""
    lift = "kreuzheben" if lang == "de" else LIFT[lang]
    for text in (f"{word}: {lift} 3x5 100", f"{word} {lift} 3x5 100", f"{lift} 3x5 100 {word}"):
        found = outcome(text)
        if word == "so" and ":" not in text:
            continue
        assert isinstance(found, Asked) or (isinstance(found, Logged) and (found.on or NOW.date()) == latest(weekday))


@pytest.mark.parametrize(
    ("lang", "word", "month"),
    [
        pytest.param(lang, word, number, id=f"{lang} {word}")
        for lang in LIFT
        for number, word in enumerate(MONTHS[lang].split())
    ],
)
def test_a_month_cut_short_behind_its_day_is_that_month(lang, word, month) -> None:
    lift, day = LIFT[lang], date(2026 - (month > NOVEMBER), month + 1, 12)
    if (lang, word) not in NO_MONTH_ALONE:
        assert day_read(f"12 {word} {lift} 3x5 100") == day
        assert day_read(f"12 {word}. {lift} 3x5 100") == day
    if word != "dez":
        assert day_read(f"12 {word} {day.year} {lift} 3x5 100") == day


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("dia 20 agachamento 3x5 100", 20), ("agachamento 3x5 100 dia 20", 20), ("no dia 20 agachamento 3x5 100", 20),
        ("el 20 sentadilla 3x5 100", 20), ("el día 20: sentadilla 3x5 100", 20), ("sentadilla 3x5 100 el día 20", 20),
        ("am 20. kniebeuge 3x5 100", 20), ("kniebeuge 3x5 100 am 20.", 20), ("am 20.: kniebeuge 3x5 100", 20),
        ("le 20 squat 3x5 100", 20), ("squat 3x5 100 le 20", 20), ("il 20 squat 3x5 100", 20),
        ("den 20:e knäböj 3x5 100", 20), ("den 20 knäböj 3x5 100", 20), ("knäböj 3x5 100 den 20", 20),
        ("op de 20e squat 3x5 100", 20), ("dnia 20 przysiad 3x5 100", 20), ("przysiad 3x5 100 dnia 20", 20),
    ],
)  # fmt: skip
def test_a_day_of_the_month_behind_its_little_word_is_that_day(text, day) -> None:
    assert day_read(text) == date(2026, 11, day)


@pytest.mark.parametrize("text", ["il 2 set squat 3x5 100", "dia 2 set agachamento 3x5 100", "squat 3x5 100, il 2 set"])
def test_the_second_of_september_is_no_count_of_sets(text) -> None:
    assert day_read(text) == date(2026, 9, 2)


@pytest.mark.parametrize(
    "text",
    ["3 set squat 5x100", "so squat 3x5 100", "man squat 3x5 100", "squat 3x5 100 to failure", "mi sentadilla 3x5 100",
     "día 2: sentadilla 3x5 100", "squat 3x5 100 il m'en restait 2"],
)  # fmt: skip
def test_words_that_are_no_days_leave_the_sets_on_today(text) -> None:
    found = outcome(text)
    assert isinstance(found, Logged)
    assert found.on in (None, NOW.date())
