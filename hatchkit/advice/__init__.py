"""What went wrong and what to change: likely causes with evidence, and the plan for the next set."""
