# What could not be taken as it was written: found, done, mend.

answers_unreadable =
    .found = the answers that were kept before can't be read: { $path }
    .done = They are not used; what was asked before is asked again.
    .mend = Delete the file and answer anew; hatchkit check FOLDER --ask.
