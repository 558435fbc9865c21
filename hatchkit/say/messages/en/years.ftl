# Several seasons read together, and what the years say.

season_unreadable =
    .found = { $place } could not be read: { $why }
    .done = The other seasons are read without it.
    .fix = Fix that season as the line says, or move its folder away.
no_season_readable = None of the seasons in { $folder } could be read. The first: { $why }
keepers_by_folder =
    .found = the folders are taken for keepers: { $keepers }
    .done = Their machines, pens and batches are kept apart.
    .fix = If they are all yours, write keeper = "your name" in each season.toml.
zones_differ =
    .found = the seasons are kept in different time zones: { $zones }
    .done = Times are shown as in { $zone }; each season was read by its own.
species_differ =
    .found = the figures of { $species } differ between the seasons' files season.toml
    .done = Those of the last season hold for all.
    .fix = Write the same [species] section in each, or give the bird another name.
probe_replaced =
    .found = machine { $machine } was logged by { $before } in { $earlier } and by { $now } in { $later }
    .done = Taken for a probe replaced or renamed; a step in temperature between the two years may be the probe's.
    .fix = Check the new probe beside the old one or a clinical thermometer, and write probe_offset_c for it.
offset_changed =
    .found = the correction of the probe of machine { $machine } is { $before } in { $earlier } and { $now } in { $later }
    .done = Each year is corrected by its own.
air_changed =
    .found = machine { $machine } is { $before } in { $earlier } and { $now } in { $later }
    .done = Each year's eggs are reckoned by its own.
change_unread =
    .found = change { $number } has no day or no words
    .done = It is not used.
    .fix = Write the day and what was changed.
changes_no_heading =
    .found = the list of changes has no headings for the day and for what was changed
    .done = It is not used.
    .fix = Write Date and What above its columns.
question_machine_renamed = In { $file } there is a machine “{ $heading }” that was not there before, and one of the year before is gone. Is it that one under a new name? Taken for now: { $choice }.
value_another_machine = another machine

years_one = { $name } holds one season of one keeper; for years side by side name a folder that holds a folder for each year.

## The page of the years

page_years_title = { $name }: your years
page_years_file = { $name }-years
page_years_counts = { EGGS($set) } eggs set in { $batches } batches, { COUNT($years) ->
        [one] one year
       *[other] { COUNT($years) } years ({ LIST($years) })
    }{ COUNT($keepers) ->
        [0] { "." }
        [one] { "." }
       *[other] , { COUNT($keepers) } keepers.
    }
outcome_hatch = hatch of eggs set
outcome_fertility = fertility
outcome_hatch_of_fertile = hatch of the fertile
outcome_early = early dead
outcome_mid = mid dead
outcome_late = late dead
drawn_outcome_hatch = hatch of eggs set
drawn_outcome_fertility = fertile (not clear)
drawn_outcome_hatch_of_fertile = hatch of the fertile
drawn_share_axis = share, %
drawn_drawn_to_all = drawn towards all
drawn_as_counted = as counted
drawn_year_before = the year before
drawn_by_itself = expected without it (95 %)
drawn_since_change = since the change

ask_years_hatch = How did each year hatch?
years_hatch_told = { LIST($told) } of the eggs set. As counted, { $highest } stands highest and { $lowest } lowest; { $luck ->
        [beyond] luck alone is unlikely to set them so far apart.
        [within] luck alone can set them so far apart, so this order may be luck.
       *[untold] whether by more than luck cannot be told.
    }
years_hatch_one = { LIST($told) } of the eggs set.
years_hatch_none = It cannot be told: of no batch both eggs set and chicks are known.
years_one_year = { $year }: { SHARE($share) } ({ SHARE($low) } to { SHARE($high) })
years_interval = The intervals allow for batches that differ, not only for single eggs; two years whose intervals overlap may still be alike.
years_do_changes = Write what you change and when in a sheet named changes (Date, What, Where); next year this page says whether it helped.
years_do_changes_kept = Go on writing down what you change and when; one change at a time can be told apart, two cannot.
alt_years = Hatch, fertility and hatch of the fertile in { $number } years with intervals{ $ordered ->
        [yes] ; as counted the hatch was highest in { $highest } ({ SHARE($high) }) and lowest in { $lowest } ({ SHARE($low) }).
       *[no] { "." }
    }
table_years = Each year
head_season = Year
head_outcome = What
head_total = Out of eggs
head_share_counted = Share as counted
head_share_pooled = Drawn towards all
head_group = Group
head_changed = Changed on
head_change_what = What was changed
head_share_before = Year before
head_share_expected = Expected without it
head_share_after = Since
head_verdict = What can be said

ask_years_differ = Do the years differ by more than luck?
years_differ_yes = Yes: { LIST($told) }. { $comparisons } comparisons are allowed for.
years_differ_no = Not to be told from luck: in { $comparisons } comparisons the years differ no more than batches dealt to them at random.
years_differ_untold = It cannot be told: no machine and pen was there in two years.
years_differ_one = { WORD($outcome, kind: "outcome") } ({ SHARE($low) } in { $lowest }, { SHARE($high) } in { $highest })
years_differ_how = Batches were dealt to the years at random, each within its machine and pen, so that a year with more eggs of a poor pen is not called poor for that.
table_same_incubator = The same machine in each year
table_same_pen = The same pen in each year
table_same_month = The same month in each year

ask_years_helped = Did what you changed help?
years_helped_none = It cannot be told: no changes are on record.
years_helped_told = Of { $number ->
        [one] one change
       *[other] { $number } changes
    } { $helped ->
        [0] none clearly helped
        [one] one clearly helped
       *[other] { $helped } clearly helped
    }{ $hints ->
        [0] { "." }
        [one] ; of one there is a hint.
       *[other] ; of { $hints } there is a hint.
    }
years_regression = A change is mostly made after a poor year, and a poor year is usually followed by a better one, whatever is done. So the measure is not the year before but what all years and the batches without the change let expect.
change_helped = { DAY($date) }, { $what }: it helped. In { WORD($outcome, kind: "outcome") } { SHARE($before) } the year before, { SHARE($expected) } to be expected without it ({ SHARE($expected_low) } to { SHARE($expected_high) }), { SHARE($after) } since.
change_hint = { DAY($date) }, { $what }: a hint that it helped. In { WORD($outcome, kind: "outcome") } { SHARE($before) } the year before, { SHARE($expected) } to be expected without it ({ SHARE($expected_low) } to { SHARE($expected_high) }), { SHARE($after) } since.
change_not_seen = { DAY($date) }, { $what }: no help to be seen. In { WORD($outcome, kind: "outcome") } { SHARE($before) } the year before, { SHARE($expected) } to be expected without any change ({ SHARE($expected_low) } to { SHARE($expected_high) }), { SHARE($after) } since.
change_worse = { DAY($date) }, { $what }: it got worse than was to be expected. In { WORD($outcome, kind: "outcome") } { SHARE($before) } the year before, { SHARE($expected) } to be expected ({ SHARE($expected_low) } to { SHARE($expected_high) }), { SHARE($after) } since.
change_too_few = { DAY($date) }, { $what }: too few eggs since then to say.
change_no_before = { DAY($date) }, { $what }: no year before it is on record for the same batches.
change_no_after = { DAY($date) }, { $what }: no batch since then is on record.
change_beside = A part of the same batches met another change at that time, from which this cannot be told apart in them: { LIST($others) }.
verdict_helped = helped
verdict_hint = a hint
verdict_not_seen = not to be seen
verdict_worse = worse than expected
verdict_too_few = too few eggs
verdict_no_before = no year before
verdict_no_after = nothing since
alt_changes = For each change the share in the year before, the range to be expected without it, and the share since; { $helped } of { $number } lie beyond that range for the better.
table_years_changes = Changes and what followed

ask_groups_keeper = Whose hatch stands out?
ask_groups_incubator = Do the machines differ?
ask_groups_pen = Do the pens differ?
ask_groups_breed = Do the breeds differ?
ask_groups_shelf = Do the shelves differ?
ask_groups_stored_days = Does the age of the eggs matter?
ask_groups_month = Does the month matter?
ask_groups_hen = Which hens lay clear eggs?
ask_groups_cock = Do the cocks differ?
groups_clear = Yes, in { WORD($outcome, kind: "outcome") } these clearly differ: { LIST($clear_told) }{ $may ->
        [0] { "." }
       *[other] ; these may: { LIST($may_told) }.
    } { $comparisons ->
        [one] One pair was compared.
       *[other] { $comparisons } pairs were compared.
    }
groups_may = Perhaps: in { WORD($outcome, kind: "outcome") } these may differ: { LIST($may_told) }. { $comparisons ->
        [one] One pair was compared
       *[other] { $comparisons } pairs were compared
    }{ $eggs_more ->
        [none] { "." }
       *[other] ; about { EGGS($eggs_more) } eggs of each would tell.
    }
groups_none = Not to be told: in { WORD($outcome, kind: "outcome") } no { $groups ->
        [one] group
       *[other] two of the { $groups } groups
    } differ by more than luck.{ $eggs_more ->
        [none] { "" }
       *[other] { " " }About { EGGS($eggs_more) } eggs of each would show a difference as large as the one seen.
    }
groups_pair = { $better } above { $worse }
group_name = { $by ->
        [hen] hen { $name }
        [cock] cock { $name }
        [month] { MONTH($name) }
       *[other] { $name }
    }
groups_lowest = { $lowest_name }: { EGGS($missed) } of { EGGS($total) } eggs clear, { SHARE($share) } fertile as counted, { SHARE($pooled) } drawn towards the others.
groups_how = Each group is drawn towards all of them, the more so the fewer its eggs, so that a small group does not stand out by luck alone; batches of one hatch count as one.
groups_mixed = { LIST($groups) } cannot be told from their { $column }: all their eggs, and no others, are of one.
alt_groups = { $groups } groups with their shares drawn towards all and as counted; the lowest is { $lowest_name } ({ SHARE($pooled) }).
table_groups = The groups

ask_years_warmth = Did warm and cold spells cost embryos, over all years?
years_warmth_clear = A clear sign, from { $batches } batches of { $years } years together.
years_warmth_some = Some sign, from { $batches } batches of { $years } years together.
years_warmth_no = It cannot be told, from { $batches } batches of { $years } years together.

years_unknown_cause = Why a year was good or poor: feed, weather and a person's hand are in no table here.
years_unknown_choice = Whether what was changed was the only thing that changed.
years_unknown_records = Whether all years were counted with the same care; a year in which clears were not looked for has none.

shown_not_asked = Your records hold nothing to ask this of.
years_nameless = Hatching records without names
