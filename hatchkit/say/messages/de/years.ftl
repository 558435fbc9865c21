# Mehrere Saisons zusammen gelesen, und was die Jahre sagen.

season_unreadable =
    .found = { $place } konnte nicht gelesen werden: { $why }
    .done = Die anderen Saisons werden ohne sie gelesen.
    .mend = Bringen Sie diese Saison in Ordnung, wie die Zeile sagt, oder legen Sie ihren Ordner woanders hin.
no_season_readable = Keine der Saisons in { $folder } konnte gelesen werden. Die erste: { $why }
keepers_by_folder =
    .found = die Ordner werden für Züchter genommen: { $keepers }
    .done = Ihre Brüter, Stämme und Bruten werden auseinandergehalten.
    .mend = Wenn alle Ihre sind, schreiben Sie keeper = "Ihr Name" in jede season.toml.
zones_differ =
    .found = die Saisons stehen in verschiedenen Zeitzonen: { $zones }
    .done = Uhrzeiten sind wie in { $zone } gezeigt; jede Saison wurde nach ihrer eigenen gelesen.
species_differ =
    .found = die Werte für { $species } sind in den Dateien season.toml der Saisons verschieden
    .done = Die der letzten Saison gelten für alle.
    .mend = Schreiben Sie in jede denselben Abschnitt [species], oder geben Sie dem Vogel einen anderen Namen.
probe_replaced =
    .found = Brüter { $machine } wurde { $earlier } von { $before } aufgezeichnet und { $later } von { $now }
    .done = Als ersetzter oder umbenannter Fühler genommen; ein Temperatursprung zwischen den beiden Jahren kann vom Fühler kommen.
    .mend = Prüfen Sie den neuen Fühler neben dem alten oder einem Fieberthermometer, und schreiben Sie probe_offset_c dafür.
offset_changed =
    .found = die Korrektur des Fühlers von Brüter { $machine } ist { $earlier } { $before } und { $later } { $now }
    .done = Jedes Jahr wird mit seiner eigenen berichtigt.
air_changed =
    .found = Brüter { $machine } ist { $earlier } { $before } und { $later } { $now }
    .done = Die Eier jedes Jahres werden nach seinem eigenen gerechnet.
change_unread =
    .found = Änderung { $number } hat keinen Tag oder keine Worte
    .done = Sie wird nicht verwendet.
    .mend = Schreiben Sie den Tag, und was geändert wurde.
changes_no_heading =
    .found = die Liste der Änderungen hat keine Überschriften für den Tag und für das Geänderte
    .done = Sie wird nicht verwendet.
    .mend = Schreiben Sie Datum und Was über ihre Spalten.
question_machine_renamed = In { $file } steht ein Brüter „{ $heading }“, den es vorher nicht gab, und einer vom Vorjahr fehlt. Ist es dieser unter neuem Namen? Vorläufig angenommen: { $choice }.
value_another_machine = ein anderer Brüter
