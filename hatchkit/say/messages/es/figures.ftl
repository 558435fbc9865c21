# Palabras en los dibujos (drawn_*) y lo que cuenta cada uno, para quien no puede verlo (picture_*).

# Cómo van las pérdidas con la dosis de un episodio

drawn_dose_title = Embriones perdidos (% de los vivos al empezar)
drawn_dose_axis = Dosis de calor o frío en el huevo
    (1 más: más o menos el doble de grados-hora)
drawn_dose_range = habitual
    sin
    episodio
drawn_no_spell = { $batches ->
        [one] sin episodio (1 tanda)
       *[other] sin episodio ({ $batches } tandas)
    }

picture_losses_against_dose = { $hit ->
        [0] Ninguna tanda tuvo en el huevo un episodio de calor o frío que cuente, así que no hay nada que comparar.
       *[other] { $above ->
            [0] De { $hit ->
                [one] la única tanda
               *[other] las { $hit } tandas
            } con un episodio de calor o frío en el huevo, ninguna perdió más embriones de los que pierden las tandas sin él.
           *[other] { $above } de { $hit } { $hit ->
                [one] tanda
               *[other] tandas
            } con un episodio de calor o frío en el huevo perdieron más embriones de los que pierden las tandas sin él: la que más, { $worst }, { SHARE($worst_share) } (sin episodio, a lo sumo { SHARE($worst_high) }).
        } De { $free ->
            [one] 1 tanda
           *[other] { $free } tandas
        } sin tal episodio, { $free_above ->
            [0] ninguna perdió
            [one] 1 perdió
           *[other] { $free_above } perdieron
        } más que eso.
    }

# Cuándo murieron los embriones

drawn_age_axis = Edad (días desde la puesta a incubar)
drawn_age_lost_axis = Embriones perdidos (% de { $eggs } vivos)
drawn_share = { SHARE($share) }
drawn_band = banda del 95 %
drawn_no_known_end = Aún ningún huevo de fin conocido

picture_death_age = { $deaths ->
        [0] Ninguno de { $eggs } embriones vivos ({ WORD($species, "species") }) murió.
       *[other] El { SHARE($lost) } de { $eggs } embriones vivos ({ WORD($species, "species") }) murió (banda del 95 %, { SHARE($low) } a { SHARE($high) }); el escalón más grande, { SHARE($most_share) }, está entre el día { NUMBER($most_from, maximumFractionDigits: 0) } y el día { NUMBER($most_to, maximumFractionDigits: 0) }. En qué día de un escalón, no se sabe.
    }

drawn_embryos_lost_axis = Embriones perdidos (%)
drawn_lost_end = { $who }: { SHARE($share) }

picture_age_against_season = La tanda { $batch } perdió el { SHARE($lost) } de sus embriones, su especie en la temporada el { SHARE($kin) } (banda del 95 %, { SHARE($low) } a { SHARE($high) }): { $beyond ->
        [above] más que su banda
        [below] menos que su banda
       *[within] dentro de su banda
    }. { $step ->
        [0] Ningún escalón destaca.
       *[other] El escalón más grande, { SHARE($step) }, está entre el día { NUMBER($day_from, maximumFractionDigits: 0) } y el día { NUMBER($day_to, maximumFractionDigits: 0) }.
    }

# Causas

drawn_weight = { SHARE($share) }{ $tie ->
        [yes] { " " }(empate)
       *[no] { "" }
    }

picture_ranked_causes = Tanda { $batch }: { WORD($first, kind: "cause") } tiene el { SHARE($share) } del peso entre todas las causas posibles, { WORD($second, kind: "cause") } el { SHARE($second_share) }{ $ties ->
        [0] .
       *[other] { ". " }Con la primera empatan { $ties } más: los registros no pueden separarlas.
    }

drawn_what_if_stage = Perdidos en la etapa (rombo: habitual)
drawn_what_if_cause = Atribuidos a
drawn_what_if_excursions = Sin golpes de calor ni de frío
drawn_what_if_chicks = pollitos más, si las muertes de más vinieran de ellos
drawn_what_if_number = { $eggs }{ $ranged ->
        [yes] { " " }({ $low } a { $high })
       *[no] { "" }
    }{ $known ->
        [yes] { " " }(habitual { $usual })
       *[no] { "" }
    }

picture_what_if = Los más de los huevos de la temporada se perdieron como { WORD($stage, "drawn_stage") }: { $eggs }{ $usual ->
        [none] { "" }
       *[other] { " " }(habitual para tantos huevos: { $usual })
    }. { $cause ->
        [none] Ninguno se atribuye a una causa con nombre.
       *[other] De las causas con nombre, lo que más, unos { $cause_eggs }, se atribuye a: { WORD($cause, kind: "cause") }.
    } { $spells ->
        [yes] Sin golpes de calor ni de frío, unos { $chicks } pollitos más ({ $low } a { $high }), si las muertes de más vinieran de ellos.
       *[no] No se puede decir si los golpes de calor y frío costaron pollitos.
    }

drawn_stage_hatched = pollitos sanos
drawn_stage_culled = pollitos descartados
drawn_stage_clear = claros o infértiles
drawn_stage_infertile = infértiles
drawn_stage_early = muertos tempranos
drawn_stage_mid = muertos a media incubación
drawn_stage_late = muertos tardíos
drawn_stage_pipped_dead = picados y muertos
drawn_stage_removed = retirados
drawn_stage_unaccounted = fin desconocido

drawn_ladder_for = habla a favor
drawn_ladder_against = habla en contra
drawn_ladder_said = { $name }{ $said ->
        [none] { "" }
       *[other] , usted lo anotó
    }
drawn_ladder_item = { $name }: { $value } (habitual { $usual })
drawn_ladder_pattern = cuándo y en qué etapa se perdieron los huevos
drawn_ladder_before = lo común que es, junto a la mala suerte
drawn_strength = { $strength ->
        [for_very_strong] con mucha fuerza
        [for_strong] con fuerza
        [for_some] algo
        [for_hardly] apenas
        [against_very_strong] con mucha fuerza
        [against_strong] con fuerza
        [against_some] algo
        [against_hardly] apenas
        [unknown] no se sabe
       *[none] ni a favor ni en contra
    }

picture_ladder = Indicios en la tanda { $batch } de: { WORD($cause, kind: "cause") } (peso { SHARE($share) }). { $for_kind ->
        [nothing] Nada habla a favor
        [pattern] Lo más fuerte a favor: cuándo y en qué etapa se perdieron los huevos
        [before] Lo más fuerte a favor: lo común que es
        [item] Lo más fuerte a favor: { WORD($for_part, kind: "item") }
       *[sign] Lo más fuerte a favor: { WORD($for_part, kind: "sign") }
    }; { $against_kind ->
        [nothing] nada habla en contra
        [pattern] lo más fuerte en contra: cuándo y en qué etapa se perdieron los huevos
        [before] lo más fuerte en contra: que es menos común que la mala suerte
        [item] lo más fuerte en contra: { WORD($against_part, kind: "item") }
       *[sign] lo más fuerte en contra: { WORD($against_part, kind: "sign") }
    }. { $unknown ->
        [0] Nada de lo que cuenta para ello es desconocido.
        [one] Una cosa que cuenta para ello no se sabe.
       *[other] { $unknown } cosas que cuentan para ello no se saben.
    }

# Qué fue distinto

drawn_nothing_different = Nada de lo anotado fue distinto de las buenas tandas.
drawn_away_less = menos
drawn_away_usual = lo habitual
drawn_away_more = más
drawn_difference_words = { $name }: { $value } (buenas tandas: { $usual })

picture_differences = { $count ->
        [0] Nada de lo anotado de la tanda { $batch } fue distinto de las buenas tandas.
        [one] Una cosa fue distinta en la tanda { $batch }: { WORD($name, kind: "item") }, { $value } (habitual { $usual }).
       *[other] { $count } cosas fueron distintas en la tanda { $batch }, sobre todo: { WORD($name, kind: "item") }, { $value } (habitual { $usual }).
    }

picture_drawings = Dibujos sencillos de huevos abiertos, el polo grueso con la cámara de aire arriba, en este orden: { WORDS($looks, kind: "breakout_look") }.
drawn_swollen_neck =
    nuca
    hinchada
drawn_small_cell =
    cámara de
    aire pequeña
drawn_large_cell =
    cámara de
    aire grande
drawn_dry_skin = piel tirante y seca
drawn_seen_from =
    de espaldas, punta abajo:
    D ala derecha, I izquierda
drawn_wing_R = D
drawn_wing_L = I
drawn_beak = pico
drawn_no_vessels = sin vasos
drawn_look_of_days = { WORD($look, kind: "breakout_look") } (día { breakout_days })

# Pérdidas

drawn_no_batch = Ninguna tanda que mostrar
drawn_eggs_set = huevos puestos
drawn_eggs_excess = contados de más
drawn_good_chicks = pollitos sanos
drawn_share_of_set_axis = Parte de los huevos puestos (%)
drawn_chart_limit = límite habitual
drawn_chart_mean = media
drawn_chart_axis = Tandas por orden de puesta a incubar
drawn_chart_title = { WORD($stage, "drawn_stage") } (% de los { $of ->
        [fertile] huevos ni claros ni infértiles
       *[set] huevos puestos
    })
drawn_tray = { $name ->
        [none] bandeja
       *[other] bandeja { $name }
    }
drawn_no_places = Ningún huevo tiene lugar conocido en una bandeja.
drawn_tray_machine = { $machine ->
        [none] { drawn_tray_plain }
       *[other] { $machine }: { drawn_tray_plain }
    }
drawn_tray_plain = { $tray ->
        [none] bandeja
       *[other] bandeja { $tray }
    }
drawn_tray_season_title = Embriones muertos en cada lugar (número; disco: parte)

picture_egg_ledger = De { NUMBER($eggs_set, maximumFractionDigits: 0) } huevos puestos, { NUMBER($chicks, maximumFractionDigits: 0) } dieron pollitos sanos{ $stage ->
        [none] . No se perdió nada.
       *[other] ; la mayor pérdida son { NUMBER($eggs, maximumFractionDigits: 0) } ({ WORD($stage, "drawn_stage") }), luego { $second ->
            [none] nada más
           *[other] { NUMBER($second_eggs, maximumFractionDigits: 0) } ({ WORD($second, "drawn_stage") })
        }.
    }

picture_losses_by_group = { $count ->
        [0] Ningún grupo tiene una parte que mostrar.
        [one] { $best }: el { SHARE($best_share) } de los huevos puestos dio pollitos sanos.
       *[other] Pollitos sanos de los huevos puestos: de { SHARE($worst_share) } ({ $worst }) a { SHARE($best_share) } ({ $best }). { $worst } perdió más como { WORD($stage, "drawn_stage") }, el { SHARE($stage_share) } de sus huevos.
    }

picture_season_chart = { $outside ->
        [0] De { $batches } tandas por orden de puesta a incubar, ninguna queda fuera de los límites habituales ({ WORD($stage, "drawn_stage") }); la media de la temporada es { SHARE($mean) }.
       *[other] De { $batches } tandas por orden de puesta a incubar, { LIST($names) } { $outside ->
            [one] queda
           *[other] quedan
        } fuera de los límites habituales ({ WORD($stage, "drawn_stage") }); la media de la temporada es { SHARE($mean) }.
    }

picture_tray_map = Bandeja de la tanda { $batch }: de { $eggs } huevos de lugar conocido nacieron { $hatched } y murieron { $died } embriones, { $edge } de ellos en el borde de la bandeja. { $together ->
        [yes] Los muertos estaban más juntos de lo que el azar los pondría.
        [no] Los muertos estaban como el azar los pondría.
       *[other] Murieron muy pocos para preguntar si estaban juntos.
    }

picture_tray_season = En { $batches ->
        [one] 1 tanda
       *[other] { $batches } tandas
    } con lugares conocidos murieron { $died } de { $eggs } embriones. { $together ->
        [yes] { $question ->
            [edge] Las muertes se repartían entre borde y centro con más desigualdad de la que daría el azar: { SHARE($seen) } en el borde, donde el azar daría { SHARE($expected) }.
           *[neighbours] Los muertos estaban uno junto a otro más de lo que el azar los pondría: { NUMBER($seen, maximumFractionDigits: 0) } pares vecinos, donde el azar daría { NUMBER($expected, maximumFractionDigits: 0) }.
        }
        [no] El lugar en la bandeja no hizo diferencia que se distinga del azar.
       *[other] Murieron muy pocos para preguntar si el lugar importó.
    }

# Pérdidas junto al calor y al frío

drawn_window = { $name } ({ $batches ->
        [one] 1 tanda expuesta
       *[other] { $batches } tandas expuestas
    }, { $deaths } muertos)
drawn_nothing_to_compare = nada que comparar
drawn_same = igual
drawn_hazard_axis = Tasa de muerte de los expuestos, en múltiplos de los otros

picture_hazard_by_window = { $name ->
        [none] Ningún tramo se puede comparar: en el mismo tramo hacen falta embriones con calor o frío y otros sin ellos.
       *[other] Tasa de muerte de los embriones con calor o frío junto a la de los otros: la más alta { $sure ->
            [yes] y más que el azar
           *[no] , sin que se excluya el azar,
        } en el tramo hasta { WORD($name, "drawn_look") }, { NUMBER($ratio, maximumFractionDigits: 1) } veces (intervalo del 95 %, { NUMBER($low, maximumFractionDigits: 1) } a { NUMBER($high, maximumFractionDigits: 1) }); { $clear ->
            [0] ningún tramo queda claramente por encima de los otros
            [one] 1 de { $count } tramos queda claramente por encima de los otros
           *[other] { $clear } de { $count } tramos quedan claramente por encima de los otros
        }.
    }


drawn_look_candle1 = la primera ovoscopia
drawn_look_candle2 = la segunda ovoscopia
drawn_look_transfer = el traslado
drawn_look_hatch = el nacimiento

# Clima

drawn_timeline_title = Incubadora { $machine }, °{ $unit }
drawn_no_readings = sin lecturas
drawn_spell = { NUMBER($degrees, maximumFractionDigits: 0) }°, { NUMBER($hours, maximumFractionDigits: 0) } h
drawn_line_air = aire
drawn_line_egg = huevo (est.)
drawn_line_range = lo debido
drawn_line_everyday = tapa abierta
drawn_close_up_title = Tanda { $batch }, día { NUMBER($day, maximumFractionDigits: 1) }: { $kind ->
        [warm] demasiado calor
       *[cold] demasiado frío
    }
drawn_hours = { NUMBER($hours, maximumFractionDigits: 1) } h
drawn_worst_air = aire { NUMBER($degrees, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }
drawn_worst_egg = huevo { NUMBER($degrees, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }

drawn_water_title = Tanda { $batch }: peso perdido (% del peso inicial)
drawn_water_target = lo debido
    { SHARE($low) } a
    { SHARE($high) }
drawn_water_expected = { $weighed ->
        [yes] esperado
       *[no] supuesto
    }
    { SHARE($share) }
drawn_left_out = x  pesado, dejado fuera
drawn_no_weights = No se sabe nada del peso que perdieron los huevos.
drawn_water_axis = Peso perdido en el traslado (% del peso inicial)
drawn_water_key_target = lo debido
drawn_water_key_weighed = pesado
drawn_water_key_off = pesado, fuera de lo debido
drawn_water_key_unweighed = sin pesar: supuesto

drawn_clock_expected = esperado
drawn_clock_seen = del primer al último pollito
drawn_clock_inside = centro, como se esperaba
drawn_clock_outside = centro, no como se esperaba
drawn_clock_axis = Horas respecto a lo habitual de la especie (más tarde: derecha)

drawn_no_probe = No se registró ninguna temperatura.
drawn_probe = Incubadora { $machine }, sonda { $probe }
drawn_witness_checked = { $known ->
        [yes] por comprobación (hielo o buen termómetro)
       *[no] comprobación (hielo o buen termómetro): sin hacer
    }
drawn_witness_pair = { $known ->
        [yes] junto a la otra sonda ({ $other })
       *[no] junto a la otra sonda ({ $other }): sin lecturas comunes
    }
drawn_witness_hatch = { $known ->
        [yes] por cuándo nacieron los huevos ({ $batches ->
            [one] 1 tanda
           *[other] { $batches } tandas
        })
       *[no] por cuándo nacieron los huevos: no se sabe
    }
drawn_probe_axis = Marca de menos (izquierda) o de más (derecha), °{ $unit }
drawn_kelvin = { NUMBER($value, minimumFractionDigits: 1, maximumFractionDigits: 1) }°

picture_incubator_timeline = Aire y temperatura estimada de los huevos de la incubadora { $machine } con { $batches ->
        [one] 1 tanda
       *[other] { $batches } tandas
    }{ $middle ->
        [none] { "" }
       *[other] : casi siempre { NUMBER($middle, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }
    }. { $spells ->
        [0] Ningún golpe de calor o frío notable
        [one] Un episodio notable
       *[other] { $spells } episodios notables
    }{ $kind ->
        [none] { "" }
       *[other] , el peor desde el { DAY($when) }: { $kind ->
            [warm] demasiado calor
           *[cold] demasiado frío
        } durante { NUMBER($hours, maximumFractionDigits: 0) } h, el aire a { NUMBER($degrees, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }
    }; { $everyday ->
        [0] nada cotidiano
        [one] 1 apertura o puesta cotidiana
       *[other] { $everyday } aperturas o puestas cotidianas
    }; { $gaps ->
        [0] ningún hueco en el registro.
        [one] 1 hueco en el registro.
       *[other] { $gaps } huecos en el registro.
    }

picture_excursion_close_up = Tanda { $batch } desde el día { NUMBER($day, maximumFractionDigits: 1) } ({ MINUTE($when) }): { $kind ->
        [warm] demasiado calor
       *[cold] demasiado frío
    } durante { NUMBER($hours, maximumFractionDigits: 1) } h. El aire llegó a { NUMBER($air, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }; el huevo estimado va detrás y llegó a { NUMBER($egg, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit } ({ NUMBER($egg_low, minimumFractionDigits: 1, maximumFractionDigits: 1) } a { NUMBER($egg_high, minimumFractionDigits: 1, maximumFractionDigits: 1) }).

picture_weight_loss_track = { $weighed ->
        [yes] Tanda { $batch }, pesada: { $projected_share ->
            [none] no se puede decir qué habrán perdido los huevos en el traslado
           *[other] en el traslado los huevos habrán perdido el { SHARE($projected_share) } de su peso ({ SHARE($projected_low) } a { SHARE($projected_high) })
        }
       *[no] La tanda { $batch } no se pesó; { $projected_share ->
            [none] no se sabe nada de lo que perdió
           *[other] por tamaño de huevo y humedad habrá perdido en el traslado más o menos el { SHARE($projected_share) } de su peso ({ SHARE($projected_low) } a { SHARE($projected_high) })
        }
    }; lo debido es de { SHARE($target_low) } a { SHARE($target_high) }{ $verdict ->
        [too_little] : se perdió poco.
        [too_much] : se perdió demasiado.
        [on_target] : en lo debido.
       *[other] : si se cumple, no se puede decir.
    }

picture_water_against_target = { $weighed ->
        [0] No se pesó ninguna de { $batches } tandas, así que solo hay suposiciones junto a lo debido.
       *[other] De { $weighed ->
            [one] 1 tanda pesada
           *[other] { $weighed } tandas pesadas
        }, { $right ->
            [0] ninguna está
            [one] 1 está
           *[other] { $right } están
        } en lo debido, { $little ->
            [0] ninguna
           *[other] { $little } ({ LIST($little_names) })
        } perdió poca agua, { $much ->
            [0] ninguna
           *[other] { $much } ({ LIST($much_names) })
        } demasiada.
    }

picture_hatch_clock = { $seen ->
        [0] De ninguna tanda se anotaron las horas de nacimiento.
       *[other] De { $seen } tandas cuyo nacimiento se vio, { $early ->
            [0] ninguna vino
           *[other] { $early } vinieron
        } antes de lo que almacenamiento y temperatura hacen esperar{ $early ->
            [0] { "" }
           *[other] { " " }({ LIST($early_names) })
        }, { $late ->
            [0] ninguna
           *[other] { $late }
        } después{ $late ->
            [0] { "" }
           *[other] { " " }({ LIST($late_names) })
        }; la más apartada fue { $furthest }, { NUMBER($hours, maximumFractionDigits: 0) } h { $side ->
            [later] después
           *[other] antes
        }.
    }

picture_probe_truth = { $checked ->
        [0] { $probes ->
            [one] La única sonda no se comprobó nunca.
           *[other] Ninguna de { $probes } sondas se comprobó nunca.
        }
       *[other] Se comprobaron { $checked } de { $probes } sondas.
    } { $told ->
        [0] Las horas de nacimiento no señalan error de ninguna.
       *[other] Por las horas de nacimiento, la de la incubadora { $machine } marca { NUMBER($error, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit } de { $side ->
            [high] más
           *[low] menos
        }.
    } { $disagree ->
        [0] { "" }
       *[other] Las sondas se contradicen en la incubadora { LIST($disagree_names) }.
    }

# La temporada de un vistazo, y la próxima tanda

drawn_machine = { $name ->
        [none] incubadora desconocida
       *[other] Incubadora { $name }
    }
drawn_degrees = { NUMBER($degrees, maximumFractionDigits: 0) }°
drawn_glance_bars = Barra: una tanda, llena según lo que nació. ○ ovoscopia
drawn_glance_marks = ▲ demasiado calor  ▼ demasiado frío: más grande, peor
drawn_eggs_axis = Huevos puestos
drawn_eggs_title = Probabilidad de al menos { $chicks } pollitos sanos (%)

picture_season_at_a_glance = { $batches ->
        [0] Ninguna tanda que mostrar.
       *[other] { $batches ->
            [one] 1 tanda
           *[other] { $batches } tandas
        } en { $machines ->
            [one] 1 incubadora
           *[other] { $machines } incubadoras
        } del { DAY($first) } al { DAY($last) }. { $ended ->
            [0] Ninguna ha acabado aún.
           *[other] Pollitos sanos de los huevos puestos: de { SHARE($worst_share) } ({ $worst }) a { SHARE($best_share) } ({ $best }).
        } { $spells ->
            [0] Ningún golpe de calor o frío notable.
           *[other] { $spells ->
                [one] Un episodio notable
               *[other] { $spells } episodios notables
            } de calor o frío, el mayor en la incubadora { $machine } desde el { DAY($when) }: demasiado { $kind ->
                [warm] calor
               *[cold] frío
            } durante { NUMBER($hours, maximumFractionDigits: 0) } h.
        }
    }

picture_eggs_to_set = { $half ->
        [none] Ninguna tanda sola da { $chicks } pollitos sanos con probabilidad de una entre dos.
       *[other] Para al menos { $chicks } pollitos sanos, una probabilidad de una entre dos pide { $half } huevos, { $eggs ->
            [none] y ninguna tanda sola da { SHARE($sure) } de seguridad
           *[other] una seguridad del { SHARE($sure) } pide { $eggs }
        }, { $most ->
            [none] ninguna tanda sola da 95 % de seguridad
           *[other] una seguridad del 95 % pide { $most }
        }.
    }

drawn_temperature = Temperatura (°{ $unit })
drawn_ledger_lost = { $whole ->
        [yes] { $eggs }
       *[no] unos { $eggs }
    }
drawn_no_clock = Ninguna tanda tiene hora esperada de nacimiento.
account_usual = lo que las tandas suelen perder
account_not_explained = sin explicar
account_unaccounted = huevos de final desconocido
