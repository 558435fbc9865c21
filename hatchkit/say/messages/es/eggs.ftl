# Qué fue de los huevos: donde números, filas y fechas de una tanda no concuerdan.

eggs_set_missing =
    .found = tanda { $batch }: falta el número de huevos puestos
    .done = La tanda se deja fuera de las tasas.
    .fix = Escriba los huevos puestos (eggs_set).
culled_beyond_hatched =
    .found = tanda { $batch }: { $culled } eliminados de { $hatched } nacidos, aunque los eliminados son parte de los nacidos
    .done = { $culled } se toman como nacidos y eliminados.
    .fix = Revise la fila.
taken_out_twice =
    .found = tanda { $batch }: { $looks } huevos retirados en las ovoscopias, pero { $total } en la columna removed
    .done = Se usa { $looks }.
    .fix = Revise la fila.
rows_beyond_set =
    .found = tanda { $batch }: { $told } filas de huevos con su fin, pero { $set } huevos puestos
    .done = La tanda se deja fuera de las tasas hasta que se corrija uno de los dos.
    .fix = Cuente de nuevo qué está mal: los huevos puestos o lo que fue de ellos.
counts_beyond_set =
    .found = tanda { $batch }: { $told } huevos en los registros ({ WORDS($kinds, kind: "field") }: { LIST($eggs) }), pero { $set } huevos puestos
    .done = La tanda se deja fuera de las tasas hasta que se corrija uno de los dos.
    .fix = Cuente de nuevo qué está mal: los huevos puestos o lo que fue de ellos.
counts_beyond_rows =
    .found = tanda { $batch }: los recuentos hablan de { $told } huevos además de las { $rows } filas de huevos, pero quedan { $left }
    .done = Se usan las filas de huevos, { $left ->
        [0] y no sobra ningún huevo.
        [one] el otro huevo es de fin desconocido.
       *[other] los otros { $left } huevos son de fin desconocido.
    }
    .fix = Revise la fila.
opened_two_ways =
    .found = tanda { $batch }: los huevos abiertos y los muertos en cáscara se pueden leer de más de una manera
    .done = { $way ->
        [unhatched] dead_in_shell se lee como todos los huevos sin nacer, con los infértiles
        [without_early] dead_in_shell se lee sin los muertos tempranos
        [apart] dead_in_shell se lee como contado aparte de los huevos abiertos
       *[clears] Los infértiles y muertos tempranos entre los huevos abiertos se leen como claros abiertos
    }; así la cuenta cuadra.
    .fix = Si no es así, corrija los recuentos.
eggs_unexplained =
    .found = tanda { $batch }: los registros explican { $told } de { $set } huevos puestos
    .done = { $lost ->
        [one] De un huevo no se sabe el fin.
       *[other] De { $lost } huevos no se sabe el fin.
    }
    .fix = Busque los huevos que faltan: claros, rotos, sin nacer.
hatch_not_counted =
    .found = tanda { $batch }: aún no se contó el nacimiento de { $eggs ->
        [one] un huevo
       *[other] { $eggs } huevos
    }
    .done = La tanda se deja fuera de las tasas hasta que termine.
    .fix = Escriba los nacidos (hatched) cuando termine el nacimiento.
rows_against_counts =
    .found = tanda { $batch }: { READINGS($kinds) }: { LIST($counts) } según el recuento, { LIST($rows) } según las filas de huevos
    .done = Se usan las filas de huevos.
    .fix = Corrija el recuento o las filas de huevos.
egg_outcome_differs =
    .found = tanda { $batch }, huevo { $egg }: { WORD($look, kind: "stage") }: { WORD($seen, kind: "field") }, pero al final: { WORD($outcome, kind: "fate") }
    .done = Se usa el final.
    .fix = Revise la fila de este huevo.
egg_seen_alive =
    .found = tanda { $batch }, huevo { $egg }: visto vivo el día { $day }, pero al final: { WORD($outcome, kind: "fate") }
    .done = Se toma como muerto, pues se vio un embrión vivo.
    .fix = Revise la fila de este huevo.
egg_older_than_found =
    .found = tanda { $batch }, huevo { $egg }: parecía del día { $stage }, pero se halló muerto a más tardar el día { $by }
    .done = El aspecto del embrión se deja de lado: murió entre el día { $after } y el día { $by }.
    .fix = Revise la fila de este huevo.
egg_younger_than_alive =
    .found = tanda { $batch }, huevo { $egg }: parecía del día { $stage }, pero se anotó vivo el día { $alive }
    .done = Uno de los dos está mal: el intervalo abarca ambos, del día { $after } al día { $by }.
    .fix = Revise la fila de este huevo.
look_day_taken =
    .found = tanda { $batch }: hay recuentos sin fecha: { WORD($look, kind: "stage") }
    .done = Se toma el día { $day }, el habitual.
    .fix = Escriba la fecha de esta ovoscopia.
look_before_setting =
    .found = tanda { $batch }: con fecha de antes de la puesta o de ella misma: { WORDS($looks, kind: "stage") }
    .done = Los recuentos se mantienen, se toma el día habitual.
    .fix = Revise set_at y la fecha de la ovoscopia.
off_before_look =
    .found = tanda { $batch }: retirada el día { TENTH($off) }, antes de la última ovoscopia del día { TENTH($last) }
    .done = Se toma el día { $day } como fin del nacimiento.
    .fix = Revise las fechas.

fate_hatched = nacido
fate_culled = eliminado
fate_clear = claro
fate_infertile = infértil
fate_dead = muerto
fate_pipped_dead = picado y muerto
fate_removed = retirado

## Fuera de las tasas, y lo que no se contó

left_out_rows = { $batch } queda fuera de las tasas: { $told } filas de huevos con su fin, pero { $set } huevos puestos.
left_out_counts = { $batch } queda fuera de las tasas: { $told } huevos en los registros, pero { $set } huevos puestos.
left_out_nothing = { $batch } queda fuera de las tasas: no hay nada anotado de lo que fue de sus huevos.
left_out_chicks = { $batch } queda fuera de las tasas: sus pollitos no están contados.
left_out_hatch = { $batch } queda fuera de las tasas: su nacimiento no está contado.
left_out_set = { $batch } queda fuera de las tasas: falta el número de huevos puestos.
clears_left_uncounted = No se contaron los claros: { LIST($batches, most: 12) } ({ EGGS($eggs) ->
        [one] un huevo
       *[other] { EGGS($eggs) } huevos
    }). No se sabe cuántos de estos huevos tenían embrión, y las partes de los huevos no claros los dejan fuera.
lost_uncounted = No contado hasta el final: { WORDS($stages, kind: "loss") } ({ $all ->
        [yes] las { $number } tandas
       *[no] { LIST($batches, most: 12) }
    }). Se perdieron al menos tantos, y no se da intervalo.

## Suerte, edades, lugar y curso, con más palabras

luck_own = Comparaciones con sus otras tandas: { $comparisons }. Raras por sí solas (1 de 20): { $rare }, donde la suerte da { $by_luck ->
        [0] menos de 1
       *[other] hasta unas { $by_luck }
    }.
luck_near = Raras por sí solas, pero no llamadas inusuales entre tantas comparaciones: { LIST($near) }.
luck_near_one = { $batch }, { $eggs } { WORD($stage, kind: "loss") } de { EGGS($out_of) } ({ $unusual_from ->
        [none] ningún número habría bastado, con tan pocas otras tandas y tan distintas
       *[eggs] { EGGS($unusual_from) } o { $stage ->
            [hatched] menos
           *[other] más
        } habrían bastado
    })
luck_wide = { $number ->
        [one] Una tanda tiene
       *[other] { $number } tandas tienen
    } menos de { $fewest } otras de la especie: el margen esperado es ancho, y poco se puede llamar inusual.
luck_uncounted = No comparado, porque esto o los claros no se contaron: { WORDS($stages, kind: "loss") } en { LIST($batches, most: 12) }.
luck_published = Comparaciones con niveles publicados ({ LIST($levels) }): { $comparisons }. { $number ->
        [0] Ninguna es inusual si se cuenta con cuántas son.
       *[other] Inusual: { LIST($unusual) }.
    }
luck_published_one = { $batch }, { $eggs } { WORD($stage, kind: "loss") } donde se esperan de { EGGS($low) } a { EGGS($high) } (por suerte 1 vez en { $one_in })
luck_not_why = Inusual quiere decir: difícilmente casualidad. No dice por qué.
ages_none = Aún no hay ningún huevo de fin conocido; nada se puede decir de las edades de muerte.
ages_alive = { WORD($species, kind: "species") }: no murió ninguno de { EGGS($eggs) } embriones vivos de { $batches ->
        [one] una tanda
       *[other] { $batches } tandas
    }; hasta { SHARE($most) } de pérdida concordaría aún con eso.
ages_died = { WORD($species, kind: "species") }: murieron { EGGS($deaths) } de { EGGS($eggs) } embriones vivos de { $batches ->
        [one] una tanda
       *[other] { $batches } tandas
    }, { SHARE($share) } (banda del 95 % de { SHARE($low) } a { SHARE($high) }){ $batches ->
        [one] ; con una sola tanda, la banda no sabe nada de las diferencias entre tandas.
       *[other] .
    }
ages_removed = { EGGS($removed) ->
        [one] Un huevo se retiró vivo
       *[other] { EGGS($removed) } huevos se retiraron vivos
    } por el camino; eso solo informa de los días anteriores.
ages_unaccounted = Fuera quedan: { EGGS($unaccounted) ->
        [one] un huevo de fin desconocido; si hubiera muerto, se habría perdido { SHARE($most) }.
       *[other] { EGGS($unaccounted) } huevos de fin desconocido; si todos hubieran muerto, se habría perdido { SHARE($most) }.
    }
ages_risk = El mayor riesgo diario visto: de { SHARE($daily_low) } a { SHARE($daily_high) } al día (banda del 95 % de { SHARE($low) } a { SHARE($high) }), entre el día { EGGS($after) } y el día { EGGS($by) }{ $alone ->
        [yes] .
       *[no] ; otros tramos pueden ser igual de altos.
    }
ages_wide = { LIST($spans) }: ahí las ovoscopias no dicen qué día murieron.
ages_span = del día { TENTH($after) } al { TENTH($by) }
ages_method = El día 0 es la hora de puesta en marcha. Las muertes conocidas solo a grandes rasgos se ponen donde caen las mejor conocidas. Los claros no cuentan: algunos murieron en los primeros días.
place_counts = { $deaths } muertos entre { $eggs } huevos en { $trays ->
        [one] una bandeja
       *[other] { $trays } bandejas
    }: { EGGS($pairs) } pares de muertos vecinos ({ TENTH($pairs_expected) } esperados si el lugar no importa), { SHARE($edge) } de los muertos en el borde ({ SHARE($edge_expected) } esperado). { $answer ->
        [few] Con tan pocas muertes ningún patrón se habría distinguido del azar.
        [pattern] El azar solo hace tanto en { SHARE($chance) } de los casos; los huevos de una misma gallina también suelen estar juntos, mire ambas cosas.
       *[no_sign] Un patrón tan fuerte viene por azar en { SHARE($chance) } de los casos.
    }
course_centre = { WORD($stage, kind: "stage") }, { WORD($species, kind: "species") }: { SHARE($centre) } de { $of ->
        [set] los huevos puestos
       *[fertile] los huevos no claros
    } en { $batches ->
        [one] una tanda
       *[other] { $batches } tandas
    }. { $limits ->
        [none] Estas pocas tandas difieren tanto que no se pueden trazar límites.
        [outside] Fuera de los límites: { LIST($outside) }; merece una mirada, no es prueba: donde las tandas difieren mucho, 3 de 10 temporadas corrientes pueden tener una así.
       *[inside] Ninguna tanda está fuera de los límites.
    }
course_provisional = Los límites son provisionales: menos de { $fewest } tandas.
course_uncounted = Fuera quedan, porque ahí no se contó: { LIST($batches, most: 12) }.
course_others = No están en esta imagen: { LIST($kinds) }.
course_other = { WORD($species, kind: "species") } ({ $batches ->
        [one] una tanda
       *[other] { $batches } tandas
    })

level_named = { WORD($level, kind: "norm") }
norm_own = su propio nivel
norm_heavy_breeders = reproductoras pesadas, Butcher & Nilipour
norm_barnett_intact = huevos comerciales sin grietas, Barnett et al. 2004
norm_small_incubator = práctica común con incubadoras caseras
norm_pheasant_8_hens = faisanes, 8 hembras por macho, Deeming & Wadland 2001
norm_pheasant_12_hens = faisanes, 12 hembras por macho, Deeming & Wadland 2001
norm_quail_stored_14_days = huevos de codorniz guardados 14 días, S. Afr. J. Anim. Sci. 2019
norm_partridge_farm = perdiz roja, un estudio de 150 huevos
norm_guinea_farm = pintadas, Araujo et al. 2019
norm_goose_warmed = huevos de oca guardados 9 días y calentados a diario, un ensayo
norm_turkey_stored_17_days = huevos de pavo guardados 17 días, Ann. Anim. Sci. 17
norm_turkey_usa_1997 = incubadoras de pavos de EE. UU. en 1997, prensa del sector
