# Was aus den Dateien der Datenlogger nicht so genommen werden konnte, wie es dasteht.

log_headings_fewer =
    .found = es gibt eine Überschrift weniger als Spalten
    .done = Die erste Spalte wird als Zeilennummer ohne Überschrift genommen.
    .fix = Schreiben Sie über die erste Spalte eine Überschrift.
log_headings_more =
    .found = es gibt mehr Überschriften als Spalten; unter { LIST($names, most: 6) } steht keine
    .done = Die anderen gelten für die Spalten unter ihnen.
    .fix = Setzen Sie eine Überschrift, die ein Komma enthält, in Anführungszeichen.
log_by_behaviour =
    .found = { $header ->
        [yes] keine Überschrift nennt Temperatur oder Feuchte
       *[no] die Datei hat keine Überschriften
    }; die Spalten wurden danach unterschieden, wie sich ihre Werte verhalten
    .done = So genommen, wie die Fragen sagen.
    .fix = Setzen Sie eine Zeile mit Namen über die Messwerte, oder beantworten Sie die Frage.
log_against_values =
    .found = die mittleren Werte von { LIST($names, most: 6) } ({ LIST($middles, most: 6) }) sehen nicht nach dem aus, was die Überschriften sagen
    .done = So gelesen, wie die Überschriften sagen.
    .fix = Sehen Sie nach, ob die Überschriften über den falschen Spalten stehen.
log_exchanged =
    .found = in { $count ->
        [one] einer Zeile
       *[other] { $count } Zeilen
    } ist die Temperatur von { $name } über 45 °C, und die Feuchte steht, wo sonst die Temperatur steht
    .done = So gelesen, wie die Überschriften sagen.
    .fix = Sehen Sie nach, ob zwei Exporte von verschiedenem Aufbau aneinandergehängt wurden.
log_summer_open =
    .found = die Datei sagt, ihre Uhr sei { $clock }, und spricht von Sommerzeit
    .done = Als { $taken } gelesen; mit Sommerzeit wäre es { $other }.
    .fix = Beantworten Sie die Frage.
log_only_extremes =
    .found = { $names }: der niedrigste und der höchste Wert jedes Abschnitts, und kein Mittel
    .done = Jeder wird als eigener Fühler gelesen.
    .fix = Exportieren Sie auch das Mittel.
log_encoding_open =
    .found = Zeile { PLAIN($line) } heißt "{ $one }" in der Kodierung { $page } und "{ $two }" in { $other }
    .done = Als { $page } gelesen.
    .fix = Exportieren Sie die Aufzeichnung in UTF-8.
log_member_left_out =
    .found = { $name } im Archiv kann nicht gelesen werden: { $why }
    .done = Weggelassen.
log_part_refused =
    .found = { $part ->
        [none] sie
       *[named] { $part }
    } ist keine Aufzeichnung: { $why }
    .done = Weggelassen.
log_sections =
    .found = { $count } Exporte mit eigenen Überschriften stehen in einer Datei
    .done = Jeder wird nach seinen eigenen Überschriften gelesen.
log_twins =
    .found = { $names }: dieselbe Temperatur noch einmal in anderer Einheit
    .done = Einmal gelesen.
log_unused =
    .found = Spalten, die weder Temperatur noch Feuchte der Luft sind: { LIST($names, most: 12) }
    .done = Nicht verwendet.
log_lone_quotes =
    .found = ein Anführungszeichen ohne Gegenstück in { $count ->
        [one] einer Zeile
       *[other] { $count } Zeilen
    }, zuerst in Zeile { PLAIN($line) }
    .done = Das Zeichen wird übergangen.
    .fix = Sehen Sie sich diese Zeilen in einem Texteditor an.
log_order =
    .found = Daten wie { $example }
    .done = Gelesen als { WORD($order, kind: "value") }: { WORD($how, kind: "order_how") }{ COUNT($against) ->
        [0] { "" }
       *[other] ; { WORDS($against, kind: "order_against") }
    }.
log_order_open =
    .found = Daten wie { $example } lassen sich in mehr als einer Reihenfolge lesen
    .done = Gelesen als { WORD($order, kind: "value") }{ $how ->
        [none] { "" }
       *[known] , { WORD($how, kind: "order_how") }
    }{ COUNT($against) ->
        [0] { "" }
       *[other] ; { WORDS($against, kind: "order_against") }
    }.
    .fix = Schreiben Sie day_first = true oder false unter [sensors] in season.toml.
order_how_said = wie day_first sagt
order_how_continuity = nur so folgen die Tage aufeinander
order_how_a_day_above_12 = andere Reihenfolgen ergeben Tage, die es nicht gibt
order_how_in_order = nur so stehen die Zeilen in ihrer Folge
order_how_weekday = nur so stimmen die Wochentage
order_how_other_files = wie in den anderen Dateien
order_how_dots = Daten mit Punkten beginnen mit dem Tag
order_how_half_day = mit am und pm steht der Monat vorn
order_how_batches = so fallen sie in die Bruten der Saison
order_against_said = day_first sagt anderes
order_against_other_files = andere Dateien sind anders geschrieben
order_against_a_day_above_12 = manche Daten gibt es nur andersherum

log_machine_named =
    .found = Fühler { $probe } in { $file }
    .done = Dem Brüter { $machine } zugeordnet, nach dem { $how ->
        [file_name] Namen der Datei
       *[probe_name] Namen des Fühlers
    }.
    .fix = Wenn nicht: [incubators.{ $key }] files = ["..."]
log_machine_guessed =
    .found = { $file } nennt keinen Brüter
    .done = { $machine } zugeordnet, { $how ->
        [only_one] dem einzigen der Saison
       *[dates] dem einzigen ohne Aufzeichnung, in dem damals Eier lagen
    }.
    .fix = [incubators.{ $key }] files = ["{ $file }"]
log_machine_unknown =
    .found = { $file } (Fühler { LIST($probes, most: 6) }) nennt keinen Brüter der Saison
    .done = Als Brüter "{ $taken }" geführt.
    .fix = Schreiben Sie in season.toml, mit dem richtigen Namen: { $line }
log_not_a_log =
    .found = { $name } ist weder Text noch Arbeitsmappe noch Archiv
    .done = Weggelassen.
    .fix = Nehmen Sie sie aus dem Ordner sensors, oder exportieren Sie sie als CSV.
log_beside_batches =
    .found = { $name } ist eine Aufzeichnung und liegt neben der Tabelle der Bruten
    .done = Gelesen wie die Aufzeichnungen im Ordner sensors.
    .fix = Legen Sie sie in einen Ordner namens sensors.
log_lost =
    .found = { $why }
    .done = Weggelassen.
    .fix = Exportieren Sie die Aufzeichnung neu als CSV, oder nehmen Sie die Datei aus dem Ordner sensors.
log_marked =
    .found = ein Zeichen hinter { $count ->
        [one] einem Wert
       *[other] { $count } Werten
    } von { $quantity ->
        [temp] { $name }
       *[rh] der Feuchte von { $name }
    }, zuerst in Zeile { PLAIN($line) }: "{ $example }"
    .done = { $doubted ->
        [yes] Behalten und mit "marked" bezeichnet.
       *[no] Ohne das Zeichen gelesen, da fast alle es tragen.
    }
    .fix = Sehen Sie in der Anleitung des Loggers nach, was das Zeichen bedeutet.
log_without_decimals =
    .found = der mittlere Wert von { $name } ist { PLAIN($middle) }
    .done = Durch { $factor } geteilt.
    .fix = Exportieren Sie mit Nachkommastellen, oder beantworten Sie die Frage.

log_lines_where = { $count ->
        [one] { "" }
       *[other] { $first ->
            [none] { "" }
           *[known] , zuerst Zeile { PLAIN($first) }
        }
    }{ $example ->
        [none] { "" }
       *[known] : "{ $example }"
    }
log_lines_blank =
    .found = { $count ->
        [one] 1 leere Zeile
       *[other] { $count } leere Zeilen
    }{ log_lines_where }
    .done = Weggelassen.
log_lines_repeated_header =
    .found = { $count ->
        [one] 1 wiederholte Überschriftenzeile
       *[other] { $count } wiederholte Überschriftenzeilen
    }{ log_lines_where }
    .done = Weggelassen.
log_lines_words =
    .found = { $count ->
        [one] 1 Textzeile
       *[other] { $count } Textzeilen
    } ohne Zeit{ log_lines_where }
    .done = Weggelassen.
log_lines_untimed =
    .found = { $count ->
        [one] 1 Zeile
       *[other] { $count } Zeilen
    } mit einem Wert, aber ohne lesbare Zeit{ log_lines_where }
    .done = Weggelassen.
    .fix = Berichtigen Sie das Datum in der Datei{ $why ->
        [no_such_day] : diesen Tag gibt es im Kalender nicht
        [year] : das Jahr kann nicht stimmen
        [hour] : diese Uhrzeit gibt es nicht
        [no_hour] : die Uhrzeit ist nicht lesbar
        [order] : es passt nur, wenn Tag und Monat andersherum stehen
        [no_year] : es fehlt das Jahr
       *[other] { "" }
    }.
log_lines_events =
    .found = { $count ->
        [one] 1 Textzeile
       *[other] { $count } Textzeilen
    } mit Zeit (Ereignisse){ log_lines_where }
    .done = Nicht zu den Messwerten genommen.
log_lines_other_quantities =
    .found = { $count ->
        [one] 1 Zeile
       *[other] { $count } Zeilen
    } mit anderen Größen{ log_lines_where }
    .done = Nicht gelesen.
log_lines_merged =
    .found = { $count ->
        [one] 1 Zeile, die einen Messwert wiederholt oder ergänzt
       *[other] { $count } Zeilen, die einen Messwert wiederholen oder ergänzen
    }{ log_lines_where }
    .done = Mit ihm vereint.
log_lines_other_channels =
    .found = { $count ->
        [one] 1 Zeile
       *[other] { $count } Zeilen
    } anderer Kanäle{ log_lines_where }
    .done = Danach war nicht gefragt.
log_lines_top =
    .found = { $count ->
        [one] 1 Zeile
       *[other] { $count } Zeilen
    } am Anfang ({ $above ->
        [both] Titel und Überschriften
        [header] Überschriften
       *[title] Titel
    }){ log_lines_where }
    .done = Keine Messwerte.
log_lines_in_quotes =
    .found = { $count ->
        [one] 1 Zeile
       *[other] { $count } Zeilen
    } innerhalb von Anführungszeichen oder hinter dem Endzeichen{ log_lines_where }
    .done = Weggelassen.
    .fix = Öffnen Sie die Datei in einem Texteditor und suchen Sie ein verirrtes Anführungszeichen.
log_lines_no_readings =
    .found = { $count ->
        [one] 1 Zeile
       *[other] { $count } Zeilen
    } und keine Messwerte{ log_lines_where }
    .done = Die Datei hat die Überschriften einer Aufzeichnung und nichts darunter.
    .fix = Exportieren Sie die Aufzeichnung neu.
log_lines_section =
    .found = { $count ->
        [one] 1 Zeile
       *[other] { $count } Zeilen
    } eines Abschnitts, der nicht gelesen werden kann{ log_lines_where }: { $why }
    .done = Weggelassen.

log_empty_lines =
    .found = { $count } von { $of } Zeilen haben keinen Wert von { $name }
    .done = Diese Zeilen geben davon keinen Messwert.
log_odd_cells =
    .found = Text in { $count ->
        [one] einer Zelle
       *[other] { $count } Zellen
    } von { $name }, zuerst in Zeile { PLAIN($line) }: "{ $example }"
    .done = Als kein Wert genommen.
log_missing_codes =
    .found = { $count ->
        [one] 1 Messwert
       *[other] { $count } Messwerte
    } von { $name } mit { $values }, einem Zeichen für keinen Messwert
    .done = Mit "missing code" bezeichnet; temp_c bleibt leer.
log_unit_against =
    .found = über { $name } steht °{ $said }, aber die Werte können nur { WORD($unit, kind: "degree") } sein
    .done = Als { WORD($unit, kind: "degree") } gelesen.
    .fix = Schreiben Sie temp_unit = "C" oder "F" unter [sensors] in season.toml.
log_unit_guessed =
    .found = { $name } hat keine Einheit{ $middle ->
        [none] { "" }
       *[known] ; der mittlere Wert ist { TENTH($middle) }
    }
    .done = Als { WORD($unit, kind: "degree") } gelesen.
log_unit_open =
    .found = { $name } hat keine Einheit, und der mittlere Wert ist { TENTH($middle) }
    .done = Als { WORD($unit, kind: "degree") } gelesen.
    .fix = Schreiben Sie temp_unit = "C" oder "F" unter [sensors] in season.toml.
degree_C = °C
degree_F = °F
degree_K = K
log_humidity_impossible =
    .found = { $count ->
        [one] 1 Feuchtewert
       *[other] { $count } Feuchtewerte
    } von { $name }, die nicht sein können: { $values }
    .done = rh_pct bleibt dort leer; die Temperatur bleibt.
log_humidity_share =
    .found = die Feuchte von { $name } liegt zwischen 0 und 1
    .done = Als Anteil gelesen und in % gezeigt.
log_humidity_wet_bulb =
    .found = { $name } hat ein Feuchtthermometer und keine Feuchte
    .done = Die Feuchte ist berechnet für { $air ->
        [still] einen Docht in ruhender Luft
       *[fan] einen belüfteten Docht
    } (Beiwert { $coefficient }e-4 je K) bei { TENTH($pressure) } kPa.
    .fix = air = "still" oder "fan" und altitude_m des Brüters in season.toml ändern das.
log_humidity_dew_point =
    .found = { $name } hat einen Taupunkt und keine Feuchte
    .done = Die Feuchte ist aus dem Taupunkt berechnet.

log_two_probes =
    .found = { $file } und { $other } überschneiden sich in der Zeit mit verschiedenen Messwerten von { $probe } im Brüter { $machine }
    .done = Als zwei Fühler genommen; dieser heißt { $taken }.
log_again =
    .found = { $count ->
        [one] 1 Messwert
       *[other] { $count } Messwerte
    } von { $probe }, auch in { $other } enthalten
    .done = Vereint.
log_clash =
    .found = { $count ->
        [one] 1 Messwert
       *[other] { $count } Messwerte
    } von { $probe } gegen andere Werte zur selben Zeit in { $other }
    .done = Beide behalten und mit "repeated" bezeichnet.
    .fix = Nehmen Sie die falsche Datei heraus.
log_newest_first =
    .found = { $name } ist vom Neuesten an geschrieben
    .done = In die Folge der Zeit gebracht.
log_times_back =
    .found = die Zeiten von { $name } gehen { $count ->
        [one] einmal
       *[other] { $count } Mal
    } zurück, zuerst in Zeile { PLAIN($line) }
    .done = In die Folge der Zeit gebracht.
    .fix = Prüfen Sie, ob die Datei nur einen Fühler enthält.
log_clock_step =
    .found = die Uhr von { $name } ging in Zeile { PLAIN($line) } zurück oder verlor ihr Datum; { $count ->
        [one] 1 Messwert
       *[other] { $count } Messwerte
    } neben den anderen
    .done = Behalten und mit "clock step" bezeichnet.
    .fix = Berichtigen Sie die Zeiten in der Datei.
log_merged =
    .found = { $count ->
        [one] 1 Messwert
       *[other] { $count } Messwerte
    } von { $name } mit der Zeit eines anderen, ihm gleich oder ihn ergänzend
    .done = Mit ihm vereint.
log_doubted =
    .found = { $count ->
        [one] 1 Messwert
       *[other] { $count } Messwerte
    } von { $name } { $doubt ->
        [stuck] ohne jede Änderung über Stunden
        [spike] mit einem Sprung, schneller als die Luft eines Brüters es kann
        [out_of_range] mit einem Wert, den kein Brüter hat
        [repeated] mit der Zeit eines anderen von anderem Wert
       *[missing_code] ohne Wert
    }, zuerst { $start }, zuletzt { $end }
    .done = Behalten und mit "{ $mark }" bezeichnet.
log_gaps =
    .found = { $count ->
        [one] eine Lücke von { $hours ->
            [one] { TENTH($hours) } Stunde
           *[other] { TENTH($hours) } Stunden
        } in den Messwerten von { $name }
       *[other] { $count } Lücken in den Messwerten von { $name }, die längste von { $hours ->
            [one] { TENTH($hours) } Stunde
           *[other] { TENTH($hours) } Stunden
        }
    }: nichts zwischen { $start } und { $end }
    .done = Die Lücke bleibt leer.
log_zone_said =
    .found = die Datei sagt, ihre Uhr sei { $clock }
    .done = Als ihre Zone genommen.
log_zone_none =
    .found = weder die Datei noch season.toml nennen eine Zeitzone
    .done = Die Zeiten gelten so, wie die Uhr sie zeigte.
    .fix = Schreiben Sie timezone = "Europe/Rome" (oder Ihre) in season.toml.

clock_not_followed =
    .found = die Uhr des Loggers folgte der Zeitumstellung am { $day } nicht
    .done = Die ganze Datei wird in der Zeit gelesen, mit der sie begann.
    .fix = Wenn das falsch ist, setzen Sie in season.toml timezone für den Brüter dieser Datei.
clock_put_right =
    .found = die Uhr geht um { $time } eine Stunde { $way ->
        [on] vor
       *[back] zurück
    }, als wäre sie von Hand gestellt worden
    .done = Was folgt, wird in der neuen Zeit gelesen.
    .fix = Beantworten Sie die Frage.
clock_hour_twice =
    .found = { $count ->
        [one] 1 Messwert
       *[other] { $count } Messwerte
    } in der Stunde, die es am { $day } zweimal gab
    .done = Die Folge der Datei unterscheidet den ersten Durchgang vom zweiten.
clock_hour_skipped =
    .found = { $count ->
        [one] 1 Messwert
       *[other] { $count } Messwerte
    } in der Stunde, die am { $day } ausfiel
    .done = Sie werden eine Stunde später gelesen.
no_such_zone = Eine Zeitzone '{ $zone }' gibt es nicht; schreiben Sie sie wie timezone = "Europe/Rome".
