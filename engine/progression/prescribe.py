"""What a slot asks for in one session: its rule, and what lies over every rule.

In this order: the rule folds over the exposures (deload weeks and sessions held for pain left out); pain stops any
push; the ceiling keeps the ask near what was last lifted; a deload week or time away makes the session lighter. Every
load asked for can be loaded. The last session is judged by what it was really asked: the same is worked out for its
day.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date

from engine.loading.loadable import Loadable
from engine.progression.asked import Ask, Laid, said
from engine.progression.ceiling import not_steep, under_ceiling
from engine.progression.change import last_lifted
from engine.progression.layoff import UNTOUCHED, days_away
from engine.progression.lighter import lighter
from engine.progression.pain import eased_in, proving, unpushed
from engine.progression.registry import Asked, asked
from engine.progression.terms import Terms, terms_of
from engine.progression.two_for_two import offered
from engine.progression.words import stated
from engine.values.load import Load, Unit
from engine.values.plan import Deload, Slot
from engine.values.prescription import Exposure, Held, Offer, Prescription, Verdict


def prescribe(
    slot: Slot,
    exposures: Sequence[Exposure],
    *,
    today: date,
    loadable: Loadable,
    deload: Deload | None = None,
    pain: bool = False,
    strength: Load | None = None,
    last_trained: date | None = None,
    unit: Unit | None = None,
) -> Prescription:
    """What the slot asks for today.

    Shape: `exposures` oldest first. `last_trained` is the last day the exercise was trained in any session; without
    it the last exposure counts.
    Units: loads in `unit`, the athlete's; without it in the plan's, and where it states none, in the log's.
    """
    terms = terms_of(slot, exposures, loadable, strength, unit)
    past = tuple(exposures)
    sides = asked(terms, proving(past), lambda last, ask: _as_asked(last, ask, past, terms))
    last = max((on for on in (last_trained, past[-1].on if past else None) if on), default=None)
    laid = _as_loadable(_unpushed(sides, past, terms, pain=pain), terms)
    away = days_away(last, today)
    if deload is None and away <= UNTOUCHED:
        laid = under_ceiling(laid, terms)
    else:
        laid = lighter(under_ceiling(not_steep(laid), terms), deload, away, terms)
    offer = None if deload is not None or pain else offered(laid, proving(past), terms)
    return _told(sides.now, laid, deload, past, terms, offer)


def _unpushed(sides: Asked, past: Sequence[Exposure], terms: Terms, *, pain: bool) -> Laid:
    """The ask as pain today, or pain at the session before, leaves it."""
    last = next((one for one in reversed(past) if not one.deload), None)
    after = last is not None and last.hurt
    if not pain and not after:
        return Laid(sides.now)
    lifted = last_lifted(terms, [one for one in past if not one.deload])
    lifted = None if lifted is None else terms.down(lifted)
    if pain or last is None:
        return unpushed(sides.now, sides.before, lifted, last)
    return eased_in(sides.now, sides.before, lifted, last)


def _as_asked(last: Exposure, ask: Ask, past: Sequence[Exposure], terms: Terms) -> Exposure:
    """The last exposure with the load it was really asked, where that was less than the rule's."""
    earlier = past[: next(at for at, one in enumerate(past) if one is last)]
    laid = Laid(ask)
    if any(one.hurt for one in earlier):
        before = asked(terms, proving(earlier)).before
        laid = _unpushed(Asked(before, ask), earlier, terms, pain=False)
    away = last.away
    if away is None:
        away = days_away(earlier[-1].on, last.on) if earlier else 0
    laid = under_ceiling(laid, terms)
    shown, rule = (laid if away <= UNTOUCHED else lighter(laid, None, away, terms)).ask.sets[0].load, ask.sets[0].load
    return replace(last, asked=shown) if shown is not None and rule is not None and shown < rule else last


def _as_loadable(laid: Laid, terms: Terms) -> Laid:
    """Say so where the plan's own first load cannot be loaded."""
    planned, start = terms.slot.load, terms.start_load
    if laid.ask.verdict is not Verdict.START or not isinstance(planned, Load) or start is None:
        return laid
    wanted = terms.of(planned)
    if start == wanted:
        return laid
    if wanted < start and terms.loadable.at_most(wanted) is None:
        note = f"The plan says {stated(planned)}; nothing lighter than {stated(start)} can be loaded."
        return laid.noted(Held.EMPTY_BAR, note)
    note = f"The plan says {stated(planned)}: {stated(start)} is the nearest that can be loaded."
    return laid.noted(Held.ROUNDING, note)


def _told(
    rule: Ask, laid: Laid, deload: Deload | None, past: Sequence[Exposure], terms: Terms, offer: Offer | None
) -> Prescription:
    ask = laid.ask
    heaviest = max((one.load.amount for one in ask.sets if one.load is not None), default=None)
    heavy = sum(heaviest is None or (one.load is not None and one.load.amount == heaviest) for one in ask.sets)
    return Prescription(
        exercise=terms.slot.exercise,
        sets=ask.sets,
        verdict=ask.verdict,
        reason=" ".join((said(ask.reason), *laid.notes)),
        next_step=_next_step(rule, laid, deload),
        evidence=ask.evidence,
        held=laid.held,
        lifted=None if ask.verdict is Verdict.FIND_LOAD else last_lifted(terms, past, heavy),
        offer=offer,
        total=ask.total if deload is None else None,
    )


def _next_step(rule: Ask, laid: Laid, deload: Deload | None) -> str:
    """What the next step takes: the rule's own, or the way back where this session was held back from it."""
    if deload is not None:
        return f"After the deload it goes on from here: {said(laid.ask.next_step)}"
    stands, shown = rule.sets[0].load, laid.ask.sets[0].load
    back = not {Held.LAYOFF, Held.CEILING}.isdisjoint(laid.held)
    pained = not {Held.PAIN, Held.AFTER_PAIN}.isdisjoint(laid.held)
    if not back or pained or rule.verdict is Verdict.FOLLOW or stands is None or shown is None:
        return said(laid.ask.next_step)
    if stands <= shown:
        return said(laid.ask.next_step)
    return f"Make these, and it goes back up to {stated(stands)}, no more than 10 % at a time."
