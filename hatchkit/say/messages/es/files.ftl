# Archivos y carpetas que no se pueden leer o escribir.

file_refused =
    .found = { $why }
    .done = No se usa nada de este archivo.
    .fix = { $fix ->
        [password] Guárdelo sin contraseña.
        [smaller] Copie la tabla misma a un libro nuevo y guárdelo en la carpeta de la temporada.
        [close] Ciérrelo en el otro programa (o pida permiso para leerlo) y vuelva a empezar.
        [copy] Cópielo de nuevo a la carpeta de la temporada.
       *[anew] Ábralo en su programa de hojas de cálculo, guárdelo de nuevo como .xlsx o .csv, y vuelva a empezar.
    }
book_not_ordinary = no es un archivo corriente
book_in_use = el archivo no se puede abrir: otro programa lo tiene, o usted no puede leerlo
book_unreadable = el archivo no se puede leer ({ $why ->
        [none] el disco se negó
       *[told] { $why }
    })
book_too_large = el archivo tiene { $mb } MB, más de los { $most } MB que abre hatchkit
book_unpacks_too_large = el archivo descomprimido tiene { $mb } MB, más de los { $most } MB que abre hatchkit
book_text_too_large = el archivo tiene { $mb } MB, más de los { $most } MB de una tabla de tandas
book_empty = el archivo está vacío
book_password = el libro está protegido con contraseña
book_password_or_old = el libro está protegido con contraseña, o es un libro antiguo con nombre nuevo
book_damaged = el archivo está dañado o no es un libro
book_sheet_damaged = la hoja { $sheet } está dañada
book_spans = la hoja { $sheet } abarca { $rows } filas y { $columns } columnas
book_not_text = el archivo no es texto, aunque su nombre lo diga
book_not_table = el archivo no es una tabla de texto
book_too_many = el archivo tiene más de { $rows } filas o { $columns } columnas
book_not_whole = el archivo está dañado: no se puede descomprimir entero
book_sheet_missing = el archivo está dañado: una de sus hojas no se encuentra en él
book_sheets_unread = el archivo está dañado: la lista de sus hojas no se puede leer
book_table_unread = el archivo está dañado: su tabla no se puede leer
book_repeats = una celda se repite tanto que una hoja tendría { $cells } celdas
book_entities = el archivo define texto propio que podría desplegarse sin fin
book_sheet_hidden =
    .found = la hoja está oculta
    .done = Se lee como las demás.
    .fix = Bórrela si no cuenta.
book_cell_error =
    .found = la celda muestra { $shown }
    .done = La celda cuenta como vacía.
    .fix = Corrija su fórmula.
book_cells_unsaved =
    .found = { $count ->
        [one] 1 fórmula
       *[other] { $count } fórmulas
    } sin resultado guardado, la primera en { $cell }
    .done = Esas celdas cuentan como vacías.
    .fix = Abra el libro en su programa de hojas de cálculo y guárdelo una vez; luego vuelva a empezar.
book_cell_far =
    .found = una celda lejos de la tabla: { $cell }
    .done = Solo se leen las primeras { $rows } filas y { $columns } columnas.
    .fix = Borre las filas y columnas más allá de la tabla y guarde.

no_folder = No hay una carpeta { $folder }; revise cómo está escrita, o escriba la ruta entera.
folder_is_file = { $folder } es un archivo; hatchkit quiere la carpeta en que está.
folder_unreadable = La carpeta { $folder } no se puede leer ({ $why }); pida permiso para leerla, o cópiela adonde lo tenga.
folder_only_lost = { $file }{ $sheet ->
        [none] { "" }
       *[named] , hoja { $sheet }
    }: { $found }. { $fix }
folder_empty = La carpeta { $folder } está vacía; ponga en ella su batches.xlsx o .csv, o escriba uno en blanco con: hatchkit start CARPETA.
folder_without_batches = No hay tabla de tandas ni registro en { $folder }; contiene: { LIST($there, most: 8) }. Ponga en ella su batches.xlsx o .csv, o escriba uno en blanco con: hatchkit start CARPETA.
demo_missing = La temporada de ejemplo no está instalada con esta copia de hatchkit.
notebooks_missing = Los cuadernos no están instalados con esta copia de hatchkit.

out_suffix = { $path } no puede ser el nombre de este archivo: dele uno que termine en { $suffix }.
out_no_folder = No se puede escribir { $path }: dé el nombre de un archivo en una carpeta que exista.
out_unwritable = No se puede escribir { $path }: { $why }.
out_own_records = { $path } es parte de los propios apuntes de la temporada, en los que nunca se escribe: nombre otro archivo.
out_would_be_read = { $path } se leería como parte de la temporada: llámelo { $own }, o escríbalo en otra carpeta.
out_among_read = { $path } está entre los archivos que se leen, en los que nunca se escribe: nombre un archivo de otra carpeta.

answers_head =
    # Lo que se confirmó cuando hatchkit preguntó cómo leer las tablas de esta temporada
    # (hatchkit check CARPETA --ask, o cuaderno 0). Escrito por hatchkit; borre el archivo, o una [[answer]],
    # para que se pregunte de nuevo. Lo que dice season.toml vale más.
