"""Tables in, matplotlib axes out; nothing here computes.

``figures.svg(ax, alt=...)`` makes an SVG of axes for a page, ``figures.dark_css()`` the rules that show it on a dark
page, and ``figures.chart.chart`` a picture for a notebook.

Drawn for a telephone: 5 inches (360 points) wide, no text below 10.5 points, so that 358 px of a 390 px screen show
it at 10 px or more. `figures.svg(ax, alt=..., most=None)` gives one `<svg>` element for HTML, without a
kernel or a browser: text stays text, ids are its own, the background is clear, colours are CSS variables.
`figures.dark_css()` is the one rule a page needs for dark
screens; `style.DARK` pairs every colour with its dark one, and a test refuses any other colour; only drawings from
life (opened eggs) keep their own, lie on white paper, and are images but for their words. A tall picture is never
shown taller than a screen; a small one at most 1.5 times as large as drawn.

- Words on pictures are messages `drawn_*`, alt texts `picture_<function>`, both in `say/messages/en/figures.ftl`.
  The facts of an alt text come from `<room>/pictured.py`, a function of the same name as the picture:
  `say.text("picture_what_if", pictured.what_if(result))`.
- Stage colours are for stages only (`style.FILLS`); everything else is ink, grey, and the two of heat and cold,
  told apart by shape.
- `figures/rows.py` stacks rows that carry their own names, the bar below the name: names of causes and items have
  no room beside bars.
- `figures/times.py`: the temperature scale is even within half a degree of 37.5 degC and drawn together beyond
  (asinh), so that no power cut is cut off and the everyday is seen too; a close-up is plain.
- A name typed by a person is cut in its middle (`style.short`), as batches often differ at the end of their names.

- the season at a glance: `advice.glance.glance`; `glance.season_at_a_glance`; `advice.pictured`
- why, item by item: `advice.evidence_ladder.ladder`; `why.ladder`; `advice.pictured`
- what was different this time: `Causes.different`; `why.differences`; `advice.pictured`
- what the season lost to what: `WhatIf.table`; `advice.what_if`; `advice.pictured`
- how many eggs to set: `advice.egg_chances.egg_chances`, `Plan.eggs`; `next_set.eggs_to_set`; `advice.pictured`
- where on the tray: `tray.tray_map`, `tray.tray_season`; `losses.tray_map`, `losses.tray_season`; `losses.pictured`
- what the machine did; one spell: `timeline.incubator_timeline`, `timeline.close_up`; `climate.incubator_timeline`,
  `climate.excursion_close_up`; `climate.pictured`
- water against its target: `water_loss.batch_water_loss`, `loss_points`; `climate.water_against_target`,
  `climate.weight_loss_track`; `climate.pictured`
- the probe's truth: `probes.probe_truth`; `climate.probe_truth`; `climate.pictured`
- losses and heat or cold: `Relation.batches`, `.exposure`, `.windows`; `relate.*`; `relate.pictured`

`python tests/figures/demo_pictures.py FOLDER [NAME ...]` writes every picture of the demo as SVG, to look at: also
in grey (`filter: grayscale(1)`) and on a dark page. `tests/figures/test_figures_svg.py` draws each of them: text
height, dark colours, no text outside the picture or on another. Drawing one takes 20 to 300 ms, less than its PNG.
"""

from hatchkit.figures.output import dark_css, svg

__all__ = ["dark_css", "svg"]
