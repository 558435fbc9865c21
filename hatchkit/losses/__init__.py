"""What was lost: fates as intervals, stages, rates, ages at death. Knows nothing of climate.

Calls (all take a Season first): `hk.breakdown`, `hk.age_at_death`, `losses.bad_luck.bad_luck`,
`losses.clears.clears`, `losses.tray.tray_map / clustering`, `losses.season_chart.season_chart`,
`losses.norms.norms`, `losses.windows.candling_windows / left_out`; what is told beside the answers in
`findings/more_losses.py`; figures in `figures/losses.py`: `egg_ledger`,
`losses_by_group`, `death_age`, `tray_map`, `season_chart`.

**Fates.** `schedule.py` puts the looks of a batch in order; `counts.py` and `egg_rows.py` turn records into groups
of eggs with an interval (after, by]; `fates.py` closes them to the eggs set. Three choices to know:
- "Dead in shell" and opened eggs are counted in several ways (one within the other, apart, clears opened).
  `counts.readings` lists the ways from the plainest on; the first that closes to the eggs set is taken and named in
  a note.
- Records that exceed the eggs set cannot say which number is wrong: the whole batch is unaccounted and left out of
  rates.
- An embryo that looks younger than the day on which it was marked alive gets an interval that covers both, and a
  problem row. The 3 days either way for birds other than the hen are a column of `embryo_stages.csv`.

**Sharing out** (`death_shape.py`). A death whose interval crosses a stage limit is shared by the season's ages at
death of that species: the published two-phase shape (Kuurman et al. 2001) times a factor that changes smoothly with
age (kernel sd 1 day on the hen's scale), by smoothed self-consistency (Silverman et al. 1990), the last step
unsmoothed so that what is known to lie in a stretch stays there. Not by the estimate without a shape: with
candlings on day 6.9 in one batch and 7.1 in the others that one puts 20 of 26 deaths of (6.9, 14] into those five
hours, hence "early"; now 0.6 of 26 (0.5 to 1.1 for a kernel of 2 to 0.5 days). Deaths known narrowly, from a
breakout, outweigh the published shape; one of them does not draw 25 loosely known ones to itself. `seen` and
`shared_out` are kept apart in every breakdown.

**Ages at death** (`interval_likelihood.py`): innermost intervals, 20 accelerated self-consistency steps for all
draws at once, then constrained Newton steps for the few still open; stops when concavity proves that less than 1e-8
(estimate) or 1e-3 (draws) of log-likelihood is left. Chicks outlast every look of every batch, not only their own.
The band is never narrower than the chance of single eggs (Wilson): a bootstrap of batches without a death would be
certain of nothing lost.

**Intervals.** One batch: Wilson. Several: Wilson with the eggs divided by the Pearson dispersion (floor 1) and t
with batches - 1 degrees, 4 lent when there are fewer. No test decides whether there is spread. **Unusual?**
(`predictive.py`) Beta-binomial, averaged over mean and spread on a grid with the batch itself left out; the spread
is the sd of the log odds of the batches' shares, prior half-normal with sd 0.7 (0.5 flags more than 5 % of ordinary
batches at a spread of 0.8, 1.0 finds less). Benjamini-Hochberg over all batches and stages at 10 %; `unusual_from`
is the count that would have been called unusual, and the words give it for counts that are rare alone. The other
batches of a season may be bad too: they are not taken out, so a bad season hides a bad batch. A published level
takes only its mean from the book, its spread from your batches. **Season chart:** beta-binomial quantile limits
from the median moving range (one bad batch must not widen its own limits).

To add: a stage limit set -> rows of `reference/stage_limits.csv`; a published level -> a row of
`reference/norms.csv` (a user's own: `[[norms]]` in season.toml with species, stage, share, denominator); a fate ->
`FATES`, `counts.groups` or `egg_rows._row`, `ledger.BEFORE/AFTER`, a fill in `figures/style.py`; a test of place ->
one more column of `drawn` in `tray.clustering`.

A blank is not a nought: `counted.py` says which stages and looks of a batch were counted; what was not counted is
not known and leaves the denominators. To add a name for a published level: column `name` of `norms.csv`, as it
reads in a sentence, with its source.
"""
