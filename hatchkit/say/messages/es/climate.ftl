# Lo que cuentan incubadora, termómetro, horas y balanza, a quien quiere mirar más.

lasting = { $unit ->
        [min] { EGGS($number) } min
        [h] { TENTH($number) } h
       *[days] { TENTH($number) } días
    }

## Lo que en una curva habla por su palabra

evidence_jumped = saltó { STEP($in_k) } y volvió { STEP($out_k) } entre dos lecturas, sin curva
evidence_probes = las sondas de la incubadora difieren { STEP($apart_k) } más que antes: una de ellas falla
evidence_loading = en las primeras horas tras la puesta; { STEP($depth_k) } por debajo de lo debido
evidence_unlogged = { DEGREES($extreme_c) } en lo más { $worst ->
        [coldest] frío
       *[warmest] caliente
    }, { $since ->
        [setting] fuera de su margen desde la puesta durante { $whole_h }
        [too_long] fuera de su margen desde la puesta durante { $whole_h }, más de lo que los huevos tardan en calentarse
       *[unknown] y lo de justo antes no está registrado
    }{ $stayed ->
        [yes] {" "}y siguió caliente { $whole_h }
       *[no] { "" }
    }
evidence_fell_slowly = bajó { STEP($depth_k) } despacio, en { $over_h }
evidence_fell_fast = bajó { STEP($depth_k) }, lo más en { $most_h }{ $then ->
        [ajar] {" "}y siguió bajo { $whole_h } (¿quedó entreabierta?)
        [back] , de vuelta en su margen tras { $whole_h }
       *[open] { "" }
    }{ $dry_pct ->
        [none] { "" }
       *[drier] ; la humedad bajó { EGGS($dry_pct) } %, como cuando entra aire de la sala
    }
evidence_cooled = bajó { STEP($fell_k) } en { $over_h }, como mucho { STEP($per_hour_k) } por hora, hasta { DEGREES($extreme_c) }: como se enfría una caja sin calor{ $damp_pct ->
        [none] { "" }
       *[damper] ; la humedad subió { EGGS($damp_pct) } %, como en una caja cerrada
    }
evidence_fell = bajó { STEP($depth_k) } en { $over_h }{ $coarse ->
        [yes] ; las lecturas están demasiado separadas para ver la curva
       *[no] { "" }
    }
evidence_rose = subió { STEP($depth_k) } en { $over_h } hasta { DEGREES($extreme_c) }{ $stayed ->
        [yes] {" "}y siguió caliente { $whole_h }
       *[no] { "" }
    }
evidence_beside = anduvo a unos { DEGREES($at_c) }, siempre { $off_k ->
        [0] justo
       *[far] { STEP($off_k) }
    } { $side ->
        [below] por debajo
       *[above] por encima
    } del margen para { $hatching ->
        [yes] nacer en{" "}
       *[no] { "" }
    }{ $air ->
        [still] aire quieto
       *[fan] aire movido por ventilador
    } ({ DEGREES($low_c) } a { DEGREES($high_c) }{ $air ->
        [still] {" "}a la altura de los huevos
       *[fan] { "" }
    }; se quieren unos { DEGREES($wanted_c) }{ $assumed ->
        [yes] ; season.toml no dice si lo tiene
       *[no] { "" }
    })

## Un episodio entero

spell_told = { $event }. Incubadora { $incubator }, desde el { MINUTE($start) }, { $lasting }: { $on ->
        [egg] el huevo estimado demasiado { $kind ->
            [warm] caliente en aire de como mucho
           *[cold] frío en aire de al menos
        } { DEGREES($extreme_c) }
       *[air] el aire { $level ->
            [watch] algo{" "}
            [alarm] claramente{" "}
            [serious] con mucho{" "}
           *[other] { "" }
        }demasiado { $kind ->
            [warm] caliente
           *[cold] frío
        }, en el peor momento { DEGREES($extreme_c) }
    }. { $looks_like ->
        [unclear] No queda claro por la curva
       *[known] Por la curva, { WORD($looks_like, kind: "spell") }
    }: { $evidence }. La tanda { $batch } tenía { TENTH($day_start) } días; sus huevos llegaron a unos { DEGREES($egg_extreme_c) } ({ DEGREES($egg_extreme_low_c) } a { DEGREES($egg_extreme_high_c) }, 8 de 10 veces).
spell_beside = { $event }. Incubadora { $incubator }, desde el { MINUTE($start) }, { $lasting }: { $evidence }. La tanda { $batch } tenía { TENTH($day_start) } días al empezar; sus huevos estaban a unos { DEGREES($egg_extreme_c) } ({ DEGREES($egg_extreme_low_c) } a { DEGREES($egg_extreme_high_c) }, 8 de 10 veces).
spell_hole = Durante { SHARE($gap_share) } de ese tiempo no se registró nada: no se sabe qué pasó entonces.
heat_little = Demasiado poco para el daño por calor visto en ensayos; días seguidos por encima del margen aún pueden retrasar o cansar a los embriones.
heat_told = Calor: { $heat_band ->
        [low] poco
        [watch] medio
       *[high] mucho
    }. Sus peores 24 h equivalen a { TENTH($heat_dose_h) } h del huevo a { DEGREES($dose_at_c) }, { WHOLE($share) } de la dosis que costó medio nacimiento más o menos a esta edad ({ EGGS($half_h) } h en aire de { DEGREES($half_c) } el día { EGGS($half_day) }; { $source }). Esto ordena los episodios por su calor; no predice cuántos mueren.
heat_common = El consejo corriente avisa de { DEGREES($warned_c) } durante 15 minutos; en un ensayo, 24 h a { DEGREES($warned_c) } el día 16 no hicieron gran daño (Thompson, Wilson & Brown 1976): tome ese consejo como cautela, no como veredicto.
cold_unknown = No se sabe qué costó: no se registró nada utilizable.
cold_cost = { $lost_hours ->
        [0] Casi no costó desarrollo.
       *[hours] Costó unas { TENTH($lost_hours) } h de desarrollo.
    }
cold_young = En los primeros días el embrión está justo bajo la cáscara y se enfría más deprisa que el huevo entero ({ STEP($bench_k) } en 10 minutos sobre una mesa, Am. J. Physiol. 234:R183, 1978): abra poco tiempo.
cold_below_10 = Los huevos estuvieron { $lasting } por debajo de { DEGREES($below_c) }; los embriones de 17 días sufren tras unas 4 h de eso.
cold_below_20 = Los huevos estuvieron { $lasting } por debajo de { DEGREES($below_c) }; embriones de 17 días soportaron 24 h a { DEGREES($well_c) } sin daño, a { DEGREES($ill_c) } no (Can. J. Anim. Sci. hacia 1970).

## Incubadoras y termómetros

machine_nothing = Incubadora { $incubator }: no se registró nada mientras había huevos.
machine_steady = Incubadora { $incubator }: se registró { WHOLE($share_logged) } del tiempo con huevos; en días corrientes { DEGREES($mean_c) } de media, 8 de 10 lecturas dentro de { STEP($swing_c) }{ $off_set_point_c ->
        [none] { "" }
       *[off] , { SIGNED($off_set_point_c) } de lo ajustado
    }{ $day_night_c ->
        [none] { "" }
       *[apart] ; días menos noches { SIGNED($day_night_c) }
    }. En su margen { SHARE($share_in_band) } del tiempo registrado, en alarma o más allá { SHARE($share_alarm) }; { $opened ->
        [never] el registro no muestra ninguna apertura
        [seldom] según el registro, abierta menos de una vez al mes
       *[often] según el registro, abierta unas { TENTH($a_week) } veces por semana
    }.
machine_coarse = Con { EGGS($step_minutes) } min entre lecturas puede escapar un pico corto, y hasta { WHOLE($unseen_share) } de él llegaría a un huevo de gallina.
probe_unknown = Incubadora { $incubator }, sonda { $probe }: nunca se comprobó, y nada más habla de su error.
probe_told = Incubadora { $incubator }, sonda { $probe }: { LIST($told) }.
probe_offset = una comprobación dio una desviación de { SIGNED($offset_c) }, que se aplica
probe_against = marca { SIGNED($differs_c) } frente a la sonda { $other_probe }
probe_by_clock = las horas de nacimiento de { $clock_batches ->
        [one] una tanda
       *[other] { $clock_batches } tandas
    } cuadrarían con una sonda que { $true ->
        [yes] marca bien
       *[no] se desvía { SIGNED($clock_bias_c) }
    }{ $clock_low_c ->
        [none] { "" }
       *[range] {" "}({ SIGNED($clock_low_c) } a { SIGNED($clock_high_c) })
    }
probe_do_disagree = Compruebe ambas junto a un termómetro clínico cerca de { DEGREES($right_c) }.
probe_do_high = Compruébela: si marca de más, los huevos estaban más fríos de lo que dice el registro.
probe_do_low = Compruébela: si marca de menos, los huevos estaban más calientes de lo que dice el registro.

## Las horas

clock_names = { $verdict ->
        [on_time] Nacidas dentro de lo que tal previsión puede decir
        [not_seen] Sin horas de nacimiento
       *[cannot_tell] No se pueden juzgar, por falta de registro
    } ({ COUNT($batches) } de { $of }): { LIST($batches) }.
clock_no_batch = Ninguna tanda tiene un nacimiento cuya hora se pueda juzgar.
clock_not_expected = Tanda { $batch }: sin nacimiento previsto, porque no se conoce la especie o la hora de la puesta.
clock_told = Tanda { $batch }: la mitad del nacimiento se esperaba hacia el { $by_day ->
        [yes] { DATE($expected_at) }
       *[no] { MINUTE($expected_at) }
    } (± { $half_h }; por lo común el día { TENTH($usual_day) }, { $storage_h ->
        [none] almacenaje desconocido
       *[known] almacenaje { HOURS($storage_h) }
    }, { $temperature_h ->
        [none] temperatura desconocida
       *[known] temperatura { HOURS($temperature_h) }
    }){ $came ->
        [not_seen] ; no hay horas de nacimiento anotadas.
        [then] {" "}y vino entonces
        [earlier] {" "}y vino { EGGS($hours) } h antes
       *[later] {" "}y vino { EGGS($hours) } h después
    }{ $verdict ->
        [not_seen] { "" }
        [cannot_tell] , pero solo se registró { WHOLE($share_logged) } del tiempo: no se puede decir si pronto o tarde.
        [on_time] : dentro de lo que tal previsión puede decir.
       *[off] , más allá de la duda de la previsión. Una sonda que marca { STEP($probe_error_c) } de { $reads ->
            [high] más
           *[low] menos
        } lo explicaría por sí sola; también una hora de puesta falsa, o el lote.
    }
clock_earlier = La mitad de un nacimiento se pone { EGGS($before_h) } h antes del día habitual de las gallinas, en proporción para otras: ese día ya está fuera la mayor parte de un buen nacimiento. El plan nombra ese mismo día, para el que hay que estar listo.

## Agua

water_told = Tanda { $batch }: { SHARE($loss_share) } del peso perdido hasta el día { EGGS($loss_day) }, { SHARE($projected_share) } que esperar en el traslado ({ SHARE($projected_low) } a { SHARE($projected_high) }; lo debido { WHOLE($target_low) } a { WHOLE($target_high) } hasta el día { EGGS($transfer_day) }): { $verdict ->
        [on_target] en lo debido
        [too_little] demasiado poco
        [too_much] demasiado
       *[cannot_tell] no se puede decir
    }.
water_from_shells = Tanda { $batch }: sin pesar. Solo por las cáscaras de su especie y la humedad, unos { WHOLE($projected_share) } ({ WHOLE($projected_low) } a { WHOLE($projected_high) }; lo debido { WHOLE($target_low) } a { WHOLE($target_high) } hasta el día { EGGS($transfer_day) }): pese algunos huevos para saberlo.
water_next = Para dar en la mitad de lo debido con tales huevos, desde el principio: { WORD($next, kind: "humidity") }{ $next ->
        [possible] {" "}{ EGGS($rh_next_pct) } % de humedad
       *[other] { "" }
    }{ $now ->
        [none] { "" }
       *[told] ; desde ahora: { WORD($now, kind: "humidity") }{ $now ->
            [possible] {" "}{ EGGS($rh_now_pct) } % de humedad
           *[other] { "" }
        }
    } (registrada: { EGGS($rh_pct) } %).
humidity_possible = unos
humidity_too_dry = aire más seco del que una incubadora puede dar
humidity_too_damp = aire más húmedo de lo prudente
water_roughly = Sin pesar, así que solo a grandes rasgos, por cáscaras de su especie: { LIST($batches) }.
water_not_known = Sin pesar, así que no se sabe: { LIST($batches) }.
water_weigh = Pese una bandeja al poner los huevos y en cada ovoscopia: lleva minutos y dice qué humedad necesitan sus huevos.
water_why_no_species = Tanda { $batch }: no se conoce la especie o la hora de la puesta.
water_why_no_humidity = Tanda { $batch }: sin pesadas y sin humedad registrada.
water_why_namesakes = Tanda { $batch }: no se dice qué huevo se pesó.
water_why_no_living = Tanda { $batch }: ningún huevo pesado estaba vivo y entero.
water_why_one_egg = Un solo huevo, y los huevos de un lote difieren más de lo que mide lo debido.
water_why_reaches_in = Fuera de lo debido, pero el intervalo entra en ello.
water_why_too_wide = Dentro de lo debido, pero el intervalo mide más del doble.
water_why_taken_off = Se quitaron huevos entre pesadas: el intervalo lo tiene en cuenta.
water_why_heavy = { EGGS($set_g) } g por huevo es mucho más de lo habitual en su especie: ¿quedó la bandeja en la balanza? Una bandeja pesada con ellos hace parecer la pérdida demasiado pequeña.

## Cómo se llama un episodio

stage_opening = una tapa o puerta abierta
stage_drift = una deriva lenta
stage_outage = calefacción cortada (luz o resistencia)
stage_overheating = sobrecalentamiento
stage_sensor = una lectura falsa más que el aire real
stage_loading = los huevos al ponerlos
stage_steady = una incubadora fuera de su margen durante días
stage_unclear = no queda claro por la curva
