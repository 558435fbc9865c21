# Losses and temperature: the verdict and its reasons, to who looks further.


## The verdict

relate_clear_sign = Clear sign.
relate_some_sign = Some sign.
relate_no_sign = No sign, and a doubling would have shown.
relate_cannot_tell = Cannot tell: a doubling would have been missed { $missed } times in 10.
relate_not_apart = Cannot be told from this: { WORD($factor, kind: "factor") }.
relate_why_no_window = Cannot tell: of no window are the eggs, the dead and the length all known.
relate_why_not_logged = Cannot tell: no window of any batch was logged.
relate_why_one_batch = Cannot tell: there is only one batch with a log, and nothing to compare it with.
relate_why_no_death = Cannot tell: no embryo died in a logged window.
relate_why_all_died = Cannot tell: every embryo died, exposed or not.
relate_why_no_excursion = Cannot tell: no warm or cold spell that counts reached a batch.
relate_why_same_dose = Cannot tell: all batches met the same dose.
relate_why_uncounted = Cannot tell: { $windows ->
        [one] the only window with a spell
       *[other] all { $windows } windows with a spell
    } cannot be used, because { $not_counted ->
        [yes] living or dead were not counted
       *[no] the counts contradict themselves
    } ({ LIST($batches) }).

## Its size and how sure it is

relate_size = In the { $exposed ->
        [one] one exposed batch
       *[other] { $exposed } exposed batches
    } of { $batches }, embryos died at { $hazard_ratio ->
        [none] unknown
        [21] over 20
       *[ratio] { PLAIN($hazard_ratio) }
    } times the rate of the others (95 % interval { $low ->
        [none] unknown
        [21] over 20
       *[ratio] { PLAIN($low) }
    } to { $high ->
        [none] unknown
        [21] over 20
       *[ratio] { PLAIN($high) }
    }), at the usual dose of the exposed windows.
relate_winner = In records this small only a large difference shows, so the true one is probably smaller: trust the lower half of the interval.
relate_no_arrangement = No other way of dealing the spells to these batches exists, so chance cannot be weighed.
relate_chance = With { $turned ->
        [yes] the temperature log turned against the batches
       *[no] the spells dealt to the batches by lot
    }, chance alone did as much in { $many ->
        [0] fewer than 1
       *[other] { $many }
    } in { PLAIN($out_of) } cases.
relate_smallest = So few batches could not have given less than { $many ->
        [0] 1
       *[other] { $many }
    } in { PLAIN($out_of) }.
relate_drawn = With every batch drawn anew, each with its own luck, machines and seasons at their own levels, it did in { $many ->
        [0] fewer than 1
       *[other] { $many }
    } in { PLAIN($out_of) } cases.
relate_less_than_clear = That is less than the rule asks for a clear sign.
relate_harm_not_size = That there is harm is a clear sign; how much is not: the interval reaches down to no harm.
relate_would_show = A rate { $ratio ->
        [none] unknown
        [21] over 20
       *[ratio] { PLAIN($ratio) }
    } times as high would have shown in 8 of 10 such seasons.
relate_shows_from = { $ratio ->
        [none] Records of this size cannot be counted on to show even a very large harm
       *[ratio] Records of this size show harm in 8 of 10 seasons only where the rate is about { $ratio ->
            [21] over 20
           *[other] { PLAIN($ratio) }
        } times as high
    }{ $why ->
        [levels] , since the struck batches and the others lie in different machines or years
        [few_exposed] , since so few batches were struck
        [few_deaths] , since so few embryos died at all
        [few_batches] , since there are so few batches
       *[none] { "" }
    }.
relate_excess = The exposed windows held { EGGS($observed) } dead; unexposed ones would plausibly have held { EGGS($expected) }: { EGGS($excess) } more (95 % interval { EGGS($excess_low) } to { EGGS($excess_high) }; below nought means fewer), or about { EGGS($chicks_lost) } chicks lost in the end ({ EGGS($chicks_low) } to { EGGS($chicks_high) }).

## What went with it

relate_one_sided = All exposed batches share this, and no other batch does: { WORD($factor, kind: "factor") } ({ LIST($hit) }). This compares that, and cannot say what the temperature did.
relate_nearly = Nearly all batches of these were exposed and the others were not: { WORD($factor, kind: "factor") } ({ LIST($hit) }); too few can be compared within.
relate_exact = The exposed batches lie all on one side ({ WORDS($hit, kind: "side") }) by this: { WORD($factor, kind: "factor") }. What changed with it cannot be separated from the temperature.
relate_together = This goes together with the exposure ({ WHOLE($explained) } shared): { WORD($factor, kind: "factor") }; part of a difference may be due to it.
relate_in_part = This goes together with the exposure in part ({ WHOLE($explained) } shared): { WORD($factor, kind: "factor") }; part of a difference may be due to it.
side_more = later, more or older
side_fewer = earlier, fewer or younger
factor_incubator = the machine
factor_species = the kind of bird
factor_flock = the flock
factor_season = the season
factor_keeper = the keeper
factor_stored_days = days of storage
factor_flock_age_weeks = age of the flock
factor_start = time of the season
relate_allowed = Allowance was made for { WORDS($factors, kind: "factor") }.
relate_not_allowed = The records are too few to allow for { WORDS($factors, kind: "factor") }.
relate_left_out = { $windows ->
        [one] One window was
       *[other] { $windows } windows were
    } left out because { $why ->
        [not_counted] the living or the dead were not counted there.
        [twice] the same window is there twice.
        [no_length] its length is not known.
        [too_many_dead] more died than were alive at its start.
       *[no_eggs] no egg was alive at its start.
    }

## The question as it was asked, and its limits

relate_asked = Asked before looking: did the windows between two looks in which eggs were too warm or too cold lose more embryos than the others?
relate_one_exposed = Only one batch was exposed, so no test of the spell exists; look at that batch by itself and compare it with the others.
relate_few_batches = With { $batches ->
        [one] one batch
       *[other] { $batches } batches
    } this is a description, not a test.
relate_few_deaths = With { EGGS($deaths) ->
        [one] one death
       *[other] { EGGS($deaths) } deaths
    } this is a description, not a test.
relate_unlogged = For { $unknown } of { $windows } windows too little was logged to know the dose: not counted as exposed nor as spared.
relate_after = Looked at beside the question: { EGGS($died) } embryos died in the window right after one with a spell ({ LIST($where) }{ $others ->
        [0] { "" }
       *[other] , and { $others } more
    }), where batches without one would lose { TENTH($expected) }; so many or more come by luck in { $many ->
        [0] fewer than 1
       *[other] { $many }
    } in { PLAIN($out_of) } cases. Embryos killed shortly before a look can pass for alive there and be found at the next. The question as asked counts them as losses without a spell, so it can miss such harm; the verdict stays with the question as asked.
relate_after_one = { EGGS($died) } of { EGGS($at_risk) } in { $batch }
relate_later = Looked at beside the question: batches hit in the window before this look lost more from then to the end, though not in that window alone: { WORDS($looks, kind: "stage") }. Deaths can follow a spell late.
relate_not_the_cause = Losses that go with a spell are consistent with harm from it. That it was the cause, and not something that came with it, no records of this kind can prove.
