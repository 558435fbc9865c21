# Le plan de la prochaine mise : combien d’œufs, sur quoi cela repose, quand, que changer ; sa feuille à accrocher.

plan_title = Plan : { $name }, mise le { MINUTE($set) }
plan_chance = { $times ->
        [none] plus de 99 fois sur 100
       *[known] { $times } fois sur { $of }
    }
plan_eggs = Mettez { EGGS($eggs) } œufs ({ $name }) pour avoir { $chance } au moins { EGGS($chicks) } { EGGS($chicks) ->
        [one] poussin sain
       *[other] poussins sains
    } ; attendez-en environ { EGGS($middle) } ({ EGGS($low) } à { EGGS($high) } dans 8 mises sur 10).
plan_too_many = Au moins { EGGS($chicks) } poussins { $chance } ne peuvent pas être prévus en une seule mise : aux taux vus et publiés il faudrait plus de { $most } œufs, ou des taux qui varient moins. Prévoyez plusieurs mises, ou moins de poussins.
plan_rests_none = Cela ne repose sur aucune couvée à vous de cette espèce, seulement sur un niveau publié de { WHOLE($level) } des œufs mis : l’éclosion habituelle est estimée à { WHOLE($mean) } ({ WHOLE($low) } à { WHOLE($high) }), et les couvées peuvent différer autant qu’on le croit habituel.
plan_rests = Cela repose sur { $batches ->
        [1] 1 couvée à vous
       *[other] { $batches } couvées à vous
    } ({ PLAIN($hatched) } poussins sains de { PLAIN($set) } œufs) et sur un niveau publié de { WHOLE($level) } des œufs mis. Ensemble ils estiment l’éclosion habituelle à { WHOLE($mean) } ({ WHOLE($low) } à { WHOLE($high) }), et laissent les couvées différer { $batches ->
        [1] autant qu’on le croit habituel, car une seule ne montre pas d’écart
       *[other] autant que les vôtres
    }.
plan_few = Avec si peu de couvées, le niveau publié pèse beaucoup.
plan_left_out = { COUNT($left) ->
        [one] La couvée { LIST($left) } est laissée
       *[other] Les couvées { LIST($left) } sont laissées
    } de côté : les relevés se contredisent.
plan_driver = Une couvée commande ce nombre : sans { $batch } ({ PLAIN($hatched) } poussins sains de { PLAIN($set) } œufs) il serait de { PLAIN($without) } œufs. Si vous savez que sa cause est réparée, prévoyez entre les deux.
plan_when = Mise le { DATE($set) } { PLAIN($year) } à { HOUR($set) }{ COUNT($notes) ->
        [0] { "" }
       *[other] { " " }({ $notes })
    }, éclosion du { DATE($first) } au { DATE($last) }.
plan_note_no_hour = sans heure donnée, midi est pris, comme dans les tableaux
plan_note_passed = un moment passé
plan_note_collect = le premier soir avec { PLAIN($days) } jours pour ramasser les œufs
plan_note_free = le jour après la sortie de la dernière couvée
plan_changes_none = { $batches ->
        [0] Aucune couvée de cette espèce n’est notée ; on ne peut rien dire de vos réglages.
       *[other] Rien dans les relevés de cette saison ne demande un autre réglage.
    }
plan_changes = { $count ->
        [1] À changer d’abord : { $first }.
       *[other] { $count } choses à changer ; la première : { $first }.
    }

paper_step = Quoi
paper_write = À noter
paper_change = À changer cette fois
paper_moment = { WEEKDAY($time) } { MINUTE($time) }

step_collect = Commencer à ramasser les œufs pour cette mise
step_machine_on = Faire tourner la couveuse à vide, vérifier le thermomètre à côté d’un second
step_warm_up = Amener les œufs à la température de la pièce
step_set = Mettre les œufs, les peser, les numéroter
step_candle1 = Mirer (première fois), peser, noter clairs et morts
step_candle2 = Mirer (deuxième fois), peser, noter clairs et morts
step_care_day = Dès aujourd’hui un embryon est traité comme pouvant sentir
step_transfer = Peser, mirer, arrêter le retournement, transférer
step_first_hatch = Les premiers poussins peuvent venir dès maintenant
step_last_hatch = Les derniers poussins devraient être sortis
step_take_off = Relever l’éclosion dès que les poussins sont secs
step_open_unhatched = Mirer, puis ouvrir les œufs non éclos qui ne sentent pas, ne moussent pas et ne suintent pas, et noter ce que l’on trouve

write_set = œufs mis, poids
write_candle1 = clairs / morts, poids
write_candle2 = clairs / morts, poids
write_transfer = clairs / morts / transférés, poids
write_first_hatch = premier poussin, heure
write_last_hatch = dernier poussin, heure
write_take_off = poussins / écartés / bêchés morts
write_open_unhatched = non fécondés / précoces / milieu / tardifs / mal placés
write_machine_on = sonde - second thermomètre

changed_cause =
    .what = { WORD($cause, kind: "cause") }{ $machine ->
            [none] { "" }
           *[named] { " " }(couveuse { $machine })
        }
    .to = { WORD($cause, kind: "do") }
    .why = Environ { EGGS($eggs) } œufs de { LIST($where, most: 5) } lui sont attribués ({ SHARE($share) } du poids).
changed_no_log =
    .what = Enregistrer la température
    .to = Un thermomètre enregistreur à hauteur des œufs.
    .why = Sans enregistrement, aucune perte ne peut être rapportée à la chaleur ou au froid.
changed_probe_off =
    .what = Vérifier la sonde de la couveuse { $machine } (eau glacée, ou thermomètre médical près de { DEGREES($right) })
    .to = Si le contrôle le confirme, écrire { $way ->
            [high] -
           *[low] +
        }{ TENTH($off) } comme probe_offset_c dans season.toml (en °C), et régler d’autant.
    .why = Les heures d’éclosion de { $batches ->
            [1] 1 couvée
           *[other] { $batches } couvées
        } l’indiquent.
changed_probe_unchecked =
    .what = Vérifier la sonde de la couveuse { $machine }
    .to = La lire dans l’eau glacée ou à côté d’un thermomètre médical ; écrire l’écart dans season.toml, ligne probe_offset_c.
    .why = Tout ce qui est dit de la température ne vaut qu’autant que la sonde dit vrai.
changed_temperature =
    .what = Réglage de la couveuse { $machine }
    .to = { DEGREES($wanted) }
    .why = Elle était { STEP($off) } { $way ->
            [high] au-dessus
           *[low] au-dessous
        } du chiffre du tableau hors épisodes ({ DEGREES($mean) } en moyenne).
changed_humidity =
    .what = Humidité jusqu’au transfert
    .to = { EGGS($to) } % d’humidité relative
    .why = Maintenant { EGGS($now) } %. Les œufs allaient perdre { SHARE($loss) } jusqu’au transfert ; on veut { SHARE($low) } à { SHARE($high) }. Allez-y en deux mises si c’est loin.
changed_storage =
    .what = Mettre plus tôt après la ponte
    .to = Au plus { EGGS($best) } jours.
    .why = { $over } couvées sur { $known } ont attendu plus (au plus { EGGS($longest) } jours). L’éclosion baisse et retarde avec l’attente.
changed_candling =
    .what = Mirer vers le jour { EGGS($day) } quand quelque chose a mal tourné avant
    .to = Un coup d’œil deux jours après tout épisode.
    .why = { $times ->
            [1] Une fois
           *[other] { $times } fois
        } cette saison, les morts d’avant un épisode n’ont pu être séparées de celles d’après.
changed_record =
    .what = Noter : { WORD($need, kind: "need") }
    .to = À garder pour chaque couvée.
    .why = Cela manquait à { $lacking } des { $asked } dernières couvées, et pèserait beaucoup pour nommer une cause.

need_temperature_from_setting_to_take-off__keep_the_logger_running_ = température de la mise à la fin (laisser tourner l’enregistreur)
need_hours_of_the_first_and_the_last_chick = heures du premier et du dernier poussin
need_weights_at_setting_and_at_transfer = poids à la mise et au transfert
need_humidity_while_set__with_the_temperature_ = humidité pendant l’incubation (avec la température)
need_humidity_while_hatching__with_the_temperature_ = humidité pendant l’éclosion (avec la température)
need_days_that_the_eggs_were_kept = jours de conservation des œufs
need_age_of_the_laying_flock = âge des poules pondeuses
need_row_and_column_of_each_egg_on_the_tray = rangée et colonne de chaque œuf sur le plateau
need_how_many_embryos_among_the_opened_late_dead_lay_wrongly = combien de morts tardifs ouverts étaient mal placés
need_rotten_eggs = œufs pourris
need_cracked_eggs = œufs fêlés
need_whether_the_eggs_came_by_post = si les œufs sont venus par la poste
need_clears_opened__no_germ__or_died_early = clairs ouverts : sans germe, ou morts tôt
