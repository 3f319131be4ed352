"""How a plan is written: every word of progression with an example, on one screen, and the whole as a file."""

from __future__ import annotations

from bot.messages import Attachment
from bot.replies.reply import Reply

SHORT = (
    "3x8-12, then +2.5 kg",
    "3x5, +2.5 kg if all reps are made",
    "3x6, add a set each week up to 5",
    "2x max, +1 rep each set",
    "3 sets, 30 reps in all",
    "3x5, 75/85/95 % of 140 kg",
    "3x5, load for rpe 8",
    "top set of 5, 2 back-offs of 8",
    "3x40 s, +5 s up to 60 s",
    "3x10, no progression",
)
"""What stands behind an exercise, one of these a line."""

GUIDE = """plan: winter base, 8 weeks, deload week 8
target side delts 8-14

week A
day mon: one line an exercise
barbell back squat 3x5 at 80 kg, +2.5 kg when all reps are made, after 3 misses down 10 %
dumbbell lateral raise 3x12-15 at 8 kg, then +1 kg
barbell overhead press 3x6 at 40 kg, add a set each week up to 5, then +2.5 kg
push-up 2x max, +1 rep each set, standard: chest touches the floor

week B
day mon: more ways to go on
chin-up 3 sets, 30 reps in all, then +2.5 kg
conventional deadlift 3x5, 75/85/95 % of 140 kg, then +5 kg
barbell bench press 3x5, load for rpe 8
barbell front squat top set of 5 at 70 kg, then 2 back-offs of 8 at 85 %, then +2.5 kg
plank 3x40 s, +5 s up to 60 s, then +5 kg
farmer's walk 3x40 m at 24 kg, +5 m up to 60 m, then +2 kg
lying leg curl 3x10 at 30 kg, no progression
day thu: what else a line may say
A1 dumbbell biceps curl 3x10-12 at 12 kg, then +1 kg, rest 90 s, cue: elbows still
A2 triceps pushdown 3x10-12 at 20 kg, then +2.5 kg, rest 90 s, swap cable overhead triceps extension
"""
"""A plan that holds every word once: it can be changed and sent back."""


def plan_guide() -> Reply:
    """The words of progression; the file is a plan that holds them all."""
    lines = ["Behind an exercise, one of:", *SHORT, "The file is a plan to change."]
    return Reply("\n".join(lines), attachment=Attachment("plan-guide.txt", GUIDE.encode()))
