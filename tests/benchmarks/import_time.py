"""What `import hatchkit` costs, as a ratio to `import pandas` in the same run. At most 1.2 is wanted.

python tests/benchmarks/import_time.py
"""

import statistics
import subprocess
import sys
import time


def seconds(code: str, repeats: int = 5) -> float:
    """Median wall time of a fresh Python that runs `code`."""
    took = []
    for _ in range(repeats):
        start = time.perf_counter()
        subprocess.run([sys.executable, "-c", code], check=True)
        took.append(time.perf_counter() - start)
    return statistics.median(took)


if __name__ == "__main__":
    for code in ("import pandas", "import hatchkit"):
        seconds(code, 1)  # warm the file cache
    baseline = seconds("import pandas")
    print(f"import pandas (baseline)  {baseline:.2f} s  ratio 1.00")
    for code in ("import hatchkit", "import hatchkit; hatchkit.load_season"):
        took = seconds(code)
        print(f"{code:<40}  {took:.2f} s  ratio {took / baseline:.2f}")
