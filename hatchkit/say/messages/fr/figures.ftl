# Les mots sur les images (drawn_*) et ce que montre chaque image, pour qui ne peut la voir (picture_*).

# Comment les pertes suivent la dose d’un épisode

drawn_dose_title = Embryons perdus (% des vivants au début)
drawn_dose_axis = Dose de chaleur ou de froid dans l’œuf
    (1 de plus : environ deux fois plus de degrés-heures)
drawn_dose_range = habituel
    sans
    épisode
drawn_no_spell = { $batches ->
        [1] aucun épisode (1 couvée)
       *[other] aucun épisode ({ $batches } couvées)
    }

picture_losses_against_dose = { $hit ->
        [0] Aucune couvée n’a subi dans l’œuf un épisode de chaleur ou de froid qui compte ; il n’y a rien à comparer.
       *[other] { $above ->
            [0] Sur { $hit ->
                [1] la seule couvée
               *[other] les { $hit } couvées
            } qui ont subi un épisode de chaleur ou de froid dans l’œuf, aucune n’a perdu plus d’embryons que ne perdent sans doute les couvées sans épisode.
           *[other] { $above } sur { $hit } { $hit ->
                [1] couvée
               *[other] couvées
            } avec un épisode de chaleur ou de froid dans l’œuf ont perdu plus d’embryons que ne perdent sans doute les couvées sans épisode : le plus, { $worst }, { SHARE($worst_share) } (sans épisode au plus { SHARE($worst_high) }).
        } Sur { $free ->
            [1] 1 couvée
           *[other] { $free } couvées
        } sans un tel épisode, { $free_above ->
            [0] aucune n’a perdu
            [1] 1 a perdu
           *[other] { $free_above } ont perdu
        } plus que cela.
    }

# Quand les embryons sont morts

drawn_age_axis = Âge (jours depuis la mise)
drawn_age_lost_axis = Embryons perdus (% de { $eggs } vivants)
drawn_share = { SHARE($share) }
drawn_band = bande à 95 %
drawn_no_known_end = Aucun œuf au sort connu pour l’instant

picture_death_age = { $deaths ->
        [0] Aucun de { $eggs } embryons vivants ({ WORD($species, "species") }) n’est mort.
       *[other] { SHARE($lost) } de { $eggs } embryons vivants ({ WORD($species, "species") }) sont morts (bande à 95 % de { SHARE($low) } à { SHARE($high) }) ; la plus grande marche, { SHARE($most_share) }, se trouve entre le jour { NUMBER($most_from, maximumFractionDigits: 0) } et le jour { NUMBER($most_to, maximumFractionDigits: 0) }. Quel jour dans une marche, on ne le sait pas.
    }

drawn_embryos_lost_axis = Embryons perdus (%)
drawn_lost_end = { $who } : { SHARE($share) }

picture_age_against_season = La couvée { $batch } a perdu { SHARE($lost) } de ses embryons, son espèce sur la saison { SHARE($kin) } (bande à 95 % de { SHARE($low) } à { SHARE($high) }) : { $beyond ->
        [above] plus que sa bande
        [below] moins que sa bande
       *[within] dans sa bande
    }. { $step ->
        [0] Aucune marche ne ressort.
       *[other] La plus grande marche, { SHARE($step) }, se trouve entre le jour { NUMBER($day_from, maximumFractionDigits: 0) } et le jour { NUMBER($day_to, maximumFractionDigits: 0) }.
    }

# Causes

drawn_weight = { SHARE($share) }{ $tie ->
        [yes] { " " }(égalité)
       *[no] { "" }
    }

picture_ranked_causes = Couvée { $batch } : { WORD($first, kind: "cause") } a { SHARE($share) } du poids parmi toutes les causes possibles, { WORD($second, kind: "cause") } { SHARE($second_share) }{ $ties ->
        [0] .
       *[other] { ". " }{ $ties } autres sont à égalité avec la première : les relevés ne peuvent pas les séparer.
    }

drawn_what_if_stage = Perdus au stade (losange : habituel)
drawn_what_if_cause = Attribués à
drawn_what_if_excursions = Sans coups de chaud ni de froid
drawn_what_if_chicks = poussins de plus, si le surplus de morts en venait
drawn_what_if_number = { $eggs }{ $ranged ->
        [yes] { " " }({ $low } à { $high })
       *[no] { "" }
    }{ $known ->
        [yes] { " " }(habituel { $usual })
       *[no] { "" }
    }

picture_what_if = La plupart des œufs de la saison ont été perdus comme { WORD($stage, "drawn_stage") } : { $eggs }{ $usual ->
        [none] { "" }
       *[other] { " " }(habituel pour tant d’œufs : { $usual })
    }. { $cause ->
        [none] Aucun n’est attribué à une cause nommée.
       *[other] Parmi les causes nommées, le plus, environ { $cause_eggs }, est attribué à : { WORD($cause, kind: "cause") }.
    } { $spells ->
        [yes] Sans coups de chaud ni de froid, environ { $chicks } poussins de plus ({ $low } à { $high }), si le surplus de morts en venait.
       *[no] On ne peut pas dire si les coups de chaud et de froid ont coûté des poussins.
    }

drawn_stage_hatched = poussins sains
drawn_stage_culled = poussins écartés
drawn_stage_clear = œufs clairs ou non fécondés
drawn_stage_infertile = œufs non fécondés
drawn_stage_early = morts précoces
drawn_stage_mid = morts du milieu
drawn_stage_late = morts tardifs
drawn_stage_pipped_dead = bêchés et morts
drawn_stage_removed = retirés
drawn_stage_unaccounted = sort inconnu

drawn_ladder_for = parle pour
drawn_ladder_against = parle contre
drawn_ladder_said = { $name }{ $said ->
        [none] { "" }
       *[other] , vous l’avez noté
    }
drawn_ladder_item = { $name } : { $value } (habituel { $usual })
drawn_ladder_pattern = quand et à quel stade les œufs ont été perdus
drawn_ladder_before = sa fréquence, à côté de la malchance
drawn_strength = { $strength ->
        [for_very_strong] très fortement
        [for_strong] fortement
        [for_some] un peu
        [for_hardly] à peine
        [against_very_strong] très fortement
        [against_strong] fortement
        [against_some] un peu
        [against_hardly] à peine
        [unknown] inconnu
       *[none] ni l’un ni l’autre
    }

picture_ladder = Indices sur la couvée { $batch } pour : { WORD($cause, kind: "cause") } (poids { SHARE($share) }). { $for_kind ->
        [nothing] Rien ne parle pour elle
        [pattern] Le plus fort pour elle : quand et à quel stade les œufs ont été perdus
        [before] Le plus fort pour elle : sa fréquence
        [item] Le plus fort pour elle : { WORD($for_part, kind: "item") }
       *[sign] Le plus fort pour elle : { WORD($for_part, kind: "sign") }
    } ; { $against_kind ->
        [nothing] rien ne parle contre elle
        [pattern] le plus fort contre elle : quand et à quel stade les œufs ont été perdus
        [before] le plus fort contre elle : elle est plus rare que la malchance
        [item] le plus fort contre elle : { WORD($against_part, kind: "item") }
       *[sign] le plus fort contre elle : { WORD($against_part, kind: "sign") }
    }. { $unknown ->
        [0] Rien de ce qui compte pour elle n’est inconnu.
        [1] Une chose qui compte pour elle est inconnue.
       *[other] { $unknown } choses qui comptent pour elle sont inconnues.
    }

# Ce qui était différent

drawn_nothing_different = Rien de ce qui a été noté ne différait des bonnes couvées.
drawn_away_less = moins
drawn_away_usual = comme d’habitude
drawn_away_more = plus
drawn_difference_words = { $name } : { $value } (bonnes couvées : { $usual })

picture_differences = { $count ->
        [0] Rien de ce qui a été noté de la couvée { $batch } ne différait des bonnes couvées.
        [1] Une chose différait à la couvée { $batch } : { WORD($name, kind: "item") }, { $value } (habituel { $usual }).
       *[other] { $count } choses différaient à la couvée { $batch }, surtout : { WORD($name, kind: "item") }, { $value } (habituel { $usual }).
    }

picture_drawings = Dessins simples d’œufs ouverts, le gros bout avec la chambre à air en haut, dans cet ordre : { WORDS($looks, kind: "breakout_look") }.
drawn_swollen_neck =
    nuque
    gonflée
drawn_small_cell =
    petite
    chambre à air
drawn_large_cell =
    grande
    chambre à air
drawn_dry_skin = peau tendue et sèche
drawn_seen_from =
    vu de dos, gros bout en haut :
    D aile droite, G aile gauche
drawn_wing_R = D
drawn_wing_L = G
drawn_beak = bec
drawn_no_vessels = pas de vaisseaux
drawn_look_of_days = { WORD($look, kind: "breakout_look") } (jour { breakout_days })

# Pertes

drawn_no_batch = Aucune couvée à montrer
drawn_eggs_set = œufs mis
drawn_eggs_excess = comptés en plus des œufs mis
drawn_good_chicks = poussins sains
drawn_share_of_set_axis = Part des œufs mis (%)
drawn_chart_limit = limite habituelle
drawn_chart_mean = moyenne
drawn_chart_axis = Couvées dans l’ordre de mise
drawn_chart_title = { WORD($stage, "drawn_stage") } (% des { $of ->
        [fertile] œufs ni clairs ni non fécondés
       *[set] œufs mis
    })
drawn_tray = { $name ->
        [none] plateau
       *[other] plateau { $name }
    }
drawn_no_places = Aucun œuf n’a de place connue sur un plateau.
drawn_tray_machine = { $machine ->
        [none] { drawn_tray_plain }
       *[other] { $machine } : { drawn_tray_plain }
    }
drawn_tray_plain = { $tray ->
        [none] plateau
       *[other] plateau { $tray }
    }
drawn_tray_season_title = Embryons morts à chaque place (nombre ; disque : part)

picture_egg_ledger = Sur { NUMBER($eggs_set, maximumFractionDigits: 0) } œufs mis, { NUMBER($chicks, maximumFractionDigits: 0) } ont donné des poussins sains{ $stage ->
        [none] . Rien n’a été perdu.
       *[other] ; la plus grande perte est { NUMBER($eggs, maximumFractionDigits: 0) } ({ WORD($stage, "drawn_stage") }), puis { $second ->
            [none] rien d’autre
           *[other] { NUMBER($second_eggs, maximumFractionDigits: 0) } ({ WORD($second, "drawn_stage") })
        }.
    }

picture_losses_by_group = { $count ->
        [0] Aucun groupe n’a de part à montrer.
        [1] { $best } : { SHARE($best_share) } des œufs mis ont donné des poussins sains.
       *[other] Poussins sains des œufs mis : de { SHARE($worst_share) } ({ $worst }) à { SHARE($best_share) } ({ $best }). { $worst } a perdu le plus comme { WORD($stage, "drawn_stage") }, { SHARE($stage_share) } de ses œufs.
    }

picture_season_chart = { $outside ->
        [0] Sur { $batches } couvées dans l’ordre de mise, aucune n’est hors des limites habituelles ({ WORD($stage, "drawn_stage") }) ; la moyenne de la saison est { SHARE($mean) }.
       *[other] Sur { $batches } couvées dans l’ordre de mise, { LIST($names) } { $outside ->
            [1] est
           *[other] sont
        } hors des limites habituelles ({ WORD($stage, "drawn_stage") }) ; la moyenne de la saison est { SHARE($mean) }.
    }

picture_tray_map = Plateau de la couvée { $batch } : sur { $eggs } œufs dont la place est connue, { $hatched } ont éclos et { $died } embryons sont morts, dont { $edge } au bord du plateau. { $together ->
        [yes] Les morts étaient plus groupés que le hasard ne le voudrait.
        [no] Les morts étaient placés au hasard.
       *[other] Trop peu sont morts pour demander s’ils étaient groupés.
    }

picture_tray_season = Sur { $batches ->
        [1] 1 couvée
       *[other] { $batches } couvées
    } dont les places sont connues, { $died } embryons sur { $eggs } sont morts. { $together ->
        [yes] { $question ->
            [edge] Les morts se partageaient inégalement entre le bord et le milieu, plus que le hasard ne le voudrait : { SHARE($seen) } au bord, où le hasard donnerait { SHARE($expected) }.
           *[neighbours] Les morts étaient côte à côte plus que le hasard ne le voudrait : { NUMBER($seen, maximumFractionDigits: 0) } paires voisines, où le hasard en donnerait { NUMBER($expected, maximumFractionDigits: 0) }.
        }
        [no] La place sur le plateau n’a fait aucune différence que l’on puisse distinguer du hasard.
       *[other] Trop peu sont morts pour demander si la place a compté.
    }

# Pertes à côté de la chaleur et du froid

drawn_window = { $name } ({ $batches ->
        [1] 1 couvée exposée
       *[other] { $batches } couvées exposées
    }, { $deaths } morts)
drawn_nothing_to_compare = rien à comparer
drawn_same = pareil
drawn_hazard_axis = Taux de mort des exposés, en multiple des autres

picture_hazard_by_window = { $name ->
        [none] Aucune période ne peut être comparée : il faut dans la même période des embryons qui ont eu chaud ou froid et d’autres non.
       *[other] Taux de mort des embryons qui ont eu chaud ou froid à côté des autres : le plus haut { $sure ->
            [yes] et plus que le hasard
           *[no] , sans que le hasard soit exclu,
        } dans la période jusqu’{ WORD($name, "drawn_look") }, { NUMBER($ratio, maximumFractionDigits: 1) } fois (intervalle à 95 % de { NUMBER($low, maximumFractionDigits: 1) } à { NUMBER($high, maximumFractionDigits: 1) }) ; { $clear ->
            [0] aucune période n’est nettement au-dessus des autres
            [1] 1 période sur { $count } est nettement au-dessus des autres
           *[other] { $clear } périodes sur { $count } sont nettement au-dessus des autres
        }.
    }


drawn_look_candle1 = au premier mirage
drawn_look_candle2 = au deuxième mirage
drawn_look_transfer = au transfert
drawn_look_hatch = à l’éclosion

# Climat

drawn_timeline_title = Couveuse { $machine }, °{ $unit }
drawn_no_readings = pas de mesures
drawn_spell = { NUMBER($degrees, maximumFractionDigits: 0) }°, { NUMBER($hours, maximumFractionDigits: 0) } h
drawn_line_air = air
drawn_line_egg = œuf (est.)
drawn_line_range = voulu
drawn_line_everyday = couvercle ouvert
drawn_close_up_title = Couvée { $batch }, jour { NUMBER($day, maximumFractionDigits: 1) } : { $kind ->
        [warm] trop chaud
       *[cold] trop froid
    }
drawn_hours = { NUMBER($hours, maximumFractionDigits: 1) } h
drawn_worst_air = air { NUMBER($degrees, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }
drawn_worst_egg = œuf { NUMBER($degrees, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }

drawn_water_title = Couvée { $batch } : poids perdu (% du poids à la mise)
drawn_water_target = but
    { SHARE($low) } à
    { SHARE($high) }
drawn_water_expected = { $weighed ->
        [yes] attendu
       *[no] supposé
    }
    { SHARE($share) }
drawn_left_out = x  pesé, laissé de côté
drawn_no_weights = On ne sait rien du poids perdu par les œufs.
drawn_water_axis = Poids perdu au transfert (% du poids à la mise)
drawn_water_key_target = but
drawn_water_key_weighed = pesé
drawn_water_key_off = pesé, hors du but
drawn_water_key_unweighed = non pesé : supposé

drawn_clock_expected = attendu
drawn_clock_seen = du premier au dernier poussin
drawn_clock_inside = milieu, comme attendu
drawn_clock_outside = milieu, pas comme attendu
drawn_clock_axis = Heures par rapport à l’habituel de l’espèce (plus tard : à droite)

drawn_no_probe = Aucune température n’a été enregistrée.
drawn_probe = Couveuse { $machine }, sonde { $probe }
drawn_witness_checked = { $known ->
        [yes] par un contrôle (glace ou bon thermomètre)
       *[no] contrôle (glace ou bon thermomètre) : pas fait
    }
drawn_witness_pair = { $known ->
        [yes] à côté de l’autre sonde ({ $other })
       *[no] à côté de l’autre sonde ({ $other }) : aucune mesure commune
    }
drawn_witness_hatch = { $known ->
        [yes] par l’heure des éclosions ({ $batches ->
            [1] 1 couvée
           *[other] { $batches } couvées
        })
       *[no] par l’heure des éclosions : inconnu
    }
drawn_probe_axis = Indique trop bas (gauche) ou trop haut (droite), °{ $unit }
drawn_kelvin = { NUMBER($value, minimumFractionDigits: 1, maximumFractionDigits: 1) }°

picture_incubator_timeline = Air et température estimée des œufs de la couveuse { $machine } avec { $batches ->
        [1] 1 couvée
       *[other] { $batches } couvées
    }{ $middle ->
        [none] { "" }
       *[other] : le plus souvent { NUMBER($middle, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }
    }. { $spells ->
        [0] Aucun coup de chaud ou de froid notable
        [1] Un épisode notable
       *[other] { $spells } épisodes notables
    }{ $kind ->
        [none] { "" }
       *[other] , le pire dès le { DAY($when) } : { $kind ->
            [warm] trop chaud
           *[cold] trop froid
        } pendant { NUMBER($hours, maximumFractionDigits: 0) } h, l’air à { NUMBER($degrees, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }
    } ; { $everyday ->
        [0] rien d’ordinaire
        [1] 1 ouverture ou mise ordinaire
       *[other] { $everyday } ouvertures ou mises ordinaires
    } ; { $gaps ->
        [0] aucun trou dans l’enregistrement.
        [1] 1 trou dans l’enregistrement.
       *[other] { $gaps } trous dans l’enregistrement.
    }

picture_excursion_close_up = Couvée { $batch } dès le jour { NUMBER($day, maximumFractionDigits: 1) } ({ MINUTE($when) }) : { $kind ->
        [warm] trop chaud
       *[cold] trop froid
    } pendant { NUMBER($hours, maximumFractionDigits: 1) } h. L’air a atteint { NUMBER($air, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit } ; l’œuf estimé suit plus tard et a atteint { NUMBER($egg, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit } ({ NUMBER($egg_low, minimumFractionDigits: 1, maximumFractionDigits: 1) } à { NUMBER($egg_high, minimumFractionDigits: 1, maximumFractionDigits: 1) }).

picture_weight_loss_track = { $weighed ->
        [yes] Couvée { $batch }, pesée : { $projected_share ->
            [none] on ne peut pas dire ce que les œufs auront perdu au transfert
           *[other] au transfert les œufs auront perdu { SHARE($projected_share) } de leur poids ({ SHARE($projected_low) } à { SHARE($projected_high) })
        }
       *[no] La couvée { $batch } n’a pas été pesée ; { $projected_share ->
            [none] on ne sait rien de ce qu’elle a perdu
           *[other] d’après la taille des œufs et l’humidité elle aura perdu au transfert environ { SHARE($projected_share) } de son poids ({ SHARE($projected_low) } à { SHARE($projected_high) })
        }
    } ; le but est de { SHARE($target_low) } à { SHARE($target_high) }{ $verdict ->
        [too_little] : trop peu a été perdu.
        [too_much] : trop a été perdu.
        [on_target] : dans le but.
       *[other] : on ne peut pas dire si c’est atteint.
    }

picture_water_against_target = { $weighed ->
        [0] Aucune de { $batches } couvées n’a été pesée ; seules des suppositions sont à côté du but.
       *[other] Sur { $weighed ->
            [1] 1 couvée pesée
           *[other] { $weighed } couvées pesées
        }, { $right ->
            [0] aucune n’est
            [1] 1 est
           *[other] { $right } sont
        } dans le but, { $little ->
            [0] aucune
           *[other] { $little } ({ LIST($little_names) })
        } a perdu trop peu d’eau, { $much ->
            [0] aucune
           *[other] { $much } ({ LIST($much_names) })
        } trop.
    }

picture_hatch_clock = { $seen ->
        [0] D’aucune couvée les heures d’éclosion ne sont notées.
       *[other] Sur { $seen } couvées dont l’éclosion a été vue, { $early ->
            [0] aucune n’est venue
           *[other] { $early } sont venues
        } plus tôt que la conservation et la température ne le laissent attendre{ $early ->
            [0] { "" }
           *[other] { " " }({ LIST($early_names) })
        }, { $late ->
            [0] aucune
           *[other] { $late }
        } plus tard{ $late ->
            [0] { "" }
           *[other] { " " }({ LIST($late_names) })
        } ; la plus éloignée était { $furthest }, { NUMBER($hours, maximumFractionDigits: 0) } h plus { $side ->
            [later] tard
           *[other] tôt
        }.
    }

picture_probe_truth = { $checked ->
        [0] { $probes ->
            [1] La seule sonde n’a jamais été vérifiée.
           *[other] Aucune des { $probes } sondes n’a jamais été vérifiée.
        }
       *[other] { $checked } sondes sur { $probes } ont été vérifiées.
    } { $told ->
        [0] Les heures d’éclosion n’indiquent d’erreur pour aucune.
       *[other] D’après les heures d’éclosion, celle de la couveuse { $machine } indique { NUMBER($error, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit } de trop { $side ->
            [high] haut
           *[low] bas
        }.
    } { $disagree ->
        [0] { "" }
       *[other] Les sondes se contredisent dans la couveuse { LIST($disagree_names) }.
    }

# La saison d’un coup d’œil, et la prochaine mise

drawn_machine = { $name ->
        [none] couveuse inconnue
       *[other] Couveuse { $name }
    }
drawn_degrees = { NUMBER($degrees, maximumFractionDigits: 0) }°
drawn_glance_bars = Barre : une couvée, remplie autant qu’elle a éclos. ○ mirage
drawn_glance_marks = ▲ trop chaud  ▼ trop froid : plus grand, plus grave
drawn_eggs_axis = Œufs mis
drawn_eggs_title = Chance d’au moins { $chicks } poussins sains (%)

picture_season_at_a_glance = { $batches ->
        [0] Aucune couvée à montrer.
       *[other] { $batches ->
            [1] 1 couvée
           *[other] { $batches } couvées
        } dans { $machines ->
            [1] 1 couveuse
           *[other] { $machines } couveuses
        } du { DAY($first) } au { DAY($last) }. { $ended ->
            [0] Aucune n’est encore finie.
           *[other] Poussins sains des œufs mis : de { SHARE($worst_share) } ({ $worst }) à { SHARE($best_share) } ({ $best }).
        } { $spells ->
            [0] Aucun coup de chaud ou de froid notable.
           *[other] { $spells ->
                [1] Un épisode notable
               *[other] { $spells } épisodes notables
            } de chaleur ou de froid, le plus grand dans la couveuse { $machine } dès le { DAY($when) } : trop { $kind ->
                [warm] chaud
               *[cold] froid
            } pendant { NUMBER($hours, maximumFractionDigits: 0) } h.
        }
    }

picture_eggs_to_set = { $half ->
        [none] Aucune mise unique ne donne { $chicks } poussins sains avec une chance sur deux.
       *[other] Pour au moins { $chicks } poussins sains, une chance sur deux demande { $half } œufs, { $eggs ->
            [none] et aucune mise unique n’est sûre à { SHARE($sure) }
           *[other] une sûreté de { SHARE($sure) } en demande { $eggs }
        }, { $most ->
            [none] aucune mise unique n’est sûre à 95 %
           *[other] une sûreté de 95 % en demande { $most }
        }.
    }

drawn_temperature = Température (°{ $unit })
drawn_ledger_lost = { $whole ->
        [yes] { $eggs }
       *[no] environ { $eggs }
    }
drawn_no_clock = Aucune couvée n’a d’heure d’éclosion attendue.
account_usual = ce que les couvées perdent d’habitude
account_not_explained = non expliqué
account_unaccounted = œufs au sort inconnu
