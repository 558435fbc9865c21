# The plan for the next set: how many eggs, from what, when, what to change; its sheet to hang beside the machine.

plan_title = Plan: eggs of { $name }, set on { MINUTE($set) }
plan_chance = { $times ->
        [none] more than 99 times in 100
       *[known] { $times } times in { $of }
    }
plan_eggs = Set { EGGS($eggs) } { $name } eggs to have at least { EGGS($chicks) } good { EGGS($chicks) ->
        [one] chick
       *[other] chicks
    } { $chance }; expect about { EGGS($middle) } ({ EGGS($low) } to { EGGS($high) } in 8 sets of 10).
plan_too_many = At least { EGGS($chicks) } chicks { $chance } cannot be planned in one set: at the hatch rates seen and published it would take more than { $most } eggs, or rates that vary less. Plan several sets, or fewer chicks.
plan_rests_none = This rests on no own batch of this species, only on a published level of { WHOLE($level) } of eggs set: the usual hatch is put at { WHOLE($mean) } ({ WHOLE($low) } to { WHOLE($high) }), and batches are let differ as much as is thought usual.
plan_rests = This rests on { $batches ->
        [one] 1 own batch
       *[other] { $batches } own batches
    } ({ PLAIN($hatched) } good chicks of { PLAIN($set) } eggs) and on a published level of { WHOLE($level) } of eggs set. Together they put the usual hatch at { WHOLE($mean) } ({ WHOLE($low) } to { WHOLE($high) }), and let batches differ { $batches ->
        [one] as much as is thought usual, since one batch shows no spread
       *[other] as much as yours did
    }.
plan_few = With so few batches the published level weighs much.
plan_left_out = { COUNT($left) ->
        [one] Batch { LIST($left) } is
       *[other] Batches { LIST($left) } are
    } left out: the records contradict themselves.
plan_driver = One batch drives this number: without { $batch } ({ PLAIN($hatched) } good chicks of { PLAIN($set) } eggs) it would be { PLAIN($without) } eggs. If you know that its cause is fixed, plan between the two.
plan_when = Eggs in on { DATE($set) } { PLAIN($year) } at { HOUR($set) }{ COUNT($notes) ->
        [0] { "" }
       *[other] { " " }({ $notes })
    }, to hatch from { DATE($first) } to { DATE($last) }.
plan_note_no_hour = no hour was given, so noon is taken, as in the sheets
plan_note_passed = a time that has passed
plan_note_collect = the first evening with { PLAIN($days) } days to collect the eggs
plan_note_free = the day after the last batch is out
plan_changes_none = { $batches ->
        [0] No batch of this species is on record, so nothing can be said of your settings.
       *[other] Nothing in this season's records calls for another setting.
    }
plan_changes = { $count ->
        [one] First change: { $first }.
       *[other] { $count } things to change; the first: { $first }.
    }

paper_step = What
paper_write = Write down
paper_change = Change this time
paper_moment = { WEEKDAY($time) }, { MINUTE($time) }

step_collect = Start to collect eggs for this set
step_machine_on = Run the machine empty, check the thermometer beside a second one
step_warm_up = Bring the eggs to room temperature
step_set = Set the eggs, weigh them, number them
step_candle1 = Candle (first time), weigh, write down clear and dead
step_candle2 = Candle (second time), weigh, write down clear and dead
step_care_day = From today an embryo is treated as one that may feel
step_transfer = Weigh, candle, stop turning, move down to hatch
step_first_hatch = First chicks may come from now on
step_last_hatch = Last chicks should be out by now
step_take_off = Take off the hatch once the chicks are dry
step_open_unhatched = Candle, then open the unhatched eggs that do not smell, froth or leak, and write down what you find

write_set = eggs in, weight
write_candle1 = clear / dead, weight
write_candle2 = clear / dead, weight
write_transfer = clear / dead / moved, weight
write_first_hatch = first chick, hour
write_last_hatch = last chick, hour
write_take_off = chicks / culls / pipped dead
write_open_unhatched = infertile / early / mid / late / lying wrongly
write_machine_on = probe - second thermometer

changed_cause =
    .what = { WORD($cause, kind: "cause") }{ $machine ->
            [none] { "" }
           *[named] { " " }(incubator { $machine })
        }
    .to = { WORD($cause, kind: "do") }{ $target ->
            [none] { "" }
           *[other] { " " }{ $target }
        }
    .why = About { EGGS($eggs) } eggs of { LIST($where, most: 5) } are put down to it.
    .now = { $shown ->
            [none] the pattern of the losses
           *[other] { $shown }
        }
    .how_sure = { $sure ->
            [very] very likely
            [probable] probable
           *[several] one of several that fit
        } ({ SHARE($share) })
changed_no_log =
    .what = Log the temperature
    .to = A logging thermometer at egg height.
    .why = Without a log no loss can be set against heat or cold.
    .now = no readings
    .how_sure = certain: nothing was kept
changed_probe_off =
    .what = Check the probe of incubator { $machine } (beside a clinical thermometer near { DEGREES($right) })
    .to = If the check agrees, write { $way ->
            [high] -
           *[low] +
        }{ TENTH($off) } as probe_offset_c in season.toml (in °C), and move the setting to match.
    .why = The hatching hours of { $batches ->
            [one] 1 batch
           *[other] { $batches } batches
        } point to it.
    .now = reads about { STEP($off) } { $way ->
            [high] high, so the eggs were cooler than it says
           *[low] low, so the eggs were warmer than it says
        }
    .how_sure = fairly sure of the side, not of the size; check before you change
changed_probe_unchecked =
    .what = Check the probe of incubator { $machine }
    .to = Read it beside a clinical thermometer near { DEGREES($right) }; in ice water only if it may get wet, and what it is off there need not hold in the warm; write what it is off into season.toml, line probe_offset_c.
    .why = Every word on temperature holds only as far as the probe reads true.
    .now = no check on record
    .how_sure = certain: no check is kept
changed_temperature =
    .what = Setting of incubator { $machine }
    .to = { DEGREES($wanted) }
    .why = It ran { STEP($off) } { $way ->
            [high] above
           *[low] below
        } the table's figure outside excursions.
    .now = { DEGREES($mean) } on average
    .how_sure = sure of the log; see the probe’s check
changed_humidity =
    .what = Humidity until transfer
    .to = { EGGS($to) } % RH
    .why = The eggs were on the way to lose { SHARE($loss) } by transfer; { SHARE($low) } to { SHARE($high) } is wanted. Go there in two sets if it is far.
    .now = { EGGS($now) } % RH
    .how_sure = from the weights of { $batches ->
            [one] 1 batch
           *[other] { $batches } batches
        }; a humidity probe may be off by 3 points
changed_storage =
    .what = Set sooner after laying
    .to = At most { EGGS($best) } days.
    .why = { $over } of { $known } batches were kept longer (longest { EGGS($longest) } days). Hatch falls with longer storage, and hatches come late.
    .now = { $over } of { $known } batches kept longer than { EGGS($best) } days (longest { EGGS($longest) })
    .how_sure = well known; how much it costs your eggs is not
changed_candling =
    .what = Candle about day { EGGS($day) } when something went wrong before it
    .to = A look two days after any excursion.
    .why = { $times ->
            [one] Once
           *[other] { $times } times
        } this season deaths before an excursion could not be told from deaths after it.
    .now = no look between excursion and next candling
    .how_sure = sure that it would have told; not that it would have changed the verdict
changed_record =
    .what = Write down: { WORD($need, kind: "need") }
    .to = Keep it for every batch.
    .why = It was missing in { $lacking } of the last { $asked } batches, and would weigh much in naming a cause.
    .now = { $asked ->
            [one] not kept for your one batch
           *[other] missing in { $lacking } of the last { $asked } batches
        }
    .how_sure = certain: it was not there

need_temperature_from_setting_to_take-off__keep_the_logger_running_ = temperature from setting to take-off (keep the logger running)
need_hours_of_the_first_and_the_last_chick = hours of the first and the last chick
need_weights_at_setting_and_at_transfer = weights at setting and at transfer
need_humidity_while_set__with_the_temperature_ = humidity while set (with the temperature)
need_humidity_while_hatching__with_the_temperature_ = humidity while hatching (with the temperature)
need_days_that_the_eggs_were_kept = days that the eggs were kept
need_age_of_the_laying_flock = age of the laying flock
need_row_and_column_of_each_egg_on_the_tray = row and column of each egg on the tray
need_how_many_embryos_among_the_opened_late_dead_lay_wrongly = how many embryos among the opened late dead lay wrongly
need_rotten_eggs = rotten eggs
need_cracked_eggs = cracked eggs
need_whether_the_eggs_came_by_post = whether the eggs came by post
need_clears_opened__no_germ__or_died_early = clears opened: no germ, or died early

target_temperature = Hold { DEGREES($wanted) }{ $machine ->
        [none] { "" }
       *[named] { " " }in incubator { $machine }
    }.
target_humidity = Hold { EGGS($to) } % RH until transfer.
target_humidity_range = Hold { EGGS($low) } to { EGGS($high) } % RH{ $where ->
        [setter] { " " }until transfer
       *[hatcher] { " " }while hatching
    }.
target_storage = At most { EGGS($best) } days.
step_cooling = { $species ->
        [muscovy] Cool the eggs for half an hour and spray them with water of { DEGREES($water_c) }, three times a week until the transfer
        [duck] Spray the eggs lightly, if you do; in Mallards misting more than doubled the hatch, for other ducks it is custom
        [goose] Cool the eggs for some minutes and spray them, if you do: custom, no trial that we have read
        [mulard] Cool and spray as for Muscovy, if you do: custom, no trial that we have read
       *[swan] Cool and spray as for geese, if you do: custom, no trial that we have read
    }
why_cooling = Until the transfer; not in the last three days.
why_collect = Best hatch from eggs kept at most { EGGS($best) } days; beyond { EGGS($most) } days expect little. Keep them at 10-18 °C and about 70 % RH, and turn them daily.
why_machine_on = A day shows the night’s swing; two to three hours are the least.
why_warm_up = Slowly, so that they do not sweat.
why_set = The hour of setting is hour 0 of everything below. Eggs take 6 to 8 h to warm through: leave the setting alone for two days.
why_candle1 = Take out and open what is clear or dead, and write down how far it had come.
why_care_day = Candle before opening any egg; the strictest published day is taken.
why_transfer = Raise humidity to { EGGS($low) }-{ EGGS($high) } % RH and leave the lid shut until the hatch is done.
why_first_hatch = Half a hatch window of { EGGS($window_h) } h and { EGGS($doubt_h) } h of doubt before the middle, which is put at the trade’s days here. The hatch clock of the review puts it { EGGS($earlier_h) } h earlier, as most chicks come before the trade’s day; the doubt covers both.
why_last_hatch = Half a hatch window and the same doubt after the middle.{ $longest ->
        [none] { "" }
       *[other] { " " }By other texts or breeds it takes up to { TENTH($longest) } days.
    }
why_take_off = About { EGGS($drying_h) } h to dry; the yolk carries a chick for two days.
why_open_unhatched = Late chicks have had two more days. See the breakout guide and its cautions.
why_candle2 = Take out and open what is clear or dead, and write down how far it had come.
