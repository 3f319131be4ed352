"""What stands around the sets: efforts, failure, days, remarks, bullets, capitals, odd spaces."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal
from random import Random

from engine.values.effort import Effort
from engine.values.load import Unit
from engine.values.sets import SetDone
from tests.engine.reading.saying import NOW
from tests.property import told_words as words
from tests.property.told_forms import FORMS, MAY_BE_MARKED
from tests.property.told_messages import Form, Teller, Told, one_load

FEW = ("one", "two", "three")
A_THIRD = 0.3
MARKS = ("scale", "words", "failure", "last failure", "last effort")
SCALES = ("@{e}", "rpe {e}", "RPE{e}", "@ RPE {e}", "rir {k}", "{k} rir", "RIR{k}", "@rpe{e}")


def message(dice: Random) -> Told:
    """One message, with what it says."""
    form, lifts, _ = dice.choices(FORMS, [weight for _, _, weight in FORMS])[0]
    lift = dice.choice(lifts)
    language = dice.choice([code for code in words.LANGUAGES if code in lift.said])
    unit = Unit.LB if dice.random() < 0.12 else Unit.KG
    teller = Teller(dice, language, lift, unit)
    numbers, sets = form(teller)
    ways = [form.__name__]
    if form in MAY_BE_MARKED and dice.random() < 0.35:
        numbers, sets, way = _marked(teller, form, numbers, sets)
        ways.append(way)
    text = _named(teller, numbers, ways)
    on, pain = None, False
    if dice.random() < 0.2 and "\n" not in text:
        text, on, way = _on_a_day(teller, text)
        ways.append(way)
    elif dice.random() < 0.12:
        text = f"{teller.word(words.OPENINGS)} {text}"
        ways.append("opening")
    if dice.random() < 0.3:
        text, pain, way = _with_remark(teller, text)
        ways.append(way)
    return Told(_dressed(dice, text, ways), tuple(sets), unit, on, pain, tuple(ways))


def _named(teller: Teller, numbers: str, ways: list[str]) -> str:
    thrown = teller.dice.random()
    if "\n" in numbers:
        return f"{teller.name}\n{numbers}"
    if thrown < 0.12 and not numbers.startswith("="):
        ways.append("colon")
        return f"{teller.name}: {numbers}"
    if thrown < 0.2 and not numbers.startswith(("=", "sets", "reps", "weight", "x")):
        ways.append("behind")
        return f"{numbers} {teller.name}"
    return f"{teller.name} {numbers}"


def _marked(teller: Teller, form: Form, numbers: str, sets: list[SetDone]) -> tuple[str, list[SetDone], str]:
    """With an effort or failure, of the group or of its last set; behind unlike sets only of the last."""
    dice = teller.dice
    kind = dice.choice(("last failure", "last effort") if form is one_load else MARKS)
    if "\n" in numbers:
        return numbers, sets, "unmarked"
    left = dice.randint(1, 4)
    said, effort = _mark(teller, kind, left, "@" in numbers)
    gap = dice.choice((" ", ", ", " ("))
    failure = kind.endswith("failure")
    change = {"failure": True} if failure else {"effort": effort}
    marked = [replace(one, **change) for one in (sets[-1:] if kind.startswith("last") else sets)]
    return f"{numbers}{gap}{said}{')' if gap == ' (' else ''}", [*sets[: len(sets) - len(marked)], *marked], kind


def _mark(teller: Teller, kind: str, left: int, signed: bool) -> tuple[str, Effort | None]:
    tables = {"failure": words.TO_FAILURE, "last failure": words.LAST_TO_FAILURE, "last effort": words.LAST_WITH}
    if kind == "scale":
        way = teller.dice.choice(SCALES if not signed else ("rpe {e}", "RPE{e}", "rir {k}", "{k} rir", "RIR{k}"))
    else:
        way = teller.word(tables.get(kind, words.IN_RESERVE))
    spelled = kind == "words" and teller.language == "en" and left <= len(FEW) and teller.dice.random() < A_THIRD
    rpe = Decimal(10 - left)
    effort = Effort.from_rpe(rpe) if "{e}" in way else Effort(Decimal(left))
    return way.format(k=FEW[left - 1] if spelled else left, e=rpe), effort


def _on_a_day(teller: Teller, text: str) -> tuple[str, date, str]:
    dice, today = teller.dice, NOW.date()
    back = dice.randint(1, 6)
    day = today - timedelta(days=back)
    weekday = words.WEEKDAYS[teller.language][day.weekday()]
    ways = [(weekday, day)] * 3 + [(words.YESTERDAY[teller.language], today - timedelta(days=1))] * 3
    slashed = (day.day, day.month) if teller.unit is Unit.KG else (day.month, day.day)
    ways += [(day.isoformat(), day), (f"{day.day}.{day.month}.", day), (f"{slashed[0]:02}/{slashed[1]:02}", day)]
    if teller.language == "en":
        ways += [(f"{back} days ago" if back > 1 else "1 day ago", day), (f"on {weekday}", day), (f"{weekday}'s", day)]
    said, on = dice.choice(ways)
    if text.endswith("the last"):
        said, on = words.YESTERDAY[teller.language], today - timedelta(days=1)
    figures = said[0].isdigit() and "days" not in said
    if said.endswith("'s"):
        return f"{said} {text}", on, f"day {said}"
    if figures or dice.random() < 0.6:
        gap = dice.choice((": ", " ", ", ", "\n"))
        opening = dice.choice(("logging this late, ", "late log, ", "ok so ", "from ", ""))
        if teller.language != "en" or figures or dice.random() < 0.6:
            opening = ""
        return f"{opening}{said}{gap}{text}", on, f"day ahead {opening}"
    return f"{text}{dice.choice((' ', ', ', ' ('))}{said}".replace("(" + said, "(" + said + ")"), on, "day behind"


def _with_remark(teller: Teller, text: str) -> tuple[str, bool, str]:
    kind = teller.dice.choice(("remark", "remark", "number", "number", "pain"))
    table = {"remark": words.REMARKS, "number": words.REMARKS_WITH_A_NUMBER, "pain": words.PAINS}[kind]
    said = teller.word(table)
    gap = teller.dice.choice((", ", ". ", " - ", "; ", "\n", " (") + ((" ",) if kind == "remark" else ()))
    return f"{text}{gap}{said}{')' if gap == ' (' else ''}", kind == "pain", f"{kind}"


def _dressed(dice: Random, text: str, ways: list[str]) -> str:
    thrown = dice.random()
    if thrown < 0.06:
        ways.append("upper")
        return text.upper()
    if thrown < 0.14:
        ways.append("bullet")
        return dice.choice(("- ", "• ", "* ", "1. ", "1) ")) + text
    if thrown < 0.2:
        ways.append("spaces")
        return "  " + text.replace(" ", "  ") + " "
    if thrown < 0.28:
        return text + dice.choice((".", "!", " ✅", " 💪"))
    return text.capitalize() if thrown < 0.4 else text
