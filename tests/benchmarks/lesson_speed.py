"""How long a lesson takes against one case: run ``python tests/benchmarks/lesson_speed.py``."""

import tempfile
import time
from pathlib import Path

from hatchkit.simulate import draw_season
from hatchkit.teach.lesson import write_lesson


def seconds(work):
    # processor time: one process, and other work on the machine does not count
    begin = time.process_time()
    work()
    return time.process_time() - begin


def main():
    with tempfile.TemporaryDirectory() as home:
        write_lesson(Path(home) / "warm_up", students=1, seed=1)
        one = min(seconds(lambda n=n: write_lesson(Path(home) / f"one{n}", students=1, seed=n)) for n in range(3))
        thirty = seconds(lambda: write_lesson(Path(home) / "thirty", students=30, seed=7))
    print(f"one case {one:.2f} s; thirty cases {thirty:.2f} s = {thirty / one:.1f} x one (wanted: at most 60)")
    drawn = seconds(lambda: [draw_season(seed=seed) for seed in range(10)]) / 10
    print(f"a season of eight batches in memory, 30-minute log: {drawn:.2f} s")


if __name__ == "__main__":
    main()
