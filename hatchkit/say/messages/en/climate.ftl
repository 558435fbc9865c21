# What machine, thermometer, clock and scale tell, to who looks further.

lasting = { $unit ->
        [min] { EGGS($number) } min
        [h] { TENTH($number) } h
       *[days] { TENTH($number) } days
    }

## What in a curve speaks for its word

evidence_jumped = jumped { STEP($in_k) } and back { STEP($out_k) } between two readings, with no bend
evidence_probes = the probes of the incubator differ by { STEP($apart_k) } more than before: one of them is wrong
evidence_loading = in the first hours after setting; { STEP($depth_k) } below what it should be
evidence_unlogged = { DEGREES($extreme_c) } at its { $worst ->
        [coldest] coldest
       *[warmest] warmest
    }, { $since ->
        [setting] out of range from setting on for { $whole_h }
        [too_long] out of range from setting on for { $whole_h }, longer than eggs take to warm up
       *[unknown] and what was just before is not logged
    }{ $stayed ->
        [yes] {" "}and stayed warm for { $whole_h }
       *[no] { "" }
    }
evidence_fell_slowly = fell { STEP($depth_k) } slowly, over { $over_h }
evidence_fell_fast = fell { STEP($depth_k) }, most of it within { $most_h }{ $then ->
        [ajar] {" "}and stayed low for { $whole_h } (left ajar?)
        [back] , back in range after { $whole_h }
       *[open] { "" }
    }{ $dry_pct ->
        [none] { "" }
       *[drier] ; humidity fell { EGGS($dry_pct) } %RH, as when room air comes in
    }
evidence_cooled = fell { STEP($fell_k) } over { $over_h }, at most { STEP($per_hour_k) } per hour, down to { DEGREES($extreme_c) }: as a box cools without heat{ $damp_pct ->
        [none] { "" }
       *[damper] ; humidity rose { EGGS($damp_pct) } %RH, as in a closed box
    }
evidence_fell = fell { STEP($depth_k) } within { $over_h }{ $coarse ->
        [yes] ; the log's steps are too long to see the curve
       *[no] { "" }
    }
evidence_rose = rose { STEP($depth_k) } over { $over_h } to { DEGREES($extreme_c) }{ $stayed ->
        [yes] {" "}and stayed warm for { $whole_h }
       *[no] { "" }
    }
evidence_beside = ran at about { DEGREES($at_c) }, steadily { $off_k ->
        [0] just
       *[far] { STEP($off_k) }
    } { $side ->
        [below] below
       *[above] above
    } the range for { $hatching ->
        [yes] hatching in{" "}
       *[no] { "" }
    }{ $air ->
        [still] still air
       *[fan] air moved by a fan
    } ({ DEGREES($low_c) } to { DEGREES($high_c) }{ $air ->
        [still] {" "}at the top of the eggs
       *[fan] { "" }
    }; about { DEGREES($wanted_c) } is wanted{ $assumed ->
        [yes] ; season.toml does not say whether it has one
       *[no] { "" }
    })

## One spell in full

spell_told = { $event }. Incubator { $incubator }, from { MINUTE($start) }, { $lasting }: { $on ->
        [egg] the estimated egg too { $kind ->
            [warm] warm in air of at most
           *[cold] cold in air of at least
        } { DEGREES($extreme_c) }
       *[air] the air { $level ->
            [watch] a little{" "}
            [alarm] clearly{" "}
            [serious] far{" "}
           *[other] { "" }
        }too { $kind ->
            [warm] warm
           *[cold] cold
        }, at worst { DEGREES($extreme_c) }
    }. { $looks_like ->
        [unclear] Not clear from the curve
       *[known] Looks { WORD($looks_like, kind: "spell") }
    }: { $evidence }. Batch { $batch } was { TENTH($day_start) } days old; its eggs reached about { DEGREES($egg_extreme_c) } ({ DEGREES($egg_extreme_low_c) } to { DEGREES($egg_extreme_high_c) }, 8 chances in 10).
spell_beside = { $event }. Incubator { $incubator }, from { MINUTE($start) }, { $lasting }: it { $evidence }. Batch { $batch } was { TENTH($day_start) } days old when that began; its eggs were at about { DEGREES($egg_extreme_c) } ({ DEGREES($egg_extreme_low_c) } to { DEGREES($egg_extreme_high_c) }, 8 chances in 10).
spell_hole = For { SHARE($gap_share) } of that time nothing was logged: what happened then is not known.
heat_little = Too little for the heat harm seen in experiments; days on end above the range may still slow or tire embryos.
heat_told = Heat: { $heat_band ->
        [low] low
        [watch] middling
       *[high] high
    }. Its worst 24 h equal { TENTH($heat_dose_h) } h of the egg at { DEGREES($dose_at_c) }, { WHOLE($share) } of the dose that cost half the hatch at about this age ({ EGGS($half_h) } h in air of { DEGREES($half_c) } on day { EGGS($half_day) }; { $source }). This orders disturbances by heat; it does not predict how many die.
heat_common = Common advice warns of { DEGREES($warned_c) } for 15 minutes; in an experiment 24 h at { DEGREES($warned_c) } on day 16 did no major harm (Thompson, Wilson & Brown 1976), so take that advice as caution, not as a verdict.
cold_unknown = What it cost is not known: nothing usable was logged.
cold_cost = { $lost_hours ->
        [0] It cost next to no development.
       *[hours] It cost about { TENTH($lost_hours) } h of development.
    }
cold_young = In the first days the embryo lies right under the shell and cools faster than the egg as a whole (by { STEP($bench_k) } in 10 minutes on a bench, Am. J. Physiol. 234:R183, 1978): keep openings short.
cold_below_10 = The eggs were below { DEGREES($below_c) } for { $lasting }; 17-day embryos begin to suffer after about 4 h of that.
cold_below_20 = The eggs were below { DEGREES($below_c) } for { $lasting }; 17-day embryos came through 24 h at { DEGREES($well_c) } unharmed, at { DEGREES($ill_c) } they did not (Can. J. Anim. Sci. about 1970).

## Machines and thermometers

machine_nothing = Incubator { $incubator }: nothing was logged while eggs were in.
machine_steady = Incubator { $incubator }: { WHOLE($share_logged) } of the time with eggs was logged; on ordinary days { DEGREES($mean_c) } on average, 8 readings in 10 within { STEP($swing_c) }{ $off_set_point_c ->
        [none] { "" }
       *[off] , { SIGNED($off_set_point_c) } from its set point
    }{ $day_night_c ->
        [none] { "" }
       *[apart] ; days less nights { SIGNED($day_night_c) }
    }. In range { SHARE($share_in_band) } of the logged time, at alarm level or beyond { SHARE($share_alarm) }; { $opened ->
        [never] the log shows no opening
        [seldom] opened less than once a month as far as the log shows
       *[often] opened about { TENTH($a_week) } times a week as far as the log shows
    }.
machine_coarse = With { EGGS($step_minutes) } min between readings a short spike may be missed, and up to { WHOLE($unseen_share) } of it would reach a hen's egg.
probe_unknown = Incubator { $incubator }, probe { $probe }: it was never checked, and nothing else tells of its error.
probe_told = Incubator { $incubator }, probe { $probe }: { LIST($told) }.
probe_offset = a check gave an offset of { SIGNED($offset_c) }, which is applied
probe_against = it reads { SIGNED($differs_c) } against probe { $other_probe }
probe_by_clock = the hatch times of { $clock_batches ->
        [one] one batch
       *[other] { $clock_batches } batches
    } would fit a probe that { $true ->
        [yes] reads true
       *[no] is { SIGNED($clock_bias_c) } off
    }{ $clock_low_c ->
        [none] { "" }
       *[range] {" "}({ SIGNED($clock_low_c) } to { SIGNED($clock_high_c) })
    }
probe_do_disagree = Check both beside a fever thermometer near { DEGREES($right_c) }.
probe_do_high = Check it: if it reads high, the eggs were cooler than the log says.
probe_do_low = Check it: if it reads low, the eggs were warmer than the log says.

## The clock

clock_names = { $verdict ->
        [on_time] Hatched within what such a forecast can tell
        [not_seen] Without hatch times
       *[cannot_tell] Not to be judged, for want of a log
    } ({ COUNT($batches) } of { $of }): { LIST($batches) }.
clock_no_batch = No batch has a hatch that could be timed.
clock_not_expected = Batch { $batch }: no expected hatch, because the species or the time of setting is not known.
clock_told = Batch { $batch }: the middle of the hatch was due about { $by_day ->
        [yes] { DATE($expected_at) }
       *[no] { MINUTE($expected_at) }
    } (± { $half_h }; usually day { TENTH($usual_day) }, { $storage_h ->
        [none] storage not known
       *[known] storage { HOURS($storage_h) }
    }, { $temperature_h ->
        [none] temperature not known
       *[known] temperature { HOURS($temperature_h) }
    }){ $came ->
        [not_seen] ; no hatch times are written down.
        [then] {" "}and came then
        [earlier] {" "}and came { EGGS($hours) } h earlier
       *[later] {" "}and came { EGGS($hours) } h later
    }{ $verdict ->
        [not_seen] { "" }
        [cannot_tell] , but only { WHOLE($share_logged) } of the time was logged: early or late cannot be told.
        [on_time] : within what such a forecast can tell.
       *[off] , beyond the forecast's doubt. A probe that reads { STEP($probe_error_c) } too { $reads ->
            [high] high
           *[low] low
        } would explain it by itself; so could a wrong time of setting or the flock.
    }
clock_earlier = The middle of a hatch is put { EGGS($before_h) } h before the trade's day for hens, in proportion for others: most of a good hatch is out by that day. The planner names the day itself, which is the one to be ready for.

## Water

water_told = Batch { $batch }: { SHARE($loss_share) } of the weight lost by day { EGGS($loss_day) }, { SHARE($projected_share) } to be expected at transfer ({ SHARE($projected_low) } to { SHARE($projected_high) }; target { WHOLE($target_low) } to { WHOLE($target_high) } by day { EGGS($transfer_day) }): { $verdict ->
        [on_target] on target
        [too_little] too little
        [too_much] too much
       *[cannot_tell] cannot tell
    }.
water_from_shells = Batch { $batch }: not weighed. From shells of its kind and humidity alone about { WHOLE($projected_share) } ({ WHOLE($projected_low) } to { WHOLE($projected_high) }; target { WHOLE($target_low) } to { WHOLE($target_high) } by day { EGGS($transfer_day) }): weigh some eggs to know.
water_next = For such eggs { WORD($next, kind: "humidity") }{ $next ->
        [possible] {" "}{ EGGS($rh_next_pct) } %RH
       *[other] { "" }
    } from the start would hit the middle of the target{ $now ->
        [none] { "" }
       *[told] ; from now on it would take { WORD($now, kind: "humidity") }{ $now ->
            [possible] {" "}{ EGGS($rh_now_pct) } %RH
           *[other] { "" }
        }
    } (logged: { EGGS($rh_pct) } %RH).
humidity_possible = about
humidity_too_dry = drier air than an incubator can make
humidity_too_damp = damper air than is safe
water_roughly = Not weighed, so known only roughly, from shells of their kind: { LIST($batches) }.
water_not_known = Not weighed, so not known: { LIST($batches) }.
water_weigh = Weigh one tray at setting and at each candling: it takes minutes and says which humidity your eggs need.
water_why_no_species = Batch { $batch }: the species or the time of setting is not known.
water_why_no_humidity = Batch { $batch }: no weighings and no humidity in the log.
water_why_namesakes = Batch { $batch }: which egg was weighed is not told.
water_why_no_living = Batch { $batch }: no weighed egg was alive and whole.
water_why_one_egg = One egg only, and eggs of one flock differ more than the target is wide.
water_why_reaches_in = Outside the target, but the interval reaches into it.
water_why_too_wide = Inside the target, but the interval is over twice as wide as the target.
water_why_taken_off = Eggs were taken off between weighings: the interval allows for it.
water_why_heavy = { EGGS($set_g) } g an egg is far above the usual for its kind: was the tray left on the scale? A tray left in understates the loss.

## What a disturbance is called

stage_opening = a lid or door opened
stage_drift = a slow drift
stage_outage = heating lost (power or heater)
stage_overheating = overheating
stage_sensor = a faulty reading rather than real air
stage_loading = the eggs going in
stage_steady = a machine that runs beside its range for days
stage_unclear = not clear from the curve
