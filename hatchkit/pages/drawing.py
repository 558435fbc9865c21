"""A second process that draws a page's pictures while the questions are still being answered.

Drawing takes as long as a third of the answers and needs none of them but its own table. Whatever goes wrong there
costs time only: a picture that does not come back is drawn by the page itself.
"""

from __future__ import annotations

import os
import pickle
import queue
import subprocess
import sys
import threading
from pathlib import Path

from hatchkit.findings.finding import Finding, Picture

#: What the other Python runs, from the same package as this one and nothing that lies in the working folder.
_RUN = ("-P", "-m", "hatchkit.pages.drawing")


class Drawer:
    """Takes findings as they are made; used as a context, whose end stops the process."""

    def __init__(self):
        self._given, self._drawn, self._queue = [], None, queue.SimpleQueue()
        self._process = None if (os.cpu_count() or 1) < 2 else _started()
        if self._process:
            self._feeder = threading.Thread(target=self._feed, daemon=True)
            self._feeder.start()

    def __enter__(self):
        return self

    def __exit__(self, *_):
        if self._process:
            self._queue.put(None)
            self._process.kill()
            self._process.stdout.close()
            self._process.wait()
            self._feeder.join()

    def take(self, finding: Finding, language: str, unit: str) -> None:
        """Have the finding's pictures drawn with words of the language and temperatures of the unit."""
        for piece in (finding.picture, *finding.plain, *finding.more):
            if isinstance(piece, Picture) and self._process:
                self._given.append((piece, language, unit))
                self._queue.put((piece, language, unit))

    def picture(self, piece: Picture, language: str, unit: str) -> str:
        """As `parts.picture`; the first call waits until all that was taken is drawn."""
        from hatchkit.pages import parts

        if self._drawn is None:
            self._drawn = self._collected()
        return self._drawn.get((id(piece), language, unit)) or parts.picture(piece, language, unit)

    def _feed(self) -> None:
        """Hand on what was taken; in a thread, since the other process reads only between two pictures."""
        try:
            with self._process.stdin as pipe:
                while (given := self._queue.get()) is not None:
                    pipe.write(pickle.dumps(given))
                    pipe.flush()
        except (OSError, pickle.PicklingError, TypeError, AttributeError):
            return

    def _collected(self) -> dict:
        if not self._process:
            return {}
        self._queue.put(None)
        try:
            drawn = pickle.load(self._process.stdout)
        except (OSError, EOFError, pickle.UnpicklingError):
            return {}
        return {(id(piece), *how): html for (piece, *how), html in zip(self._given, drawn, strict=False)}


def _started():
    where = (str(Path(__file__).resolve().parents[2]), os.environ.get("PYTHONPATH"))
    try:
        return subprocess.Popen(
            [sys.executable, *_RUN],
            env={**os.environ, "PYTHONPATH": os.pathsep.join(filter(None, where))},
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
        )
    except OSError:
        return None


def serve() -> None:
    """The other process: draw what comes in on stdin, then write all of it to stdout."""
    import gc

    gc.disable()
    from hatchkit.pages import parts

    out, drawn = sys.stdout.buffer, []
    sys.stdout = sys.stderr
    try:
        import matplotlib.pyplot  # noqa: F401  while the sheets are still being read

        while True:
            given = pickle.load(sys.stdin.buffer)
            try:
                drawn.append(parts.picture(*given))
            except Exception:  # the page draws it again and tells what is wrong
                drawn.append("")
    except EOFError:
        pass
    pickle.dump(drawn, out)
    out.flush()


if __name__ == "__main__":
    serve()
