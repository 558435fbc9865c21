# Was die Befehlszeile sagt, wenn die Arbeit getan ist, und warum sie es nicht ist.

wrote = geschrieben: { $path }
list_written = Die Liste liegt in { $path }
page_written = Die Seite liegt in { $path }
sheet_written = Das Blatt liegt in { $path }
open_in_browser = Öffnen Sie es in einem Browser und drucken Sie von dort.
tables_written = Die Tabellen liegen in { $path }
marks_written = Die Noten liegen in { $path }
pages_written = Die Seiten liegen in { $path }
page_begun = { $name } wird gelesen und die Seite geschrieben ...
start_nothing = In { $folder } ist schon alles da; nichts wurde verändert.
lesson_written = { $count ->
        [one] { $count } Fall liegt
       *[other] { $count } Fälle liegen
    } in { $folder }
    Das Lösungsbuch ist nur für die Lehrkraft: { $path }
    Sein Startwert steht darin; wer ihn kennt, kann das Lösungsbuch machen.
seed_short = Ein so kurzer Startwert lässt sich durch Probieren erraten; wo Noten zählen, lassen Sie --seed weg.
no_folder_yet = Einen Ordner { $folder } gibt es nicht. Machen Sie einen mit: hatchkit start { $given }
tests_need_source = Die Tests liegen beim Quelltext; starten Sie dies in einer Kopie des Quelltextes.
no_page = Eine Seite '{ $page }' gibt es nicht; es gibt { $there }. Um ein Notebook in eine Seite zu verwandeln: jupyter nbconvert --execute --to html.
file_unusable = { $file ->
        [none] eine Datei
       *[named] { $file }
    } kann nicht verwendet werden: { $why }.
not_whole_from = '{ $given }' ist keine ganze Zahl von { $least } an
unforeseen = { $error ->
        [MemoryError] der Rechner hat dafür nicht genug Speicher
       *[other] etwas geschah, womit es nicht rechnete ({ $error })
    }{ $at ->
        [none] { "" }
       *[known] , bei { $at }
    }. Ihre Aufzeichnungen sind, wie sie waren{ $details ->
        [none] { "" }
       *[written] ; die Einzelheiten, für die, die hatchkit pflegen, liegen in { $details }
    }.

click_name = Diese Saison auswerten
click_comment = Schreibt { $page } mit hatchkit und öffnet sie
click_enter = Die Eingabetaste schließt dieses Fenster.
click_untried = Nicht erprobt: ein Doppelklick schreibt { $page } neben diese Datei und öffnet sie.
