"""Exercises as data: names, shorthands, movers, how they are loaded."""
