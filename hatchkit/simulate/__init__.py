"""Seasons with a known answer: for the demo, for lessons, and to prove that the statistics work.

**How it is built.** `course.py` plays a `SeasonPlan` (batches, machine faults, probe errors): `machine.py` makes
the true air (set points, control noise, openings, faults), `biology.py` makes each egg's course, `bookkeeping.py`
what a person sees of it at each candling and writes down, `habits.py` and `loggers.py` put it on disk. The course
of an egg is a race: a background death age (two Weibull phases of Kuurman et al. 2001), a hatching time on the
development clock, and for each harm (heat, cold, storage, too dry, too damp, parched at hatch, turning, rot, clock
far off) an age at which that harm would kill; the earliest wins and stays in the answer as `died_of`. So the number
of embryos that a planted fault cost is known egg by egg, and the excess that the analysis estimates can be held
against it. Every figure is a row of `reference/simulate_parameters.csv` (value, unit, source, how sure; "invented"
where it is); every cause with its three sizes is a row of `reference/simulate_causes.csv` (`named_by_advice` is the
cause that the advice room would name). The generator has its own lag and its own egg temperature: an error in the
climate room cannot hide in both.

**Seal.** Layout, cause, habits and chance draw from separate streams of the seed, logs run for a fixed time after
setting, numbers have one width, the workbook is filled up to whole 16 kB, its properties, archive entries and all
file times are constant. With one seed the names, order, sizes (log files to the byte), times and metadata are
identical whatever was planted; a nearest-neighbour guesser over other seeds does no better than chance.

**To add a cause**: a row in `simulate_causes.csv`, a branch in `causes.plant` (a `machine.Fault`, or changed fields
of the `BatchPlan`), its `died_of` words in `causes.KILLS`; the tests walk the list. **To add an export style**: a
row in `loggers.EXPORTS`. **A person's habit**: a `Habit` in `habits.HABITS`. **Changing the demo**: edit `demo.py`,
run the command above, commit `data_demo` with it (a test compares bytes), refresh the notebooks.

**Life** (`life.py`, levels in `reference/case_levels.csv`): what happens to everybody is drawn from streams of the
seed of its own, so that none of it depends on the cause: flocks of 58 to 80 weeks that do well, 8 to 20 days of
storage kept well (`BatchPlan.storage_harm`), other humidities, harmless spells and short power cuts, mistaken
remarks, a wrong clock, a miscount, a log that is missing or has a gap, ten kinds of birds, a second cause. Causes
come with replacement. What the invented keepers set is `simulate_birds.csv`, so that a fixed figure of the trade
does not redraw the demo.
"""

from hatchkit.simulate.answer import Answer, read_answer
from hatchkit.simulate.causes import cause_names
from hatchkit.simulate.demo import write_demo
from hatchkit.simulate.seasons import draw_season, simulate_season

__all__ = ["Answer", "cause_names", "draw_season", "read_answer", "simulate_season", "write_demo"]
