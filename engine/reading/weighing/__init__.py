"""The readings that are open, how well each fits what is known, and the one that is meant."""
