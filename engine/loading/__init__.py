"""What can really be loaded: bars, plates, dumbbell racks, stacks."""
