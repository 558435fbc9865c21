"""From a folder to a page: the season's review or one batch's page, written where it was asked for."""

from __future__ import annotations

import sys
import time
from pathlib import Path

from hatchkit.problems import HatchkitError
from hatchkit.records.writing import safe_output

#: The pages by the name of the notebook that shows the same findings.
PAGES = {"1_season_review": "season", "2_poor_hatch": "batch"}


def write_report(
    folder,
    page,
    out=None,
    *,
    unit: str = "C",
    batch: str = "",
    full: bool = False,
    names: bool = True,
    language: str | None = None,
    progress=None,
) -> Path:
    """Write the page of the season in `folder` to `out`; of several seasons the page of the years.

    Parameters
    ----------
    folder : path or list of paths
        The season folder (or "demo"), several, or a folder of years or keepers. It is not written to.
    page : str
        ``"1_season_review"`` or ``"2_poor_hatch"``.
    out : path, optional
        The HTML file to write; pictures are inside, nothing is fetched when it is opened. Left out, a file in the
        working folder that is named after season and batch.
    unit : {"C", "F"}
        Unit in which temperatures are shown.
    batch : str, optional
        Batch of the page on one batch; the poorest if left out.
    full : bool
        Whether what is folded stands open, on paper too.
    names : bool
        Whether keepers, places, pens, machines and files are named; without names, what was written freely is left out.
    language : {"en", "de", "fr", "es"}, optional
        Of the page; that of the season if left out.
    progress : callable, optional
        Called with (steps done, steps in all).

    Returns
    -------
    Path
        Absolute path of the file written.

    Raises
    ------
    HatchkitError
        If `out` can't be written or is one of the season's own files, before any work is done; for another page.
    """
    from hatchkit.pages.drawing import Drawer
    from hatchkit.season import load_season
    from hatchkit.units import check_unit

    about = PAGES.get(Path(str(page)).stem)
    if about is None:
        raise HatchkitError("no_page", dict(page=str(page), there=list(PAGES)))
    unit = check_unit(unit)
    if out is not None:
        out = safe_output(out, season=folder, suffix=(".html", ".htm"))
    with Drawer() as drawer:
        season = load_season(folder)
        season = season.spoken_in(language) if language else season
        if about == "season" and (len(season.years) > 1 or len(season.keepers) > 1):
            about = "years"
        if not names:
            from hatchkit.yearly.nameless import without_names

            season, renamed = without_names(season)
            batch = renamed.get(str(batch), batch)
        return _write(season, about, out, unit, batch, full, progress, drawer)


def _write(season, about, out, unit, batch, full, progress, drawer) -> Path:
    from hatchkit.findings.batch import poor_hatch
    from hatchkit.findings.season import review
    from hatchkit.pages.page import file_name, write_page

    def step(first):
        """Answering is one half of the steps, laying out the other."""
        return (lambda done, total: progress(first + round(50 * done / total), 100)) if progress else None

    common = dict(unit=unit, progress=step(0), each=lambda one: drawer.take(one, season.language, unit))
    if about == "season":
        findings = review(season, **common)
    elif about == "years":
        from hatchkit.findings.years import years

        findings = years(season, **common)
    else:
        findings = poor_hatch(season, batch, **common)
    return write_page(findings, out or file_name(findings), full=full, progress=step(50), draw=drawer.picture)


class StderrProgress:
    """A line on the terminal that counts the work done, shown once it has lasted two seconds."""

    def __init__(self, what: str, counted: str = "steps"):
        self.what, self.counted, self.started = what, counted, time.monotonic()

    def __call__(self, done: int, total: int) -> None:
        """Count on: `done` of `total`."""
        if time.monotonic() - self.started < 2 or not sys.stderr.isatty() and done < total:
            return
        end = "\n" if done == total else ""
        print(f"\r{self.what}: {done} of {total} {self.counted}", end=end, file=sys.stderr, flush=True)
