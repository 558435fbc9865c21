"""What the eggs felt: humid air, egg temperature, excursions, water loss, the development clock.

- how damp is the air: `air.py`; `saturation_pressure`, `rh_from_wet_bulb`, `standard_pressure`
- one air temperature from several probes: `machine_air.py`; `machine_air` (mean of the probes in a step; doubted
  readings are rows without a temperature)
- how warm was the egg: `egg_temperature.py`, `egg_heat.py`; `egg_temperature`
- which temperature is right: `ranges.py`, `reference/ranges.csv`; `limits`
- what did one batch meet: `track.py`; `batch_track`: the table that all others are made from
- when was it too warm or cold: `excursions.py`, `shapes.py`; `find_excursions`, `state_of_time`
- does a machine run steadily off its range: `steady.py`; taken out before spells are looked for, and told once with
  the wanted temperature
- how much heat and cold: `dose.py`; `window_dose`
- can the probe be believed, how steady: `probes.py`; `probe_truth`, `steadiness`
- do the eggs dry as they should: `water_loss.py`, `weighings.py`; `batch_water_loss`, `rh_needed`
- when should they have hatched: `clock.py`, `egg_heat.py: rate`; `hatch_clock`
- tables behind pictures: `timeline.py`

Decisions worth knowing:
- **Own humid-air formulas** (Hyland-Wexler, six lines): 0.03 % from the steam tables. psychrolib is the reference
  in the tests, not a dependency: it is scalar and nothing else of it is needed.
- **Two temperatures.** The clock runs on lagged air *without* the embryo's heat (the usual 21 days contain it);
  heat harm on the estimated egg *with* it. Mixing them shifts hatch by about 30 h.
- **The lag filter** is a bidiagonal linear system solved by BLAS (`dtbsv`) in pieces that stay in cache; exact for
  any steps. Metabolic heat follows the lagged air plus the egg's usual offset, so no iteration is needed; a restart
  is a zero on the diagonal. The band needs two more filters (slow and fast lag); probe error and conductance act in
  closed form; one-sided quadrature agrees with 600 random draws within 0.06 K on average (test).
- **Still air** is read at the top of the eggs: 1.1 K is taken off before the filter, and its ranges lie 1.1 K
  higher.
- **Known time.** A reading speaks for the time to the next one only if that comes within 1.9 usual steps; otherwise
  nothing is known. So removing any stretch never makes an excursion normal (property test). Holes longer than 3
  steps and half an hour split excursions; the filter restarts after 3 time constants.
- **An excursion** is beyond the watch limits at any length, or in the watch zone for 2 h. Returns under half an
  hour are joined. One row per batch, `event` numbers the disturbance of the machine.
- **`looks_like`** rests on the curve: fall within minutes (opening), exponential with rising humidity (outage) or
  falling (lid ajar), creeping (drift), jump both ways or probes that part (sensor). Its limits are the kit's own
  judgement. Steps over 12 min leave short events "unclear".
- **Heat dose**: hours at 43 °C on the egg, 3x per K above, 4x below, rolling 24 h, beside the half-effect dose of
  that age (Ande & Wilson 1981). It orders day-16 experiments that degree-hours order backwards; in sample. Bands
  only, never a mortality.
- **Hatch clock**: middle of the hatch = usual days - 4 h (for 21 days) + storage beyond 3 days + temperature; band
  ±10 h (never under 8) + 0.1 h per hour without readings + 0.3 h per hour that temperature moves it.
- **Fitted or independent** is said in each test of `tests/outside/test_outside_physics.py` and in the source
  column.

To add a range: a row in `ranges.csv` with the species' name (all three levels of that stage and air) replaces the
rows for `any`. To add a published exposure: a row in `heat_doses.csv` (kind `fact`; `half` rows carry the two doses
and drive the bands). To add a species: `setter_c`, `hatcher_c`, `egg_grams`, `incubation_days` in species.csv are
enough.
"""
