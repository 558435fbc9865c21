# hatchkit check: the page on which a person sees how the sheet was read, what is asked, what is to be fixed.

check_title = { $title }: how it was read
check_counts = { $title }: read { $batches ->
        [one] { $batches } batch
       *[other] { $batches } batches
    }, { $eggs ->
        [one] { $eggs } egg row
       *[other] { $eggs } egg rows
    }, { $weights ->
        [one] { $weights } weighing
       *[other] { $weights } weighings
    }, { $readings ->
        [one] { $readings } reading
       *[other] { $readings } readings
    }.
check_clock = Times are shown as in { $timezone }.

check_i_read = I read it like this
check_sheet = { $sheet ->
        [none] { $file }
       *[named] { $file }, sheet { $sheet }
    }
check_sheets_alike = { $file }: { COUNT($sheets) ->
        [one] sheet { $sheets }
       *[other] sheets { LIST($sheets, most: 6) } alike
    }
check_head_heading = your heading
check_head_taken = taken as
check_head_example = an example
check_head_sure = how sure
check_head_why = why
check_no_heading = (no heading, column { PLAIN($place) })
check_plain = { COUNT($pairs) ->
        [one] Sure besides: { $pairs }.
       *[other] { COUNT($pairs) } more, sure: { LIST($pairs, most: 12) }.
    }
check_pair = { $heading } = { $taken }
check_more_sheets = { $sheets ->
        [one] One more sheet was read
       *[other] { $sheets } more sheets were read
    } without a doubt; --full shows all.

ledger_head = Do the eggs add up?
ledger_term = { $eggs } { $heading }
ledger_sum = { $name }: { $set } set = { $terms }
ledger_nothing = { $name }: { $set } set, nothing more told
ledger_adds_up = { $sum }: adds up.
ledger_short = { $sum }: { $rest ->
        [one] one egg is not told of.
       *[other] { $rest } eggs are not told of.
    }
ledger_over = { $sum }: { $over ->
        [one] one egg too many.
       *[other] { $over } eggs too many.
    }
ledger_unknown = { $sum }.
ledger_more = and { $count } more
ledger_total = The eggs add up in { $rows } of { $of ->
        [one] one row.
       *[other] { $of } rows.
    }

questions_head = { $count ->
        [one] One question
       *[other] { $count } questions
    }, the most consequential first
questions_how = Answer: hatchkit check FOLDER --ask, or notebook 0.
question_rows = { $rows ->
        [0] No number depends on it.
        [one] One row depends on it.
       *[other] { $rows } rows depend on it.
    }
question_where = { $sheet ->
        [none] { $file }
       *[named] { $file }, sheet { $sheet }
    }
question_meaning = What is the column “{ $heading }”? Taken for now: { $choice }.
question_species = { $written ->
        [none] Which birds are these? Nothing on the sheet says it;
       *[some] Which birds are “{ $written }”? It is no bird that hatchkit knows;
    } taken for now: { $choice }.
question_year = Which year is it? Nothing on the sheet says it; taken for now: { $choice }.
question_day_first = Which comes first in your dates? Both orders are possible; taken for now: { $choice }.
question_diary = { $names ->
        [none] Some batches of the diary do not add up as I read its sentences.
       *[some] As I read the sentences of the diary, the eggs do not add up in: { $names }.
    } Taken for now: { $choice }. See --full for what was read; write such a batch as a row of numbers to be sure.
question_sums = However I read this sheet, most of its rows hold more eggs than were set, so that some column must mean something else. Taken for now: { $choice }.
question_mixed_birds = { $written ->
        [none] A batch holds several kinds of birds. Which one counts?
       *[some] “{ $written }” names several kinds of birds in one batch. Which one counts?
    } Taken for now: { $choice }.
question_machine = In which machine were the eggs? Taken for now: { $choice }.
question_log_machine = { $heading ->
        [none] Which machine does the log { $file } belong to?
       *[named] Which machine does the probe “{ $heading }” of the log { $file } belong to?
    } Taken for now: { $choice }.
question_log_date_order = Which comes first in the dates of “{ $heading }”? Taken for now: { $choice }.
question_log_unit = In which unit is “{ $heading }”? Taken for now: { $choice }.
question_log_scale = “{ $heading }” seems to lack its decimal mark. Taken for now: { $choice }.
question_log_column = What is the column “{ $heading }” of the log? Taken for now: { $choice }.
question_log_zone = Did the clock of the log { $file } show summer time? It names an offset and speaks of it. Taken for now: { $choice }.
question_log_clock = The clock of the log { $file } did not follow the change of the hour and makes a step of an hour later. Was it put right by hand then? Taken for now: { $choice }.
question_log_encoding = How does a line of the log { $file } read: { OR($names) }? Taken for now: { $choice }.
question_other = { $heading ->
        [none] This could be read in more than one way.
       *[named] “{ $heading }” could be read in more than one way.
    } Taken for now: { $choice }.
choice_adds = { $heading ->
        [none] If it is { $choice }, the eggs add up in { $adds } of { $of ->
            [one] one row
           *[other] { $of } rows
        }
       *[named] If “{ $heading }” is { $choice }, the eggs add up in { $adds } of { $of ->
            [one] one row
           *[other] { $of } rows
        }
    }
choice_adds_next = if it is { $choice }, in { $adds }
choices_add = { $first }{ $rest ->
        [none] .
       *[more] ; { $rest }.
    }
choices_are = It may be: { OR($choices) }.
choice_line = { $adds ->
        [none] { $choice }
       *[known] { $choice } (the eggs add up in { $adds } of { $of ->
            [one] one row
           *[other] { $of } rows
        })
    }
choice_now = { $line }, as taken now

value_day_first = day before month
value_used = used as read
value_month_first = month before day
value_yes = yes
value_no = no
value_True = day before month
value_False = month before day
value_nothing = nothing; left out of the rates until it is told
value_left_out = left out of the rates
value_separate = each kind a batch of its own

ask_number = Number, Enter to keep, q to end:
ask_again = { $most ->
        [one] Type 1, press Enter, or type q.
       *[other] Type a number from 1 to { $most }, press Enter, or type q.
    }
ask_nothing = There is nothing to ask: no number depends on an open reading.
ask_kept = { $answers ->
        [one] One answer is
       *[other] { $answers } answers are
    } kept in { $path }. Delete that file to be asked anew; your sheet was not touched.
ask_left = { $questions ->
        [0] Nothing is left to ask.
        [one] One question is left.
       *[other] { $questions } questions are left.
    }

problems_lost = Fix first: not used at all ({ $count })
problems_doubtful = Then: used, but may be wrong ({ $count })
problems_note = To know: what was assumed ({ $count })
problems_none = Nothing to fix.
problems_fix = Fix: { $fix }
problems_more_like = and { $count } more like { $count ->
        [one] it
       *[other] these
    }
problems_folded = { $count ->
        [one] One more kind of remark
       *[other] { $count } more kinds of remarks
    }: hatchkit check FOLDER --full.
problems_first = The first { $most } are shown.
problems_head_where = Where
problems_head_found = Found
problems_head_done = Done
problems_head_fix = How to fix it
place_more_files = { $file } and { $count ->
        [one] 1 more file
       *[other] { $count } more files
    }
place_sheet = sheet { $sheet }
place_rows = { COUNT($rows) ->
        [one] row { $rows }
       *[other] rows { LIST($rows, most: 8) }
    }
place_columns = { COUNT($columns) ->
        [one] column { $columns }
       *[other] columns { LIST($columns, most: 3) }
    }

assumed_sure = As read: { $files ->
        [none] the records
       *[other] { $files }
    }, { $columns ->
        [one] one column
       *[other] { $columns } columns
    }, every one sure; the eggs add up in { $rows } of { $of ->
        [one] one row
       *[other] { $of } rows
    }.
assumed_sure_unsummed = As read: { $files }, { $columns ->
        [one] one column
       *[other] { $columns } columns
    }, every one sure.
assumed_likely = Assumed in reading (likely): { $likely }.
assumed_open = Assumed in reading, still open: { $open }. { $rows ->
        [0] No number below hangs on it.
        [one] The numbers of one row hang on it
       *[other] The numbers of { $rows } rows hang on it
    }{ $rows ->
        [0] { "" }
       *[some] : { $fields }; answer with hatchkit check FOLDER --ask.
    }
assumed_pair = “{ $heading }” is { $taken }
assumed_value = { $code ->
        [species] the birds are { $taken }
        [year] the year is { $taken }
        [day_first] dates are { $taken }
        [diary] batches of the diary whose eggs do not add up are { $taken }
        [sums] a sheet most of whose rows hold too many eggs is { $taken }
        [machine] the machine is { $taken }
        [log_machine] the log is of { $taken }
       *[other] { $taken }
    }
assumed_everything = all of their numbers
assumed_readings = temperature and humidity

form_keep = Keep
form_keep_why = Keep these choices beside your season, so that they are not asked again
form_others = Was another column taken wrongly?
form_nothing_chosen = Nothing was chosen yet.
form_again = Run this notebook again from the top to see your season read so.
form_whole = { $code ->
        [species] Birds
        [year] Year
        [day_first] Dates
        [diary] Diary
        [sums] A sheet that does not add up
        [mixed_birds] Birds in one batch
        [machine] Machine
        [log_machine] Machine of the log
        [log_encoding] Letters of the log
        [log_zone] Time zone of the log
        [log_clock] Clock of the log
       *[other] Choice
    }
