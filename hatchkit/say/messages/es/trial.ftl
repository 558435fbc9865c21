# Un ensayo dividido: su plan, y lo que mostró.

trial_arms = Un ensayo compara dos maneras: nombre las dos, con nombres distintos.
trial_outcome = Un ensayo no puede preguntar por { $outcome }; puede preguntar por { LIST($known) }.
trial_difference = No se puede planear una diferencia de { $difference }: dé una proporción de 0.01 a 0.6, por ejemplo 0.1 para diez de cada cien huevos.
trial_eggs = { $eggs } huevos por carga no se pueden dividir: dé 4 o más.
trial_blocks = Los huevos de las gallinas o corrales suman { $sum }, y la carga tiene { $eggs }: haga que coincidan.
trial_block = «{ $text }» no es una gallina ni un corral con sus huevos: escríbalo como "gallina 4=6".
trial_columns = A la hoja le falta: { LIST($names) }. Deje los encabezados como estaban.
trial_folder = { $path } ya contiene algo: indique para el ensayo una carpeta nueva o vacía.
trial_no_plan = No hay plan de ensayo (trial.toml) en { $path }.
trial_bad_plan = No se puede leer el plan { $path }: { $why }.
trial_no_sheet = No hay una hoja con set, egg y result en { $path }.

trial_plan = Ensayo dividido: «{ $usual_way }» contra «{ $new_way }», juzgado por: { WORD($outcome, kind: "outcome") }. { $sets ->
        [one] Una carga
       *[other] { $sets } cargas
    } de { EGGS($eggs) } huevos, la mitad para cada manera, repartidos por sorteo{ $blocks ->
        [0] { "" }
        [1] { "" }
       *[other] { " " }dentro de cada uno de los { $blocks } grupos (gallinas o corrales)
    }.
trial_plan_eggs = Partiendo de { SHARE($usual) }, como es habitual, una diferencia de { SHARE($difference) } pide { EGGS($needed) } huevos por manera; este plan tiene { EGGS($each) } y la mostraría en { TENTH($power) } de 10 ensayos.
trial_plan_short = Es muy poco para contar con ello: más cargas, o una diferencia mayor.
trial_plan_rules = Las dos maneras deben estar en una misma incubadora, o cambiar de incubadora de una carga a otra; quien hace la ovoscopia no debería saber qué huevo es cuál. Escriba para cada huevo hatched (nacido), dead (muerto), clear (claro), pipped (picado) u out (retirado) en la columna Result; deje Arm como está. Lo que cuenta se fijó antes del primer huevo: cuando todas las cargas hayan terminado, ejecute hatchkit trial con la carpeta.

trial_result = { $verdict ->
        [better] «{ $new_way }» fue mejor que «{ $usual_way }»
        [worse] «{ $new_way }» fue peor que «{ $usual_way }»
        [too_few] Hay muy pocos resultados para decir algo
       *[not_told] No se puede ver diferencia entre «{ $new_way }» y «{ $usual_way }»
    }.
trial_counts = { WORD($outcome, kind: "outcome") }: { $new_good } de { $new_eggs } ({ SHARE($new_share) }) con «{ $new_way }», { $usual_good } de { $usual_eggs } ({ SHARE($usual_share) }) con «{ $usual_way }».
trial_size = Carga por carga, la diferencia es de { TENTH($difference) } puntos (intervalo del 95 %: { TENTH($low) } a { TENTH($high) }); una tan grande sale solo por el sorteo en { TENTH($chance) } de 100 repartos.
trial_missed = El plan habría mostrado una diferencia de { SHARE($planned) } en { TENTH($power) } de 10 ensayos; puede haber una menor.
trial_left = Huevos sin resultado: { $missing }; resultados que no se pudieron leer: { $unread }; huevos pasados a la otra manera: { $moved } (cuentan donde los había puesto el sorteo).
trial_plan_file = El plan de un ensayo dividido, hecho antes de poner el primer huevo: hatchkit trial juzga por él.
