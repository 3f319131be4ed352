"""Text to candidate readings to one outcome."""

from engine.reading.answers.answers import read_answer
from engine.reading.read import read

__all__ = ["read", "read_answer"]
