# Los archivos de los registradores, tal como los muestra hatchkit check.

logs_head = Los archivos de los registradores
log_read = { COUNT($files) ->
        [one] { $files }
       *[other] { COUNT($files) } archivos ({ LIST($files, most: 1) })
    }: { $machine }{ $known ->
        [none] { "" }
        [answer] {" "}(como contestó usted)
        [season_toml] {" "}(según season.toml)
        [file_name] {" "}(por el nombre del archivo)
        [probe_name] {" "}(por el nombre de la sonda)
        [only_one] {" "}(la única incubadora)
       *[dates] {" "}(por las fechas de sus huevos)
    }, { MINUTE($start) } a { MINUTE($end) }, { $readings ->
        [one] una lectura
       *[other] cada { $step } min, { $readings } lecturas
    }{ $gaps ->
        [0] , sin huecos
        [one] , un hueco de { $longest } h
       *[other] , { $gaps } huecos, el más largo de { $longest } h
    }{ $doubtful ->
        [0] { "" }
       *[some] , { $doubtful } dudosas
    }{ $probes ->
        [none] { "" }
       *[some] ; { $probes }
    }{ $asked ->
        [none] .
       *[some] . Se pregunta: { $asked }.
    }
log_not_read = Sin leer: { LIST($files, most: 4) }.
log_probe = { $probe }: { $parts } { $how ->
        [heading] por el encabezado
        [above] por una línea de arriba
        [unit_column] por la columna de unidades
        [season_toml] según season.toml
        [answer] como contestó usted
       *[values] por los valores
    }
log_more_probes = { $more ->
        [one] una sonda más
       *[other] { $more } sondas más
    }
log_quantity = { $quantity ->
        [temp] { $unit ->
            [C] °C
            [F] °F
            [K] K
           *[other] °C y °F
        }
        [rh] humedad
        [wet_bulb] humedad por el bulbo húmedo
       *[dew_point] humedad por el punto de rocío
    }
log_asked = { $code ->
        [log_machine] su incubadora
        [log_column] qué son sus columnas
        [log_unit] su unidad
        [log_scale] su coma decimal
        [log_encoding] sus letras
        [log_zone] su huso horario
        [log_clock] su reloj
       *[log_date_order] sus fechas
    }
logs_more = { $more ->
        [one] Un archivo o grupo de archivos más
       *[other] { $more } archivos o grupos de archivos más
    }: hatchkit check CARPETA --full.
question_readings = { $rows ->
        [one] Una lectura depende de ello.
       *[other] { $rows } lecturas dependen de ello.
    }
value_temp_C = temperatura en °C
value_temp_F = temperatura en °F
value_temp_K = temperatura en K
value_rh = humedad en %
value_not_used = no usado
value_dmy = día, mes, año
value_mdy = mes, día, año
value_ymd = año, mes, día
value_divided_by_10 = dividido por 10
value_divided_by_100 = dividido por 100
value_divided_by_1000 = dividido por 1000
value_put_right = puesto en hora a mano
value_kept_old_time = nunca puesto en hora
value_as_it_stands = tal como está
value_none_of_these = nada de esto
