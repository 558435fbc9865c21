# Por qué un archivo no se puede leer como registro.

log_refused = { $name } no se puede leer como registro de una sonda: { $why }.
refuse_damaged = está dañado
refuse_no_text = no es texto
refuse_empty = el archivo está vacío
refuse_tail = empieza como un registro, pero desde cerca del { $percent } % de su longitud la mayoría de las líneas no tiene lectura; corte el resto en un editor de texto
refuse_too_many_lines = tiene más de { $millions } millones de líneas; divídalo por meses
refuse_too_large = pasa de { $mb } MB; divídalo por meses
refuse_unpacks_too_large = descomprimido pasa de { $mb } MB; divídalo por meses
refuse_no_ordinary_file = no se puede abrir (no es un archivo corriente)
refuse_not_opened = no se puede abrir ({ $why })
refuse_archive = es un archivo comprimido dañado
refuse_archive_locked = es un archivo comprimido dañado, un libro dañado, o está cerrado con contraseña
refuse_archive_empty = el archivo comprimido no contiene ninguno
refuse_no_rows = la base de datos no tiene ninguna tabla con filas
refuse_no_sheet = el libro no tiene hojas
refuse_database = es una base de datos dañada o bloqueada ({ $why })
refuse_pdf = es un PDF, no un archivo de texto; exporte el registro como CSV
refuse_bytes = contiene bytes que no son texto
refuse_lines = sus líneas no se pueden distinguir ({ $why })
refuse_no_number = ninguna línea tiene un número en sus columnas de temperatura o humedad
refuse_channel = { $file } no tiene un canal '{ $channel }'; tiene { $there }.
refuse_temp_unit = temp_unit es '{ $unit }'; escriba "C", "F" o "K".
refuse_stretches = su columna { $column } contiene tramos de una hora ({ $example }) y no momentos; escriba la hora en que empieza cada uno
refuse_minutes = su columna { $column } contiene números como { PLAIN($example) }, que no son horas del día pero pueden ser minutos desde medianoche; escriba las horas como 07:30
refuse_hour_parts = su columna { $column } contiene números como { $example }, que pueden ser horas y minutos o partes de una hora; escriba las horas como 07:30
refuse_twelve_hours = su reloj muestra las horas 1 a 12 y ni am ni pm, de modo que mañana y tarde no se distinguen; exporte el registro con un reloj de 24 horas
refuse_written_days = sus números como { $example } pueden ser días con hora ({ $form }) o segundos desde 1970; escríbalos como 2025-09-11 22:05
refuse_commas = una coma separa tanto sus columnas como sus decimales, sin comillas, de modo que no se distinguen; expórtelo con punto y coma o con punto decimal
refuse_many_columns = tiene { $count } columnas de temperatura o humedad, más de las { $most } que lee hatchkit; exporte algunas
refuse_no_measure = tiene fechas y horas pero ninguna columna de temperatura o humedad{ $headings ->
        [none] { "" }
       *[known] ; sus encabezados son { $headings }
    }
refuse_days_without_measure = tiene fechas sin hora, y ninguna columna llamada temperatura o humedad
refuse_several_kinds = su columna { $column } contiene valores de varias clases y ni unidad ni nombre dice cuáles son temperaturas; escriba la unidad o la magnitud junto a cada valor
refuse_nothing_below = la línea { PLAIN($line) } tiene los encabezados de un registro, pero ninguna línea debajo tiene fecha con un número; la primera es la línea { PLAIN($below) }: "{ $example }"
refuse_no_reading = ninguna línea tiene a la vez una fecha con hora y un número; { $lacks ->
        [number] hay fechas sin un número al lado
        [date] hay números sin fecha
       *[both] no hay ni lo uno ni lo otro
    }{ $line ->
        [none] { "" }
       *[known] , como en la línea { PLAIN($line) }: "{ $example }"
    }
refuse_no_day = sus líneas tienen horas y no fecha, y ni las líneas de encima ni el nombre del archivo nombran un día; escriba el día en el nombre del archivo
refuse_no_start = sus horas cuentan desde el inicio del registro ({ $column ->
        [none] una lectura tras otra
       *[named] { $column }
    }), y las líneas sobre las lecturas no dicen cuándo fue; escriba arriba una línea como Start: 2026-03-05 18:30
refuse_count_unit = sus horas cuentan desde el inicio del registro, y el encabezado { $column ->
        [none] de esa columna
       *[named] { $column }
    } no dice si en segundos, minutos u horas; escriba por ejemplo "{ $column ->
        [none] Time
       *[named] { $column }
    } (min)"
refuse_two_orders = sus fechas cambian de orden: "{ $one }" y las de alrededor están escritas { WORD($first, kind: "value") }, "{ $two }" y las de alrededor { WORD($second, kind: "value") }; parta el archivo donde cambia el orden
refuse_backwards = sus horas van hacia atrás y están sin fecha, de modo que no se sabe el día de cada una; dé la vuelta a las líneas, o escriba la fecha junto a cada una
refuse_hours_or_minutes = su columna { $column } contiene de 0 a { $most } en un día, que pueden ser horas o minutos tras la medianoche; llame hour a la columna, o escriba las horas como 00:07
refuse_no_time = tiene fechas sin hora
refuse_no_time_several = tiene fechas sin hora, y varias líneas al día
refuse_no_date_column = su columna { $column } contiene números como { $example }, que no se leen como fecha; escríbalos como 2025-09-11
refuse_no_date = ninguna línea tiene fecha, y las líneas sobre las lecturas no dicen { $lacks ->
        [start] cuándo empezó ni cuánto dura un paso
       *[step] cuánto dura un paso, ni hay un encabezado como Elapsed (min) que diga en qué columna se cuenta el tiempo
    }
refuse_no_stamp = ninguna columna tiene fechas con hora
