"""What `hatchkit check` shows: every problem of a season, what to mend first, as text, CSV or HTML."""

from __future__ import annotations

import csv
from html import escape

import pandas as pd

from hatchkit.problems import COLUMNS
from hatchkit.records.told import many

_TITLES = {"lost": "Mend first: not used at all", "doubtful": "Then: used, but may be wrong",
           "note": "To know: what was assumed"}
#: A page of more rows than this opens slowly; the CSV holds them all.
MOST_HTML_ROWS = 2_000
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
        severity, where (text), times, found (of the first), done, mend.
    """
    kept = problems.fillna({name: "" for name in COLUMNS if name != "row"})
    place = kept["file"].astype(str) + "\n" + kept["sheet"].astype(str) + "\n" + kept["column"].astype(str)
    kept = kept.assign(place=place.where(kept["severity"] != "note", ""))
    groups = []
    for values, part in kept.groupby(["severity", "place", "done", "mend"], sort=False):
        groups.append(dict(severity=values[0], where=_where(part), times=len(part), found=part["found"].iloc[0],
                           done=values[2], mend=values[3]))
    table = pd.DataFrame(groups, columns=["severity", "where", "times", "found", "done", "mend"])
    order = table["severity"].map(list(_TITLES).index)
    return table.assign(order=order).sort_values(["order", "times"], ascending=[True, False], kind="stable") \
        .drop(columns="order").reset_index(drop=True)


def _where(part: pd.DataFrame) -> str:
    first = part.iloc[0]
    files = part["file"].drop_duplicates()
    if len(files) > 1:
        return f"{first['file']} and {many(len(files) - 1, 'more file')}"
    rows = part["row"].dropna().astype(int).drop_duplicates().tolist()
    columns = part["column"].replace("", pd.NA).dropna().drop_duplicates().tolist()
    text = [str(first["file"])] if first["file"] else []
    text += [f"sheet {first['sheet']}"] if first["sheet"] and part["sheet"].nunique() == 1 else []
    text += ["row " + ", ".join(map(str, rows[:8])) + (" ..." if len(rows) > 8 else "")] if rows else []
    text += ["column " + ", ".join(map(str, columns[:3])) + (" ..." if len(columns) > 3 else "")] if columns else []
    return ", ".join(text)


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
            more = f" (and {row['times'] - 1} more like it)" if row["times"] > 1 else ""
            done = row["done"][:1].upper() + row["done"][1:].rstrip(".") + "."
            texts = [f"{row['where'] + ': ' if row['where'] else ''}{str(row['found']).rstrip('.')}{more}.", done]
            texts += ["Mend: " + row["mend"]] if row["mend"] else []
            for number, text in enumerate(texts):
                lines += textwrap.wrap(_shown(text), width, initial_indent="  " if number else "- ",
                                       subsequent_indent="  ")
    return "\n".join(lines)


def _read_line(season) -> str:
    counts = [(len(season.batches), "batches"), (len(season.eggs), "egg rows"), (len(season.weights), "weighings"),
              (len(season.readings), "readings")]
    return f"{season.title}: read {', '.join(f'{count:,} {name}' for count, name in counts)}."


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
