"""Seasons side by side: what each year lost, what changed, whether a change helped, which groups differ."""
