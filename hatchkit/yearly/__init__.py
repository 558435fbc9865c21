"""Seasons side by side: what each year lost, what changed, whether a change helped, which groups differ.

**Many seasons as one.** `records/places.py` finds them (one folder, several, folders of years, of keepers, of years
of keepers, at most three deep; a folder that holds a batch table is one season; a book by itself is one).
`season.load_season` reads each by itself; one that can't be read is a problem row and the others go on.
`season.joined.join` stacks the tables: `batch` becomes a key (year, keeper, folder are added only where names are
used twice), `name` stays the keeper's, machines bear their keeper in a club, files are named from the folder above.
`Season.parts` keeps each season with its own log and settings (a view of the joined log): tracks and excursions are
made part by part, since a machine's step, air and correction may change between years. Words of the log are
categories. `records/season_years.py` says which hatching year a batch is of (a season across New Year is one).
Keepers: `keeper` in season.toml, else folders whose names tell no year, if their years overlap or lie two deep. One
machine gone and one new is asked (`machine_renamed`); a new probe, correction or kind of air is noted. Changes:
sheet or file `changes`, or `[[changes]]` (`records/changes.py`). Answers for a part are kept in the folder above
under its path.

**Rooms.** `yearly/outcomes.py` one row per batch, counted alike everywhere; `by_year.py` each year's shares
(dispersion of batches about their year, from all years) and whether years differ (batches dealt to years within
keeper, species, machine and pen; Holm over outcomes); `helped.py`; `groups.py`; `nameless.py`. `findings/years.py`
and `years_groups.py` ask, `messages/en/years.ftl` says, `figures/years.py` draws.
Packages are not called `years` and `trial`, since the
public calls are.

**Decisions.**
- *Pooling* (`usual/mixed.py`): log odds = level + group + year (+ hatch where rows share one); rows beta-binomial;
  spreads on a grid with stated priors, Laplace for each; hatches eliminated by Schur's complement, so that cost is
  linear. The library's model (BinomialBayesMixedGLM) gives the same estimates and too narrow intervals (a test
  holds both), and has neither a hatch nor a spread of rows.
- *Clearly* is 99 % of the draws for one pair, *may* 90 %; the number of pairs is said. Eggs that would tell: two
  shares, 80 %, with the design effect.
- *Helped*: the year before is no measure. The model learns from all earlier batches and from later ones that the
  change did not concern; place, year and place-in-year have spreads; the prediction since the change draws new
  years. A change of a pen is asked for fertility, of a machine for hatch of the fertile, before any egg is counted.
  Another change met by a quarter of the same batches is named.
- *The relation over years*: strata of the exchange are species, incubator, season and keeper. Beside it stands
  `relate/redrawn.py`: batches drawn anew, machines, seasons and keepers (and from 12 batches a drift within the
  season) taken out of the dose, spread learned with a stated prior. The verdict asks for at most 4.8 % there and,
  where exchange could give 2 % or less, at most 10 % there. Valid up to a spread of about 0.5 beyond what is taken
  out; at 0.8 it gave 6.1 % (20/5 x 48) and in trials of the method without the guard up to 14 % (6/2 x 150).
  `foresee` says before the answer what could have shown and what is lacking. Turning the log stays as it was, each
  season's log by itself.
- *Trials*: eggs dealt by lot within set and block, seed in the plan, dealing drawn again from it when judged;
  Fisher's randomisation test and the difference of Mantel and Haenszel. Each egg counts where the lot had put it.
- *Without names*: names are numbered and free text is left out in the Season, before any page is made; a test
  searches the pages.

**Not proved.** Errors where the spread between batches is above 0.5; the drift is straight; `helped` with more than
one change at a place in a year; keepers' names inside their own columns' headings (columns of one's own are left
out of nameless pages altogether).
"""
