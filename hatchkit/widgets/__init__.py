"""Controls in the notebooks: the reading of a sheet to confirm."""
