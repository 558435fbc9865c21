# Was von season.toml nicht verwendet werden kann.

set_unreadable =
    .found = die Datei kann nicht gelesen werden: { $why }
    .done = Die Saison wird ohne ihre Einstellungen gelesen.
    .fix = Berichtigen Sie diese Zeile; Text braucht Anführungszeichen, wie in timezone = "Europe/Rome".
set_nested =
    .found = die Datei enthält Klammern in Klammern ohne Ende
    .done = Die Saison wird ohne ihre Einstellungen gelesen.
    .fix = Schreiben Sie sie neu.
set_not_opened =
    .found = die Datei kann nicht geöffnet werden ({ $why })
    .done = Die Saison wird ohne ihre Einstellungen gelesen.
    .fix = Schließen Sie sie in anderen Programmen.
set_no_zone =
    .found = es ist keine Zeitzone angegeben
    .done = Ihre Uhr gilt so, wie sie zeigt, ohne Sommerzeit.
    .fix = Schreiben Sie timezone = "Europe/Rome" (Ihre eigene Zone) in season.toml.
set_unknown_zone =
    .found = { $zone } ist keine bekannte Zeitzone
    .done = Ihre Uhr gilt so, wie sie zeigt, ohne Sommerzeit.
    .fix = { $near ->
        [none] Schreiben Sie sie wie "Europe/Rome".
       *[some] Meinten Sie "{ $near }"?
    }
set_species_no_section =
    .found = species ist kein Abschnitt
    .done = Wird nicht verwendet.
    .fix = Schreiben Sie [species.{ $name ->
        [none] my_bird
       *[given] { $name }
    }], die Zahlen darunter.
set_based_on =
    .found = [species.{ $name }] { $based_on ->
        [none] sagt nicht, worauf es beruht (based_on)
       *[given] beruht auf { $based_on }, was nicht bekannt ist
    }
    .done = Wird nicht verwendet.
    .fix = Schreiben Sie based_on = "chicken" (bekannt: { LIST($known) }).
set_unknown_figure =
    .found = { $figure } ist keine Zahl, die hatchkit kennt
    .done = Wird nicht verwendet.
    .fix = { $near ->
        [none] Bekannt sind: { LIST($known) }.
       *[some] Meinten Sie { $near }?
    }
set_figure_no_number =
    .found = { $figure } = { $value } ist keine Zahl
    .done = Die eigene Zahl von hatchkit gilt.
    .fix = Schreiben Sie eine einfache Zahl.
set_figure_far =
    .found = { $figure } = { $value } liegt weit von dem jedes Vogels, den hatchkit kennt
    .done = Die eigene Zahl von hatchkit gilt.
    .fix = Berichtigen Sie die Zahl.
set_days_disorder =
    .found = [species.{ $name }]: Schieren, Umlegen und Schlupf folgen nicht aufeinander
    .done = Die eigenen Zahlen von hatchkit gelten.
    .fix = Berichtigen Sie die Tage; jeder muss nach dem vorigen kommen.
set_unknown =
    .found = { $where } ist keine Einstellung, die hatchkit kennt
    .done = Wird nicht verwendet.
    .fix = { $near ->
        [none] { "" }
       *[some] Meinten Sie { $near }?
    }
set_no_section =
    .found = { $where } = { $value } ist kein Abschnitt
    .done = Wird nicht verwendet.
    .fix = Schreiben Sie es als Abschnitt: [{ $where }]
set_no_list =
    .found = { $where } ist keine Liste von Einträgen
    .done = Wird nicht verwendet.
    .fix = Schreiben Sie jeden unter sein eigenes [[{ $where }]].
set_lacks =
    .found = { $list ->
        [changes] eine Änderung braucht date und what
       *[norms] ein eigener Wert braucht species, stage und share
    }
    .done = Wird nicht verwendet.
    .fix = Ergänzen Sie, was fehlt.
set_unknown_column =
    .found = { $taken } ist keine Spalte von hatchkit
    .done = Wird nicht verwendet.
    .fix = { $near ->
        [none] Die Spalten stehen im README.
       *[some] Meinten Sie "{ $heading }" = "{ $near }"?
    }
set_wrong =
    .found = { $key } = { $value } { $wrong ->
        [text] ist kein Text in Anführungszeichen
        [yes_no] ist weder true noch false
        [choice] ist keines von { LIST($choices) }
        [zone] ist keine bekannte Zeitzone
        [names] ist keine Liste von Namen
        [range] liegt außerhalb von { PLAIN($low) } bis { PLAIN($high) }
       *[number] ist keine Zahl
    }
    .done = Wird nicht verwendet.
    .fix = Schreiben Sie es wie { $example }
