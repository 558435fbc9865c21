"""A keeper's sheet, of any shape, read by its words, its values and its arithmetic together.

``lexicon`` (what a word may say) -> ``meanings`` (what a heading may mean; ``fields``) -> ``shape`` with ``forms``,
``rows`` (where the tables are, which way round, which rows are data), ``expand`` (counts told in words become columns)
-> ``cells`` and ``profile`` (what the cells hold) -> ``candidates``, ``assign`` with ``ledger`` (the reading of all
columns under which the eggs add up best, and how much better it is than the next) -> ``tables``, ``eggsheet``,
``logsheet``, ``diary`` (one block -> ``parts``) -> ``assemble`` (one season; ``species``, ``names``,
``looks``, ``frames``) -> ``shown`` (the reading, the ledger, and what stays open).

**Path of a sheet.** `records/folder.py: read_folder` lists the folder (`files.py`), reads `season.toml` and
`answers.toml`, turns every workbook and text file at its top into grids of cells (`workbook.py`, guarded by
`workbook_guard.py`), and gives the grids to `sheets/assemble.py`:

- marks, words explained on the sheet ("C = clear", "Penoy = clear egg.") and answers of yes or no are written out;
  tables side by side, rounds and two languages parted: `legend.py`, `abreast.py`
- blocks: tables, tables on their side, forms, lines of a diary; titles, totals, sections told apart from rows:
  `shape.py`, `rows.py`, `forms.py`, `formlines.py`
- cells of words become columns of numbers, look by look; days of a month under its name become dates; an hour of
  its own joins its date: `expand.py`, `abreast.py`
- what a block is a table of: `kinds.py`
- what a heading's words allow (composed, not listed): `lexicon.py` (`reference/sheet_words.csv`),
  `meanings.py` (`reference/word_rules.csv`), `fields.py`
- what the cells allow; the joint reading of all columns by words, values and arithmetic: `profile.py`,
  `candidates.py` (`reference/column_rules.csv`), `assign.py`, `layout.py`, `ledger.py`
- what is not used though it was read, and asked about: `doubts.py`
- the block becomes batches, eggs, looks, weighings: `tables.py`, `eggsheet.py`, `logsheet.py`,
  `diary.py`, `entries.py`, `entrybatches.py`, `around.py`
- what holds for all: order of dates and year (`when.py`), birds, names, looks merged: `species.py`, `birds.py`,
  `names.py`, `looks.py`
- what the person sees: readings, questions, ledger, problems (codes; sentences are made in `hatchkit/say`), totals and
  percentages on the sheet that differ from what was read: `shown.py`, `told.py`

A row is never dropped in silence: `rows = rows kept + rows of severity lost + rows said to be no data`. Row numbers
are those that the person's own program shows.

**Decisions.**
- A column's meaning is a hypothesis. Each has a weight in log odds: 4 the words say it plainly, 2.5 usual, 1
  possible; cells change it; the joint reading adds the evidence of the rows (`ledger.py`: +2 a row in which the
  eggs add up and could have failed to, -3 one with too many eggs, -1 if by two at most, at most eight rows count).
  A reading without a number set or a date costs 5. Eggs left add 0.7 a row where they lie between those before and
  after, 1 where the written losses explain them; a percentage that fits adds 0.8. A rival within 1.5 is asked about,
  unless every batch keeps its numbers under it.
- Words first, then the sums: the in-order search is followed by a climb from its best (`near_the_best`), in which
  a column of whole numbers under an unknown heading may be any class of eggs. If the eggs then add up in one way it
  is taken; if clear, dead, pipped ... do equally well, no word telling them apart, the column is left out, its eggs
  are unaccounted for, and it is asked about (`_without_guesses`).
- A table most of whose rows hold more eggs than were set was misread: by however few
  in three rows and more, and also where the reading left a column of losses out to hide it: it is left out and asked
  about (`?sums`). A diary of which fewer than half of the batches add up is not used at all.
- Losses that were worked out (from eggs left, from "all") are not used where a column that may be of eggs is left out
  among them (`doubts.py`): what is written stays, the rest is unaccounted for, and the column is asked about.
- A 0 hatched before the hatching day (less two) is "not yet": the batch is unfinished and stays out of rates.
- "Died in the hatcher", "dead d18-21" are dead in shell, not a look at the move. In a list of eggs yes and no are
  fates. "Left (clears out)" is eggs left; "bad" at a candling is dead; a row with a date of its own is no sum.
- Words beside a count or in remarks of a log count only where the eggs then add up and do not without them; where
  they do, "1 pipped" is a part.
- In a log the number of eggs in a row of a look or of the move is of those that went in: it opens no batch.
- Remarks that tell of looks by day are read as counts only in a table that counts no loss elsewhere; they stay as
  remarks too.
- Below one date, names that come back below another date are groups within a hatch: they share the date above.
- In forms a loss told of once more belongs to the look named above it; a form begins where its first label comes
  again.
- A heading that names a machine over numbers above 12 is the eggs moved; over dates it is the date of setting.
- Red-legged and grey partridges are `partridge`, whose figures are the chukar's; a game bird beside the name of a
  breed of hens is its colour.
- Only the words' own language (and English) counts; a word in many rows counts once for the language. Misspelt
  words weigh one less.
- A plain heading keeps its column even where none of its cells can be read: each cell is told.
- A diary is used only for batches whose eggs add up to the last one; the others are asked about (`?diary`). A year
  that nothing tells is the last in which no date lies ahead, and asked (`HATCHKIT_TODAY` fixes the day in tests).
  Dates with dots have the day first, and languages other than English write no month first (Unicode CLDR); where
  both orders fit, it is asked.
- An unknown word for a bird is asked about whatever else speaks for one; a word explained in brackets once holds
  for the sheet.
- Two eggs too many, or 5 %, are a slip of counting (`too_many_eggs`), not another reading; the batch counts.
- A look told of in two tables is one; the table whose eggs add up keeps its figures; looks without a date take the
  date that another table gives.
- "?", "-" and "n/a" are "not kept", never 0; "none" is 0; "10+2" is 12. Text after a number ("22 (2 weak)") keeps
  the number.
- Answers are bound to file, sheet and heading and kept in `answers.toml`; `season.toml` wins.
- Problems speak the person's language: their heading beside the kit's column, times in the season's zone.

**How to extend.** A new word: a line in `reference/sheet_words.csv` (role, language, words, source); a bird or
breed: `breeds.csv`. What words say together: a line in `word_rules.csv`; what cells say for a reading:
`column_rules.csv`. A new column of the kit: a line in `columns_records.csv` and its reading in `fields.py`.

**season.toml**: `default_species`, `default_incubator`, `[sheets] day_first`. Unknown settings are named with the
nearest known.

A folder without a readable batch table is refused with the name of each sheet and the headings seen on it. Texts
beside the workbook that are plainly logs are read as such (see `records/logs`).
"""
