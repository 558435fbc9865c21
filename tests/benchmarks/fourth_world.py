r"""How well is the cause of a poor hatch named in the fourth world, beside what its own oracle could know?

python tests/benchmarks/fourth_world.py 48 7000                   # 48 seasons of each group, seeds [7000, group, i]
python tests/benchmarks/fourth_world.py 24 1 --answer oracle      # the plumbing, without the score: or "uniform"
"""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from worlds import scoring
from worlds.fourth import CAUSES, make_season
from worlds.fourth_oracle import poorest, posterior

WORLD = scoring.World("fourth", tuple(CAUSES), make_season, posterior, poorest)

if __name__ == "__main__":
    scoring.main(WORLD, __doc__.splitlines()[0])
