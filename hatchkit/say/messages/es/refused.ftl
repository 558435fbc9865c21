# Por qué se rechaza una pregunta.

no_column = Las tandas no tienen columna «{ $column }» por la que repartirlas; hay, por ejemplo, { LIST($there) }.
one_column = Las tandas se reparten por una columna cada vez: by='{ $column }', no by={ $given }. Para dos a la vez, añada una columna que contenga ambas. Hay, por ejemplo, { LIST($there) }.
clears_out_of_order = Los claros abiertos deben estar entre 1 y los claros, estos ser como mucho los huevos puestos, y los muertos entre ellos como mucho los abiertos.
no_hatch_to_chart = Aún no hay tanda terminada que trazar.
no_such_stage = No hay etapa «{ $stage }»; hay { LIST($known) }.
stage_not_counted = Ninguna tanda terminada tiene un recuento completo ({ WORD($stage, kind: "loss") }): nada que trazar.
no_eggs_to_chart = Ninguna tanda terminada tiene huevos que trazar ({ WORD($species, kind: "species") }).
no_interval_method = No hay método de intervalo «{ $method }»; se conocen { LIST($known) }.
count_beyond_total = Un recuento debe estar entre 0 y el total del que se toma.
share_without_eggs = Una proporción necesita al menos una tanda con huevos.
own_level_lacks = Un nivel propio necesita species, stage y una proporción share entre 0 y 1, no { $given }.
own_level_of = El denominador de un nivel propio es set, fertile o transferred, no { $given }.
too_few_stretches = Una forma en dos fases necesita muertes en al menos 5 tramos distintos; con menos ovoscopias los registros solo dan la estimación simple.
ages_uneven = after_day, by_day y eggs deben tener la misma longitud.
ages_without_egg = Las edades de muerte necesitan al menos un huevo.
ages_backward = Cada intervalo debe acabar después de empezar: by_day mayor que after_day.
no_limits = No hay límites de etapas «{ $name }»; se conocen { LIST($known) }.
limits_with_holes = Los límites propios de etapas deben empezar el día 0 y seguirse sin huecos, por ejemplo early 0 a 7, mid 7 a 14, late 14 a 21.
no_such_split = Las etapas son por development o candling, no «{ $given }».
no_such_air = El aire puede ser { LIST($known) }; «{ $air }» no se conoce.
readings_in_disorder = Las lecturas deben estar en orden de tiempo antes de calcular la temperatura del huevo.
no_such_unit = Las temperaturas se muestran en C o F, no en «{ $unit }».
not_one_of = { $name } «{ $given }» no se conoce; se conocen { LIST($known) }.
whole_number = { $name } tiene que ser un número entero desde { PLAIN($least) }, no { $given }.
end_not_known = No se sabe cómo terminó la tanda «{ $batch }», así que no se puede sopesar ninguna causa.
set_time_none = «{ $given }» no es una hora para cargar huevos; escríbala como 2026-04-03 18:00, según su reloj.
set_time_misread = «{ $given }» { $why ->
        [year_odd] tiene un año que no puede ser
        [year_none] no tiene año
       *[no_date] no es una fecha
    }; escríbala como 2026-04-03 18:00, según su reloj.
set_time_two_ways = «{ $given }» puede ser el { DATE($one) } o el { DATE($other) }: escriba { $write_one } o { $write_other }, o ponga [sheets] day_first = true (o false) en season.toml.
set_time_skipped = { HOUR($time) } del { DAY($time) } no existe en { $zone }: entonces se adelantan los relojes. Dé una hora que el reloj muestre.
set_time_twice = { HOUR($time) } del { DAY($time) } se da dos veces en { $zone }: esa noche se atrasan los relojes. Dé una hora que se dé una sola vez.
plan_no_species = La temporada no tiene tandas; diga para qué especie es el plan (species=...).
plan_sure = sure es una probabilidad entre 0 y 1 (por ejemplo 0.9), no { $given }.
no_end_on_record = De ninguna tanda consta el final; no se puede decir qué perdió la temporada.
no_batch_yet = En esta temporada no hay aún ninguna tanda, así que no hay nacimiento que examinar.
no_end_to_look_at = De ninguna tanda de esta temporada consta el final: nombre la tanda que quiere ver.
not_an_answer = { $path } no es un archivo de respuesta escrito por hatchkit ({ $why }).
folder_holds_other = { $path } contiene otra cosa, que se reemplazaría: nombre una carpeta nueva.
folder_not_empty = { $path } no está vacía; nombre una carpeta nueva.
answer_in_season = La respuesta no debe estar en la carpeta de la temporada; nombre un archivo en otro lugar.
planted_often = { $cause } no se puede poner { $times } veces; estas sí: { LIST($known) }.
lesson_batches = Una temporada de clase necesita al menos dos tandas: una por la que se pregunta y otra para comparar.
no_exercise = No hay ejercicio «{ $name }»; la primera palabra tras check( debe quedar como estaba.
no_folder_for = No hay carpeta { $folder } donde escribir { $name }; créela primero.
marks_in_folder = { $path } es una carpeta; nombre un archivo para las notas.
not_marks = { $path } existe y no es un archivo de notas; no se sobrescribe. Nombre un archivo nuevo.
no_answer_book = { $folder } no contiene solucionario ({ $book }); no es la carpeta de una clase.
answer_book_unread = { $path } no se puede leer; vuelva a poner el archivo que escribió hatchkit.
answer_book_lacks = { $path } no tiene columna { LIST($columns) }: otro programa lo guardó de nuevo, o lo escribió un hatchkit anterior. Vuelva a poner el archivo que escribió hatchkit, o haga la clase de nuevo.
not_there = { $path } no existe.
no_answer_sheet = No hay hoja de respuestas en { $path }; es una tabla con los encabezados { LIST($headings) }.{ COUNT($told) ->
        [0] { "" }
       *[other] { " " }Se encontró: { LIST($told) }
    }
