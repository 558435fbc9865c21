# El plan de la próxima tanda: cuántos huevos, en qué se apoya, cuándo, qué cambiar; su hoja para colgar.

plan_title = Plan: { $name }, puesta el { MINUTE($set) }
plan_chance = { $times ->
        [none] más de 99 veces en 100
       *[known] { $times } veces en { $of }
    }
plan_eggs = Ponga { EGGS($eggs) } huevos ({ $name }) para tener { $chance } al menos { EGGS($chicks) } { EGGS($chicks) ->
        [one] pollito sano
       *[other] pollitos sanos
    }; cuente con unos { EGGS($middle) } ({ EGGS($low) } a { EGGS($high) } en 8 de 10 tandas).
plan_too_many = Al menos { EGGS($chicks) } pollitos { $chance } no se pueden planear en una sola tanda: con las tasas vistas y publicadas harían falta más de { $most } huevos, o tasas que varíen menos. Planee varias tandas, o menos pollitos.
plan_rests_none = Esto no se apoya en ninguna tanda propia de esta especie, solo en un nivel publicado de { WHOLE($level) } de los huevos puestos: el nacimiento habitual se estima en { WHOLE($mean) } ({ WHOLE($low) } a { WHOLE($high) }), y las tandas pueden diferir cuanto se cree habitual.
plan_rests = Esto se apoya en { $batches ->
        [one] 1 tanda propia
       *[other] { $batches } tandas propias
    } ({ PLAIN($hatched) } pollitos sanos de { PLAIN($set) } huevos) y en un nivel publicado de { WHOLE($level) } de los huevos puestos. Juntos estiman el nacimiento habitual en { WHOLE($mean) } ({ WHOLE($low) } a { WHOLE($high) }), y dejan que las tandas difieran { $batches ->
        [one] cuanto se cree habitual, pues una sola no muestra diferencias
       *[other] tanto como las suyas
    }.
plan_few = Con tan pocas tandas, el nivel publicado pesa mucho.
plan_left_out = { COUNT($left) ->
        [one] La tanda { LIST($left) } se deja
       *[other] Las tandas { LIST($left) } se dejan
    } fuera: los registros se contradicen.
plan_driver = Una tanda manda en este número: sin { $batch } ({ PLAIN($hatched) } pollitos sanos de { PLAIN($set) } huevos) serían { PLAIN($without) } huevos. Si sabe que su causa está arreglada, planee entre los dos.
plan_when = Huevos dentro el { DATE($set) } de { PLAIN($year) } a las { HOUR($set) }{ COUNT($notes) ->
        [0] { "" }
       *[other] { " " }({ $notes })
    }, para nacer del { DATE($first) } al { DATE($last) }.
plan_note_no_hour = no se dio hora, así que se toma el mediodía, como en las tablas
plan_note_passed = un momento que ya pasó
plan_note_collect = la primera tarde con { PLAIN($days) } días para recoger los huevos
plan_note_free = el día después de salir la última tanda
plan_changes_none = { $batches ->
        [0] No hay ninguna tanda anotada de esta especie, así que nada se puede decir de sus ajustes.
       *[other] Nada en los registros de esta temporada pide otro ajuste.
    }
plan_changes = { $count ->
        [one] Primer cambio: { $first }.
       *[other] { $count } cosas que cambiar; la primera: { $first }.
    }

paper_step = Qué
paper_write = Anotar
paper_change = Cambiar esta vez
paper_moment = { WEEKDAY($time) }, { MINUTE($time) }

step_collect = Empezar a recoger huevos para esta tanda
step_machine_on = Hacer funcionar la incubadora vacía, comprobar el termómetro junto a otro
step_warm_up = Llevar los huevos a la temperatura del cuarto
step_set = Poner los huevos, pesarlos, numerarlos
step_candle1 = Ovoscopia (primera vez), pesar, anotar claros y muertos
step_candle2 = Ovoscopia (segunda vez), pesar, anotar claros y muertos
step_care_day = Desde hoy se trata al embrión como uno que puede sentir
step_transfer = Pesar, mirar al trasluz, parar el volteo, trasladar
step_first_hatch = Los primeros pollitos pueden venir desde ahora
step_last_hatch = Los últimos pollitos deberían estar fuera
step_take_off = Acabar el nacimiento cuando los pollitos estén secos
step_open_unhatched = Mirar al trasluz, luego abrir los huevos sin nacer que no huelan, ni hagan espuma, ni rezumen, y anotar lo hallado

write_set = huevos dentro, peso
write_candle1 = claros / muertos, peso
write_candle2 = claros / muertos, peso
write_transfer = claros / muertos / trasladados, peso
write_first_hatch = primer pollito, hora
write_last_hatch = último pollito, hora
write_take_off = pollitos / descartados / picados muertos
write_open_unhatched = infértiles / tempranos / medios / tardíos / mal colocados
write_machine_on = sonda - segundo termómetro

changed_cause =
    .what = { WORD($cause, kind: "cause") }{ $machine ->
            [none] { "" }
           *[named] { " " }(incubadora { $machine })
        }
    .to = { WORD($cause, kind: "do") }{ $target ->
            [none] { "" }
           *[other] { " " }{ $target }
        }
    .why = Se le atribuyen unos { EGGS($eggs) } huevos de { LIST($where, most: 5) }.
    .now = { $shown ->
            [none] el patrón de las pérdidas
           *[other] { $shown }
        }
    .how_sure = { $sure ->
            [very] muy probable
            [probable] probable
           *[several] una de varias que encajan
        } ({ SHARE($share) })
changed_no_log =
    .what = Registrar la temperatura
    .to = Un termómetro registrador a la altura de los huevos.
    .why = Sin registro ninguna pérdida se puede comparar con calor o frío.
    .now = ninguna lectura
    .how_sure = seguro: no se guardó nada
changed_probe_off =
    .what = Comprobar la sonda de la incubadora { $machine } (junto a un termómetro clínico cerca de { DEGREES($right) })
    .to = Si la comprobación lo confirma, escribir { $way ->
            [high] -
           *[low] +
        }{ TENTH($off) } como probe_offset_c en season.toml (en °C), y mover el ajuste igual.
    .why = Las horas de nacimiento de { $batches ->
            [one] 1 tanda
           *[other] { $batches } tandas
        } lo señalan.
    .now = marca unos { STEP($off) } { $way ->
            [high] de más; los huevos estaban más fríos de lo que dice
           *[low] de menos; los huevos estaban más calientes de lo que dice
        }
    .how_sure = bastante seguro del sentido, no del tamaño; compruebe antes de cambiar
changed_probe_unchecked =
    .what = Comprobar la sonda de la incubadora { $machine }
    .to = Léala junto a un termómetro clínico cerca de { DEGREES($right) }; en agua con hielo solo si puede mojarse, y lo que se desvía allí no tiene por qué valer en caliente; escriba lo que se desvía en season.toml, línea probe_offset_c.
    .why = Todo lo dicho de la temperatura vale solo en cuanto la sonda diga la verdad.
    .now = ninguna comprobación anotada
    .how_sure = seguro: no consta ninguna comprobación
changed_temperature =
    .what = Ajuste de la incubadora { $machine }
    .to = { DEGREES($wanted) }
    .why = Estuvo { STEP($off) } { $way ->
            [high] por encima
           *[low] por debajo
        } de la cifra de la tabla fuera de episodios.
    .now = { DEGREES($mean) } de media
    .how_sure = seguro del registro; vea la comprobación de la sonda
changed_humidity =
    .what = Humedad hasta el traslado
    .to = { EGGS($to) } % de humedad relativa
    .why = Los huevos iban a perder { SHARE($loss) } hasta el traslado; se quiere { SHARE($low) } a { SHARE($high) }. Llegue en dos tandas si está lejos.
    .now = { EGGS($now) } % de humedad relativa
    .how_sure = por los pesos de { $batches ->
            [one] 1 tanda
           *[other] { $batches } tandas
        }; una sonda de humedad puede desviarse 3 puntos
changed_storage =
    .what = Poner antes tras la puesta
    .to = A lo sumo { EGGS($best) } días.
    .why = { $over } de { $known } tandas esperaron más (la que más, { EGGS($longest) } días). El nacimiento baja y se retrasa con la espera.
    .now = { $over } de { $known } tandas esperaron más de { EGGS($best) } días (la que más, { EGGS($longest) })
    .how_sure = bien sabido; cuánto cuesta a sus huevos, no
changed_candling =
    .what = Ovoscopia hacia el día { EGGS($day) } cuando algo fue mal antes
    .to = Una mirada dos días después de cualquier episodio.
    .why = { $times ->
            [one] Una vez
           *[other] { $times } veces
        } en esta temporada no se pudieron separar las muertes de antes de un episodio de las de después.
    .now = ninguna mirada entre el episodio y la siguiente ovoscopia
    .how_sure = seguro de que lo habría mostrado; no de que habría cambiado el juicio
changed_record =
    .what = Anotar: { WORD($need, kind: "need") }
    .to = Guardarlo en cada tanda.
    .why = Faltó en { $lacking } de las últimas { $asked } tandas, y pesaría mucho para nombrar una causa.
    .now = { $asked ->
            [one] no anotado en su única tanda
           *[other] falta en { $lacking } de las últimas { $asked } tandas
        }
    .how_sure = seguro: no estaba

need_temperature_from_setting_to_take-off__keep_the_logger_running_ = temperatura desde la puesta hasta el final (dejar el registrador en marcha)
need_hours_of_the_first_and_the_last_chick = horas del primer y del último pollito
need_weights_at_setting_and_at_transfer = pesos al poner y en el traslado
need_humidity_while_set__with_the_temperature_ = humedad durante la incubación (con la temperatura)
need_humidity_while_hatching__with_the_temperature_ = humedad en el nacimiento (con la temperatura)
need_days_that_the_eggs_were_kept = días que se guardaron los huevos
need_age_of_the_laying_flock = edad de las gallinas ponedoras
need_row_and_column_of_each_egg_on_the_tray = fila y columna de cada huevo en la bandeja
need_how_many_embryos_among_the_opened_late_dead_lay_wrongly = cuántos de los muertos tardíos abiertos estaban mal colocados
need_rotten_eggs = huevos podridos
need_cracked_eggs = huevos agrietados
need_whether_the_eggs_came_by_post = si los huevos vinieron por correo
need_clears_opened__no_germ__or_died_early = claros abiertos: sin germen, o muertos pronto

target_temperature = Mantenga { DEGREES($wanted) }{ $machine ->
        [none] { "" }
       *[named] { " " }en la incubadora { $machine }
    }.
target_humidity = Mantenga { EGGS($to) } % de humedad relativa hasta el traslado.
target_humidity_range = Mantenga { EGGS($low) } a { EGGS($high) } % de humedad relativa{ $where ->
        [setter] { " " }hasta el traslado
       *[hatcher] { " " }en el nacimiento
    }.
target_storage = A lo sumo { EGGS($best) } días.
step_cooling = { $species ->
        [muscovy] Enfriar los huevos media hora y rociarlos con agua a { DEGREES($water_c) }, tres veces por semana hasta el traslado
        [duck] Rociar un poco los huevos, si lo hace; en el ánade real más que duplicó el nacimiento, en otros patos es costumbre
        [goose] Enfriar los huevos unos minutos y rociarlos, si lo hace: costumbre, ningún ensayo que hayamos leído
        [mulard] Enfriar y rociar como en el pato criollo, si lo hace: costumbre, ningún ensayo que hayamos leído
       *[swan] Enfriar y rociar como en los gansos, si lo hace: costumbre, ningún ensayo que hayamos leído
    }
why_cooling = Hasta el traslado; no en los últimos tres días.
why_collect = Nacen mejor los huevos guardados a lo sumo { EGGS($best) } días; más allá de { EGGS($most) } días espere poco. Guárdelos a 10-18 °C y un 70 % de humedad, y voltéelos a diario.
why_machine_on = Un día muestra la variación de la noche; dos o tres horas son lo mínimo.
why_warm_up = Despacio, para que no suden.
why_set = La hora de la carga es la hora 0 de todo lo que sigue. Los huevos tardan de 6 a 8 h en calentarse: no toque el ajuste en dos días.
why_candle1 = Saque y abra los claros y los muertos, y anote hasta dónde llegaron.
why_care_day = Mire al trasluz antes de abrir un huevo; se toma el día publicado más estricto.
why_transfer = Suba la humedad a { EGGS($low) }-{ EGGS($high) } % y deje la tapa cerrada hasta que acabe el nacimiento.
why_first_hatch = Media ventana de nacimiento de { EGGS($window_h) } h y { EGGS($doubt_h) } h de duda antes de la mitad, puesta aquí en los días de costumbre. El reloj de nacimiento del balance la pone { EGGS($earlier_h) } h antes, pues la mayoría de los pollitos llegan antes del día de costumbre; la duda cubre ambos.
why_last_hatch = Media ventana de nacimiento y la misma duda después de la mitad.{ $longest ->
        [none] { "" }
       *[other] { " " }Según otros textos o razas tarda hasta { TENTH($longest) } días.
    }
why_take_off = Unas { EGGS($drying_h) } h para secarse; la yema sostiene al pollito dos días.
why_open_unhatched = Los pollitos tardíos han tenido dos días más. Vea la guía para abrir huevos y sus avisos.
why_candle2 = Saque y abra los claros y los muertos, y anote hasta dónde llegaron.
