"""UTC of the lines of a log: by what each stamp, the file or season.toml says of its clock."""

from __future__ import annotations

import numpy as np

from hatchkit.records.logs.zone import hours_apart, zone_above
from hatchkit.records.times import zones

#: Headings of the questions on the logger's zone, and on a clock that was put right by hand.
ZONE, CLOCK = "?log_zone", "?log_clock"
PUT_RIGHT = ("put_right", "kept_old_time")


def utc_of(stamps, head, plan, wishes, account) -> np.ndarray:
    """Times in UTC, and the note that says which zone was taken."""
    if stamps.offset is not None and np.isfinite(stamps.offset[~np.isnat(stamps.local)]).all():
        return stamps.local - (np.nan_to_num(stamps.offset) * 1e6).astype("timedelta64[us]")
    offset, words, summer = zone_above(head, plan, stamps.local)
    named = wishes.timezone if offset is None else offset if isinstance(offset, str) else None
    if isinstance(offset, str):
        account.say("note", "log_zone_said", clock=words)
    if summer:
        offset, named = _summer(stamps, offset, words, wishes, account)
    if offset is not None and named is None:
        account.say("note", "log_zone_said", clock=words)
        return stamps.local - np.timedelta64(int(float(offset) * 1e6), "us")
    if named is None:
        account.say("note", "log_zone_none")
    utc, notes = zones.to_utc(stamps.local, named, put_right=wishes.answers.get(CLOCK) != PUT_RIGHT[1])
    if any(code == "clock_put_right" for _, code, _ in notes):
        account.ask(CLOCK, PUT_RIGHT[0], PUT_RIGHT, len(utc), "log_clock")
    for severity, code, facts in notes:
        account.say(severity, code, **facts)
    if stamps.offset is not None:
        given = np.isfinite(stamps.offset)
        utc = utc.copy()
        utc[given] = (stamps.local - (np.nan_to_num(stamps.offset) * 1e6).astype("timedelta64[us]"))[given]
    return utc


def _summer(stamps, offset, words, wishes, account) -> tuple[float | None, str | None]:
    """Offset or zone of a file that names an offset and speaks of summer time.

    The season's zone is taken where its winter time is that offset; else it is asked, and the offset holds.
    """
    if wishes.timezone is not None:
        winter = np.datetime64("2025-01-15"), np.datetime64("2025-07-15")
        zone = zones.zone_of(wishes.timezone)
        both = {0} if zone is None else {zones.offset_at(zone, day.astype("datetime64[us]")) for day in winter}
        if min(both) == offset * 1e6:
            return None, wishes.timezone
    choices = [hours_apart(offset), hours_apart(offset + 3600)]
    taken = wishes.answers.get(ZONE)
    if taken not in choices:
        account.ask(ZONE, choices[0], choices, len(stamps.local), "log_zone")
        account.say("doubtful", "log_summer_open", clock=words, taken=choices[0], other=choices[1])
    return (offset + 3600 if taken == choices[1] else offset), None
