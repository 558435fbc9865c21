"""Losses related to temperature: exposure, hazard model, permutation test, excess deaths, verdict."""
