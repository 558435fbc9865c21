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
    .to = { WORD($cause, kind: "do") }
    .why = Se le atribuyen unos { EGGS($eggs) } huevos de { LIST($where, most: 5) } ({ SHARE($share) } del peso).
changed_no_log =
    .what = Registrar la temperatura
    .to = Un termómetro registrador a la altura de los huevos.
    .why = Sin registro ninguna pérdida se puede comparar con calor o frío.
changed_probe_off =
    .what = Comprobar la sonda de la incubadora { $machine } (agua con hielo, o termómetro clínico cerca de { DEGREES($right) })
    .to = Si la comprobación lo confirma, escribir { $way ->
            [high] -
           *[low] +
        }{ TENTH($off) } como probe_offset_c en season.toml (en °C), y mover el ajuste igual.
    .why = Las horas de nacimiento de { $batches ->
            [one] 1 tanda
           *[other] { $batches } tandas
        } lo señalan.
changed_probe_unchecked =
    .what = Comprobar la sonda de la incubadora { $machine }
    .to = Léala en agua con hielo o junto a un termómetro clínico; escriba lo que se desvía en season.toml, línea probe_offset_c.
    .why = Todo lo dicho de la temperatura vale solo en cuanto la sonda diga la verdad.
changed_temperature =
    .what = Ajuste de la incubadora { $machine }
    .to = { DEGREES($wanted) }
    .why = Estuvo { STEP($off) } { $way ->
            [high] por encima
           *[low] por debajo
        } de la cifra de la tabla fuera de episodios ({ DEGREES($mean) } de media).
changed_humidity =
    .what = Humedad hasta el traslado
    .to = { EGGS($to) } % de humedad relativa
    .why = Ahora { EGGS($now) } %. Los huevos iban a perder { SHARE($loss) } hasta el traslado; se quiere { SHARE($low) } a { SHARE($high) }. Llegue en dos tandas si está lejos.
changed_storage =
    .what = Poner antes tras la puesta
    .to = A lo sumo { EGGS($best) } días.
    .why = { $over } de { $known } tandas esperaron más (la que más, { EGGS($longest) } días). El nacimiento baja y se retrasa con la espera.
changed_candling =
    .what = Ovoscopia hacia el día { EGGS($day) } cuando algo fue mal antes
    .to = Una mirada dos días después de cualquier episodio.
    .why = { $times ->
            [one] Una vez
           *[other] { $times } veces
        } en esta temporada no se pudieron separar las muertes de antes de un episodio de las de después.
changed_record =
    .what = Anotar: { WORD($need, kind: "need") }
    .to = Guardarlo en cada tanda.
    .why = Faltó en { $lacking } de las últimas { $asked } tandas, y pesaría mucho para nombrar una causa.

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
