# Why a batch was poor, for who looks further: what fits a cause, what speaks against it, how its weight comes about.
reason_stage_more = { $eggs } { WORD($stage, kind: "loss") } cuando lo normal es { $usual }
reason_stage_few = solo { $eggs } { WORD($stage, kind: "loss") } cuando lo normal es { $usual }
reason_stage_none = ninguno { WORD($stage, kind: "loss") } ({ $eggs }) cuando lo normal es { $usual }
reason_stage_not_explained = no explica esto: { $eggs } { WORD($stage, kind: "loss") } cuando lo normal es { $usual }
reason_stages = { OR($stages) }
reason_days_more = { $eggs } muertos { $by_day ->
        [none] después del día { TENTH($after_day) }
       *[other] entre el día { TENTH($after_day) } y { $by_day }
    } ({ $stages }, no se sabe cuál; lo normal del conjunto es { $usual })
reason_days_not_explained = no explica esto: { $eggs } muertos { $by_day ->
        [none] después del día { TENTH($after_day) }
       *[other] entre el día { TENTH($after_day) } y { $by_day }
    } ({ $stages }, no se sabe cuál; lo normal del conjunto es { $usual })
reason_any_pattern = admite cualquier patrón, así que nunca encaja bien
reason_good_chicks = { $good } pollitos sanos de { $set } huevos puestos; lo normal es { $usual }, y { $spread } más o menos es corriente
reason_noted = usted anotó: { WORD($sign, kind: "sign") } («{ $said }»)
reason_lacking = falta: { WORD($item, kind: "needs") }
reason_item = { WORD($item, kind: "item") }: { $value }{ $usual ->
        [none] { "" }
       *[other] { " " }({ $usual } en sus tandas buenas)
    }
reason_value = { $more ->
        [yes] +
       *[no] { "" }
    }{ $unit ->
        [share] { SHARE($value) }
        [degrees] { STEP($value) }
        [h] { $value } h
        [m] { $value } m
        [points] { $value } puntos
        [humidity] { $value } % HR
        [days] { $value ->
            [one] 1 día
           *[other] { $value } días
        }
        [weeks] { $value ->
            [one] 1 semana
           *[other] { $value } semanas
        }
        [doublings] { TENTH($times) } veces
        [tray] 1 de cada { $one_in }
        [flag] { $value ->
            [0] no
           *[other] sí
        }
       *[other] { $value }
    }
reason_limit_no_log = No se registró la temperatura de esta tanda; ningún juicio sobre calor o frío puede ser firme.
reason_limit_probe = No consta que se haya comprobado la sonda de esta incubadora; lo dicho de la temperatura vale solo si dice la verdad.
reason_limit_few = { $batches ->
        [0] No hay otra tanda de esta especie
        [one] Solo hay 1 tanda más de esta especie
       *[other] Solo hay { $batches } tandas más de esta especie
    } con que comparar; la sustituye el balance publicado.
reason_limit_not_opened = Los huevos sin eclosionar no se abrieron (o no se anotó); las edades de muerte son aproximadas.

# What was different, and the verdict.
different_name = { WORD($item, kind: "item") }: { $value }, { $usual } en las buenas
item_flock = lote
item_pen = corral
item_incubator = incubadora
item_shelf = bandeja
item_hatcher = nacedora
item_broody = gallina clueca
different_told = ¿Qué fue distinto esta vez, al lado de { $good ->
        [0] valores publicados, pues aún no hay tanda buena
        [one] su única tanda buena y valores publicados
       *[other] sus { $good } tandas buenas
    }? { $count ->
        [0] Nada de lo anotado difiere.
       *[other] { $told }.
    }
verdict_confident = Tanda { $batch }: muy probablemente { WORD($cause, kind: "cause") } ({ SHARE($share) } del peso).
verdict_probable = Tanda { $batch }: probablemente, no con seguridad, { WORD($cause, kind: "cause") } ({ SHARE($share) } del peso).
verdict_two_causes = Tanda { $batch }: probablemente dos cosas: { WORD($first, kind: "cause") } (unos { EGGS($eggs_first) } huevos) y { WORD($second, kind: "cause") } (unos { EGGS($eggs_second) } huevos).
verdict_bad_luck = Tanda { $batch }: la mala suerte corriente basta para explicarla ({ SHARE($share) } del peso); ninguna causa destaca.
verdict_cannot_tell = Tanda { $batch }: los registros no pueden decirlo{ $clears ->
        [yes] , es decir, qué los dejó claros
       *[no] { "" }
    }.
verdict_luck_or_unknown = La mala suerte corriente tiene el mayor peso, pero no se sabe qué fue de tantos huevos.
verdict_too_little = El mayor peso: { WORD($cause, kind: "cause") } ({ SHARE($share) }), demasiado poco para nombrarla.
verdict_fits = A favor: { $told }.
verdict_against = En contra: { $told }.
verdict_unknown = No se sabe: { $told }.
verdict_tied = Casi empatadas: { $told }{ $more ->
        [0] { "" }
       *[other] { " " }y { $more } más
    }.
verdict_clears = La pérdida son sobre todo claros: { $eggs } de { $set } huevos, lo normal es { $usual }. { $opened ->
        [none] Ábralos en la próxima ovoscopia: sin germen, mire los gallos; con un germen muerto, la conservación o el calor.
       *[other] De los que abrió, { SHARE($opened) } tenía un germen muerto.
    }
verdict_many_unaccounted = { EGGS($eggs) ->
        [one] De 1 de los { EGGS($set) } huevos puestos de la tanda { $batch } no se sabe el final
       *[other] De { EGGS($eggs) } de los { EGGS($set) } huevos puestos de la tanda { $batch } no se sabe el final
    }; no se puede nombrar ninguna causa con seguridad.
verdict_unaccounted = { EGGS($eggs) ->
        [one] De 1 de los { EGGS($set) } huevos puestos de la tanda { $batch } no se sabe el final
       *[other] De { EGGS($eggs) } de los { EGGS($set) } huevos puestos de la tanda { $batch } no se sabe el final
    }.
verdict_sign = { WORD($sign, kind: "sign") } (de «{ $said }»)
verdict_signs = Señales leídas en sus palabras: { $read }.
verdict_remark = Su observación sobre esta tanda: «{ $remark }».

# How the weight of a cause comes about.
weight_of = De dónde sale el peso: { WORD($cause, kind: "cause") } (tantas veces más probable con la causa que con mala suerte):
weight_pattern = los días y etapas en que se perdieron huevos
weight_second = su parte del peso de dos causas juntas
weight_not_known = { WORD($item, kind: "item") }: no se sabe
weight_once = { $what } (el mismo hecho cuenta más abajo o más arriba)
weight_together = todo junto{ $ways ->
        [one] { "" }
       *[other] ; el peso de la causa es la media de sus { $ways } edades o retrasos, de los que este es el más probable
    }. Antes de mirar tenía { SHARE($prior) } del peso, después { SHARE($share) }.
weight_line = { $size ->
        [beyond] × más de 100 000
        [large] × { $factor }
       *[small] × { $factor }
    }  { $what }

# Evidence items: what each is, and what it needs.
item_heat = calor frente al que redujo a la mitad el nacimiento a esa edad
item_cold = horas de desarrollo perdidas por frío
item_transfer_chill = horas de desarrollo perdidas en torno al traslado
item_log_level = temperatura registrada frente a la deseada
item_clock = primer pollito frente a la hora habitual
item_clock_machine = lo mismo en las demás tandas de esta incubadora
item_hatch_spread = del primer al último pollito
item_water_loss = agua perdida hasta el traslado frente al objetivo de la especie
item_rh_set = humedad en la incubación frente al margen de la especie
item_rh_hatch = humedad en el nacimiento frente al margen de la especie
item_storage = días de conservación más allá de lo mejor
item_flock_age = semanas de las gallinas fuera de 26 a 60
item_flock_clears = claros de las demás tandas de este lote frente a otros lotes
item_flock_deaths = muertes tempranas y medias de las demás tandas de este lote frente a otros
item_tray = muertes juntas en una parte de la bandeja (tan raro por azar)
item_probe_gap = diferencia entre las sondas de la incubadora
item_malpositions = malposiciones entre los muertos tardíos
item_contaminated = huevos podridos de los puestos
item_cracked = huevos rajados de los puestos
item_altitude = altitud del lugar
item_posted = huevos que llegaron por correo
item_flock_own = si el lote difiere de los de las tandas buenas
item_clears_opened = claros abiertos en la primera ovoscopia con germen
needs_heat = lecturas de temperatura
needs_cold = lecturas de temperatura
needs_log_level = lecturas de temperatura
needs_transfer_chill = lecturas de temperatura en torno al traslado
needs_clock = hora del primer o último pollito
needs_clock_machine = horas de nacimiento de otras dos tandas de esta incubadora
needs_hatch_spread = horas del primer y último pollito
needs_water_loss = pesos al poner y después
needs_rh_set = lecturas de humedad
needs_rh_hatch = lecturas de humedad tras el traslado
needs_storage = días de conservación
needs_flock_age = edad del lote
needs_flock_clears = otras tandas de este lote y de otro para comparar
needs_tray = fila y columna de cada huevo
needs_probe_gap = dos sondas en la incubadora
needs_malpositions = recuento de malposiciones
needs_contaminated = recuento de huevos podridos
needs_cracked = recuento de huevos rajados
needs_altitude = altitud del lugar (altitude_m en los ajustes)
needs_posted = si los huevos llegaron por correo
needs_flock_own = lotes de esta tanda y de otras dos
needs_clears_opened = claros abiertos en la primera ovoscopia
needs_flock_deaths = otras tandas de este lote y de otro para comparar

# Signs of what happened, beside those that are seen (workbook.ftl).
sign_power_cut = corte de luz
sign_chilled = huevos enfriados
sign_overheated = hizo demasiado calor
sign_turner_stopped = falló el volteo
sign_turned_late = volteados hasta los últimos días
sign_vents_shut = ventilación cerrada o aire viciado
sign_ran_dry = se acabó el agua
sign_opened_often = abierta a menudo durante el nacimiento
sign_posted = huevos llegados por correo
sign_shaken_frosty = sacudidos, helados o guardados con calor antes de ponerlos
sign_dirty_washed = huevos sucios o lavados
sign_disinfected = desinfectado durante la incubación
sign_fumes = vapores o pintura en el cuarto
sign_transfer_jolted = golpe o frío en el traslado
sign_stored_small_end_up = punta hacia arriba
sign_fan_stopped = se paró el ventilador
sign_poor_feed = pienso pobre o viejo de los reproductores
sign_ill_flock = enfermedad en el lote
sign_cock_trouble = un gallo enfermo, viejo, ausente o con demasiadas gallinas
sign_eggs_old = huevos guardados mucho tiempo
sign_old_hens = huevos de gallinas viejas o pollitas
sign_ran_warm = algo de calor todo el tiempo
sign_ran_cool = algo de frío todo el tiempo
sign_damp_air = demasiada humedad en la incubadora
sign_dry_air = demasiado seco en la incubadora
sign_hatch_without_water = sin agua en el nacimiento
sign_uneven_machine = zonas calientes y frías en la incubadora
sign_lowland_eggs = huevos de tierras bajas puestos en altura
sign_hatcher_dirty = nacedora sin limpiar
sign_covered_machine = una incubadora tapada
sign_floor_eggs = huevos de suelo
