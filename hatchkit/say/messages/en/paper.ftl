# Paper: the candling sheet, the explanations of the blank workbook, the comments of season.toml.

paper_candling = Candling sheet
paper_head_batch = Batch
paper_head_kind = Birds
paper_head_machine = Incubator
paper_head_eggs = Eggs set
paper_head_set = Set on
paper_look = Look
paper_day = Day
paper_when = Date
paper_clear = Clear
paper_dead = Dead
paper_other = Cracked, rotten, other
paper_left = Left in
paper_notes = Notes
paper_date = { DAY($day) }
paper_ticks = Seen in unhatched eggs and chicks: tick it
paper_explain_clear = Clear: no sign of a germ. Dead: a blood ring, a dark mass that does not move, vessels gone pale.
paper_explain_blank = Write 0 where you looked and found none; leave blank what you did not look for.
paper_explain_copy = Copy the lines into batches.xlsx: the first two candlings and the transfer into the table of batches, more of them into the sheet of candlings, the signs into the column for signs.
paper_usual = Usual days of the two candlings, the transfer and the hatch: { LIST($birds) }.
paper_bird = { $bird } { LIST($days) }

start_in_the_way = { $path } is in the way; hatchkit does not write over it.
start_unwritable = { $folder } can't be written to ({ $why }); choose another folder.

sheet_fill = how to fill in
fill_title = How to fill in this workbook (hatchkit)
fill_how = Leave a cell blank if it was not counted; write 0 if it was counted and there was none. Write the hour with each date if you know it: 2026-03-05 18:30.
fill_folded = What is rarely needed is folded away: the small plus signs above the columns open it. Take out or add columns as you like.
fill_head_sheet = Sheet
fill_head_column = Column
fill_head_what = What goes in
fill_head_unit = Unit
fill_head_one_of = One of
fill_batches = One row for each batch: what went in, what each look found, what came out.
fill_eggs = One row for each egg, if you number your eggs. Optional.
fill_weights = One row for each weighing, of one egg or of a whole tray. Optional.
fill_candlings = One row for each look, if you candle more often than twice. Optional.
fill_choose = Please choose one of the list.
fill_number = A number from 0 up, or blank if it was not counted.
unit_time = date and hour, your own clock
unit_eggs = eggs
unit_days = days
unit_weeks = weeks
unit_g = grams

toml_head = What hatchkit can't guess about this season. Take away the # in front of a line to use it.
toml_title = My season
toml_language = The language of what hatchkit says: en, de, fr or es. Left out, it is that of your sheets.
toml_timezone = The zone of your wall clock; readings and dates are turned into one time by it.
toml_default = If all eggs are of one kind, or all in one incubator, the columns may stay blank.
    Species are: { $species }.
toml_incubators = One section for each incubator. Put its logs into the folder sensors.
toml_files = which logs belong to it
toml_air = "fan" (moved by a fan) or "still"
toml_set_point = what the thermostat is set to, in °C
toml_offset = added to the readings: what the probe shows too high, with a minus
toml_altitude = height above the sea, for humidity
toml_sensors = Logs: say it only if hatchkit asks.
toml_unit = "C", "F" or "K"
toml_day_first = 04/05/2026 is 4 May
toml_sheets = Sheets: the same for dates that were typed as text.
toml_headers = Your own headings, if they are not recognised: "your heading" = "column".
toml_heading = Eggs in
toml_species = Your own figures for a kind of bird, based on a known one.
