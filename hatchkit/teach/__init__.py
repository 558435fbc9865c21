"""The course and what a class needs: exercises and their checker, cases with a hidden cause, answer forms, marks.

- how is an answer judged; what is right, where do mistakes lead: `judging.py`, `course_exercises.py` (parts one and
  two), `lesson_exercises.py`, `course_finding.py`
- what a student calls: `begin`, `check`, `progress`; aims, minutes: `exercises.py`, `outline.py`
  (`reference/lesson_outline.csv`)
- a case: season, what its records show, statements: `cases.py`, `reader.py`, `case_facts.py`, words in four
  languages in `case_words.py`
- the form as a workbook; reading it: `answer_form.py`, `answer_sheets.py`, `answer_words.py`
- credit as functions of numbers; the marks of a class: `credit.py`, `marking.py`; pages in `give_back.py`
- eggs to date: `breakout_lab.py`; drawings in `figures/egg_*.py`, the key and the sheet in `picture_key.py`,
  `breakout_sheet.py`

**Notebooks.** `3_course`, `4_course_two` (31 exercises), `lesson_1` to `lesson_7` (52): against your own good
batches, the second look, water, a fair trial, other birds, clean hands, the breakout lab. The answers stand in
`notebooks/teacher/*_solutions.ipynb`; `tests/build_course.py [name]` makes the students' from them and runs both: a
run of lines that end in `# solution` becomes `answer = ...`, a cell tagged `teacher` is left out. A new exercise
takes a function in `lesson_exercises.py`, rows in `exercise_words.csv` and in `lesson_outline.csv`, a case worked
out by hand in `tests/teach/test_course_exercises.py`, a cell in the teacher's notebook; tests hold outline,
notebook and checker together. Hints are fixed sentences: no figure of an answer gets into them, and a test tries
every mistake. The written finding is never called right: a person has the last word (`tests/teach/findings.csv`).

**What is right in a case** (`reader.py`). The truth is not what was planted but what the records show of it: at
even odds beforehand, the counts of the asked batch and its hours of hatching under 60 courses with the causes and
60 without (Dirichlet-multinomial by moments, normal), times the traces: the cause in a log that covers it (20 to
1), weighings (5), a remark (as often as the level tells and errs), age and storage (as rare as the level makes
them). From one half on the cause "can be told"; below, "none can be told" is the answer. *A judgement*: the 20 and
the 5 are set by hand.

**Marks** (`credit.py`): stage 0.15, cause 0.20, eggs lost 0.15, statements 0.50. A name with probability p earns 1
from one half on, else p/(1-p); half for the same kind; "none" at least half where the loss is under half a careful
interval. Eggs lost by the interval score (80 %; Gneiting & Raftery 2007, eq. 43): all of it up to a careful
reader's width, none from three times that (cut at both ends, so proper between them). Statements: share ticked of
those that bear, less share of those that do not. The first three earn 0.35 of their part alone and the rest in
proportion to the statements: a factor that does not depend on the interval. About a third of the statements on
neighbouring batches quote a count that is not in the book, so that ticking by kind earns little.

**Your records.** `notebooks/0_your_records.ipynb` runs on any folder, also on a blank one from `hatchkit start`;
its practice part writes an invented sheet to a temporary folder, reads it, fixes it with `season.toml` and reads it
again.

**Drawings.** A hen's egg of 60 g in millimetres (57 x 43.5); sizes by day in `embryo_proportions.csv` with their
sources. Air cell: height of the cap that holds the water lost; embryo: an ellipsoid of the published mass (both
re-derived in `tests/outside/test_outside_eggs.py`); eye, beak, vessels and yolk are from memory, and say so. All
positions are seen from the chick's back, which stands under each. Days 15 to 18 differ in the yolk sac alone, so
the quiz leaves them out. No substitute for photographs.
"""
