"""Identities. Each is its own type, so that a set id can never stand where an athlete's id is meant."""

from __future__ import annotations

from typing import NewType

AthleteId = NewType("AthleteId", int)
SetId = NewType("SetId", int)
ExerciseName = NewType("ExerciseName", str)
"""The catalogue's name of an exercise, lower case, for instance ``barbell back squat``."""
