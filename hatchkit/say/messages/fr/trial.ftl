# Un essai partagé : son plan, et ce qu’il a montré.

trial_arms = Un essai compare deux manières : nommez les deux, de noms différents.
trial_outcome = Un essai ne peut pas porter sur { $outcome } ; il peut porter sur { LIST($known) }.
trial_difference = Une différence de { $difference } ne peut pas se prévoir : donnez une part de 0.01 à 0.6, par exemple 0.1 pour dix œufs sur cent.
trial_eggs = { $eggs } œufs par mise ne peuvent pas se partager : donnez-en 4 ou plus.
trial_blocks = Les œufs des poules ou des parquets font en tout { $sum }, et la mise en a { $eggs } : mettez les deux d’accord.
trial_block = « { $text } » n’est pas une poule ou un parquet avec ses œufs : écrivez-le comme "poule 4=6".
trial_columns = Il manque à la feuille { LIST($names) } : gardez les titres tels qu’ils étaient.
trial_folder = { $path } contient déjà quelque chose : indiquez pour l’essai un dossier nouveau ou vide.
trial_no_plan = Il n’y a pas de plan d’essai (trial.toml) dans { $path }.
trial_bad_plan = Le plan { $path } ne peut pas être lu : { $why }.
trial_no_sheet = Il n’y a pas de feuille avec set, egg et result dans { $path }.

trial_plan = Essai partagé : « { $usual_way } » contre « { $new_way } », jugé sur : { WORD($outcome, kind: "outcome") }. { $sets ->
        [one] Une mise
       *[other] { $sets } mises
    } de { EGGS($eggs) } œufs, la moitié à chaque manière, répartis au sort{ $blocks ->
        [0] { "" }
        [1] { "" }
       *[other] { " " }à l’intérieur de chacun des { $blocks } groupes (poules ou parquets)
    }.
trial_plan_eggs = En partant de { SHARE($usual) }, comme d’habitude, une différence de { SHARE($difference) } demande { EGGS($needed) } œufs par manière ; ce plan en a { EGGS($each) } et la montrerait dans { TENTH($power) } essais sur 10.
trial_plan_short = C’est trop peu pour y compter : plus de mises, ou une différence plus grande.
trial_plan_rules = Les deux manières doivent être dans une même couveuse, ou changer de couveuse d’une mise à l’autre ; qui mire ne devrait pas savoir quel œuf est lequel. Écrivez pour chaque œuf hatched (éclos), dead (mort), clear (clair), pipped (bêché) ou out (retiré) dans la colonne Result ; laissez Arm tel quel. Ce qui compte a été fixé avant le premier œuf : quand toutes les mises sont finies, lancez hatchkit trial sur le dossier.

trial_result = { $verdict ->
        [better] « { $new_way } » a mieux réussi que « { $usual_way } »
        [worse] « { $new_way } » a moins bien réussi que « { $usual_way } »
        [too_few] Il y a trop peu de résultats pour dire quoi que ce soit
       *[not_told] Aucune différence entre « { $new_way } » et « { $usual_way } » ne peut être établie
    }.
trial_counts = { WORD($outcome, kind: "outcome") } : { $new_good } sur { $new_eggs } ({ SHARE($new_share) }) avec « { $new_way } », { $usual_good } sur { $usual_eggs } ({ SHARE($usual_share) }) avec « { $usual_way } ».
trial_size = Mise par mise, la différence est de { TENTH($difference) } points (intervalle à 95 % : { TENTH($low) } à { TENTH($high) }) ; une aussi grande vient du seul sort dans { TENTH($chance) } tirages sur 100.
trial_missed = Le plan aurait montré une différence de { SHARE($planned) } dans { TENTH($power) } essais sur 10 ; il peut y en avoir une plus petite.
trial_left = Œufs sans résultat : { $missing } ; résultats qui n’ont pas pu être lus : { $unread } ; œufs passés à l’autre manière : { $moved } (ils comptent là où le sort les avait mis).
trial_plan_file = Le plan d’un essai partagé, fait avant la mise du premier œuf : hatchkit trial juge d’après lui.
