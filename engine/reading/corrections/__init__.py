"""Corrections in words, and the sets that they change."""
