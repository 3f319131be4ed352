"""How each slot progresses: one rule a file, each a pure fold over exposures."""

from engine.progression.prescribe import prescribe

__all__ = ["prescribe"]
