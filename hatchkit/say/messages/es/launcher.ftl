# Lo que dice la línea de órdenes cuando su trabajo está hecho, y por qué no lo está.

wrote = escrito: { $path }
list_written = La lista está en { $path }
page_written = La página está en { $path }
sheet_written = La hoja está en { $path }
open_in_browser = Ábrala en un navegador e imprímala desde allí.
tables_written = Las tablas están en { $path }
marks_written = Las notas están en { $path }
pages_written = Las páginas están en { $path }
page_begun = Leyendo { $name } y escribiendo la página ...
start_nothing = Ya está todo en { $folder }; no se cambió nada.
lesson_written = { $count ->
        [one] { $count } caso está
       *[other] { $count } casos están
    } en { $folder }
    El libro de respuestas es solo para quien enseña: { $path }
    Su semilla está en él; quien conoce la semilla puede hacer el libro de respuestas.
seed_short = Una semilla tan corta se adivina probando; donde cuenten las notas, deje fuera --seed.
no_folder_yet = No hay una carpeta { $folder }. Haga una con: hatchkit start { $given }
tests_need_source = Las pruebas vienen con el código fuente; ejecute esto en una copia del código fuente.
no_page = No hay una página '{ $page }'; hay { $there }. Para convertir un cuaderno en página: jupyter nbconvert --execute --to html.
file_unusable = { $file ->
        [none] un archivo
       *[named] { $file }
    } no se puede usar: { $why }.
not_whole_from = '{ $given }' no es un número entero desde { $least }
unforeseen = { $error ->
        [MemoryError] la máquina no tiene memoria suficiente para ello
       *[other] ocurrió algo que no se previó ({ $error })
    }{ $at ->
        [none] { "" }
       *[known] , en { $at }
    }. Sus apuntes están como estaban{ $details ->
        [none] { "" }
       *[written] ; los detalles, para quien mantiene hatchkit, están en { $details }
    }.

click_name = Resumen de esta temporada
click_comment = Escribe { $page } con hatchkit y la abre
click_enter = Pulse Intro para cerrar esta ventana.
click_untried = Sin probar: un doble clic escribe { $page } junto a este archivo y la abre.
