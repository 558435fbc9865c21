"""Settings for every test: no screen, and a message that lacks its words or facts is an error."""

import os

os.environ.setdefault("MPLBACKEND", "Agg")
os.environ.setdefault("HATCHKIT_STRICT", "1")
