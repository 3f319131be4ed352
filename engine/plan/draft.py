"""A plan while its lines are read: blocks, week kinds and days in the order they are met."""

from __future__ import annotations

from dataclasses import dataclass, field

from engine.plan.heading_words import Opening
from engine.values.ids import ExerciseName
from engine.values.muscles import Muscle
from engine.values.plan import Slot, VolumeTarget, Weekday
from engine.values.problem import Problem, Severity


@dataclass(slots=True)
class SlotDraft:
    slot: Slot
    line: int
    partner: ExerciseName | str | None


@dataclass(slots=True)
class DayDraft:
    """`broken`: a line under it had an error, so it may look empty without being so."""

    label: str
    weekdays: tuple[Weekday, ...]
    line: int
    slots: list[SlotDraft] = field(default_factory=list)
    broken: bool = False


@dataclass(slots=True)
class KindDraft:
    """`tags` None: the block has one kind of week and no week line."""

    label: str
    tags: tuple[int, ...] | None
    line: int
    numbered: bool = False
    days: list[DayDraft] = field(default_factory=list)


@dataclass(slots=True)
class BlockDraft:
    """`told` False: there was no block line."""

    opening: Opening
    line: int
    told: bool
    kinds: list[KindDraft] = field(default_factory=list)


@dataclass(slots=True)
class PlanDraft:
    """`told`: a plan line was met; `opening` may come from a title or a deload line as well."""

    opening: Opening | None = None
    told: bool = False
    line: int = 0
    blocks: list[BlockDraft] = field(default_factory=list)
    targets: dict[Muscle, VolumeTarget] = field(default_factory=dict)
    problems: list[Problem] = field(default_factory=list)

    def error(self, line: int, read: str, expected: str, try_instead: str) -> None:
        self.problems.append(Problem(line, read, expected, try_instead))

    def warn(self, line: int, read: str, expected: str, try_instead: str) -> None:
        self.problems.append(Problem(line, read, expected, try_instead, Severity.WARNING))

    def note(self, line: int, read: str, expected: str, try_instead: str) -> None:
        self.problems.append(Problem(line, read, expected, try_instead, Severity.NOTE))

    def block(self, line: int) -> BlockDraft:
        """The block that a line belongs to; one is begun where no block line came before."""
        if not self.blocks:
            self.blocks.append(BlockDraft(Opening(""), line, told=False))
        return self.blocks[-1]

    def kind(self, line: int) -> KindDraft:
        """The week kind that a line belongs to."""
        block = self.block(line)
        if not block.kinds:
            block.kinds.append(KindDraft("", None, line))
        return block.kinds[-1]

    def day(self, line: int) -> DayDraft:
        """The day that a line belongs to."""
        kind = self.kind(line)
        if not kind.days:
            kind.days.append(DayDraft("", (), line))
        return kind.days[-1]
