# La página de una tanda: por qué nació mal, qué tan seguro es, qué cambiar.

page_batch_title = { $name }, tanda { $batch }: { $poor ->
        [no] ¿cómo nació?
        [unknown] ¿cómo nació?
       *[yes] ¿por qué nació mal?
    }
page_batch_file = { $name }-tanda-{ $batch }
page_batch_counts = { EGGS($set) ->
        [one] Un huevo
       *[other] { EGGS($set) } huevos
    } ({ $kind }){ $set_at ->
        [none] { "" }
       *[day] , puestos el { DAY($set_at) }
    }: { $hatched ->
        [none] no está anotado qué nació.
       *[known] { EGGS($hatched) ->
            [one] 1 pollito sano
           *[other] { EGGS($hatched) } pollitos sanos
        }, { SHARE($share_of_set) } de los huevos puestos (lo habitual es { SHARE($usual_of_set) }){ $share_hatched ->
            [none] { $share_low ->
                [none] .
               *[range] , { SHARE($share_low) } a { SHARE($share_high) } de los que se desarrollaron, pues de { EGGS($unaccounted) ->
                    [one] 1 huevo
                   *[other] { EGGS($unaccounted) } huevos
                } no se sabe el fin.
            }
           *[share] , { SHARE($share_hatched) } de los { EGGS($developing) } que se desarrollaron (lo habitual es { SHARE($usual) }).
        }
    }

ask_why = { $poor ->
        [no] ¿Qué costó huevos de todos modos?
       *[yes] ¿Por qué?
    }
why_confident = Muy probablemente: { WORD($key, kind: "cause") }. { $reason }.
why_probable = Probablemente: { WORD($key, kind: "cause") }. { $reason }.
why_two_causes = Probablemente dos cosas: { WORD($first, kind: "cause") } (unos { EGGS($eggs_first) } huevos) y { WORD($second, kind: "cause") } (unos { EGGS($eggs_second) }). { $reason }.
why_bad_luck = La simple mala suerte basta para explicarlo; ninguna causa destaca.
why_cannot_tell = Los registros no permiten decirlo: { $reason }. { COUNT($tied) ->
        [0] { "" }
        [one] { "" }
       *[other] Casi empatadas: { LIST($tied) }.
    }
why_not_poor = No fue un mal nacimiento: nacieron { EGGS($hatched) } de { EGGS($set) }, dentro de lo habitual.
why_not_over = No se sabe cómo acabó la tanda { $batch }, así que no se puede sopesar ninguna causa.
reason_stage = { $about ->
        [yes] unos { EGGS($eggs) }
       *[no] { EGGS($eggs) }
    } { WORD($stage, kind: "loss") }, cuando lo habitual { EGGS($usual) ->
        [one] es 1
       *[other] son { EGGS($usual) }
    }
reason_unaccounted = { EGGS($eggs) ->
        [one] de 1 huevo
       *[other] de { EGGS($eggs) } huevos
    } no se sabe el fin
reason_none = ninguna etapa perdió más de lo habitual
reason_spell = { $spell }; { $about ->
        [yes] unos { EGGS($eggs) }
       *[no] { EGGS($eggs) }
    } { WORD($stage, kind: "loss") } (habitual { EGGS($usual) })
reason_of_spell = { $kind ->
        [warm] { EGGS($hours) } h de aire hasta { DEGREES($extreme_c) } desde el día { EGGS($day_start) }
       *[cold] { EGGS($hours) } h de aire hasta { DEGREES($extreme_c) } desde el día { EGGS($day_start) }
    }
eggs_of_cause_weight = { WORD($cause, kind: "cause") } ({ SHARE($share) })
why_sure_confident = { SHARE($share) } del peso entre todas las causas; después { $next }. Es probable, no está probado{ $unaccounted ->
        [0] .
       *[other] ; huevos de fin desconocido: { EGGS($unaccounted) }.
    }
why_sure_probable = { SHARE($share) } del peso entre todas las causas; después { $next }. Probable, no seguro{ $unaccounted ->
        [0] .
       *[other] ; huevos de fin desconocido: { EGGS($unaccounted) }.
    }
why_sure_two_causes = Las dos juntas encajan mejor que una sola; probable, no probado.
why_sure_bad_luck = { SHARE($share) } del peso; un daño pequeño podría esconderse en tan pocos huevos.
why_sure_cannot_tell = No es seguro: la más probable ({ WORD($key, kind: "cause") }) tiene { SHARE($share) } del peso{ $unaccounted ->
        [0] .
       *[other] , y de { EGGS($unaccounted) } huevos no se sabe el fin.
    }
why_sure_not_poor = Tan pocas pérdidas por encima de lo habitual no señalan ninguna causa; la más probable sería: { WORD($key, kind: "cause") } ({ SHARE($share) } del peso).
why_sure_not_over = Anote cómo acabó, y vuelva a ejecutar esto.

ask_standing = { $poor ->
        [no] ¿Fue mala?
        [unknown] ¿Fue mala?
       *[yes] ¿Qué tan mala fue?
    }
standing_embryos = Nacieron { EGGS($hatched) } de { EGGS($set) } huevos, { $far ->
        [far] muy por debajo
       *[below] por debajo
    } del { SHARE($usual_of_set) } habitual, porque murieron más embriones de lo habitual; puesto { $place } desde la peor, de { $of ->
        [one] una tanda
       *[other] { $of } tandas
    }.
standing_clears = Nacieron { EGGS($hatched) } de { EGGS($set) } huevos, { $far ->
        [far] muy por debajo
       *[below] por debajo
    } del { SHARE($usual_of_set) } habitual, porque { EGGS($clear) } eran claros; los que se desarrollaron fueron como siempre. Puesto { $place } de { $of } desde la peor.
standing_removed = Nacieron { EGGS($hatched) } de { EGGS($set) } huevos, { $far ->
        [far] muy por debajo
       *[below] por debajo
    } del { SHARE($usual_of_set) } habitual, porque se retiraron { EGGS($removed) }; los que se desarrollaron fueron como siempre. Puesto { $place } de { $of } desde la peor.
standing_unknown = Nacieron { EGGS($hatched) } de { EGGS($set) } huevos; de { EGGS($unaccounted) } no se sabe el fin, así que no se puede decir si fue mala.
standing_no = Nacieron { EGGS($hatched) } de { EGGS($set) } huevos; lo habitual es { SHARE($usual_of_set) }, así que no fue un mal nacimiento.
standing_clears_not_counted = Sus claros nunca se contaron; un huevo sin abrir anotado como muerto pudo ser claro.
table_standing = Todas las tandas, la peor primero
head_share_hatched = De los desarrollados
head_usual_of_set_share = Habitual de los puestos
head_usual_share = Habitual de los desarrollados

ask_fate = ¿Qué fue de los huevos?
fate_eggs = De { EGGS($set) } huevos, { EGGS($hatched) } dieron pollitos sanos{ COUNT($lost) ->
        [0] .
       *[other] ; { LIST($lost, most: 5) }.
    }
table_pattern = Huevos por etapa, y lo habitual en una tanda de este tamaño
head_usual_eggs = Habitual

ask_evidence = ¿Qué habla a su favor, y qué fue distinto?
evidence_weights = Más peso: { LIST($causes) }.
evidence_method = Cada causa se sopesa según lo bien que explica los días y etapas de las pérdidas, junto a sus otras tandas y un balance publicado, y según lo que dicen el registro, las tablas y sus notas. La mala suerte, y una causa fuera de la lista, también compiten; los empates siguen siendo empates.
table_evidence = Las causas más probables, y lo que habla a favor y en contra
head_cause = Causa
head_share_weight = Peso
head_fits = Encaja porque
head_against = En contra
head_unknown = No se sabe
head_check_next = Comprobar después

ask_met = ¿Qué soportaron los huevos?
met_not_logged = No se registró ninguna temperatura para esta tanda, así que no se sabe nada de calor ni frío.
met_spells = { LIST($spells) }.
met_nothing = Nada fuera de lo normal: la temperatura de { $machine } se mantuvo bien, salvo aperturas cotidianas.
batch_water_on_target = Sí: { SHARE($projected_share) } hasta el traslado (se quiere { SHARE($target_low) } a { SHARE($target_high) }).
batch_water_too_little = Poca: { SHARE($projected_share) } hasta el traslado (se quiere { SHARE($target_low) } a { SHARE($target_high) }).
batch_water_too_much = Demasiada: { SHARE($projected_share) } hasta el traslado (se quiere { SHARE($target_low) } a { SHARE($target_high) }).
batch_water_cannot_tell = No se puede decir con seguridad: más o menos { SHARE($projected_share) } hasta el traslado ({ SHARE($projected_low) } a { SHARE($projected_high) }; se quiere { SHARE($target_low) } a { SHARE($target_high) }).
batch_clock_on_time = A su hora, hasta donde tal previsión puede decirlo.
batch_clock_early = { EGGS($hours) } h antes, más que la duda de la previsión.
batch_clock_late = { EGGS($hours) } h después, más que la duda de la previsión.
batch_place_pattern = Quizá: los muertos no están como el azar los pondría.
batch_place_no_sign = Ninguna señal.

ask_change = ¿Qué cambiar en la próxima tanda?
change_set = Ponga { EGGS($eggs) } huevos para tener al menos { EGGS($chicks) } pollitos sanos en el { SHARE($sure) } de los casos; cuente con unos { EGGS($chicks_middle) } ({ EGGS($chicks_low) } a { EGGS($chicks_high) }). { $changes ->
        [0] Nada pide otro ajuste.
        [one] Una cosa que cambiar o anotar.
       *[other] { $changes } cosas que cambiar o anotar.
    }
change_too_many = Al menos { EGGS($chicks) } pollitos no se pueden planear en una sola tanda: planee varias, o menos pollitos.
change_refused = { $why }
table_changes = Qué cambiar, lo más importante primero
head_what = Cambiar
head_now = Ahora
head_to = A
head_why = Por qué
head_how_sure = Seguridad

ask_look = ¿Qué buscar en los huevos sin nacer?
look_open = Abra cada huevo sin nacer que no huela, ni haga espuma, ni rezume, por el polo grueso, y anote el aspecto que mejor encaje.
look_days = Los días son desde la puesta en marcha; para otras aves que la gallina se escalan y valen con unos tres días de margen. Lo que huele, hace espuma o rezuma se tira sin abrir.
table_breakout = Aspectos de huevos abiertos, y a qué apuntan
head_look = Aspecto
head_days = Día
head_see = Qué se ve
head_means = Qué significa
head_points_to = Apunta a

batch_unknown_proof = Los recuentos y el registro apuntan a causas probables; no prueban ninguna. Dos causas que dejan la misma pérdida quedan empatadas hasta que un registro las separe.
batch_unknown_list = Los pesos valen para las causas de la lista de hatchkit y sus cifras indicadas y redondeadas.
batch_unknown_clear = Un huevo claro que no se abrió no es ni infértil ni muerto: no se sabe.
batch_unknown_illness = Ninguna enfermedad se ve en estas cifras. Las muertes inusuales son asunto de un veterinario.

# Pérdidas tal como se cuentan en una frase: «18 muertos tardíos».
loss_hatched = pollitos sanos
loss_culled = pollitos descartados
loss_clear = claros
loss_infertile = infértiles
loss_early = muertos tempranos
loss_mid = muertos a media incubación
loss_late = muertos tardíos
loss_dead = embriones muertos
loss_pipped_dead = picados y muertos
loss_removed = retirados
loss_unaccounted = de fin desconocido

# Pérdidas con su número: «18 muertos tardíos», «1 claro».
eggs_hatched = { EGGS($eggs) ->
        [one] 1 pollito sano
       *[other] { EGGS($eggs) } pollitos sanos
    }
eggs_culled = { EGGS($eggs) ->
        [one] 1 pollito descartado
       *[other] { EGGS($eggs) } pollitos descartados
    }
eggs_clear = { EGGS($eggs) ->
        [one] 1 claro
       *[other] { EGGS($eggs) } claros
    }
eggs_infertile = { EGGS($eggs) ->
        [one] 1 infértil
       *[other] { EGGS($eggs) } infértiles
    }
eggs_early = { EGGS($eggs) ->
        [one] 1 muerto temprano
       *[other] { EGGS($eggs) } muertos tempranos
    }
eggs_mid = { EGGS($eggs) ->
        [one] 1 muerto a media incubación
       *[other] { EGGS($eggs) } muertos a media incubación
    }
eggs_late = { EGGS($eggs) ->
        [one] 1 muerto tardío
       *[other] { EGGS($eggs) } muertos tardíos
    }
eggs_dead = { EGGS($eggs) ->
        [one] 1 embrión muerto
       *[other] { EGGS($eggs) } embriones muertos
    }
eggs_pipped_dead = { EGGS($eggs) ->
        [one] 1 picado y muerto
       *[other] { EGGS($eggs) } picados y muertos
    }
eggs_removed = { EGGS($eggs) ->
        [one] 1 retirado
       *[other] { EGGS($eggs) } retirados
    }
eggs_unaccounted = { EGGS($eggs) ->
        [one] 1 de fin desconocido
       *[other] { EGGS($eggs) } de fin desconocido
    }
