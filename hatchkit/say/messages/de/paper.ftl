# Papier: das Schierblatt, die Erklärungen der leeren Tabelle, die Bemerkungen in season.toml.

paper_candling = Schierblatt
paper_head_batch = Brut
paper_head_kind = Vögel
paper_head_machine = Brüter
paper_head_eggs = Eier
paper_head_set = Eingelegt am
paper_look = Termin
paper_day = Tag
paper_when = Datum
paper_clear = Klar
paper_dead = Abgestorben
paper_other = Angeknickt, faul, sonst
paper_left = Wieder hinein
paper_notes = Bemerkungen
paper_date = { DAY($day) }
paper_ticks = An nicht geschlüpften Eiern und an Küken gesehen: ankreuzen
paper_explain_clear = Klar: kein Zeichen eines Keims. Abgestorben: ein Blutring, eine dunkle Masse, die sich nicht regt, blasse Adern.
paper_explain_blank = Schreiben Sie 0, wo Sie nachgesehen und nichts gefunden haben; lassen Sie leer, wonach Sie nicht gesehen haben.
paper_explain_copy = Übertragen Sie die Zeilen in batches.xlsx: die ersten beiden Schiertermine und das Umlegen in die Tabelle der Bruten, weitere in das Blatt Schieren, die Zeichen in die Spalte Zeichen.
paper_usual = Übliche Tage für zweimal Schieren, Umlegen und Schlupf: { LIST($birds) }.
paper_bird = { $bird } { LIST($days) }

start_in_the_way = { $path } ist im Weg; hatchkit überschreibt es nicht.
start_unwritable = In { $folder } kann nicht geschrieben werden ({ $why }); wählen Sie einen anderen Ordner.

sheet_fill = So wird es ausgefüllt
fill_title = So wird diese Tabelle ausgefüllt (hatchkit)
fill_how = Lassen Sie ein Feld leer, wenn nicht gezählt wurde; schreiben Sie 0, wenn gezählt wurde und es keines gab. Schreiben Sie zu jedem Datum die Stunde, wenn Sie sie wissen: 2026-03-05 18:30.
fill_folded = Was selten gebraucht wird, ist zusammengeklappt: die kleinen Pluszeichen über den Spalten öffnen es. Sie dürfen Spalten streichen und hinzufügen.
fill_head_sheet = Blatt
fill_head_column = Spalte
fill_head_what = Was hineingehört
fill_head_unit = Einheit
fill_head_one_of = Eines von
fill_batches = Eine Zeile für jede Brut: was hineinkam, was jedes Schieren ergab, was herauskam.
fill_eggs = Eine Zeile für jedes Ei, wenn Sie Ihre Eier nummerieren. Muss nicht sein.
fill_weights = Eine Zeile für jede Wägung, eines Eies oder einer ganzen Horde. Muss nicht sein.
fill_candlings = Eine Zeile für jedes Schieren, wenn Sie öfter als zweimal schieren. Muss nicht sein.
fill_choose = Bitte wählen Sie eines aus der Liste.
fill_number = Eine Zahl ab 0, oder leer, wenn nicht gezählt wurde.
unit_time = Tag und Stunde nach Ihrer Uhr
unit_eggs = Eier
unit_days = Tage
unit_weeks = Wochen
unit_g = Gramm

toml_head = Was hatchkit über diese Saison nicht erraten kann. Nehmen Sie das # vor einer Zeile weg, um sie zu verwenden.
toml_title = Meine Saison
toml_language = Die Sprache, in der hatchkit spricht: en, de, fr oder es. Fehlt sie, ist es die Ihrer Tabellen.
toml_timezone = Die Zeitzone Ihrer Uhr; Messwerte und Daten werden damit auf eine Zeit gebracht.
toml_default = Wenn alle Eier von einer Art sind oder alle in einem Brüter, dürfen diese Spalten leer bleiben.
    Arten sind: { $species }.
toml_incubators = Ein Abschnitt für jeden Brüter. Legen Sie seine Aufzeichnungen in den Ordner sensors.
toml_files = welche Aufzeichnungen zu ihm gehören
toml_air = "fan" (mit Lüfter) oder "still" (ohne)
toml_set_point = worauf der Regler gestellt ist, in °C
toml_offset = kommt zu den Messwerten hinzu: was der Fühler zu viel anzeigt, mit Minus
toml_altitude = Höhe über dem Meer, für die Feuchte
toml_sensors = Aufzeichnungen: nur nötig, wenn hatchkit danach fragt.
toml_unit = "C", "F" oder "K"
toml_day_first = 04/05/2026 ist der 4. Mai
toml_sheets = Tabellen: dasselbe für Daten, die als Text getippt sind.
toml_headers = Ihre eigenen Überschriften, wenn sie nicht erkannt werden: "Ihre Überschrift" = "Spalte".
toml_heading = Eier rein
toml_species = Eigene Werte für eine Vogelart, ausgehend von einer bekannten.
