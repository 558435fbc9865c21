# Several seasons read together, and what the years say.

season_unreadable =
    .found = { $place } could not be read: { $why }
    .done = The other seasons are read without it.
    .mend = Mend that season as the line says, or move its folder away.
no_season_readable = None of the seasons in { $folder } could be read. The first: { $why }
keepers_by_folder =
    .found = the folders are taken for keepers: { $keepers }
    .done = Their machines, pens and batches are kept apart.
    .mend = If they are all yours, write keeper = "your name" in each season.toml.
zones_differ =
    .found = the seasons are kept in different time zones: { $zones }
    .done = Times are shown as in { $zone }; each season was read by its own.
species_differ =
    .found = the figures of { $species } differ between the seasons' files season.toml
    .done = Those of the last season hold for all.
    .mend = Write the same [species] section in each, or give the bird another name.
probe_replaced =
    .found = machine { $machine } was logged by { $before } in { $earlier } and by { $now } in { $later }
    .done = Taken for a probe replaced or renamed; a step in temperature between the two years may be the probe's.
    .mend = Check the new probe beside the old one or a clinical thermometer, and write probe_offset_c for it.
offset_changed =
    .found = the correction of the probe of machine { $machine } is { $before } in { $earlier } and { $now } in { $later }
    .done = Each year is corrected by its own.
air_changed =
    .found = machine { $machine } is { $before } in { $earlier } and { $now } in { $later }
    .done = Each year's eggs are reckoned by its own.
change_unread =
    .found = change { $number } has no day or no words
    .done = It is not used.
    .mend = Write the day and what was changed.
changes_no_heading =
    .found = the list of changes has no headings for the day and for what was changed
    .done = It is not used.
    .mend = Write Date and What above its columns.
question_machine_renamed = In { $file } there is a machine “{ $heading }” that was not there before, and one of the year before is gone. Is it that one under a new name? Taken for now: { $choice }.
value_another_machine = another machine
