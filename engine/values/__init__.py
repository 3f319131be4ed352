"""The values everything else is made of: frozen, checked once at construction, no behaviour that fetches."""
