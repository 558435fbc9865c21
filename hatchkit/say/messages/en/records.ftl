# What could not be taken as it was written: found, done, mend.

answers_unreadable =
    .found = the answers that were kept before can't be read: { $path }
    .done = They are not used; what was asked before is asked again.
    .mend = Delete the file and answer anew; hatchkit check FOLDER --ask.
answers_elsewhere =
    .found = { $count ->
        [one] one answer of yours lies
       *[other] { $count } answers of yours lie
    } in { $path }, since the season's folder can't be written to
    .done = Used.
answers_nowhere = The answers could be written neither to { $folder } nor to the working folder nor to your home folder; start hatchkit in a folder that you may write to.

tables_in_season = { $path } lies in the season's own folder, where its tables would be read as part of it: name another folder.
tables_unwritable = { $path } cannot be written to: { $why }.
tables_not_empty = { $path } holds other things ({ $names } ...): name a new or an empty folder for the tables.

# ---- cells of a sheet: $cell is what stands in it, $field what the column is taken for ----

cell_all =
    .found = “{ $cell }” stands for a number of eggs
    .done = Taken as all the eggs that were left.
cell_sum =
    .found = “{ $cell }” is a sum
    .done = Added up.
cell_remark =
    .found = “{ $cell }” holds a number and words
    .done = The number is used, the words are read as a remark; look whether it was meant so.
cell_about =
    .found = “{ $cell }” is a rough figure
    .done = Used as it is.
cell_of =
    .found = “{ $cell }” says how many of how many
    .done = The first number is used.
cell_range =
    .found = “{ $cell }” is a range
    .done = { $field ->
        [stored_days] Its middle is used where one number is needed.
        [flock_age_weeks] Its middle is used where one number is needed.
        [weight] Its middle is used.
       *[other] Not used as a number of eggs.
    }
cell_unit =
    .found = “{ $cell }” has a unit of its own
    .done = Converted.
cell_unknown =
    .found = “{ $cell }” means that it is not known
    .done = Taken as not counted, never as 0.
cell_unsure =
    .found = “{ $cell }” is marked as unsure
    .done = Used with that doubt.
    .mend = Write the number alone if you are sure of it now.
cell_huge =
    .found = “{ $cell }” is no number of eggs that anybody sets
    .done = The cell is left out.
    .mend = Write the number of eggs.
cell_bad =
    .found = “{ $cell }” can't be read as { READING($field) }
    .done = The cell is left out.
    .mend = Write a number, or leave it empty if it was not counted.
cell_date =
    .found = “{ $cell }” is a date where { READING($field) } is kept
    .done = The cell is left out.
    .mend = Write a number; a spreadsheet may have turned it into a date.
cell_negative =
    .found = “{ $cell }” is below nought
    .done = The cell is left out.
    .mend = Write the number of eggs.
cell_share =
    .found = “{ $cell }” is a share where a number of eggs is kept
    .done = The cell is left out.
    .mend = Write how many eggs.
cell_fraction =
    .found = “{ $cell }” is no whole number of eggs
    .done = The cell is left out.
    .mend = Write how many eggs.
cell_percent =
    .found = “{ $cell }” is a share where a number of eggs is kept
    .done = The cell is left out.
    .mend = Write how many eggs.
cell_no_fate =
    .found = “{ $cell }” does not say what became of the egg
    .done = The cell is left out.
    .mend = Write clear, dead, pipped, hatched or a word like these.
cell_no_year =
    .found = the date “{ $cell }” has no year
    .done = The year of the sheet is taken.
cell_serial =
    .found = “{ $cell }” is a spreadsheet's number of a day
    .done = Read as that day.
cell_date_not_a_date =
    .found = “{ $cell }” is no date
    .done = The cell is left out.
    .mend = Write a date such as 2026-03-05.
cell_date_no_year =
    .found = the date “{ $cell }” has no year, and none stands above it
    .done = The cell is left out.
    .mend = Write the year.
cell_date_no_day =
    .found = “{ $cell }” names a month and no day
    .done = The cell is left out.
    .mend = Write the day.
cell_date_no_such_day =
    .found = there is no such day as “{ $cell }”
    .done = The cell is left out.
    .mend = Correct the date.
cell_date_year =
    .found = the year of “{ $cell }” can't be right
    .done = The cell is left out.
    .mend = Correct the year.
cell_date_hour =
    .found = there is no such hour as in “{ $cell }”
    .done = The cell is left out.
    .mend = Correct the hour.
cell_date_order =
    .found = “{ $cell }” does not fit the order of day and month in the other dates
    .done = The cell is left out.
    .mend = Write it like the others.
cell_date_other_order =
    .found = “{ $cell }” has day and month in another order than the other dates
    .done = Read the other way round.
    .mend = Write it like the others.
cell_date_serial =
    .found = “{ $cell }” is a spreadsheet's number of a day
    .done = Read as that day.
cell_date_no_hour =
    .found = “{ $cell }” has no hour
    .done = Noon is taken.
cells_more =
    .found = { $count ->
        [one] one more cell of this kind
       *[other] { $count } more cells of this kind
    } in { COUNT($rows) ->
        [one] row { $rows }
       *[other] rows { LIST($rows, most: 12) }
    }
    .done = Treated like those named before.
remark_counted =
    .found = a remark tells of { $count ->
        [one] one egg
       *[other] { $count } eggs
    } ({ READING($field) })
    .done = Counted so.

# ---- rows that are no data ----

row_title =
    .found = “{ $text }” stands above the table
    .done = Not read as data.
row_section =
    .found = “{ $text }” heads the rows below it
    .done = Not read as data.
row_note =
    .found = “{ $text }” is a note between the rows
    .done = Not read as data.
row_repeated =
    .found = the headings stand here once more
    .done = Not read as data.
row_total =
    .found = this row is a total of others ({ $text })
    .done = Not read as a batch.
row_percent =
    .found = this row holds shares ({ $text })
    .done = Not read as a batch.
row_units =
    .found = this row holds units ({ $text })
    .done = Not read as a batch.

# ---- batches, looks, machines ----

batch_lacks =
    .found = { $name ->
        [none] this row
       *[named] “{ $name }”
    } has no usable { FIELDS($lacks) } (read: { $held })
    .done = Left out.
    .mend = Write { FIELDS($lacks) }.
name_twice =
    .found = two batches are called “{ $name }”
    .done = The later one is called “{ $taken }” here.
no_such_batch =
    .found = { $name ->
        [none] the batch is not named
       *[named] there is no batch “{ $name }” on the sheet of batches
    }
    .done = Left out.
    .mend = Write the batch's name as on the sheet of batches.
look_without_date =
    .found = { COUNT($batches) ->
        [one] a look at batch { $batches } has no date
       *[other] looks at batches { LIST($batches, most: 8) } have no date
    }
    .done = The usual days are taken.
    .mend = Write the days of the looks; ages at death become surer.
hatch_without_date =
    .found = { COUNT($batches) ->
        [one] batch { $batches } has no date of the hatch
       *[other] batches { LIST($batches, most: 8) } have no date of the hatch
    }
    .done = The usual day is taken.
look_told_twice =
    .found = batch { $batch }: { READING($field) } is told twice for one look, as { $one } and as { $other }
    .done = The later one is used.
    .mend = Correct one of the two.
machine_taken =
    .found = { COUNT($batches) ->
        [one] batch { $batches } has no incubator
       *[other] batches { LIST($batches, most: 8) } have no incubator
    }
    .done = Taken as { $machine }.
machine_missing =
    .found = { COUNT($batches) ->
        [one] batch { $batches } has no incubator
       *[other] batches { LIST($batches, most: 8) } have no incubator
    }
    .done = Their temperatures are not known.
    .mend = Write which machine it was, or with one machine only keep its log in the folder.
one_log =
    .found = there is one log, of { $machine }, and no column for the machine
    .done = { $count ->
        [one] The batch is taken to have been in it.
       *[other] All { $count } batches are taken to have been in it.
    }
clock_twice =
    .found = { $time } came twice when the clocks were put back
    .done = The first is taken.
    .mend = Nothing, unless it was the second.
clock_never =
    .found = { $time } never was: the clocks were put forward
    .done = Taken as one hour later.
    .mend = Correct the hour.

# ---- files and sheets ----

no_table =
    .found = there is no table of batches
    .done = { $logs ->
        [yes] Only the logs are shown.
       *[no] There is nothing to show yet.
    }
    .mend = Put your sheet (.xlsx, .ods or .csv) into the folder; hatchkit start FOLDER writes a blank one.
no_usable_batch =
    .found = none of the batches in the table can be used
    .done = { $logs ->
        [yes] Only the logs are shown.
       *[no] There is nothing to show yet.
    }
    .mend = See what is said of its rows.
no_row_yet =
    .found = the table of batches has no row yet
    .done = { $logs ->
        [yes] Only the logs are shown.
       *[no] There is nothing to show yet.
    }
    .mend = Write a row for each batch below the headings.
copy_of =
    .found = { $name } is a copy of { $kept }
    .done = Only { $kept }, the newer one, is read.
    .mend = Delete the one that no longer counts.
file_numbers =
    .found = { $name } is a file that only its own program reads
    .done = Not read.
    .mend = In that program: File, Export to, Excel or CSV, into this folder.
file_pdf =
    .found = { $name } is made for printing
    .done = Not read.
    .mend = Put the sheet that it was printed from into this folder, or type the numbers into one.
file_photo =
    .found = { $name } is a picture
    .done = Not read.
    .mend = Type its numbers into a sheet; hatchkit start FOLDER writes a blank one.
file_document =
    .found = { $name } is a text document
    .done = Not read.
    .mend = Copy its table into a spreadsheet, or save it as plain text (.txt).
file_link =
    .found = { $name } is a link to a sheet elsewhere
    .done = Not read.
    .mend = There: File, Download, as .xlsx or .csv, into this folder.
sheet_not_used =
    .found = no table that hatchkit knows{ $seen ->
        [none] { "" }
       *[some] ; seen were: { $seen }
    }
    .done = Nothing of this sheet is used.
    .mend = One column with the date of setting and one with the number of eggs set make it a table of batches.
sheet_broken =
    .found = this sheet can't be understood ({ $reason })
    .done = It is left out, the rest is read.
    .mend = Look for what is unusual in it, and tell us if you find it.
