# La página de la temporada: sus preguntas en el orden en que se leen, y lo que responden los registros.

page_season_title = { $name }: repaso de la temporada
page_season_file = { $name }-temporada
page_season_counts = { $batches ->
        [0] No se pudo usar ninguna tanda.
       *[other] { EGGS($set) ->
            [one] Un huevo
           *[other] { EGGS($set) } huevos
        } a incubar en { $batches ->
            [one] una tanda
           *[other] { $batches } tandas
        } ({ LIST($birds) }){ $first ->
            [none] { "" }
           *[day] , { $days ->
                [one] { DAY($first) }
               *[other] { DAY($first) } a { DAY($last) }
            }
        }: { EGGS($hatched) ->
            [one] 1 pollito sano
           *[other] { EGGS($hatched) } pollitos sanos
        }, { $share_of_set ->
            [none] proporción desconocida.
           *[share] { SHARE($share_of_set) } de los huevos puestos{ $share_of_developing ->
                [none] .
               *[share] , { SHARE($share_of_developing) } de los no claros.
            }
        }
    }
species_of = { WORD($key, kind: "species") }

## ¿Qué costó más?

ask_most = ¿Qué costó más?
most_cause = Lo que más costó: { WORD($key, kind: "cause") }. Unos { EGGS($eggs) } de los { EGGS($lost) } huevos perdidos ({ LIST($batches, most: 5) }).
most_cause_even = Unos { EGGS($eggs) } de los { EGGS($lost) } huevos perdidos cada una: { WORD($key, kind: "cause") } y { $second }.
most_cause_shared = Ninguna causa va sola delante: { LIST($tied) } pesan casi lo mismo en { $batch }. A la primera le tocan unos { EGGS($eggs) } de los { EGGS($lost) } huevos perdidos.
cause_alone = { WORD($key, kind: "cause") }
most_stage = Más pérdidas que lo publicado, sin causa que destaque: { WORD($key, kind: "loss") }, unos { EGGS($eggs) } de los { EGGS($lost) } huevos perdidos.
most_records = { EGGS($eggs) ->
        [one] De un huevo
       *[other] De { EGGS($eggs) } huevos
    } no se sabe el fin ({ LIST($batches, most: 5) }): nadie puede decir qué costó más antes de que se anote.
most_rest = Después vienen: { LIST($rest) }.
most_short_cause = { WORD($key, kind: "cause") }: { EGGS($eggs) } ({ LIST($batches, most: 4) })
most_short_stage = { WORD($key, kind: "loss") } por encima de lo publicado: { EGGS($eggs) }
most_short_records = huevos de fin desconocido: { EGGS($eggs) }
most_none_finished = No está anotado qué fue de los huevos; por eso no se puede decir qué costó más.
most_none_finished_sure = No se puede juzgar nada antes de que se anote un nacimiento.
most_nothing = Ninguna causa y ninguna etapa costó tantos huevos como para ponerla primero: { $number ->
        [one] una tanda
       *[other] { $number } tandas
    }, nada fuera de lo normal.
most_nothing_sure = La simple mala suerte basta para explicarlo; un daño pequeño podría esconderse en tan pocos huevos.
most_unusual = Ninguna causa y ninguna etapa puede ponerse primero, pero no todo es suerte: { LIST($batches) } perdió en alguna etapa más de lo que la suerte suele dar.
most_unusual_sure = Es seguro que es raro; qué fue, los registros no lo dicen.
most_poor = Ninguna causa y ninguna etapa puede ponerse primero, aunque nació claramente menos de lo habitual: { LIST($batches, most: 5) }.
most_poor_sure = El número es seguro; qué fue, los registros no lo dicen.
most_sure_cause_firm = Bastante seguro en { $batch } ({ SHARE($share) } del peso entre todas las causas). Los registros señalan; no prueban.
most_sure_cause_probable = Probable en { $batch } ({ SHARE($share) } del peso entre todas las causas), no seguro.
most_sure_cause_guess = Una suposición entre otras: { SHARE($share) } del peso en { $batch }.
most_sure_stage_counted = El número es seguro. La causa no se conoce, y el nivel publicado es de gallinas y aproximado.
most_sure_stage_assumed = Muchos murieron entre dos ovoscopias, así que la etapa es en parte supuesta; la causa no se conoce.
most_sure_records_counted = El número es seguro: si eran claros, muertos o rotos, nadie lo sabe.

eggs_of_cause = { WORD($key, kind: "cause") } ({ EGGS($eggs) })

## ¿Adónde fueron los huevos?

ask_lost = ¿Adónde fueron los huevos?
lost_most = { EGGS($lost) ->
        [0] No se perdió ningún huevo.
        [one] Un huevo de { EGGS($set) } no dio un pollito sano.
       *[other] { EGGS($lost) } de { EGGS($set) } huevos no dieron un pollito sano. Los más: { LIST($most) }.
    }
lost_clear = Claro quiere decir infértil, o muerto demasiado pronto para verse: solo un huevo abierto lo dice.
lost_method = El día 0 es la hora de puesta en marcha. El paréntesis es el intervalo del 95 %, donde estará la tasa verdadera; para una temporada entera cuenta con que las tandas difieren. De { EGGS($dead) } embriones muertos, { EGGS($shared) } murieron entre dos ovoscopias a ambos lados de un límite; se reparten según las edades de muerte de la temporada. Las fracciones de huevo se redondean de modo que la suma se mantiene.
table_stages = Huevos según la etapa en que se perdieron
table_looks = Las mismas muertes según la ovoscopia en que se hallaron
table_by_flock = Por lote de reproductores
table_by_incubator = Por incubadora

## ¿Qué tandas fueron malas?

ask_poor = ¿Qué tandas fueron malas?
poor_batches = { $number ->
        [one] Una de { $of } tandas nació
       *[other] { $number } de { $of } tandas nacieron
    } claramente peor de lo habitual aquí: { LIST($poor) }.
poor_none = Ninguna de { $of } tandas nació claramente peor de lo habitual aquí.
poor_one = { $batch } ({ EGGS($hatched) } de { EGGS($set) }{ $poor ->
        [clears] , por los claros
        [removed] , por los huevos retirados
       *[embryos] { "" }
    })
poor_method = Cada tanda se pone junto a sus otras tandas de la misma especie, acercada a un balance publicado, contando con las diferencias entre tandas: una vez sobre los huevos puestos, otra sobre los que no eran claros ni se retiraron. Es mala la que queda una desviación o más por debajo en alguna de las dos.
table_batches = Pollitos sanos por tanda
poor_embryos = sí, por embriones muertos
poor_clears = sí, por claros
poor_removed = sí, por huevos retirados
poor_unknown = no se sabe, hay huevos de fin desconocido
poor_no = no

## ¿Es más que mala suerte?

ask_luck = ¿Es más que mala suerte?
luck_unusual = Sí: { LIST($unusual) }. La suerte da tantos más o menos una vez en { $one_in } tandas.
luck_by_published = { $comparisons ->
        [0] Frente a niveles publicados, sí
       *[other] Frente a sus propias tandas, no ({ $comparisons } comparaciones); frente a niveles publicados, sí
    }: en { LIST($published, most: 5) } se perdió en una etapa más de lo que la suerte suele dar.
luck_one = { $batch }: { $eggs } { WORD($stage, kind: "loss") } de { EGGS($out_of) }, cuando se esperan de { EGGS($low) } a { EGGS($high) }
luck_none = No se ve: en { $comparisons } comparaciones ninguna tanda perdió en una etapa más de lo que la suerte puede dar.
luck_few = No se puede decir: ninguna segunda tanda de la misma especie se contó igual.
luck_refused = { $why }
luck_method = Cada tanda y etapa se compara con sus otras tandas de la especie, con sus diferencias, y con niveles publicados. Tantas comparaciones muestran por fuerza algo raro; eso se tiene en cuenta (Benjamini-Hochberg).
table_rare = Las más raras de estas comparaciones, cada una por sí sola

## ¿Infértil, o muerto pronto?

ask_clears = ¿Infértil, o muerto pronto?
clears_none = Ningún huevo era claro.
clears_not_counted = No se puede decir: no se contaron los claros.
clears_unopened = No se puede decir: no se abrió ninguno de { EGGS($clear) } claros.{ $flocks ->
        [1] { "" }
       *[other] { " " }Los más son del lote { $flock }: { EGGS($worst_clear) } de { EGGS($worst_set) } huevos.
    }
clears_opened = { EGGS($dead) ->
        [0] Ninguno
       *[other] { EGGS($dead) }
    } de { EGGS($opened) } claros abiertos tenía un embrión muerto; { EGGS($clear) } de { EGGS($set) } huevos eran claros{ EGGS($barren) ->
        [0] { "" }
        [one] , más 1 infértil al abrirlo
       *[other] , más { EGGS($barren) } infértiles al abrirlos
    }.{ $flocks ->
        [1] { "" }
       *[other] { " " }Los más son del lote { $flock }: { EGGS($worst_clear) } de { EGGS($worst_set) } huevos{ EGGS($worst_opened) ->
        [0] , ninguno abierto
       *[other] { "" }
    }.
    }
clears_method = Donde no se abrió ningún claro, la fertilidad está en algún punto entre «todos eran infértiles» y «todos habían muerto pronto»; la tabla da ese margen. La fertilidad al trasluz no es la fertilidad.
table_clears = Los claros y lo que dicen de la fertilidad

## ¿Cuándo murieron?

ask_ages = ¿Cuándo murieron los embriones?
ages_stages = { $most ->
        [early] La mayoría murió pronto
        [mid] La mayoría murió en los días medios
       *[late] La mayoría murió tarde
    }: { EGGS($early) } pronto, { EGGS($mid) } en medio, { EGGS($late) } tarde; de { EGGS($seen) } de { EGGS($dead) } se vio que son de esa etapa.
caption_species = { WORD($species, kind: "species") }

## ¿Importó el lugar en la bandeja?

ask_place = ¿Importó el lugar en la bandeja?
place_not_kept = No se puede decir: no se anotó el lugar de los huevos en la bandeja.
place_few = No se puede decir: murieron muy pocos huevos de lugar conocido.
place_no_sign = Ninguna señal: { EGGS($deaths) } muertos entre { EGGS($eggs) } huevos están como el azar los pondría.
place_pattern = { $where ->
        [together] Quizá: los muertos están juntos
        [edge] Quizá: los muertos están en el borde
       *[middle] Quizá: los muertos están en el centro
    } más de lo que el azar pondría (más o menos 1 vez en { $one_in }); los huevos de una misma gallina también suelen estar juntos.

## ¿Empeoró a lo largo de la temporada?

ask_course = ¿Empeoró a lo largo de la temporada?
course_refused = { $why }
course_unknown = No se puede decir: muy pocas tandas ({ WORD($species, kind: "species") }).
course_none = No se distingue del azar: las muertes tardías ({ WORD($species, kind: "species") }) de { $batches } tandas ni suben ni bajan{ COUNT($outside) ->
        [0] .
       [one] ; { LIST($outside) } se sale.
       *[other] ; { LIST($outside) } se salen.
    }
course_rise = Las muertes tardías ({ WORD($species, kind: "species") }) suben a lo largo de { $batches } tandas, más de lo que el azar suele dar.
course_fall = Las muertes tardías ({ WORD($species, kind: "species") }) bajan a lo largo de { $batches } tandas, más de lo que el azar suele dar.

## ¿Costaron embriones los golpes de calor y de frío?

ask_harm = ¿Costaron embriones los golpes de calor y de frío?
harm_clear = Una señal clara: unos { EGGS($chicks_lost) } pollitos ({ EGGS($chicks_low) } a { EGGS($chicks_high) }) se perdieron en las { EGGS($exposed) } de { $batches } tandas afectadas.
harm_some = Alguna señal: unos { EGGS($chicks_lost) } pollitos ({ EGGS($chicks_low) } a { EGGS($chicks_high) }) se perdieron en las { EGGS($exposed) } de { $batches } tandas afectadas.
harm_clear_uncounted = Una señal clara: las { EGGS($exposed) } de { $batches } tandas afectadas perdieron más embriones que las otras.
harm_some_uncounted = Alguna señal: las { EGGS($exposed) } de { $batches } tandas afectadas perdieron más embriones que las otras.
harm_none = Ninguna señal, y el doble de muertes se habría visto.
harm_cannot_tell = Con estos registros no se puede decir.
harm_not_logged = No se puede decir: no se registró ninguna temperatura mientras había huevos.
harm_log_it = Ponga un termómetro registrador a la altura de los huevos.
harm_not_proof = Que el episodio fuera la causa, registros de esta clase no pueden probarlo.
table_exposed = Tramos entre dos ovoscopias en que los huevos tuvieron demasiado calor o frío, o con poco registro para saberlo

## ¿Qué hizo la temperatura?

ask_spells = ¿Qué hizo la temperatura?
spells_found = { $told ->
        [one] Un episodio merece
       *[other] { $told } episodios merecen
    } leerse: { LIST($spells) }. { $everyday ->
        [0] Nada más salió de su margen.
        [one] Otro es cotidiano (tapa abierta, huevos que entran).
       *[other] Otros { $everyday } son cotidianos (tapa abierta, huevos que entran).
    }
spells_none = Nada fuera de lo normal: { $everyday ->
        [0] la temperatura quedó en su margen.
        [one] una apertura cotidiana.
       *[other] { $everyday } aperturas cotidianas.
    }
spell = { $batch } { EGGS($hours) } h a { DEGREES($extreme_c) }
table_spells = Episodios que merecen leerse; la sonda mide el aire, el huevo se estima

## ¿Se puede creer a los termómetros?

ask_probes = ¿Se puede creer a los termómetros?
probes_off = No con seguridad: por las horas de nacimiento { LIST($probes) }.
probe_off = la sonda de { $incubator } marca unos { STEP($off) } de { $way ->
        [high] más: los huevos estaban más fríos de lo que dice el registro
       *[low] menos: los huevos estaban más calientes de lo que dice el registro
    }
probes_unchecked = No se sabe: { $unchecked ->
        [one] una sonda no se comprobó
       *[other] { $unchecked } sondas no se comprobaron
    } nunca. Léalas en hielo fundente, o junto a un termómetro clínico.
probes_checked = Cada sonda se comprobó, y se aplica lo que se desviaba.
table_machines = Las incubadoras en días corrientes

## ¿Vino el nacimiento pronto o tarde?

ask_clock = ¿Pronto o tarde?
clock_untimed = No se puede decir: ningún nacimiento tiene sus horas anotadas.
clock_on_time = A su hora: los { $timed } nacimientos están dentro de lo que tal previsión puede decir.
clock_off = { $on_time } de { $timed } nacimientos vinieron a su hora{ COUNT($early) ->
        [0] { "" }
       *[other] ; pronto: { LIST($early) }
    }{ COUNT($late) ->
        [0] { "" }
       *[other] ; tarde: { LIST($late) }
    } (hasta { EGGS($hours) } h).

## ¿Perdieron los huevos el agua debida?

ask_water = ¿Fue buena la pérdida de agua?
water_not_weighed = No se puede decir: no se pesó ningún huevo.
water_on_target = Se pesaron { $weighed } de { $batches } tandas: { $on_target } en lo debido{ $unsure ->
        [0] .
       *[other] , { $unsure } demasiado inciertas para juzgar.
    }
water_off = Se pesaron { $weighed } de { $batches } tandas: { $on_target } en lo debido{ COUNT($little) ->
        [0] { "" }
       *[other] ; perdieron poco: { LIST($little) }
    }{ COUNT($much) ->
        [0] { "" }
       *[other] ; perdieron demasiado: { LIST($much) }
    }.
table_water = Agua perdida hasta el traslado, como parte del peso inicial

## ¿Qué se perdió por qué?

ask_causes = ¿Qué se perdió por qué?
causes_account = De { EGGS($lost) } huevos perdidos, { EGGS($usual) } son lo que las tandas suelen perder, { EGGS($not_explained) } no se explican{ COUNT($causes) ->
        [0] , y no se puede nombrar ninguna causa.
       *[other] ; el resto: { LIST($causes) }.
    }
causes_method = Cada huevo cuenta una vez. Una causa recibe los huevos por encima de lo habitual que encajan con ella, por su peso en esa tanda; los pesos de menos de un décimo se dejan fuera.
table_account = La cuenta de la temporada: cada huevo que no dio un pollito sano
cause_usual = lo que las tandas suelen perder
cause_not_explained = sin explicar
cause_unaccounted = huevos de fin desconocido

## Lo que no se sabe

season_unknown_cause = Una causa: esto muestra lo que fue junto. Probarla pide un mismo lote en dos incubadoras.
season_unknown_clear = Infértil o muerto muy pronto, mientras no se abran los claros.
season_unknown_day = El día de una muerte con más precisión que la que dan dos ovoscopias.
season_unknown_probe = Si una sonda dice la verdad, salvo comprobada en hielo fundente y cerca de { DEGREES($right) }.
season_unknown_illness = Las horas sin registro, y las enfermedades: pregunte a un veterinario.

## Encabezados de las tablas

head_stage = Etapa u ovoscopia
head_eggs = Huevos
head_set = Huevos puestos
head_share_of_set = De los puestos
head_share_of_fertile = De los no claros
head_share_of_transferred = De los trasladados
head_batch = Tanda
head_flock = Lote
head_incubator = Incubadora
head_poor = ¿Mala?
head_out_of = De
head_low = Se espera de
head_high = a
head_one_in = Por suerte 1 de
head_clear = Claros
head_opened = Abiertos
head_opened_dead = Con embrión muerto
head_share_fertile = Fértiles
head_event = Número
head_day_start = Desde el día
head_day_end = Hasta el día
head_hours = Horas
head_extreme_c = Aire en lo peor
head_egg_extreme_c = Huevo en lo peor
head_looks_like = Parece
head_at_risk = Vivos al empezar
head_died = Muertos
head_hours_warm = Horas de calor
head_hours_cold = Horas de frío
head_egg_peak_c = Huevo más caliente
head_egg_min_c = Huevo más frío
head_share_logged = Registrado
head_mean_c = Media
head_set_point_c = Ajuste
head_rh_mean_pct = Humedad, %
head_share_lost = Perdido hasta el traslado
head_share_target = Se quiere de
head_share_target_high = a
head_key = Perdido por
head_batches = Tandas
