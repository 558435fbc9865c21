"""When? One reader of dates and clock times for sheets and logs.

`gather` what the columns say, `decide` the order of day and month once, `read` each column; `find` dates in a sentence.
The forms that are read are the table in `forms`; the words (twelve languages) are ``reference/clock_words.csv``.
"""

from hatchkit.records.times.day_first import OPEN, Evidence, Order, decide, gather, two_orders
from hatchkit.records.times.find import Found, find
from hatchkit.records.times.forms import clock_of, stamp_of
from hatchkit.records.times.grid import Scan
from hatchkit.records.times.read import Times, from_columns, read
from hatchkit.records.times.scan import Serial, scan
from hatchkit.records.times.zones import cells_to_utc, to_utc

__all__ = [
    "OPEN",
    "Evidence",
    "Found",
    "Order",
    "Scan",
    "Serial",
    "Times",
    "cells_to_utc",
    "clock_of",
    "decide",
    "find",
    "from_columns",
    "gather",
    "read",
    "scan",
    "stamp_of",
    "to_utc",
    "two_orders",
]
