# Weswegen eine Frage abgelehnt wird.

no_level = Es gibt keinen Wert „{ $level }“; bekannt sind { LIST($known) }.
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
no_such_dose = Es gibt keine Dosis „{ $dose }“; wählen Sie eine von { LIST($known) }.
no_such_unit = Temperaturen lassen sich in C oder F zeigen, nicht in „{ $unit }“.
