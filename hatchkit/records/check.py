"""What `hatchkit check` shows: every problem of a season, what to mend first, as text, CSV or HTML."""

from __future__ import annotations

import csv
from html import escape

import pandas as pd

from hatchkit.problems import COLUMNS
from hatchkit.spelling import many

_TITLES = {"lost": "Mend first: not used at all", "doubtful": "Then: used, but may be wrong",
           "note": "To know: what was assumed"}
#: A page of more rows than this opens slowly; the CSV holds them all.
MOST_HTML_ROWS = 2_000
#: So many findings of one group are listed each in its own line.
MOST_LISTED = 12
_RUNS = tuple("=+-@")  # a spreadsheet takes text that starts with one of these for a formula
_CONTROLS = ("\t", "\r", "\n")


def place_of(row) -> str:
    """Where a problem is, in words: "batches.xlsx, sheet batches, row 14, column Hatched"."""
    parts = [str(row["file"])] if row["file"] else []
    if row["sheet"] and not pd.isna(row["sheet"]):
        parts.append(f"sheet {row['sheet']}")
    if not pd.isna(row["row"]):
        parts.append(f"row {int(row['row'])}")
    if row["column"] and not pd.isna(row["column"]):
        parts.append(f"column {row['column']}")
    return ", ".join(parts)


def sentence_of(row) -> str:
    """One problem as a person reads it: where, what was found, what was done, how to mend it."""
    where, mend = place_of(row), f" {row['mend']}" if row["mend"] else ""
    found = str(row["found"]).rstrip(".")
    done = str(row["done"])
    return f"{where + ': ' if where else ''}{found}. {done[:1].upper()}{done[1:].rstrip('.')}.{mend}"


def group_problems(problems: pd.DataFrame) -> pd.DataFrame:
    """Problems of the same kind together, the gravest first and, among those, the commonest first.

    What was done and how to mend it mark the kind. A note groups over all files, anything graver within
    its file, sheet and column.

    Parameters
    ----------
    problems : DataFrame
        The table `problems`.

    Returns
    -------
    DataFrame
            severity, where (text), times, found (of the first), done, mend, each (texts of the first few, for
        anything graver than a note: "row 6: ...").
    """
    kept = problems.fillna({name: "" for name in COLUMNS if name != "row"})
    place = kept["file"].astype(str) + "\n" + kept["sheet"].astype(str) + "\n" + kept["column"].astype(str)
    kept = kept.assign(place=place.where(kept["severity"] != "note", ""))
    groups = []
    for values, part in kept.groupby(["severity", "place", "done", "mend"], sort=False):
        groups.append(dict(severity=values[0], where=_where(part), times=len(part), found=part["found"].iloc[0],
                           done=values[2], mend=values[3], each=_each(part) if values[0] != "note" else []))
    table = pd.DataFrame(groups, columns=["severity", "where", "times", "found", "done", "mend", "each"])
    order = table["severity"].map(list(_TITLES).index)
    return table.assign(order=order).sort_values(["order", "times"], ascending=[True, False], kind="stable") \
        .drop(columns="order").reset_index(drop=True)


def _each(part: pd.DataFrame) -> list[str]:
    """What was found in each row of a group, so that none is hidden behind the first."""
    rows = part.head(MOST_LISTED).to_dict("records")
    return [(f"row {int(row['row'])}: " if not pd.isna(row["row"]) else "") + str(row["found"]) for row in rows]


def _where(part: pd.DataFrame) -> str:
    first = part.iloc[0]
    files = part["file"].drop_duplicates()
    if len(files) > 1:
        return f"{first['file']} and {many(len(files) - 1, 'more file')}"
    rows = sorted(part["row"].dropna().astype(int).drop_duplicates().tolist())
    columns = part["column"].replace("", pd.NA).dropna().drop_duplicates().tolist()
    text = [str(first["file"])] if first["file"] else []
    text += [f"sheet {first['sheet']}"] if first["sheet"] and part["sheet"].nunique() == 1 else []
    text += [_listed("row", rows, 8)] if rows else []
    text += [_listed("column", columns, 3)] if columns else []
    return ", ".join(text)


def _listed(what: str, names: list, most: int) -> str:
    """"row 4", "rows 4, 9 and 12", "columns Clear, Dead, Late ..."."""
    shown, last = [str(name) for name in names[:most]], ""
    if len(shown) > 1 and len(names) <= most:
        last = f" and {shown.pop()}"
    return f"{what}{'s' if len(names) > 1 else ''} {', '.join(shown)}{last or ' ...' * (len(names) > most)}"


def check_table(season, *, width: int = 100) -> str:
    """A short plain text table of all problems, grouped by what to mend first.

    Parameters
    ----------
    season : Season
    width : int
        Characters a line.

    Returns
    -------
    str
    """
    import textwrap

    lines = [_read_line(season)]
    groups = group_problems(season.problems)
    if groups.empty:
        return lines[0] + "\nNothing to mend."
    for severity, title in _TITLES.items():
        part = groups[groups["severity"] == severity]
        if part.empty:
            continue
        lines += ["", f"{title} ({int(part['times'].sum())})"]
        for row in part.to_dict("records"):
            for number, text in enumerate(_texts(row)):
                lines += textwrap.wrap(_shown(text), width, initial_indent="  " if number else "- ",
                                       subsequent_indent="  ")
    return "\n".join(lines)


def _texts(group: dict) -> list[str]:
    """One group in sentences: where and what, what was done, how to mend it."""
    where = f"{group['where']}: " if group["where"] else ""
    if len(set(group["each"])) > 1:
        left = group["times"] - len(group["each"])
        more = [f"and {left} more like these."] if left else []
        texts = [where.strip(), *(text.rstrip(".") + "." for text in group["each"]), *more]
    else:
        more = f" (and {group['times'] - 1} more like it)" if group["times"] > 1 else ""
        texts = [f"{where}{str(group['found']).rstrip('.')}{more}."]
    texts.append(group["done"][:1].upper() + group["done"][1:].rstrip(".") + ".")
    return [*texts, "Mend: " + group["mend"]] if group["mend"] else texts


def _read_line(season) -> str:
    counts = [many(f"{len(table):,}", one, several) for table, one, several in (
        (season.batches, "batch", "batches"), (season.eggs, "egg row", ""), (season.weights, "weighing", ""),
        (season.readings, "reading", ""))]
    clock = f"\nTimes are shown as in {season.timezone}." if season.timezone != "UTC" else ""
    return f"{season.title}: read {', '.join(counts)}.{clock}"


def _shown(text) -> str:
    """Text without control characters, which a terminal would obey."""
    return "".join(char if char.isprintable() else " " for char in str(text))


def safe_cell(value) -> str:
    """Text that no spreadsheet runs as a formula: one that starts with = + - @ gets an apostrophe in front."""
    text = "" if pd.isna(value) else str(value)
    return "'" + text if text[:1] in _CONTROLS or text.lstrip()[:1] in _RUNS else text


def write_problems_csv(problems: pd.DataFrame, path) -> None:
    """Write the table `problems` as CSV that is safe to open in a spreadsheet.

    Parameters
    ----------
    problems : DataFrame
    path : path
    """
    with open(path, "w", newline="", encoding="utf-8-sig") as handle:
        writer = csv.writer(handle)
        writer.writerow(COLUMNS)
        for row in problems[COLUMNS].to_dict("records"):
            number = "" if pd.isna(row["row"]) else int(row["row"])
            writer.writerow([number if name == "row" else safe_cell(row[name]) for name in COLUMNS])


def problems_html(problems: pd.DataFrame, *, title: str = "What to mend") -> str:
    """The problems as one plain HTML page; all text from the files is escaped.

    Parameters
    ----------
    problems : DataFrame
    title : str

    Returns
    -------
    str
    """
    parts = []
    kept = problems.fillna({name: "" for name in COLUMNS if name != "row"})
    for severity, heading in _TITLES.items():
        part = kept[kept["severity"] == severity]
        if part.empty:
            continue
        head = "".join(f'<th scope="col">{name}</th>' for name in ("Where", "Found", "Done", "How to mend it"))
        rows = "\n".join(_html_row(row) for row in part.head(MOST_HTML_ROWS).to_dict("records"))
        more = f"<p>The first {MOST_HTML_ROWS:,} are shown.</p>\n" if len(part) > MOST_HTML_ROWS else ""
        parts.append(f"<h2>{escape(heading)} ({len(part):,})</h2>\n{more}<table>\n<thead><tr>{head}</tr></thead>\n"
                     f"<tbody>\n{rows}\n</tbody></table>")
    return _PAGE.format(title=escape(title), body="\n".join(parts) or "<p>Nothing to mend.</p>")


def _html_row(row: dict) -> str:
    texts = [place_of(row), *(row[name] for name in ("found", "done", "mend"))]
    return "<tr>" + "".join(f"<td>{escape(_shown(text))}</td>" for text in texts) + "</tr>"


_PAGE = """<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>{title}</title>
<style>
body {{ font: 16px/1.45 sans-serif; margin: 2em auto; max-width: 75em; padding: 0 1em;
        color: #111; background: #fff; }}
table {{ border-collapse: collapse; width: 100%; }}
th, td {{ border: 1px solid #777; padding: .3em .5em; text-align: left; vertical-align: top;
          overflow-wrap: anywhere; }}
th {{ background: #eee; }}
</style>
</head>
<body>
<h1>{title}</h1>
{body}
</body>
</html>
"""
