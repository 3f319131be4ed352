"""Which exercise each part of a message is about."""
