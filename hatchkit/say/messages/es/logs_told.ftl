# Lo que no pudo tomarse de los archivos de los registradores tal como está escrito.

log_headings_fewer =
    .found = hay un encabezado menos que columnas
    .done = La primera columna se toma como números de línea sin encabezado.
    .fix = Escriba un encabezado sobre la primera columna.
log_headings_more =
    .found = hay más encabezados que columnas; no hay ninguna bajo { LIST($names, most: 6) }
    .done = Los demás se toman para las columnas bajo ellos.
    .fix = Ponga entre comillas un encabezado que contenga una coma.
log_by_behaviour =
    .found = { $header ->
        [yes] ningún encabezado nombra una temperatura o humedad
       *[no] el archivo no tiene encabezados
    }; las columnas se distinguieron por cómo se comportan sus valores
    .done = Tomado como dicen las preguntas.
    .fix = Ponga una línea de nombres sobre las lecturas, o conteste la pregunta.
log_against_values =
    .found = los valores medios de { LIST($names, most: 6) } ({ LIST($middles, most: 6) }) no parecen lo que dicen los encabezados
    .done = Leído como dicen los encabezados.
    .fix = Mire si los encabezados están sobre las columnas equivocadas.
log_exchanged =
    .found = en { $count ->
        [one] una línea
       *[other] { $count } líneas
    } la temperatura de { $name } pasa de 45 °C y la humedad está donde en las demás está su temperatura
    .done = Leído como dicen los encabezados.
    .fix = Mire si se juntaron dos exportaciones de distinta forma.
log_summer_open =
    .found = el archivo dice que su reloj es { $clock } y habla de horario de verano
    .done = Leído como { $taken }; con horario de verano sería { $other }.
    .fix = Conteste la pregunta.
log_only_extremes =
    .found = { $names }: la más baja y la más alta de cada intervalo, y ninguna media
    .done = Cada una se lee como una sonda propia.
    .fix = Exporte también la media.
log_encoding_open =
    .found = la línea { PLAIN($line) } se lee "{ $one }" en la codificación { $page } y "{ $two }" en { $other }
    .done = Leído como { $page }.
    .fix = Exporte el registro en UTF-8.
log_member_left_out =
    .found = { $name }, en el archivo comprimido, no se puede leer: { $why }
    .done = Dejado fuera.
log_part_refused =
    .found = { $part ->
        [none] este archivo
       *[named] { $part }
    } no es un registro: { $why }
    .done = Dejado fuera.
log_sections =
    .found = { $count } exportaciones con encabezados propios están en un solo archivo
    .done = Cada una se lee por sus propios encabezados.
log_twins =
    .found = { $names }: la misma temperatura otra vez en otra unidad
    .done = Leído una vez.
log_unused =
    .found = columnas que no son temperatura ni humedad del aire: { LIST($names, most: 12) }
    .done = No se usan.
log_lone_quotes =
    .found = unas comillas sin pareja en { $count ->
        [one] una línea
       *[other] { $count } líneas
    }, la primera es la línea { PLAIN($line) }
    .done = Se pasa por alto la marca.
    .fix = Mire esas líneas en un editor de texto.
log_order =
    .found = fechas como { $example }
    .done = Leído como { WORD($order, kind: "value") }: { WORD($how, kind: "order_how") }{ COUNT($against) ->
        [0] { "" }
       *[other] ; { WORDS($against, kind: "order_against") }
    }.
log_order_open =
    .found = fechas como { $example } pueden leerse en más de un orden
    .done = Leído como { WORD($order, kind: "value") }{ $how ->
        [none] { "" }
       *[known] , { WORD($how, kind: "order_how") }
    }{ COUNT($against) ->
        [0] { "" }
       *[other] ; { WORDS($against, kind: "order_against") }
    }.
    .fix = Escriba day_first = true o false bajo [sensors] en season.toml.
order_how_said = como dice day_first
order_how_continuity = solo así se siguen los días
order_how_a_day_above_12 = otros órdenes dan días que no existen
order_how_in_order = solo así están las líneas en orden
order_how_weekday = solo así encajan los días de la semana
order_how_other_files = como en los otros archivos
order_how_dots = las fechas con puntos empiezan por el día
order_how_half_day = con am y pm va primero el mes
order_how_batches = que cae dentro de las tandas de la temporada
order_against_said = day_first dice otra cosa
order_against_other_files = otros archivos están escritos de otro modo
order_against_a_day_above_12 = algunas fechas solo existen al revés

log_machine_named =
    .found = sonda { $probe } en { $file }
    .done = Asignado a la incubadora { $machine } por { $how ->
        [file_name] el nombre del archivo
       *[probe_name] el nombre de la sonda
    }.
    .fix = Si no: [incubators.{ $key }] files = ["..."]
log_machine_guessed =
    .found = { $file } no nombra incubadora
    .done = Asignado a { $machine }, { $how ->
        [only_one] la única de la temporada
       *[dates] la única incubadora sin registro que tenía huevos entonces
    }.
    .fix = [incubators.{ $key }] files = ["{ $file }"]
log_machine_unknown =
    .found = { $file } (sonda { LIST($probes, most: 6) }) no nombra ninguna incubadora de la temporada
    .done = Guardado como incubadora "{ $taken }".
    .fix = Escriba en season.toml, con el nombre correcto: { $line }
log_not_a_log =
    .found = { $name } no es texto, libro ni archivo comprimido
    .done = Dejado fuera.
    .fix = Sáquelo de la carpeta sensors, o expórtelo como CSV.
log_beside_batches =
    .found = { $name } es un registro y está junto a la tabla de tandas
    .done = Leído como los registros de la carpeta sensors.
    .fix = Póngalo en una carpeta llamada sensors.
log_lost =
    .found = { $why }
    .done = Dejado fuera.
    .fix = Exporte de nuevo el registro como CSV, o saque el archivo de la carpeta sensors.
log_marked =
    .found = una marca tras { $count ->
        [one] un valor
       *[other] { $count } valores
    } de { $quantity ->
        [temp] { $name }
       *[rh] la humedad de { $name }
    }, la primera en la línea { PLAIN($line) }: "{ $example }"
    .done = { $doubted ->
        [yes] Guardado y marcado "marked".
       *[no] Leído sin la marca, pues casi todos la llevan.
    }
    .fix = Vea en el manual del registrador qué significa la marca.
log_without_decimals =
    .found = el valor medio de { $name } es { PLAIN($middle) }
    .done = Dividido por { $factor }.
    .fix = Exporte con decimales, o conteste la pregunta.

log_lines_where = { $count ->
        [one] { "" }
       *[other] { $first ->
            [none] { "" }
           *[known] , la primera es la línea { PLAIN($first) }
        }
    }{ $example ->
        [none] { "" }
       *[known] : "{ $example }"
    }
log_lines_blank =
    .found = { $count ->
        [one] 1 línea vacía
       *[other] { $count } líneas vacías
    }{ log_lines_where }
    .done = Dejado fuera.
log_lines_repeated_header =
    .found = { $count ->
        [one] 1 línea de encabezados repetida
       *[other] { $count } líneas de encabezados repetidas
    }{ log_lines_where }
    .done = Dejado fuera.
log_lines_words =
    .found = { $count ->
        [one] 1 línea
       *[other] { $count } líneas
    } de texto sin hora{ log_lines_where }
    .done = Dejado fuera.
log_lines_untimed =
    .found = { $count ->
        [one] 1 línea
       *[other] { $count } líneas
    } con un valor pero sin hora legible{ log_lines_where }
    .done = Dejado fuera.
    .fix = Corrija la fecha en el archivo{ $why ->
        [no_such_day] : ese día no existe en el calendario
        [year] : su año no puede ser correcto
        [hour] : esa hora no existe
        [no_hour] : su hora no se puede leer
        [order] : solo encaja si día y mes están al revés
        [no_year] : no tiene año
       *[other] { "" }
    }.
log_lines_events =
    .found = { $count ->
        [one] 1 línea
       *[other] { $count } líneas
    } de texto con hora (sucesos){ log_lines_where }
    .done = Dejado fuera de las lecturas.
log_lines_other_quantities =
    .found = { $count ->
        [one] 1 línea
       *[other] { $count } líneas
    } de otras magnitudes{ log_lines_where }
    .done = No leído.
log_lines_merged =
    .found = { $count ->
        [one] 1 línea que repite o completa una lectura
       *[other] { $count } líneas que repiten o completan una lectura
    }{ log_lines_where }
    .done = Unido a ella.
log_lines_other_channels =
    .found = { $count ->
        [one] 1 línea
       *[other] { $count } líneas
    } de otros canales{ log_lines_where }
    .done = No se pidió.
log_lines_top =
    .found = { $count ->
        [one] 1 línea
       *[other] { $count } líneas
    } al principio ({ $above ->
        [both] título y encabezados
        [header] encabezados
       *[title] título
    }){ log_lines_where }
    .done = No son lecturas.
log_lines_in_quotes =
    .found = { $count ->
        [one] 1 línea
       *[other] { $count } líneas
    } dentro de comillas o tras la marca de fin{ log_lines_where }
    .done = Dejado fuera.
    .fix = Abra el archivo en un editor de texto y busque unas comillas perdidas.
log_lines_no_readings =
    .found = { $count ->
        [one] 1 línea
       *[other] { $count } líneas
    } y ninguna lectura{ log_lines_where }
    .done = El archivo tiene los encabezados de un registro y nada debajo.
    .fix = Exporte de nuevo el registro.
log_lines_section =
    .found = { $count ->
        [one] 1 línea
       *[other] { $count } líneas
    } de una parte que no se puede leer{ log_lines_where }: { $why }
    .done = Dejado fuera.

log_empty_lines =
    .found = { $count } de { $of } líneas no tienen valor de { $name }
    .done = Esas líneas no dan lectura de ella.
log_odd_cells =
    .found = texto en { $count ->
        [one] una celda
       *[other] { $count } celdas
    } de { $name }, la primera en la línea { PLAIN($line) }: "{ $example }"
    .done = Tomado como ningún valor.
log_missing_codes =
    .found = { $count ->
        [one] 1 lectura
       *[other] { $count } lecturas
    } de { $name } con { $values }, un código de ninguna lectura
    .done = Marcado "missing code"; temp_c queda vacío.
log_unit_against =
    .found = { $name } lleva de encabezado °{ $said }, pero sus valores solo pueden ser { WORD($unit, kind: "degree") }
    .done = Leído como { WORD($unit, kind: "degree") }.
    .fix = Escriba temp_unit = "C" o "F" bajo [sensors] en season.toml.
log_unit_guessed =
    .found = { $name } no tiene unidad{ $middle ->
        [none] { "" }
       *[known] ; su valor medio es { TENTH($middle) }
    }
    .done = Leído como { WORD($unit, kind: "degree") }.
log_unit_open =
    .found = { $name } no tiene unidad y su valor medio es { TENTH($middle) }
    .done = Leído como { WORD($unit, kind: "degree") }.
    .fix = Escriba temp_unit = "C" o "F" bajo [sensors] en season.toml.
degree_C = °C
degree_F = °F
degree_K = K
log_humidity_impossible =
    .found = { $count ->
        [one] 1 valor de humedad
       *[other] { $count } valores de humedad
    } de { $name } imposibles: { $values }
    .done = rh_pct queda vacío allí; la temperatura se conserva.
log_humidity_share =
    .found = la humedad de { $name } está entre 0 y 1
    .done = Leído como proporción y mostrado en %.
log_humidity_wet_bulb =
    .found = { $name } tiene termómetro húmedo y no humedad
    .done = Humedad calculada para { $air ->
        [still] una mecha en aire quieto
       *[fan] una mecha ventilada
    } (coeficiente { $coefficient }e-4 por K) a { TENTH($pressure) } kPa.
    .fix = air = "still" o "fan" y altitude_m de la incubadora en season.toml lo cambian.
log_humidity_dew_point =
    .found = { $name } tiene punto de rocío y no humedad
    .done = Humedad calculada del punto de rocío.

log_two_probes =
    .found = { $file } y { $other } se solapan en el tiempo con lecturas distintas de { $probe } en la incubadora { $machine }
    .done = Tomado como dos sondas; esta se llama { $taken }.
log_again =
    .found = { $count ->
        [one] 1 lectura de { $probe } que también está en { $other }
       *[other] { $count } lecturas de { $probe } que también están en { $other }
    }
    .done = Unido.
log_clash =
    .found = { $count ->
        [one] 1 lectura
       *[other] { $count } lecturas
    } de { $probe } contra otros valores al mismo tiempo en { $other }
    .done = Ambas guardadas y marcadas "repeated".
    .fix = Saque el archivo equivocado.
log_newest_first =
    .found = { $name } está escrito de lo más nuevo a lo más viejo
    .done = Puesto en el orden del tiempo.
log_times_back =
    .found = las horas de { $name } retroceden { $count ->
        [one] una vez
       *[other] { $count } veces
    }, la primera en la línea { PLAIN($line) }
    .done = Puesto en el orden del tiempo.
    .fix = Compruebe que el archivo tenga una sola sonda.
log_clock_step =
    .found = el reloj de { $name } retrocedió o perdió su fecha en la línea { PLAIN($line) }; { $count ->
        [one] 1 lectura
       *[other] { $count } lecturas
    } junto a las demás
    .done = Guardado y marcado "clock step".
    .fix = Corrija las horas en el archivo.
log_merged =
    .found = { $count ->
        [one] 1 lectura
       *[other] { $count } lecturas
    } de { $name } con la hora de otra, iguales o que la completan
    .done = Unido a ella.
log_doubted =
    .found = { $count ->
        [one] 1 lectura
       *[other] { $count } lecturas
    } de { $name } { $doubt ->
        [stuck] sin cambio alguno durante horas
        [spike] con un salto más rápido de lo que puede el aire de una incubadora
        [out_of_range] con un valor que ninguna incubadora tiene
        [repeated] con la hora de otra de otro valor
       *[missing_code] sin valor
    }, la primera a { $start }, la última a { $end }
    .done = Guardado y marcado "{ $mark }".
log_gaps =
    .found = { $count ->
        [one] un hueco de { $hours ->
            [one] { TENTH($hours) } hora
           *[other] { TENTH($hours) } horas
        } en las lecturas de { $name }
       *[other] { $count } huecos en las lecturas de { $name }, el más largo de { $hours ->
            [one] { TENTH($hours) } hora
           *[other] { TENTH($hours) } horas
        }
    }: nada entre { $start } y { $end }
    .done = El hueco queda vacío.
log_zone_said =
    .found = el archivo dice que su reloj es { $clock }
    .done = Tomado como su huso.
log_zone_none =
    .found = ni el archivo ni season.toml nombran un huso horario
    .done = Las horas se toman como las mostró el reloj.
    .fix = Escriba timezone = "Europe/Rome" (o el suyo) en season.toml.

clock_not_followed =
    .found = el reloj del registrador no siguió el cambio de hora del { $day }
    .done = Todo el archivo se lee en la hora con que empezó.
    .fix = Si no es así, ponga en season.toml el timezone de la incubadora de este archivo.
clock_put_right =
    .found = el reloj { $way ->
        [on] adelanta
       *[back] atrasa
    } una hora a { $time }, como si se hubiera puesto a mano
    .done = Lo que sigue se lee en la nueva hora.
    .fix = Conteste la pregunta.
clock_hour_twice =
    .found = { $count ->
        [one] 1 lectura
       *[other] { $count } lecturas
    } en la hora que vino dos veces el { $day }
    .done = El orden del archivo distingue el primer paso del segundo.
clock_hour_skipped =
    .found = { $count ->
        [one] 1 lectura
       *[other] { $count } lecturas
    } en la hora que faltó el { $day }
    .done = Se leen como una hora más tarde.
no_such_zone = No hay un huso horario '{ $zone }'; escríbalo como timezone = "Europe/Rome".
