# Por qué se rechaza una pregunta.

no_level = No hay nivel «{ $level }»; se conocen { LIST($known) }.
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
no_such_dose = No hay dosis «{ $dose }»; elija una de { LIST($known) }.
no_such_unit = Las temperaturas se muestran en C o F, no en «{ $unit }».
