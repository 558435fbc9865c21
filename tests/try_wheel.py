"""Does the kit work where its source is not? Wheel and sdist are built, installed into a fresh environment and used.

    python tests/try_wheel.py                    # with this Python
    python tests/try_wheel.py python3.12         # with another

Fetches the libraries (about 150 MB), so it is no part of the tests.
"""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent


def main() -> int:
    """Build, install, check, review and start; the first step that fails ends it with its words."""
    python = sys.argv[1] if len(sys.argv) > 1 else sys.executable
    clean = {name: value for name, value in os.environ.items() if not name.startswith(("PYTHON", "HATCHKIT"))}
    with tempfile.TemporaryDirectory(prefix="wheel-") as top:
        top = Path(top)

        def run(*command, within=top):
            done = subprocess.run(list(map(str, command)), cwd=within, env=clean, capture_output=True, text=True)
            if done.returncode:
                sys.exit(f"{' '.join(map(str, command))}\n{done.stdout[-3000:]}\n{done.stderr[-3000:]}")
            return done.stdout

        run("git", "clone", "-q", ROOT, top / "source")
        run(python, "-m", "venv", top / "builder")
        run(top / "builder" / "bin" / "pip", "install", "-q", "build")
        # The wheel is built from the sdist, so that both are tried.
        run(top / "builder" / "bin" / "python", "-m", "build", "--outdir", top / "dist", top / "source")
        [wheel], [sdist] = (list((top / "dist").glob(f"*{end}")) for end in (".whl", ".tar.gz"))
        run(python, "-m", "venv", top / "fresh")
        run(top / "fresh" / "bin" / "pip", "install", "-q", wheel)
        kit, away = top / "fresh" / "bin" / "hatchkit", top / "away"
        away.mkdir()
        assert "batch" in run(kit, "check", "demo", within=away)
        run(kit, "review", "demo", "--out", "review.html", within=away)
        run(kit, "start", "mine", within=away)
        facts = run(
            top / "fresh" / "bin" / "python",
            "-c",
            "import sys, importlib.metadata as m, hatchkit; d = m.metadata('hatchkit'); "
            "print('Python', sys.version.split()[0], d['License-Expression'], d.get_all('License-File'))",
            within=away,
        )
        page = (away / "review.html").stat().st_size
        print(
            f"{wheel.name} ({wheel.stat().st_size:,} bytes) and {sdist.name} ({sdist.stat().st_size:,} bytes): "
            f"{facts.strip()}; review of {page:,} bytes"
        )
    return 0


if __name__ == "__main__":
    sys.exit(main())
