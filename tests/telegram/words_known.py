"""Reads a message as it is imported: whatever is forked behind it has the words of all languages at hand."""

from __future__ import annotations

from engine.catalogue.catalogue import catalogue
from engine.reading import read
from engine.reading.values import Context

read("squat 3x5 100", Context(), catalogue())
