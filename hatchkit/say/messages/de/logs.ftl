# Die Dateien der Datenlogger, so wie hatchkit check sie zeigt.

logs_head = Die Dateien der Datenlogger
log_read = { COUNT($files) ->
        [one] { $files }
       *[other] { COUNT($files) } Dateien ({ LIST($files, most: 1) })
    }: { $machine }{ $known ->
        [none] { "" }
        [answer] {" "}(wie Sie antworteten)
        [season_toml] {" "}(laut season.toml)
        [file_name] {" "}(nach dem Namen der Datei)
        [probe_name] {" "}(nach dem Namen des Fühlers)
        [only_one] {" "}(der einzige Brüter)
       *[dates] {" "}(nach den Tagen seiner Eier)
    }, { MINUTE($start) } bis { MINUTE($end) }, { $readings ->
        [one] ein Messwert
       *[other] alle { $step } min, { $readings } Messwerte
    }{ $gaps ->
        [0] , keine Lücke
        [one] , eine Lücke von { $longest } h
       *[other] , { $gaps } Lücken, die längste { $longest } h
    }{ $doubtful ->
        [0] { "" }
       *[some] , { $doubtful } zweifelhaft
    }{ $probes ->
        [none] { "" }
       *[some] ; { $probes }
    }{ $asked ->
        [none] .
       *[some] . Gefragt: { $asked }.
    }
log_not_read = Nicht gelesen: { LIST($files, most: 4) }.
log_probe = { $probe }: { $parts } { $how ->
        [heading] nach der Überschrift
        [above] nach einer Zeile darüber
        [unit_column] nach der Spalte der Einheiten
        [season_toml] laut season.toml
        [answer] wie Sie antworteten
       *[values] nach den Werten
    }
log_more_probes = { $more ->
        [one] ein weiterer Fühler
       *[other] { $more } weitere Fühler
    }
log_quantity = { $quantity ->
        [temp] { $unit ->
            [C] °C
            [F] °F
            [K] K
           *[other] °C und °F
        }
        [rh] Feuchte
        [wet_bulb] Feuchte aus dem Feuchtthermometer
       *[dew_point] Feuchte aus dem Taupunkt
    }
log_asked = { $code ->
        [log_machine] ihr Brüter
        [log_column] was ihre Spalten sind
        [log_unit] ihre Einheit
        [log_scale] ihr Dezimalzeichen
        [log_encoding] ihre Buchstaben
        [log_zone] ihre Zeitzone
        [log_clock] ihre Uhr
       *[log_date_order] ihre Daten
    }
logs_more = { $more ->
        [one] Eine weitere Datei oder Gruppe von Dateien
       *[other] { $more } weitere Dateien oder Gruppen von Dateien
    }: hatchkit check ORDNER --full.
question_readings = { $rows ->
        [one] Ein Messwert hängt davon ab.
       *[other] { $rows } Messwerte hängen davon ab.
    }
value_temp_C = Temperatur in °C
value_temp_F = Temperatur in °F
value_temp_K = Temperatur in K
value_rh = Feuchte in %
value_not_used = nicht verwendet
value_dmy = Tag, Monat, Jahr
value_mdy = Monat, Tag, Jahr
value_ymd = Jahr, Monat, Tag
value_divided_by_10 = durch 10 geteilt
value_divided_by_100 = durch 100 geteilt
value_divided_by_1000 = durch 1000 geteilt
value_put_right = von Hand richtig gestellt
value_kept_old_time = nie richtig gestellt
value_as_it_stands = so wie es dasteht
value_none_of_these = keines davon
