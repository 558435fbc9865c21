"""The plan as one printable page: dates to keep, boxes to tick, figures to write down."""

from __future__ import annotations

from html import escape

from hatchkit.advice import words
from hatchkit.records.writing import SEALED
from hatchkit.say import has, text
from hatchkit.words.cautions import cautions

#: So many changes have room on one sheet; the review has them all.
MOST_CHANGES = 4

_STYLE = """@page { margin: 10mm 12mm; }
body { font: 9.5pt/1.25 sans-serif; color: #222; background: #fff; margin: 0; }
main { max-width: 56rem; margin: 0 auto; padding: .8rem; }
h1 { font-size: 15pt; margin: 0 0 2mm; } h2 { font-size: 11pt; margin: 2mm 0 1mm; } p { margin: 0 0 2mm; }
.wide { overflow-x: auto; } table { border-collapse: collapse; width: 100%; }
td, th { border: 1px solid #888; padding: .6mm 1.6mm; text-align: left; vertical-align: top; }
td i { display: block; width: 3.2mm; height: 3.2mm; border: 1px solid #222; } td.number { text-align: right; }
td.blank { min-width: 34mm; height: 6.5mm; font-size: 8pt; color: #444; }
ul { margin: 0; padding-left: 5mm; } .small { font-size: 8pt; line-height: 1.2; }
@media print { main { max-width: none; padding: 0; } .wide { overflow: visible; } }"""


def page(plan) -> str:
    """The sheet as a self-contained HTML page without scripts."""
    language = plan.language

    def say(code, **facts):
        return escape(text(code, facts, language))

    title = say("plan_title", name=words.bird_of(plan.basis, language), set=plan.basis["set_at"])
    heads = "".join(
        f'<th scope="col">{name}</th>'
        for name in ("✓", say("paper_when"), say("paper_day"), say("paper_step"), say("paper_write"))
    )
    rows = "".join(_row(row, language) for row in plan.calendar.to_dict("records"))
    changes = "".join(
        f"<li><b>{escape(row['what'])}</b>: {escape(row['to'].rstrip('.'))}. {escape(row['why'])}</li>"
        for row in words.changes_in(plan.changes, language, plan.unit)[:MOST_CHANGES]
    )
    changes = changes or f"<li>{escape(words.what_changes(plan, language))}</li>"
    care = "".join(f"<li>{escape(one)}</li>" for one in cautions("machine", "opening_eggs", language=language))
    return (
        f'<!DOCTYPE html>\n<html lang="{language}"><head><meta charset="utf-8">'
        f'<meta name="viewport" content="width=device-width, initial-scale=1">{SEALED}<title>{title}</title>'
        f"<style>{_STYLE}</style></head><body><main><h1>{title}</h1>"
        f"<p>{escape(words.eggs_to_set(plan, language))} {escape(words.when(plan, language))}</p>"
        f'<div class="wide" tabindex="0" role="group" aria-label="{title}"><table><thead><tr>{heads}</tr></thead>'
        f"<tbody>{rows}</tbody></table></div><h2>{say('paper_change')}</h2><ul>{changes}</ul>"
        f'<h2>{say("take_care")}</h2><ul class="small">{care}</ul></main></body></html>'
    )


def _row(row, language: str) -> str:
    def say(code, **facts):
        return escape(text(code, facts, language))

    note = say(f"write_{row['step']}") if has(f"write_{row['step']}") else ""
    return (
        f"<tr><td><i></i></td><td>{say('paper_moment', time=row['starts'])}</td>"
        f'<td class="number">{say("shown_number", number=row["day"])}</td><td>{say("step_" + row["step"])}</td>'
        f'<td class="blank">{note}</td></tr>'
    )
