"""What was lost: fates as intervals, stages, rates, ages at death. Knows nothing of climate."""
