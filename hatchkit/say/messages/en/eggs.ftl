# What became of the eggs: where counts, rows and dates of a batch do not agree.

eggs_set_missing =
    .found = batch { $batch }: the number of eggs set is missing
    .done = The batch is left out of rates.
    .fix = Enter eggs_set.
culled_beyond_hatched =
    .found = batch { $batch }: { $culled } culled from { $hatched } hatched, though culled chicks belong to the hatched
    .done = { $culled } are taken as hatched and culled.
    .fix = Check the row.
taken_out_twice =
    .found = batch { $batch }: { $looks } eggs taken out at the looks but { $total } in the column removed
    .done = { $looks } is used.
    .fix = Check the row.
rows_beyond_set =
    .found = batch { $batch }: { $told } egg rows with a fate but { $set } eggs set
    .done = The batch is left out of rates until one of the two is corrected.
    .fix = Count again which number is wrong: the eggs set or what became of them.
counts_beyond_set =
    .found = batch { $batch }: { $told } eggs in the records ({ WORDS($kinds, kind: "field") }: { LIST($eggs) }) but { $set } eggs set
    .done = The batch is left out of rates until one of the two is corrected.
    .fix = Count again which number is wrong: the eggs set or what became of them.
counts_beyond_rows =
    .found = batch { $batch }: the counts hold { $told } eggs beside the { $rows } egg rows, but { $left } are left
    .done = The egg rows are used, { $left ->
        [0] and no egg is left over.
        [one] the other egg is unaccounted for.
       *[other] the other { $left } eggs are unaccounted for.
    }
    .fix = Check the row.
opened_two_ways =
    .found = batch { $batch }: the eggs opened and the dead in shell can be read in more than one way
    .done = { $way ->
        [unhatched] dead_in_shell is read as all unhatched eggs, the infertile ones among them
        [without_early] dead_in_shell is read without the early dead
        [apart] dead_in_shell is read as counted apart from the eggs opened
       *[clears] The infertile and early dead among the opened eggs are read as clears that were opened
    }, which closes to the eggs set.
    .fix = If that is wrong, correct the counts.
eggs_unexplained =
    .found = batch { $batch }: the records explain { $told } of { $set } eggs set
    .done = { $lost ->
        [one] One egg is unaccounted for.
       *[other] { $lost } eggs are unaccounted for.
    }
    .fix = Look for the missing eggs: clears, broken eggs, unhatched eggs.
hatch_not_counted =
    .found = batch { $batch }: no hatch counted yet for { $eggs ->
        [one] one egg
       *[other] { $eggs } eggs
    }
    .done = The batch is left out of rates until it is finished.
    .fix = Enter hatched when the hatch is over.
rows_against_counts =
    .found = batch { $batch }: { READINGS($kinds) }: { LIST($counts) } by count, { LIST($rows) } by egg rows
    .done = The egg rows are used.
    .fix = Correct the count or the egg rows.
egg_outcome_differs =
    .found = batch { $batch }, egg { $egg }: { WORD($seen, kind: "field") } at the { WORD($look, kind: "stage") }, but in the end { WORD($outcome, kind: "fate") }
    .done = The end is used.
    .fix = Check this egg's row.
egg_seen_alive =
    .found = batch { $batch }, egg { $egg }: seen alive on day { $day }, but in the end { WORD($outcome, kind: "fate") }
    .done = Taken as dead, since a living embryo was seen.
    .fix = Check this egg's row.
egg_older_than_found =
    .found = batch { $batch }, egg { $egg }: looked like day { $stage } but was found dead by day { $by }
    .done = The look of the embryo is set aside: died between day { $after } and day { $by }.
    .fix = Check this egg's row.
egg_younger_than_alive =
    .found = batch { $batch }, egg { $egg }: looked like day { $stage } but was marked alive on day { $alive }
    .done = One of the two is wrong: the interval covers both, day { $after } to day { $by }.
    .fix = Check this egg's row.
look_day_taken =
    .found = batch { $batch }: the { WORD($look, kind: "stage") } has counts but no date
    .done = Day { $day } is taken, the usual one.
    .fix = Enter the date of this look.
look_before_setting =
    .found = batch { $batch }: dated before or at the setting: { WORDS($looks, kind: "stage") }
    .done = The counts are kept, the usual day is taken.
    .fix = Check set_at and the date of the look.
off_before_look =
    .found = batch { $batch }: taken off on day { TENTH($off) }, before the last look on day { TENTH($last) }
    .done = Day { $day } is taken for the end of the hatch.
    .fix = Check the dates.

fate_hatched = hatched
fate_culled = culled
fate_clear = clear
fate_infertile = infertile
fate_dead = dead
fate_pipped_dead = pipped and dead
fate_removed = taken out

## Left out of rates, and what was not counted

left_out_rows = { $batch } is left out of rates: { $told } egg rows with a fate but { $set } eggs set.
left_out_counts = { $batch } is left out of rates: { $told } eggs in the records but { $set } eggs set.
left_out_nothing = { $batch } is left out of rates: nothing is on record of what became of its eggs.
left_out_chicks = { $batch } is left out of rates: its chicks are not counted.
left_out_hatch = { $batch } is left out of rates: its hatch is not counted.
left_out_set = { $batch } is left out of rates: the number of eggs set is missing.
clears_left_uncounted = Clears were not counted in { LIST($batches, most: 12) } ({ EGGS($eggs) ->
        [one] one egg
       *[other] { EGGS($eggs) } eggs
    }): how many of these eggs held an embryo is not known, and shares of eggs not clear leave them out.
lost_uncounted = Not counted to the end: { WORDS($stages, kind: "loss") } in { $all ->
        [yes] all { $number } batches
       *[no] { LIST($batches, most: 12) }
    }. Of these at least so many were lost, and no interval is given.

## Luck, ages, place and course, in more words

luck_own = Comparisons with your other batches: { $comparisons }. Rare alone (1 in 20): { $rare }, where luck gives { $by_luck ->
        [0] fewer than 1
       *[other] up to about { $by_luck }
    }.
luck_near = Rare alone, but not called unusual among so many comparisons: { LIST($near) }.
luck_near_one = { $batch }, { $eggs } { WORD($stage, kind: "loss") } of { EGGS($out_of) } ({ $unusual_from ->
        [none] no count could have been, with so few other batches that differ so much
       *[eggs] { EGGS($unusual_from) } or { $stage ->
            [hatched] fewer
           *[other] more
        } would have been
    })
luck_wide = { $number ->
        [one] One batch has
       *[other] { $number } batches have
    } fewer than { $fewest } others of the species: the expected range is wide, and little can be called unusual.
luck_uncounted = Not compared, since these or the clears were not counted: { WORDS($stages, kind: "loss") } of { LIST($batches, most: 12) }.
luck_published = Comparisons with published levels ({ LIST($levels) }): { $comparisons }. { $number ->
        [0] None is unusual once it is allowed for how many were looked at.
       *[other] Unusual: { LIST($unusual) }.
    }
luck_published_one = { $batch }, { $eggs } { WORD($stage, kind: "loss") } where { EGGS($low) } to { EGGS($high) } are to be expected (by luck 1 in { $one_in })
luck_not_why = Unusual means: hardly chance. It does not say why.
ages_none = No egg with a known end yet, so nothing can be said of ages at death.
ages_alive = { WORD($species, kind: "species") }: none of { EGGS($eggs) } living embryos in { $batches ->
        [one] one batch
       *[other] { $batches } batches
    } died; up to { SHARE($most) } lost would still agree with that.
ages_died = { WORD($species, kind: "species") }: { EGGS($deaths) } of { EGGS($eggs) } living embryos in { $batches ->
        [one] one batch
       *[other] { $batches } batches
    } died, { SHARE($share) } (95 % band { SHARE($low) } to { SHARE($high) }){ $batches ->
        [one] ; of one batch only, the band knows nothing of the spread between batches.
       *[other] .
    }
ages_removed = { EGGS($removed) ->
        [one] One egg was
       *[other] { EGGS($removed) } eggs were
    } taken out alive on the way and can tell of the days before only.
ages_unaccounted = Left out: { EGGS($unaccounted) ->
        [one] one egg not accounted for; had it died, { SHARE($most) } would be lost.
       *[other] { EGGS($unaccounted) } eggs not accounted for; had they all died, { SHARE($most) } would be lost.
    }
ages_risk = The highest daily risk seen was { SHARE($daily_low) } to { SHARE($daily_high) } a day (95 % band { SHARE($low) } to { SHARE($high) }), between day { EGGS($after) } and day { EGGS($by) }{ $alone ->
        [yes] .
       *[no] ; other stretches may be as high.
    }
ages_wide = { LIST($spans) }: within these the looks cannot tell on which day they died.
ages_span = day { TENTH($after) } to { TENTH($by) }
ages_method = Day 0 is the hour of setting. Deaths known only roughly are placed where better-known ones fell. Clears are not counted: some of them died in the first days.
place_counts = { $deaths } dead among { $eggs } eggs on { $trays ->
        [one] one tray
       *[other] { $trays } trays
    }: { EGGS($pairs) } pairs of touching dead ({ TENTH($pairs_expected) } expected if place does not matter), { SHARE($edge) } of the dead at the edge ({ SHARE($edge_expected) } expected). { $answer ->
        [few] With so few deaths no pattern could have been told from chance.
        [pattern] Chance alone does as much in { SHARE($chance) } of cases; eggs of one hen often lie together too, so look at both.
       *[no_sign] A pattern this strong comes by chance in { SHARE($chance) } of cases.
    }
course_centre = { WORD($stage, kind: "stage") }, { WORD($species, kind: "species") }: { SHARE($centre) } of { $of ->
        [set] the eggs set
       *[fertile] the eggs that were not clear
    } over { $batches ->
        [one] one batch
       *[other] { $batches } batches
    }. { $limits ->
        [none] These few batches differ so much that no limits can be drawn.
        [outside] Outside the limits: { LIST($outside) }; worth a look, no proof: where batches differ much, 3 of 10 ordinary seasons may have such a batch.
       *[inside] No batch lies outside the limits.
    }
course_provisional = Limits are provisional: fewer than { $fewest } batches.
course_uncounted = Left out, because these were not counted: { LIST($batches, most: 12) }.
course_others = Not in this chart: { LIST($kinds) }.
course_other = { WORD($species, kind: "species") } ({ $batches ->
        [one] one batch
       *[other] { $batches } batches
    })

level_named = { WORD($level, kind: "norm") }
norm_own = your own level
norm_heavy_breeders = broiler-breeder flocks, Butcher & Nilipour
norm_barnett_intact = uncracked commercial eggs, Barnett et al. 2004
norm_small_incubator = common practice for home incubators
norm_pheasant_8_hens = pheasants with 8 hens to a cock, Deeming & Wadland 2001
norm_pheasant_12_hens = pheasants with 12 hens to a cock, Deeming & Wadland 2001
norm_quail_stored_14_days = quail eggs stored 14 days, S. Afr. J. Anim. Sci. 2019
norm_partridge_farm = red-legged partridge, one study of 150 eggs
norm_guinea_farm = guinea fowl, Araujo et al. 2019
norm_goose_warmed = goose eggs stored 9 days with daily warming, one trial
norm_turkey_stored_17_days = turkey eggs stored 17 days, Ann. Anim. Sci. 17
norm_turkey_usa_1997 = turkey hatcheries of the USA in 1997, producer press
