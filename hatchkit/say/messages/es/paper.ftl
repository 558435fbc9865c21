# Papel: la hoja de ovoscopia, las explicaciones del libro en blanco, los comentarios de season.toml.

paper_candling = Hoja de ovoscopia
paper_head_batch = Tanda
paper_head_kind = Aves
paper_head_machine = Incubadora
paper_head_eggs = Huevos
paper_head_set = Puestos el
paper_look = Momento
paper_day = Día
paper_when = Fecha
paper_clear = Claros
paper_dead = Muertos
paper_other = Agrietados, podridos, otros
paper_left = Vuelven dentro
paper_notes = Notas
paper_date = { DAY($day) }
paper_ticks = Visto en huevos sin nacer y en pollitos: marque
paper_explain_clear = Claro: ninguna señal de germen. Muerto: un anillo de sangre, una masa oscura que no se mueve, vasos pálidos.
paper_explain_blank = Escriba 0 donde miró y no halló nada; deje en blanco lo que no miró.
paper_explain_copy = Copie las líneas en batches.xlsx: las dos primeras ovoscopias y el traslado en la tabla de tandas, las demás en la hoja de ovoscopias, las señales en la columna de señales.
paper_usual = Días habituales de las dos ovoscopias, el traslado y el nacimiento: { LIST($birds) }.
paper_bird = { $bird } { LIST($days) }

start_in_the_way = { $path } está en medio; hatchkit no escribe encima.
start_unwritable = No se puede escribir en { $folder } ({ $why }); elija otra carpeta.

sheet_fill = Cómo rellenar
fill_title = Cómo rellenar este libro (hatchkit)
fill_how = Deje en blanco lo que no se contó; escriba 0 si se contó y no había ninguno. Escriba la hora con cada fecha si la sabe: 2026-03-05 18:30.
fill_folded = Lo que se usa poco está plegado: los pequeños signos más sobre las columnas lo abren. Puede quitar o añadir columnas.
fill_head_sheet = Hoja
fill_head_column = Columna
fill_head_what = Qué se escribe
fill_head_unit = Unidad
fill_head_one_of = A elegir
fill_batches = Una fila por tanda: lo que entró, lo que mostró cada ovoscopia, lo que salió.
fill_eggs = Una fila por huevo, si numera sus huevos. Opcional.
fill_weights = Una fila por pesada, de un huevo o de toda una bandeja. Opcional.
fill_candlings = Una fila por ovoscopia, si hace más de dos. Opcional.
fill_choose = Elija uno de la lista.
fill_number = Un número desde 0, o en blanco si no se contó.
unit_time = día y hora, por su reloj
unit_eggs = huevos
unit_days = días
unit_weeks = semanas
unit_g = gramos

toml_head = Lo que hatchkit no puede adivinar de esta temporada. Quite el # delante de una línea para usarla.
toml_title = Mi temporada
toml_language = El idioma de hatchkit: en, de, fr o es. Sin él, es el de sus tablas.
toml_timezone = El huso de su reloj; lecturas y fechas se llevan con él a una misma hora.
toml_default = Si todos los huevos son de una clase, o están todos en una incubadora, esas columnas pueden quedar en blanco.
    Las especies son: { $species }.
toml_incubators = Una sección por incubadora. Ponga sus registros en la carpeta sensors.
toml_files = qué registros son suyos
toml_air = "fan" (aire movido por ventilador) o "still" (aire quieto)
toml_set_point = a qué está puesto el termostato, en °C
toml_offset = se suma a las lecturas: lo que la sonda marca de más, con un menos
toml_altitude = altura sobre el mar, para la humedad
toml_sensors = Registros: solo si hatchkit lo pregunta.
toml_unit = "C", "F" o "K"
toml_day_first = 04/05/2026 es el 4 de mayo
toml_sheets = Tablas: lo mismo para fechas escritas como texto.
toml_headers = Sus propios encabezados, si no se reconocen: "su encabezado" = "columna".
toml_heading = Huevos dentro
toml_species = Cifras propias de un ave, a partir de una conocida.
