# What a question is refused for.

no_column = The batches have no column '{ $column }' to split by; there are, for example, { LIST($there) }.
one_column = Batches are split by one column at a time: by='{ $column }', not by={ $given }. For two at once, add a column to the batches that holds both. There are, for example, { LIST($there) }.
clears_out_of_order = Opened clears must be between 1 and the clears, these at most the eggs set, and the dead among them at most the opened.
no_hatch_to_chart = No finished batch to chart yet.
no_such_stage = There is no stage '{ $stage }'; there are { LIST($known) }.
stage_not_counted = No finished batch has a full count of { WORD($stage, kind: "loss") }: nothing to chart.
no_eggs_to_chart = No finished batch of { WORD($species, kind: "species") } has eggs to chart.
no_interval_method = There is no interval method '{ $method }'; known are { LIST($known) }.
count_beyond_total = A count must lie between 0 and the total that it is taken from.
share_without_eggs = A share needs at least one batch with eggs.
own_level_lacks = An own level needs species, stage and a share between 0 and 1, not { $given }.
own_level_of = The denominator of an own level is set, fertile or transferred, not { $given }.
too_few_stretches = A two-phase shape needs deaths in at least 5 different stretches of days; with fewer looks the plain estimate is all that the records can give.
ages_uneven = after_day, by_day and eggs must have the same length.
ages_without_egg = Ages at death need at least one egg.
ages_backward = Each interval must end after it begins: by_day above after_day.
no_limits = There is no set of stage limits '{ $name }'; known are { LIST($known) }.
limits_with_holes = Own stage limits must start at day 0 and follow one another without holes, for example early 0 to 7, mid 7 to 14, late 14 to 21.
no_such_split = Stages are by development or by candling, not '{ $given }'.
no_such_air = Air can be { LIST($known) }; '{ $air }' is not known.
readings_in_disorder = Readings must be in the order of time before the egg's temperature is worked out.
no_such_unit = Temperatures can be shown in C or F, not in '{ $unit }'.
not_one_of = { $name } '{ $given }' is not known; known are { LIST($known) }.
whole_number = { $name } must be a whole number from { PLAIN($least) } up, not { $given }.
end_not_known = Nothing is known of how batch '{ $batch }' ended, so no cause can be weighed.
set_time_none = '{ $given }' is no time to set eggs; write it like 2026-04-03 18:00, in your own wall clock.
set_time_misread = '{ $given }' { $why ->
        [year_odd] has a year that cannot be right
        [year_none] has no year
       *[no_date] is not a date
    }; write it like 2026-04-03 18:00, in your own wall clock.
set_time_two_ways = '{ $given }' can be { DATE($one) } or { DATE($other) }: write { $write_one } or { $write_other }, or say [sheets] day_first = true (or false) in season.toml.
set_time_skipped = { HOUR($time) } on { DAY($time) } never comes in { $zone }: the clocks go forward then. Give an hour that the clock shows.
set_time_twice = { HOUR($time) } on { DAY($time) } comes twice in { $zone }: the clocks go back that night. Give an hour that comes once.
plan_no_species = The season has no batch, so say which species the plan is for (species=...).
plan_sure = sure is a probability between 0 and 1 (for example 0.9), not { $given }.
no_end_on_record = No batch has its end on record, so it cannot be said what the season lost.
no_batch_yet = There is no batch in this season yet, so there is no hatch to look into.
no_end_to_look_at = No batch of this season has its end on record: name the batch to look at.
not_an_answer = { $path } is not an answer file that hatchkit wrote ({ $why }).
folder_holds_other = { $path } holds something else, which would be replaced: name a new folder.
folder_not_empty = { $path } is not empty; name a new folder.
answer_in_season = The answer must not lie in the season folder; name a file elsewhere.
planted_often = { $cause } cannot be planted { $times } times; these can: { LIST($known) }.
lesson_batches = A season of a lesson needs at least two batches: one to ask about, one to compare with.
no_exercise = There is no exercise '{ $name }'; the first word after check( must stay as it was.
no_folder_for = There is no folder { $folder } to write { $name } into; make it first.
marks_in_folder = { $path } is a folder; name a file for the marks.
not_marks = { $path } exists and is not a file of marks, so it is not written over; name a new file.
no_answer_book = { $folder } holds no answer book ({ $book }); it is not a lesson folder.
answer_book_unread = { $path } cannot be read; put back the file that hatchkit wrote.
answer_book_lacks = { $path } has no column { LIST($columns) }: another program saved it anew, or an older hatchkit wrote it. Put back the file that hatchkit wrote, or make the lesson anew.
not_there = { $path } does not exist.
no_answer_sheet = There is no answer sheet in { $path }; an answer sheet is a table with the headings { LIST($headings) }.{ COUNT($told) ->
        [0] { "" }
       *[other] { " " }What was found: { LIST($told) }
    }
