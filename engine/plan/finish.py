"""A draft made into a plan: weeks counted out, deloads placed, supersets paired, names given where none were told."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal

from engine.plan.defaults import WEEKS
from engine.plan.draft import BlockDraft, DayDraft, KindDraft, PlanDraft, SlotDraft
from engine.plan.heading_words import Opening, is_rest
from engine.values.plan import Block, Deload, Plan, Slot, TrainingDay, Weekday, WeekKind
from engine.values.problem import Severity

MOST_WEEKS = 104
EVERY_WEEK = "every week"
UNNAMED = "plan"
DAY_NAMES = {
    Weekday.MON: "Monday",
    Weekday.TUE: "Tuesday",
    Weekday.WED: "Wednesday",
    Weekday.THU: "Thursday",
    Weekday.FRI: "Friday",
    Weekday.SAT: "Saturday",
    Weekday.SUN: "Sunday",
}
LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"

SlotPlace = tuple[int, int, int, int]


def finished(draft: PlanDraft) -> tuple[Plan | None, tuple[tuple[SlotPlace, int], ...]]:
    """The plan and the line of each of its slots; no plan where an error stands, or where there is no exercise.

    Errors: those found here are added to the draft's problems.
    """
    opening = draft.opening or Opening("")
    blocks = [block for block in draft.blocks if block.kinds or block.told]
    weeks = _weeks(draft, blocks, opening)
    made: list[Block] = []
    lines: list[tuple[SlotPlace, int]] = []
    first_week = 0
    for place, (block, count) in enumerate(zip(blocks, weeks, strict=True)):
        built = _block(draft, block, count, opening, first_week, lone=len(blocks) == 1)
        lines.extend(_lines_of(block, place, built))
        made.append(built)
        first_week += count
    _check_plan_deloads(draft, opening, first_week)
    if any(problem.severity is Severity.ERROR for problem in draft.problems) or not made:
        return None, ()
    return Plan(opening.name or UNNAMED, tuple(made), dict(draft.targets)), tuple(lines)


def _weeks(draft: PlanDraft, blocks: list[BlockDraft], opening: Opening) -> list[int]:
    """The number of weeks of each block."""
    told = [_numbered_weeks(block) if block.opening.weeks is None else block.opening.weeks for block in blocks]
    missing = told.count(None)
    if opening.weeks is not None and missing == 1:
        rest = opening.weeks - sum(filter(None, told))
        told = [rest if count is None else count for count in told]
    elif opening.weeks is not None and told and missing == 0 and sum(filter(None, told)) != opening.weeks:
        if len(blocks) == 1 and blocks[0].opening.weeks is None:
            told = [opening.weeks]
        else:
            total = sum(filter(None, told))
            expected = f"the weeks of the blocks to make {opening.weeks}; they make {total}"
            draft.error(draft.line, f"{opening.weeks} weeks", expected, f"{total} weeks")
    for block, count in zip(blocks, told, strict=True):
        if count is None:
            draft.note(block.line, "", f"a number of weeks; none is written, so it is {WEEKS}", f"{WEEKS} weeks")
        elif not 1 <= count <= MOST_WEEKS:
            draft.error(block.line, f"{count} weeks", f"1 to {MOST_WEEKS} weeks", f"{WEEKS} weeks")
    return [count if count and 1 <= count <= MOST_WEEKS else WEEKS for count in told]


def _numbered_weeks(block: BlockDraft) -> int | None:
    """The last week's number, where weeks are told by number and not by letter."""
    numbered = [kind.tags for kind in block.kinds if kind.tags and kind.numbered]
    last = max((tags[-1] for tags in numbered), default=0)
    return last + 1 if last and len(numbered) == len(block.kinds) else None


def _block(draft: PlanDraft, block: BlockDraft, weeks: int, opening: Opening, first_week: int, *, lone: bool) -> Block:
    own = block.opening
    of_plan = (week - first_week for week in opening.deload_weeks)
    every = own.deload_every or opening.deload_every
    repeated = range(every, weeks + 1, every) if every else ()
    for week in own.deload_weeks:
        if not 1 <= week <= weeks:
            draft.error(block.line, f"deload week {week}", f"a week from 1 to {weeks}", f"deload week {weeks}")
    deloads = {week for week in (*own.deload_weeks, *of_plan, *repeated) if 1 <= week <= weeks}
    label = own.name or (opening.name or UNNAMED if lone else f"block {draft.blocks.index(block) + 1}")
    return Block(label, weeks, _kinds(draft, block), tuple(sorted(deloads)), _deload(draft, own, opening, block.line))


def _check_plan_deloads(draft: PlanDraft, opening: Opening, weeks: int) -> None:
    for week in opening.deload_weeks:
        if weeks and not 1 <= week <= weeks:
            draft.error(draft.line, f"deload week {week}", f"a week from 1 to {weeks}", f"deload week {weeks}")
    if opening.deload_every is not None and opening.deload_every < 1:
        draft.error(draft.line, "deload every 0 weeks", "a number of weeks", "deload every 4 weeks")


def _deload(draft: PlanDraft, own: Opening, opening: Opening, line: int) -> Deload:
    usual = Deload()
    sets = _first_told(own.sets_share, opening.sets_share, usual.sets_share)
    load = _first_told(own.load_share, opening.load_share, usual.load_share)
    if not (0 < sets <= 1 and 0 < load <= 1):
        draft.error(line, "deload", "shares from 1 to 100 %", "deload at 50 % of sets and 90 % of load")
        return usual
    return Deload(sets, load)


def _first_told(*shares: Decimal | None) -> Decimal:
    return next(share for share in shares if share is not None)


def _kinds(draft: PlanDraft, block: BlockDraft) -> tuple[WeekKind, ...]:
    made = {id(kind): WeekKind(kind.label or EVERY_WEEK, _days(draft, kind)) for kind in block.kinds}
    return tuple(made[id(kind)] for kind in _in_turn(draft, block))


def _in_turn(draft: PlanDraft, block: BlockDraft) -> list[KindDraft]:
    """The week kinds in the order of their letters or numbers."""
    days = [day for kind in block.kinds for day in kind.days]
    if not any(day.slots or day.broken for day in days):
        example = "day mon: back\nbarbell row 3x8 at 40 kg"
        draft.error(block.line, block.opening.name, "a training day with an exercise under it", example)
    if any(kind.tags is None for kind in block.kinds):
        return block.kinds
    by_tag: dict[int, KindDraft] = {}
    for kind in block.kinds:
        for tag in kind.tags or ():
            if tag in by_tag:
                draft.error(kind.line, f"week {_tag(tag, kind)}", "each week once", "weeks 1-3: volume")
            by_tag[tag] = kind
    for tag in range(max(by_tag, default=-1) + 1):
        if tag not in by_tag:
            kind = block.kinds[-1]
            example = f"week {_tag(tag, kind)}: full body"
            draft.error(kind.line, f"week {_tag(max(by_tag), kind)}", f"week {_tag(tag, kind)} before it", example)
            return []
    return [by_tag[tag] for tag in sorted(by_tag)]


def _tag(tag: int, kind: KindDraft) -> str:
    return str(tag + 1) if kind.numbered or tag >= len(LETTERS) else LETTERS[tag]


def _trained(kind: KindDraft) -> Iterator[DayDraft]:
    return (day for day in kind.days if day.slots)


def _days(draft: PlanDraft, kind: KindDraft) -> tuple[TrainingDay, ...]:
    for day in kind.days:
        if not day.slots and not day.broken and not is_rest(day.label):
            draft.warn(day.line, day.label, "exercises under it; the day is left out", "barbell row 3x8 at 40 kg")
    days: list[TrainingDay] = []
    for day in _trained(kind):
        slots = _slots(draft, day)
        for weekday in day.weekdays or (None,):
            label = day.label or (DAY_NAMES[weekday] if weekday else f"day {len(days) + 1}")
            days.append(TrainingDay(label, weekday, slots))
    return tuple(days)


def _slots(draft: PlanDraft, day: DayDraft) -> tuple[Slot, ...]:
    """The day's slots, with a letter on both of a pair that the text calls a superset."""
    groups: list[str | None] = [drafted.slot.group for drafted in day.slots]
    for place, drafted in enumerate(day.slots):
        if drafted.partner is None:
            continue
        other = _partner_of(drafted, place, day.slots)
        if other is None:
            draft.error(drafted.line, str(drafted.partner), "another exercise of this day", "superset with the above")
            continue
        free = (letter for letter in LETTERS if letter not in groups)
        letter = groups[other] or groups[place] or next(free, LETTERS[-1])
        groups[other] = groups[place] = letter
    return tuple(replace(drafted.slot, group=group) for drafted, group in zip(day.slots, groups, strict=True))


def _partner_of(drafted: SlotDraft, place: int, slots: list[SlotDraft]) -> int | None:
    if not drafted.partner:
        return place - 1 if place else None
    found = [other for other, slot in enumerate(slots) if slot.slot.exercise == drafted.partner and other != place]
    return min(found, key=lambda other: abs(other - place), default=None)


def _lines_of(block: BlockDraft, place: int, built: Block) -> Iterator[tuple[SlotPlace, int]]:
    """The line of each slot of a block; a day on several weekdays has the same lines on each."""
    turn = (
        sorted(((tag, kind) for kind in block.kinds for tag in kind.tags or (0,)), key=lambda told: told[0])
        if built.kinds
        else []
    )
    for kind_place, (_, kind) in enumerate(turn):
        day_place = 0
        for day in _trained(kind):
            for _ in day.weekdays or (None,):
                for slot_place, drafted in enumerate(day.slots):
                    yield (place, kind_place, day_place, slot_place), drafted.line
                day_place += 1
