"""Messages that go out on their own: one file a kind."""
