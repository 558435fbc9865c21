# Stimmen die Aufzeichnungen mit sich selbst überein?

check_dates =
    .found = Brut { $batch }: { WORD($later, kind: "event") } { $day }, vor { $before }
    .done = Die Daten bleiben, wie sie dastehen; Alter, die sich daraus ergeben, können falsch sein.
    .fix = Berichtigen Sie { OR($columns) }{ COUNT($columns_swapped) ->
        [0] { "" }
       *[some] ; Tag und Monat können vertauscht sein in { OR($columns_swapped) }
    }.
check_event_day = { WORD($event, kind: "event") } { $day }
event_set_at = eingelegt
event_candle1_at = zuerst geschiert
event_candle2_at = wieder geschiert
event_transfer_at = umgelegt
event_first_hatch_at = erstes Küken
event_last_hatch_at = letztes Küken
event_taken_off_at = ausgenommen
check_days =
    .found = Brut { $batch }: { WORD($event, kind: "event") } nach { $days } Tagen, obwohl Eier dieser Art ({ WORD($species, kind: "species") }) etwa { TENTH($usual) } Tage brauchen
    .done = Die Daten bleiben, wie sie dastehen.
    .fix = Prüfen Sie { $columns }.
check_part =
    .found = Brut { $batch }: { $eggs } { WORD($part, kind: "field") }, mehr als { $of } { WORD($whole, kind: "field") }
    .done = Beide Zahlen bleiben.
    .fix = { $column_part } zählt unter { $column_whole }; berichtigen Sie eines von beiden.
field_malpositioned = in falscher Lage
check_stored =
    .found = Brut { $batch }: die Eier lagerten { $days } Tage
    .done = Die Zahl bleibt.
    .fix = Schreiben Sie die Tage vom Legen bis zum Einlegen.
check_egg_twice =
    .found = Ei { $egg } der Brut { $batch } steht ein zweites Mal da
    .done = Beide Zeilen bleiben.
    .fix = Geben Sie jedem Ei einer Brut eine eigene Nummer.
check_no_log =
    .found = der Brüter { $machine } hat Bruten, aber keine Aufzeichnung
    .done = Seine Temperatur gilt als nicht bekannt.
    .fix = Legen Sie seine Aufzeichnung in den Ordner sensors und nennen Sie sie in season.toml: [incubators."{ $machine }"] files = ["sensors/..."].
check_no_eggs =
    .found = eine Aufzeichnung des Brüters { $machine }, in den keine Brut eingelegt wurde
    .done = Sie wird gezeigt, aber keine Brut neben sie gelegt.
    .fix = Prüfen Sie, wie der Brüter bei den Bruten und in season.toml geschrieben ist.

season_read = { $title } ({ $place ->
        [demo] die Beispielsaison von hatchkit
        [years] erfundene Jahre von hatchkit
       *[folder] { $folder }
    }), gelesen von hatchkit { $version }.
season_no_batch = Keine Brut konnte verwendet werden.
season_batches = { $count ->
        [one] { $count } Brut
       *[other] { $count } Bruten
    } mit { $eggs } Eiern ({ WORDS($species, kind: "species") }), eingelegt { $last ->
        [none] am { DAY($first) }
       *[later] vom { DAY($first) } bis { DAY($last) }
    }.
season_no_reading = Keine Temperaturmesswerte: was folgt, sagt nichts über die Temperatur.
season_readings = { $count } Messwerte von { $machines }.
unknown_batch = Eine Brut '{ $batch }' gibt es in dieser Saison nicht; es gibt: { $there ->
        [none] keine
       *[some] { LIST($there, most: 40) }
    }.{ $near ->
        [none] { "" }
       *[some] {" "}Meinten Sie '{ $near }'?
    }
unknown_species = Eine Art '{ $species }' steht nicht in der Tabelle von hatchkit; bekannt sind { LIST($known) }. Ergänzen Sie sie in season.toml unter [species].
