# The page of one batch: why the hatch was poor, how sure that is, what to change.

page_batch_title = { $name }, batch { $batch }: { $poor ->
        [no] how did it hatch?
        [unknown] how did it hatch?
       *[yes] why was this hatch poor?
    }
page_batch_file = { $name }-batch-{ $batch }
page_batch_counts = { EGGS($set) ->
        [one] One egg
       *[other] { EGGS($set) } eggs
    } of { $kind }{ $set_at ->
        [none] { "" }
       *[day] , set on { DAY($set_at) }
    }: { $hatched ->
        [none] what hatched is not on record.
       *[known] { EGGS($hatched) ->
            [one] 1 good chick
           *[other] { EGGS($hatched) } good chicks
        }, { SHARE($share_of_set) } of the eggs set ({ SHARE($usual_of_set) } is usual){ $share_hatched ->
            [none] { $share_low ->
                [none] .
               *[range] , { SHARE($share_low) } to { SHARE($share_high) } of those that developed, as { EGGS($unaccounted) ->
                    [one] 1 egg has
                   *[other] { EGGS($unaccounted) } eggs have
                } no known end.
            }
           *[share] , { SHARE($share_hatched) } of the { EGGS($developing) } that developed ({ SHARE($usual) } is usual).
        }
    }

ask_why = { $poor ->
        [no] What cost eggs all the same?
       *[yes] Why?
    }
why_confident = Very likely { WORD($key, kind: "cause") }: { $reason }.
why_probable = Probably { WORD($key, kind: "cause") }: { $reason }.
why_two_causes = Probably two things: { WORD($first, kind: "cause") } (about { EGGS($eggs_first) } eggs) and { WORD($second, kind: "cause") } (about { EGGS($eggs_second) }): { $reason }.
why_bad_luck = Ordinary bad luck is enough to explain it; no cause stands out.
why_cannot_tell = The records cannot tell: { $reason }. { COUNT($tied) ->
        [0] { "" }
        [one] { "" }
       *[other] As good as tied: { LIST($tied) }.
    }
why_not_poor = This was not a poor hatch: { EGGS($hatched) } of { EGGS($set) } hatched, within what is usual.
why_not_over = Nothing is known of how batch { $batch } ended, so no cause can be weighed.
reason_stage = { $about ->
        [yes] about { EGGS($eggs) }
       *[no] { EGGS($eggs) }
    } { WORD($stage, kind: "loss") }, where { EGGS($usual) ->
        [one] 1 is
       *[other] { EGGS($usual) } are
    } usual
reason_unaccounted = { EGGS($eggs) ->
        [one] 1 egg has
       *[other] { EGGS($eggs) } eggs have
    } no known end
reason_none = no stage lost more than is usual
reason_spell = { $spell }; { $about ->
        [yes] about { EGGS($eggs) }
       *[no] { EGGS($eggs) }
    } { WORD($stage, kind: "loss") }, where { EGGS($usual) ->
        [one] 1 is
       *[other] { EGGS($usual) } are
    } usual
reason_of_spell = { $kind ->
        [warm] { EGGS($hours) } h in air up to { DEGREES($extreme_c) } from day { EGGS($day_start) }
       *[cold] { EGGS($hours) } h in air down to { DEGREES($extreme_c) } from day { EGGS($day_start) }
    }
eggs_of_cause_weight = { WORD($cause, kind: "cause") } ({ SHARE($share) })
why_sure_confident = { SHARE($share) } of the weight among all causes; next { $next }. It is likely, not proved{ $unaccounted ->
        [0] .
       *[other] ; { EGGS($unaccounted) } eggs have no known end.
    }
why_sure_probable = { SHARE($share) } of the weight among all causes; next { $next }. Probable, not sure{ $unaccounted ->
        [0] .
       *[other] ; { EGGS($unaccounted) } eggs have no known end.
    }
why_sure_two_causes = Two together fit better than one alone; likely, not proved.
why_sure_bad_luck = { SHARE($share) } of the weight; a small harm could hide in so few eggs.
why_sure_cannot_tell = Not sure: the likeliest, { WORD($key, kind: "cause") }, has { SHARE($share) } of the weight{ $unaccounted ->
        [0] .
       *[other] , and { EGGS($unaccounted) } eggs have no known end.
    }
why_sure_not_poor = So few losses beyond the usual point to no cause; the likeliest would be { WORD($key, kind: "cause") } ({ SHARE($share) } of the weight).
why_sure_not_over = Write down how it ended, and run this again.

ask_standing = { $poor ->
        [no] Was it poor?
        [unknown] Was it poor?
       *[yes] How poor was it?
    }
standing_embryos = { EGGS($hatched) } of { EGGS($set) } eggs hatched, { $far ->
        [far] far below
       *[below] below
    } the { SHARE($usual_of_set) } that is usual, for more embryos died than usual; number { $place } from the poorest of { $of ->
        [one] one batch
       *[other] { $of } batches
    }.
standing_clears = { EGGS($hatched) } of { EGGS($set) } eggs hatched, { $far ->
        [far] far below
       *[below] below
    } the { SHARE($usual_of_set) } that is usual, because { EGGS($clear) } were clear; those that developed did as usual. Number { $place } from the poorest of { $of }.
standing_removed = { EGGS($hatched) } of { EGGS($set) } eggs hatched, { $far ->
        [far] far below
       *[below] below
    } the { SHARE($usual_of_set) } that is usual, because { EGGS($removed) } were taken out; those that developed did as usual. Number { $place } from the poorest of { $of }.
standing_unknown = { EGGS($hatched) } of { EGGS($set) } eggs hatched; { EGGS($unaccounted) } have no known end, so it cannot be told whether that was poor.
standing_no = { EGGS($hatched) } of { EGGS($set) } eggs hatched; { SHARE($usual_of_set) } is usual, so this was not a poor hatch.
standing_clears_not_counted = Its clears were never counted, so an unopened egg that is put down as dead may have been clear.
table_standing = All batches, poorest first
head_share_hatched = Of developing eggs
head_usual_of_set_share = Usual of set
head_usual_share = Usual of developing

ask_fate = What became of the eggs?
fate_eggs = Of { EGGS($set) } eggs { EGGS($hatched) } gave good chicks{ COUNT($lost) ->
        [0] .
       *[other] ; { LIST($lost, most: 5) }.
    }
table_pattern = Eggs by stage, and what is usual in a batch of this size
head_usual_eggs = Usual

ask_evidence = What speaks for it, and what was different?
evidence_weights = Most weight: { LIST($causes) }.
evidence_method = Each cause is weighed by how well it explains the days and stages at which eggs were lost, beside your other batches and a published ledger, and by what log, records and your remarks say. Bad luck, and a cause that is not on the list, are candidates too; ties stay ties.
table_evidence = The likeliest causes, and what speaks for and against them
head_cause = Cause
head_share_weight = Weight
head_fits = Fits because
head_against = Against it
head_unknown = Not known
head_check_next = Check next

ask_met = What did the eggs meet?
met_not_logged = No temperature was logged for this batch, so nothing is known of heat or cold.
met_spells = { LIST($spells) }.
met_nothing = Nothing out of the way: the temperature of { $machine } stayed right but for everyday openings.
batch_water_on_target = Yes: { SHARE($projected_share) } by the transfer ({ SHARE($target_low) } to { SHARE($target_high) } is wanted).
batch_water_too_little = Too little: { SHARE($projected_share) } by the transfer ({ SHARE($target_low) } to { SHARE($target_high) } is wanted).
batch_water_too_much = Too much: { SHARE($projected_share) } by the transfer ({ SHARE($target_low) } to { SHARE($target_high) } is wanted).
batch_water_cannot_tell = It cannot be told surely: about { SHARE($projected_share) } by the transfer ({ SHARE($projected_low) } to { SHARE($projected_high) }; { SHARE($target_low) } to { SHARE($target_high) } is wanted).
batch_clock_on_time = On time, within what such a forecast can tell.
batch_clock_early = { EGGS($hours) } h early, beyond the forecast's doubt.
batch_clock_late = { EGGS($hours) } h late, beyond the forecast's doubt.
batch_place_pattern = Perhaps: the dead lie otherwise than chance would have them.
batch_place_no_sign = No sign of it.

ask_change = What to change for the next set?
change_set = Set { EGGS($eggs) } eggs to have at least { EGGS($chicks) } good chicks { SHARE($sure) } of the time; expect about { EGGS($chicks_middle) } ({ EGGS($chicks_low) } to { EGGS($chicks_high) }). { $changes ->
        [0] Nothing calls for another setting.
        [one] One thing to change or to write down.
       *[other] { $changes } things to change or to write down.
    }
change_too_many = At least { EGGS($chicks) } chicks cannot be planned in one set: plan several, or fewer chicks.
change_refused = { $why }
table_changes = What to change, most important first
head_what = Change
head_now = Now
head_to = To
head_why = Why
head_how_sure = How sure

ask_look = What to look for in unhatched eggs?
look_open = Open every unhatched egg that does not smell, froth or leak, blunt end first, and write down the look that fits best.
look_days = Days are days since setting; for other birds than hens they are scaled and good to about three days. What smells, froths or leaks is thrown out closed.
table_breakout = Looks of opened eggs, and what they point to
head_look = Look
head_days = Day
head_see = What you see
head_means = What it means
head_points_to = Points to

batch_unknown_proof = Counts and a log point to likely causes; they prove none. Two causes that leave the same loss stay tied until a record tells them apart.
batch_unknown_list = The weights hold for the causes on hatchkit's list and its stated, rounded figures.
batch_unknown_clear = A clear egg that was not opened is neither infertile nor dead: it is not known.
batch_unknown_illness = No disease can be seen in these figures. Unusual deaths are a matter for a veterinarian.

# Losses as they are counted in a sentence: "18 late dead".
loss_hatched = good chicks
loss_culled = culled chicks
loss_clear = clears
loss_infertile = infertile eggs
loss_early = early dead
loss_mid = mid dead
loss_late = late dead
loss_dead = dead embryos
loss_pipped_dead = pipped and dead
loss_removed = taken out
loss_unaccounted = without a known end

# Losses with their number: "18 late dead", "1 clear".
eggs_hatched = { EGGS($eggs) ->
        [one] 1 good chick
       *[other] { EGGS($eggs) } good chicks
    }
eggs_culled = { EGGS($eggs) ->
        [one] 1 culled chick
       *[other] { EGGS($eggs) } culled chicks
    }
eggs_clear = { EGGS($eggs) ->
        [one] 1 clear
       *[other] { EGGS($eggs) } clears
    }
eggs_infertile = { EGGS($eggs) ->
        [one] 1 infertile egg
       *[other] { EGGS($eggs) } infertile eggs
    }
eggs_early = { EGGS($eggs) ->
        [one] 1 early dead
       *[other] { EGGS($eggs) } early dead
    }
eggs_mid = { EGGS($eggs) ->
        [one] 1 mid dead
       *[other] { EGGS($eggs) } mid dead
    }
eggs_late = { EGGS($eggs) ->
        [one] 1 late dead
       *[other] { EGGS($eggs) } late dead
    }
eggs_dead = { EGGS($eggs) ->
        [one] 1 dead embryo
       *[other] { EGGS($eggs) } dead embryos
    }
eggs_pipped_dead = { EGGS($eggs) ->
        [one] 1 pipped and dead
       *[other] { EGGS($eggs) } pipped and dead
    }
eggs_removed = { EGGS($eggs) ->
        [one] 1 taken out
       *[other] { EGGS($eggs) } taken out
    }
eggs_unaccounted = { EGGS($eggs) ->
        [one] 1 without a known end
       *[other] { EGGS($eggs) } without a known end
    }
