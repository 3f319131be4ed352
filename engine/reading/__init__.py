"""Text to candidate readings to one outcome."""

from engine.reading.read import read

__all__ = ["read"]
