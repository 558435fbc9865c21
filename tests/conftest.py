"""Settings for every test: no screen."""

import os

os.environ.setdefault("MPLBACKEND", "Agg")
