# Why a batch was poor, for who looks further: what fits a cause, what speaks against it, how its weight comes about.
reason_stage_more = { $eggs } { WORD($stage, kind: "loss") } quand { $usual } est habituel
reason_stage_few = seulement { $eggs } { WORD($stage, kind: "loss") } quand { $usual } est habituel
reason_stage_none = aucun { WORD($stage, kind: "loss") } ({ $eggs }) quand { $usual } est habituel
reason_stage_not_explained = elle n’explique pas ceci : { $eggs } { WORD($stage, kind: "loss") } quand { $usual } est habituel
reason_stages = { OR($stages) }
reason_days_more = { $eggs } morts { $by_day ->
        [none] après le jour { TENTH($after_day) }
       *[other] entre le jour { TENTH($after_day) } et { $by_day }
    } ({ $stages }, on ne sait lequel ; l’ensemble est d’habitude { $usual })
reason_days_not_explained = elle n’explique pas ceci : { $eggs } morts { $by_day ->
        [none] après le jour { TENTH($after_day) }
       *[other] entre le jour { TENTH($after_day) } et { $by_day }
    } ({ $stages }, on ne sait lequel ; l’ensemble est d’habitude { $usual })
reason_any_pattern = elle admet tout déroulement et ne convient donc jamais bien
reason_good_chicks = { $good } poussins sains sur { $set } œufs mis ; { $usual } est habituel, et { $spread } de plus ou de moins courant
reason_noted = vous avez noté : { WORD($sign, kind: "sign") } (« { $said } »)
reason_lacking = manque : { WORD($item, kind: "needs") }
reason_item = { WORD($item, kind: "item") } : { $value }{ $usual ->
        [none] { "" }
       *[other] { " " }({ $usual } dans vos bonnes couvées)
    }
reason_value = { $more ->
        [yes] +
       *[no] { "" }
    }{ $unit ->
        [share] { SHARE($value) }
        [degrees] { STEP($value) }
        [h] { $value } h
        [m] { $value } m
        [points] { $value } points
        [humidity] { $value } % HR
        [days] { $value ->
            [one] 1 jour
           *[other] { $value } jours
        }
        [weeks] { $value ->
            [one] 1 semaine
           *[other] { $value } semaines
        }
        [doublings] { TENTH($times) } fois
        [tray] 1 sur { $one_in }
        [flag] { $value ->
            [0] non
           *[other] oui
        }
       *[other] { $value }
    }
reason_limit_no_log = Aucune température n’a été enregistrée pour cette couvée ; aucun jugement sur chaleur ou froid ne peut être ferme.
reason_limit_probe = Aucun contrôle de la sonde de cette couveuse n’est noté ; tout ce qui est dit de la température ne vaut que si elle dit vrai.
reason_limit_few = { $batches ->
        [0] Il n’y a pas d’autre couvée de cette espèce
        [1] Il n’y a qu’une autre couvée de cette espèce
       *[other] Il n’y a que { $batches } autres couvées de cette espèce
    } pour comparer ; le relevé publié en tient lieu.
reason_limit_not_opened = Les œufs non éclos n’ont pas été ouverts (ou pas notés) ; les âges de mort sont approximatifs.

# What was different, and the verdict.
different_name = { WORD($item, kind: "item") } : { $value }, { $usual } dans les bonnes
item_flock = troupeau
item_pen = parquet
item_incubator = couveuse
item_shelf = étage
item_hatcher = éclosoir
item_broody = poule couveuse
different_told = Qu’est-ce qui était différent cette fois, à côté { $good ->
        [0] de valeurs publiées, faute de bonne couvée
        [1] de votre seule bonne couvée et de valeurs publiées
       *[other] de vos { $good } bonnes couvées
    } ? { $count ->
        [0] Rien de noté ne diffère.
       *[other] { $told }.
    }
verdict_confident = Couvée { $batch } : très probablement { WORD($cause, kind: "cause") } ({ SHARE($share) } du poids).
verdict_probable = Couvée { $batch } : probablement, sans certitude, { WORD($cause, kind: "cause") } ({ SHARE($share) } du poids).
verdict_two_causes = Couvée { $batch } : probablement deux choses : { WORD($first, kind: "cause") } (environ { EGGS($eggs_first) } œufs) et { WORD($second, kind: "cause") } (environ { EGGS($eggs_second) } œufs).
verdict_bad_luck = Couvée { $batch } : la malchance ordinaire suffit à l’expliquer ({ SHARE($share) } du poids) ; aucune cause ne se détache.
verdict_cannot_tell = Couvée { $batch } : les notes ne peuvent le dire{ $clears ->
        [yes] , à savoir ce qui les a rendus clairs
       *[no] { "" }
    }.
verdict_luck_or_unknown = La malchance ordinaire a le plus de poids, mais on ne sait ce que sont devenus tant d’œufs.
verdict_too_little = Le plus de poids : { WORD($cause, kind: "cause") } ({ SHARE($share) }), trop peu pour la nommer.
verdict_fits = Pour : { $told }.
verdict_against = Contre : { $told }.
verdict_unknown = Inconnu : { $told }.
verdict_tied = Presque à égalité : { $told }{ $more ->
        [0] { "" }
       *[other] { " " }et { $more } autres
    }.
verdict_clears = La perte est surtout faite de clairs : { $eggs } sur { $set } œufs, { $usual } d’habitude. { $opened ->
        [none] Ouvrez-les au prochain mirage : sans germe, voyez les coqs ; avec un germe mort, la conservation ou la chaleur.
       *[other] De ceux que vous avez ouverts, { SHARE($opened) } portaient un germe mort.
    }
verdict_many_unaccounted = { EGGS($eggs) ->
        [one] 1 des { EGGS($set) } œufs mis de la couvée { $batch } a un sort inconnu
       *[other] { EGGS($eggs) } des { EGGS($set) } œufs mis de la couvée { $batch } ont un sort inconnu
    } ; aucune cause ne peut donc être nommée avec assurance.
verdict_unaccounted = { EGGS($eggs) ->
        [one] 1 des { EGGS($set) } œufs mis de la couvée { $batch } a un sort inconnu
       *[other] { EGGS($eggs) } des { EGGS($set) } œufs mis de la couvée { $batch } ont un sort inconnu
    }.
verdict_sign = { WORD($sign, kind: "sign") } (de « { $said } »)
verdict_signs = Signes lus dans vos mots : { $read }.
verdict_remark = Votre remarque sur cette couvée : « { $remark } ».

# How the weight of a cause comes about.
weight_of = D’où vient le poids : { WORD($cause, kind: "cause") } (tant de fois plus probable avec la cause qu’avec la malchance) :
weight_pattern = les jours et les stades où des œufs furent perdus
weight_second = sa part du poids de deux causes ensemble
weight_not_known = { WORD($item, kind: "item") } : inconnu
weight_once = { $what } (le même fait compte plus bas ou plus haut)
weight_together = le tout ensemble{ $ways ->
        [1] { "" }
       *[other] { " " }; le poids de la cause est la moyenne de ses { $ways } âges ou délais, dont voici le plus probable
    }. Avant d’y regarder elle avait { SHARE($prior) } du poids, après { SHARE($share) }.
weight_line = { $size ->
        [beyond] × plus de 100 000
        [large] × { $factor }
       *[small] × { $factor }
    }  { $what }

# Evidence items: what each is, and what it needs.
item_heat = chaleur, par rapport à celle qui diminua l’éclosion de moitié à cet âge
item_cold = heures de développement perdues par le froid
item_transfer_chill = heures de développement perdues autour du transfert
item_log_level = température enregistrée par rapport à celle voulue
item_clock = premier poussin par rapport à l’heure habituelle
item_clock_machine = le même pour les autres couvées de cette couveuse
item_hatch_spread = du premier au dernier poussin
item_water_loss = eau perdue jusqu’au transfert par rapport au but de l’espèce
item_rh_set = humidité pendant l’incubation par rapport à la plage de l’espèce
item_rh_hatch = humidité à l’éclosion par rapport à la plage de l’espèce
item_storage = jours d’attente au-delà du mieux
item_flock_age = semaines des poules hors de 26 à 60
item_flock_clears = clairs des autres couvées de ce troupeau par rapport à d’autres troupeaux
item_flock_deaths = morts du début et du milieu des autres couvées de ce troupeau par rapport à d’autres
item_tray = morts groupées sur une partie du plateau (rareté due au hasard)
item_probe_gap = écart entre les sondes de la couveuse
item_malpositions = mauvaises positions parmi les morts tardives
item_contaminated = œufs pourris sur œufs mis
item_cracked = œufs fêlés sur œufs mis
item_altitude = altitude du lieu
item_posted = œufs venus par la poste
item_flock_own = si le troupeau diffère de ceux des bonnes couvées
item_clears_opened = clairs ouverts au premier mirage portant un germe
needs_heat = relevés de température
needs_cold = relevés de température
needs_log_level = relevés de température
needs_transfer_chill = relevés de température autour du transfert
needs_clock = heure du premier ou du dernier poussin
needs_clock_machine = heures d’éclosion de deux autres couvées de cette couveuse
needs_hatch_spread = heures du premier et du dernier poussin
needs_water_loss = poids à la mise et plus tard
needs_rh_set = relevés d’humidité
needs_rh_hatch = relevés d’humidité après le transfert
needs_storage = jours d’attente des œufs
needs_flock_age = âge du troupeau
needs_flock_clears = autres couvées de ce troupeau et d’un autre à comparer
needs_tray = rangée et colonne de chaque œuf
needs_probe_gap = deux sondes dans la couveuse
needs_malpositions = compte des mauvaises positions
needs_contaminated = compte des œufs pourris
needs_cracked = compte des œufs fêlés
needs_altitude = altitude du lieu (altitude_m dans les réglages)
needs_posted = si les œufs vinrent par la poste
needs_flock_own = troupeaux de cette couvée et de deux autres
needs_clears_opened = clairs ouverts au premier mirage
needs_flock_deaths = autres couvées de ce troupeau et d’un autre à comparer

# Signs of what happened, beside those that are seen (workbook.ftl).
sign_power_cut = coupure de courant
sign_chilled = œufs refroidis
sign_overheated = il a fait trop chaud
sign_turner_stopped = le retournement est tombé en panne
sign_turned_late = retournés jusqu’aux derniers jours
sign_vents_shut = aération fermée ou air vicié
sign_ran_dry = plus d’eau dans la machine
sign_opened_often = ouverte souvent pendant l’éclosion
sign_posted = œufs venus par la poste
sign_shaken_frosty = secoués, gelés ou gardés trop au chaud avant la mise
sign_dirty_washed = œufs sales ou lavés
sign_disinfected = désinfecté pendant l’incubation
sign_fumes = vapeurs ou peinture dans la pièce
sign_transfer_jolted = choc ou froid au transfert
sign_stored_small_end_up = petit bout en haut
sign_fan_stopped = le ventilateur s’est arrêté
sign_poor_feed = aliment pauvre ou vieux des reproducteurs
sign_ill_flock = maladie dans le troupeau
sign_cock_trouble = un coq malade, vieux, absent ou avec trop de poules
sign_eggs_old = œufs gardés longtemps
sign_old_hens = œufs de vieilles poules ou de poulettes
sign_ran_warm = un peu trop chaud tout du long
sign_ran_cool = un peu trop frais tout du long
sign_damp_air = trop humide dans la couveuse
sign_dry_air = trop sec dans la couveuse
sign_hatch_without_water = pas d’eau pour l’éclosion
sign_uneven_machine = endroits chauds et froids dans la couveuse
sign_lowland_eggs = œufs de plaine mis en altitude
sign_hatcher_dirty = éclosoir non nettoyé
sign_covered_machine = une couveuse couverte
sign_floor_eggs = œufs de sol
