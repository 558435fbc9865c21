"""The logs of a season: which columns are what, when, of which machine; see `read` for one file, `season` for all."""
