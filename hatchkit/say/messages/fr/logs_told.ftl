# Ce qui n’a pas pu être pris dans les fichiers des enregistreurs tel qu’il est écrit.

log_headings_fewer =
    .found = il y a un titre de moins que de colonnes
    .done = La première colonne est prise pour des numéros de ligne sans titre.
    .fix = Écrivez un titre au-dessus de la première colonne.
log_headings_more =
    .found = il y a plus de titres que de colonnes ; il n’y en a pas sous { LIST($names, most: 6) }
    .done = Les autres sont pris pour les colonnes sous eux.
    .fix = Mettez entre guillemets un titre qui contient une virgule.
log_by_behaviour =
    .found = { $header ->
        [yes] aucun titre ne nomme une température ou une humidité
       *[no] le fichier n’a pas de titres
    } ; les colonnes ont été distinguées par le comportement de leurs valeurs
    .done = Pris comme le disent les questions.
    .fix = Mettez une ligne de noms au-dessus des mesures, ou répondez à la question.
log_against_values =
    .found = les valeurs médianes de { LIST($names, most: 6) } ({ LIST($middles, most: 6) }) ne ressemblent pas à ce que disent les titres
    .done = Lu comme le disent les titres.
    .fix = Regardez si les titres sont au-dessus des mauvaises colonnes.
log_exchanged =
    .found = dans { $count ->
        [1] une ligne
       *[other] { $count } lignes
    } la température de { $name } dépasse 45 °C et l’humidité est là où est ailleurs sa température
    .done = Lu comme le disent les titres.
    .fix = Regardez si deux exports de disposition différente ont été mis ensemble.
log_summer_open =
    .found = le fichier dit que son horloge est { $clock } et parle d’heure d’été
    .done = Lu comme { $taken } ; à l’heure d’été, ce serait { $other }.
    .fix = Répondez à la question.
log_only_extremes =
    .found = { $names } : la plus basse et la plus haute de chaque intervalle, et pas de moyenne
    .done = Chacune est lue comme une sonde à part.
    .fix = Exportez aussi la moyenne.
log_encoding_open =
    .found = la ligne { PLAIN($line) } se lit "{ $one }" dans le codage { $page } et "{ $two }" en { $other }
    .done = Lu comme { $page }.
    .fix = Exportez l’enregistrement en UTF-8.
log_member_left_out =
    .found = { $name }, dans l’archive, ne peut pas être lu : { $why }
    .done = Laissé de côté.
log_part_refused =
    .found = { $part ->
        [none] ce fichier
       *[named] { $part }
    } n’est pas un enregistrement : { $why }
    .done = Laissé de côté.
log_sections =
    .found = { $count } exports, chacun avec ses titres, sont dans un seul fichier
    .done = Chacun est lu selon ses propres titres.
log_twins =
    .found = { $names } : la même température encore une fois dans une autre unité
    .done = Lu une seule fois.
log_unused =
    .found = colonnes qui ne sont ni température ni humidité de l’air : { LIST($names, most: 12) }
    .done = Non utilisé.
log_lone_quotes =
    .found = un guillemet sans pareil dans { $count ->
        [1] une ligne
       *[other] { $count } lignes
    }, d’abord à la ligne { PLAIN($line) }
    .done = Le signe est ignoré.
    .fix = Regardez ces lignes dans un éditeur de texte.
log_order =
    .found = des dates comme { $example }
    .done = Lu comme { WORD($order, kind: "value") } : { WORD($how, kind: "order_how") }{ COUNT($against) ->
        [0] { "" }
       *[other] {" "}; { WORDS($against, kind: "order_against") }
    }.
log_order_open =
    .found = des dates comme { $example } peuvent se lire dans plus d’un ordre
    .done = Lu comme { WORD($order, kind: "value") }{ $how ->
        [none] { "" }
       *[known] , { WORD($how, kind: "order_how") }
    }{ COUNT($against) ->
        [0] { "" }
       *[other] {" "}; { WORDS($against, kind: "order_against") }
    }.
    .fix = Écrivez day_first = true ou false sous [sensors] dans season.toml.
order_how_said = comme le dit day_first
order_how_continuity = ainsi seulement les jours se suivent
order_how_a_day_above_12 = d’autres ordres donnent des jours qui n’existent pas
order_how_in_order = ainsi seulement les lignes sont dans l’ordre
order_how_weekday = ainsi seulement les jours de la semaine sont justes
order_how_other_files = comme dans les autres fichiers
order_how_dots = les dates à points commencent par le jour
order_how_half_day = avec am et pm, le mois vient d’abord
order_how_batches = ce qui tombe dans les couvées de la saison
order_against_said = day_first dit autre chose
order_against_other_files = d’autres fichiers sont écrits autrement
order_against_a_day_above_12 = certaines dates n’existent que dans l’autre sens

log_machine_named =
    .found = sonde { $probe } dans { $file }
    .done = Attribué à la couveuse { $machine } d’après { $how ->
        [file_name] le nom du fichier
       *[probe_name] le nom de la sonde
    }.
    .fix = Sinon : [incubators.{ $key }] files = ["..."]
log_machine_guessed =
    .found = { $file } ne nomme pas de couveuse
    .done = Attribué à { $machine }, { $how ->
        [only_one] la seule de la saison
       *[dates] la seule couveuse sans enregistrement qui avait des œufs à ce moment
    }.
    .fix = [incubators.{ $key }] files = ["{ $file }"]
log_machine_unknown =
    .found = { $file } (sonde { LIST($probes, most: 6) }) ne nomme aucune couveuse de la saison
    .done = Gardé comme couveuse "{ $taken }".
    .fix = Écrivez dans season.toml, avec le bon nom : { $line }
log_not_a_log =
    .found = { $name } n’est ni texte, ni classeur, ni archive
    .done = Laissé de côté.
    .fix = Retirez-le du dossier sensors, ou exportez-le en CSV.
log_beside_batches =
    .found = { $name } est un enregistrement et se trouve à côté du tableau des couvées
    .done = Lu comme les enregistrements du dossier sensors.
    .fix = Mettez-le dans un dossier nommé sensors.
log_lost =
    .found = { $why }
    .done = Laissé de côté.
    .fix = Exportez de nouveau l’enregistrement en CSV, ou retirez le fichier du dossier sensors.
log_marked =
    .found = une marque derrière { $count ->
        [1] une valeur
       *[other] { $count } valeurs
    } de { $quantity ->
        [temp] { $name }
       *[rh] l’humidité de { $name }
    }, d’abord à la ligne { PLAIN($line) } : "{ $example }"
    .done = { $doubted ->
        [yes] Gardé et marqué "marked".
       *[no] Lu sans la marque, car presque toutes la portent.
    }
    .fix = Voyez dans la notice de l’enregistreur ce que la marque veut dire.
log_without_decimals =
    .found = la valeur médiane de { $name } est { PLAIN($middle) }
    .done = Divisé par { $factor }.
    .fix = Exportez avec les décimales, ou répondez à la question.

log_lines_where = { $count ->
        [1] { "" }
       *[other] { $first ->
            [none] { "" }
           *[known] , d’abord à la ligne { PLAIN($first) }
        }
    }{ $example ->
        [none] { "" }
       *[known] {" "}: "{ $example }"
    }
log_lines_blank =
    .found = { $count ->
        [1] 1 ligne vide
       *[other] { $count } lignes vides
    }{ log_lines_where }
    .done = Laissé de côté.
log_lines_repeated_header =
    .found = { $count ->
        [1] 1 ligne de titres répétée
       *[other] { $count } lignes de titres répétées
    }{ log_lines_where }
    .done = Laissé de côté.
log_lines_words =
    .found = { $count ->
        [1] 1 ligne
       *[other] { $count } lignes
    } de texte sans heure{ log_lines_where }
    .done = Laissé de côté.
log_lines_untimed =
    .found = { $count ->
        [1] 1 ligne
       *[other] { $count } lignes
    } avec une valeur mais sans heure lisible{ log_lines_where }
    .done = Laissé de côté.
    .fix = Corrigez la date dans le fichier{ $why ->
        [no_such_day] {" "}: ce jour n’existe pas au calendrier
        [year] {" "}: son année ne peut pas être juste
        [hour] {" "}: cette heure n’existe pas
        [no_hour] {" "}: son heure ne peut pas être lue
        [order] {" "}: elle ne va que si jour et mois sont dans l’autre sens
        [no_year] {" "}: elle n’a pas d’année
       *[other] { "" }
    }.
log_lines_events =
    .found = { $count ->
        [1] 1 ligne
       *[other] { $count } lignes
    } de texte avec une heure (événements){ log_lines_where }
    .done = Laissé hors des mesures.
log_lines_other_quantities =
    .found = { $count ->
        [1] 1 ligne
       *[other] { $count } lignes
    } d’autres grandeurs{ log_lines_where }
    .done = Non lu.
log_lines_merged =
    .found = { $count ->
        [1] 1 ligne qui répète ou complète une mesure
       *[other] { $count } lignes qui répètent ou complètent une mesure
    }{ log_lines_where }
    .done = Réuni avec elle.
log_lines_other_channels =
    .found = { $count ->
        [1] 1 ligne
       *[other] { $count } lignes
    } d’autres voies{ log_lines_where }
    .done = Non demandé.
log_lines_top =
    .found = { $count ->
        [1] 1 ligne
       *[other] { $count } lignes
    } en tête ({ $above ->
        [both] titre et noms des colonnes
        [header] noms des colonnes
       *[title] titre
    }){ log_lines_where }
    .done = Pas des mesures.
log_lines_in_quotes =
    .found = { $count ->
        [1] 1 ligne
       *[other] { $count } lignes
    } à l’intérieur de guillemets ou après la marque de fin{ log_lines_where }
    .done = Laissé de côté.
    .fix = Ouvrez le fichier dans un éditeur de texte et cherchez un guillemet égaré.
log_lines_no_readings =
    .found = { $count ->
        [1] 1 ligne
       *[other] { $count } lignes
    } et aucune mesure{ log_lines_where }
    .done = Le fichier a les titres d’un enregistrement et rien dessous.
    .fix = Exportez de nouveau l’enregistrement.
log_lines_section =
    .found = { $count ->
        [1] 1 ligne
       *[other] { $count } lignes
    } d’une partie qui ne peut pas être lue{ log_lines_where } : { $why }
    .done = Laissé de côté.

log_empty_lines =
    .found = { $count } lignes sur { $of } n’ont pas de valeur de { $name }
    .done = Ces lignes n’en donnent pas de mesure.
log_odd_cells =
    .found = du texte dans { $count ->
        [1] une cellule
       *[other] { $count } cellules
    } de { $name }, d’abord à la ligne { PLAIN($line) } : "{ $example }"
    .done = Pris comme aucune valeur.
log_missing_codes =
    .found = { $count ->
        [1] 1 mesure
       *[other] { $count } mesures
    } de { $name } avec { $values }, un code pour aucune mesure
    .done = Marqué "missing code" ; temp_c reste vide.
log_unit_against =
    .found = { $name } a pour titre °{ $said }, mais ses valeurs ne peuvent être que { WORD($unit, kind: "degree") }
    .done = Lu comme { WORD($unit, kind: "degree") }.
    .fix = Écrivez temp_unit = "C" ou "F" sous [sensors] dans season.toml.
log_unit_guessed =
    .found = { $name } n’a pas d’unité{ $middle ->
        [none] { "" }
       *[known] {" "}; sa valeur médiane est { TENTH($middle) }
    }
    .done = Lu comme { WORD($unit, kind: "degree") }.
log_unit_open =
    .found = { $name } n’a pas d’unité et sa valeur médiane est { TENTH($middle) }
    .done = Lu comme { WORD($unit, kind: "degree") }.
    .fix = Écrivez temp_unit = "C" ou "F" sous [sensors] dans season.toml.
degree_C = °C
degree_F = °F
degree_K = K
log_humidity_impossible =
    .found = { $count ->
        [1] 1 valeur d’humidité
       *[other] { $count } valeurs d’humidité
    } de { $name } impossibles : { $values }
    .done = rh_pct y reste vide ; la température reste.
log_humidity_share =
    .found = l’humidité de { $name } est entre 0 et 1
    .done = Lu comme une part et montré en %.
log_humidity_wet_bulb =
    .found = { $name } a un thermomètre mouillé et pas d’humidité
    .done = Humidité calculée pour { $air ->
        [still] une mèche en air calme
       *[fan] une mèche ventilée
    } (coefficient { $coefficient }e-4 par K) à { TENTH($pressure) } kPa.
    .fix = air = "still" ou "fan" et altitude_m de la couveuse dans season.toml changent cela.
log_humidity_dew_point =
    .found = { $name } a un point de rosée et pas d’humidité
    .done = Humidité calculée d’après le point de rosée.

log_two_probes =
    .found = { $file } et { $other } se recouvrent dans le temps avec des mesures différentes de { $probe } dans la couveuse { $machine }
    .done = Pris pour deux sondes ; celle-ci s’appelle { $taken }.
log_again =
    .found = { $count ->
        [1] 1 mesure de { $probe } qui se trouve aussi dans { $other }
       *[other] { $count } mesures de { $probe } qui se trouvent aussi dans { $other }
    }
    .done = Réuni.
log_clash =
    .found = { $count ->
        [1] 1 mesure
       *[other] { $count } mesures
    } de { $probe } contre d’autres valeurs au même moment dans { $other }
    .done = Les deux gardées et marquées "repeated".
    .fix = Retirez le mauvais fichier.
log_newest_first =
    .found = { $name } est écrit du plus récent au plus ancien
    .done = Mis dans l’ordre du temps.
log_times_back =
    .found = les heures de { $name } reculent { $count } fois, d’abord à la ligne { PLAIN($line) }
    .done = Mis dans l’ordre du temps.
    .fix = Vérifiez que le fichier ne contient qu’une sonde.
log_clock_step =
    .found = l’horloge de { $name } a reculé ou perdu sa date à la ligne { PLAIN($line) } ; { $count ->
        [1] 1 mesure
       *[other] { $count } mesures
    } à côté des autres
    .done = Gardé et marqué "clock step".
    .fix = Corrigez les heures dans le fichier.
log_merged =
    .found = { $count ->
        [1] 1 mesure
       *[other] { $count } mesures
    } de { $name } à l’heure d’une autre, égales ou la complétant
    .done = Réuni avec elle.
log_doubted =
    .found = { $count ->
        [1] 1 mesure
       *[other] { $count } mesures
    } de { $name } { $doubt ->
        [stuck] sans aucun changement pendant des heures
        [spike] avec un saut plus rapide que ne peut l’air d’une couveuse
        [out_of_range] avec une valeur qu’aucune couveuse n’a
        [repeated] à l’heure d’une autre de valeur différente
       *[missing_code] sans valeur
    }, la première à { $start }, la dernière à { $end }
    .done = Gardé et marqué "{ $mark }".
log_gaps =
    .found = { $count ->
        [1] un trou de { $hours ->
            [one] { TENTH($hours) } heure
           *[other] { TENTH($hours) } heures
        } dans les mesures de { $name }
       *[other] { $count } trous dans les mesures de { $name }, le plus long de { $hours ->
            [one] { TENTH($hours) } heure
           *[other] { TENTH($hours) } heures
        }
    } : rien entre { $start } et { $end }
    .done = Le trou reste vide.
log_zone_said =
    .found = le fichier dit que son horloge est { $clock }
    .done = Pris comme son fuseau.
log_zone_none =
    .found = ni le fichier ni season.toml ne nomment un fuseau horaire
    .done = Les heures sont prises comme l’horloge les montrait.
    .fix = Écrivez timezone = "Europe/Rome" (ou le vôtre) dans season.toml.

clock_not_followed =
    .found = l’horloge de l’enregistreur n’a pas suivi le changement d’heure du { $day }
    .done = Tout le fichier est lu dans l’heure par laquelle il a commencé.
    .fix = Si c’est faux, donnez dans season.toml le timezone de la couveuse de ce fichier.
clock_put_right =
    .found = l’horloge { $way ->
        [on] avance
       *[back] recule
    } d’une heure à { $time }, comme si on l’avait réglée à la main
    .done = Ce qui suit est lu dans la nouvelle heure.
    .fix = Répondez à la question.
clock_hour_twice =
    .found = { $count ->
        [1] 1 mesure
       *[other] { $count } mesures
    } dans l’heure qui est venue deux fois le { $day }
    .done = L’ordre du fichier distingue le premier passage du second.
clock_hour_skipped =
    .found = { $count ->
        [1] 1 mesure
       *[other] { $count } mesures
    } dans l’heure qui a été sautée le { $day }
    .done = Lu une heure plus tard.
no_such_zone = Il n’y a pas de fuseau horaire '{ $zone }' ; écrivez-le comme timezone = "Europe/Rome".
