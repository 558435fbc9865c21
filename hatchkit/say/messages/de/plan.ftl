# Der Plan für die nächste Brut: wie viele Eier, worauf das ruht, wann, was zu ändern ist; sein Blatt für die Wand.

plan_title = Plan: { $name }, eingelegt am { MINUTE($set) }
plan_chance = { $times ->
        [none] mehr als 99-mal in 100
       *[known] { $times }-mal in { $of }
    }
plan_eggs = Legen Sie { EGGS($eggs) } Eier ein ({ $name }), um { $chance } mindestens { EGGS($chicks) } { EGGS($chicks) ->
        [one] gesundes Küken
       *[other] gesunde Küken
    } zu haben; rechnen Sie mit etwa { EGGS($middle) } ({ EGGS($low) } bis { EGGS($high) } in 8 von 10 Bruten).
plan_too_many = Mindestens { EGGS($chicks) } Küken { $chance } lassen sich nicht in einer Brut planen: bei den gesehenen und veröffentlichten Schlupfraten bräuchte es mehr als { $most } Eier oder Raten, die weniger schwanken. Planen Sie mehrere Bruten oder weniger Küken.
plan_rests_none = Das ruht auf keiner eigenen Brut dieser Art, nur auf einem veröffentlichten Wert von { WHOLE($level) } der eingelegten Eier: der übliche Schlupf wird mit { WHOLE($mean) } angesetzt ({ WHOLE($low) } bis { WHOLE($high) }), und Bruten dürfen so verschieden sein, wie es für üblich gilt.
plan_rests = Das ruht auf { $batches ->
        [one] 1 eigenen Brut
       *[other] { $batches } eigenen Bruten
    } ({ PLAIN($hatched) } gesunde Küken aus { PLAIN($set) } Eiern) und auf einem veröffentlichten Wert von { WHOLE($level) } der eingelegten Eier. Zusammen setzen sie den üblichen Schlupf mit { WHOLE($mean) } an ({ WHOLE($low) } bis { WHOLE($high) }), und Bruten dürfen so verschieden sein, { $batches ->
        [one] wie es für üblich gilt, da eine Brut keine Streuung zeigt
       *[other] wie Ihre es waren
    }.
plan_few = Bei so wenigen Bruten wiegt der veröffentlichte Wert viel.
plan_left_out = { COUNT($left) ->
        [one] Brut { LIST($left) } bleibt
       *[other] Die Bruten { LIST($left) } bleiben
    } weg: die Aufzeichnungen widersprechen sich.
plan_driver = Eine Brut bestimmt diese Zahl: ohne { $batch } ({ PLAIN($hatched) } gesunde Küken aus { PLAIN($set) } Eiern) wären es { PLAIN($without) } Eier. Wenn Sie wissen, dass ihre Ursache behoben ist, planen Sie dazwischen.
plan_when = Eier hinein am { DATE($set) } { PLAIN($year) } um { HOUR($set) }{ COUNT($notes) ->
        [0] { "" }
       *[other] { " " }({ $notes })
    }, Schlupf vom { DATE($first) } bis { DATE($last) }.
plan_note_no_hour = keine Stunde war angegeben, darum Mittag, wie in den Tabellen
plan_note_passed = ein Zeitpunkt, der vorbei ist
plan_note_collect = der erste Abend mit { PLAIN($days) } Tagen zum Sammeln der Eier
plan_note_free = der Tag, nachdem die letzte Brut heraus ist
plan_changes_none = { $batches ->
        [0] Von dieser Art ist keine Brut aufgezeichnet, darum lässt sich zu Ihren Einstellungen nichts sagen.
       *[other] Nichts in den Aufzeichnungen dieser Saison verlangt eine andere Einstellung.
    }
plan_changes = { $count ->
        [one] Zuerst zu ändern: { $first }.
       *[other] { $count } Dinge sind zu ändern; das erste: { $first }.
    }

paper_step = Was
paper_write = Aufschreiben
paper_change = Diesmal ändern
paper_moment = { WEEKDAY($time) }, { MINUTE($time) }

step_collect = Beginnen, Eier für diese Brut zu sammeln
step_machine_on = Den Brüter leer laufen lassen, das Thermometer neben einem zweiten prüfen
step_warm_up = Die Eier auf Zimmertemperatur bringen
step_set = Die Eier einlegen, wiegen, nummerieren
step_candle1 = Schieren (zum ersten Mal), wiegen, klare und abgestorbene aufschreiben
step_candle2 = Schieren (zum zweiten Mal), wiegen, klare und abgestorbene aufschreiben
step_care_day = Ab heute gilt ein Embryo als einer, der empfinden kann
step_transfer = Wiegen, schieren, Wenden abstellen, umlegen
step_first_hatch = Ab jetzt können die ersten Küken kommen
step_last_hatch = Die letzten Küken sollten heraus sein
step_take_off = Den Schlupf beenden, sobald die Küken trocken sind
step_open_unhatched = Schieren, dann die nicht geschlüpften Eier öffnen, die nicht riechen, schäumen oder nässen, und aufschreiben, was man findet

write_set = Eier hinein, Gewicht
write_candle1 = klar / abgestorben, Gewicht
write_candle2 = klar / abgestorben, Gewicht
write_transfer = klar / abgestorben / umgelegt, Gewicht
write_first_hatch = erstes Küken, Stunde
write_last_hatch = letztes Küken, Stunde
write_take_off = Küken / gemerzt / angepickt gestorben
write_open_unhatched = unbefruchtet / früh / Mitte / spät / falsch liegend
write_machine_on = Fühler - zweites Thermometer

changed_cause =
    .what = { WORD($cause, kind: "cause") }{ $machine ->
            [none] { "" }
           *[named] { " " }(Brüter { $machine })
        }
    .to = { WORD($cause, kind: "do") }{ $target ->
            [none] { "" }
           *[other] { " " }{ $target }
        }
    .why = Etwa { EGGS($eggs) } Eier von { LIST($where, most: 5) } werden ihr zugerechnet.
    .now = { $shown ->
            [none] das Muster der Verluste
           *[other] { $shown }
        }
    .how_sure = { $sure ->
            [very] sehr wahrscheinlich
            [probable] wahrscheinlich
           *[several] eine von mehreren, die passen
        } ({ SHARE($share) })
changed_no_log =
    .what = Die Temperatur aufzeichnen
    .to = Ein aufzeichnendes Thermometer auf Eihöhe.
    .why = Ohne Aufzeichnung lässt sich kein Verlust gegen Hitze oder Kälte halten.
    .now = keine Werte
    .how_sure = sicher: nichts wurde notiert
changed_probe_off =
    .what = Den Fühler von Brüter { $machine } prüfen (neben einem Fieberthermometer nahe { DEGREES($right) })
    .to = Wenn die Prüfung es bestätigt, { $way ->
            [high] -
           *[low] +
        }{ TENTH($off) } als probe_offset_c in season.toml schreiben (in °C) und die Einstellung danach richten.
    .why = Die Schlupfzeiten von { $batches ->
            [one] 1 Brut
           *[other] { $batches } Bruten
        } weisen darauf hin.
    .now = zeigt etwa { STEP($off) } { $way ->
            [high] zu viel; die Eier waren kühler, als er sagt
           *[low] zu wenig; die Eier waren wärmer, als er sagt
        }
    .how_sure = der Richtung ziemlich sicher, nicht der Größe; vor dem Ändern prüfen
changed_probe_unchecked =
    .what = Den Fühler von Brüter { $machine } prüfen
    .to = Neben einem Fieberthermometer nahe { DEGREES($right) } ablesen; in Eiswasser nur, wenn er nass werden darf, und die Abweichung dort muss in der Wärme nicht gelten; die Abweichung in season.toml schreiben, Zeile probe_offset_c.
    .why = Jedes Wort zur Temperatur gilt nur so weit, wie der Fühler richtig misst.
    .now = keine Prüfung notiert
    .how_sure = sicher: keine Prüfung ist notiert
changed_temperature =
    .what = Einstellung von Brüter { $machine }
    .to = { DEGREES($wanted) }
    .why = Er lief { STEP($off) } { $way ->
            [high] über
           *[low] unter
        } dem Wert der Tabelle, Phasen nicht gerechnet.
    .now = im Mittel { DEGREES($mean) }
    .how_sure = der Aufzeichnung sicher; siehe die Prüfung des Fühlers
changed_humidity =
    .what = Feuchte bis zum Umlegen
    .to = { EGGS($to) } % relative Feuchte
    .why = Die Eier waren auf dem Weg, bis zum Umlegen { SHARE($loss) } zu verlieren; gewünscht sind { SHARE($low) } bis { SHARE($high) }. Gehen Sie in zwei Bruten dorthin, wenn es weit ist.
    .now = { EGGS($now) } % relative Feuchte
    .how_sure = aus den Gewichten von { $batches ->
            [one] 1 Brut
           *[other] { $batches } Bruten
        }; ein Feuchtefühler kann um 3 Punkte abweichen
changed_storage =
    .what = Früher nach dem Legen einlegen
    .to = Höchstens { EGGS($best) } Tage.
    .why = { $over } von { $known } Bruten lagen länger (am längsten { EGGS($longest) } Tage). Der Schlupf sinkt mit längerer Lagerung und kommt später.
    .now = { $over } von { $known } Bruten lagen länger als { EGGS($best) } Tage (am längsten { EGGS($longest) })
    .how_sure = gut bekannt; wie viel es Ihre Eier kostet, nicht
changed_candling =
    .what = Etwa an Tag { EGGS($day) } schieren, wenn davor etwas schiefging
    .to = Zwei Tage nach jeder Phase nachsehen.
    .why = { $times ->
            [one] Einmal
           *[other] { $times }-mal
        } ließen sich in dieser Saison Todesfälle vor einer Phase nicht von denen danach trennen.
    .now = kein Nachsehen zwischen Phase und nächstem Schieren
    .how_sure = sicher, dass es etwas gezeigt hätte; nicht, dass es das Urteil geändert hätte
changed_record =
    .what = Aufschreiben: { WORD($need, kind: "need") }
    .to = Bei jeder Brut.
    .why = Es fehlte bei { $lacking } der letzten { $asked } Bruten und würde beim Benennen einer Ursache viel wiegen.
    .now = { $asked ->
            [one] bei Ihrer einen Brut nicht notiert
           *[other] fehlt bei { $lacking } der letzten { $asked } Bruten
        }
    .how_sure = sicher: es war nicht da

need_temperature_from_setting_to_take-off__keep_the_logger_running_ = Temperatur vom Einlegen bis zum Ende (Logger laufen lassen)
need_hours_of_the_first_and_the_last_chick = Stunden des ersten und des letzten Kükens
need_weights_at_setting_and_at_transfer = Gewichte beim Einlegen und beim Umlegen
need_humidity_while_set__with_the_temperature_ = Feuchte während der Brut (mit der Temperatur)
need_humidity_while_hatching__with_the_temperature_ = Feuchte beim Schlupf (mit der Temperatur)
need_days_that_the_eggs_were_kept = wie viele Tage die Eier lagen
need_age_of_the_laying_flock = Alter der Legehennen
need_row_and_column_of_each_egg_on_the_tray = Reihe und Spalte jedes Eies auf der Horde
need_how_many_embryos_among_the_opened_late_dead_lay_wrongly = wie viele der geöffneten spät abgestorbenen falsch lagen
need_rotten_eggs = faule Eier
need_cracked_eggs = angeknickte Eier
need_whether_the_eggs_came_by_post = ob die Eier mit der Post kamen
need_clears_opened__no_germ__or_died_early = klare geöffnet: kein Keim, oder früh abgestorben

target_temperature = Halten Sie { DEGREES($wanted) }{ $machine ->
        [none] { "" }
       *[named] { " " }in Brüter { $machine }
    }.
target_humidity = Halten Sie { EGGS($to) } % relative Feuchte bis zum Umlegen.
target_humidity_range = Halten Sie { EGGS($low) } bis { EGGS($high) } % relative Feuchte{ $where ->
        [setter] { " " }bis zum Umlegen
       *[hatcher] { " " }beim Schlupf
    }.
target_storage = Höchstens { EGGS($best) } Tage.
step_cooling = { $species ->
        [muscovy] Die Eier eine halbe Stunde kühlen und mit Wasser von { DEGREES($water_c) } besprühen, dreimal die Woche bis zum Umlegen
        [duck] Die Eier leicht besprühen, wenn Sie es tun; bei Stockenten hat es den Schlupf mehr als verdoppelt, bei anderen Enten ist es Brauch
        [goose] Die Eier einige Minuten kühlen und besprühen, wenn Sie es tun: Brauch, kein Versuch, den wir gelesen haben
        [mulard] Kühlen und besprühen wie bei Warzenenten, wenn Sie es tun: Brauch, kein Versuch, den wir gelesen haben
       *[swan] Kühlen und besprühen wie bei Gänsen, wenn Sie es tun: Brauch, kein Versuch, den wir gelesen haben
    }
why_cooling = Bis zum Umlegen; nicht in den letzten drei Tagen.
why_collect = Am besten schlüpfen Eier, die höchstens { EGGS($best) } Tage lagen; über { EGGS($most) } Tage ist wenig zu erwarten. Bei 10-18 °C und etwa 70 % Feuchte lagern und täglich wenden.
why_machine_on = Ein Tag zeigt, was die Nacht ausmacht; zwei bis drei Stunden sind das Mindeste.
why_warm_up = Langsam, damit sie nicht schwitzen.
why_set = Die Stunde des Einlegens ist Stunde 0 für alles Folgende. Eier brauchen 6 bis 8 h, bis sie durchgewärmt sind: zwei Tage lang nichts verstellen.
why_candle1 = Klare und Abgestorbene herausnehmen, öffnen und notieren, wie weit sie waren.
why_care_day = Vor dem Öffnen jedes Ei schieren; genommen ist der strengste veröffentlichte Tag.
why_transfer = Feuchte auf { EGGS($low) }-{ EGGS($high) } % erhöhen und den Deckel bis zum Ende des Schlupfs zu lassen.
why_first_hatch = Ein halbes Schlupffenster von { EGGS($window_h) } h und { EGGS($doubt_h) } h Unsicherheit vor der Mitte, die hier nach den üblichen Tagen gesetzt ist. Die Schlupfuhr der Rückschau setzt sie { EGGS($earlier_h) } h früher, denn die meisten Küken kommen vor dem üblichen Tag; die Unsicherheit deckt beides.
why_last_hatch = Ein halbes Schlupffenster und dieselbe Unsicherheit nach der Mitte.{ $longest ->
        [none] { "" }
       *[other] { " " }Nach anderen Texten oder Rassen dauert es bis zu { TENTH($longest) } Tage.
    }
why_take_off = Etwa { EGGS($drying_h) } h zum Trocknen; der Dotter trägt ein Küken zwei Tage.
why_open_unhatched = Späte Küken hatten zwei Tage mehr. Siehe die Anleitung zum Öffnen und ihre Hinweise.
why_candle2 = Klare und Abgestorbene herausnehmen, öffnen und notieren, wie weit sie waren.
