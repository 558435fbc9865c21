# Die Aufzeichnungen, auf denen eine Seite ruht.
ask_records = Was wurde gelesen und angenommen?
records_read = { $questions ->
        [0] { $assumed ->
            [likely] Einige Spalten der Tabellen sind nur wahrscheinlich richtig gelesen
            [sure] Jede Spalte der Tabellen ist sicher gelesen
           *[other] Nichts wurde angenommen
        }
        [one] Eine Frage zu den Tabellen ist offen
       *[other] { $questions } Fragen zu den Tabellen sind offen
    }{ $unlike ->
        [0] .
        [one] , und ein Eintrag konnte nicht so genommen werden, wie er dasteht.
       *[other] , und { $unlike } Einträge konnten nicht so genommen werden, wie sie dastehen.
    }
records_how = { $batches ->
        [one] Eine Brut
       *[other] { $batches } Bruten
    }{ $readings ->
        [0] , keine Temperatur.
       *[other] { " " }und { $readings } Messwerte von { LIST($machines, most: 6) }.
    } Nicht verwendete Einträge: { $lost }; zweifelhafte: { $doubtful }; Hinweise: { $note }. Uhrzeiten wie in { $timezone }.
records_see = Wie jede Spalte gelesen wurde und was man beantworten kann: hatchkit check, oder Notebook 0.
table_problems = Was nicht so genommen werden konnte, wie es dasteht
head_severity = Art
head_file = Datei
head_row = Zeile
head_found = Gefunden
head_done = Was damit geschah
head_fix = So wird es richtig
severity_lost = nicht verwendet
severity_doubtful = zweifelhaft
severity_note = Hinweis
