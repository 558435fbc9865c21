"""What was read of the loggers' files, in words: machine, from, to, step, channels, gaps, what is asked."""

from __future__ import annotations

from hatchkit.say import text

#: Probes of one file that are named.
MOST_PROBES = 4


def log_words(log: dict, language: str = "en") -> str:
    """One line on a file, or on several that are alike.

    Parameters
    ----------
    log : dict
        As `records.check.logs_read` gives: files, incubator, known_by, start, end (on the person's clock),
        step_minutes, readings, doubtful, gaps, longest_gap_h, channels, asked.
    """
    known = log["known_by"].replace(".", "_").replace(" ", "_")
    facts = dict(files=log["files"], machine=log["incubator"], known=known)
    if not log["readings"]:
        return text("log_not_read", facts, language)
    probes = _probes(log["channels"], language)
    facts |= {name: log[name] for name in ("start", "end", "readings", "doubtful", "gaps")}
    asked = [text("log_asked", dict(code=code), language) for code in log["asked"]]
    facts |= dict(
        step=float(f"{log['step_minutes']:.3g}"),
        longest=round(log["longest_gap_h"], 1),
        probes=probes or None,
        asked=asked or None,
    )
    return text("log_read", facts, language)


def _probes(channels: list, language: str) -> list[str]:
    """Each probe with what it measures; what is known in another way stands apart."""
    found: dict = {}
    for channel in channels:
        what = text("log_quantity", dict(quantity=channel["quantity"], unit=channel["unit"]), language)
        found.setdefault((channel["probe"], channel["how"]), []).append(what)
    told = [
        text("log_probe", dict(probe=probe, how=how, parts=parts), language)
        for (probe, how), parts in list(found.items())[:MOST_PROBES]
    ]
    more = len(found) - len(told)
    return [*told, text("log_more_probes", dict(more=more), language)] if more > 0 else told
