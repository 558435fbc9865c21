# hatchkit check : la page où l’on voit comment le tableau a été lu, ce qui est demandé, ce qu’il faut corriger.

check_title = { $title } : comment cela a été lu
check_counts = { $title } : lu { $batches ->
        [one] { $batches } couvée
       *[other] { $batches } couvées
    }, { $eggs ->
        [one] { $eggs } ligne d’œuf
       *[other] { $eggs } lignes d’œufs
    }, { $weights ->
        [one] { $weights } pesée
       *[other] { $weights } pesées
    }, { $readings ->
        [one] { $readings } mesure
       *[other] { $readings } mesures
    }.
check_clock = Les heures sont celles de { $timezone }.

check_i_read = Voici comment je l’ai lu
check_sheet = { $sheet ->
        [none] { $file }
       *[named] { $file }, feuille { $sheet }
    }
check_sheets_alike = { $file } : { COUNT($sheets) ->
        [one] feuille { $sheets }
       *[other] feuilles { LIST($sheets, most: 6) } de même forme
    }
check_head_heading = votre titre
check_head_taken = pris pour
check_head_example = un exemple
check_head_sure = sûreté
check_head_why = pourquoi
check_no_heading = (sans titre, colonne { PLAIN($place) })
check_plain = { COUNT($pairs) ->
        [one] Sûr aussi : { $pairs }.
       *[other] { COUNT($pairs) } de plus, sûres : { LIST($pairs, most: 12) }.
    }
check_pair = { $heading } = { $taken }
check_more_sheets = { $sheets ->
        [1] Une feuille de plus a été lue
       *[other] { $sheets } feuilles de plus ont été lues
    } sans aucun doute ; --full montre tout.

ledger_head = Le compte des œufs est-il bon ?
ledger_term = { $eggs } { $heading }
ledger_sum = { $name } : { $set } mis = { $terms }
ledger_nothing = { $name } : { $set } mis, rien d’autre n’est dit
ledger_adds_up = { $sum } : le compte est bon.
ledger_short = { $sum } : { $rest ->
        [1] on ne dit rien d’un œuf.
       *[other] on ne dit rien de { $rest } œufs.
    }
ledger_over = { $sum } : { $over ->
        [1] un œuf de trop.
       *[other] { $over } œufs de trop.
    }
ledger_unknown = { $sum }.
ledger_more = et { $count } de plus
ledger_total = Le compte des œufs est bon dans { $rows } lignes sur { $of ->
        [one] { $of }.
       *[other] { $of }.
    }

questions_head = { $count ->
        [1] Une question
       *[other] { $count } questions
    }, la plus lourde de conséquences d’abord
questions_how = Répondre : hatchkit check DOSSIER --ask, ou le carnet 0.
question_rows = { $rows ->
        [0] Aucun nombre n’en dépend.
        [1] Une ligne en dépend.
       *[other] { $rows } lignes en dépendent.
    }
question_where = { $sheet ->
        [none] { $file }
       *[named] { $file }, feuille { $sheet }
    }
question_meaning = Qu’est-ce que la colonne « { $heading } » ? Pris pour l’instant : { $choice }.
question_species = { $written ->
        [none] Quels oiseaux sont-ce ? Rien sur la feuille ne le dit ;
       *[some] Quels oiseaux sont « { $written } » ? hatchkit ne connaît pas cet oiseau ;
    } pris pour l’instant : { $choice }.
question_year = Quelle année est-ce ? Rien sur la feuille ne le dit ; pris pour l’instant : { $choice }.
question_day_first = Qu’est-ce qui vient d’abord dans vos dates ? Les deux ordres sont possibles ; pris pour l’instant : { $choice }.
question_diary = { $names ->
        [none] Le compte de certaines couvées du journal n’est pas bon, tel que je lis ses phrases.
       *[some] Tel que je lis les phrases du journal, le compte des œufs n’est pas bon dans : { $names }.
    } Pris pour l’instant : { $choice }. --full montre ce qui a été lu ; écrivez une telle couvée comme une ligne de nombres pour être sûr.
question_sums = Quelle que soit ma lecture de cette feuille, la plupart des lignes contiennent plus d'œufs qu'il n'en a été mis ; une colonne doit donc signifier autre chose. Retenu pour l'instant : { $choice }.
question_mixed_birds = { $written ->
        [none] Une couvée contient plusieurs sortes d’oiseaux. Laquelle compte ?
       *[some] « { $written } » nomme plusieurs sortes d’oiseaux dans une couvée. Laquelle compte ?
    } Pris pour l’instant : { $choice }.
question_machine = Dans quelle couveuse étaient les œufs ? Pris pour l’instant : { $choice }.
question_log_machine = { $heading ->
        [none] À quelle couveuse appartient l’enregistrement { $file } ?
       *[named] À quelle couveuse appartient la sonde « { $heading } » de l’enregistrement { $file } ?
    } Pris pour l’instant : { $choice }.
question_log_date_order = Qu’est-ce qui vient d’abord dans les dates de « { $heading } » ? Pris pour l’instant : { $choice }.
question_log_unit = Dans quelle unité est « { $heading } » ? Pris pour l’instant : { $choice }.
question_log_scale = Il semble manquer la virgule à « { $heading } ». Pris pour l’instant : { $choice }.
question_log_column = Qu’est-ce que la colonne « { $heading } » de l’enregistrement ? Pris pour l’instant : { $choice }.
question_log_zone = L’horloge de l’enregistrement { $file } montrait-elle l’heure d’été ? Il nomme un décalage et en parle. Pris pour l’instant : { $choice }.
question_log_clock = L’horloge de l’enregistrement { $file } n’a pas suivi le changement d’heure et fait plus tard un saut d’une heure. A-t-elle alors été remise à l’heure à la main ? Pris pour l’instant : { $choice }.
question_log_encoding = Comment se lit une ligne de l’enregistrement { $file } : { OR($names) } ? Pris pour l’instant : { $choice }.
question_other = { $heading ->
        [none] Ceci peut se lire de plus d’une façon.
       *[named] « { $heading } » peut se lire de plus d’une façon.
    } Pris pour l’instant : { $choice }.
choice_adds = { $heading ->
        [none] Si c’est { $choice }, le compte est bon dans { $adds } lignes sur { $of ->
            [one] { $of }
           *[other] { $of }
        }
       *[named] Si « { $heading } » est { $choice }, le compte est bon dans { $adds } lignes sur { $of ->
            [one] { $of }
           *[other] { $of }
        }
    }
choice_adds_next = si c’est { $choice }, dans { $adds }
choices_add = { $first }{ $rest ->
        [none] .
       *[more] ; { $rest }.
    }
choices_are = Ce peut être : { OR($choices) }.
choice_line = { $adds ->
        [none] { $choice }
       *[known] { $choice } (le compte est bon dans { $adds } lignes sur { $of ->
            [one] { $of }
           *[other] { $of }
        })
    }
choice_now = { $line }, comme pris maintenant

value_day_first = jour avant mois
value_used = utilisé comme lu
value_month_first = mois avant jour
value_yes = oui
value_no = non
value_True = jour avant mois
value_False = mois avant jour
value_nothing = rien ; hors des taux tant que ce n’est pas dit
value_left_out = hors des taux
value_separate = chaque sorte, une couvée à part

ask_number = Numéro ; Entrée pour garder, q pour finir :
ask_again = { $most ->
        [1] Tapez 1, Entrée ou q.
       *[other] Tapez un nombre de 1 à { $most }, Entrée ou q.
    }
ask_nothing = Il n’y a rien à demander : aucun nombre ne dépend d’une lecture ouverte.
ask_kept = { $answers ->
        [1] Une réponse est gardée
       *[other] { $answers } réponses sont gardées
    } dans { $path }. Effacez ce fichier pour être interrogé de nouveau ; votre tableau n’a pas été touché.
ask_left = { $questions ->
        [0] Il ne reste rien à demander.
        [1] Il reste une question.
       *[other] Il reste { $questions } questions.
    }

problems_lost = À corriger d’abord : pas utilisé du tout ({ $count })
problems_doubtful = Ensuite : utilisé, mais peut-être faux ({ $count })
problems_note = À savoir : ce qui a été supposé ({ $count })
problems_none = Rien à corriger.
problems_fix = À faire : { $fix }
problems_more_like = et { $count } { $count ->
        [1] autre du même genre
       *[other] autres du même genre
    }
problems_folded = { $count ->
        [1] Une sorte de remarque de plus
       *[other] { $count } sortes de remarques de plus
    } : hatchkit check DOSSIER --full.
problems_first = Les { $most } premiers sont montrés.
problems_head_where = Où
problems_head_found = Constat
problems_head_done = Suite donnée
problems_head_fix = Comment corriger
place_more_files = { $file } et { $count ->
        [1] 1 fichier de plus
       *[other] { $count } fichiers de plus
    }
place_sheet = feuille { $sheet }
place_rows = { COUNT($rows) ->
        [one] ligne { $rows }
       *[other] lignes { LIST($rows, most: 8) }
    }
place_columns = { COUNT($columns) ->
        [one] colonne { $columns }
       *[other] colonnes { LIST($columns, most: 3) }
    }

assumed_sure = Lu : { $files ->
        [none] les relevés
       *[other] { $files }
    }, { $columns ->
        [1] une colonne
       *[other] { $columns } colonnes
    }, toutes sûres ; le compte des œufs est bon dans { $rows } lignes sur { $of ->
        [one] { $of }
       *[other] { $of }
    }.
assumed_sure_unsummed = Lu : { $files }, { $columns ->
        [1] une colonne
       *[other] { $columns } colonnes
    }, toutes sûres.
assumed_likely = Supposé à la lecture (probable) : { $likely }.
assumed_open = Supposé à la lecture, encore ouvert : { $open }. { $rows ->
        [0] Aucun nombre ci-dessous n’en dépend.
        [1] Les nombres d’une ligne en dépendent
       *[other] Les nombres de { $rows } lignes en dépendent
    }{ $rows ->
        [0] { "" }
       *[some] : { $fields } ; répondez avec hatchkit check DOSSIER --ask.
    }
assumed_pair = « { $heading } » est { $taken }
assumed_value = { $code ->
        [species] les oiseaux sont des { $taken }
        [year] l’année est { $taken }
        [day_first] dans les dates, { $taken }
        [diary] couvées du journal dont le compte n’est pas bon : { $taken }
        [machine] la couveuse est { $taken }
        [log_machine] l’enregistrement est de { $taken }
       *[other] { $taken }
    }
assumed_everything = tous leurs nombres
assumed_readings = température et humidité

form_keep = Garder
form_keep_why = Garder ces choix à côté de votre saison, pour ne plus être interrogé
form_others = Une autre colonne a-t-elle été mal prise ?
form_nothing_chosen = Rien n’a encore été choisi.
form_again = Relancez ce carnet depuis le début pour voir votre saison lue ainsi.
form_whole = { $code ->
        [species] Oiseaux
        [year] Année
        [day_first] Dates
        [diary] Journal
        [mixed_birds] Oiseaux d’une couvée
        [machine] Couveuse
        [log_machine] Couveuse de l’enregistrement
        [log_encoding] Lettres de l’enregistrement
        [log_zone] Fuseau de l’enregistrement
        [log_clock] Horloge de l’enregistrement
       *[other] Choix
    }

