"""What a slot asks for in one session: its rule, and what lies over every rule.

In this order: the rule folds over the exposures (deload weeks left out); pain stops any push; the ceiling keeps the ask
near what was last lifted; a deload week or time away makes the session lighter. Every load asked for can be loaded.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from engine.loading.loadable import Loadable
from engine.progression.asked import Ask, Laid
from engine.progression.ceiling import under_ceiling
from engine.progression.layoff import days_away
from engine.progression.lighter import lighter
from engine.progression.pain import unpushed
from engine.progression.registry import asked
from engine.progression.terms import Terms, terms_of
from engine.values.load import Load
from engine.values.plan import Deload, Slot
from engine.values.prescription import Exposure, Held, Prescription, Verdict


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
) -> Prescription:
    """What the slot asks for today.

    Shape: `exposures` oldest first. `last_trained` is the last day the exercise was trained in any session; without
    it the last exposure counts.
    Units: loads in the plan's unit; where it states none, in the log's.
    """
    terms = terms_of(slot, exposures, loadable, strength)
    proving = [exposure for exposure in exposures if not exposure.deload]
    ask = asked(terms, proving)
    laid = unpushed(ask, asked(terms, proving[:-1])) if pain else Laid(ask)
    last = max((on for on in (last_trained, exposures[-1].on if exposures else None) if on), default=None)
    laid = lighter(under_ceiling(_as_loadable(laid, terms), terms), deload, days_away(last, today), terms)
    return _told(slot, laid, deload)


def _as_loadable(laid: Laid, terms: Terms) -> Laid:
    """Say so where the plan's own first load cannot be loaded."""
    planned, start = terms.slot.load, terms.start_load
    if laid.ask.verdict is not Verdict.START or not isinstance(planned, Load) or start is None:
        return laid
    wanted = terms.of(planned)
    if start == wanted:
        return laid
    if wanted < start:
        return laid.noted(Held.EMPTY_BAR, f"The plan says {wanted}; nothing lighter than {start} can be loaded.")
    return laid.noted(Held.ROUNDING, f"The plan says {wanted}, which cannot be loaded.")


def _told(slot: Slot, laid: Laid, deload: Deload | None) -> Prescription:
    ask: Ask = laid.ask
    after = "After the deload it goes on from here: " if deload is not None else ""
    return Prescription(
        exercise=slot.exercise,
        sets=ask.sets,
        verdict=ask.verdict,
        reason=" ".join((ask.reason, *laid.notes)),
        next_step=f"{after}{ask.next_step}",
        evidence=ask.evidence,
        held=laid.held,
    )
