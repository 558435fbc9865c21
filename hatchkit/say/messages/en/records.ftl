# What could not be taken as it was written: found, done, fix.

answers_unreadable =
    .found = the answers that were kept before can't be read: { $path }
    .done = They are not used; what was asked before is asked again.
    .fix = Delete the file and answer anew; hatchkit check FOLDER --ask.
answers_elsewhere =
    .found = { $count ->
        [one] one answer of yours lies
       *[other] { $count } answers of yours lie
    } in { $path }, since the season's folder can't be written to
    .done = Used.
answers_nowhere = The answers could be written neither to { $folder } nor to the working folder nor to your home folder; start hatchkit in a folder that you may write to.

tables_in_season = { $path } lies in the season's own folder, where its tables would be read as part of it: name another folder.
not_written = { $path } could not be written: { $why }. Nothing was changed there.
tables_unwritable = { $path } cannot be written to: { $why }.
tables_not_empty = { $path } holds other things ({ $names } ...): name a new or an empty folder for the tables.

language_other =
    .found = the sheets are in { TONGUES($tongues) }
    .done = What is said of the season is in English.
    .fix = Write language = "de" (or "fr", "es", "en") in season.toml to have another.
language_mixed =
    .found = the sheets are in several languages ({ TONGUES($tongues) })
    .done = What is said of the season is in English.
    .fix = Write language = "de" (or "fr", "es", "en") in season.toml to have another.
language_unknown = There is no language “{ $language }”; there are { LIST($known) }.
