"""What people ask for instead of telling sets."""
