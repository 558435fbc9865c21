# El marco de cada página, y lo común a todas las tablas.

page_answer = La respuesta
page_how_sure = ¿Qué tan seguro es?
page_do_now = Qué hacer ahora
page_contents = En esta página
page_more = Más
page_records = Ver los registros
page_unknown = Lo que no se sabe
page_care = Cuidado
page_made = Hecho con hatchkit { $version } el { DAY($today) }.

# Qué tan segura es una respuesta.
how_sure_sure = (seguro)
how_sure_likely = (probable)
how_sure_guess = (una suposición entre otras)
how_sure_cannot_tell = (los registros no permiten decirlo)

shown_none = no se sabe
shown_share = { SHARE($share) }
shown_share_range = { SHARE($share) } ({ SHARE($low) } a { SHARE($high) })
shown_step = { STEP($step) }
shown_degrees = { DEGREES($degrees) }
shown_time = { MINUTE($time) }
shown_number = { TENTH($number) }

# La lista del cuaderno 2.
form_batch = Lote:
form_batch_hatched = { $batch }: { $hatched } de { $set } nacidos
