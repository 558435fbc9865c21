# ¿Concuerdan los apuntes entre sí?

check_dates =
    .found = tanda { $batch }: { WORD($later, kind: "event") } { $day }, antes de { $before }
    .done = Las fechas quedan como están; las edades que salen de ellas pueden ser falsas.
    .fix = Corrija { OR($columns) }{ COUNT($columns_swapped) ->
        [0] { "" }
       *[some] ; día y mes pueden estar cambiados en { OR($columns_swapped) }
    }.
check_event_day = { WORD($event, kind: "event") } { $day }
event_set_at = carga
event_candle1_at = primera ovoscopia
event_candle2_at = segunda ovoscopia
event_transfer_at = traslado
event_first_hatch_at = primer pollito
event_last_hatch_at = último pollito
event_taken_off_at = saca
check_days =
    .found = tanda { $batch }: { WORD($event, kind: "event") } a los { $days } días, aunque los huevos de esta especie ({ WORD($species, kind: "species") }) tardan cerca de { TENTH($usual) } días
    .done = Las fechas se guardan como están.
    .fix = Revise { $columns }.
check_part =
    .found = tanda { $batch }: { $eggs } { WORD($part, kind: "field") }, más que { $of } { WORD($whole, kind: "field") }
    .done = Se guardan las dos cuentas.
    .fix = { $column_part } se cuenta dentro de { $column_whole }; corrija una de las dos.
field_malpositioned = mal colocados
check_stored =
    .found = tanda { $batch }: huevos guardados { $days } días
    .done = La cifra se guarda.
    .fix = Escriba los días desde la puesta hasta la carga.
check_egg_twice =
    .found = el huevo { $egg } de la tanda { $batch } está anotado por segunda vez
    .done = Se guardan las dos filas.
    .fix = Dé a cada huevo de una tanda su propio número.
check_no_log =
    .found = la incubadora { $machine } tiene tandas pero ningún registro
    .done = Su temperatura cuenta como desconocida.
    .fix = Ponga su registro en la carpeta sensors, y nómbrelo en season.toml: [incubators."{ $machine }"] files = ["sensors/..."].
check_no_eggs =
    .found = un registro de la incubadora { $machine }, en la que no se cargó ninguna tanda
    .done = Se muestra, pero no se le pone ninguna tanda al lado.
    .fix = Revise cómo está escrita la incubadora en las tandas y en season.toml.

season_read = { $title } ({ $place ->
        [demo] la temporada de ejemplo que trae hatchkit
        [years] años inventados que trae hatchkit
       *[folder] { $folder }
    }), leída por hatchkit { $version }.
season_no_batch = No se pudo usar ninguna tanda.
season_batches = { $count ->
        [one] { $count } tanda
       *[other] { $count } tandas
    } con { $eggs } huevos ({ WORDS($species, kind: "species") }), { $last ->
        [none] cargada el { DAY($first) }
       *[later] cargadas del { DAY($first) } al { DAY($last) }
    }.
season_no_reading = No hay lecturas de temperatura: lo que sigue no dice nada de la temperatura.
season_readings = { $count } lecturas de { $machines }.
unknown_batch = No hay una tanda '{ $batch }' en esta temporada; hay: { $there ->
        [none] ninguna
       *[some] { LIST($there, most: 40) }
    }.{ $near ->
        [none] { "" }
       *[some] {" "}¿Quiso decir '{ $near }'?
    }
unknown_species = No hay una especie '{ $species }' en la tabla de hatchkit; se conocen { LIST($known) }. Añádala a season.toml bajo [species].
