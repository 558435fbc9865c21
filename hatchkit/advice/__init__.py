"""What went wrong and what to change: likely causes with evidence, and the plan for the next set.

**Where things are.** `causes.py` puts one batch's answer together (`likely_causes`; `season_causes` for all, with
the shared tables made once). `course.py` is the model of a batch by the day and its likelihood, `seen.py` what was
seen as groups of eggs, `harm.py` which hazards each cause adds on which days, `cause_weights.py` prior x pattern x
evidence, alone and in pairs. `evidence.py` with `evidence_climate.py` and `evidence_records.py` fetches one value
per item and sets it beside the keeper's good batches (`usual/gauges.py`), `signs.py` reads ticks and remarks,
`different.py` answers "what was different this time?", `habits.py` disbelieves noughts of looks that never find
anything. `account.py` is the one table of a season's lost eggs; list, what-if and plan read it. `what_to_change.py`
follows from the causes. `tally.py` counts eggs per stage; `usual/stages.py` says what is usual. `plan.py`,
`set_time.py`, `dates.py`, `ics.py` are the next set (`pages/next_set.py` prints it). What fits a cause and what
speaks against it, limits and changes are codes with facts (`reasons.py`, `what_to_change.py`): `say/causes.py` and
`say/plan.py` have the words.

**The model, in one paragraph.** An egg is lost by the first hazard that strikes: no germ, taken out, death on one
of 21 hen's days, failed pip, cull. Ordinary hazards come from `usual`; a cause adds its own over its days, a dose
of the log at its own day with the published half dose (`harm.from_dose`), its size averaged over stated sizes.
Random factors per band of days (ordinary luck, and looseness of shapes) are integrated out by Laplace. Likelihood
is over the look intervals as they are. Large pattern factors are held down (`cause_weights.trusted`), so that no
pattern alone outvotes a measured dose. Evidence is piecewise-linear in the log (`cause_evidence.csv`), each fact
counted once, as a difference from the keeper's good batches; what is not known counts 1. Pairs of the three
heaviest causes with every other one are weighed too (`SECOND`: one poor batch in three has two); each of a pair has
half its weight. Verdict: confident from 80 % with something other than counts speaking for it (`firm_with`), two
causes when pairs have half of the weight, probable from 50 %, else bad luck or cannot tell. `.arithmetic(cause)`
shows every factor.

**Decisions.**
- Constants (`SECOND`, `SHAPE_EGGS`, `LOOSEST`, `PATTERN_*`, the tables of evidence) were set in
  `tests/benchmarks/world_family.py` and, after their one final run, in the second to fifth world too: all are seen,
  and only a fresh world proves anything now. A mixture of the worlds' own shapes for a cause was tried and wins
  nothing in the world left out.
- A factor of evidence stands in its table as it counts. The check of a table: over batches that something else
  struck, the mean of the factor must be about 1 (`clock`, `flock_age`, `water_loss` and the opened clears once had
  4 to 7: plain noise blamed a cause). Remarks and signs are pooled (log mean) with what the written worlds say, where
  two or more name the pair.
- Opened clears are in the likelihood (`seen`), so no item tells them a second time.
- A machine's level, humidity and probe gap are compared with that machine's own good batches; without one a level
  for a cause is damped (`NO_MATE`): the probe's own error.
- Too warm or cool is told by the log and, apart from it, by the hour of the first chick beside the keeper's other
  batches: two facts, for a probe may lie. The hour is not set against what the log lets one expect: a log that shows
  the warmth would excuse the early hatch that confirms it. After a cold spell in the log the late hatch is the same
  fact.
- Rotten eggs are in the likelihood too: the item that counts them says less of contamination than it might.
- The spread between batches is that of ordinary hazards. A cause's own hazards are as loose as its share in the
  band (`course.loosened`); when ordinary spread was laid on both, 17 culled of 27 chicks spoke for infected navels
  by hardly more than for cool air.
- Stage counts share a death that crosses a limit by the published two-phase shape, not by the season's own ages at
  death.
- A measured dose that takes under 5 % of the hazard is no cause (`harm.LEAST_HARM`): the trials hold doses that did
  nothing.
- An account's eggs are the expectation over single causes and pairs; under 10 % of the weight nothing is put down
  to a cause.
- The planner averages the beta-binomial over mean and correlation on a grid; prior: `hatch_levels.csv`, its range
  as the middle 80 %.
- The planner puts the middle of the hatch at the trade's days; the hatch clock puts it 4 h x length / 21 earlier,
  from measured curves.

**To add a cause:** a row in `causes.csv` (two sources and their disagreement), rows in `cause_patterns.csv`
(variants are ages at which it may strike), rows in `cause_evidence.csv`; tests check that they fit together. New
evidence: a row in `evidence_items.csv` and a value from `evidence_climate.find` or `evidence_records.find`. A new
sign: a row in `signs.csv`.
"""
