# What a question is refused for.

no_level = There is no level '{ $level }'; known are { LIST($known) }.
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
no_such_dose = There is no dose '{ $dose }'; choose one of { LIST($known) }.
no_such_unit = Temperatures can be shown in C or F, not in '{ $unit }'.
