# Do the records agree with themselves?

check_dates =
    .found = batch { $batch }: { WORD($later, kind: "event") } { $day }, before { $before }
    .done = The dates stay as written; ages that come from them may be wrong.
    .fix = Correct { OR($columns) }{ COUNT($columns_swapped) ->
        [0] { "" }
       *[some] ; day and month may be swapped in { OR($columns_swapped) }
    }.
check_event_day = { WORD($event, kind: "event") } { $day }
event_set_at = set
event_candle1_at = candled first
event_candle2_at = candled again
event_transfer_at = moved to hatch
event_first_hatch_at = first chick out
event_last_hatch_at = last chick out
event_taken_off_at = taken off
check_days =
    .found = batch { $batch }: { WORD($event, kind: "event") } at { $days } days, though the eggs of { WORD($species, kind: "species") } take about { TENTH($usual) } days
    .done = The dates are kept as written.
    .fix = Check { $columns }.
check_part =
    .found = batch { $batch }: { $eggs } { WORD($part, kind: "field") }, more than { $of } { WORD($whole, kind: "field") }
    .done = Both counts are kept.
    .fix = { $column_part } are counted among { $column_whole }; correct one of the two.
field_malpositioned = malpositioned
check_stored =
    .found = batch { $batch }: eggs stored { $days } days
    .done = The figure is kept.
    .fix = Write the days from laying to setting.
check_egg_twice =
    .found = egg { $egg } of batch { $batch } is listed a second time
    .done = Both rows are kept.
    .fix = Give each egg of a batch its own number.
check_no_log =
    .found = incubator { $machine } has batches but no log
    .done = Its temperature counts as not known.
    .fix = Put its log into the folder sensors, and name it in season.toml: [incubators."{ $machine }"] files = ["sensors/..."].
check_no_eggs =
    .found = a log of incubator { $machine }, in which no batch was set
    .done = It is shown, but no batch is laid beside it.
    .fix = Check how the incubator is spelt among the batches and in season.toml.

season_read = { $title } ({ $place ->
        [demo] the demo season that ships with hatchkit
        [years] invented years that ship with hatchkit
       *[folder] { $folder }
    }), read by hatchkit { $version }.
season_no_batch = No batches could be used.
season_batches = { $count ->
        [one] { $count } batch
       *[other] { $count } batches
    } with { $eggs } eggs ({ WORDS($species, kind: "species") }), { $last ->
        [none] set on { DAY($first) }
       *[later] set from { DAY($first) } to { DAY($last) }
    }.
season_no_reading = No temperature readings: what follows says nothing about temperature.
season_readings = { $count } readings from { $machines }.
unknown_batch = There is no batch '{ $batch }' in this season; there are: { $there ->
        [none] none
       *[some] { LIST($there, most: 40) }
    }.{ $near ->
        [none] { "" }
       *[some] {" "}Did you mean '{ $near }'?
    }
unknown_species = There is no species '{ $species }' in hatchkit's table; known are { LIST($known) }. Add it to season.toml under [species].
