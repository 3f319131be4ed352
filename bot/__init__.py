"""Talks to people: one handle(), its intents and replies, and thin adapters around them."""
