"""The plan as one printable page: dates to keep, boxes to tick, figures to write down."""

from __future__ import annotations

from html import escape

from hatchkit.advice import words
from hatchkit.cautions import cautions
from hatchkit.writing import SEALED

_STYLE = """@page{size:A4;margin:14mm}body{font:11pt/1.35 sans-serif;color:#222}h1{font-size:16pt;margin:0 0 2mm}
h2{font-size:12pt;margin:4mm 0 1mm}table{border-collapse:collapse;width:100%}
td,th{border:1px solid #888;padding:1mm 2mm;text-align:left;vertical-align:top}thead{display:table-header-group}
tr{break-inside:avoid}.box{width:6mm}.blank{min-width:28mm}.small{font-size:9pt}"""

#: What a person writes down at each step; blank boxes on the sheet.
TO_WRITE = {
    "set": "eggs in, weight",
    "candle1": "clear / dead, weight",
    "candle2": "clear / dead, weight",
    "candle3": "clear / dead, weight",
    "transfer": "clear / dead / moved, weight",
    "first_hatch": "first chick, hour",
    "last_hatch": "last chick, hour",
    "take_off": "chicks / culls / pipped dead",
    "open_unhatched": "infertile / early / mid / late / lying wrongly",
    "machine_on": "probe - second thermometer",
}


def page(plan) -> str:
    """The sheet as a self-contained HTML page without scripts."""
    title = escape(plan.basis["title"])
    rows = "".join(_row(row) for row in plan.calendar.to_dict("records"))
    changes = "".join(
        f"<li><b>{escape(row['what'])}</b>: {escape(row['to'])}. {escape(row['why'])}</li>"
        for row in plan.changes.to_dict("records")
    )
    care = "".join(f"<li>{escape(text)}</li>" for text in cautions("machine", "opening_eggs"))
    return (
        f'<!DOCTYPE html><html lang="en"><head><meta charset="utf-8">{SEALED}<title>{title}</title>'
        f"<style>{_STYLE}</style></head><body><h1>{title}</h1>"
        f"<p>{escape(words.eggs_to_set(plan))} {escape(words.when(plan))}</p>"
        '<table><thead><tr><th class="box">✓</th><th>When</th><th>Day</th><th>What</th>'
        f'<th class="blank">Write down</th></tr></thead><tbody>{rows}</tbody></table>'
        f"<h2>Change this time</h2><ul>{changes or f'<li>{escape(words.what_changes(plan))}</li>'}</ul>"
        f'<h2>Take care</h2><ul class="small">{care}</ul></body></html>'
    )


def _row(row) -> str:
    when = f"{row['starts']:%a %d %b %Y, %H:%M}"
    note = TO_WRITE.get(row["step"], "")
    return (
        f'<tr><td class="box"></td><td>{when}</td><td>{row["day"]:.1f}</td><td>{escape(row["what"])}</td>'
        f'<td class="blank small">{escape(note)}<br>&nbsp;</td></tr>'
    )
