"""The logs of a season: which columns are what, when, of which machine; see `read` for one file, `season` for all.

How one file is read, in order; each step answers one question and hands on a small value:

- `read.py`: the call `read_readings`; `read_parts` gives each log of a file and the Account of its lines, problems
  and questions
- `texts.py`, `encoding.py`, `rows.py`: which texts does a file hold (workbook, archive), in which encoding, and are
  they lines of cells (JSON, labelled lines, web page, dump, XML)?
- `head.py`, `headings.py`, `cells.py`: separator, decimal mark, headings of up to five lines, first reading
- `names.py`, `plan.py`, `columns.py`: what a heading, unit and legend say each column is (words:
  `reference/sensor_words.csv`)
- `guess.py`: where no heading is understood: behaviour, doubted and asked
- `pairs.py`: which humidity goes with which temperature; mean before lowest and highest
- `when.py`, `moments.py`, `stamps.py`, `since.py`, `zone.py`: which columns say when, several logs side by side,
  counted from a start; UTC
- `parse.py`, `lines.py`: does the rest look like the head; one call of the parser; what became of each line; where
  another export begins
- `channels.py`, `values.py`, `probe.py`: numbers, units, missing codes, humidity; one probe after another in the
  order of time
- `owner.py`, `season.py`, `join.py`: whose log it is and how sure; all logs of a season (`read_all`:
  readings, problems, questions, files); the table `logs` of a season, which `records/check.py: logs_read` groups
  and `say/logs.py` puts in words
- `times/`: `forms.py` is the table of forms; `gather`, `decide`, `read`, `find`; `grid.py` the fast path;
  `zones.py` UTC

Decisions
- The whole file is parsed by one `read_csv` call of the C engine with blank lines kept and `usecols` given: row i
  is then line `first + i`, and a line with too many cells does not stop the parser. Quotes are switched off unless
  the head has some, so that one stray mark cannot swallow the rest; where quotes join lines all the same, marks
  without a partner are taken out and the file is parsed once more.
- ISO stamps are left to the parser. All others are read as text: written digit under digit they are a grid of bytes
  (`times/grid.py`), else each distinct date and clock time is converted once.
- Order of day and month: dates that do not exist, then days that follow each other, then `day_first`, then the
  batches of the season, then "dots mean day first". Whatever settled it is a problem row; "doubtful" from batches
  on.
- `lines in the file = lines with readings + lines counted in problems`, always; `Account.lines` holds the figures
  and each kind of line has a problem row that holds its count, except a header that is the only line above the
  readings (`"header": 1`), which is as it should be. The fuzz checks this sum.
- A missing code keeps its reading: `temp_c` is empty, `temp_logged_c` shows the code where it was a number, `doubt`
  is "missing code". A hole in a column that is filled together with others is a missing reading; blanks of loggers
  that write in turn are not. An impossible humidity is emptied and reported; the temperature of that reading is not
  doubted.
- One doubt per reading; the strongest wins: missing code, clock step, repeated, out of range, spike, stuck.
- A text beside the table of batches is read as a log, with a note, where its head is plainly one (`read.is_log`: a
  header names a temperature or humidity, or ten lines have a date with a time) or where `[incubators.X] files`
  names it. A pipe is never opened.
- `probe_offset_c` is added to what the probe shows; it may be a table of one number per probe. `[incubators.X]` may
  also hold temp_unit, day_first and timezone for its files.
- Two files of one incubator with the same probe name: merged where they share readings, one after the other where
  they do not overlap, two probes (the second with its file name in brackets) where they overlap and differ.
- `records` may not import `climate`, with one exception: `climate/air.py` (formulas only), fetched when a wet bulb,
  a dew point or an altitude needs it.

- Questions of the logs have the columns of the sheets' and codes as choices (`temp_C`, `dmy`, `none_of_these`);
  words are in `say/messages/en/logs.ftl`. An answer is bound to file (or part of a file) and heading; of a whole
  file the heading is `?log_machine`. season.toml wins over an answer; an answer that is none of the choices is
  none.
- Summer time: between the last reading before a change of the hour and the first behind it, a clock that does not
  follow shows as much time as its steps take; one that follows shows an hour more or less (`times/zones.py`). A
  clock that somebody puts right by hand some days later is not found.
- Days that a spreadsheet shows with midnight are joined with a column of times that change; a time shown with
  30.12.1899 is a time.

To extend: a header word is a line in `sensor_words.csv` (any language); a missing code a line in
`missing_codes.csv`; a word for AM/PM, a weekday or a month a line in `clock_words.csv`; another stamp a line in
`times/forms.py` and in `tests/records/times/test_times_forms.py`; a new way to break a file belongs in
`tests/benchmarks/fuzz_logs.py` or `tests/records/logs/test_logs_broken.py` (`python
tests/records/logs/test_logs_broken.py 2000`). A layout is a function in `tests/records/logs/layouts.py`. Tests that
write a file a try do not shrink: a failure would hang the suite.

Not read: decimal commas between commas without quotes (refused with the way out), zones by name above the readings
(only UTC/GMT and an offset), a log without any date (the reason says so).
"""
