# Varias temporadas leídas juntas, y lo que dicen los años.

season_unreadable =
    .found = no se pudo leer { $place }: { $why }
    .done = Las otras temporadas se leen sin ella.
    .fix = Corrija esa temporada como dice la línea, o mueva su carpeta.
no_season_readable = No se pudo leer ninguna de las temporadas de { $folder }. La primera: { $why }
keepers_by_folder =
    .found = las carpetas se toman por criadores: { $keepers }
    .done = Sus incubadoras, corrales y tandas se mantienen aparte.
    .fix = Si todas son suyas, escriba keeper = "su nombre" en cada season.toml.
zones_differ =
    .found = las temporadas están en husos horarios distintos: { $zones }
    .done = Las horas son las de { $zone }; cada temporada se leyó con el suyo.
species_differ =
    .found = las cifras de { $species } difieren entre los archivos season.toml de las temporadas
    .done = Las de la última temporada valen para todas.
    .fix = Escriba la misma sección [species] en cada uno, o dé otro nombre al ave.
probe_replaced =
    .found = la incubadora { $machine } la registraba { $before } en { $earlier } y { $now } en { $later }
    .done = Se toma por una sonda cambiada o renombrada; un salto de temperatura entre los dos años puede ser de la sonda.
    .fix = Compruebe la sonda nueva junto a la vieja o a un termómetro clínico, y escriba probe_offset_c para ella.
offset_changed =
    .found = la corrección de la sonda de la incubadora { $machine } es { $before } en { $earlier } y { $now } en { $later }
    .done = Cada año se corrige con la suya.
air_changed =
    .found = la incubadora { $machine } es { $before } en { $earlier } y { $now } en { $later }
    .done = Los huevos de cada año se calculan con la suya.
change_unread =
    .found = el cambio { $number } no tiene día o no tiene palabras
    .done = No se usa.
    .fix = Escriba el día y qué se cambió.
changes_no_heading =
    .found = la lista de cambios no tiene encabezados para el día y para lo cambiado
    .done = No se usa.
    .fix = Escriba Fecha y Qué sobre sus columnas.
question_machine_renamed = En { $file } hay una incubadora «{ $heading }» que antes no estaba, y falta una del año anterior. ¿Es la misma con otro nombre? Tomado por ahora: { $choice }.
value_another_machine = otra incubadora

years_one = { $name } contiene una temporada de un solo criador; para ver años lado a lado, indique una carpeta que contenga una carpeta por año.

## La página de los años

page_years_title = { $name }: sus años
page_years_file = { $name }-anos
page_years_counts = { EGGS($set) } huevos a incubar en { $batches } tandas, { COUNT($years) ->
        [one] un año
       *[other] { COUNT($years) } años ({ LIST($years) })
    }{ COUNT($keepers) ->
        [0] { "." }
        [one] { "." }
       *[other] , { COUNT($keepers) } criadores.
    }
outcome_hatch = nacimientos de los huevos puestos
outcome_fertility = fertilidad
outcome_hatch_of_fertile = nacimientos de los fértiles
outcome_early = muertos tempranos
outcome_mid = muertos a media incubación
outcome_late = muertos tardíos
drawn_outcome_hatch = nacimientos de los puestos
drawn_outcome_fertility = fértiles (no claros)
drawn_outcome_hatch_of_fertile = nacimientos de los fértiles
drawn_share_axis = proporción, %
drawn_drawn_to_all = acercada al conjunto
drawn_as_counted = tal como se contó
drawn_year_before = el año anterior
drawn_by_itself = se espera sin él (95 %)
drawn_since_change = desde el cambio

ask_years_hatch = ¿Cómo fueron los nacimientos de cada año?
years_hatch_told = { LIST($told) } de los huevos puestos. Tal como se contó, { $highest } es el más alto y { $lowest } el más bajo; { $luck ->
        [beyond] la suerte sola difícilmente los separaría tanto.
        [within] la suerte sola puede separarlos tanto, así que este orden puede ser suerte.
       *[untold] no se puede decir si es más que por suerte.
    }
years_hatch_one = { LIST($told) } de los huevos puestos.
years_hatch_none = No se puede decir: de ninguna tanda se conocen a la vez los huevos puestos y los pollitos.
years_one_year = { $year }: { SHARE($share) } ({ SHARE($low) } a { SHARE($high) })
years_interval = Los intervalos cuentan con que las tandas difieren, no solo los huevos sueltos; dos años cuyos intervalos se solapan pueden aun así ser iguales.
years_do_changes = Anote qué cambia y cuándo en una hoja llamada Cambios (Fecha, Qué, Dónde); el año que viene esta página dirá si sirvió.
years_do_changes_kept = Siga anotando qué cambia y cuándo; un cambio a la vez se puede juzgar, dos juntos no se pueden separar.
alt_years = Nacimientos, fertilidad y nacimientos de los fértiles en { $number } años con intervalos{ $ordered ->
        [yes] ; tal como se contó, los nacimientos fueron más altos en { $highest } ({ SHARE($high) }) y más bajos en { $lowest } ({ SHARE($low) }).
       *[no] { "." }
    }
table_years = Cada año
head_season = Año
head_outcome = Qué
head_total = De cuántos huevos
head_share_counted = Proporción tal como se contó
head_share_pooled = Acercada al conjunto
head_group = Grupo
head_changed = Cambiado el
head_change_what = Qué se cambió
head_share_before = Año anterior
head_share_expected = Se espera sin él
head_share_after = Desde entonces
head_verdict = Qué se puede decir

ask_years_differ = ¿Difieren los años más que por suerte?
years_differ_yes = Sí: { LIST($told) }. Se cuenta con { $comparisons } comparaciones.
years_differ_no = No se distingue del azar: en { $comparisons } comparaciones los años no difieren más que tandas repartidas entre ellos por sorteo.
years_differ_untold = No se puede decir: ninguna incubadora con el mismo corral estuvo en dos años.
years_differ_one = { WORD($outcome, kind: "outcome") } ({ SHARE($low) } en { $lowest }, { SHARE($high) } en { $highest })
years_differ_how = Las tandas se repartieron entre los años por sorteo, cada una dentro de su incubadora y su corral, para que un año con más huevos de un corral malo no se llame malo por eso.
table_same_incubator = La misma incubadora en cada año
table_same_pen = El mismo corral en cada año
table_same_month = El mismo mes en cada año

ask_years_helped = ¿Sirvió lo que cambió?
years_helped_none = No se puede decir: no hay cambios anotados.
years_helped_told = De { $number ->
        [one] un cambio
       *[other] { $number } cambios
    }, { $helped ->
        [0] ninguno sirvió claramente
        [one] uno sirvió claramente
       *[other] { $helped } sirvieron claramente
    }{ $hints ->
        [0] { "." }
        [one] ; de uno hay un indicio.
       *[other] ; de { $hints } hay un indicio.
    }
years_regression = Casi siempre se cambia algo después de un año malo, y a un año malo suele seguirle uno mejor, se haga lo que se haga. Por eso la medida no es el año anterior, sino lo que hacen esperar todos los años y las tandas sin el cambio.
change_helped = { DAY($date) }, { $what }: sirvió. En { WORD($outcome, kind: "outcome") }: { SHARE($before) } el año anterior, { SHARE($expected) } esperado sin el cambio ({ SHARE($expected_low) } a { SHARE($expected_high) }), { SHARE($after) } desde entonces.
change_hint = { DAY($date) }, { $what }: un indicio de que sirvió. En { WORD($outcome, kind: "outcome") }: { SHARE($before) } el año anterior, { SHARE($expected) } esperado sin el cambio ({ SHARE($expected_low) } a { SHARE($expected_high) }), { SHARE($after) } desde entonces.
change_not_seen = { DAY($date) }, { $what }: no se ve que sirviera. En { WORD($outcome, kind: "outcome") }: { SHARE($before) } el año anterior, { SHARE($expected) } esperado sin ningún cambio ({ SHARE($expected_low) } a { SHARE($expected_high) }), { SHARE($after) } desde entonces.
change_worse = { DAY($date) }, { $what }: fue peor de lo que se esperaba. En { WORD($outcome, kind: "outcome") }: { SHARE($before) } el año anterior, { SHARE($expected) } esperado ({ SHARE($expected_low) } a { SHARE($expected_high) }), { SHARE($after) } desde entonces.
change_too_few = { DAY($date) }, { $what }: muy pocos huevos desde entonces para decirlo.
change_no_before = { DAY($date) }, { $what }: no hay anotado un año anterior de las mismas tandas.
change_no_after = { DAY($date) }, { $what }: no hay ninguna tanda anotada desde entonces.
change_beside = Una parte de las mismas tandas tuvo por entonces otro cambio, del que este no se puede separar en ellas: { LIST($others) }.
verdict_helped = sirvió
verdict_hint = un indicio
verdict_not_seen = no se ve
verdict_worse = peor de lo esperado
verdict_too_few = muy pocos huevos
verdict_no_before = sin año anterior
verdict_no_after = nada desde entonces
alt_changes = Para cada cambio, la proporción del año anterior, el margen que se espera sin él y la proporción desde entonces; { $helped } de { $number } quedan fuera de ese margen, para mejor.
table_years_changes = Los cambios y lo que siguió

ask_groups_keeper = ¿Los nacimientos de quién destacan?
ask_groups_incubator = ¿Difieren las incubadoras?
ask_groups_pen = ¿Difieren los corrales?
ask_groups_breed = ¿Difieren las razas?
ask_groups_shelf = ¿Difieren los estantes?
ask_groups_stored_days = ¿Importa la edad de los huevos?
ask_groups_month = ¿Importa el mes?
ask_groups_hen = ¿Qué gallinas ponen huevos claros?
ask_groups_cock = ¿Difieren los gallos?
groups_clear = Sí, claramente distintos ({ WORD($outcome, kind: "outcome") }): { LIST($clear_told) }{ $may ->
        [0] { "." }
       *[other] ; quizá distintos: { LIST($may_told) }.
    } { $comparisons ->
        [one] Se comparó un par.
       *[other] Se compararon { $comparisons } pares.
    }
groups_may = Quizá distintos ({ WORD($outcome, kind: "outcome") }): { LIST($may_told) }. { $comparisons ->
        [one] Se comparó un par
       *[other] Se compararon { $comparisons } pares
    }{ $eggs_more ->
        [none] { "." }
       *[other] ; unos { EGGS($eggs_more) } huevos de cada grupo lo dirían.
    }
groups_none = No se puede decir ({ WORD($outcome, kind: "outcome") }): { $groups ->
        [one] ningún grupo difiere
       *[other] entre los { $groups } grupos no hay dos que difieran
    } más que por suerte.{ $eggs_more ->
        [none] { "" }
       *[other] { " " }Unos { EGGS($eggs_more) } huevos de cada grupo mostrarían una diferencia tan grande como la que se ve.
    }
groups_pair = { $better } por encima de { $worse }
group_name = { $by ->
        [hen] gallina { $name }
        [cock] gallo { $name }
        [month] { MONTH($name) }
       *[other] { $name }
    }
groups_lowest = { $lowest_name }: { EGGS($missed) } claros de { EGGS($total) } huevos, { SHARE($share) } fértiles tal como se contó, { SHARE($pooled) } acercados a los demás.
groups_how = Cada grupo se acerca al conjunto, tanto más cuantos menos huevos tiene, para que un grupo pequeño no destaque por pura suerte; las tandas de un mismo nacimiento cuentan como una.
groups_mixed = { LIST($groups) }: no se puede separar de «{ WORD($column, kind: "field") }». Todos los huevos de un grupo así, y ningún otro, tienen ahí el mismo valor.
alt_groups = { $groups } grupos con sus proporciones, acercadas al conjunto y tal como se contaron; el más bajo es { $lowest_name } ({ SHARE($pooled) }).
table_groups = Los grupos

ask_years_warmth = ¿Costaron embriones los golpes de calor y de frío, en todos los años?
years_warmth_clear = Una señal clara, de { $batches } tandas de { $years } años juntos.
years_warmth_some = Alguna señal, de { $batches } tandas de { $years } años juntos.
years_warmth_no = No se puede decir, de { $batches } tandas de { $years } años juntos.

years_unknown_cause = Por qué un año fue bueno o malo: el pienso, el tiempo y la mano del criador no están aquí en ninguna tabla.
years_unknown_choice = Si lo que se cambió fue lo único que cambió.
years_unknown_records = Si todos los años se contaron con el mismo cuidado; un año en que no se buscaron los claros no tiene ninguno.

shown_not_asked = Sus registros no tienen nada con que preguntar esto.
years_nameless = Registros de incubación sin nombres
