# Les relevés sur lesquels repose une page.
ask_records = Qu’est-ce qui a été lu et supposé ?
records_read = { $questions ->
        [0] { $assumed ->
            [likely] Certaines colonnes des tableaux ne sont lues que de façon probable
            [sure] Chaque colonne des tableaux est lue avec certitude
           *[other] Rien n’a été supposé
        }
        [1] Une question sur les tableaux reste ouverte
       *[other] { $questions } questions sur les tableaux restent ouvertes
    }{ $unlike ->
        [0] .
        [1] , et une donnée n’a pu être prise telle quelle.
       *[other] , et { $unlike } données n’ont pu être prises telles quelles.
    }
records_how = { $batches ->
        [1] Une couvée
       *[other] { $batches } couvées
    }{ $readings ->
        [0] , aucune température.
       *[other] { " " }et { $readings } mesures de { LIST($machines, most: 6) }.
    } Données non utilisées : { $lost } ; douteuses : { $doubtful } ; remarques : { $note }. Heures de { $timezone }.
records_see = Comment chaque colonne a été lue, et à quoi l’on peut répondre : hatchkit check, ou le carnet 0.
table_problems = Ce qui n’a pas pu être pris tel qu’il est écrit
head_severity = Genre
head_file = Fichier
head_row = Ligne
head_found = Constat
head_done = Ce qui en a été fait
head_fix = Comment corriger
severity_lost = non utilisé
severity_doubtful = douteux
severity_note = remarque
