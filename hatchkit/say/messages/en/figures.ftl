# Words on pictures (drawn_*) and what each picture tells, for those who cannot see it (picture_*).

drawn_temperature = Temperature (°{ $unit })

# How losses go with a spell's dose

drawn_dose_title = Embryos lost (% of those alive at the start)
drawn_dose_axis = Dose of heat or cold in the egg
    (1 more: about twice the degree-hours)
drawn_dose_range = usual
    without a
    spell
drawn_no_spell = { $batches ->
        [one] no spell (1 batch)
       *[other] no spell ({ $batches } batches)
    }

picture_losses_against_dose = { $hit ->
        [0] No batch met a spell of heat or cold in the egg that counts, so there is nothing to compare.
       *[other] { $above ->
            [0] Of { $hit ->
                [one] the 1 batch
               *[other] the { $hit } batches
            } that met a spell of heat or cold in the egg, none lost more embryos than batches without one plausibly lose.
           *[other] { $above } of { $hit } { $hit ->
                [one] batch
               *[other] batches
            } that met a spell of heat or cold in the egg lost more embryos than batches without one plausibly lose: { $worst } lost most, { SHARE($worst_share) } (plausible without a spell: at most { SHARE($worst_high) }).
        } Of the { $free ->
            [one] 1 batch
           *[other] { $free } batches
        } without such a spell, { $free_above ->
            [0] none lost
            [one] 1 lost
           *[other] { $free_above } lost
        } more than that.
    }

# When embryos died

drawn_age_axis = Age (days since setting)
drawn_age_lost_axis = Embryos lost (% of { $eggs } living)
drawn_share = { SHARE($share) }
drawn_band = 95 % band
drawn_no_known_end = No egg with a known end yet

picture_death_age = { $deaths ->
        [0] None of { $eggs } living embryos ({ WORD($species, "species") }) died.
       *[other] { SHARE($lost) } of { $eggs } living embryos ({ WORD($species, "species") }) died (95 % band { SHARE($low) } to { SHARE($high) }); the largest step, { SHARE($most_share) }, lies between day { NUMBER($most_from, maximumFractionDigits: 0) } and day { NUMBER($most_to, maximumFractionDigits: 0) }. On which day within a step is not known.
    }

drawn_embryos_lost_axis = Embryos lost (%)
drawn_lost_end = { $who }: { SHARE($share) }

picture_age_against_season = Batch { $batch } lost { SHARE($lost) } of its embryos, its species over the season { SHARE($kin) } (95 % band { SHARE($low) } to { SHARE($high) }): { $beyond ->
        [above] more than its band
        [below] less than its band
       *[within] within its band
    }. { $step ->
        [0] No step stands out.
       *[other] The largest step, { SHARE($step) }, lies between day { NUMBER($day_from, maximumFractionDigits: 0) } and day { NUMBER($day_to, maximumFractionDigits: 0) }.
    }

# Causes

drawn_weight = { SHARE($share) }{ $tie ->
        [yes] { " " }(tie)
       *[no] { "" }
    }

picture_ranked_causes = Batch { $batch }: { WORD($first, kind: "cause") } has { SHARE($share) } of the weight among all candidate causes, { WORD($second, kind: "cause") } { SHARE($second_share) }{ $ties ->
        [0] .
       *[other] { ". " }The first is tied with { $ties } more: the records cannot tell them apart.
    }

drawn_what_if_stage = Lost at stage (diamond: usual)
drawn_what_if_cause = Put down to
drawn_what_if_excursions = Without spells of heat and cold
drawn_what_if_chicks = chicks more, if the surplus of deaths came from them
drawn_what_if_number = { $eggs }{ $ranged ->
        [yes] { " " }({ $low } to { $high })
       *[no] { "" }
    }{ $known ->
        [yes] { " " }(usual { $usual })
       *[no] { "" }
    }

picture_what_if = Most eggs of the season were lost as { WORD($stage, "drawn_stage") }: { $eggs }{ $usual ->
        [none] { "" }
       *[other] { " " }(usual for so many eggs: { $usual })
    }. { $cause ->
        [none] None are put down to a named cause.
       *[other] Of the named causes most, about { $cause_eggs }, are put down to: { WORD($cause, kind: "cause") }.
    } { $spells ->
        [yes] Without spells of heat and cold about { $chicks } more chicks ({ $low } to { $high }), if the surplus of deaths came from them.
       *[no] Whether spells of heat and cold cost chicks cannot be told.
    }

drawn_stage_hatched = good chicks
drawn_stage_culled = culled chicks
drawn_stage_clear = clear or infertile eggs
drawn_stage_infertile = infertile eggs
drawn_stage_early = early dead
drawn_stage_mid = mid dead
drawn_stage_late = late dead
drawn_stage_pipped_dead = pipped and died
drawn_stage_removed = removed
drawn_stage_unaccounted = eggs not accounted for

drawn_ladder_for = speaks for it
drawn_ladder_against = speaks against it
drawn_ladder_said = { $name }{ $said ->
        [none] { "" }
       *[other] , you noted
    }
drawn_ladder_item = { $name }: { $value } (usual { $usual })
drawn_ladder_pattern = when and at what stage the eggs were lost
drawn_ladder_before = how common it is, beside bad luck
drawn_strength = { $strength ->
        [for_very_strong] very strongly
        [for_strong] strongly
        [for_some] somewhat
        [for_hardly] hardly
        [against_very_strong] very strongly
        [against_strong] strongly
        [against_some] somewhat
        [against_hardly] hardly
        [unknown] not known
       *[none] neither way
    }

picture_ladder = Evidence on batch { $batch } for: { WORD($cause, kind: "cause") } (weight { SHARE($share) }). { $for_kind ->
        [nothing] Nothing speaks for it
        [pattern] Strongest for it: when and at what stage the eggs were lost
        [before] Strongest for it: how common it is
        [item] Strongest for it: { WORD($for_part, kind: "item") }
       *[sign] Strongest for it: { WORD($for_part, kind: "sign") }
    }; { $against_kind ->
        [nothing] nothing speaks against it
        [pattern] strongest against it: when and at what stage the eggs were lost
        [before] strongest against it: that it is less common than bad luck
        [item] strongest against it: { WORD($against_part, kind: "item") }
       *[sign] strongest against it: { WORD($against_part, kind: "sign") }
    }. { $unknown ->
        [0] Nothing that bears on it is unknown.
        [one] One thing that bears on it is not known.
       *[other] { $unknown } things that bear on it are not known.
    }

# What was different

drawn_nothing_different = Nothing that was kept was unlike the good batches.
drawn_away_less = less
drawn_away_usual = as usual
drawn_away_more = more
drawn_difference_words = { $name }: { $value } (good batches: { $usual })

picture_differences = { $count ->
        [0] Nothing that was kept of batch { $batch } was unlike the good batches.
        [one] One thing was different with batch { $batch }: { WORD($name, kind: "item") }, { $value } (usual { $usual }).
       *[other] { $count } things were different with batch { $batch }, most of all: { WORD($name, kind: "item") }, { $value } (usual { $usual }).
    }

picture_drawings = Simple drawings of opened eggs, blunt end with the air cell on top, in this order: { WORDS($looks, kind: "breakout_look") }.
drawn_swollen_neck = swollen neck
drawn_small_cell = small air cell
drawn_large_cell = large air cell
drawn_dry_skin = skin tight and dry
drawn_seen_from =
    from its back, blunt end up:
    R is its right wing, L its left
drawn_wing_R = R
drawn_wing_L = L
drawn_beak = beak
drawn_no_vessels = no vessels
drawn_look_of_days = { WORD($look, kind: "breakout_look") } (day { breakout_days })

# Losses

drawn_no_batch = No batch to show
drawn_eggs_set = eggs set
drawn_eggs_excess = told of beyond the eggs set
drawn_good_chicks = good chicks
drawn_ledger_lost = { $whole ->
        [yes] { $eggs }
       *[no] about { $eggs }
    }
drawn_share_of_set_axis = Share of eggs set (%)
drawn_chart_limit = usual limit
drawn_chart_mean = mean
drawn_chart_axis = Batches in order of setting
drawn_chart_title = { WORD($stage, "drawn_stage") } (% of { $of ->
        [fertile] eggs not clear or infertile
       *[set] eggs set
    })
drawn_tray = { $name ->
        [none] tray
       *[other] tray { $name }
    }
drawn_no_places = No egg has a place on a tray.
drawn_tray_machine = { $machine ->
        [none] { drawn_tray_plain }
       *[other] { $machine }: { drawn_tray_plain }
    }
drawn_tray_plain = { $tray ->
        [none] tray
       *[other] tray { $tray }
    }
drawn_tray_season_title = Embryos that died on each place (number; disc: share)

picture_egg_ledger = Of { NUMBER($eggs_set, maximumFractionDigits: 0) } eggs set { NUMBER($chicks, maximumFractionDigits: 0) } gave good chicks{ $stage ->
        [none] . Nothing was lost.
       *[other] ; the largest loss is { NUMBER($eggs, maximumFractionDigits: 0) } { WORD($stage, "drawn_stage") }, then { $second ->
            [none] nothing else
           *[other] { NUMBER($second_eggs, maximumFractionDigits: 0) } { WORD($second, "drawn_stage") }
        }.
    }

picture_losses_by_group = { $count ->
        [0] No group has a share to show.
        [one] { $best }: { SHARE($best_share) } of its eggs set gave good chicks.
       *[other] Good chicks of eggs set: from { SHARE($worst_share) } ({ $worst }) to { SHARE($best_share) } ({ $best }). { $worst } lost most as { WORD($stage, "drawn_stage") }, { SHARE($stage_share) } of its eggs.
    }

picture_season_chart = { $outside ->
        [0] Of { $batches } batches in order of setting none lies outside the limits of the usual spread in { WORD($stage, "drawn_stage") }; the season's mean is { SHARE($mean) }.
       *[other] Of { $batches } batches in order of setting { LIST($names) } { $outside ->
            [one] lies
           *[other] lie
        } outside the limits of the usual spread in { WORD($stage, "drawn_stage") }; the season's mean is { SHARE($mean) }.
    }

picture_tray_map = Tray of batch { $batch }: of { $eggs } eggs with a place { $hatched } hatched and { $died } embryos died, { $edge } of these at the edge of the tray. { $together ->
        [yes] The dead lay together more than chance would put them.
        [no] The dead lay as chance would put them.
       *[other] Too few died to ask whether they lay together.
    }

picture_tray_season = Over { $batches ->
        [one] 1 batch
       *[other] { $batches } batches
    } with places { $died } of { $eggs } embryos died. { $together ->
        [yes] { $question ->
            [edge] Deaths were unevenly shared between edge and middle, more than chance would have it: { SHARE($seen) } at the edge, where { SHARE($expected) } would be chance.
           *[neighbours] The dead lay side by side more than chance would put them: { NUMBER($seen, maximumFractionDigits: 0) } touching pairs, where { NUMBER($expected, maximumFractionDigits: 0) } would be chance.
        }
        [no] The place on the tray made no difference that can be told from chance.
       *[other] Too few died to ask whether the place mattered.
    }

# Losses beside heat and cold

drawn_window = { $name } ({ $batches ->
        [one] 1 batch
       *[other] { $batches } batches
    } exposed, { $deaths } dead)
drawn_nothing_to_compare = nothing to compare
drawn_same = same
drawn_hazard_axis = Rate of death when exposed, as a multiple of the others

picture_hazard_by_window = { $name ->
        [none] No stretch can be compared: embryos that met heat or cold and others that did not are needed in the same stretch.
       *[other] Rate of death of embryos that met heat or cold beside the others: most { $sure ->
            [yes] and more than chance
           *[no] , though chance is not ruled out,
        } in the stretch up to { WORD($name, "drawn_look") }, { NUMBER($ratio, maximumFractionDigits: 1) } times (95 % interval { NUMBER($low, maximumFractionDigits: 1) } to { NUMBER($high, maximumFractionDigits: 1) }); { $clear ->
            [0] no stretch is clearly above the others
            [one] 1 of { $count } stretches is clearly above the others
           *[other] { $clear } of { $count } stretches are clearly above the others
        }.
    }


drawn_look_candle1 = the first candling
drawn_look_candle2 = the second candling
drawn_look_transfer = the transfer
drawn_look_hatch = the hatch

# Climate

drawn_timeline_title = Incubator { $machine }, °{ $unit }
drawn_no_readings = no readings
drawn_spell = { NUMBER($degrees, maximumFractionDigits: 0) }°, { NUMBER($hours, maximumFractionDigits: 0) } h
drawn_line_air = air
drawn_line_egg = egg (est.)
drawn_line_range = wanted
drawn_line_everyday = lid open
drawn_close_up_title = Batch { $batch }, day { NUMBER($day, maximumFractionDigits: 1) }: { $kind ->
        [warm] too warm
       *[cold] too cold
    }
drawn_hours = { NUMBER($hours, maximumFractionDigits: 1) } h
drawn_worst_air = air { NUMBER($degrees, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }
drawn_worst_egg = egg { NUMBER($degrees, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }

drawn_water_title = Batch { $batch }: weight lost (% of weight at setting)
drawn_water_target = target
    { SHARE($low) } to
    { SHARE($high) }
drawn_water_expected = { $weighed ->
        [yes] expected
       *[no] a guess
    }
    { SHARE($share) }
drawn_left_out = x  weighed, left out
drawn_no_weights = Nothing is known of the weight that eggs lost.
drawn_water_axis = Weight lost at transfer (% of weight at setting)
drawn_water_key_target = target
drawn_water_key_weighed = weighed
drawn_water_key_off = weighed, off target
drawn_water_key_unweighed = not weighed: a guess

drawn_clock_expected = expected
drawn_clock_seen = first to last chick
drawn_clock_inside = middle, as expected
drawn_clock_outside = middle, not as expected
drawn_no_clock = No batch has an expected time of hatch.
drawn_clock_axis = Hours from the usual time of the species
    (later: right)

drawn_no_probe = No temperatures were logged.
drawn_probe = Machine { $machine }, probe { $probe }
drawn_witness_checked = { $known ->
        [yes] by a check against ice or a good thermometer
       *[no] check against ice or a good thermometer: not done
    }
drawn_witness_pair = { $known ->
        [yes] beside the other probe ({ $other })
       *[no] beside the other probe ({ $other }): no readings together
    }
drawn_witness_hatch = { $known ->
        [yes] by when the eggs hatched ({ $batches ->
            [one] 1 batch
           *[other] { $batches } batches
        })
       *[no] by when the eggs hatched: not known
    }
drawn_probe_axis = Reads too low (left) or too high (right), °{ $unit }
drawn_kelvin = { NUMBER($value, minimumFractionDigits: 1, maximumFractionDigits: 1) }°

picture_incubator_timeline = Air and estimated egg temperature of incubator { $machine } with { $batches ->
        [one] 1 batch
       *[other] { $batches } batches
    }{ $middle ->
        [none] { "" }
       *[other] : mostly { NUMBER($middle, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }
    }. { $spells ->
        [0] No spell of heat or cold worth telling
        [one] One spell worth telling
       *[other] { $spells } spells worth telling
    }{ $kind ->
        [none] { "" }
       *[other] , the worst from { DAY($when) }: { $kind ->
            [warm] too warm
           *[cold] too cold
        } for { NUMBER($hours, maximumFractionDigits: 0) } h, the air at { NUMBER($degrees, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }
    }; { $everyday ->
        [0] nothing everyday
        [one] 1 everyday opening or setting
       *[other] { $everyday } everyday openings or settings
    }; { $gaps ->
        [0] no gap in the log.
        [one] 1 gap in the log.
       *[other] { $gaps } gaps in the log.
    }

picture_excursion_close_up = Batch { $batch } from day { NUMBER($day, maximumFractionDigits: 1) } ({ MINUTE($when) }): { $kind ->
        [warm] too warm
       *[cold] too cold
    } for { NUMBER($hours, maximumFractionDigits: 1) } h. The air reached { NUMBER($air, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }, the estimated egg follows later and reached { NUMBER($egg, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit } ({ NUMBER($egg_low, minimumFractionDigits: 1, maximumFractionDigits: 1) } to { NUMBER($egg_high, minimumFractionDigits: 1, maximumFractionDigits: 1) }).

picture_weight_loss_track = { $weighed ->
        [yes] Batch { $batch }, weighed: { $projected_share ->
            [none] what the eggs will have lost at transfer cannot be told
           *[other] at transfer the eggs will have lost { SHARE($projected_share) } of their weight ({ SHARE($projected_low) } to { SHARE($projected_high) })
        }
       *[no] Batch { $batch } was not weighed; { $projected_share ->
            [none] nothing is known of what it lost
           *[other] by egg size and humidity it will have lost about { SHARE($projected_share) } of its weight at transfer ({ SHARE($projected_low) } to { SHARE($projected_high) })
        }
    }; the target is { SHARE($target_low) } to { SHARE($target_high) }{ $verdict ->
        [too_little] : too little was lost.
        [too_much] : too much was lost.
        [on_target] : on target.
       *[other] : whether that is met cannot be told.
    }

picture_water_against_target = { $weighed ->
        [0] None of { $batches } batches was weighed, so that only guesses stand beside the target.
       *[other] Of { $weighed ->
            [one] 1 batch that was weighed
           *[other] { $weighed } batches that were weighed
        } { $right ->
            [0] none is
            [one] 1 is
           *[other] { $right } are
        } on target, { $little ->
            [0] none
           *[other] { $little } ({ LIST($little_names) })
        } lost too little water, { $much ->
            [0] none
           *[other] { $much } ({ LIST($much_names) })
        } too much.
    }

picture_hatch_clock = { $seen ->
        [0] Of no batch were the times of hatch written down.
       *[other] Of { $seen } batches whose hatch was seen { $early ->
            [0] none came
           *[other] { $early } came
        } earlier than storage and temperature let expect{ $early ->
            [0] { "" }
           *[other] { " " }({ LIST($early_names) })
        }, { $late ->
            [0] none
           *[other] { $late }
        } later{ $late ->
            [0] { "" }
           *[other] { " " }({ LIST($late_names) })
        }; furthest off was { $furthest }, { NUMBER($hours, maximumFractionDigits: 0) } h { $side ->
            [later] later
           *[other] earlier
        }.
    }

picture_probe_truth = { $checked ->
        [0] { $probes ->
            [one] The one probe was never checked.
           *[other] None of { $probes } probes was ever checked.
        }
       *[other] { $checked } of { $probes } probes were checked.
    } { $told ->
        [0] The times of hatch point to no error of any.
       *[other] By the times of hatch that of machine { $machine } reads { NUMBER($error, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit } too { $side ->
            [high] high
           *[low] low
        }.
    } { $disagree ->
        [0] { "" }
       *[other] Probes disagree in machine { LIST($disagree_names) }.
    }

# The season at a glance, and the next set

drawn_machine = { $name ->
        [none] machine not known
       *[other] Machine { $name }
    }
drawn_degrees = { NUMBER($degrees, maximumFractionDigits: 0) }°
drawn_glance_bars = Bar: a batch, filled as high as it hatched. ○ look
drawn_glance_marks = ▲ too warm  ▼ too cold: the larger, the worse
drawn_eggs_axis = Eggs set
drawn_eggs_title = Chance of at least { $chicks } good chicks (%)

picture_season_at_a_glance = { $batches ->
        [0] No batch to show.
       *[other] { $batches ->
            [one] 1 batch
           *[other] { $batches } batches
        } in { $machines ->
            [one] 1 machine
           *[other] { $machines } machines
        } from { DAY($first) } to { DAY($last) }. { $ended ->
            [0] None has ended yet.
           *[other] Good chicks of eggs set: from { SHARE($worst_share) } ({ $worst }) to { SHARE($best_share) } ({ $best }).
        } { $spells ->
            [0] No spell of heat or cold worth telling.
           *[other] { $spells ->
                [one] One spell
               *[other] { $spells } spells
            } of heat or cold worth telling, the largest in machine { $machine } from { DAY($when) }: too { $kind ->
                [warm] warm
               *[cold] cold
            } for { NUMBER($hours, maximumFractionDigits: 0) } h.
        }
    }

picture_eggs_to_set = { $half ->
        [none] No single set gives { $chicks } good chicks with an even chance.
       *[other] For at least { $chicks } good chicks an even chance needs { $half } eggs, { $eggs ->
            [none] and no single set is { SHARE($sure) } sure
           *[other] { SHARE($sure) } sureness { $eggs }
        }, { $most ->
            [none] no single set 95 % sure
           *[other] 95 % sureness { $most }
        }.
    }
account_usual = what batches usually lose
account_not_explained = not explained
account_unaccounted = eggs without a known end
