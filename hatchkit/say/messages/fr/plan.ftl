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
    .to = { WORD($cause, kind: "do") }{ $target ->
            [none] { "" }
           *[other] { " " }{ $target }
        }
    .why = Environ { EGGS($eggs) } œufs de { LIST($where, most: 5) } lui sont attribués.
    .now = { $shown ->
            [none] le déroulement des pertes
           *[other] { $shown }
        }
    .how_sure = { $sure ->
            [very] très probable
            [probable] probable
           *[several] une parmi plusieurs qui conviennent
        } ({ SHARE($share) })
changed_no_log =
    .what = Enregistrer la température
    .to = Un thermomètre enregistreur à hauteur des œufs.
    .why = Sans enregistrement, aucune perte ne peut être rapportée à la chaleur ou au froid.
    .now = aucun relevé
    .how_sure = certain : rien n’a été noté
changed_probe_off =
    .what = Vérifier la sonde de la couveuse { $machine } (à côté d’un thermomètre médical près de { DEGREES($right) })
    .to = Si le contrôle le confirme, écrire { $way ->
            [high] -
           *[low] +
        }{ TENTH($off) } comme probe_offset_c dans season.toml (en °C), et régler d’autant.
    .why = Les heures d’éclosion de { $batches ->
            [1] 1 couvée
           *[other] { $batches } couvées
        } l’indiquent.
    .now = indique environ { STEP($off) } { $way ->
            [high] de trop ; les œufs étaient plus froids qu’elle ne dit
           *[low] de moins ; les œufs étaient plus chauds qu’elle ne dit
        }
    .how_sure = assez sûr du sens, non de la grandeur ; vérifiez avant de changer
changed_probe_unchecked =
    .what = Vérifier la sonde de la couveuse { $machine }
    .to = La lire à côté d’un thermomètre médical près de { DEGREES($right) } ; dans l’eau glacée seulement si elle peut être mouillée, et l’écart n’y est pas forcément le même qu’au chaud ; écrire l’écart dans season.toml, ligne probe_offset_c.
    .why = Tout ce qui est dit de la température ne vaut qu’autant que la sonde dit vrai.
    .now = aucun contrôle noté
    .how_sure = certain : aucun contrôle n’est noté
changed_temperature =
    .what = Réglage de la couveuse { $machine }
    .to = { DEGREES($wanted) }
    .why = Elle était { STEP($off) } { $way ->
            [high] au-dessus
           *[low] au-dessous
        } du chiffre du tableau hors épisodes.
    .now = { DEGREES($mean) } en moyenne
    .how_sure = sûr de l’enregistrement ; voir le contrôle de la sonde
changed_humidity =
    .what = Humidité jusqu’au transfert
    .to = { EGGS($to) } % d’humidité relative
    .why = Les œufs allaient perdre { SHARE($loss) } jusqu’au transfert ; on veut { SHARE($low) } à { SHARE($high) }. Allez-y en deux mises si c’est loin.
    .now = { EGGS($now) } % d’humidité relative
    .how_sure = d’après les poids de { $batches ->
            [1] 1 couvée
           *[other] { $batches } couvées
        }; une sonde d’humidité peut dévier de 3 points
changed_storage =
    .what = Mettre plus tôt après la ponte
    .to = Au plus { EGGS($best) } jours.
    .why = { $over } couvées sur { $known } ont attendu plus (au plus { EGGS($longest) } jours). L’éclosion baisse et retarde avec l’attente.
    .now = { $over } couvées sur { $known } ont attendu plus de { EGGS($best) } jours (au plus { EGGS($longest) })
    .how_sure = bien connu ; ce que cela coûte à vos œufs ne l’est pas
changed_candling =
    .what = Mirer vers le jour { EGGS($day) } quand quelque chose a mal tourné avant
    .to = Un coup d’œil deux jours après tout épisode.
    .why = { $times ->
            [1] Une fois
           *[other] { $times } fois
        } cette saison, les morts d’avant un épisode n’ont pu être séparées de celles d’après.
    .now = aucun coup d’œil entre l’épisode et le mirage suivant
    .how_sure = sûr que cela aurait renseigné ; non que le jugement aurait changé
changed_record =
    .what = Noter : { WORD($need, kind: "need") }
    .to = À garder pour chaque couvée.
    .why = Cela manquait à { $lacking } des { $asked } dernières couvées, et pèserait beaucoup pour nommer une cause.
    .now = { $asked ->
            [1] pas noté pour votre seule couvée
           *[other] manque à { $lacking } des { $asked } dernières couvées
        }
    .how_sure = certain : cela n’y était pas

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

target_temperature = Tenez { DEGREES($wanted) }{ $machine ->
        [none] { "" }
       *[named] { " " }dans la couveuse { $machine }
    }.
target_humidity = Tenez { EGGS($to) } % d’humidité relative jusqu’au transfert.
target_humidity_range = Tenez { EGGS($low) } à { EGGS($high) } % d’humidité relative{ $where ->
        [setter] { " " }jusqu’au transfert
       *[hatcher] { " " }pendant l’éclosion
    }.
target_storage = Au plus { EGGS($best) } jours.
step_cooling = { $species ->
        [muscovy] Refroidir les œufs une demi-heure et les asperger d’eau à { DEGREES($water_c) }, trois fois par semaine jusqu’au transfert
        [duck] Asperger légèrement les œufs, si vous le faites ; chez le colvert cela a plus que doublé l’éclosion, pour les autres canes c’est l’usage
        [goose] Refroidir les œufs quelques minutes et les asperger, si vous le faites : usage, aucun essai que nous ayons lu
        [mulard] Refroidir et asperger comme pour la cane de Barbarie, si vous le faites : usage, aucun essai que nous ayons lu
       *[swan] Refroidir et asperger comme pour les oies, si vous le faites : usage, aucun essai que nous ayons lu
    }
why_cooling = Jusqu’au transfert ; pas dans les trois derniers jours.
why_collect = L’éclosion est la meilleure avec des œufs gardés au plus { EGGS($best) } jours ; au-delà de { EGGS($most) } jours, attendez peu. Gardez-les à 10-18 °C et environ 70 % d’humidité, et retournez-les chaque jour.
why_machine_on = Une journée montre l’écart de la nuit ; deux à trois heures sont le minimum.
why_warm_up = Lentement, pour qu’ils ne suent pas.
why_set = L’heure de la mise est l’heure 0 de tout ce qui suit. Les œufs mettent 6 à 8 h à se réchauffer : ne touchez pas au réglage pendant deux jours.
why_candle1 = Retirez et ouvrez les clairs et les morts, et notez où ils en étaient.
why_care_day = Mirez avant d’ouvrir un œuf ; le jour publié le plus strict est retenu.
why_transfer = Portez l’humidité à { EGGS($low) }-{ EGGS($high) } % et laissez le couvercle fermé jusqu’à la fin de l’éclosion.
why_first_hatch = Une demi-fenêtre d’éclosion de { EGGS($window_h) } h et { EGGS($doubt_h) } h de doute avant le milieu, placé ici aux jours d’usage. L’horloge d’éclosion du bilan le place { EGGS($earlier_h) } h plus tôt, car la plupart des poussins viennent avant le jour d’usage ; le doute couvre les deux.
why_last_hatch = Une demi-fenêtre d’éclosion et le même doute après le milieu.{ $longest ->
        [none] { "" }
       *[other] { " " }Selon d’autres textes ou races, il faut jusqu’à { TENTH($longest) } jours.
    }
why_take_off = Environ { EGGS($drying_h) } h pour sécher ; le jaune nourrit un poussin deux jours.
why_open_unhatched = Les poussins tardifs ont eu deux jours de plus. Voir le guide d’ouverture et ses précautions.
why_candle2 = Retirez et ouvrez les clairs et les morts, et notez où ils en étaient.
