# Pérdidas y temperatura: el veredicto y sus razones, para quien quiere mirar más.


## The verdict

relate_clear_sign = Señal clara.
relate_some_sign = Alguna señal.
relate_no_sign = Ninguna señal, y una duplicación se habría visto.
relate_cannot_tell = No se puede decir: una duplicación habría escapado { $missed } de 10 veces.
relate_not_apart = No se puede separar de esto: { WORD($factor, kind: "factor") }.
relate_why_no_window = No se puede decir: de ningún tramo se conocen a la vez huevos, muertos y duración.
relate_why_not_logged = No se puede decir: no se registró ningún tramo de ninguna tanda.
relate_why_one_batch = No se puede decir: solo una tanda tiene registro, y nada con que compararla.
relate_why_no_death = No se puede decir: no murió ningún embrión en un tramo registrado.
relate_why_all_died = No se puede decir: murieron todos los embriones, afectados o no.
relate_why_no_excursion = No se puede decir: ningún golpe de calor o frío que cuente alcanzó a una tanda.
relate_why_same_dose = No se puede decir: todas las tandas recibieron la misma dosis.
relate_why_uncounted = No se puede decir: { $windows ->
        [one] el único tramo con un episodio no sirve
       *[other] los { $windows } tramos con un episodio no sirven
    }, porque { $not_counted ->
        [yes] no se contaron vivos o muertos
       *[no] los recuentos se contradicen
    } ({ LIST($batches) }).

## Its size and how sure it is

relate_size = En { $exposed ->
        [one] la tanda afectada
       *[other] las { $exposed } tandas afectadas
    } de { $batches }, los embriones murieron a { $hazard_ratio ->
        [none] un número desconocido de
        [21] más de 20
       *[ratio] { PLAIN($hazard_ratio) }
    } veces la tasa de las otras (intervalo del 95 % de { $low ->
        [none] desconocido
        [21] más de 20
       *[ratio] { PLAIN($low) }
    } a { $high ->
        [none] desconocido
        [21] más de 20
       *[ratio] { PLAIN($high) }
    }), con la dosis habitual de los tramos afectados.
relate_winner = En registros tan pequeños solo se ve una gran diferencia; la verdadera será menor: fíese de la mitad baja del intervalo.
relate_no_arrangement = No hay otra manera de repartir los episodios entre estas tandas; no se puede pesar el azar.
relate_chance = { $turned ->
        [yes] Corriendo el registro frente a las tandas
       *[no] Sorteando los episodios entre las tandas
    }, el azar solo hace tanto en { $many ->
        [0] menos de 1
       *[other] { $many }
    } de { PLAIN($out_of) } casos.
relate_smallest = Tan pocas tandas no podrían haber dado menos de { $many ->
        [0] 1
       *[other] { $many }
    } de { PLAIN($out_of) }.
relate_drawn = Sacando cada tanda de nuevo, con su propia suerte, incubadoras y temporadas en su nivel, lo hace en { $many ->
        [0] menos de 1
       *[other] { $many }
    } de { PLAIN($out_of) } casos.
relate_less_than_clear = Es menos de lo que la regla pide para una señal clara.
relate_harm_not_size = Que hay daño es señal clara; cuánto, no: el intervalo baja hasta ninguno.
relate_would_show = Una tasa { $ratio ->
        [none] desconocida
        [21] más de 20
       *[ratio] { PLAIN($ratio) }
    } veces mayor se habría visto en 8 de 10 temporadas así.
relate_shows_from = { $ratio ->
        [none] De registros de este tamaño no se puede esperar que muestren ni un daño muy grande
       *[ratio] Registros de este tamaño muestran un daño en 8 de 10 temporadas solo donde la tasa es unas { $ratio ->
            [21] más de 20
           *[other] { PLAIN($ratio) }
        } veces mayor
    }{ $why ->
        [levels] , porque las tandas afectadas y las otras están en incubadoras o años distintos
        [few_exposed] , porque se afectaron muy pocas tandas
        [few_deaths] , porque murieron muy pocos embriones
        [few_batches] , porque hay muy pocas tandas
       *[none] { "" }
    }.
relate_excess = Los tramos afectados tuvieron { EGGS($observed) } muertos; sin episodio habrían tenido probablemente { EGGS($expected) }: { EGGS($excess) } más (intervalo del 95 % de { EGGS($excess_low) } a { EGGS($excess_high) }; bajo cero quiere decir menos), o unos { EGGS($chicks_lost) } pollitos perdidos al final ({ EGGS($chicks_low) } a { EGGS($chicks_high) }).

## What went with it

relate_one_sided = Todas las tandas afectadas comparten esto, y ninguna otra: { WORD($factor, kind: "factor") } ({ LIST($hit) }). Esto compara eso, y no puede decir qué hizo la temperatura.
relate_nearly = Casi todas las tandas de estos fueron afectadas y las otras no: { WORD($factor, kind: "factor") } ({ LIST($hit) }); muy pocas se pueden comparar dentro.
relate_exact = Las tandas afectadas están todas de un lado ({ WORDS($hit, kind: "side") }) en esto: { WORD($factor, kind: "factor") }. Lo que cambió con ello no se puede separar de la temperatura.
relate_together = Esto va junto con los episodios ({ WHOLE($explained) } en común): { WORD($factor, kind: "factor") }; parte de una diferencia puede venir de ello.
relate_in_part = Esto va en parte junto con los episodios ({ WHOLE($explained) } en común): { WORD($factor, kind: "factor") }; parte de una diferencia puede venir de ello.
side_more = más tarde, más o más viejo
side_fewer = más pronto, menos o más joven
factor_incubator = la incubadora
factor_species = la especie
factor_flock = el lote de reproductores
factor_season = la temporada
factor_keeper = el criador
factor_stored_days = días de almacenaje
factor_flock_age_weeks = edad del lote
factor_start = momento de la temporada
relate_allowed = Se tuvo en cuenta: { WORDS($factors, kind: "factor") }.
relate_not_allowed = Muy pocos registros para tener en cuenta: { WORDS($factors, kind: "factor") }.
relate_left_out = { $windows ->
        [one] Un tramo se deja
       *[other] { $windows } tramos se dejan
    } fuera: { $why ->
        [not_counted] ahí no se contaron los vivos o los muertos.
        [twice] el mismo tramo está dos veces.
        [no_length] no se conoce su duración.
        [too_many_dead] murieron más de los que vivían al empezar.
       *[no_eggs] ningún huevo vivía al empezar.
    }

## The question as it was asked, and its limits

relate_asked = Preguntado antes de mirar: ¿perdieron más embriones que los otros los tramos entre dos ovoscopias en que los huevos tuvieron demasiado calor o frío?
relate_one_exposed = Solo una tanda fue afectada, así que no hay prueba del episodio; mire esa tanda por sí sola y compárela con las otras.
relate_few_batches = Con { $batches ->
        [one] una tanda
       *[other] { $batches } tandas
    } esto es una descripción, no una prueba.
relate_few_deaths = Con { EGGS($deaths) ->
        [one] una muerte
       *[other] { EGGS($deaths) } muertes
    } esto es una descripción, no una prueba.
relate_unlogged = De { $unknown } de { $windows } tramos se registró muy poco para saber la dosis: no cuentan ni como afectados ni como librados.
relate_after = Mirado al lado de la pregunta: { EGGS($died) } embriones murieron en el tramo justo después de uno con episodio ({ LIST($where) }{ $others ->
        [0] { "" }
       *[other] , y { $others } más
    }), donde tandas sin él perderían { TENTH($expected) }; tantos o más vienen por suerte en { $many ->
        [0] menos de 1
       *[other] { $many }
    } de { PLAIN($out_of) } casos. Embriones muertos poco antes de una ovoscopia pueden pasar ahí por vivos y hallarse en la siguiente. La pregunta hecha los cuenta como pérdidas sin episodio y puede pasar por alto tal daño; el veredicto queda con la pregunta hecha.
relate_after_one = { EGGS($died) } de { EGGS($at_risk) } en { $batch }
relate_later = Mirado al lado de la pregunta: las tandas afectadas en el tramo antes de este momento perdieron más desde ahí hasta el final, aunque no en ese tramo solo: { WORDS($looks, kind: "stage") }. Las muertes pueden seguir tarde a un episodio.
relate_not_the_cause = Pérdidas que van con un episodio concuerdan con un daño por él. Que fuera la causa, y no algo que vino con él, registros de esta clase no pueden probarlo.
