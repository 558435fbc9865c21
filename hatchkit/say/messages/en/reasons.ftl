# Why a batch was poor, for who looks further: what fits a cause, what speaks against it, how its weight comes about.
reason_stage_more = { $eggs } { WORD($stage, kind: "loss") } where { $usual } is usual
reason_stage_few = only { $eggs } { WORD($stage, kind: "loss") } where { $usual } is usual
reason_stage_none = none { WORD($stage, kind: "loss") } ({ $eggs }) where { $usual } is usual
reason_stage_not_explained = it does not explain the { $eggs } { WORD($stage, kind: "loss") } where { $usual } is usual
reason_stages = { OR($stages) }
reason_days_more = { $eggs } dead { $by_day ->
        [none] after day { TENTH($after_day) }
       *[other] between day { TENTH($after_day) } and { $by_day }
    } ({ $stages }, not known which; { $usual } is usual for these together)
reason_days_not_explained = it does not explain the { $eggs } dead { $by_day ->
        [none] after day { TENTH($after_day) }
       *[other] between day { TENTH($after_day) } and { $by_day }
    } ({ $stages }, not known which; { $usual } is usual for these together)
reason_any_pattern = it allows any pattern, so it never fits well
reason_good_chicks = { $good } good chicks of { $set } eggs set, { $usual } usual and { $spread } more or less common
reason_noted = you noted: { WORD($sign, kind: "sign") } (“{ $said }”)
reason_lacking = no { WORD($item, kind: "needs") }
reason_item = { WORD($item, kind: "item") }: { $value }{ $usual ->
        [none] { "" }
       *[other] { " " }({ $usual } in your good batches)
    }
reason_value = { $more ->
        [yes] +
       *[no] { "" }
    }{ $unit ->
        [share] { SHARE($value) }
        [degrees] { STEP($value) }
        [h] { $value } h
        [m] { $value } m
        [points] { $value } points
        [humidity] { $value } % RH
        [days] { $value ->
            [one] 1 day
           *[other] { $value } days
        }
        [weeks] { $value ->
            [one] 1 week
           *[other] { $value } weeks
        }
        [doublings] { TENTH($times) } times
        [tray] 1 in { $one_in }
        [flag] { $value ->
            [0] no
           *[other] yes
        }
       *[other] { $value }
    }
reason_limit_no_log = No temperature was logged for this batch, so no verdict on heat or cold can be firm.
reason_limit_probe = No check of this incubator’s probe is on record, so every word on temperature holds only if it reads true.
reason_limit_few = { $batches ->
        [0] No other batch of this species is there
        [one] Only 1 other batch of this species is there
       *[other] Only { $batches } other batches of this species are there
    } to compare with; the published ledger stands in.
reason_limit_not_opened = Unhatched eggs were not opened (or not written down), so ages of death are rough.

# What was different, and the verdict.
different_name = { WORD($item, kind: "item") }: { $value }, { $usual } in the good ones
item_flock = flock
item_pen = pen
item_incubator = incubator
item_shelf = shelf
item_hatcher = hatcher
item_broody = broody hen
different_told = What was different this time, beside { $good ->
        [0] published values, as you have no good batch yet
        [one] your one good batch and published values
       *[other] your { $good } good batches
    }? { $count ->
        [0] Nothing on record differs.
       *[other] { $told }.
    }
verdict_confident = Batch { $batch }: very likely { WORD($cause, kind: "cause") } ({ SHARE($share) } of the weight).
verdict_probable = Batch { $batch }: probably, not surely, { WORD($cause, kind: "cause") } ({ SHARE($share) } of the weight).
verdict_two_causes = Batch { $batch }: probably two things: { WORD($first, kind: "cause") } (about { EGGS($eggs_first) } eggs) and { WORD($second, kind: "cause") } (about { EGGS($eggs_second) } eggs).
verdict_bad_luck = Batch { $batch }: ordinary bad luck is enough to explain it ({ SHARE($share) } of the weight); no cause stands out.
verdict_cannot_tell = Batch { $batch }: the records cannot tell{ $clears ->
        [yes] { " " }what made them clear
       *[no] { "" }
    }.
verdict_luck_or_unknown = Ordinary bad luck has most of the weight, but what became of so many eggs is not known.
verdict_too_little = Most of the weight has: { WORD($cause, kind: "cause") } ({ SHARE($share) }), too little to name it.
verdict_fits = It fits because of: { $told }.
verdict_against = Against it: { $told }.
verdict_unknown = Not known: { $told }.
verdict_tied = As good as tied: { $told }{ $more ->
        [0] { "" }
       *[other] { " " }and { $more } more
    }.
verdict_clears = Most of the loss is clears: { $eggs } of { $set } eggs, { $usual } usual. { $opened ->
        [none] Open them at the next candling: no germ means the cocks, a dead one means storage or warmth.
       *[other] Of those you opened, { SHARE($opened) } held a germ that had died.
    }
verdict_many_unaccounted = { EGGS($eggs) ->
        [one] 1 of the { EGGS($set) } eggs set in batch { $batch } has no known end
       *[other] { EGGS($eggs) } of the { EGGS($set) } eggs set in batch { $batch } have no known end
    }, so no cause can be named with confidence.
verdict_unaccounted = { EGGS($eggs) ->
        [one] 1 of the { EGGS($set) } eggs set in batch { $batch } has no known end
       *[other] { EGGS($eggs) } of the { EGGS($set) } eggs set in batch { $batch } have no known end
    }.
verdict_sign = { WORD($sign, kind: "sign") } (from “{ $said }”)
verdict_signs = Signs read from your words: { $read }.
verdict_remark = Your remark on this batch: "{ $remark }".

# How the weight of a cause comes about.
weight_of = How the weight of this comes about: { WORD($cause, kind: "cause") } (times as likely with the cause as with bad luck):
weight_pattern = the days and stages at which eggs were lost
weight_second = its part of the weight of two causes together
weight_not_known = { WORD($item, kind: "item") }: not known
weight_once = { $what } (the same fact is counted below or above)
weight_together = all together{ $ways ->
        [one] { "" }
       *[other] ; the cause’s weight is the mean over its { $ways } ages or delays, of which this is the likeliest
    }. Before looking it had { SHARE($prior) } of the weight, after it { SHARE($share) }.
weight_line = { $size ->
        [beyond] × over 100 000
        [large] × { $factor }
       *[small] × { $factor }
    }  { $what }

# Evidence items: what each is, and what it needs.
item_heat = heat against what halved the hatch at that age
item_cold = hours of development lost to spells of cold
item_transfer_chill = hours of development lost about the transfer
item_log_level = logged temperature against the wanted one
item_clock = first chick against the usual hour
item_clock_machine = the same for this machine’s other batches
item_hatch_spread = first to last chick
item_water_loss = water lost by transfer against the species’ target
item_rh_set = humidity while set against the range for the species
item_rh_hatch = humidity while hatching against the range for the species
item_storage = days stored beyond the best
item_flock_age = weeks that the hens are outside 26 to 60
item_flock_clears = clears of this flock’s other batches against other flocks
item_flock_deaths = early and mid deaths of this flock’s other batches against other flocks
item_tray = deaths gathered on one part of the tray (how rare by chance)
item_probe_gap = difference between the probes of the machine
item_malpositions = embryos lying wrongly among late dead
item_contaminated = rotten eggs of eggs set
item_cracked = cracked eggs of eggs set
item_altitude = height of the place
item_posted = eggs that came by post
item_flock_own = whether the flock differs from those of the good batches
item_clears_opened = clears opened at the first candling that held a germ
needs_heat = temperature readings
needs_cold = temperature readings
needs_log_level = temperature readings
needs_transfer_chill = temperature readings about the transfer
needs_clock = hours of the first or last chick
needs_clock_machine = hatching hours of two other batches of this machine
needs_hatch_spread = hours of first and last chick
needs_water_loss = weights at setting and later
needs_rh_set = humidity readings
needs_rh_hatch = humidity readings after transfer
needs_storage = days the eggs were kept
needs_flock_age = age of the laying flock
needs_flock_clears = other batches of this flock and of another to compare
needs_tray = row and column of each egg
needs_probe_gap = two probes in the machine
needs_malpositions = count of embryos lying wrongly
needs_contaminated = count of rotten eggs
needs_cracked = count of cracked eggs
needs_altitude = height of the place (altitude_m in the settings)
needs_posted = whether the eggs came by post
needs_flock_own = flocks of this and of two other batches
needs_clears_opened = clears opened at the first candling
needs_flock_deaths = other batches of this flock and of another to compare

# Signs of what happened, beside those that are seen (workbook.ftl).
sign_power_cut = a power cut
sign_chilled = eggs got cold
sign_overheated = it got too hot
sign_turner_stopped = the turner failed
sign_turned_late = turned into the last days
sign_vents_shut = vents shut or stale air
sign_ran_dry = the water ran dry
sign_opened_often = opened often while hatching
sign_posted = eggs came by post
sign_shaken_frosty = shaken, frosted or kept too warm before setting
sign_dirty_washed = dirty or washed eggs
sign_disinfected = disinfected while incubating
sign_fumes = fumes or paint in the room
sign_transfer_jolted = a jolt or chill at transfer
sign_stored_small_end_up = eggs small end up
sign_fan_stopped = the fan stopped
sign_poor_feed = poor or old feed of the breeders
sign_ill_flock = illness in the flock
sign_cock_trouble = a cock that is ill, old, missing or has too many hens
sign_eggs_old = eggs kept for long
sign_old_hens = eggs of old hens or of pullets
sign_ran_warm = somewhat too warm all along
sign_ran_cool = somewhat too cool all along
sign_damp_air = too damp in the machine
sign_dry_air = too dry in the machine
sign_hatch_without_water = no water for the hatch
sign_uneven_machine = warm and cold places in the machine
sign_lowland_eggs = eggs of the lowlands set at a height
sign_hatcher_dirty = a hatcher that was not cleaned
sign_covered_machine = a covered machine
sign_floor_eggs = floor eggs
