"""What people can say: one file an intent."""
