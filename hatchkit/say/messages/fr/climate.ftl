# Ce que racontent couveuse, thermomètre, heures et balance, pour qui veut aller plus loin.

lasting = { $unit ->
        [min] { EGGS($number) } min
        [h] { TENTH($number) } h
       *[days] { TENTH($number) } jours
    }

## Ce qui, dans une courbe, parle pour son mot

evidence_jumped = saut de { STEP($in_k) } et retour de { STEP($out_k) } entre deux mesures, sans courbe
evidence_probes = les sondes de la couveuse s’écartent de { STEP($apart_k) } de plus qu’avant : l’une d’elles se trompe
evidence_loading = dans les premières heures après la mise ; { STEP($depth_k) } au-dessous de ce qu’il faut
evidence_unlogged = { DEGREES($extreme_c) } au plus { $worst ->
        [coldest] froid
       *[warmest] chaud
    }, { $since ->
        [setting] hors de la plage depuis la mise pendant { $whole_h }
        [too_long] hors de la plage depuis la mise pendant { $whole_h }, plus que les œufs ne mettent à se réchauffer
       *[unknown] et ce qu’il y avait juste avant n’est pas enregistré
    }{ $stayed ->
        [yes] {" "}; resté chaud pendant { $whole_h }
       *[no] { "" }
    }
evidence_fell_slowly = baisse lente de { STEP($depth_k) }, en { $over_h }
evidence_fell_fast = baisse de { STEP($depth_k) }, la plus grande part en { $most_h }{ $then ->
        [ajar] {" "}; resté bas pendant { $whole_h } (laissé entrouvert ?)
        [back] , de retour dans la plage après { $whole_h }
       *[open] { "" }
    }{ $dry_pct ->
        [none] { "" }
       *[drier] {" "}; l’humidité a baissé de { EGGS($dry_pct) } %, comme quand l’air de la pièce entre
    }
evidence_cooled = baisse de { STEP($fell_k) } en { $over_h }, au plus { STEP($per_hour_k) } par heure, jusqu’à { DEGREES($extreme_c) } : comme une caisse refroidit sans chauffage{ $damp_pct ->
        [none] { "" }
       *[damper] {" "}; l’humidité a monté de { EGGS($damp_pct) } %, comme dans une caisse fermée
    }
evidence_fell = baisse de { STEP($depth_k) } en { $over_h }{ $coarse ->
        [yes] {" "}; les mesures sont trop espacées pour voir la courbe
       *[no] { "" }
    }
evidence_rose = hausse de { STEP($depth_k) } en { $over_h } jusqu’à { DEGREES($extreme_c) }{ $stayed ->
        [yes] {" "}; resté chaud pendant { $whole_h }
       *[no] { "" }
    }
evidence_beside = a tourné à { DEGREES($at_c) } environ, constamment { $off_k ->
        [0] juste
       *[far] { STEP($off_k) }
    } { $side ->
        [below] au-dessous
       *[above] au-dessus
    } de la plage pour { $hatching ->
        [yes] l’éclosion en{" "}
       *[no] { "" }
    }{ $air ->
        [still] air calme
       *[fan] air ventilé
    } ({ DEGREES($low_c) } à { DEGREES($high_c) }{ $air ->
        [still] {" "}au-dessus des œufs
       *[fan] { "" }
    } ; on veut environ { DEGREES($wanted_c) }{ $assumed ->
        [yes] {" "}; season.toml ne dit pas si elle a un ventilateur
       *[no] { "" }
    })

## Un épisode en entier

spell_told = { $event }. Couveuse { $incubator }, dès le { MINUTE($start) }, { $lasting } : { $on ->
        [egg] l’œuf estimé trop { $kind ->
            [warm] chaud dans un air de { DEGREES($extreme_c) } au plus
           *[cold] froid dans un air de { DEGREES($extreme_c) } au moins
        }
       *[air] l’air { $level ->
            [watch] un peu{" "}
            [alarm] nettement{" "}
            [serious] beaucoup{" "}
           *[other] { "" }
        }trop { $kind ->
            [warm] chaud
           *[cold] froid
        }, au pire { DEGREES($extreme_c) }
    }. { $looks_like ->
        [unclear] Pas clair d’après la courbe
       *[known] D’après la courbe, { WORD($looks_like, kind: "spell") }
    } : { $evidence }. La couvée { $batch } avait { TENTH($day_start) } jours ; ses œufs ont atteint environ { DEGREES($egg_extreme_c) } ({ DEGREES($egg_extreme_low_c) } à { DEGREES($egg_extreme_high_c) }, 8 chances sur 10).
spell_beside = { $event }. Couveuse { $incubator }, dès le { MINUTE($start) }, { $lasting } : elle { $evidence }. La couvée { $batch } avait { TENTH($day_start) } jours au début ; ses œufs étaient à environ { DEGREES($egg_extreme_c) } ({ DEGREES($egg_extreme_low_c) } à { DEGREES($egg_extreme_high_c) }, 8 chances sur 10).
spell_hole = Pendant { SHARE($gap_share) } de ce temps rien n’a été enregistré : ce qui s’est passé alors est inconnu.
heat_little = Trop peu pour le dommage de chaleur vu dans les essais ; des jours de suite au-dessus de la plage peuvent pourtant ralentir ou fatiguer les embryons.
heat_told = Chaleur : { $heat_band ->
        [low] faible
        [watch] moyenne
       *[high] forte
    }. Ses 24 h les pires équivalent à { TENTH($heat_dose_h) } h de l’œuf à { DEGREES($dose_at_c) }, { WHOLE($share) } de la dose qui a coûté la moitié de l’éclosion à peu près à cet âge ({ EGGS($half_h) } h dans un air de { DEGREES($half_c) } au jour { EGGS($half_day) } ; { $source }). Cela classe les épisodes par chaleur ; cela ne prédit pas combien meurent.
heat_common = Le conseil courant met en garde contre { DEGREES($warned_c) } pendant 15 minutes ; dans un essai, 24 h à { DEGREES($warned_c) } au jour 16 n’ont pas fait grand mal (Thompson, Wilson & Brown 1976) : prenez ce conseil comme une prudence, pas comme un verdict.
cold_unknown = Ce qu’il a coûté est inconnu : rien d’utilisable n’a été enregistré.
cold_cost = { $lost_hours ->
        [0] Il n’a presque pas coûté de développement.
       *[hours] Il a coûté environ { TENTH($lost_hours) } h de développement.
    }
cold_young = Dans les premiers jours l’embryon est juste sous la coquille et refroidit plus vite que l’œuf entier (de { STEP($bench_k) } en 10 minutes sur une table, Am. J. Physiol. 234:R183, 1978) : ouvrez brièvement.
cold_below_10 = Les œufs ont été au-dessous de { DEGREES($below_c) } pendant { $lasting } ; les embryons de 17 jours souffrent après environ 4 h de cela.
cold_below_20 = Les œufs ont été au-dessous de { DEGREES($below_c) } pendant { $lasting } ; des embryons de 17 jours ont supporté 24 h à { DEGREES($well_c) } sans dommage, à { DEGREES($ill_c) } non (Can. J. Anim. Sci. vers 1970).

## Couveuses et thermomètres

machine_nothing = Couveuse { $incubator } : rien n’a été enregistré pendant que des œufs étaient dedans.
machine_steady = Couveuse { $incubator } : { WHOLE($share_logged) } du temps avec des œufs est enregistré ; les jours ordinaires { DEGREES($mean_c) } en moyenne, 8 mesures sur 10 à { STEP($swing_c) } près{ $off_set_point_c ->
        [none] { "" }
       *[off] , { SIGNED($off_set_point_c) } de la consigne
    }{ $day_night_c ->
        [none] { "" }
       *[apart] {" "}; jours moins nuits { SIGNED($day_night_c) }
    }. Dans la plage { SHARE($share_in_band) } du temps enregistré, au niveau d’alarme ou au-delà { SHARE($share_alarm) } ; { $opened ->
        [never] l’enregistrement ne montre aucune ouverture
        [seldom] d’après l’enregistrement, ouverte moins d’une fois par mois
       *[often] d’après l’enregistrement, ouverte environ { TENTH($a_week) } fois par semaine
    }.
machine_coarse = Avec { EGGS($step_minutes) } min entre les mesures, une pointe courte peut échapper, et jusqu’à { WHOLE($unseen_share) } de celle-ci atteindrait un œuf de poule.
probe_unknown = Couveuse { $incubator }, sonde { $probe } : jamais vérifiée, et rien d’autre ne dit son erreur.
probe_told = Couveuse { $incubator }, sonde { $probe } : { LIST($told) }.
probe_offset = une vérification a donné un écart de { SIGNED($offset_c) }, dont il est tenu compte
probe_against = elle indique { SIGNED($differs_c) } par rapport à la sonde { $other_probe }
probe_by_clock = les heures d’éclosion de { $clock_batches ->
        [1] une couvée
       *[other] { $clock_batches } couvées
    } iraient avec une sonde qui { $true ->
        [yes] indique juste
       *[no] s’écarte de { SIGNED($clock_bias_c) }
    }{ $clock_low_c ->
        [none] { "" }
       *[range] {" "}({ SIGNED($clock_low_c) } à { SIGNED($clock_high_c) })
    }
probe_do_disagree = Vérifiez les deux à côté d’un thermomètre médical vers { DEGREES($right_c) }.
probe_do_high = Vérifiez-la : si elle indique trop, les œufs étaient plus froids que ne le dit l’enregistrement.
probe_do_low = Vérifiez-la : si elle indique trop peu, les œufs étaient plus chauds que ne le dit l’enregistrement.

## Les heures

clock_names = { $verdict ->
        [on_time] Écloses dans ce qu’une telle prévision peut dire
        [not_seen] Sans heures d’éclosion
       *[cannot_tell] Impossibles à juger, faute d’enregistrement
    } ({ COUNT($batches) } sur { $of }) : { LIST($batches) }.
clock_no_batch = Aucune couvée n’a d’éclosion dont on puisse juger l’heure.
clock_not_expected = Couvée { $batch } : pas d’éclosion prévue, car l’espèce ou l’heure de la mise n’est pas connue.
clock_told = Couvée { $batch } : le milieu de l’éclosion était attendu vers le { $by_day ->
        [yes] { DATE($expected_at) }
       *[no] { MINUTE($expected_at) }
    } (± { $half_h } ; d’habitude au jour { TENTH($usual_day) }, { $storage_h ->
        [none] garde inconnue
       *[known] garde { HOURS($storage_h) }
    }, { $temperature_h ->
        [none] température inconnue
       *[known] température { HOURS($temperature_h) }
    }){ $came ->
        [not_seen] {" "}; aucune heure d’éclosion n’est notée.
        [then] {" "}et est venu alors
        [earlier] {" "}et est venu { EGGS($hours) } h plus tôt
       *[later] {" "}et est venu { EGGS($hours) } h plus tard
    }{ $verdict ->
        [not_seen] { "" }
        [cannot_tell] , mais seulement { WHOLE($share_logged) } du temps est enregistré : on ne peut dire si c’est tôt ou tard.
        [on_time] {" "}: dans ce qu’une telle prévision peut dire.
       *[off] , au-delà du doute de la prévision. Une sonde qui indique { STEP($probe_error_c) } { $reads ->
            [high] de trop
           *[low] de moins
        } l’expliquerait à elle seule ; de même une heure de mise fausse, ou le lot.
    }
clock_earlier = Le milieu d’une éclosion est mis { EGGS($before_h) } h avant le jour d’usage pour les poules, en proportion pour les autres : ce jour-là, le gros d’une bonne éclosion est sorti. Le plan nomme ce jour même, pour lequel il faut être prêt.

## L’eau

water_told = Couvée { $batch } : { SHARE($loss_share) } du poids perdu au jour { EGGS($loss_day) }, { SHARE($projected_share) } à attendre au transfert ({ SHARE($projected_low) } à { SHARE($projected_high) } ; cible { WHOLE($target_low) } à { WHOLE($target_high) } au jour { EGGS($transfer_day) }) : { $verdict ->
        [on_target] dans la cible
        [too_little] trop peu
        [too_much] trop
       *[cannot_tell] on ne peut pas le dire
    }.
water_from_shells = Couvée { $batch } : pas pesée. D’après les coquilles de l’espèce et l’humidité seules, environ { WHOLE($projected_share) } ({ WHOLE($projected_low) } à { WHOLE($projected_high) } ; cible { WHOLE($target_low) } à { WHOLE($target_high) } au jour { EGGS($transfer_day) }) : pesez quelques œufs pour le savoir.
water_next = Pour toucher le milieu de la cible avec de tels œufs, dès le début : { WORD($next, kind: "humidity") }{ $next ->
        [possible] {" "}{ EGGS($rh_next_pct) } % d’humidité
       *[other] { "" }
    }{ $now ->
        [none] { "" }
       *[told] {" "}; dès maintenant : { WORD($now, kind: "humidity") }{ $now ->
            [possible] {" "}{ EGGS($rh_now_pct) } % d’humidité
           *[other] { "" }
        }
    } (enregistré : { EGGS($rh_pct) } %).
humidity_possible = environ
humidity_too_dry = un air plus sec qu’une couveuse ne peut donner
humidity_too_damp = un air plus humide qu’il n’est prudent
water_roughly = Pas pesées, donc connues seulement en gros, d’après les coquilles de leur espèce : { LIST($batches) }.
water_not_known = Pas pesées, donc inconnues : { LIST($batches) }.
water_weigh = Pesez un plateau à la mise et à chaque mirage : cela prend quelques minutes et dit quelle humidité vos œufs demandent.
water_why_no_species = Couvée { $batch } : l’espèce ou l’heure de la mise n’est pas connue.
water_why_no_humidity = Couvée { $batch } : pas de pesées et pas d’humidité enregistrée.
water_why_namesakes = Couvée { $batch } : on ne dit pas quel œuf a été pesé.
water_why_no_living = Couvée { $batch } : aucun œuf pesé n’était vivant et entier.
water_why_one_egg = Un seul œuf, et les œufs d’un lot diffèrent plus que la cible n’est large.
water_why_reaches_in = Hors de la cible, mais l’intervalle y entre.
water_why_too_wide = Dans la cible, mais l’intervalle est plus de deux fois plus large qu’elle.
water_why_taken_off = Des œufs ont été enlevés entre les pesées : l’intervalle en tient compte.
water_why_heavy = { EGGS($set_g) } g par œuf, c’est bien plus que d’habitude pour l’espèce : le plateau est-il resté sur la balance ? Un plateau pesé avec fait paraître la perte trop petite.

## Comment s’appelle un épisode

stage_opening = un couvercle ou une porte ouverts
stage_drift = une lente dérive
stage_outage = chauffage coupé (courant ou résistance)
stage_overheating = surchauffe
stage_sensor = une mesure fausse plutôt que l’air réel
stage_loading = la mise des œufs
stage_steady = une couveuse hors de sa plage pendant des jours
stage_unclear = pas clair d’après la courbe
