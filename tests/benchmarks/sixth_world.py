r"""How well is the cause of a poor hatch named in the sixth world, beside what its own oracle could know?

python tests/benchmarks/sixth_world.py N SEED                     # N seasons of each group, seeds [SEED, group, i]
python tests/benchmarks/sixth_world.py N SEED --answer oracle     # the plumbing, without the score: or "uniform"
"""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from worlds import scoring
from worlds.sixth import CAUSES, make_season
from worlds.sixth_oracle import poorest, posterior

WORLD = scoring.World("sixth", tuple(CAUSES), make_season, posterior, poorest)

if __name__ == "__main__":
    scoring.main(WORLD, __doc__.splitlines()[0])
