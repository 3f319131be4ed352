"""Values in, values out: reading sets, deciding what to lift, weighing a week. No I/O, no clock."""
