"""When the embryos died."""

from hatchkit.losses.interval_likelihood import AgeMass, age_at_death_from

__all__ = ["AgeMass", "age_at_death_from"]
