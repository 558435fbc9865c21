# Lo que no pudo tomarse tal como está escrito: hallado, hecho, corrección.

answers_unreadable =
    .found = las respuestas guardadas antes no se pueden leer: { $path }
    .done = No se usan; lo que se preguntó se pregunta de nuevo.
    .fix = Borre el archivo y conteste de nuevo; hatchkit check CARPETA --ask.
answers_elsewhere =
    .found = { $count ->
        [one] una respuesta suya está
       *[other] { $count } respuestas suyas están
    } en { $path }, porque no se puede escribir en la carpeta de la temporada
    .done = Usado.
answers_nowhere = Las respuestas no se pudieron escribir ni en { $folder }, ni en la carpeta de trabajo, ni en su carpeta personal; inicie hatchkit en una carpeta donde pueda escribir.

tables_in_season = { $path } está en la propia carpeta de la temporada, donde sus tablas se leerían como parte de ella: nombre otra carpeta.
not_written = No se pudo escribir { $path }: { $why }. Allí no se cambió nada.
tables_unwritable = No se puede escribir en { $path }: { $why }.
tables_not_empty = { $path } contiene otras cosas ({ $names } ...): nombre una carpeta nueva o vacía para las tablas.

language_other =
    .found = las tablas están en otro idioma ({ TONGUES($tongues) })
    .done = Lo que se dice de la temporada está en inglés.
    .fix = Escriba language = "es" (o "de", "fr", "en") en season.toml para tener otro.
language_mixed =
    .found = las tablas están en varios idiomas ({ TONGUES($tongues) })
    .done = Lo que se dice de la temporada está en inglés.
    .fix = Escriba language = "es" (o "de", "fr", "en") en season.toml para tener otro.
language_unknown = No hay un idioma «{ $language }»; hay { LIST($known) }.
