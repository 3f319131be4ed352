"""Estimates of strength: one-repetition maximum, effort, trends, records."""
