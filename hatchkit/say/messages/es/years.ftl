# Varias temporadas leídas juntas, y lo que dicen los años.

season_unreadable =
    .found = no se pudo leer { $place }: { $why }
    .done = Las otras temporadas se leen sin ella.
    .mend = Corrija esa temporada como dice la línea, o mueva su carpeta.
no_season_readable = No se pudo leer ninguna de las temporadas de { $folder }. La primera: { $why }
keepers_by_folder =
    .found = las carpetas se toman por criadores: { $keepers }
    .done = Sus incubadoras, corrales y tandas se mantienen aparte.
    .mend = Si todas son suyas, escriba keeper = "su nombre" en cada season.toml.
zones_differ =
    .found = las temporadas están en husos horarios distintos: { $zones }
    .done = Las horas son las de { $zone }; cada temporada se leyó con el suyo.
species_differ =
    .found = las cifras de { $species } difieren entre los archivos season.toml de las temporadas
    .done = Las de la última temporada valen para todas.
    .mend = Escriba la misma sección [species] en cada uno, o dé otro nombre al ave.
probe_replaced =
    .found = la incubadora { $machine } la registraba { $before } en { $earlier } y { $now } en { $later }
    .done = Se toma por una sonda cambiada o renombrada; un salto de temperatura entre los dos años puede ser de la sonda.
    .mend = Compruebe la sonda nueva junto a la vieja o a un termómetro clínico, y escriba probe_offset_c para ella.
offset_changed =
    .found = la corrección de la sonda de la incubadora { $machine } es { $before } en { $earlier } y { $now } en { $later }
    .done = Cada año se corrige con la suya.
air_changed =
    .found = la incubadora { $machine } es { $before } en { $earlier } y { $now } en { $later }
    .done = Los huevos de cada año se calculan con la suya.
change_unread =
    .found = el cambio { $number } no tiene día o no tiene palabras
    .done = No se usa.
    .mend = Escriba el día y qué se cambió.
changes_no_heading =
    .found = la lista de cambios no tiene encabezados para el día y para lo cambiado
    .done = No se usa.
    .mend = Escriba Fecha y Qué sobre sus columnas.
question_machine_renamed = En { $file } hay una incubadora «{ $heading }» que antes no estaba, y falta una del año anterior. ¿Es la misma con otro nombre? Tomado por ahora: { $choice }.
value_another_machine = otra incubadora
