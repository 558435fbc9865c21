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
