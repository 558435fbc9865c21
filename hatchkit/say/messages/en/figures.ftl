# Words on pictures (drawn_*) and what each picture tells, for those who cannot see it (picture_*).

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

picture_ranked_causes = Batch { $batch }: { $first } has { SHARE($share) } of the weight among all candidate causes, { $second } { SHARE($second_share) }{ $ties ->
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
       *[other] Of the named causes most, about { $cause_eggs }, are put down to: { $cause }.
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

picture_ladder = Evidence on batch { $batch } for: { $cause } (weight { SHARE($share) }). { $for_kind ->
        [nothing] Nothing speaks for it
        [pattern] Strongest for it: when and at what stage the eggs were lost
        [before] Strongest for it: how common it is
       *[other] Strongest for it: { $for_name }
    }; { $against_kind ->
        [nothing] nothing speaks against it
        [pattern] strongest against it: when and at what stage the eggs were lost
        [before] strongest against it: that it is less common than bad luck
       *[other] strongest against it: { $against_name }
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
        [one] One thing was different with batch { $batch }: { $name }, { $value } (usual { $usual }).
       *[other] { $count } things were different with batch { $batch }, most of all: { $name }, { $value } (usual { $usual }).
    }

picture_drawings = Simple drawings of opened eggs, blunt end with the air cell on top, in this order: { LIST($looks) }.

# Losses

drawn_no_batch = No batch to show
drawn_eggs_set = eggs set
drawn_good_chicks = good chicks
drawn_share_of_set_axis = Share of eggs set (%)
drawn_season = season
drawn_published = published: { $name }
drawn_stage_axis = Share of { $of ->
        [fertile] eggs not clear or infertile
        [transferred] eggs moved to hatch
       *[set] eggs set
    } (%), bars: 95 % interval
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

picture_stage_losses = { $stage ->
        [none] Nothing was lost in { $name }.
       *[other] { $name } lost most as { WORD($stage, "drawn_stage") }: { SHARE($share) } of its eggs (95 % interval { SHARE($low) } to { SHARE($high) }){ $own ->
            [none] { "" }
           *[other] ; the season lost { SHARE($own) } so
        }{ $level ->
            [none] .
           *[other] ; a published level is { SHARE($level) }.
        }
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
drawn_beside_up = Bars: embryos that died (highest: { SHARE($share) })
drawn_beside_down = ▲ egg too warm  ▼ too cold, in °{ $unit }·h  ? not known
drawn_beside_axis = Age (days since setting){ $left_out ->
        [0] { "" }
        [one] ; 1 more batch is not drawn
       *[other] ; { $left_out } more batches are not drawn
    }

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

picture_losses_beside_exposure = { $spells ->
        [0] In no stretch between two looks were eggs too warm or too cold beyond the everyday.
       *[other] Eggs were too warm or too cold in { $spells ->
            [one] 1 stretch
           *[other] { $spells } stretches
        } between two looks (batches { LIST($batches) }). Most embryos died in one of batch { $worst } ({ SHARE($worst_share) }, days { NUMBER($day_from, maximumFractionDigits: 0) } to { NUMBER($day_to, maximumFractionDigits: 0) }), { $met ->
            [yes] which had such a spell
           *[no] which had none
        }.
    } { $dark ->
        [0] Every stretch is logged.
        [one] 1 stretch has no log.
       *[other] { $dark } stretches have no log.
    } The picture proves nothing.

drawn_look_candle1 = the first candling
drawn_look_candle2 = the second candling
drawn_look_transfer = the transfer
drawn_look_hatch = the hatch
