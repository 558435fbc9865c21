"""What the demo review costs, as a ratio to running a bare notebook in the same run. At most 2 is wanted.

The baseline notebook only imports pandas, matplotlib.pyplot and statsmodels.api.

    python tests/benchmarks/review_time.py
"""

import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import nbformat
from nbformat.v4 import new_code_cell, new_notebook

BARE = "import pandas\nimport matplotlib.pyplot\nimport statsmodels.api"
RUN = (
    "import sys; import nbformat; from nbclient import NotebookClient; "
    "page = nbformat.read(sys.argv[1], as_version=4); NotebookClient(page, kernel_name='python3').execute()"
)


def seconds(command, repeats: int = 3) -> float:
    """Median wall time of a command."""
    took = []
    for _ in range(repeats):
        start = time.perf_counter()
        subprocess.run(command, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        took.append(time.perf_counter() - start)
    return statistics.median(took)


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as folder:
        bare = Path(folder, "bare.ipynb")
        nbformat.write(new_notebook(cells=[new_code_cell(BARE)]), bare)
        page = Path(folder, "review.html")
        baseline = [sys.executable, "-c", RUN, str(bare)]
        review = [sys.executable, "-m", "hatchkit", "review", "demo", "-o", str(page)]
        seconds(baseline, 1), seconds(review, 1)
        base, took = seconds(baseline), seconds(review)
        print(f"bare notebook (baseline)  {base:.2f} s  ratio 1.00")
        print(f"demo review               {took:.2f} s  ratio {took / base:.2f}")
        print(f"size of the report        {page.stat().st_size / 1e6:.2f} MB")
