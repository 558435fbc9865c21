"""Headings that are not known: what kind of thing stands below them, and which column of the kit that may be."""

from __future__ import annotations

from itertools import islice

from hatchkit import reference
from hatchkit.problems import problem
from hatchkit.records import dates, values
from hatchkit.records.headers import column_phrases, is_no_column, known_columns, recognise
from hatchkit.records.negation import is_negated
from hatchkit.records.words import tokens
from hatchkit.spelling import many

#: Words that say nothing about which column is meant.
_VAGUE = {"egg", "day", "all", "total", "our", "what", "which", "candle", "date", "time", "percent"}
_OFTEN = {"hatched": "the chicks", "dead_in_shell": "the unhatched", "clear1": "the clears"}
_FITS = {"time": {"time"}, "count": {"count", "number"}, "number": {"number"}, "text": {"text"}}
#: Share of its words that a heading must have in common with a known phrase to be likened to it.
_LEAST_ALIKE = 1 / 3


def content_of(cells, day_first: bool = True) -> str:
    """What most of the filled cells hold: "time", "count", "number" or "text"; "" if there are none."""
    filled = list(islice((cell for cell in cells if not values.is_empty(cell)), 50))
    if not filled:
        return ""
    counts = sum(values.is_count(cell) for cell in filled)
    if counts * 2 > len(filled):
        return "count"
    if sum(dates.date_of(cell, day_first)[0] is not None for cell in filled) * 2 > len(filled):
        return "time"
    return "number" if sum(values.is_number(cell) for cell in filled) * 2 > len(filled) else "text"


def likely_column(table, place: int, content: str) -> str | None:
    """The free column of the kit that an unknown heading may mean, by its words and its place; None if none is alike.

    Parameters
    ----------
    table : Table
    place : int
        Of the heading in the table.
    content : str
        From `content_of`.
    """
    heading = table.headings[place]
    if is_negated(heading) or not content:
        return None
    facts = reference.load("columns_records")
    forms = dict(facts.loc[facts["table"] == table.kind, ["column", "kind"]].itertuples(index=False, name=None))
    order = known_columns(table.kind)
    free = [name for name in order if name not in table.names and name not in ("file", "sheet", "row", "sheet_row")
            and forms.get(name) in _FITS[content]]
    left = max((order.index(name) for name in table.names[:place] if name in order), default=-1)
    free.sort(key=lambda name: (order.index(name) < left, order.index(name)))
    words = set(tokens(heading)) - _VAGUE
    alike = {name: _alike(words, column_phrases(table.kind).get(name, ())) for name in free}
    best = max(alike.values(), default=0)
    if best >= _LEAST_ALIKE:
        return next(name for name in free if alike[name] == best)
    if table.kind == "batches" and "batch" in free and _are_names(table, place):
        return "batch"
    later = [name for name in free if order.index(name) > left]
    return later[0] if content == "time" and left >= 0 and later else None


def _are_names(table, place: int) -> bool:
    """Whether a column holds a short text of its own in every row, as names of batches do."""
    cells = [values.text_of(cell) for cell in (table.columns[place] if table.columns else [])]
    return len(set(cells)) == len(cells) > 1 and all(cell and len(cell) <= 12 for cell in cells)


def _alike(words: set, phrases) -> float:
    """The best share of words that a heading has in common with one of the phrases."""
    kept = [set(phrase) - _VAGUE for phrase in phrases]
    return max((len(words & phrase) / len(words | phrase) for phrase in kept if phrase), default=0)


def tell_unknown(table, unknown: list[tuple[int, str]]) -> list[dict]:
    """Problem rows for columns that are kept under their own names: counts and dates each, the rest together.

    Parameters
    ----------
    table : Table
    unknown : list of (place, name)
        Columns without a meaning, and the name under which each is kept.
    """
    where = dict(file=table.file, sheet=table.sheet, row=table.rows[0] - 1 if table.rows else None)
    found, rest, hint = [], [], None
    for place, name in unknown:
        heading, cells = table.headings[place], table.columns[place] if table.columns else []
        means = recognise(heading, table.kind)[0] if heading else None
        if means in table.names and means:
            continue  # that it means the same as another column is told where the columns are named
        content = "" if is_no_column(heading, table.kind) else content_of(cells)
        column = likely_column(table, place, content)
        if means and content == "count":
            found.append(problem("doubtful", **where, column=name, found=f"numbers where {means} wants dates: {name}",
                                 done="Kept under that name; none of these numbers is used.",
                                 mend=f'Write dates; if they are days of incubation, name the column "{name} day".'))
        elif content == "count" and (column or table.kind == "batches") and _within_eggs(table, cells) or (
                content == "time" and column):
            kind = "dates" if content == "time" else "counts"
            what = f"under a heading that hatchkit does not know: {name}" if heading else "without a heading"
            found.append(problem("doubtful", **where, column=name, found=f"{kind} {what}",
                                 done=f"Kept under the name '{name}'; none of these {kind} is used.",
                                 mend="Give it a heading of its own: it stands there twice." if heading and
                                 heading in table.headings[:place] else _mend(heading, column, table)))
        else:
            rest.append(name)
            hint = hint or (heading, column) if column else hint
    if rest:
        heading, column = hint or (rest[0], "notes")
        found.append(problem(
            "note", **where, column=", ".join(rest)[:200],
            found=f"{many(len(rest), 'heading')} that hatchkit does not know: {', '.join(rest)[:300]}",
            done=f"Kept under {'its own name' if len(rest) == 1 else 'their own names'}, not used in any count.",
            mend=f"If one is a known column, say so in season.toml, such as {toml_line(heading, column)}."))
    return found


def toml_line(heading: str, column: str) -> str:
    """What season.toml wants to hear: [headers] "Fluffies" = "hatched"."""
    quoted = heading.replace("\\", "\\\\").replace('"', '\\"')
    return f'[headers] "{quoted}" = "{column}"'


def _within_eggs(table, cells) -> bool:
    """Whether numbers can be eggs of the batch beside which they stand (a year or a price is more)."""
    eggs = table.column("eggs_set")
    if eggs is None or table.kind != "batches":
        return True
    pairs = [(cell, most) for cell, most in zip(cells, eggs, strict=True)
             if values.is_count(cell) and values.is_count(most)]
    return sum(float(cell) <= float(most) for cell, most in pairs) >= 0.5 * len(pairs)


def _mend(heading: str, column: str | None, table) -> str:
    """How to say what an unknown column is."""
    if not heading:
        return f"Write a heading above it, such as {column}." if column else "Write a heading above it."
    if column is None:
        free = [(other, what) for other, what in _OFTEN.items() if other not in table.names]
        which = " or ".join(f"{toml_line(heading, other)} if these are {what}" for other, what in free[:2])
        return f"Say in season.toml what it is{': ' + which if which else ', under [headers]'}."
    facts = reference.load("columns_records")
    meaning = facts.loc[(facts["table"] == table.kind) & (facts["column"] == column), "meaning"].iloc[0]
    return (f"If it is {column} ({meaning[:1].lower()}{meaning[1:]}), say so in season.toml: "
            f"{toml_line(heading, column)}.")
