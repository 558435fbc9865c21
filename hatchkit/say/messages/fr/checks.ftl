# Les notes s’accordent-elles entre elles ?

check_dates =
    .found = couvée { $batch } : { WORD($later, kind: "event") } { $day }, avant { $before }
    .done = Les dates restent telles qu’écrites ; les âges qui en viennent peuvent être faux.
    .fix = Corrigez { OR($columns) }{ COUNT($columns_swapped) ->
        [0] { "" }
       *[some] {" "}; jour et mois sont peut-être intervertis dans { OR($columns_swapped) }
    }.
check_event_day = { WORD($event, kind: "event") } { $day }
event_set_at = mise en couveuse
event_candle1_at = premier mirage
event_candle2_at = second mirage
event_transfer_at = transfert
event_first_hatch_at = premier poussin
event_last_hatch_at = dernier poussin
event_taken_off_at = sortie
check_days =
    .found = couvée { $batch } : { WORD($event, kind: "event") } à { $days } jours, alors que les œufs de cette espèce ({ WORD($species, kind: "species") }) demandent environ { TENTH($usual) } jours
    .done = Les dates sont gardées telles qu’écrites.
    .fix = Vérifiez { $columns }.
check_part =
    .found = couvée { $batch } : { $eggs } { WORD($part, kind: "field") }, plus que { $of } { WORD($whole, kind: "field") }
    .done = Les deux nombres sont gardés.
    .fix = { $column_part } se compte parmi { $column_whole } ; corrigez l’un des deux.
field_malpositioned = mal placés
check_stored =
    .found = couvée { $batch } : œufs gardés { $days } jours
    .done = Le chiffre est gardé.
    .fix = Écrivez les jours de la ponte à la mise en couveuse.
check_egg_twice =
    .found = l’œuf { $egg } de la couvée { $batch } est noté une seconde fois
    .done = Les deux lignes sont gardées.
    .fix = Donnez à chaque œuf d’une couvée son propre numéro.
check_no_log =
    .found = la couveuse { $machine } a des couvées mais pas d’enregistrement
    .done = Sa température compte comme inconnue.
    .fix = Mettez son enregistrement dans le dossier sensors, et nommez-le dans season.toml : [incubators."{ $machine }"] files = ["sensors/..."].
check_no_eggs =
    .found = un enregistrement de la couveuse { $machine }, où aucune couvée n’a été mise
    .done = Il est montré, mais aucune couvée n’est mise en regard.
    .fix = Vérifiez comment la couveuse est écrite dans les couvées et dans season.toml.

season_read = { $title } ({ $place ->
        [demo] la saison d’exemple livrée avec hatchkit
        [years] des années inventées livrées avec hatchkit
       *[folder] { $folder }
    }), lue par hatchkit { $version }.
season_no_batch = Aucune couvée n’a pu être utilisée.
season_batches = { $count ->
        [one] { $count } couvée
       *[other] { $count } couvées
    } avec { $eggs } œufs ({ WORDS($species, kind: "species") }), { $last ->
        [none] mise en couveuse le { DAY($first) }
       *[later] mises en couveuse du { DAY($first) } au { DAY($last) }
    }.
season_no_reading = Pas de mesures de température : ce qui suit ne dit rien de la température.
season_readings = { $count } mesures de { $machines }.
unknown_batch = Il n’y a pas de couvée '{ $batch }' dans cette saison ; il y a : { $there ->
        [none] aucune
       *[some] { LIST($there, most: 40) }
    }.{ $near ->
        [none] { "" }
       *[some] {" "}Vouliez-vous dire '{ $near }' ?
    }
unknown_species = Il n’y a pas d’espèce '{ $species }' dans le tableau de hatchkit ; sont connues { LIST($known) }. Ajoutez-la à season.toml sous [species].
