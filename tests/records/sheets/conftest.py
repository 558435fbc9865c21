"""The makers of sheet files lie one folder up."""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))
