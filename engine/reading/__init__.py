"""Text to candidate readings to one outcome."""
