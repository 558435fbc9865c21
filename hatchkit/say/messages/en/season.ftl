# The season's page: its questions in the order in which they are read, and what the records answer.

page_season_title = { $name }: season review
page_season_file = { $name }-season-review
page_season_counts = { $batches ->
        [0] No batch could be used.
       *[other] { EGGS($set) ->
            [one] One egg
           *[other] { EGGS($set) } eggs
        } set in { $batches ->
            [one] one batch
           *[other] { $batches } batches
        } ({ LIST($birds) }){ $first ->
            [none] { "" }
           *[day] , { $days ->
                [one] { DAY($first) }
               *[other] { DAY($first) } to { DAY($last) }
            }
        }: { $hatched ->
            [none] what hatched is not on record yet
            [1] 1 good chick
           *[other] { $hatched } good chicks
        }{ $share_of_set ->
            [none] .
           *[share] , { SHARE($share_of_set) } of the eggs set{ $share_of_developing ->
                [none] .
               *[share] , { SHARE($share_of_developing) } of those not clear.
            }
        }
    }
species_of = { WORD($key, kind: "species") }

## What cost most?

ask_most = What cost most?
most_cause = Most goes to { WORD($key, kind: "cause") }: about { EGGS($eggs) } of the { EGGS($lost) } eggs lost ({ LIST($batches, most: 5) }).
most_cause_even = Two causes cost about { EGGS($eggs) } of the { EGGS($lost) } eggs lost each: { WORD($key, kind: "cause") } and { $second }.
most_cause_shared = No one cause stands first: { LIST($tied) } weigh about the same in { $batch }. To the first go about { EGGS($eggs) } of the { EGGS($lost) } eggs lost.
cause_alone = { WORD($key, kind: "cause") }
most_stage = More { WORD($key, kind: "loss") } than is published, with no cause that stands out: about { EGGS($eggs) } of the { EGGS($lost) } eggs lost.
most_records = { EGGS($eggs) ->
        [one] One egg has
       *[other] { EGGS($eggs) } eggs have
    } no known end ({ LIST($batches, most: 5) }): nobody can say what cost most before that is written down.
most_rest = Then come { LIST($rest) }.
most_short_cause = { WORD($key, kind: "cause") }: { EGGS($eggs) } ({ LIST($batches, most: 4) })
most_short_stage = more { WORD($key, kind: "loss") } than is published: { EGGS($eggs) }
most_short_records = eggs without a known end: { EGGS($eggs) }
most_none_finished = What became of the eggs is not on record, so nothing can be said of what cost most.
most_none_finished_sure = Nothing can be judged before a hatch is written down.
most_nothing = No cause and no stage cost enough eggs to be put first: { $number ->
        [one] one batch
       *[other] { $number } batches
    }, nothing out of the way.
most_nothing_sure = Ordinary luck is enough to explain it; a small harm could hide in so few eggs.
most_unusual = No cause and no stage can be put first, but not all is luck: { LIST($batches) } lost more at some stage than luck often gives.
most_unusual_sure = Sure that it is rare; what it was, the records do not tell.
most_poor = No cause and no stage can be put first, though { LIST($batches, most: 5) } hatched clearly below what is usual.
most_poor_sure = Sure of the count; what it was, the records do not tell.
most_sure_cause_firm = Fairly sure in { $batch } ({ SHARE($share) } of the weight among all causes). Records point; they do not prove.
most_sure_cause_probable = Probable in { $batch } ({ SHARE($share) } of the weight among all causes), not sure.
most_sure_cause_guess = A guess among others: { SHARE($share) } of the weight in { $batch }.
most_sure_stage_counted = Sure of the count. The cause is not known, and the published level is of hens and rough.
most_sure_stage_assumed = Many died between two looks, so the stage is partly assumed; the cause is not known.
most_sure_records_counted = Sure of the count: whether they were clear, dead or broken, nobody knows.

eggs_of_cause = { WORD($key, kind: "cause") } ({ EGGS($eggs) })

## Where did the eggs go?

ask_lost = Where did the eggs go?
lost_most = { EGGS($lost) ->
        [0] No egg was lost.
        [one] One egg of { EGGS($set) } gave no good chick.
       *[other] { EGGS($lost) } of { EGGS($set) } eggs gave no good chick. Most were { LIST($most) }.
    }
lost_clear = Clear means infertile, or dead too early to be seen: only an opened egg tells.
lost_method = Day 0 is the hour of setting. The bracket is the 95 % interval, within which the true rate plausibly lies; for a whole season it allows for batches that differ. Of { EGGS($dead) } dead embryos { EGGS($shared) } died between two looks on either side of a limit; they are shared out by the ages at death of the season. Parts of eggs are rounded so that the sum stays.
table_stages = Eggs by the stage at which they were lost
table_looks = The same deaths by the look at which they were found
table_by_flock = By flock
table_by_incubator = By machine

## Which batches were poor?

ask_poor = Which batches were poor?
poor_batches = { $number ->
        [one] One of { $of } batches hatched
       *[other] { $number } of { $of } batches hatched
    } clearly below what is usual here: { LIST($poor) }.
poor_none = None of { $of } batches hatched clearly below what is usual here.
poor_one = { $batch } ({ EGGS($hatched) } of { EGGS($set) }{ $poor ->
        [clears] , by its clears
        [removed] , by eggs taken out
       *[embryos] { "" }
    })
poor_method = Each batch is set beside your other batches of its species, drawn towards a published ledger, the spread between batches allowed for: once of the eggs set, once of the eggs that were neither clear nor taken out. Poor is what lies a spread or more below in either.
table_batches = Good chicks by batch
poor_embryos = yes, by dead embryos
poor_clears = yes, by clears
poor_removed = yes, by eggs taken out
poor_unknown = not known, eggs without an end
poor_no = no

## Is it more than bad luck?

ask_luck = Is it more than bad luck?
luck_unusual = Yes: { LIST($unusual) }. By luck so many come about once in { $one_in } batches.
luck_by_published = { $comparisons ->
        [0] By published levels, yes
       *[other] Against your own batches, no ({ $comparisons } comparisons); by published levels, yes
    }: in { LIST($published, most: 5) } more was lost at a stage than luck often gives.
luck_one = { $batch } had { $eggs } { WORD($stage, kind: "loss") } of { EGGS($out_of) }, where { EGGS($low) } to { EGGS($high) } are to be expected
luck_none = Not to be seen: in { $comparisons } comparisons no batch lost more at a stage than luck may give.
luck_few = It cannot be told: no second batch of a species counted the same.
luck_refused = { $why }
luck_method = Each batch and stage is held against your other batches of the species, their spread included, and against published levels. So many comparisons are bound to show something rare; that is allowed for (Benjamini-Hochberg).
table_rare = The rarest of these comparisons, each by itself

## Infertile, or dead early?

ask_clears = Infertile, or dead early?
clears_none = No egg was clear.
clears_not_counted = It cannot be told: no clears were counted.
clears_unopened = It cannot be told: none of { EGGS($clear) } clears was opened.{ $flocks ->
        [1] { "" }
       *[other] { " " }Most are of flock { $flock }: { EGGS($worst_clear) } of { EGGS($worst_set) } eggs.
    }
clears_opened = { EGGS($dead) ->
        [0] None
       *[other] { EGGS($dead) }
    } of { EGGS($opened) } opened clears held a dead embryo; { EGGS($clear) } of { EGGS($set) } eggs were clear{ EGGS($barren) ->
        [0] { "" }
       *[other] , { EGGS($barren) } more infertile at breakout
    }.{ $flocks ->
        [1] { "" }
       *[other] { " " }Most are of flock { $flock }: { EGGS($worst_clear) } of { EGGS($worst_set) } eggs{ EGGS($worst_opened) ->
        [0] , none opened
       *[other] { "" }
    }.
    }
clears_method = Where no clear was opened, fertility lies anywhere between "all were infertile" and "all had died early"; the table gives that range. Candled fertility is not fertility.
table_clears = Clears and what they can say of fertility

## When did they die?

ask_ages = When did the embryos die?
ages_stages = { $most ->
        [early] Most died early
        [mid] Most died in the middle days
       *[late] Most died late
    }: { EGGS($early) } early, { EGGS($mid) } in the middle, { EGGS($late) } late; { EGGS($seen) } of { EGGS($dead) } were seen to belong there.
caption_species = { WORD($species, kind: "species") }

## Did the place on the tray matter?

ask_place = Did the place on the tray matter?
place_not_kept = It cannot be told: no places of eggs on the tray were kept.
place_few = It cannot be told: too few eggs with a place died.
place_no_sign = No sign of it: { EGGS($deaths) } dead among { EGGS($eggs) } eggs lie as chance would have them.
place_pattern = { $where ->
        [together] Perhaps: the dead lie together
        [edge] Perhaps: the dead lie at the edge
       *[middle] Perhaps: the dead lie in the middle
    } more than chance would have it (about 1 in { $one_in }); eggs of one hen often lie together too.

## Did it get worse through the season?

ask_course = Did it get worse through the season?
course_refused = { $why }
course_unknown = It cannot be told: too few batches of { WORD($species, kind: "species") }.
course_none = Not to be told from chance: late deaths of { WORD($species, kind: "species") } in { $batches } batches neither rise nor fall{ COUNT($outside) ->
        [0] .
       [one] ; { LIST($outside) } stands out.
       *[other] ; { LIST($outside) } stand out.
    }
course_rise = Late deaths of { WORD($species, kind: "species") } rise through { $batches } batches, more than chance often gives.
course_fall = Late deaths of { WORD($species, kind: "species") } fall through { $batches } batches, more than chance often gives.

## Did warm and cold spells cost embryos?

ask_harm = Did warm and cold spells cost embryos?
harm_clear = A clear sign: about { EGGS($chicks_lost) } chicks ({ EGGS($chicks_low) } to { EGGS($chicks_high) }) were lost in the { EGGS($exposed) } of { $batches } batches that were struck.
harm_some = Some sign: about { EGGS($chicks_lost) } chicks ({ EGGS($chicks_low) } to { EGGS($chicks_high) }) were lost in the { EGGS($exposed) } of { $batches } batches that were struck.
harm_clear_uncounted = A clear sign: the { EGGS($exposed) } of { $batches } batches that were struck lost more embryos than the others.
harm_some_uncounted = Some sign: the { EGGS($exposed) } of { $batches } batches that were struck lost more embryos than the others.
harm_none = No sign, and twice the deaths would have shown.
harm_cannot_tell = It cannot be told from these records.
harm_not_logged = It cannot be told: no temperature was logged while eggs were in.
harm_log_it = Put a logging thermometer at egg height.
harm_not_proof = That the spell was the cause, no records of this kind can prove.
table_exposed = Stretches between two looks in which eggs were too warm or too cold, or too little was logged to know

## What did the temperature do?

ask_spells = What did the temperature do?
spells_found = { $told ->
        [one] One spell is
       *[other] { $told } spells are
    } worth reading: { LIST($spells) }. { $everyday ->
        [0] Nothing else left its range.
        [one] One other is everyday (lid opened, eggs going in).
       *[other] { $everyday } others are everyday (lid opened, eggs going in).
    }
spells_none = Nothing out of the way: { $everyday ->
        [0] the temperature stayed in its range.
        [one] one everyday opening.
       *[other] { $everyday } everyday openings.
    }
spell = { $batch } { EGGS($hours) } h at { DEGREES($extreme_c) }
table_spells = Spells worth reading; the probe reads air, the egg is estimated

## Can the thermometers be believed?

ask_probes = Can the thermometers be believed?
probes_off = Not surely: by the hatching hours { LIST($probes) }.
probe_off = the probe of { $incubator } reads about { STEP($off) } too { $way ->
        [high] high, so that eggs were cooler than the log says
       *[low] low, so that eggs were warmer than the log says
    }
probes_unchecked = Not known: { $unchecked ->
        [one] one probe was
       *[other] { $unchecked } probes were
    } never checked. Read them in melting ice, or beside a clinical thermometer.
probes_checked = Each probe was checked, and what it was off is applied.
table_machines = The machines on ordinary days

## Did the hatch come early or late?

ask_clock = Early or late?
clock_untimed = It cannot be told: no hatch has its hours written down.
clock_on_time = On time: all { $timed } hatches lie within what such a forecast can tell.
clock_off = { $on_time } of { $timed } hatches came on time{ COUNT($early) ->
        [0] { "" }
       *[other] ; early: { LIST($early) }
    }{ COUNT($late) ->
        [0] { "" }
       *[other] ; late: { LIST($late) }
    } (up to { EGGS($hours) } h).

## Did the eggs lose the right amount of water?

ask_water = Was the loss of water right?
water_not_weighed = It cannot be told: no eggs were weighed.
water_on_target = { $weighed } of { $batches } batches were weighed: { $on_target } on target{ $unsure ->
        [0] .
       *[other] , { $unsure } too unsure to call.
    }
water_off = { $weighed } of { $batches } batches were weighed: { $on_target } on target{ COUNT($little) ->
        [0] { "" }
       *[other] ; too little lost in { LIST($little) }
    }{ COUNT($much) ->
        [0] { "" }
       *[other] ; too much in { LIST($much) }
    }.
table_water = Water lost by the transfer, as a share of the weight at setting

## What was lost to what?

ask_causes = What was lost to what?
causes_account = Of { EGGS($lost) } eggs lost { EGGS($usual) } are what batches usually lose, { EGGS($not_explained) } are not explained{ COUNT($causes) ->
        [0] , and no cause can be named.
       *[other] ; the rest goes to { LIST($causes) }.
    }
causes_method = Each egg is counted once. A cause gets the eggs beyond the usual that fit it, times its weight in that batch; weights under a tenth are left out.
table_account = The season's account: every egg that gave no good chick
cause_usual = what batches usually lose
cause_not_explained = not explained
cause_unaccounted = eggs without a known end

## What is not known

season_unknown_cause = A cause: this shows what went together. Proof needs eggs of one flock in two machines.
season_unknown_clear = Infertile from very early dead, unless clears are opened.
season_unknown_day = The day of a death more closely than two looks allow.
season_unknown_probe = Whether a probe reads true, unless it was checked in melting ice and near { DEGREES($right) }.
season_unknown_illness = Hours that were not logged, and diseases: for those ask a veterinarian.

## Headings of tables

head_stage = Stage or look
head_eggs = Eggs
head_set = Eggs set
head_share_of_set = Of eggs set
head_share_of_fertile = Of eggs not clear
head_share_of_transferred = Of eggs moved to hatch
head_batch = Batch
head_flock = Flock
head_incubator = Machine
head_poor = Poor?
head_out_of = Of
head_low = Expected from
head_high = to
head_one_in = By luck 1 in
head_clear = Clears
head_opened = Opened
head_opened_dead = Held a dead embryo
head_share_fertile = Fertile
head_event = Number
head_day_start = From day
head_day_end = To day
head_hours = Hours
head_extreme_c = Air at worst
head_egg_extreme_c = Egg at worst
head_looks_like = Looks
head_at_risk = Living at its start
head_died = Died
head_hours_warm = Hours too warm
head_hours_cold = Hours too cold
head_egg_peak_c = Warmest egg
head_egg_min_c = Coolest egg
head_share_logged = Logged
head_mean_c = Mean
head_set_point_c = Set point
head_rh_mean_pct = Humidity, %
head_share_lost = Lost by transfer
head_share_target = Wanted from
head_share_target_high = to
head_key = Lost to
head_batches = Batches
