# Los registros en que se apoya una página.
ask_records = ¿Qué se leyó y qué se supuso?
records_read = { $questions ->
        [0] { $assumed ->
            [likely] Algunas columnas de las tablas se leen solo como probables
            [sure] Cada columna de las tablas es segura
           *[other] No se supuso nada
        }
        [one] Queda abierta una pregunta sobre las tablas
       *[other] Quedan abiertas { $questions } preguntas sobre las tablas
    }{ $unlike ->
        [0] .
        [one] , y un dato no pudo tomarse tal como está escrito.
       *[other] , y { $unlike } datos no pudieron tomarse tal como están escritos.
    }
records_how = { $batches ->
        [one] Una tanda
       *[other] { $batches } tandas
    }{ $readings ->
        [0] , ninguna temperatura.
       *[other] { " " }y { $readings } lecturas de { LIST($machines, most: 6) }.
    } Datos no usados: { $lost }; dudosos: { $doubtful }; notas: { $note }. Horas de { $timezone }.
records_see = Cómo se leyó cada columna, y qué se puede contestar: hatchkit check, o el cuaderno 0.
table_problems = Lo que no pudo tomarse tal como está escrito
head_severity = Clase
head_file = Archivo
head_row = Fila
head_found = Hallado
head_done = Qué se hizo
head_fix = Cómo corregirlo
severity_lost = no usado
severity_doubtful = dudoso
severity_note = nota
