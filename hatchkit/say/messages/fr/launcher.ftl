# Ce que dit la ligne de commande quand son travail est fait, et pourquoi il ne l’est pas.

wrote = écrit : { $path }
list_written = La liste est dans { $path }
page_written = La page est dans { $path }
sheet_written = La feuille est dans { $path }
open_in_browser = Ouvrez-la dans un navigateur et imprimez-la de là.
tables_written = Les tableaux sont dans { $path }
marks_written = Les notes sont dans { $path }
pages_written = Les pages sont dans { $path }
page_begun = Lecture de { $name } et écriture de la page ...
start_nothing = Tout est déjà là dans { $folder } ; rien n’a été changé.
lesson_written = { $count ->
        [one] { $count } cas est
       *[other] { $count } cas sont
    } dans { $folder }
    Le livre des réponses est pour l’enseignant seul : { $path }
    Son germe y figure ; qui connaît le germe peut faire le livre des réponses.
seed_short = Un germe si court se devine en essayant ; là où les notes comptent, laissez --seed.
no_folder_yet = Il n’y a pas de dossier { $folder }. Faites-en un avec : hatchkit start { $given }
tests_need_source = Les tests viennent avec le code source ; lancez ceci dans une copie du code source.
no_page = Il n’y a pas de page '{ $page }' ; il y a { $there }. Pour faire une page d’un notebook : jupyter nbconvert --execute --to html.
file_unusable = { $file ->
        [none] un fichier
       *[named] { $file }
    } ne peut pas être utilisé : { $why }.
not_whole_from = '{ $given }' n’est pas un nombre entier à partir de { $least }
unforeseen = { $error ->
        [MemoryError] la machine n’a pas assez de mémoire pour cela
       *[other] il est arrivé quelque chose d’imprévu ({ $error })
    }{ $at ->
        [none] { "" }
       *[known] , à { $at }
    }. Vos notes sont telles qu’elles étaient{ $details ->
        [none] { "" }
       *[written] {" "}; les détails, pour qui entretient hatchkit, sont dans { $details }
    }.

click_name = Bilan de cette saison
click_comment = Écrit { $page } avec hatchkit et l’ouvre
click_enter = Appuyez sur Entrée pour fermer cette fenêtre.
click_untried = Non essayé : un double-clic écrit { $page } à côté de ce fichier et l’ouvre.
