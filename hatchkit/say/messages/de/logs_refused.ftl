# Warum eine Datei nicht als Aufzeichnung gelesen werden kann.

log_refused = { $name } kann nicht als Aufzeichnung eines Fühlers gelesen werden: { $why }.
refuse_damaged = sie ist beschädigt
refuse_no_text = sie ist kein Text
refuse_empty = die Datei ist leer
refuse_tail = sie beginnt wie eine Aufzeichnung, doch von etwa { $percent } % ihrer Länge an enthalten die meisten Zeilen keinen Messwert; schneiden Sie den Rest in einem Texteditor ab
refuse_too_many_lines = sie hat mehr als { $millions } Millionen Zeilen; teilen Sie sie nach Monaten
refuse_too_large = sie ist größer als { $mb } MB; teilen Sie sie nach Monaten
refuse_unpacks_too_large = entpackt ist sie größer als { $mb } MB; teilen Sie sie nach Monaten
refuse_no_ordinary_file = sie kann nicht geöffnet werden (sie ist keine gewöhnliche Datei)
refuse_not_opened = sie kann nicht geöffnet werden ({ $why })
refuse_archive = sie ist ein beschädigtes Archiv
refuse_archive_locked = sie ist ein beschädigtes Archiv, eine beschädigte Arbeitsmappe oder mit einem Kennwort verschlossen
refuse_archive_empty = das Archiv enthält keine Datei
refuse_no_rows = die Datenbank enthält keine Tabelle mit Zeilen
refuse_no_sheet = die Arbeitsmappe hat kein Blatt
refuse_database = sie ist eine beschädigte oder gesperrte Datenbank ({ $why })
refuse_pdf = sie ist ein PDF und keine Textdatei; exportieren Sie die Aufzeichnung als CSV
refuse_bytes = sie enthält Bytes, die kein Text sind
refuse_lines = ihre Zeilen lassen sich nicht unterscheiden ({ $why })
refuse_no_number = keine Zeile enthält eine Zahl in den Spalten von Temperatur oder Feuchte
refuse_channel = { $file } hat keinen Kanal '{ $channel }'; sie hat { $there }.
refuse_temp_unit = temp_unit ist '{ $unit }'; schreiben Sie "C", "F" oder "K".
refuse_stretches = ihre Spalte { $column } enthält Abschnitte von einer Stunde ({ $example }) und keine Zeitpunkte; schreiben Sie die Stunde, mit der jeder beginnt
refuse_minutes = ihre Spalte { $column } enthält Zahlen wie { PLAIN($example) }, die keine Uhrzeiten sind, aber Minuten seit Mitternacht sein können; schreiben Sie die Zeiten wie 07:30
refuse_hour_parts = ihre Spalte { $column } enthält Zahlen wie { $example }, die Stunden und Minuten oder Teile einer Stunde sein können; schreiben Sie die Zeiten wie 07:30
refuse_twelve_hours = ihre Uhr zeigt die Stunden 1 bis 12 und weder am noch pm, sodass Morgen und Abend nicht zu unterscheiden sind; exportieren Sie die Aufzeichnung mit einer Uhr von 24 Stunden
refuse_written_days = ihre Zahlen wie { $example } können Tage mit Uhrzeit ({ $form }) oder Sekunden seit 1970 sein; schreiben Sie sie wie 2025-09-11 22:05
refuse_commas = ein Komma trennt sowohl die Spalten als auch die Nachkommastellen, ohne Anführungszeichen, sodass sie nicht zu unterscheiden sind; exportieren Sie mit Semikolon oder mit Dezimalpunkt
refuse_many_columns = sie hat { $count } Spalten mit Temperatur oder Feuchte, mehr als die { $most }, die hatchkit liest; exportieren Sie einige davon
refuse_no_measure = sie hat Daten und Zeiten, aber keine Spalte mit Temperatur oder Feuchte{ $headings ->
        [none] { "" }
       *[known] ; ihre Überschriften sind { $headings }
    }
refuse_days_without_measure = sie hat Daten ohne Uhrzeit und keine Spalte, die Temperatur oder Feuchte heißt
refuse_several_kinds = ihre Spalte { $column } enthält Werte verschiedener Art, und weder Einheit noch Name sagt, welche Temperaturen sind; schreiben Sie die Einheit oder die Größe neben jeden Wert
refuse_nothing_below = Zeile { PLAIN($line) } hat die Überschriften einer Aufzeichnung, doch keine Zeile darunter enthält ein Datum mit einer Zahl; die erste ist Zeile { PLAIN($below) }: "{ $example }"
refuse_no_reading = keine Zeile enthält ein Datum mit Uhrzeit und eine Zahl; { $lacks ->
        [number] es gibt Daten ohne eine Zahl daneben
        [date] es gibt Zahlen ohne ein Datum
       *[both] es gibt keins von beiden
    }{ $line ->
        [none] { "" }
       *[known] , wie in Zeile { PLAIN($line) }: "{ $example }"
    }
refuse_no_day = ihre Zeilen enthalten Uhrzeiten und kein Datum, und weder die Zeilen darüber noch der Name der Datei nennen einen Tag; schreiben Sie den Tag in den Namen der Datei
refuse_no_start = ihre Zeiten zählen vom Beginn der Aufzeichnung ({ $column ->
        [none] ein Messwert nach dem anderen
       *[named] { $column }
    }), und die Zeilen über den Messwerten sagen nicht, wann das war; schreiben Sie an den Anfang eine Zeile wie Start: 2026-03-05 18:30
refuse_count_unit = ihre Zeiten zählen vom Beginn der Aufzeichnung, und die Überschrift { $column ->
        [none] dieser Spalte
       *[named] { $column }
    } sagt nicht, ob in Sekunden, Minuten oder Stunden; schreiben Sie zum Beispiel "{ $column ->
        [none] Time
       *[named] { $column }
    } (min)"
refuse_two_orders = ihre Daten ändern die Reihenfolge: "{ $one }" und die um es herum sind { WORD($first, kind: "value") } geschrieben, "{ $two }" und die um es herum { WORD($second, kind: "value") }; teilen Sie die Datei, wo die Reihenfolge wechselt
refuse_backwards = ihre Uhrzeiten laufen rückwärts und stehen ohne Datum, sodass der Tag nicht zu erkennen ist; drehen Sie die Zeilen um, oder schreiben Sie das Datum neben jede
refuse_hours_or_minutes = ihre Spalte { $column } enthält 0 bis { $most } an einem Tag, was Stunden oder Minuten nach Mitternacht sein können; nennen Sie die Spalte hour, oder schreiben Sie die Zeiten wie 00:07
refuse_no_time = sie hat Daten ohne Uhrzeit
refuse_no_time_several = sie hat Daten ohne Uhrzeit, und mehrere Zeilen am Tag
refuse_no_date_column = ihre Spalte { $column } enthält Zahlen wie { $example }, die als kein Datum gelesen werden; schreiben Sie sie wie 2025-09-11
refuse_no_date = keine Zeile enthält ein Datum, und die Zeilen über den Messwerten sagen nicht, { $lacks ->
        [start] wann sie begann und wie lang ein Schritt ist
       *[step] wie lang ein Schritt ist; auch sagt keine Überschrift wie Elapsed (min), in welcher Spalte die Zeit gezählt ist
    }
refuse_no_stamp = keine Spalte enthält Daten mit Uhrzeit
