"""bodyweight 82: her body weight, so that body-weight lifts count for what they are."""

from __future__ import annotations

import re
from decimal import Decimal

from bot.replies.small import weight_kept
from bot.replies.trouble import needs
from bot.turn import Turn
from engine.reading.values import Act
from engine.values.load import Load, Unit
from storage.records import ChangeKind

WEIGHT = re.compile(r"(\d{2,3}(?:[.,]\d{1,2})?)\s*(kg|kilos?|lbs?|pounds?)?", re.IGNORECASE)
LIGHTEST_KG, HEAVIEST_KG = 25, 400


def bodyweight(turn: Turn, act: Act) -> None:
    """Nothing; the weight is kept with its day."""
    load = weight_in(act.text, turn.unit)
    if load is None:
        turn.say(needs("a body weight", "bodyweight 82.5 kg"))
        return
    change = turn.begin(ChangeKind.BODY_WEIGHT, f"body weight {load}")
    turn.store.body_weights.add(change, load, on=turn.today, at=turn.at)
    turn.say(weight_kept(load))


def weight_in(text: str, unit: Unit) -> Load | None:
    """The body weight in the words, or None where there is none that could be one."""
    found = WEIGHT.search(text)
    if found is None:
        return None
    told = (found[2] or unit.value).casefold()
    load = Load(Decimal(found[1].replace(",", ".")), Unit.KG if told.startswith("k") else Unit.LB)
    return load if LIGHTEST_KG <= load.kilograms() <= HEAVIEST_KG else None
