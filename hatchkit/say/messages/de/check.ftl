# hatchkit check: die Seite, auf der man sieht, wie die Tabelle gelesen wurde, was gefragt wird, was zu ändern ist.

check_title = { $title }: so wurde es gelesen
check_counts = { $title }: gelesen wurden { $batches ->
        [one] { $batches } Brut
       *[other] { $batches } Bruten
    }, { $eggs ->
        [one] { $eggs } Zeile für ein Ei
       *[other] { $eggs } Zeilen für einzelne Eier
    }, { $weights ->
        [one] { $weights } Wägung
       *[other] { $weights } Wägungen
    }, { $readings ->
        [one] { $readings } Messwert
       *[other] { $readings } Messwerte
    }.
check_clock = Uhrzeiten sind wie in { $timezone } gezeigt.

check_i_read = So habe ich es gelesen
check_sheet = { $sheet ->
        [none] { $file }
       *[named] { $file }, Blatt { $sheet }
    }
check_sheets_alike = { $file }: { COUNT($sheets) ->
        [one] Blatt { $sheets }
       *[other] Blätter { LIST($sheets, most: 6) } gleich gebaut
    }
check_head_heading = Ihre Überschrift
check_head_taken = genommen als
check_head_example = ein Beispiel
check_head_sure = wie sicher
check_head_why = warum
check_no_heading = (keine Überschrift, Spalte { PLAIN($place) })
check_plain = { COUNT($pairs) ->
        [one] Außerdem sicher: { $pairs }.
       *[other] { COUNT($pairs) } weitere, sicher: { LIST($pairs, most: 12) }.
    }
check_pair = { $heading } = { $taken }
check_more_sheets = { $sheets ->
        [one] Ein weiteres Blatt wurde
       *[other] { $sheets } weitere Blätter wurden
    } ohne Zweifel gelesen; --full zeigt alles.

ledger_head = Gehen die Eier auf?
ledger_term = { $eggs } { $heading }
ledger_sum = { $name }: { $set } eingelegt = { $terms }
ledger_nothing = { $name }: { $set } eingelegt, mehr ist nicht gesagt
ledger_adds_up = { $sum }: geht auf.
ledger_short = { $sum }: { $rest ->
        [one] von einem Ei ist nichts gesagt.
       *[other] von { $rest } Eiern ist nichts gesagt.
    }
ledger_over = { $sum }: { $over ->
        [one] ein Ei zu viel.
       *[other] { $over } Eier zu viel.
    }
ledger_unknown = { $sum }.
ledger_more = und { $count } weitere
ledger_total = Die Eier gehen in { $rows } von { $of ->
        [one] einer Zeile
       *[other] { $of } Zeilen
    } auf.

questions_head = { $count ->
        [one] Eine Frage
       *[other] { $count } Fragen
    }, die folgenreichste zuerst
questions_how = Antworten: hatchkit check ORDNER --ask, oder Notebook 0.
question_rows = { $rows ->
        [0] Keine Zahl hängt davon ab.
        [one] Eine Zeile hängt davon ab.
       *[other] { $rows } Zeilen hängen davon ab.
    }
question_where = { $sheet ->
        [none] { $file }
       *[named] { $file }, Blatt { $sheet }
    }
question_meaning = Was ist die Spalte „{ $heading }“? Vorläufig angenommen: { $choice }.
question_species = { $written ->
        [none] Welche Vögel sind das? Nichts auf dem Blatt sagt es;
       *[some] Welche Vögel sind „{ $written }“? Einen solchen Vogel kennt hatchkit nicht;
    } vorläufig angenommen: { $choice }.
question_year = Welches Jahr ist es? Nichts auf dem Blatt sagt es; vorläufig angenommen: { $choice }.
question_day_first = Was steht in Ihren Daten zuerst? Beides ist möglich; vorläufig angenommen: { $choice }.
question_diary = { $names ->
        [none] Einige Bruten des Tagebuchs gehen nicht auf, so wie ich seine Sätze lese.
       *[some] So wie ich die Sätze des Tagebuchs lese, gehen die Eier nicht auf in: { $names }.
    } Vorläufig angenommen: { $choice }. Mit --full sehen Sie, was gelesen wurde; schreiben Sie eine solche Brut als Zeile von Zahlen, um sicher zu sein.
question_sums = Wie ich dieses Blatt auch lese: Die meisten Zeilen enthalten mehr Eier, als eingelegt wurden; eine Spalte muss also etwas anderes bedeuten. Vorerst angenommen: { $choice }.
question_mixed_birds = { $written ->
        [none] Eine Brut enthält mehrere Arten von Vögeln. Welche zählt?
       *[some] „{ $written }“ nennt mehrere Arten von Vögeln in einer Brut. Welche zählt?
    } Vorläufig angenommen: { $choice }.
question_machine = In welchem Brüter waren die Eier? Vorläufig angenommen: { $choice }.
question_log_machine = { $heading ->
        [none] Zu welchem Brüter gehört die Aufzeichnung { $file }?
       *[named] Zu welchem Brüter gehört der Fühler „{ $heading }“ der Aufzeichnung { $file }?
    } Vorläufig angenommen: { $choice }.
question_log_date_order = Was steht in den Daten von „{ $heading }“ zuerst? Vorläufig angenommen: { $choice }.
question_log_unit = In welcher Einheit ist „{ $heading }“? Vorläufig angenommen: { $choice }.
question_log_scale = „{ $heading }“ scheint das Dezimalzeichen zu fehlen. Vorläufig angenommen: { $choice }.
question_log_column = Was ist die Spalte „{ $heading }“ der Aufzeichnung? Vorläufig angenommen: { $choice }.
question_log_zone = Zeigte die Uhr der Aufzeichnung { $file } Sommerzeit? Sie nennt eine Abweichung und spricht davon. Vorläufig angenommen: { $choice }.
question_log_clock = Die Uhr der Aufzeichnung { $file } folgte der Zeitumstellung nicht und macht später einen Sprung von einer Stunde. Wurde sie da von Hand richtig gestellt? Vorläufig angenommen: { $choice }.
question_log_encoding = Wie lautet eine Zeile der Aufzeichnung { $file }: { OR($names) }? Vorläufig angenommen: { $choice }.
question_other = { $heading ->
        [none] Dies ließe sich auf mehr als eine Art lesen.
       *[named] „{ $heading }“ ließe sich auf mehr als eine Art lesen.
    } Vorläufig angenommen: { $choice }.
choice_adds = { $heading ->
        [none] Ist es { $choice }, gehen die Eier in { $adds } von { $of ->
            [one] einer Zeile
           *[other] { $of } Zeilen
        } auf
       *[named] Ist „{ $heading }“ { $choice }, gehen die Eier in { $adds } von { $of ->
            [one] einer Zeile
           *[other] { $of } Zeilen
        } auf
    }
choice_adds_next = ist es { $choice }, in { $adds }
choices_add = { $first }{ $rest ->
        [none] .
       *[more] ; { $rest }.
    }
choices_are = Es kann sein: { OR($choices) }.
choice_line = { $adds ->
        [none] { $choice }
       *[known] { $choice } (die Eier gehen in { $adds } von { $of ->
            [one] einer Zeile
           *[other] { $of } Zeilen
        } auf)
    }
choice_now = { $line }, so wie jetzt angenommen

value_day_first = Tag vor Monat
value_used = verwendet, wie gelesen
value_month_first = Monat vor Tag
value_yes = ja
value_no = nein
value_True = Tag vor Monat
value_False = Monat vor Tag
value_nothing = nichts; zählt in den Anteilen nicht mit, bis es gesagt ist
value_left_out = zählt in den Anteilen nicht mit
value_separate = jede Art als eigene Brut

ask_number = Nummer; Eingabetaste behält, q beendet:
ask_again = { $most ->
        [one] Tippen Sie 1, die Eingabetaste oder q.
       *[other] Tippen Sie eine Zahl von 1 bis { $most }, die Eingabetaste oder q.
    }
ask_nothing = Es gibt nichts zu fragen: keine Zahl hängt von einer offenen Lesart ab.
ask_kept = { $answers ->
        [one] Eine Antwort liegt
       *[other] { $answers } Antworten liegen
    } in { $path }. Löschen Sie diese Datei, um neu gefragt zu werden; Ihre Tabelle wurde nicht berührt.
ask_left = { $questions ->
        [0] Nichts ist mehr zu fragen.
        [one] Eine Frage bleibt.
       *[other] { $questions } Fragen bleiben.
    }

problems_lost = Zuerst zu ändern: gar nicht verwendet ({ $count })
problems_doubtful = Dann: verwendet, aber vielleicht falsch ({ $count })
problems_note = Zur Kenntnis: was angenommen wurde ({ $count })
problems_none = Nichts zu ändern.
problems_fix = Zu tun: { $fix }
problems_more_like = und { $count } { $count ->
        [one] weiteres dieser Art
       *[other] weitere dieser Art
    }
problems_folded = { $count ->
        [one] Eine weitere Art von Hinweisen
       *[other] { $count } weitere Arten von Hinweisen
    }: hatchkit check ORDNER --full.
problems_first = Die ersten { $most } sind gezeigt.
problems_head_where = Wo
problems_head_found = Gefunden
problems_head_done = Was geschah
problems_head_fix = So wird es richtig
place_more_files = { $file } und { $count ->
        [one] 1 weitere Datei
       *[other] { $count } weitere Dateien
    }
place_sheet = Blatt { $sheet }
place_rows = { COUNT($rows) ->
        [one] Zeile { $rows }
       *[other] Zeilen { LIST($rows, most: 8) }
    }
place_columns = { COUNT($columns) ->
        [one] Spalte { $columns }
       *[other] Spalten { LIST($columns, most: 3) }
    }

assumed_sure = Gelesen: { $files ->
        [none] die Aufzeichnungen
       *[other] { $files }
    }, { $columns ->
        [one] eine Spalte
       *[other] { $columns } Spalten
    }, alle sicher; die Eier gehen in { $rows } von { $of ->
        [one] einer Zeile
       *[other] { $of } Zeilen
    } auf.
assumed_sure_unsummed = Gelesen: { $files }, { $columns ->
        [one] eine Spalte
       *[other] { $columns } Spalten
    }, alle sicher.
assumed_likely = Beim Lesen angenommen (wahrscheinlich): { $likely }.
assumed_open = Beim Lesen angenommen, noch offen: { $open }. { $rows ->
        [0] Keine Zahl hier unten hängt davon ab.
        [one] Die Zahlen einer Zeile hängen davon ab
       *[other] Die Zahlen von { $rows } Zeilen hängen davon ab
    }{ $rows ->
        [0] { "" }
       *[some] : { $fields }; antworten Sie mit hatchkit check ORDNER --ask.
    }
assumed_pair = „{ $heading }“ ist { $taken }
assumed_value = { $code ->
        [species] die Vögel sind { $taken }
        [year] das Jahr ist { $taken }
        [day_first] in den Daten steht { $taken }
        [diary] Bruten des Tagebuchs, deren Eier nicht aufgehen: { $taken }
        [machine] der Brüter ist { $taken }
        [log_machine] die Aufzeichnung ist von { $taken }
       *[other] { $taken }
    }
assumed_everything = alle ihre Zahlen
assumed_readings = Temperatur und Feuchte

form_keep = Behalten
form_keep_why = Diese Wahl neben Ihrer Saison aufheben, damit nicht wieder gefragt wird
form_others = Wurde eine andere Spalte falsch genommen?
form_nothing_chosen = Noch wurde nichts gewählt.
form_again = Führen Sie dieses Notebook noch einmal von oben aus, um Ihre Saison so gelesen zu sehen.
form_whole = { $code ->
        [species] Vögel
        [year] Jahr
        [day_first] Daten
        [diary] Tagebuch
        [mixed_birds] Vögel in einer Brut
        [machine] Brüter
        [log_machine] Brüter der Aufzeichnung
        [log_encoding] Buchstaben der Aufzeichnung
        [log_zone] Zeitzone der Aufzeichnung
        [log_clock] Uhr der Aufzeichnung
       *[other] Wahl
    }

