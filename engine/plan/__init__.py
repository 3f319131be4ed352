"""Plans: from text and sheets, back to text, checked, laid on a calendar, projected forward."""

from engine.plan.printing import print_plan
from engine.plan.text import ParsedPlan, mend, parse_plan

__all__ = ["ParsedPlan", "mend", "parse_plan", "print_plan"]
