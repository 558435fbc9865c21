# Ce que les œufs sont devenus : là où nombres, lignes et dates d’une couvée ne s’accordent pas.

eggs_set_missing =
    .found = couvée { $batch } : le nombre d’œufs mis manque
    .done = La couvée est laissée hors des taux.
    .fix = Écrivez le nombre d’œufs mis (eggs_set).
culled_beyond_hatched =
    .found = couvée { $batch } : { $culled } éliminés pour { $hatched } éclos, alors que les éliminés font partie des éclos
    .done = { $culled } sont pris comme éclos et éliminés.
    .fix = Vérifiez la ligne.
taken_out_twice =
    .found = couvée { $batch } : { $looks } œufs retirés aux mirages, mais { $total } dans la colonne removed
    .done = { $looks } est utilisé.
    .fix = Vérifiez la ligne.
rows_beyond_set =
    .found = couvée { $batch } : { $told } lignes d’œufs avec un sort, mais { $set } œufs mis
    .done = La couvée est laissée hors des taux jusqu’à ce que l’un des deux soit corrigé.
    .fix = Recomptez ce qui est faux : les œufs mis, ou ce qu’ils sont devenus.
counts_beyond_set =
    .found = couvée { $batch } : { $told } œufs dans les relevés ({ WORDS($kinds, kind: "field") } : { LIST($eggs) }), mais { $set } œufs mis
    .done = La couvée est laissée hors des taux jusqu’à ce que l’un des deux soit corrigé.
    .fix = Recomptez ce qui est faux : les œufs mis, ou ce qu’ils sont devenus.
counts_beyond_rows =
    .found = couvée { $batch } : les nombres parlent de { $told } œufs à côté des { $rows } lignes d’œufs, mais il en reste { $left }
    .done = Les lignes d’œufs sont utilisées, { $left ->
        [0] et aucun œuf ne reste.
        [1] l’autre œuf a un sort inconnu.
       *[other] les { $left } autres œufs ont un sort inconnu.
    }
    .fix = Vérifiez la ligne.
opened_two_ways =
    .found = couvée { $batch } : les œufs ouverts et les morts en coquille peuvent se lire de plusieurs façons
    .done = { $way ->
        [unhatched] dead_in_shell est lu comme tous les œufs non éclos, non fécondés compris
        [without_early] dead_in_shell est lu sans les morts précoces
        [apart] dead_in_shell est lu comme compté à part des œufs ouverts
       *[clears] Les non fécondés et les morts précoces parmi les œufs ouverts sont lus comme des clairs ouverts
    } ; ainsi le compte tombe juste.
    .fix = Si c’est faux, corrigez les nombres.
eggs_unexplained =
    .found = couvée { $batch } : les relevés expliquent { $told } des { $set } œufs mis
    .done = { $lost ->
        [1] Le sort d’un œuf est inconnu.
       *[other] Le sort de { $lost } œufs est inconnu.
    }
    .fix = Cherchez les œufs manquants : clairs, cassés, non éclos.
hatch_not_counted =
    .found = couvée { $batch } : l’éclosion de { $eggs ->
        [1] un œuf
       *[other] { $eggs } œufs
    } n’est pas encore comptée
    .done = La couvée est laissée hors des taux jusqu’à ce qu’elle soit finie.
    .fix = Écrivez les éclos (hatched) quand l’éclosion est finie.
rows_against_counts =
    .found = couvée { $batch } : { READINGS($kinds) } : { LIST($counts) } d’après le compte, { LIST($rows) } d’après les lignes d’œufs
    .done = Les lignes d’œufs sont utilisées.
    .fix = Corrigez le compte ou les lignes d’œufs.
egg_outcome_differs =
    .found = couvée { $batch }, œuf { $egg } : { WORD($look, kind: "stage") } : { WORD($seen, kind: "field") }, mais à la fin : { WORD($outcome, kind: "fate") }
    .done = La fin est utilisée.
    .fix = Vérifiez la ligne de cet œuf.
egg_seen_alive =
    .found = couvée { $batch }, œuf { $egg } : vu vivant au jour { $day }, mais à la fin : { WORD($outcome, kind: "fate") }
    .done = Pris comme mort, puisqu’un embryon vivant a été vu.
    .fix = Vérifiez la ligne de cet œuf.
egg_older_than_found =
    .found = couvée { $batch }, œuf { $egg } : ressemblait au jour { $stage }, mais trouvé mort au plus tard au jour { $by }
    .done = L’aspect de l’embryon est laissé de côté : mort entre le jour { $after } et le jour { $by }.
    .fix = Vérifiez la ligne de cet œuf.
egg_younger_than_alive =
    .found = couvée { $batch }, œuf { $egg } : ressemblait au jour { $stage }, mais noté vivant au jour { $alive }
    .done = L’un des deux est faux : l’intervalle couvre les deux, du jour { $after } au jour { $by }.
    .fix = Vérifiez la ligne de cet œuf.
look_day_taken =
    .found = couvée { $batch } : des nombres mais pas de date : { WORD($look, kind: "stage") }
    .done = Le jour { $day } est pris, le jour habituel.
    .fix = Écrivez la date de ce mirage.
look_before_setting =
    .found = couvée { $batch } : daté d’avant la mise ou de la mise même : { WORDS($looks, kind: "stage") }
    .done = Les nombres sont gardés, le jour habituel est pris.
    .fix = Vérifiez set_at et la date du mirage.
off_before_look =
    .found = couvée { $batch } : sortie au jour { TENTH($off) }, avant le dernier mirage au jour { TENTH($last) }
    .done = Le jour { $day } est pris pour la fin de l’éclosion.
    .fix = Vérifiez les dates.

fate_hatched = éclos
fate_culled = éliminé
fate_clear = clair
fate_infertile = non fécondé
fate_dead = mort
fate_pipped_dead = bêché et mort
fate_removed = retiré

## Laissées hors des taux, et ce qui n’a pas été compté

left_out_rows = { $batch } est laissée hors des taux : { $told } lignes d’œufs avec un sort, mais { $set } œufs mis.
left_out_counts = { $batch } est laissée hors des taux : { $told } œufs dans les relevés, mais { $set } œufs mis.
left_out_nothing = { $batch } est laissée hors des taux : rien n’est noté de ce que ses œufs sont devenus.
left_out_chicks = { $batch } est laissée hors des taux : ses poussins ne sont pas comptés.
left_out_hatch = { $batch } est laissée hors des taux : son éclosion n’est pas comptée.
left_out_set = { $batch } est laissée hors des taux : le nombre d’œufs mis manque.
clears_left_uncounted = Les clairs n’ont pas été comptés : { LIST($batches, most: 12) } ({ EGGS($eggs) ->
        [1] un œuf
       *[other] { EGGS($eggs) } œufs
    }). Combien de ces œufs contenaient un embryon n’est pas connu, et les parts des œufs non clairs les laissent de côté.
lost_uncounted = Pas compté jusqu’au bout : { WORDS($stages, kind: "loss") } ({ $all ->
        [yes] toutes les { $number } couvées
       *[no] { LIST($batches, most: 12) }
    }). Il s’en est perdu au moins autant ; aucun intervalle n’est donné.

## Malchance, âges, place et cours, en plus de mots

luck_own = Comparaisons avec vos autres couvées : { $comparisons }. Rares en elles-mêmes (1 sur 20) : { $rare }, là où le hasard en donne { $by_luck ->
        [0] moins de 1
       *[other] jusqu’à { $by_luck } environ
    }.
luck_near = Rares en elles-mêmes, mais pas dites inhabituelles parmi tant de comparaisons : { LIST($near) }.
luck_near_one = { $batch }, { $eggs } { WORD($stage, kind: "loss") } sur { EGGS($out_of) } ({ $unusual_from ->
        [none] aucun nombre n’aurait suffi, avec si peu d’autres couvées et si différentes
       *[eggs] { EGGS($unusual_from) } ou { $stage ->
            [hatched] moins
           *[other] plus
        } auraient suffi
    })
luck_wide = { $number ->
        [1] Une couvée a
       *[other] { $number } couvées ont
    } moins de { $fewest } autres couvées de l’espèce à côté : la plage attendue est large, et peu de choses peuvent être dites inhabituelles.
luck_uncounted = Pas comparé, car cela ou les clairs n’ont pas été comptés : { WORDS($stages, kind: "loss") } dans { LIST($batches, most: 12) }.
luck_published = Comparaisons avec des niveaux publiés ({ LIST($levels) }) : { $comparisons }. { $number ->
        [0] Aucune n’est inhabituelle, compte tenu de leur nombre.
       *[other] Inhabituel : { LIST($unusual) }.
    }
luck_published_one = { $batch }, { $eggs } { WORD($stage, kind: "loss") } où l’on en attend de { EGGS($low) } à { EGGS($high) } (au hasard 1 fois sur { $one_in })
luck_not_why = Inhabituel veut dire : guère le hasard. Cela ne dit pas pourquoi.
ages_none = Aucun œuf dont la fin est connue : on ne peut rien dire des âges de mort.
ages_alive = { WORD($species, kind: "species") } : aucun de { EGGS($eggs) } embryons vivants de { $batches ->
        [1] une couvée
       *[other] { $batches } couvées
    } n’est mort ; jusqu’à { SHARE($most) } de pertes s’accorderaient encore avec cela.
ages_died = { WORD($species, kind: "species") } : { EGGS($deaths) } sur { EGGS($eggs) } embryons vivants de { $batches ->
        [1] une couvée
       *[other] { $batches } couvées
    } sont morts, { SHARE($share) } (bande à 95 % de { SHARE($low) } à { SHARE($high) }){ $batches ->
        [1] {" "}; d’une seule couvée, la bande ne sait rien des différences entre couvées.
       *[other] .
    }
ages_removed = { EGGS($removed) ->
        [1] Un œuf a été retiré vivant
       *[other] { EGGS($removed) } œufs ont été retirés vivants
    } en route, ce qui ne renseigne que sur les jours d’avant.
ages_unaccounted = Laissé de côté : { EGGS($unaccounted) ->
        [1] un œuf au sort inconnu ; s’il était mort, la perte serait de { SHARE($most) }.
       *[other] { EGGS($unaccounted) } œufs au sort inconnu ; s’ils étaient tous morts, la perte serait de { SHARE($most) }.
    }
ages_risk = Le plus haut risque quotidien vu : { SHARE($daily_low) } à { SHARE($daily_high) } par jour (bande à 95 % de { SHARE($low) } à { SHARE($high) }), entre le jour { EGGS($after) } et le jour { EGGS($by) }{ $alone ->
        [yes] .
       *[no] {" "}; d’autres périodes peuvent être aussi hautes.
    }
ages_wide = { LIST($spans) } : là, les mirages ne disent pas quel jour ils sont morts.
ages_span = du jour { TENTH($after) } au jour { TENTH($by) }
ages_method = Le jour 0 est l’heure de la mise. Les morts connues seulement à peu près sont placées là où tombent les mieux connues. Les clairs ne comptent pas : certains sont morts dans les premiers jours.
place_counts = { $deaths } morts parmi { $eggs } œufs sur { $trays ->
        [1] un plateau
       *[other] { $trays } plateaux
    } : { EGGS($pairs) } paires de morts voisins ({ TENTH($pairs_expected) } attendues si la place ne compte pas), { SHARE($edge) } des morts au bord ({ SHARE($edge_expected) } attendus). { $answer ->
        [few] Avec si peu de morts, aucun motif n’aurait pu se distinguer du hasard.
        [pattern] Le hasard seul en fait autant dans { SHARE($chance) } des cas ; les œufs d’une même poule sont souvent groupés aussi, regardez les deux.
       *[no_sign] Un motif aussi fort vient par hasard dans { SHARE($chance) } des cas.
    }
course_centre = { WORD($stage, kind: "stage") }, { WORD($species, kind: "species") } : { SHARE($centre) } { $of ->
        [set] des œufs mis
       *[fertile] des œufs non clairs
    } sur { $batches ->
        [1] une couvée
       *[other] { $batches } couvées
    }. { $limits ->
        [none] Ces quelques couvées diffèrent tant qu’on ne peut pas tracer de limites.
        [outside] Hors des limites : { LIST($outside) } ; à regarder, ce n’est pas une preuve : là où les couvées diffèrent beaucoup, 3 saisons ordinaires sur 10 peuvent en avoir une.
       *[inside] Aucune couvée n’est hors des limites.
    }
course_provisional = Les limites sont provisoires : moins de { $fewest } couvées.
course_uncounted = Laissées de côté, car cela n’y a pas été compté : { LIST($batches, most: 12) }.
course_others = Pas dans cette image : { LIST($kinds) }.
course_other = { WORD($species, kind: "species") } ({ $batches ->
        [1] une couvée
       *[other] { $batches } couvées
    })

level_named = { WORD($level, kind: "norm") }
norm_own = votre propre niveau
norm_heavy_breeders = lots reproducteurs de chair, Butcher & Nilipour
norm_barnett_intact = œufs de couvoir non fêlés, Barnett et al. 2004
norm_small_incubator = usage courant des couveuses familiales
norm_pheasant_8_hens = faisans, 8 poules par coq, Deeming & Wadland 2001
norm_pheasant_12_hens = faisans, 12 poules par coq, Deeming & Wadland 2001
norm_quail_stored_14_days = œufs de caille gardés 14 jours, S. Afr. J. Anim. Sci. 2019
norm_partridge_farm = perdrix rouge, une étude de 150 œufs
norm_guinea_farm = pintades, Araujo et al. 2019
norm_goose_warmed = œufs d’oie gardés 9 jours et réchauffés chaque jour, un essai
norm_turkey_stored_17_days = œufs de dinde gardés 17 jours, Ann. Anim. Sci. 17
norm_turkey_usa_1997 = couvoirs de dindes des États-Unis en 1997, presse agricole
