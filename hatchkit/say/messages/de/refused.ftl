# Weswegen eine Frage abgelehnt wird.

no_column = Die Bruten haben keine Spalte „{ $column }“, nach der man sie aufteilen könnte; es gibt zum Beispiel { LIST($there) }.
one_column = Bruten werden nach einer Spalte auf einmal aufgeteilt: by='{ $column }', nicht by={ $given }. Für zwei zugleich braucht es eine Spalte, die beide enthält. Es gibt zum Beispiel { LIST($there) }.
clears_out_of_order = Geöffnete klare Eier müssen zwischen 1 und allen klaren Eiern liegen, diese höchstens bei den eingelegten, und die abgestorbenen darunter höchstens bei den geöffneten.
no_hatch_to_chart = Noch keine fertige Brut zum Zeichnen.
no_such_stage = Es gibt keinen Abschnitt „{ $stage }“; es gibt { LIST($known) }.
stage_not_counted = Keine fertige Brut hat eine volle Zählung ({ WORD($stage, kind: "loss") }): nichts zu zeichnen.
no_eggs_to_chart = Keine fertige Brut hat Eier zum Zeichnen ({ WORD($species, kind: "species") }).
no_interval_method = Es gibt kein Verfahren „{ $method }“ für Bereiche; bekannt sind { LIST($known) }.
count_beyond_total = Eine Zahl muss zwischen 0 und der Gesamtzahl liegen, aus der sie stammt.
share_without_eggs = Ein Anteil braucht mindestens eine Brut mit Eiern.
own_level_lacks = Ein eigener Wert braucht species, stage und einen Anteil share zwischen 0 und 1, nicht { $given }.
own_level_of = Die Bezugszahl eines eigenen Werts ist set, fertile oder transferred, nicht { $given }.
too_few_stretches = Ein Verlauf in zwei Schüben braucht Todesfälle in mindestens 5 verschiedenen Zeiträumen; mit weniger Schierterminen geben die Aufzeichnungen nur die einfache Schätzung her.
ages_uneven = after_day, by_day und eggs müssen gleich lang sein.
ages_without_egg = Sterbealter brauchen mindestens ein Ei.
ages_backward = Jeder Zeitraum muss nach seinem Beginn enden: by_day über after_day.
no_limits = Es gibt keine Grenzen der Abschnitte „{ $name }“; bekannt sind { LIST($known) }.
limits_with_holes = Eigene Grenzen der Abschnitte müssen bei Tag 0 beginnen und lückenlos aufeinander folgen, zum Beispiel early 0 bis 7, mid 7 bis 14, late 14 bis 21.
no_such_split = Abschnitte gehen nach development oder candling, nicht nach „{ $given }“.
no_such_air = Luft kann { LIST($known) } sein; „{ $air }“ ist nicht bekannt.
readings_in_disorder = Messwerte müssen nach der Zeit geordnet sein, bevor die Temperatur des Eies berechnet wird.
no_such_unit = Temperaturen lassen sich in C oder F zeigen, nicht in „{ $unit }“.
not_one_of = { $name } „{ $given }“ ist nicht bekannt; bekannt sind { LIST($known) }.
whole_number = { $name } muss eine ganze Zahl ab { PLAIN($least) } sein, nicht { $given }.
end_not_known = Wie Brut „{ $batch }“ ausging, ist nicht bekannt; deshalb lässt sich keine Ursache abwägen.
set_time_none = „{ $given }“ ist keine Zeit zum Einlegen; schreiben Sie sie wie 2026-04-03 18:00, nach Ihrer Uhr.
set_time_misread = „{ $given }“ { $why ->
        [year_odd] hat ein Jahr, das nicht stimmen kann
        [year_none] hat kein Jahr
       *[no_date] ist kein Datum
    }; schreiben Sie es wie 2026-04-03 18:00, nach Ihrer Uhr.
set_time_two_ways = „{ $given }“ kann { DATE($one) } oder { DATE($other) } heißen: schreiben Sie { $write_one } oder { $write_other }, oder setzen Sie [sheets] day_first = true (oder false) in season.toml.
set_time_skipped = { HOUR($time) } am { DAY($time) } gibt es in { $zone } nicht: Da wird die Uhr vorgestellt. Nennen Sie eine Stunde, die die Uhr zeigt.
set_time_twice = { HOUR($time) } am { DAY($time) } kommt in { $zone } zweimal: In dieser Nacht wird die Uhr zurückgestellt. Nennen Sie eine Stunde, die einmal kommt.
plan_no_species = Die Saison hat keine Brut; sagen Sie also, für welche Art der Plan ist (species=...).
plan_sure = sure ist eine Wahrscheinlichkeit zwischen 0 und 1 (zum Beispiel 0.9), nicht { $given }.
no_end_on_record = Von keiner Brut ist der Ausgang notiert; was die Saison verlor, lässt sich nicht sagen.
no_batch_yet = In dieser Saison gibt es noch keine Brut, also auch keinen Schlupf zum Nachsehen.
no_end_to_look_at = Von keiner Brut dieser Saison ist der Ausgang notiert: Nennen Sie die Brut, um die es geht.
not_an_answer = { $path } ist keine Lösung, die hatchkit geschrieben hat ({ $why }).
folder_holds_other = { $path } enthält anderes, das ersetzt würde: Nennen Sie einen neuen Ordner.
folder_not_empty = { $path } ist nicht leer; nennen Sie einen neuen Ordner.
answer_in_season = Die Lösung darf nicht im Ordner der Saison liegen; nennen Sie eine Datei anderswo.
planted_often = { $cause } lässt sich nicht { $times }-mal einbauen; es gehen: { LIST($known) }.
lesson_batches = Eine Saison im Unterricht braucht mindestens zwei Bruten: eine, nach der gefragt wird, und eine zum Vergleich.
no_exercise = Es gibt keine Aufgabe „{ $name }“; das erste Wort nach check( muss bleiben, wie es war.
no_folder_for = Es gibt keinen Ordner { $folder }, in den { $name } geschrieben werden könnte; legen Sie ihn zuerst an.
marks_in_folder = { $path } ist ein Ordner; nennen Sie eine Datei für die Noten.
not_marks = { $path } gibt es schon, und es sind keine Noten; es wird nicht überschrieben. Nennen Sie eine neue Datei.
no_answer_book = { $folder } enthält kein Lösungsbuch ({ $book }); es ist kein Ordner einer Unterrichtsstunde.
answer_book_unread = { $path } lässt sich nicht lesen; legen Sie die Datei zurück, die hatchkit geschrieben hat.
answer_book_lacks = { $path } hat keine Spalte { LIST($columns) }: Ein anderes Programm hat die Datei neu gespeichert, oder ein älteres hatchkit hat sie geschrieben. Legen Sie die Datei zurück, die hatchkit geschrieben hat, oder erstellen Sie die Stunde neu.
not_there = { $path } gibt es nicht.
no_answer_sheet = In { $path } liegt kein Antwortblatt; ein Antwortblatt ist eine Tabelle mit den Überschriften { LIST($headings) }.{ COUNT($told) ->
        [0] { "" }
       *[other] { " " }Gefunden wurde: { LIST($told) }
    }
