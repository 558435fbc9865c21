# hatchkit check: la página en que se ve cómo se leyó la tabla, qué se pregunta y qué hay que corregir.

check_title = { $title }: cómo se leyó
check_counts = { $title }: se leyeron { $batches ->
        [one] { $batches } tanda
       *[other] { $batches } tandas
    }, { $eggs ->
        [one] { $eggs } fila de huevo
       *[other] { $eggs } filas de huevos
    }, { $weights ->
        [one] { $weights } pesada
       *[other] { $weights } pesadas
    }, { $readings ->
        [one] { $readings } lectura
       *[other] { $readings } lecturas
    }.
check_clock = Las horas son las de { $timezone }.

check_i_read = Así lo leí
check_sheet = { $sheet ->
        [none] { $file }
       *[named] { $file }, hoja { $sheet }
    }
check_sheets_alike = { $file }: { COUNT($sheets) ->
        [one] hoja { $sheets }
       *[other] hojas { LIST($sheets, most: 6) }, de igual forma
    }
check_head_heading = su encabezado
check_head_taken = tomado como
check_head_example = un ejemplo
check_head_sure = seguridad
check_head_why = por qué
check_no_heading = (sin encabezado, columna { PLAIN($place) })
check_plain = { COUNT($pairs) ->
        [one] Además, seguro: { $pairs }.
       *[other] { COUNT($pairs) } más, seguras: { LIST($pairs, most: 12) }.
    }
check_pair = { $heading } = { $taken }
check_more_sheets = { $sheets ->
        [one] Se leyó una hoja más
       *[other] Se leyeron { $sheets } hojas más
    } sin ninguna duda; --full lo muestra todo.

ledger_head = ¿Cuadran los huevos?
ledger_term = { $eggs } { $heading }
ledger_sum = { $name }: { $set } puestos = { $terms }
ledger_nothing = { $name }: { $set } puestos, no se dice más
ledger_adds_up = { $sum }: cuadra.
ledger_short = { $sum }: { $rest ->
        [one] de un huevo no se dice nada.
       *[other] de { $rest } huevos no se dice nada.
    }
ledger_over = { $sum }: { $over ->
        [one] sobra un huevo.
       *[other] sobran { $over } huevos.
    }
ledger_unknown = { $sum }.
ledger_more = y { $count } más
ledger_total = Los huevos cuadran en { $rows } de { $of ->
        [one] una fila.
       *[other] { $of } filas.
    }

questions_head = { $count ->
        [one] Una pregunta
       *[other] { $count } preguntas
    }, la de más consecuencias primero
questions_how = Contestar: hatchkit check CARPETA --ask, o el cuaderno 0.
question_rows = { $rows ->
        [0] Ningún número depende de ello.
        [one] Una fila depende de ello.
       *[other] { $rows } filas dependen de ello.
    }
question_where = { $sheet ->
        [none] { $file }
       *[named] { $file }, hoja { $sheet }
    }
question_meaning = ¿Qué es la columna «{ $heading }»? Tomado por ahora: { $choice }.
question_species = { $written ->
        [none] ¿Qué aves son? Nada en la hoja lo dice;
       *[some] ¿Qué aves son «{ $written }»? hatchkit no conoce esa ave;
    } tomado por ahora: { $choice }.
question_year = ¿Qué año es? Nada en la hoja lo dice; tomado por ahora: { $choice }.
question_day_first = ¿Qué va primero en sus fechas? Ambos órdenes son posibles; tomado por ahora: { $choice }.
question_diary = { $names ->
        [none] Algunas tandas del diario no cuadran según leo sus frases.
       *[some] Según leo las frases del diario, los huevos no cuadran en: { $names }.
    } Tomado por ahora: { $choice }. --full muestra lo leído; escriba tal tanda como fila de números para estar seguro.
question_sums = Lea como lea esta hoja, la mayoría de las filas tienen más huevos de los que se pusieron; alguna columna debe de significar otra cosa. Por ahora se toma: { $choice }.
question_mixed_birds = { $written ->
        [none] Una tanda tiene varias clases de aves. ¿Cuál cuenta?
       *[some] «{ $written }» nombra varias clases de aves en una tanda. ¿Cuál cuenta?
    } Tomado por ahora: { $choice }.
question_machine = ¿En qué incubadora estaban los huevos? Tomado por ahora: { $choice }.
question_log_machine = { $heading ->
        [none] ¿De qué incubadora es el registro { $file }?
       *[named] ¿De qué incubadora es la sonda «{ $heading }» del registro { $file }?
    } Tomado por ahora: { $choice }.
question_log_date_order = ¿Qué va primero en las fechas de «{ $heading }»? Tomado por ahora: { $choice }.
question_log_unit = ¿En qué unidad está «{ $heading }»? Tomado por ahora: { $choice }.
question_log_scale = A «{ $heading }» parece faltarle la coma decimal. Tomado por ahora: { $choice }.
question_log_column = ¿Qué es la columna «{ $heading }» del registro? Tomado por ahora: { $choice }.
question_log_zone = ¿Mostraba el reloj del registro { $file } la hora de verano? Nombra un desfase y habla de ella. Tomado por ahora: { $choice }.
question_log_clock = El reloj del registro { $file } no siguió el cambio de hora y más tarde da un salto de una hora. ¿Se puso entonces en hora a mano? Tomado por ahora: { $choice }.
question_log_encoding = ¿Cómo se lee una línea del registro { $file }: { OR($names) }? Tomado por ahora: { $choice }.
question_other = { $heading ->
        [none] Esto podría leerse de más de una manera.
       *[named] «{ $heading }» podría leerse de más de una manera.
    } Tomado por ahora: { $choice }.
choice_adds = { $heading ->
        [none] Si es { $choice }, los huevos cuadran en { $adds } de { $of ->
            [one] una fila
           *[other] { $of } filas
        }
       *[named] Si «{ $heading }» es { $choice }, los huevos cuadran en { $adds } de { $of ->
            [one] una fila
           *[other] { $of } filas
        }
    }
choice_adds_next = si es { $choice }, en { $adds }
choices_add = { $first }{ $rest ->
        [none] .
       *[more] ; { $rest }.
    }
choices_are = Puede ser: { OR($choices) }.
choice_line = { $adds ->
        [none] { $choice }
       *[known] { $choice } (los huevos cuadran en { $adds } de { $of ->
            [one] una fila
           *[other] { $of } filas
        })
    }
choice_now = { $line }, como se toma ahora

value_day_first = día antes que mes
value_used = usado como se lee
value_month_first = mes antes que día
value_yes = sí
value_no = no
value_True = día antes que mes
value_False = mes antes que día
value_nothing = nada; fuera de las tasas hasta que se diga
value_left_out = fuera de las tasas
value_separate = cada clase, una tanda propia

ask_number = Número; Intro lo deja así, q termina:
ask_again = { $most ->
        [one] Escriba 1, pulse Intro o escriba q.
       *[other] Escriba un número de 1 a { $most }, pulse Intro o escriba q.
    }
ask_nothing = No hay nada que preguntar: ningún número depende de una lectura abierta.
ask_kept = { $answers ->
        [one] Una respuesta queda guardada
       *[other] { $answers } respuestas quedan guardadas
    } en { $path }. Borre ese archivo para que se pregunte de nuevo; su tabla no se tocó.
ask_left = { $questions ->
        [0] No queda nada que preguntar.
        [one] Queda una pregunta.
       *[other] Quedan { $questions } preguntas.
    }

problems_lost = Corregir primero: no usado en absoluto ({ $count })
problems_doubtful = Después: usado, pero quizá equivocado ({ $count })
problems_note = Para saber: lo que se supuso ({ $count })
problems_none = Nada que corregir.
problems_fix = Hacer: { $fix }
problems_more_like = y { $count } { $count ->
        [one] más de esta clase
       *[other] más de esta clase
    }
problems_folded = { $count ->
        [one] Una clase más de avisos
       *[other] { $count } clases más de avisos
    }: hatchkit check CARPETA --full.
problems_first = Se muestran los primeros { $most }.
problems_head_where = Dónde
problems_head_found = Hallado
problems_head_done = Hecho
problems_head_fix = Cómo corregirlo
place_more_files = { $file } y { $count ->
        [one] 1 archivo más
       *[other] { $count } archivos más
    }
place_sheet = hoja { $sheet }
place_rows = { COUNT($rows) ->
        [one] fila { $rows }
       *[other] filas { LIST($rows, most: 8) }
    }
place_columns = { COUNT($columns) ->
        [one] columna { $columns }
       *[other] columnas { LIST($columns, most: 3) }
    }

assumed_sure = Leído: { $files ->
        [none] los registros
       *[other] { $files }
    }, { $columns ->
        [one] una columna
       *[other] { $columns } columnas
    }, todas seguras; los huevos cuadran en { $rows } de { $of ->
        [one] una fila
       *[other] { $of } filas
    }.
assumed_sure_unsummed = Leído: { $files }, { $columns ->
        [one] una columna
       *[other] { $columns } columnas
    }, todas seguras.
assumed_likely = Supuesto al leer (probable): { $likely }.
assumed_open = Supuesto al leer, aún abierto: { $open }. { $rows ->
        [0] Ningún número de abajo depende de ello.
        [one] Los números de una fila dependen de ello
       *[other] Los números de { $rows } filas dependen de ello
    }{ $rows ->
        [0] { "" }
       *[some] : { $fields }; conteste con hatchkit check CARPETA --ask.
    }
assumed_pair = «{ $heading }» es { $taken }
assumed_value = { $code ->
        [species] las aves son { $taken }
        [year] el año es { $taken }
        [day_first] en las fechas, { $taken }
        [diary] tandas del diario cuyos huevos no cuadran: { $taken }
        [machine] la incubadora es { $taken }
        [log_machine] el registro es de { $taken }
       *[other] { $taken }
    }
assumed_everything = todos sus números
assumed_readings = temperatura y humedad

form_keep = Guardar
form_keep_why = Guardar estas elecciones junto a su temporada, para no preguntar otra vez
form_others = ¿Se tomó mal otra columna?
form_nothing_chosen = Aún no se eligió nada.
form_again = Ejecute este cuaderno otra vez desde arriba para ver su temporada leída así.
form_whole = { $code ->
        [species] Aves
        [year] Año
        [day_first] Fechas
        [diary] Diario
        [mixed_birds] Aves de una tanda
        [machine] Incubadora
        [log_machine] Incubadora del registro
        [log_encoding] Letras del registro
        [log_zone] Huso del registro
        [log_clock] Reloj del registro
       *[other] Elección
    }

