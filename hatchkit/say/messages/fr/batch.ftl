# La page d’une couvée : pourquoi elle a mal éclos, à quel point c’est sûr, que changer.

page_batch_title = { $name }, couvée { $batch } : { $poor ->
        [no] comment a-t-elle éclos ?
        [unknown] comment a-t-elle éclos ?
       *[yes] pourquoi a-t-elle mal éclos ?
    }
page_batch_file = { $name }-couvee-{ $batch }
page_batch_counts = { EGGS($set) ->
        [1] Un œuf
       *[other] { EGGS($set) } œufs
    } ({ $kind }){ $set_at ->
        [none] { "" }
       *[day] , mis le { DAY($set_at) }
    } : { $hatched ->
        [none] ce qui a éclos n’est pas noté.
       *[known] { EGGS($hatched) ->
            [one] { EGGS($hatched) } poussin sain
           *[other] { EGGS($hatched) } poussins sains
        }, { SHARE($share_of_set) } des œufs mis (habituel { SHARE($usual_of_set) }){ $share_hatched ->
            [none] { $share_low ->
                [none] .
               *[range] , { SHARE($share_low) } à { SHARE($share_high) } de ceux qui se sont développés, car { EGGS($unaccounted) ->
                    [1] 1 œuf a
                   *[other] { EGGS($unaccounted) } œufs ont
                } un sort inconnu.
            }
           *[share] , { SHARE($share_hatched) } des { EGGS($developing) } qui se sont développés (habituel { SHARE($usual) }).
        }
    }

ask_why = { $poor ->
        [no] Qu’est-ce qui a tout de même coûté des œufs ?
       *[yes] Pourquoi ?
    }
why_confident = Très probablement : { WORD($key, kind: "cause") }. { $reason }.
why_probable = Probablement : { WORD($key, kind: "cause") }. { $reason }.
why_two_causes = Probablement deux choses : { WORD($first, kind: "cause") } (environ { EGGS($eggs_first) } œufs) et { WORD($second, kind: "cause") } (environ { EGGS($eggs_second) }). { $reason }.
why_bad_luck = La simple malchance suffit à l’expliquer ; aucune cause ne ressort.
why_cannot_tell = Les relevés ne permettent pas de le dire : { $reason }. { COUNT($tied) ->
        [0] { "" }
        [1] { "" }
       *[other] Presque à égalité : { LIST($tied) }.
    }
why_not_poor = Cette couvée n’était pas mauvaise : { EGGS($hatched) } éclos sur { EGGS($set) }, dans la moyenne habituelle.
why_not_over = On ne sait pas comment la couvée { $batch } s’est terminée ; aucune cause ne peut donc être pesée.
reason_stage = { $about ->
        [yes] environ { EGGS($eggs) }
       *[no] { EGGS($eggs) }
    } { WORD($stage, kind: "loss") }, l’habituel étant { EGGS($usual) ->
        [one] de { EGGS($usual) }
       *[other] de { EGGS($usual) }
    }
reason_unaccounted = { EGGS($eggs) ->
        [1] 1 œuf a
       *[other] { EGGS($eggs) } œufs ont
    } un sort inconnu
reason_none = aucun stade n’a perdu plus que d’habitude
reason_spell = { $spell } ; { $about ->
        [yes] environ { EGGS($eggs) }
       *[no] { EGGS($eggs) }
    } { WORD($stage, kind: "loss") } (habituel { EGGS($usual) })
reason_of_spell = { $kind ->
        [warm] { EGGS($hours) } h d’air jusqu’à { DEGREES($extreme_c) } dès le jour { EGGS($day_start) }
       *[cold] { EGGS($hours) } h d’air jusqu’à { DEGREES($extreme_c) } dès le jour { EGGS($day_start) }
    }
eggs_of_cause_weight = { WORD($cause, kind: "cause") } ({ SHARE($share) })
why_sure_confident = { SHARE($share) } du poids parmi toutes les causes ; ensuite { $next }. C’est probable, pas prouvé{ $unaccounted ->
        [0] .
       *[other] ; œufs au sort inconnu : { EGGS($unaccounted) }.
    }
why_sure_probable = { SHARE($share) } du poids parmi toutes les causes ; ensuite { $next }. Probable, pas sûr{ $unaccounted ->
        [0] .
       *[other] ; œufs au sort inconnu : { EGGS($unaccounted) }.
    }
why_sure_two_causes = Les deux ensemble conviennent mieux qu’une seule ; probable, pas prouvé.
why_sure_bad_luck = { SHARE($share) } du poids ; un petit dommage pourrait se cacher dans si peu d’œufs.
why_sure_cannot_tell = Pas sûr : la plus probable ({ WORD($key, kind: "cause") }) a { SHARE($share) } du poids{ $unaccounted ->
        [0] .
       *[other] , et le sort de { EGGS($unaccounted) } œufs est inconnu.
    }
why_sure_not_poor = Si peu de pertes au-delà de l’habituel n’indiquent aucune cause ; la plus probable serait : { WORD($key, kind: "cause") } ({ SHARE($share) } du poids).
why_sure_not_over = Notez comment elle s’est terminée, et relancez ceci.

ask_standing = { $poor ->
        [no] Était-elle mauvaise ?
        [unknown] Était-elle mauvaise ?
       *[yes] À quel point était-elle mauvaise ?
    }
standing_embryos = { EGGS($hatched) } œufs sur { EGGS($set) } ont éclos, { $far ->
        [far] bien moins que
       *[below] moins que
    } les { SHARE($usual_of_set) } habituels, car plus d’embryons sont morts que d’habitude ; rang { $place } en partant de la plus mauvaise, sur { $of ->
        [1] une couvée
       *[other] { $of } couvées
    }.
standing_clears = { EGGS($hatched) } œufs sur { EGGS($set) } ont éclos, { $far ->
        [far] bien moins que
       *[below] moins que
    } les { SHARE($usual_of_set) } habituels, parce que { EGGS($clear) } étaient clairs ; ceux qui se sont développés ont fait comme d’habitude. Rang { $place } sur { $of } en partant de la plus mauvaise.
standing_removed = { EGGS($hatched) } œufs sur { EGGS($set) } ont éclos, { $far ->
        [far] bien moins que
       *[below] moins que
    } les { SHARE($usual_of_set) } habituels, parce que { EGGS($removed) } ont été retirés ; ceux qui se sont développés ont fait comme d’habitude. Rang { $place } sur { $of } en partant de la plus mauvaise.
standing_unknown = { EGGS($hatched) } œufs sur { EGGS($set) } ont éclos ; le sort de { EGGS($unaccounted) } est inconnu, on ne peut donc pas dire si c’était mauvais.
standing_no = { EGGS($hatched) } œufs sur { EGGS($set) } ont éclos ; l’habituel est { SHARE($usual_of_set) }, ce n’était donc pas une mauvaise éclosion.
standing_clears_not_counted = Ses clairs n’ont jamais été comptés : un œuf non ouvert noté comme mort a pu être clair.
table_standing = Toutes les couvées, la plus mauvaise d’abord
head_share_hatched = Des œufs développés
head_usual_of_set_share = Habituel, des œufs mis
head_usual_share = Habituel, des développés

ask_fate = Que sont devenus les œufs ?
fate_eggs = Sur { EGGS($set) } œufs, { EGGS($hatched) } ont donné des poussins sains{ COUNT($lost) ->
        [0] .
       *[other] ; { LIST($lost, most: 5) }.
    }
table_pattern = Œufs par stade, et ce qui est habituel dans une couvée de cette taille
head_usual_eggs = Habituel

ask_evidence = Qu’est-ce qui le montre, et qu’est-ce qui était différent ?
evidence_weights = Le plus de poids : { LIST($causes) }.
evidence_method = Chaque cause est pesée selon qu’elle explique bien les jours et les stades des pertes, à côté de vos autres couvées et d’un bilan publié, et selon ce que disent l’enregistrement, les tableaux et vos remarques. La malchance, et une cause absente de la liste, sont aussi candidates ; les égalités restent des égalités.
table_evidence = Les causes les plus probables, et ce qui parle pour et contre elles
head_cause = Cause
head_share_weight = Poids
head_fits = Convient parce que
head_against = Contre
head_unknown = Inconnu
head_check_next = À vérifier ensuite

ask_met = Qu’ont subi les œufs ?
met_not_logged = Aucune température n’a été enregistrée pour cette couvée ; on ne sait donc rien de la chaleur ni du froid.
met_spells = { LIST($spells) }.
met_nothing = Rien d’anormal : la température de { $machine } est restée juste, à part des ouvertures ordinaires.
batch_water_on_target = Oui : { SHARE($projected_share) } jusqu’au transfert (voulu { SHARE($target_low) } à { SHARE($target_high) }).
batch_water_too_little = Trop peu : { SHARE($projected_share) } jusqu’au transfert (voulu { SHARE($target_low) } à { SHARE($target_high) }).
batch_water_too_much = Trop : { SHARE($projected_share) } jusqu’au transfert (voulu { SHARE($target_low) } à { SHARE($target_high) }).
batch_water_cannot_tell = On ne peut pas le dire sûrement : environ { SHARE($projected_share) } jusqu’au transfert ({ SHARE($projected_low) } à { SHARE($projected_high) } ; voulu { SHARE($target_low) } à { SHARE($target_high) }).
batch_clock_on_time = À l’heure, autant qu’une telle prévision puisse le dire.
batch_clock_early = { EGGS($hours) } h trop tôt, au-delà du doute de la prévision.
batch_clock_late = { EGGS($hours) } h trop tard, au-delà du doute de la prévision.
batch_place_pattern = Peut-être : les morts ne sont pas placés comme le hasard les placerait.
batch_place_no_sign = Aucun signe.

ask_change = Que changer pour la prochaine mise ?
change_set = Mettez { EGGS($eggs) } œufs pour avoir au moins { EGGS($chicks) } poussins sains dans { SHARE($sure) } des cas ; attendez-en environ { EGGS($chicks_middle) } ({ EGGS($chicks_low) } à { EGGS($chicks_high) }). { $changes ->
        [0] Rien ne demande un autre réglage.
        [1] Une chose à changer ou à noter.
       *[other] { $changes } choses à changer ou à noter.
    }
change_too_many = Au moins { EGGS($chicks) } poussins ne peuvent pas être prévus en une seule mise : prévoyez-en plusieurs, ou moins de poussins.
change_refused = { $why }
table_changes = Que changer, le plus important d’abord
head_what = Changer
head_now = Maintenant
head_to = En
head_why = Pourquoi
head_how_sure = Sûreté

ask_look = Que chercher dans les œufs non éclos ?
look_open = Ouvrez chaque œuf non éclos qui ne sent pas, ne mousse pas et ne suinte pas, le gros bout d’abord, et notez l’aspect qui convient le mieux.
look_days = Les jours sont comptés depuis la mise ; pour d’autres oiseaux que la poule ils sont mis à l’échelle et justes à trois jours près. Ce qui sent, mousse ou suinte se jette sans l’ouvrir.
table_breakout = Aspects des œufs ouverts, et ce qu’ils indiquent
head_look = Aspect
head_days = Jour
head_see = Ce que l’on voit
head_means = Ce que cela veut dire
head_points_to = Indique

batch_unknown_proof = Les comptes et l’enregistrement indiquent des causes probables ; ils n’en prouvent aucune. Deux causes qui laissent la même perte restent à égalité jusqu’à ce qu’un relevé les sépare.
batch_unknown_list = Les poids valent pour les causes de la liste de hatchkit et ses chiffres indiqués, arrondis.
batch_unknown_clear = Un œuf clair qui n’a pas été ouvert n’est ni non fécondé ni mort : on ne sait pas.
batch_unknown_illness = Aucune maladie ne se voit dans ces chiffres. Des morts inhabituelles sont l’affaire d’un vétérinaire.

# Les pertes comptées dans une phrase : « 18 morts tardifs ».
loss_hatched = poussins sains
loss_culled = poussins écartés
loss_clear = clairs
loss_infertile = non fécondés
loss_early = morts précoces
loss_mid = morts du milieu
loss_late = morts tardifs
loss_dead = embryons morts
loss_pipped_dead = bêchés et morts
loss_removed = retirés
loss_unaccounted = au sort inconnu

# Les pertes avec leur nombre : « 18 morts tardifs », « 1 clair ».
eggs_hatched = { EGGS($eggs) ->
        [one] { EGGS($eggs) } poussin sain
       *[other] { EGGS($eggs) } poussins sains
    }
eggs_culled = { EGGS($eggs) ->
        [one] { EGGS($eggs) } poussin écarté
       *[other] { EGGS($eggs) } poussins écartés
    }
eggs_clear = { EGGS($eggs) ->
        [one] { EGGS($eggs) } clair
       *[other] { EGGS($eggs) } clairs
    }
eggs_infertile = { EGGS($eggs) ->
        [one] { EGGS($eggs) } œuf non fécondé
       *[other] { EGGS($eggs) } œufs non fécondés
    }
eggs_early = { EGGS($eggs) ->
        [one] { EGGS($eggs) } mort précoce
       *[other] { EGGS($eggs) } morts précoces
    }
eggs_mid = { EGGS($eggs) ->
        [one] { EGGS($eggs) } mort du milieu
       *[other] { EGGS($eggs) } morts du milieu
    }
eggs_late = { EGGS($eggs) ->
        [one] { EGGS($eggs) } mort tardif
       *[other] { EGGS($eggs) } morts tardifs
    }
eggs_dead = { EGGS($eggs) ->
        [one] { EGGS($eggs) } embryon mort
       *[other] { EGGS($eggs) } embryons morts
    }
eggs_pipped_dead = { EGGS($eggs) ->
        [one] { EGGS($eggs) } bêché et mort
       *[other] { EGGS($eggs) } bêchés et morts
    }
eggs_removed = { EGGS($eggs) ->
        [one] { EGGS($eggs) } retiré
       *[other] { EGGS($eggs) } retirés
    }
eggs_unaccounted = { EGGS($eggs) ->
        [one] { EGGS($eggs) } au sort inconnu
       *[other] { EGGS($eggs) } au sort inconnu
    }
