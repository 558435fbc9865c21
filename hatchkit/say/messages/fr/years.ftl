# Plusieurs saisons lues ensemble, et ce que disent les années.

season_unreadable =
    .found = { $place } n’a pas pu être lu : { $why }
    .done = Les autres saisons sont lues sans elle.
    .fix = Corrigez cette saison comme le dit la ligne, ou déplacez son dossier.
no_season_readable = Aucune des saisons de { $folder } n’a pu être lue. La première : { $why }
keepers_by_folder =
    .found = les dossiers sont pris pour des éleveurs : { $keepers }
    .done = Leurs couveuses, parquets et couvées restent séparés.
    .fix = S’ils sont tous à vous, écrivez keeper = "votre nom" dans chaque season.toml.
zones_differ =
    .found = les saisons sont tenues dans des fuseaux horaires différents : { $zones }
    .done = Les heures sont celles de { $zone } ; chaque saison a été lue selon le sien.
species_differ =
    .found = les chiffres pour { $species } diffèrent entre les fichiers season.toml des saisons
    .done = Ceux de la dernière saison valent pour toutes.
    .fix = Écrivez la même section [species] dans chacun, ou donnez un autre nom à l’oiseau.
probe_replaced =
    .found = la couveuse { $machine } était enregistrée par { $before } en { $earlier } et par { $now } en { $later }
    .done = Pris pour une sonde remplacée ou renommée ; un saut de température entre les deux années peut venir de la sonde.
    .fix = Vérifiez la nouvelle sonde à côté de l’ancienne ou d’un thermomètre médical, et écrivez probe_offset_c pour elle.
offset_changed =
    .found = la correction de la sonde de la couveuse { $machine } est { $before } en { $earlier } et { $now } en { $later }
    .done = Chaque année est corrigée par la sienne.
air_changed =
    .found = la couveuse { $machine } est { $before } en { $earlier } et { $now } en { $later }
    .done = Les œufs de chaque année sont calculés selon la sienne.
change_unread =
    .found = le changement { $number } n’a pas de jour ou pas de mots
    .done = Il n’est pas utilisé.
    .fix = Écrivez le jour et ce qui a été changé.
changes_no_heading =
    .found = la liste des changements n’a pas de titres pour le jour et pour ce qui a été changé
    .done = Elle n’est pas utilisée.
    .fix = Écrivez Date et Quoi au-dessus de ses colonnes.
question_machine_renamed = Dans { $file } il y a une couveuse « { $heading } » qui n’y était pas, et une de l’année d’avant a disparu. Est-ce la même sous un nouveau nom ? Pris pour l’instant : { $choice }.
value_another_machine = une autre couveuse

years_one = { $name } contient une saison d’un seul éleveur ; pour des années côte à côte, indiquez un dossier qui contient un dossier par année.

## La page des années

page_years_title = { $name } : vos années
page_years_file = { $name }-annees
page_years_counts = { EGGS($set) } œufs mis en { $batches } couvées, { COUNT($years) ->
        [one] une année
       *[other] { COUNT($years) } années ({ LIST($years) })
    }{ COUNT($keepers) ->
        [0] { "." }
        [one] { "." }
       *[other] , { COUNT($keepers) } éleveurs.
    }
outcome_hatch = éclosion des œufs mis
outcome_fertility = fécondité
outcome_hatch_of_fertile = éclosion des œufs fécondés
outcome_early = morts précoces
outcome_mid = morts du milieu
outcome_late = morts tardifs
drawn_outcome_hatch = éclosion des œufs mis
drawn_outcome_fertility = fécondés (non clairs)
drawn_outcome_hatch_of_fertile = éclosion des œufs fécondés
drawn_share_axis = part, %
drawn_drawn_to_all = rapproché de l’ensemble
drawn_as_counted = tel que compté
drawn_year_before = l’année d’avant
drawn_by_itself = attendu sans lui (95 %)
drawn_since_change = depuis le changement

ask_years_hatch = Comment ont été les éclosions de chaque année ?
years_hatch_told = { LIST($told) } des œufs mis. Tel que compté, { $highest } est au plus haut et { $lowest } au plus bas ; { $luck ->
        [beyond] le hasard seul ne les écarterait guère autant.
        [within] le hasard seul peut les écarter autant, cet ordre peut donc être du hasard.
       *[untold] on ne peut pas dire si c’est plus que par le hasard.
    }
years_hatch_one = { LIST($told) } des œufs mis.
years_hatch_none = On ne peut pas le dire : d’aucune couvée on ne connaît à la fois les œufs mis et les poussins.
years_one_year = { $year } : { SHARE($share) } ({ SHARE($low) } à { SHARE($high) })
years_interval = Les intervalles tiennent compte des différences entre couvées, pas seulement entre œufs ; deux années dont les intervalles se chevauchent peuvent tout de même se valoir.
years_do_changes = Notez ce que vous changez et quand, dans une feuille nommée Changements (Date, Quoi, Où) ; l’an prochain, cette page dira si cela a aidé.
years_do_changes_kept = Continuez à noter ce que vous changez et quand ; un seul changement à la fois peut se juger, deux ensemble ne se démêlent pas.
alt_years = Éclosion, fécondité et éclosion des œufs fécondés sur { $number } années avec leurs intervalles{ $ordered ->
        [yes] { " " }; telle que comptée, l’éclosion est au plus haut en { $highest } ({ SHARE($high) }) et au plus bas en { $lowest } ({ SHARE($low) }).
       *[no] { "." }
    }
table_years = Chaque année
head_season = Année
head_outcome = Quoi
head_total = Sur combien d’œufs
head_share_counted = Part telle que comptée
head_share_pooled = Rapprochée de l’ensemble
head_group = Groupe
head_changed = Changé le
head_change_what = Ce qui a été changé
head_share_before = Année d’avant
head_share_expected = Attendu sans lui
head_share_after = Depuis
head_verdict = Ce que l’on peut dire

ask_years_differ = Les années diffèrent-elles plus que par le hasard ?
years_differ_yes = Oui : { LIST($told) }. Il est tenu compte de { $comparisons } comparaisons.
years_differ_no = Rien qui se distingue du hasard : en { $comparisons } comparaisons, les années ne diffèrent pas plus que des couvées réparties entre elles au sort.
years_differ_untold = On ne peut pas le dire : aucune couveuse avec le même parquet n’a servi deux années.
years_differ_one = { WORD($outcome, kind: "outcome") } ({ SHARE($low) } en { $lowest }, { SHARE($high) } en { $highest })
years_differ_how = Les couvées ont été réparties au sort entre les années, chacune dans sa couveuse et son parquet, pour qu’une année ayant plus d’œufs d’un mauvais parquet ne soit pas dite mauvaise pour cela.
table_same_incubator = La même couveuse chaque année
table_same_pen = Le même parquet chaque année
table_same_month = Le même mois chaque année

ask_years_helped = Ce que vous avez changé a-t-il aidé ?
years_helped_none = On ne peut pas le dire : aucun changement n’est noté.
years_helped_told = Sur { $number ->
        [one] un changement
       *[other] { $number } changements
    }, { $helped ->
        [0] aucun n’a nettement aidé
        [one] un a nettement aidé
       *[other] { $helped } ont nettement aidé
    }{ $hints ->
        [0] { "." }
        [one] { " " }; pour un, il y a un indice.
       *[other] { " " }; pour { $hints }, il y a un indice.
    }
years_regression = On change surtout après une mauvaise année, et une mauvaise année est d’ordinaire suivie d’une meilleure, quoi que l’on fasse. La mesure n’est donc pas l’année d’avant, mais ce que laissent attendre toutes les années et les couvées sans le changement.
change_helped = { DAY($date) }, { $what } : cela a aidé. En { WORD($outcome, kind: "outcome") } : { SHARE($before) } l’année d’avant, { SHARE($expected) } à attendre sans ce changement ({ SHARE($expected_low) } à { SHARE($expected_high) }), { SHARE($after) } depuis.
change_hint = { DAY($date) }, { $what } : un indice que cela a aidé. En { WORD($outcome, kind: "outcome") } : { SHARE($before) } l’année d’avant, { SHARE($expected) } à attendre sans ce changement ({ SHARE($expected_low) } à { SHARE($expected_high) }), { SHARE($after) } depuis.
change_not_seen = { DAY($date) }, { $what } : aucune aide visible. En { WORD($outcome, kind: "outcome") } : { SHARE($before) } l’année d’avant, { SHARE($expected) } à attendre sans aucun changement ({ SHARE($expected_low) } à { SHARE($expected_high) }), { SHARE($after) } depuis.
change_worse = { DAY($date) }, { $what } : c’est devenu pire que ce qu’il fallait attendre. En { WORD($outcome, kind: "outcome") } : { SHARE($before) } l’année d’avant, { SHARE($expected) } à attendre ({ SHARE($expected_low) } à { SHARE($expected_high) }), { SHARE($after) } depuis.
change_too_few = { DAY($date) }, { $what } : trop peu d’œufs depuis pour le dire.
change_no_before = { DAY($date) }, { $what } : aucune année d’avant n’est notée pour les mêmes couvées.
change_no_after = { DAY($date) }, { $what } : aucune couvée n’est notée depuis.
change_beside = Une partie des mêmes couvées a connu à ce moment un autre changement, dont celui-ci ne peut y être démêlé : { LIST($others) }.
verdict_helped = a aidé
verdict_hint = un indice
verdict_not_seen = rien de visible
verdict_worse = pire qu’attendu
verdict_too_few = trop peu d’œufs
verdict_no_before = pas d’année d’avant
verdict_no_after = rien depuis
alt_changes = Pour chaque changement, la part de l’année d’avant, la plage à attendre sans lui et la part depuis ; { $helped } sur { $number } sont au-delà de cette plage, en mieux.
table_years_changes = Les changements et ce qui a suivi

ask_groups_keeper = L’éclosion de qui ressort ?
ask_groups_incubator = Les couveuses diffèrent-elles ?
ask_groups_pen = Les parquets diffèrent-ils ?
ask_groups_breed = Les races diffèrent-elles ?
ask_groups_shelf = Les étages diffèrent-ils ?
ask_groups_stored_days = L’âge des œufs compte-t-il ?
ask_groups_month = Le mois compte-t-il ?
ask_groups_hen = Quelles poules pondent des œufs clairs ?
ask_groups_cock = Les coqs diffèrent-ils ?
groups_clear = Oui, nettement différents ({ WORD($outcome, kind: "outcome") }) : { LIST($clear_told) }{ $may ->
        [0] { "." }
       *[other] { " " }; peut-être différents : { LIST($may_told) }.
    } { $comparisons ->
        [one] Une paire a été comparée.
       *[other] { $comparisons } paires ont été comparées.
    }
groups_may = Peut-être différents ({ WORD($outcome, kind: "outcome") }) : { LIST($may_told) }. { $comparisons ->
        [one] Une paire a été comparée
       *[other] { $comparisons } paires ont été comparées
    }{ $eggs_more ->
        [none] { "." }
       *[other] { " " }; environ { EGGS($eggs_more) } œufs de chaque groupe le diraient.
    }
groups_none = On ne peut pas le dire ({ WORD($outcome, kind: "outcome") }) : { $groups ->
        [one] aucun groupe ne diffère
       *[other] parmi les { $groups } groupes, il n’y en a pas deux qui diffèrent
    } plus que par le hasard.{ $eggs_more ->
        [none] { "" }
       *[other] { " " }Environ { EGGS($eggs_more) } œufs de chaque groupe montreraient une différence aussi grande que celle que l’on voit.
    }
groups_pair = { $better } au-dessus de { $worse }
group_name = { $by ->
        [hen] poule { $name }
        [cock] coq { $name }
        [month] { MONTH($name) }
       *[other] { $name }
    }
groups_lowest = { $lowest_name } : { EGGS($missed) } clairs sur { EGGS($total) } œufs, { SHARE($share) } fécondés tels que comptés, { SHARE($pooled) } rapprochés des autres.
groups_how = Chaque groupe est rapproché de l’ensemble, d’autant plus qu’il a peu d’œufs, pour qu’un petit groupe ne ressorte pas par le seul hasard ; les couvées d’une même éclosion comptent pour une.
groups_mixed = { LIST($groups) } : impossible à démêler de « { WORD($column, kind: "field") } ». Tous les œufs d’un tel groupe, et aucun autre, y portent la même valeur.
alt_groups = { $groups } groupes avec leurs parts, rapprochées de l’ensemble et telles que comptées ; le plus bas est { $lowest_name } ({ SHARE($pooled) }).
table_groups = Les groupes

ask_years_warmth = Les épisodes de chaud et de froid ont-ils coûté des embryons, sur toutes les années ?
years_warmth_clear = Un signe clair, sur { $batches } couvées de { $years } années ensemble.
years_warmth_some = Un certain signe, sur { $batches } couvées de { $years } années ensemble.
years_warmth_no = On ne peut pas le dire, sur { $batches } couvées de { $years } années ensemble.

years_unknown_cause = Pourquoi une année a été bonne ou mauvaise : l’aliment, le temps et la main de l’éleveur ne sont ici dans aucun tableau.
years_unknown_choice = Si ce qui a été changé est la seule chose qui ait changé.
years_unknown_records = Si toutes les années ont été comptées avec le même soin ; une année où l’on n’a pas cherché les clairs n’en a aucun.

shown_not_asked = Vos relevés ne contiennent rien qui permette de poser cette question.
years_nameless = Notes d’incubation sans noms
