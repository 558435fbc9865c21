# Mehrere Saisons zusammen gelesen, und was die Jahre sagen.

season_unreadable =
    .found = { $place } konnte nicht gelesen werden: { $why }
    .done = Die anderen Saisons werden ohne sie gelesen.
    .fix = Bringen Sie diese Saison in Ordnung, wie die Zeile sagt, oder legen Sie ihren Ordner woanders hin.
no_season_readable = Keine der Saisons in { $folder } konnte gelesen werden. Die erste: { $why }
keepers_by_folder =
    .found = die Ordner werden für Züchter genommen: { $keepers }
    .done = Ihre Brüter, Stämme und Bruten werden auseinandergehalten.
    .fix = Wenn alle Ihre sind, schreiben Sie keeper = "Ihr Name" in jede season.toml.
zones_differ =
    .found = die Saisons stehen in verschiedenen Zeitzonen: { $zones }
    .done = Uhrzeiten sind wie in { $zone } gezeigt; jede Saison wurde nach ihrer eigenen gelesen.
species_differ =
    .found = die Werte für { $species } sind in den Dateien season.toml der Saisons verschieden
    .done = Die der letzten Saison gelten für alle.
    .fix = Schreiben Sie in jede denselben Abschnitt [species], oder geben Sie dem Vogel einen anderen Namen.
probe_replaced =
    .found = Brüter { $machine } wurde { $earlier } von { $before } aufgezeichnet und { $later } von { $now }
    .done = Als ersetzter oder umbenannter Fühler genommen; ein Temperatursprung zwischen den beiden Jahren kann vom Fühler kommen.
    .fix = Prüfen Sie den neuen Fühler neben dem alten oder einem Fieberthermometer, und schreiben Sie probe_offset_c dafür.
offset_changed =
    .found = die Korrektur des Fühlers von Brüter { $machine } ist { $earlier } { $before } und { $later } { $now }
    .done = Jedes Jahr wird mit seiner eigenen berichtigt.
air_changed =
    .found = Brüter { $machine } ist { $earlier } { $before } und { $later } { $now }
    .done = Die Eier jedes Jahres werden nach seinem eigenen gerechnet.
change_unread =
    .found = Änderung { $number } hat keinen Tag oder keine Worte
    .done = Sie wird nicht verwendet.
    .fix = Schreiben Sie den Tag, und was geändert wurde.
changes_no_heading =
    .found = die Liste der Änderungen hat keine Überschriften für den Tag und für das Geänderte
    .done = Sie wird nicht verwendet.
    .fix = Schreiben Sie Datum und Was über ihre Spalten.
question_machine_renamed = In { $file } steht ein Brüter „{ $heading }“, den es vorher nicht gab, und einer vom Vorjahr fehlt. Ist es dieser unter neuem Namen? Vorläufig angenommen: { $choice }.
value_another_machine = ein anderer Brüter

years_one = { $name } enthält eine Saison eines Züchters; für Jahre nebeneinander nennen Sie einen Ordner, der für jedes Jahr einen Ordner enthält.

## Die Seite der Jahre

page_years_title = { $name }: Ihre Jahre
page_years_file = { $name }-Jahre
page_years_counts = { EGGS($set) } Eier eingelegt in { $batches } Bruten, { COUNT($years) ->
        [one] ein Jahr
       *[other] { COUNT($years) } Jahre ({ LIST($years) })
    }{ COUNT($keepers) ->
        [0] { "." }
        [one] { "." }
       *[other] , { COUNT($keepers) } Züchter.
    }
outcome_hatch = Schlupf der eingelegten Eier
outcome_fertility = Befruchtung
outcome_hatch_of_fertile = Schlupf der befruchteten Eier
outcome_early = früh abgestorben
outcome_mid = in der Mitte abgestorben
outcome_late = spät abgestorben
drawn_outcome_hatch = Schlupf der eingelegten Eier
drawn_outcome_fertility = befruchtet (nicht klar)
drawn_outcome_hatch_of_fertile = Schlupf der befruchteten Eier
drawn_share_axis = Anteil, %
drawn_drawn_to_all = dem Gesamtwert angenähert
drawn_as_counted = wie gezählt
drawn_year_before = im Vorjahr
drawn_by_itself = ohne sie zu erwarten (95 %)
drawn_since_change = seit der Änderung

ask_years_hatch = Wie war der Schlupf in jedem Jahr?
years_hatch_told = { LIST($told) } der eingelegten Eier. Wie gezählt steht { $highest } am höchsten und { $lowest } am niedrigsten; { $luck ->
        [beyond] durch Zufall allein lägen sie kaum so weit auseinander.
        [within] so weit kann auch der Zufall allein sie auseinanderbringen, die Reihenfolge kann also Zufall sein.
       *[untold] ob mehr als durch Zufall, lässt sich nicht sagen.
    }
years_hatch_one = { LIST($told) } der eingelegten Eier.
years_hatch_none = Das lässt sich nicht sagen: von keiner Brut sind eingelegte Eier und Küken beide bekannt.
years_one_year = { $year }: { SHARE($share) } ({ SHARE($low) } bis { SHARE($high) })
years_interval = Die Bereiche berücksichtigen, dass Bruten verschieden sind, nicht nur einzelne Eier; zwei Jahre, deren Bereiche sich überschneiden, können dennoch gleich gut sein.
years_do_changes = Schreiben Sie auf, was Sie ändern und wann, in ein Tabellenblatt namens Änderungen (Datum, Was, Wo); nächstes Jahr sagt diese Seite, ob es half.
years_do_changes_kept = Schreiben Sie weiter auf, was Sie ändern und wann; eine Änderung auf einmal lässt sich beurteilen, zwei zugleich lassen sich nicht trennen.
alt_years = Schlupf, Befruchtung und Schlupf der befruchteten Eier in { $number } Jahren mit Bereichen{ $ordered ->
        [yes] ; wie gezählt war der Schlupf am höchsten in { $highest } ({ SHARE($high) }) und am niedrigsten in { $lowest } ({ SHARE($low) }).
       *[no] { "." }
    }
table_years = Jedes Jahr
head_season = Jahr
head_outcome = Was
head_total = Von Eiern
head_share_counted = Anteil wie gezählt
head_share_pooled = Dem Gesamtwert angenähert
head_group = Gruppe
head_changed = Geändert am
head_change_what = Was geändert wurde
head_share_before = Im Vorjahr
head_share_expected = Ohne sie zu erwarten
head_share_after = Seitdem
head_verdict = Was sich sagen lässt

ask_years_differ = Unterscheiden sich die Jahre mehr als durch Zufall?
years_differ_yes = Ja: { LIST($told) }. { $comparisons } Vergleiche sind berücksichtigt.
years_differ_no = Vom Zufall nicht zu unterscheiden: in { $comparisons } Vergleichen unterscheiden sich die Jahre nicht mehr als Bruten, die ihnen zugelost werden.
years_differ_untold = Das lässt sich nicht sagen: kein Brüter mit demselben Stamm kam in zwei Jahren vor.
years_differ_one = { WORD($outcome, kind: "outcome") } ({ $lowest }: { SHARE($low) }, { $highest }: { SHARE($high) })
years_differ_how = Die Bruten wurden den Jahren zugelost, jede innerhalb ihres Brüters und ihres Stammes; so heißt ein Jahr nicht schlecht, nur weil es mehr Eier eines schlechten Stammes hat.
table_same_incubator = Derselbe Brüter in jedem Jahr
table_same_pen = Derselbe Stamm in jedem Jahr
table_same_month = Derselbe Monat in jedem Jahr

ask_years_helped = Half, was Sie geändert haben?
years_helped_none = Das lässt sich nicht sagen: es sind keine Änderungen aufgeschrieben.
years_helped_told = Von { $number ->
        [one] einer Änderung
       *[other] { $number } Änderungen
    } { $helped ->
        [0] half keine deutlich
        [one] half eine deutlich
       *[other] halfen { $helped } deutlich
    }{ $hints ->
        [0] { "." }
        [one] ; bei einer gibt es einen Hinweis darauf.
       *[other] ; bei { $hints } gibt es einen Hinweis darauf.
    }
years_regression = Geändert wird meist nach einem schlechten Jahr, und auf ein schlechtes Jahr folgt gewöhnlich ein besseres, was immer man tut. Der Maßstab ist darum nicht das Vorjahr, sondern das, was alle Jahre und die Bruten ohne die Änderung erwarten lassen.
change_helped = { DAY($date) }, { $what }: es half. { WORD($outcome, kind: "outcome") }: { SHARE($before) } im Vorjahr, { SHARE($expected) } ohne die Änderung zu erwarten ({ SHARE($expected_low) } bis { SHARE($expected_high) }), { SHARE($after) } seitdem.
change_hint = { DAY($date) }, { $what }: ein Hinweis, dass es half. { WORD($outcome, kind: "outcome") }: { SHARE($before) } im Vorjahr, { SHARE($expected) } ohne die Änderung zu erwarten ({ SHARE($expected_low) } bis { SHARE($expected_high) }), { SHARE($after) } seitdem.
change_not_seen = { DAY($date) }, { $what }: keine Hilfe zu sehen. { WORD($outcome, kind: "outcome") }: { SHARE($before) } im Vorjahr, { SHARE($expected) } ohne jede Änderung zu erwarten ({ SHARE($expected_low) } bis { SHARE($expected_high) }), { SHARE($after) } seitdem.
change_worse = { DAY($date) }, { $what }: es wurde schlechter, als zu erwarten war. { WORD($outcome, kind: "outcome") }: { SHARE($before) } im Vorjahr, { SHARE($expected) } zu erwarten ({ SHARE($expected_low) } bis { SHARE($expected_high) }), { SHARE($after) } seitdem.
change_too_few = { DAY($date) }, { $what }: seitdem zu wenige Eier, um etwas zu sagen.
change_no_before = { DAY($date) }, { $what }: für dieselben Bruten ist kein Jahr davor aufgeschrieben.
change_no_after = { DAY($date) }, { $what }: seitdem ist keine Brut aufgeschrieben.
change_beside = Ein Teil derselben Bruten erlebte zu jener Zeit eine weitere Änderung, von der sich diese dort nicht trennen lässt: { LIST($others) }.
verdict_helped = half
verdict_hint = ein Hinweis
verdict_not_seen = nicht zu sehen
verdict_worse = schlechter als erwartet
verdict_too_few = zu wenige Eier
verdict_no_before = kein Jahr davor
verdict_no_after = seitdem nichts
alt_changes = Für jede Änderung der Anteil im Vorjahr, der Bereich, der ohne sie zu erwarten ist, und der Anteil seitdem; { $helped } von { $number } liegen besser als dieser Bereich.
table_years_changes = Änderungen, und was ihnen folgte

ask_groups_keeper = Wessen Schlupf sticht heraus?
ask_groups_incubator = Unterscheiden sich die Brüter?
ask_groups_pen = Unterscheiden sich die Stämme?
ask_groups_breed = Unterscheiden sich die Rassen?
ask_groups_shelf = Unterscheiden sich die Einschübe?
ask_groups_stored_days = Spielt das Alter der Bruteier eine Rolle?
ask_groups_month = Spielt der Monat eine Rolle?
ask_groups_hen = Welche Hennen legen klare Eier?
ask_groups_cock = Unterscheiden sich die Hähne?
groups_clear = Ja, deutlich verschieden ({ WORD($outcome, kind: "outcome") }): { LIST($clear_told) }{ $may ->
        [0] { "." }
       *[other] ; vielleicht verschieden: { LIST($may_told) }.
    } { $comparisons ->
        [one] Ein Paar wurde verglichen.
       *[other] { $comparisons } Paare wurden verglichen.
    }
groups_may = Vielleicht verschieden ({ WORD($outcome, kind: "outcome") }): { LIST($may_told) }. { $comparisons ->
        [one] Ein Paar wurde verglichen
       *[other] { $comparisons } Paare wurden verglichen
    }{ $eggs_more ->
        [none] { "." }
       *[other] ; etwa { EGGS($eggs_more) } Eier von jeder Gruppe würden es zeigen.
    }
groups_none = Das lässt sich nicht sagen ({ WORD($outcome, kind: "outcome") }): { $groups ->
        [one] keine Gruppe unterscheidet
       *[other] keine zwei der { $groups } Gruppen unterscheiden
    } sich mehr, als der Zufall es will.{ $eggs_more ->
        [none] { "" }
       *[other] { " " }Etwa { EGGS($eggs_more) } Eier von jeder Gruppe würden einen so großen Unterschied wie den gesehenen zeigen.
    }
groups_pair = { $better } über { $worse }
group_name = { $by ->
        [hen] Henne { $name }
        [cock] Hahn { $name }
        [month] { MONTH($name) }
       *[other] { $name }
    }
groups_lowest = { $lowest_name }: { EGGS($missed) } von { EGGS($total) } Eiern klar, { SHARE($share) } befruchtet wie gezählt, { SHARE($pooled) } den anderen angenähert.
groups_how = Jede Gruppe wird dem Gesamtwert angenähert, umso mehr, je weniger Eier sie hat, damit eine kleine Gruppe nicht durch bloßen Zufall heraussticht; Bruten eines Schlupfes zählen als eine.
groups_mixed = Bei { LIST($groups) } nicht zu trennen von „{ WORD($column, kind: "field") }“: alle Eier einer solchen Gruppe, und keine anderen, haben dort denselben Eintrag.
alt_groups = { $groups } Gruppen mit ihren Anteilen, dem Gesamtwert angenähert und wie gezählt; am niedrigsten ist { $lowest_name } ({ SHARE($pooled) }).
table_groups = Die Gruppen

ask_years_warmth = Kosteten warme und kalte Phasen Embryonen, über alle Jahre?
years_warmth_clear = Ein klares Anzeichen, aus { $batches } Bruten von { $years } Jahren zusammen.
years_warmth_some = Ein gewisses Anzeichen, aus { $batches } Bruten von { $years } Jahren zusammen.
years_warmth_no = Das lässt sich nicht sagen, aus { $batches } Bruten von { $years } Jahren zusammen.

years_unknown_cause = Warum ein Jahr gut oder schlecht war: Futter, Wetter und die Hand des Züchters stehen hier in keiner Tabelle.
years_unknown_choice = Ob das Geänderte das Einzige war, was sich änderte.
years_unknown_records = Ob in allen Jahren gleich sorgfältig gezählt wurde; ein Jahr, in dem nicht nach klaren Eiern gesehen wurde, hat keine.

shown_not_asked = Ihre Aufzeichnungen enthalten nichts, woran sich das fragen ließe.
years_nameless = Brutaufzeichnungen ohne Namen
