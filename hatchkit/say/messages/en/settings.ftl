# What cannot be used of season.toml.

set_unreadable =
    .found = the file can't be read: { $why }
    .done = The season is read without its settings.
    .fix = Correct that line; text needs quotes, as in timezone = "Europe/Rome".
set_nested =
    .found = the file holds brackets within brackets without end
    .done = The season is read without its settings.
    .fix = Write it anew.
set_not_opened =
    .found = the file can't be opened ({ $why })
    .done = The season is read without its settings.
    .fix = Close it in other programs.
set_no_zone =
    .found = no time zone is given
    .done = Your wall clock is taken as it stands, without summer time.
    .fix = Write timezone = "Europe/Rome" (your own zone) in season.toml.
set_unknown_zone =
    .found = { $zone } is not a known time zone
    .done = Your wall clock is taken as it stands, without summer time.
    .fix = { $near ->
        [none] Write it like "Europe/Rome".
       *[some] Did you mean "{ $near }"?
    }
set_species_no_section =
    .found = species is no section
    .done = It is not used.
    .fix = Write [species.{ $name ->
        [none] my_bird
       *[given] { $name }
    }], its figures below.
set_based_on =
    .found = [species.{ $name }] { $based_on ->
        [none] does not say based_on what
       *[given] is based on { $based_on }, which is not known
    }
    .done = It is not used.
    .fix = Write based_on = "chicken" (known: { LIST($known) }).
set_unknown_figure =
    .found = { $figure } is not a figure that hatchkit knows
    .done = It is not used.
    .fix = { $near ->
        [none] Known are: { LIST($known) }.
       *[some] Did you mean { $near }?
    }
set_figure_no_number =
    .found = { $figure } = { $value } is no number
    .done = The kit's own figure is used.
    .fix = Write a plain number.
set_figure_far =
    .found = { $figure } = { $value } is far from that of any bird that hatchkit knows
    .done = The kit's own figure is used.
    .fix = Correct the figure.
set_days_disorder =
    .found = [species.{ $name }]: candlings, transfer and hatch do not follow each other
    .done = The kit's own figures are used.
    .fix = Correct the days; each must come after the one before.
set_unknown =
    .found = { $where } is not a setting that hatchkit knows
    .done = It is not used.
    .fix = { $near ->
        [none] { "" }
       *[some] Did you mean { $near }?
    }
set_no_section =
    .found = { $where } = { $value } is no section
    .done = It is not used.
    .fix = Write it as a section: [{ $where }]
set_no_list =
    .found = { $where } is no list of entries
    .done = It is not used.
    .fix = Write each under its own [[{ $where }]].
set_lacks =
    .found = { $list ->
        [changes] a change needs date and what
       *[norms] an own level needs species, stage and share
    }
    .done = It is not used.
    .fix = Add what is missing.
set_unknown_column =
    .found = { $taken } is no column of hatchkit
    .done = It is not used.
    .fix = { $near ->
        [none] The columns are in the README.
       *[some] Did you mean "{ $heading }" = "{ $near }"?
    }
set_wrong =
    .found = { $key } = { $value } { $wrong ->
        [text] is no text in quotes
        [yes_no] is neither true nor false
        [choice] is none of { LIST($choices) }
        [zone] is not a known time zone
        [names] is no list of names
        [range] lies outside { PLAIN($low) } to { PLAIN($high) }
       *[number] is no number
    }
    .done = It is not used.
    .fix = Write it like { $example }
