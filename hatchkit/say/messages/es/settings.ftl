# Lo que no se puede usar de season.toml.

set_unreadable =
    .found = el archivo no se puede leer: { $why }
    .done = La temporada se lee sin sus ajustes.
    .fix = Corrija esa línea; el texto necesita comillas, como en timezone = "Europe/Rome".
set_nested =
    .found = el archivo contiene corchetes dentro de corchetes sin fin
    .done = La temporada se lee sin sus ajustes.
    .fix = Escríbalo de nuevo.
set_not_opened =
    .found = el archivo no se puede abrir ({ $why })
    .done = La temporada se lee sin sus ajustes.
    .fix = Ciérrelo en otros programas.
set_no_zone =
    .found = no se da huso horario
    .done = Su reloj se toma tal cual, sin horario de verano.
    .fix = Escriba timezone = "Europe/Rome" (su propio huso) en season.toml.
set_unknown_zone =
    .found = { $zone } no es un huso horario conocido
    .done = Su reloj se toma tal cual, sin horario de verano.
    .fix = { $near ->
        [none] Escríbalo como "Europe/Rome".
       *[some] ¿Quiso decir "{ $near }"?
    }
set_species_no_section =
    .found = species no es una sección
    .done = No se usa.
    .fix = Escriba [species.{ $name ->
        [none] my_bird
       *[given] { $name }
    }], sus cifras debajo.
set_based_on =
    .found = [species.{ $name }] { $based_on ->
        [none] no dice en qué se basa (based_on)
       *[given] se basa en { $based_on }, que no se conoce
    }
    .done = No se usa.
    .fix = Escriba based_on = "chicken" (conocidos: { LIST($known) }).
set_unknown_figure =
    .found = { $figure } no es una cifra que hatchkit conozca
    .done = No se usa.
    .fix = { $near ->
        [none] Se conocen: { LIST($known) }.
       *[some] ¿Quiso decir { $near }?
    }
set_figure_no_number =
    .found = { $figure } = { $value } no es un número
    .done = Se usa la cifra de hatchkit.
    .fix = Escriba un número simple.
set_figure_far =
    .found = { $figure } = { $value } está lejos de la de cualquier ave que hatchkit conozca
    .done = Se usa la cifra de hatchkit.
    .fix = Corrija la cifra.
set_days_disorder =
    .found = [species.{ $name }]: ovoscopias, traslado y nacimiento no se siguen
    .done = Se usan las cifras de hatchkit.
    .fix = Corrija los días; cada uno debe venir tras el anterior.
set_unknown =
    .found = { $where } no es un ajuste que hatchkit conozca
    .done = No se usa.
    .fix = { $near ->
        [none] { "" }
       *[some] ¿Quiso decir { $near }?
    }
set_no_section =
    .found = { $where } = { $value } no es una sección
    .done = No se usa.
    .fix = Escríbalo como sección: [{ $where }]
set_no_list =
    .found = { $where } no es una lista de entradas
    .done = No se usa.
    .fix = Escriba cada una bajo su propio [[{ $where }]].
set_lacks =
    .found = { $list ->
        [changes] un cambio necesita date y what
       *[norms] un nivel propio necesita species, stage y share
    }
    .done = No se usa.
    .fix = Añada lo que falta.
set_unknown_column =
    .found = { $taken } no es una columna de hatchkit
    .done = No se usa.
    .fix = { $near ->
        [none] Las columnas están en el README.
       *[some] ¿Quiso decir "{ $heading }" = "{ $near }"?
    }
set_wrong =
    .found = { $key } = { $value } { $wrong ->
        [text] no es un texto entre comillas
        [yes_no] no es ni true ni false
        [choice] no es ninguno de { LIST($choices) }
        [zone] no es un huso horario conocido
        [names] no es una lista de nombres
        [range] está fuera de { PLAIN($low) } a { PLAIN($high) }
       *[number] no es un número
    }
    .done = No se usa.
    .fix = Escríbalo como { $example }
